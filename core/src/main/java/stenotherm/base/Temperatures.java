package stenotherm.base;

/**
 * Converts temperatures, points on a scale, between kelvin and the scales people use. For
 * differences see {@link TemperatureDifferences}: 10 °F of difference is 5.6 K, while 10 °F on the
 * scale is 260.9 K. The relations between the scales are exact by definition.
 *
 * <p>Stateless, thus thread-safe.
 */
public final class Temperatures {
  /**
   * The Celsius scale's zero [K], exact by definition (SI Brochure, 9th edition, 2019, section
   * 2.3.1).
   */
  public static final double CELSIUS_ZERO = 273.15;

  private Temperatures() {}

  /**
   * Converts from degrees Celsius.
   *
   * @param celsius temperature [°C]
   * @return temperature [K]
   */
  public static double fromCelsius(double celsius) {
    return celsius + CELSIUS_ZERO;
  }

  /**
   * Converts to degrees Celsius.
   *
   * @param kelvin temperature [K]
   * @return temperature [°C]
   */
  public static double toCelsius(double kelvin) {
    return kelvin - CELSIUS_ZERO;
  }

  /**
   * Converts from degrees Fahrenheit.
   *
   * @param fahrenheit temperature [°F]
   * @return temperature [K]
   */
  public static double fromFahrenheit(double fahrenheit) {
    return (fahrenheit - 32) / 1.8 + CELSIUS_ZERO;
  }

  /**
   * Converts to degrees Fahrenheit.
   *
   * @param kelvin temperature [K]
   * @return temperature [°F]
   */
  public static double toFahrenheit(double kelvin) {
    return (kelvin - CELSIUS_ZERO) * 1.8 + 32;
  }
}
