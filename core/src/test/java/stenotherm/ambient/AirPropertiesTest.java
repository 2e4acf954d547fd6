package stenotherm.ambient;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stenotherm.base.InvalidInputException;

class AirPropertiesTest {
  private static final double SEA_LEVEL = AirProperties.SEA_LEVEL_PRESSURE;

  /**
   * Incropera and DeWitt, Table A.4 (from memory): conductivity in mW/(m K), viscosity and
   * diffusivity in mm2/s. Its densities (1.1614 kg/m3 at 300 K) are those of 100 kPa. One percent
   * covers its rounding and the specific heat, which is held at 1007 J/(kg K) here.
   */
  @ParameterizedTest
  @CsvSource({
    "250, 22.3, 11.44, 15.9, 0.01",
    "300, 26.3, 15.89, 22.5, 0.01",
    "350, 30.0, 20.92, 29.9, 0.01",
    "400, 33.8, 26.41, 38.3, 0.01"
  })
  void agreesWithTabulatedAir(
      double temperature,
      double conductivity,
      double viscosity,
      double diffusivity,
      double tolerance) {
    AirProperties air = AirProperties.dry(temperature, 100_000);
    assertEquals(conductivity, 1e3 * air.conductivity(), tolerance * conductivity);
    assertEquals(viscosity, 1e6 * air.kinematicViscosity(), tolerance * viscosity);
    assertEquals(diffusivity, 1e6 * air.diffusivity(), tolerance * diffusivity);
    assertEquals(0.70, air.prandtl(), 0.03);
  }

  @Test
  void thinAirIsMoreViscousAndConductsTheSame() {
    AirProperties aloft = AirProperties.dry(293.15, SEA_LEVEL / 2);
    AirProperties below = AirProperties.dry(293.15, SEA_LEVEL);
    assertEquals(below.conductivity(), aloft.conductivity());
    assertEquals(2 * below.kinematicViscosity(), aloft.kinematicViscosity(), 1e-18);
  }

  @Test
  void otherAirIsRefused() {
    assertThrows(InvalidInputException.class, () -> AirProperties.dry(20, SEA_LEVEL));
    assertThrows(InvalidInputException.class, () -> AirProperties.dry(293.15, 101.325));
    assertThrows(InvalidInputException.class, () -> new AirProperties(0, 1e-5, 1e-5));
  }
}
