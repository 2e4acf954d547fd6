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
  private static final String IN_KELVIN = "Is it in kelvin?";

  /** The range of kelvins [°C]. */
  private static final Range CELSIUS =
      new Range(
          Temperatures.toCelsius(Checks.PARCEL_TEMPERATURES.low()),
          Temperatures.toCelsius(Checks.PARCEL_TEMPERATURES.high()));

  /** The same [°F]. */
  private static final Range FAHRENHEIT =
      new Range(
          Temperatures.toFahrenheit(Checks.PARCEL_TEMPERATURES.low()),
          Temperatures.toFahrenheit(Checks.PARCEL_TEMPERATURES.high()));

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
   * @throws InvalidInputException if it is not within 200 K to 350 K; the message is in degrees
   *     Celsius
   */
  public static Temperature celsius(double degrees) {
    Checks.within(
        "temperature",
        degrees,
        CELSIUS,
        "°C",
        Checks.PARCEL_TEMPERATURES.contains(degrees)
            ? IN_KELVIN
            : FAHRENHEIT.contains(degrees) ? "Is it in degrees Fahrenheit?" : "");
    return new Temperature(Temperatures.fromCelsius(degrees));
  }

  /**
   * A temperature in degrees Fahrenheit.
   *
   * @param degrees the temperature [°F]
   * @return the temperature
   * @throws InvalidInputException if it is not within 200 K to 350 K; the message is in degrees
   *     Fahrenheit
   */
  public static Temperature fahrenheit(double degrees) {
    Checks.within(
        "temperature",
        degrees,
        FAHRENHEIT,
        "°F",
        Checks.PARCEL_TEMPERATURES.contains(degrees) ? IN_KELVIN : "");
    return new Temperature(Temperatures.fromFahrenheit(degrees));
  }
}
