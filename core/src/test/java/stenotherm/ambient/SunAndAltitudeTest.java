package stenotherm.ambient;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stenotherm.air.StandardAtmosphere;
import stenotherm.base.Face;
import stenotherm.base.HeatDirection;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Lengths;
import stenotherm.base.Orientation;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.TimeFunction;

class SunAndAltitudeTest {
  private static final double CABIN = StandardAtmosphere.pressure(Lengths.fromFeet(8000));

  /** Standard atmosphere at altitudes in feet [kPa], as tables print it. */
  @ParameterizedTest
  @CsvSource({"0, 101.325", "6000, 81.2", "8000, 75.3", "14000, 59.5", "20000, 46.6"})
  void pressureFallsWithAltitude(double feet, double printed) {
    assertEquals(printed, StandardAtmosphere.pressure(Lengths.fromFeet(feet)) / 1000, 0.06);
  }

  /** By hand: 0.7 x 900 W/m2 over 12 and 20 W/(m2 K). */
  @Test
  void theSunRaisesTheAmbient() {
    assertEquals(52.5, SolAir.rise(0.7 * 900, 0, 12), 1e-12);
    assertEquals(31.5, SolAir.rise(0.7 * 900, 0, 20), 1e-12);
    // ASHRAE's 4 K of a horizontal surface: 63 W/m2 over 17 W/(m2 K)
    assertEquals(-3.7, SolAir.rise(0, SolAir.CLEAR_SKY_LOSS, 17), 0.01);
    assertThrows(InvalidInputException.class, () -> SolAir.rise(-1, 0, 12));
    assertThrows(InvalidInputException.class, () -> SolAir.rise(1, 0, 0));
  }

  /** Natural convection goes with the square root of pressure, forced with pressure itself. */
  @Test
  void thinAirCarriesOffLess() {
    AirMovement still = AirMovement.STILL;
    double ratio =
        still.convective(HeatDirection.HORIZONTAL, CABIN)
            / still.convective(HeatDirection.HORIZONTAL, StandardAtmosphere.SEA_LEVEL_PRESSURE);
    assertEquals(Math.sqrt(CABIN / 101_325), ratio, 1e-12);
    assertEquals(0.862, ratio, 0.001);
    AirMovement wind = new AirMovement.Moving(5);
    assertEquals(
        24, wind.convective(HeatDirection.UPWARD, StandardAtmosphere.SEA_LEVEL_PRESSURE), 1e-12);
    assertEquals(
        4 * ratio + 20 * ratio * ratio, wind.convective(HeatDirection.UPWARD, CABIN), 1e-12);
    assertThrows(
        InvalidInputException.class, () -> still.convective(HeatDirection.UPWARD, 101.325));
  }

  @Test
  void filmsFollowTheOrientation() {
    FaceFilms shelf = new FaceFilms(AirMovement.STILL, 0.9, new Underside.Open());
    for (Orientation orientation : Orientation.values()) {
      for (Face world : Face.values()) {
        assertEquals(
            shelf.coefficient(world, 300, 290),
            shelf.coefficient(orientation.facing(world), orientation, 300, 290, 101_325),
            1e-12);
      }
      Face down = orientation.down();
      FaceFilms floor = FaceFilms.indoors();
      assertEquals(12.5, floor.coefficient(down, orientation, 300, 290, CABIN), 1e-12);
      assertTrue(floor.rests(down, orientation));
      assertFalse(floor.rests(down.opposite(), orientation));
      assertFalse(shelf.rests(down, orientation));
    }
  }

  @Test
  void absorptancesStayInTheirRange() {
    for (SolarAbsorptance each :
        new SolarAbsorptance[] {
          SolarAbsorptance.KRAFT_BOARD, SolarAbsorptance.WHITE_PAINT, SolarAbsorptance.BLACK_PAINT
        }) {
      assertTrue(each.range().contains(each.nominal()));
    }
    assertEquals(0.6, SolarAbsorptance.KRAFT_BOARD.nominal());
    assertEquals(new Range(0.45, 0.75), SolarAbsorptance.KRAFT_BOARD.range());
    Source source = Source.assumed("made up");
    assertEquals(new Range(0.3, 0.3), SolarAbsorptance.of(0.3, source).range());
    assertThrows(InvalidInputException.class, () -> SolarAbsorptance.of(1.2, source));
    assertThrows(
        InvalidInputException.class, () -> new SolarAbsorptance(0.5, new Range(0.6, 0.7), source));
    assertThrows(
        InvalidInputException.class,
        () -> new Sunshine(Map.of(), SolarAbsorptance.KRAFT_BOARD, -1));
    assertTrue(Sunshine.NONE.isNone());
    assertFalse(
        Sunshine.on(Face.Z_MAX, TimeFunction.constant(1), SolarAbsorptance.KRAFT_BOARD).isNone());
  }

  @Test
  void situationsSayWhereTheyComeFrom() {
    for (Situation situation : Situations.all()) {
      assertFalse(situation.source().text().isBlank());
      // warm enough that nothing is heated
      TimeFunction air =
          situation.rule().course(TimeFunction.constant(287.15), new Range(0, 86_400));
      double temperature = air.at(40_000);
      assertTrue(temperature > 275 && temperature < 300, situation.name());
      TimeFunction warmer =
          situation.rule().course(TimeFunction.constant(288.15), new Range(0, 86_400));
      assertEquals(
          situation.rule().followsOutdoors() ? 1 : 0, warmer.at(40_000) - temperature, 1e-9);
    }
    assertEquals(
        Situations.all().size(), Situations.all().stream().map(Situation::name).distinct().count());
  }
}
