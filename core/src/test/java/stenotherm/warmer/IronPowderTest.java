package stenotherm.warmer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import stenotherm.base.InvalidInputException;

class IronPowderTest {
  private static final AirFilm FILM = new AirFilm(2.5e-8, 0.01, AirFilm.Transport.KNUDSEN);
  private static final IronPowder POWDER = powder(0.5, 8);

  private static IronPowder powder(double crust, double surplus) {
    return new IronPowder(
        0.05,
        FILM,
        crust,
        new PowderKinetics(surplus * 2.5e-10 / 0.05, 40e3, 600),
        OxidationProduct.LEPIDOCROCITE);
  }

  private static IronPowder.Supply at(double open, double temperature) {
    return new IronPowder.Supply(open, 101_325, temperature);
  }

  /**
   * By hand, in resistances of the film: crust 0.5 (1 / 0.8 - 1) = 0.125 and reaction 1 / (8 x 0.64
   * (1 - 1 / e)) at X = 1 - 0.8^3, 40 °C and the wetting time.
   */
  @Test
  void resistancesStandInSeries() {
    double kinetic = 1 / (8 * 0.64 * (1 - Math.exp(-1)));
    double expected = 2.5e-10 / (1 + 0.125 + kinetic);
    double conversion = 1 - 0.512;
    double uptake = POWDER.uptake(conversion, 600, at(1, 313.15));
    assertEquals(1, uptake / expected, 1e-12);
    // half of the film: only its own resistance doubles
    double half = POWDER.uptake(conversion, 600, at(0.5, 313.15));
    assertEquals(1, half * (2 + 0.125 + kinetic) / 2.5e-10, 1e-12);
    assertEquals(0, POWDER.uptake(conversion, 600, at(0, 313.15)));
    assertEquals(0, POWDER.uptake(conversion, 0, at(1, 313.15)));
    assertEquals(0, POWDER.uptake(1, 600, at(1, 313.15)));
  }

  /** 50 g of iron are 0.895 mol, which take 0.671 mol of oxygen and give 364 kJ. */
  @Test
  void heatAndOxygenGoTogether() {
    double oxygen = 1 / POWDER.conversionPerOxygen();
    assertEquals(0.05 / 0.055845 * 0.75, oxygen, 1e-12);
    assertEquals(POWDER.heat(), oxygen * POWDER.product().heatPerOxygen(), 1e-6);
    assertEquals(364, POWDER.heat() / 1e3, 0.5);
  }

  @Test
  void whatLimitsIsNamed() {
    assertLimit(IronPowder.LimitedBy.FILM, POWDER, 0.05, at(1, 313));
    assertLimit(IronPowder.LimitedBy.KINETICS, powder(0.5, 0.5), 0.05, at(1, 313));
    assertLimit(IronPowder.LimitedBy.KINETICS, POWDER, 0.05, at(1, 250));
    assertLimit(IronPowder.LimitedBy.CRUST, powder(5, 8), 0.7, at(1, 313));
    assertLimit(IronPowder.LimitedBy.SPENT, POWDER, 0.9995, at(1, 313));
    assertLimit(IronPowder.LimitedBy.CLOSED, POWDER, 0.05, at(0, 313));
    assertEquals(IronPowder.LimitedBy.OXYGEN, POWDER.limitedBy(0.05, 1e5, at(1, 313), 0.5));
    assertEquals(IronPowder.LimitedBy.CLOSED, POWDER.limitedBy(0.05, 0, at(1, 313), 0.5));
    assertTrue(IronPowder.LimitedBy.KINETICS.words().contains("cold"));
  }

  @Test
  void closedWarmerHasNoGain() {
    assertEquals(0, POWDER.growth(0.05, 0, at(1, 313)));
    assertEquals(0, POWDER.growth(0.05, 1e5, at(0, 313)));
  }

  private static void assertLimit(
      IronPowder.LimitedBy limit, IronPowder powder, double conversion, IronPowder.Supply at) {
    assertEquals(limit, powder.limitedBy(conversion, 1e5, at, 1));
  }

  @Test
  void badValuesAreRefused() {
    assertRefused("permeance of the film", () -> new AirFilm(0, 0.01, AirFilm.Transport.FICK));
    assertRefused("area of the film", () -> new AirFilm(1e-8, -1, AirFilm.Transport.FICK));
    // kJ for J is not told from little; 40 MJ is
    assertRefused("activation energy", () -> new PowderKinetics(4e-8, 40e6, 600));
    assertRefused("wetting time", () -> new PowderKinetics(4e-8, 40e3, 0));
    assertRefused("conductance of the powder", () -> new PowderKinetics(0, 40e3, 600));
    assertRefused("crust", () -> powder(11, 8));
    assertRefused(
        "mass of iron",
        () -> new IronPowder(0, FILM, 0.5, POWDER.kinetics(), OxidationProduct.LEPIDOCROCITE));
  }

  private static void assertRefused(String field, Executable bad) {
    assertEquals(field, assertThrows(InvalidInputException.class, bad).field());
  }
}
