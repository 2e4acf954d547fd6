package stenotherm.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Source;

class FillConvectionTest {
  private static final double ROOM = 293.15;

  private static FillConvection fill(double voidSize, Range permeability) {
    return new FillConvection(0.055, voidSize, permeability, Source.assumed("made up"));
  }

  /**
   * By hand at 20 °C: a_m = 0.055 / (1.204 1007) = 4.5363e-5 m2/s; 9.80665 / 293.15 40 K 0.07 m
   * 3.6e-7 m2 / (1.51e-5 4.5363e-5).
   */
  @Test
  void darcyRayleighByHand() {
    double byHand = 9.80665 / 293.15 * 40 * 3.6e-7 * 0.07 / (1.51e-5 * (0.055 / (1.204 * 1007)));
    Range found = fill(0.006, new Range(3.6e-7, 7.2e-7)).darcyRayleigh(0.07, 40, ROOM);
    assertEquals(byHand, found.low(), 1e-9 * byHand);
    assertEquals(2 * byHand, found.high(), 1e-9 * byHand);
    assertEquals(39.478, FillConvection.CRITICAL_DARCY_RAYLEIGH, 5e-4);
  }

  /** Under 570 K/m single voids of 14 mm turn over. */
  @Test
  void aLargeVoidTurnsOver() {
    FillConvection loose = FillConvection.of(Materials.LOOSE_NEWSPAPER).orElseThrow();
    double rayleigh = loose.voidRayleigh(0.1, 57, ROOM);
    double byHand =
        9.80665 / 293.15 * 570 * Math.pow(0.014, 4) / (1.51e-5 * 0.0257 / (1.204 * 1007));
    assertEquals(byHand, rayleigh, 1e-9 * byHand);
    // 13 mm is the largest void that stays at rest, by the fourth root
    assertEquals(0.0130, 0.014 * Math.pow(FillConvection.CRITICAL_RAYLEIGH / rayleigh, 0.25), 5e-5);
  }

  @Test
  void permeabilityGrowsWithTheSquareOfTheVoids() {
    FillConvection tight = FillConvection.of(Materials.CRUMPLED_NEWSPAPER).orElseThrow();
    FillConvection loose = FillConvection.of(Materials.LOOSE_NEWSPAPER).orElseThrow();
    double ratio = Math.pow(0.014 / 0.006, 2);
    assertEquals(ratio, loose.permeability().high() / tight.permeability().high(), 1e-9);
    assertEquals(0.95 * 0.006 * 0.006 / 80 * 3, tight.permeability().high(), 1e-15);
    assertTrue(FillConvection.of(Materials.EPS_20).isEmpty());
  }

  @Test
  void warmAirIsMoreViscous() {
    FillConvection fill = fill(0.006, new Range(1e-7, 1e-7));
    assertTrue(fill.voidRayleigh(0.1, 10, 313.15) < fill.voidRayleigh(0.1, 10, 273.15));
    assertEquals(0, fill.darcyRayleigh(0.1, 0, ROOM).high());
  }

  @Test
  void badNumbersAreRefused() {
    assertThrows(InvalidInputException.class, () -> fill(0, new Range(1e-7, 1e-7)));
    assertThrows(InvalidInputException.class, () -> fill(0.006, new Range(0, 1e-7)));
    FillConvection fill = fill(0.006, new Range(1e-7, 1e-7));
    assertThrows(InvalidInputException.class, () -> fill.voidRayleigh(0, 1, ROOM));
    assertThrows(InvalidInputException.class, () -> fill.darcyRayleigh(0.1, -1, ROOM));
    assertThrows(InvalidInputException.class, () -> fill.darcyRayleigh(0.1, 1, 0.5));
  }
}
