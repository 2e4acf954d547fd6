package stenotherm.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;

class AbsorbentTest {
  private static final Absorbent TOWEL = new Absorbent(Materials.DRY_PAPER_TOWEL, Materials.PAPER);

  /**
   * Worked by hand for 60 kg/m3 of paper of 930 kg/m3: volume fractions 0.0645 paper, 0.06 w water,
   * the rest air.
   */
  @ParameterizedTest
  @CsvSource({
    "3, 0.0513, 0.139, 240, 3477.5",
    "5, 0.0749, 0.208, 360, 3715",
    "10, 0.193, 0.380, 660, 3930.9"
  })
  void bracketsTheConductivity(
      double water, double lower, double upper, double density, double heat) {
    Material damp = TOWEL.with("damp", water);
    assertEquals(lower, damp.conductivityRange().low(), 0.005 * lower);
    assertEquals(upper, damp.conductivityRange().high(), 0.005 * upper);
    assertEquals(Math.sqrt(lower * upper), damp.conductivity(), 0.005 * upper);
    assertEquals(density, damp.density(), 1e-9);
    assertEquals(heat, damp.specificHeat(), 0.05);
  }

  /** The towel of the catalogue carries the same bounds in rounded form. */
  @Test
  void agreesWithTheDampTowel() {
    Material damp = TOWEL.with("damp", 3);
    assertEquals(
        Materials.DAMP_PAPER_TOWEL.conductivity(), damp.conductivity(), 0.05 * damp.conductivity());
    assertEquals(Materials.DAMP_PAPER_TOWEL.density(), damp.density(), 1e-9);
  }

  /** Without air the bounds are those of water with a little paper. */
  @Test
  void fullPadConductsLikeWater() {
    Material full = TOWEL.with("full", TOWEL.mostWater());
    assertTrue(new Range(0.5, 0.6).contains(full.conductivity()));
    assertEquals(15.6, TOWEL.mostWater(), 0.05);
  }

  @Test
  void moreThanFitsAndPadsWithoutAirAreRefused() {
    assertThrows(InvalidInputException.class, () -> TOWEL.with("drowned", 16));
    assertThrows(InvalidInputException.class, () -> TOWEL.with("negative", -1));
    assertThrows(
        InvalidInputException.class,
        () -> new Absorbent(Materials.PAPER, Materials.DRY_PAPER_TOWEL));
  }
}
