package stenotherm.base;

/**
 * Converts temperature differences between kelvin and degrees Fahrenheit. A difference in degrees
 * Celsius is the same number in kelvin; 1.8 degrees Fahrenheit are one, exact by definition.
 *
 * <p>Stateless, thus thread-safe.
 */
public final class TemperatureDifferences {
  private TemperatureDifferences() {}

  /**
   * Converts a difference from degrees Fahrenheit.
   *
   * @param fahrenheit difference [F°]
   * @return difference [K]
   */
  public static double fromFahrenheit(double fahrenheit) {
    return fahrenheit / 1.8;
  }

  /**
   * Converts a difference to degrees Fahrenheit.
   *
   * @param kelvin difference [K]
   * @return difference [F°]
   */
  public static double toFahrenheit(double kelvin) {
    return kelvin * 1.8;
  }
}
