package stenotherm.ambient;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stenotherm.base.InvalidInputException;

class NaturalConvectionTest {
  /** Incropera and DeWitt, Table A.4 at 400 K, as Example 9.2 uses it. */
  private static final AirProperties AIR_400 = new AirProperties(0.0338, 26.4e-6, 38.3e-6);

  /** Incropera and DeWitt, Table A.4 at 303 K, as Example 9.3 uses it. */
  private static final AirProperties AIR_303 = new AirProperties(0.0265, 16.2e-6, 22.9e-6);

  /** Air at 20 °C. */
  private static final AirProperties AIR_293 = new AirProperties(0.02576, 15.16e-6, 21.39e-6);

  /**
   * Incropera and DeWitt, Example 9.2: a glass screen 0.71 m high and 1.02 m wide, 209 K warmer
   * than the room. The book rounds the film temperature to 400 K, takes g as 9.8 m/s2 and prints Ra
   * 1.813e9, Nu 147, h 7.0 and 1060 W.
   */
  @Test
  void exampleOfAFireScreen() {
    Plate screen = new Plate(0.71, 400 + 104.5, 400 - 104.5);
    NaturalConvection film = NaturalConvection.vertical(screen, AIR_400);
    assertEquals(1.813e9, film.rayleigh(), 0.001 * 1.813e9);
    assertEquals(147, film.nusselt(), 0.5);
    assertEquals(7.0, film.coefficient(), 0.05);
    assertEquals(1060, film.coefficient() * 0.71 * 1.02 * 209, 5);
    assertTrue(film.withinRange());
  }

  /**
   * Incropera and DeWitt, Example 9.3: a duct 0.75 m wide and 0.3 m high at 45 °C in air at 15 °C.
   * Printed: 4.23 at the sides, 5.47 on top, 2.07 below, 246 W per metre. The book rounds the
   * Rayleigh and Nusselt numbers on the way: 0.01 in the coefficients.
   */
  @Test
  void exampleOfAVentilationDuct() {
    double hot = 318.15;
    double cool = 288.15;
    double side =
        NaturalConvection.verticalLaminar(new Plate(0.3, hot, cool), AIR_303).coefficient();
    Plate level = new Plate(0.75 / 2, hot, cool);
    double top = NaturalConvection.upperSide(level, AIR_303).coefficient();
    double bottom = NaturalConvection.lowerSide(level, AIR_303).coefficient();
    assertEquals(4.23, side, 0.01);
    assertEquals(5.47, top, 0.01);
    assertEquals(2.07, bottom, 0.01);
    assertEquals(246, (2 * side * 0.3 + (top + bottom) * 0.75) * 30, 0.5);
  }

  /**
   * ASHRAE Fundamentals 2021, ch. 4, Table 9, worked for a face 0.2 m high at 5 K and 10 K in air
   * at 20 °C, with the film's expansion of 1/293.15 K; and its short form for air, 1.33
   * (dT/L)^(1/4), which is 4 % lower here.
   */
  @ParameterizedTest
  @CsvSource({"5, 3.07237, 3.13462, 2.97397", "10, 3.63711, 3.80658, 3.53667"})
  void aParcelsFace(double difference, double laminar, double full, double shortForm) {
    Plate face = new Plate(0.2, 293.15 + difference / 2, 293.15 - difference / 2);
    assertEquals(
        laminar, NaturalConvection.verticalLaminar(face, AIR_293).coefficient(), 0.001 * laminar);
    assertEquals(full, NaturalConvection.vertical(face, AIR_293).coefficient(), 0.001 * full);
    assertEquals(
        shortForm, NaturalConvection.verticalLaminar(face, AIR_293).coefficient(), 0.04 * laminar);
  }

  @Test
  void theFavourableSideFollowsTheSignOfTheDifference() {
    Plate warm = new Plate(0.1, 303, 293);
    Plate cold = new Plate(0.1, 293, 303);
    assertEquals(
        NaturalConvection.upperSide(warm, AIR_293), NaturalConvection.lowerSide(cold, AIR_293));
    assertEquals(
        NaturalConvection.lowerSide(warm, AIR_293), NaturalConvection.upperSide(cold, AIR_293));
    assertTrue(
        NaturalConvection.upperSide(warm, AIR_293).coefficient()
            > NaturalConvection.lowerSide(warm, AIR_293).coefficient());
  }

  @Test
  void saysWhenItIsOutOfRange() {
    Plate coin = new Plate(0.005, 294, 293);
    assertFalse(NaturalConvection.upperSide(coin, AIR_293).withinRange());
    assertFalse(NaturalConvection.lowerSide(coin, AIR_293).withinRange());
    assertTrue(NaturalConvection.vertical(coin, AIR_293).withinRange());
    Plate wall = new Plate(3, 313, 293);
    assertFalse(NaturalConvection.verticalLaminar(wall, AIR_293).withinRange());
    assertTrue(NaturalConvection.vertical(wall, AIR_293).withinRange());
  }

  @Test
  void equalTemperaturesAreOutOfRangeAndFinite() {
    NaturalConvection none = NaturalConvection.vertical(new Plate(0.2, 293, 293), AIR_293);
    assertEquals(0, none.rayleigh());
    assertFalse(none.withinRange());
    assertTrue(none.coefficient() > 0);
  }

  @Test
  void badPlatesAreRefused() {
    assertThrows(InvalidInputException.class, () -> new Plate(0, 293, 283));
    assertThrows(InvalidInputException.class, () -> new Plate(0.2, 20, -10));
  }
}
