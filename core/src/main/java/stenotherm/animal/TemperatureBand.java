package stenotherm.animal;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.Temperatures;

/**
 * Two temperatures of the core of the body, see {@link Tolerance}, and where they come from.
 *
 * <p>A value, thus thread-safe.
 *
 * @param range the two temperatures [K]
 * @param source where they come from
 */
public record TemperatureBand(Range range, Source source) {
  /** Wider than the temperatures of any history [K]. */
  private static final Range TEMPERATURES = new Range(180, 400);

  /**
   * Checks the temperatures.
   *
   * @throws InvalidInputException if one is not within 180 K to 400 K
   */
  public TemperatureBand {
    Checks.given("range of a temperature band", range);
    Checks.given("source of a temperature band", source);
    checked("low end of a temperature band", range.low());
    checked("high end of a temperature band", range.high());
  }

  /** Narrow enough to tell kelvin from degrees Celsius or Fahrenheit. */
  static double checked(String field, double temperature) {
    return Checks.within(
        field, temperature, TEMPERATURES, "K", "Temperatures are in kelvin: 20 °C is 293.15 K.");
  }

  static TemperatureBand celsius(double low, double high, Source source) {
    return new TemperatureBand(
        Range.of("temperature band", Temperatures.fromCelsius(low), Temperatures.fromCelsius(high)),
        source);
  }
}
