package stenotherm.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Source;
import stenotherm.base.Temperatures;

class TemperatureCorrectionTest {
  private static final TemperatureCorrection EPS = TemperatureCorrection.EXPANDED_POLYSTYRENE;

  /** Form of ISO 10456:2007: 0.0035 per kelvin over -20 K and +30 K, worked by hand. */
  @Test
  void expandedPolystyreneInTheColdAndInTheHeat() {
    assertEquals(0.932, EPS.factor(Temperatures.fromCelsius(-10)), 0.0005);
    assertEquals(1.111, EPS.factor(Temperatures.fromCelsius(40)), 0.0005);
  }

  @Test
  void isOneAtTheReference() {
    assertEquals(1, EPS.factor(EPS.referenceTemperature()));
  }

  @Test
  void holdsTheConductivityBelowItsLowestTemperature() {
    TemperatureCorrection foam = TemperatureCorrection.POLYURETHANE;
    assertEquals(1, foam.factor(263.15));
    assertEquals(Math.exp(0.0055 * 20), foam.factor(303.15), 1e-12);
    assertEquals(1, foam.from(283.15).factor(283.15));
    assertEquals(
        foam.factor(303.15) / foam.factor(297.15), foam.from(297.15).factor(303.15), 1e-12);
  }

  @Test
  void refusesPercentPerKelvinAndCelsius() {
    assertThrows(
        InvalidInputException.class,
        () -> new TemperatureCorrection(0.35, 283.15, Source.assumed("percent")));
    assertThrows(InvalidInputException.class, () -> EPS.factor(-10));
  }
}
