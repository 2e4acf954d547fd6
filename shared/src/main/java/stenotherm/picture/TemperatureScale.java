package stenotherm.picture;

import java.util.function.DoubleUnaryOperator;
import stenotherm.base.Temperatures;
import stenotherm.words.Units;

/** The two scales of temperature that axes have. */
enum TemperatureScale {
  CELSIUS("°C", Temperatures::toCelsius, Temperatures::fromCelsius),
  FAHRENHEIT("°F", Temperatures::toFahrenheit, Temperatures::fromFahrenheit);

  private final String unit;
  private final DoubleUnaryOperator fromKelvin;
  private final DoubleUnaryOperator toKelvin;

  TemperatureScale(String unit, DoubleUnaryOperator fromKelvin, DoubleUnaryOperator toKelvin) {
    this.unit = unit;
    this.fromKelvin = fromKelvin;
    this.toKelvin = toKelvin;
  }

  /** The scale that a reader of some units thinks in. */
  static TemperatureScale of(Units units) {
    return units == Units.US ? FAHRENHEIT : CELSIUS;
  }

  String unit() {
    return unit;
  }

  /** A temperature [K] on this scale. */
  double of(double kelvin) {
    return fromKelvin.applyAsDouble(kelvin);
  }

  /** The temperature [K] of a value on this scale. */
  double kelvin(double value) {
    return toKelvin.applyAsDouble(value);
  }
}
