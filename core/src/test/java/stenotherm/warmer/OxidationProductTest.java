package stenotherm.warmer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * By hand from enthalpies of formation: lepidocrocite -549.4 kJ/mol (Majzlan, Grevel, Navrotsky
 * 2003), haematite -824.2, magnetite -1118.4, liquid water -285.8 (handbook tables). 4 Fe + 3 O2 +
 * 2 H2O gives (4 x 549.4 - 2 x 285.8) / 3 = 542.0 kJ for each mole of oxygen.
 */
class OxidationProductTest {
  @ParameterizedTest
  @CsvSource({
    "LEPIDOCROCITE, 542.0, 7.279, 0.4297, 0.1613",
    "HAEMATITE, 549.5, 7.379, 0.4297, 0",
    "MAGNETITE, 559.2, 6.676, 0.3820, 0"
  })
  void heatOxygenAndWater(
      OxidationProduct product, double perOxygen, double perGram, double oxygen, double water) {
    assertEquals(perOxygen, product.heatPerOxygen() / 1e3, 0.05);
    assertEquals(perGram, product.heatPerIron() / 1e6, 0.0006);
    // grams for each gram of iron
    assertEquals(oxygen, product.oxygenPerIron() * 31.998e-3, 0.0001);
    assertEquals(water, product.waterPerOxygen() * product.oxygenPerIron() * 18.015e-3, 0.0001);
  }
}
