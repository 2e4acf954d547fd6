package stenotherm.picture;

import stenotherm.base.TemperatureDifferences;
import stenotherm.base.Temperatures;
import stenotherm.words.Units;

/** The two scales of temperature that axes have. */
enum TemperatureScale {
  CELSIUS("°C", "K") {
    @Override
    double of(double kelvin) {
      return Temperatures.toCelsius(kelvin);
    }

    @Override
    double kelvin(double value) {
      return Temperatures.fromCelsius(value);
    }

    @Override
    double ofDifference(double kelvin) {
      return kelvin;
    }

    @Override
    double kelvinOfDifference(double value) {
      return value;
    }
  },
  FAHRENHEIT("°F", "F°") {
    @Override
    double of(double kelvin) {
      return Temperatures.toFahrenheit(kelvin);
    }

    @Override
    double kelvin(double value) {
      return Temperatures.fromFahrenheit(value);
    }

    @Override
    double ofDifference(double kelvin) {
      return TemperatureDifferences.toFahrenheit(kelvin);
    }

    @Override
    double kelvinOfDifference(double value) {
      return TemperatureDifferences.fromFahrenheit(value);
    }
  };

  private final String unit;
  private final String differenceUnit;

  TemperatureScale(String unit, String differenceUnit) {
    this.unit = unit;
    this.differenceUnit = differenceUnit;
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
  abstract double of(double kelvin);

  /** The temperature [K] of a value on this scale. */
  abstract double kelvin(double value);

  /** A difference of temperature [K] in degrees of this scale. */
  abstract double ofDifference(double kelvin);

  /** The difference [K] of so many degrees of this scale. */
  abstract double kelvinOfDifference(double value);
}
