package stenotherm.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Temperatures;

class MoistAirTest {
  private static final double SEA_LEVEL = StandardAtmosphere.SEA_LEVEL_PRESSURE;

  /**
   * ASHRAE Handbook of Fundamentals 2021, chapter 1: saturation pressures of table 3 [kPa] (read),
   * Hyland and Wexler's equations worked out apart to eight digits [Pa] (derived), and humidity
   * ratios of saturated air: as an ideal gas (derived) and of table 2 (read), which real air
   * exceeds by half a percent.
   */
  @ParameterizedTest
  @CsvSource({
    "-20, 0.10324, 103.26038, 0.0006344712, 0.0006373",
    "-10, 0.2599, 259.90286, 0.001599418, 0.0016062",
    "0, 0.6112, 611.21287, 0.003774466, 0.0037895",
    "10, 1.2282, 1227.9953, 0.007630054, 0.0076618",
    "20, 2.3392, 2338.8037, 0.01469505, 0.014761",
    "25, 3.1697, 3169.2165, 0.02008112, 0.020173",
    "30, 4.2467, 4246.0302, 0.02720257, 0.027333",
    "40, 7.3844, 7383.46, 0.04888259, 0.049145"
  })
  void saturationAndHumidityRatio(
      double celsius, double table, double equation, double ideal, double real) {
    double saturation = MoistAir.saturationPressure(Temperatures.fromCelsius(celsius));
    assertEquals(equation, saturation, 1e-7 * equation);
    assertEquals(1000 * table, saturation, 3e-4 * 1000 * table);
    double ratio = MoistAir.humidityRatio(saturation, SEA_LEVEL);
    assertEquals(ideal, ratio, 2e-5 * ideal);
    assertEquals(real, ratio, 0.006 * real);
  }

  @ParameterizedTest
  @CsvSource({"-39", "-20", "-0.01", "0.01", "12", "37", "89"})
  void dewPointInvertsSaturation(double celsius) {
    double temperature = Temperatures.fromCelsius(celsius);
    double pressure = MoistAir.saturationPressure(temperature);
    assertEquals(temperature, MoistAir.dewPoint(pressure), 1e-6);
  }

  /** IAPWS-95 [kJ/kg], from memory: 2441.7 at 25 °C, 2406.0 at 40 °C, 2357.7 at 60 °C. */
  @ParameterizedTest
  @CsvSource({"0, 2500.9", "25, 2441.7", "40, 2406.0", "60, 2357.7", "-10, 2834"})
  void latentHeat(double celsius, double printed) {
    double heat = MoistAir.latentHeat(Temperatures.fromCelsius(celsius));
    assertEquals(printed, heat / Gas.WATER_VAPOUR.molarMass() / 1000, 1);
  }

  /**
   * By hand from 28.966 g/mol: 1.1767 kg/m3, at 300 K; Incropera, table A.4 (from memory): 184.6e-7
   * Pa s, 1007 J/(kg K).
   */
  @Test
  void dryAirAt300K() {
    assertEquals(1.1767, MoistAir.density(300, SEA_LEVEL, 0), 0.001);
    assertEquals(184.6e-7, MoistAir.viscosity(300), 0.5e-7);
    assertEquals(1007, MoistAir.molarHeatCapacity(0) / MoistAir.DRY_AIR_MOLAR_MASS, 4);
  }

  /** CRC Handbook (from memory) [1e-5 m2/s] at 20 °C in air, two digits. */
  @ParameterizedTest
  @CsvSource({"OXYGEN, 2.0", "CARBON_DIOXIDE, 1.6", "WATER_VAPOUR, 2.5"})
  void diffusivities(Gas gas, double printed) {
    assertEquals(printed, 1e5 * gas.diffusivity(293.15, SEA_LEVEL), 0.05);
    assertEquals(
        2, gas.diffusivity(293.15, SEA_LEVEL / 2) / gas.diffusivity(293.15, SEA_LEVEL), 1e-12);
  }

  /** ICAO Standard Atmosphere, Doc 7488 (from memory) [hPa]. */
  @ParameterizedTest
  @CsvSource({"0, 1013.25", "1000, 898.75", "2000, 794.95", "5000, 540.20", "8000, 356.00"})
  void levelsOfTheStandardAtmosphere(double altitude, double printed) {
    assertEquals(printed, StandardAtmosphere.pressure(altitude) / 100, 0.02);
  }

  /** Feet taken as metres. */
  @Test
  void parcelsComeNoHigherThanTowns() {
    assertEquals(5500, StandardAtmosphere.checked("altitude", 5500));
    assertEquals(
        "altitude: 8000 m must lie between -500 m and 5500 m. Cabins and holds of aircraft are kept"
            + " at 2400 m or less: 8000 ft are 2438 m.",
        assertThrows(
                InvalidInputException.class, () -> StandardAtmosphere.checked("altitude", 8000))
            .getMessage());
  }

  @Test
  void fractionsOfOutsideAirSumToOne() {
    AmbientAir air = new AmbientAir(293.15, SEA_LEVEL, 0.5);
    double sum = 0;
    for (Gas gas : Gas.values()) {
      sum += air.fraction(gas);
    }
    assertEquals(1, sum, 1e-15);
    assertEquals(0.5 * 2338.8 / SEA_LEVEL, air.fraction(Gas.WATER_VAPOUR), 1e-6);
    // 20 °C, 50 %: 1.1988 kg/m3, by the CIPM-2007 equation
    assertEquals(1.1988, air.density(), 0.001);
  }

  @Test
  void refusesWhatIsNoAir() {
    assertThrows(InvalidInputException.class, () -> MoistAir.saturationPressure(20));
    assertThrows(InvalidInputException.class, () -> MoistAir.dewPoint(0));
    assertThrows(InvalidInputException.class, () -> new AmbientAir(293, 101.325, 0.5));
    assertThrows(InvalidInputException.class, () -> new AmbientAir(293, SEA_LEVEL, 50));
    BreathingLimits usual = BreathingLimits.ECTOTHERMS;
    assertThrows(
        InvalidInputException.class,
        () ->
            new BreathingLimits(
                0.15, 0.18, 0.1, usual.oxygenSource(), 0.01, 0.03, usual.carbonDioxideSource()));
  }
}
