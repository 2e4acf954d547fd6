package stenotherm.material;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import stenotherm.base.Range;

class EnthalpyCurveTest {
  private static final Melting ICE = new Melting(new Range(273.15, 273.15), 333_600, 0.56, 4218);
  private static final Melting WAX = new Melting(new Range(290, 294), 200_000, 0.15, 2200);

  /** Half a kilogram of ice from -10 to 10 Celsius takes sensible, latent and sensible heat. */
  @Test
  void iceTakesLatentHeatAtItsMeltingPoint() {
    EnthalpyCurve ice = new EnthalpyCurve(ICE, 0.5, 2100);
    double risen = ice.enthalpy(283.15) - ice.enthalpy(263.15);
    assertEquals(0.5 * (10 * 2100 + 333_600 + 10 * 4218), risen, 1e-6);
    double half = ice.enthalpyAtFraction(0.5);
    assertEquals(273.15, ice.temperature(half), EnthalpyCurve.NARROWEST / 2);
    assertEquals(0.5, ice.liquidFraction(half), 1e-12);
    assertEquals(0, ice.phase(half));
  }

  @Test
  void temperatureAndEnthalpyFollowFromEachOther() {
    EnthalpyCurve wax = new EnthalpyCurve(WAX, 0.2, 1900);
    for (double temperature = 280; temperature < 305; temperature += 0.7) {
      assertEquals(temperature, wax.temperature(wax.enthalpy(temperature)), 1e-9);
    }
    assertEquals(292, wax.temperature(wax.enthalpyAtFraction(0.5)), 1e-9);
    assertEquals(0.2 * 200_000, wax.latent(), 1e-6);
    assertEquals(0, wax.liquidFraction(wax.enthalpy(280)));
    assertEquals(1, wax.liquidFraction(wax.enthalpy(300)));
  }
}
