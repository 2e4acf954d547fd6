package stenotherm.ambient;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stenotherm.air.StandardAtmosphere;
import stenotherm.base.HeatDirection;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Temperatures;

class SurfaceFilmTest {
  private static final double TEN_CELSIUS = Temperatures.fromCelsius(10);
  private static final double TWENTY_CELSIUS = Temperatures.fromCelsius(20);

  /** ISO 6946, table of surface resistances (Rsi), emissivity 0.9 at 20 °C: as printed. */
  @ParameterizedTest
  @CsvSource({"UPWARD, 0.10", "HORIZONTAL, 0.13", "DOWNWARD, 0.17"})
  void internalResistancesOfIso6946(HeatDirection heatFlow, double printed) {
    SurfaceFilm film = SurfaceFilm.of(AirMovement.STILL, heatFlow, 0.9, TWENTY_CELSIUS);
    assertEquals(printed, film.resistance(), 0.005);
  }

  /** ISO 6946, Rse: 4 m/s, emissivity 0.9 at 10 °C: 0.04 m2 K/W as printed. */
  @ParameterizedTest
  @CsvSource({"UPWARD", "HORIZONTAL", "DOWNWARD"})
  void externalResistanceOfIso6946(HeatDirection heatFlow) {
    SurfaceFilm film = SurfaceFilm.of(new AirMovement.Moving(4), heatFlow, 0.9, TEN_CELSIUS);
    assertEquals(0.04, film.resistance(), 0.005);
  }

  /** ISO 6946 as quoted by ASHRAE Fundamentals 2021, ch. 26, Table 11: h of 10, 7.7, 6 and 25. */
  @Test
  void coefficientsAreTheRoundedReciprocals() {
    assertEquals(10, still(HeatDirection.UPWARD, 0.9, TWENTY_CELSIUS), 0.5);
    assertEquals(7.7, still(HeatDirection.HORIZONTAL, 0.9, TWENTY_CELSIUS), 0.1);
    assertEquals(6, still(HeatDirection.DOWNWARD, 0.9, TWENTY_CELSIUS), 0.5);
    SurfaceFilm windy =
        SurfaceFilm.of(new AirMovement.Moving(4), HeatDirection.HORIZONTAL, 0.9, TEN_CELSIUS);
    assertEquals(25, windy.coefficient(), 0.5);
  }

  private static double still(HeatDirection heatFlow, double emissivity, double mean) {
    return SurfaceFilm.of(AirMovement.STILL, heatFlow, emissivity, mean).coefficient();
  }

  /**
   * ASHRAE Fundamentals 2021, ch. 26, Table 10, moving air: 34.0 at 6.7 m/s and 22.7 at 3.4 m/s, an
   * independent rule. Five percent is how far the two rules differ.
   */
  @ParameterizedTest
  @CsvSource({"6.7, 34.0", "3.4, 22.7"})
  void movingAirAgreesWithAshraeWithinFivePercent(double speed, double printed) {
    SurfaceFilm film =
        SurfaceFilm.of(new AirMovement.Moving(speed), HeatDirection.HORIZONTAL, 0.9, TEN_CELSIUS);
    assertEquals(printed, film.coefficient(), 0.05 * printed);
  }

  @Test
  void movingAirIsNeverLessThanStillAir() {
    assertEquals(
        5,
        new AirMovement.Moving(0)
            .convective(HeatDirection.UPWARD, StandardAtmosphere.SEA_LEVEL_PRESSURE));
    assertEquals(
        4,
        new AirMovement.Moving(0)
            .convective(HeatDirection.DOWNWARD, StandardAtmosphere.SEA_LEVEL_PRESSURE));
    assertEquals(
        6,
        new AirMovement.Moving(0.5)
            .convective(HeatDirection.UPWARD, StandardAtmosphere.SEA_LEVEL_PRESSURE));
  }

  @Test
  void badValuesAreRefused() {
    assertThrows(InvalidInputException.class, () -> new SurfaceFilm(-1, 5));
    assertThrows(InvalidInputException.class, () -> new SurfaceFilm(0, 0));
    assertThrows(InvalidInputException.class, () -> new SurfaceFilm(Double.NaN, 5));
    assertThrows(InvalidInputException.class, () -> new AirMovement.Moving(-0.1));
    assertThrows(InvalidInputException.class, () -> new AirMovement.Moving(10.1));
    assertThrows(
        InvalidInputException.class,
        () -> SurfaceFilm.of(AirMovement.STILL, HeatDirection.UPWARD, 0.9, -5));
  }
}
