package stenotherm.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RadiationTest {
  /** ISO 6946, table of hr0 by mean temperature: one decimal is printed. */
  @ParameterizedTest
  @CsvSource({"-10, 4.1", "0, 4.6", "10, 5.1", "20, 5.7", "30, 6.3"})
  void blackCoefficientOfIso6946(double celsius, double printed) {
    double computed = Radiation.blackCoefficient(Temperatures.fromCelsius(celsius));
    assertEquals(printed, computed, 0.05);
  }

  /** ASHRAE Fundamentals 2021, ch. 26, Table 2: two decimals are printed. */
  @ParameterizedTest
  @CsvSource({"0.9, 0.9, 0.82", "0.05, 0.9, 0.05"})
  void exchangeFactorOfAshrae(double first, double second, double printed) {
    assertEquals(printed, Radiation.exchangeFactor(first, second), 0.005);
  }

  /** Incropera, Example 9.2: a screen of emissivity 1 at 232 °C in a room at 23 °C gives 2355 W. */
  @Test
  void linearisedRadiationIsLowByTheStatedFraction() {
    double area = 0.71 * 1.02;
    double surface = 505;
    double room = 296;
    double mean = (surface + room) / 2;
    double linear = Radiation.blackCoefficient(mean) * area * (surface - room);
    double stated = Math.pow((surface - room) / (2 * mean), 2);
    assertEquals(2355, linear * (1 + stated), 1);
  }

  @Test
  void refusesAnEmissivityOutsideItsRange() {
    assertThrows(InvalidInputException.class, () -> Radiation.emissivity(0));
    assertThrows(InvalidInputException.class, () -> Radiation.emissivity(1.01));
    assertThrows(InvalidInputException.class, () -> Radiation.emissivity(Double.NaN));
    assertThrows(InvalidInputException.class, () -> Radiation.blackCoefficient(-20));
  }
}
