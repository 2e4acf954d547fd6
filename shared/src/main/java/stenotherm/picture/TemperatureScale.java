package stenotherm.picture;

import java.util.function.DoubleUnaryOperator;
import stenotherm.base.TemperatureDifferences;
import stenotherm.base.Temperatures;
import stenotherm.words.Units;

/** The two scales of temperature that axes have. */
enum TemperatureScale {
  CELSIUS(
      "°C",
      "K",
      Temperatures::toCelsius,
      Temperatures::fromCelsius,
      DoubleUnaryOperator.identity(),
      DoubleUnaryOperator.identity()),
  FAHRENHEIT(
      "°F",
      "F°",
      Temperatures::toFahrenheit,
      Temperatures::fromFahrenheit,
      TemperatureDifferences::toFahrenheit,
      TemperatureDifferences::fromFahrenheit);

  private final String unit;
  private final String differenceUnit;
  private final DoubleUnaryOperator fromKelvin;
  private final DoubleUnaryOperator toKelvin;
  private final DoubleUnaryOperator differenceFromKelvin;
  private final DoubleUnaryOperator differenceToKelvin;

  TemperatureScale(
      String unit,
      String differenceUnit,
      DoubleUnaryOperator fromKelvin,
      DoubleUnaryOperator toKelvin,
      DoubleUnaryOperator differenceFromKelvin,
      DoubleUnaryOperator differenceToKelvin) {
    this.unit = unit;
    this.differenceUnit = differenceUnit;
    this.fromKelvin = fromKelvin;
    this.toKelvin = toKelvin;
    this.differenceFromKelvin = differenceFromKelvin;
    this.differenceToKelvin = differenceToKelvin;
  }

  /** The scale that a reader of some units thinks in. */
  static TemperatureScale of(Units units) {
    return units == Units.US ? FAHRENHEIT : CELSIUS;
  }

  TemperatureScale other() {
    return this == CELSIUS ? FAHRENHEIT : CELSIUS;
  }

  String unit() {
    return unit;
  }

  String differenceUnit() {
    return differenceUnit;
  }

  /** A temperature [K] on this scale. */
  double of(double kelvin) {
    return fromKelvin.applyAsDouble(kelvin);
  }

  /** The temperature [K] of a value on this scale. */
  double kelvin(double value) {
    return toKelvin.applyAsDouble(value);
  }

  /** A difference of temperature [K] in degrees of this scale. */
  double ofDifference(double kelvin) {
    return differenceFromKelvin.applyAsDouble(kelvin);
  }

  /** The difference [K] of so many degrees of this scale. */
  double kelvinOfDifference(double value) {
    return differenceToKelvin.applyAsDouble(value);
  }
}
