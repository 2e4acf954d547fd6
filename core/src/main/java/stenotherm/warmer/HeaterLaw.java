package stenotherm.warmer;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;

/**
 * Power of a heater by the temperature that it watches. It is asked at the beginning of each step,
 * at most a minute apart, and holds until the next one.
 *
 * <p>A law must not remember anything, since several runs may ask it at the same time.
 */
@FunctionalInterface
public interface HeaterLaw {
  /**
   * Returns the power from a moment on.
   *
   * @param temperature the temperature watched [K]
   * @param last power until then, 0 before the heater was switched on [W]
   * @return power, 0 or above [W]
   */
  double power(double temperature, double last);

  /**
   * A thermostat.
   *
   * @param power power when on [W]
   * @param below temperature below which it switches on [K]
   * @param above temperature above which it switches off [K]; above the other one
   * @return the law
   * @throws InvalidInputException if the power is not above 0, or the temperatures are not above 0
   *     and in that order
   */
  static HeaterLaw thermostat(double power, double below, double above) {
    Checks.positive("power of a heater", power, "W");
    Checks.positive("temperature to switch on", below, "K");
    Checks.finite("temperature to switch off", above, "K");
    if (above <= below) {
      throw new InvalidInputException(
          "temperature to switch off",
          above + " K must be above that to switch on, " + below + " K, or it never rests");
    }
    return (temperature, last) -> temperature < below ? power : temperature > above ? 0 : last;
  }

  /**
   * Power in proportion to how far the temperature lies below a wanted one.
   *
   * @param most the most that it gives [W]
   * @param wanted temperature from which on it gives nothing [K]
   * @param band how far below that it gives the most [K]
   * @return the law
   * @throws InvalidInputException if a number is not above 0
   */
  static HeaterLaw proportional(double most, double wanted, double band) {
    Checks.positive("power of a heater", most, "W");
    Checks.positive("wanted temperature", wanted, "K");
    Checks.positive("proportional band", band, "K");
    return (temperature, last) -> most * Math.max(0, Math.min(1, (wanted - temperature) / band));
  }
}
