package stenotherm.warmer;

import stenotherm.base.Checks;
import stenotherm.base.TimeFunction;

/**
 * Power that follows a curve whatever the air and the temperature are, as of an electric heater or
 * of a warmer whose watts were measured. It takes no oxygen.
 *
 * <p>A value, thus thread-safe.
 *
 * @param power power over the time since the warmer was opened [W], 0 or above
 */
public record PrescribedPower(TimeFunction power) implements HeatRelease {
  /**
   * Checks the curve.
   *
   * @throws stenotherm.base.InvalidInputException if there is none
   */
  public PrescribedPower {
    Checks.given("power", power);
  }
}
