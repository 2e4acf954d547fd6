package stenotherm.base;

/**
 * A temperature with its unit spelled out, for arguments where kelvins and degrees are easily
 * mistaken.
 *
 * <p>A value, thus thread-safe.
 *
 * @param kelvin the temperature [K]
 */
public record Temperature(double kelvin) {
  /**
   * Checks the number.
   *
   * @throws InvalidInputException if it is not within 200 K to 350 K, which parcels meet
   */
  public Temperature {
    Checks.parcelTemperature("temperature", kelvin);
  }

  /**
   * A temperature in degrees Celsius.
   *
   * @param degrees the temperature [°C]
   * @return the temperature
   * @throws InvalidInputException if it is not within 200 K to 350 K
   */
  public static Temperature celsius(double degrees) {
    return new Temperature(Temperatures.fromCelsius(degrees));
  }

  /**
   * A temperature in degrees Fahrenheit.
   *
   * @param degrees the temperature [°F]
   * @return the temperature
   * @throws InvalidInputException if it is not within 200 K to 350 K
   */
  public static Temperature fahrenheit(double degrees) {
    return new Temperature(Temperatures.fromFahrenheit(degrees));
  }
}
