package stenotherm.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;

class MaterialsTest {
  static Iterable<Material> catalogue() {
    return Materials.all();
  }

  @Test
  void namesAreUniqueWithoutRegardToCase() {
    Set<String> names = new HashSet<>();
    Materials.all().forEach(material -> names.add(material.name().toLowerCase(Locale.ROOT)));
    assertEquals(Materials.all().size(), names.size());
  }

  @ParameterizedTest
  @MethodSource("catalogue")
  void isFoundByItsName(Material material) {
    assertSame(material, Materials.named(material.name().toUpperCase(Locale.ROOT)));
  }

  /** Wide enough for everything in a parcel; a conductivity in mW/(m K) falls out. */
  @ParameterizedTest
  @MethodSource("catalogue")
  void isOfThisWorld(Material material) {
    assertTrue(new Range(0.02, 2.5).contains(material.conductivity()), material.name());
    assertTrue(new Range(1, 1500).contains(material.density()), material.name());
    assertTrue(new Range(1000, 4200).contains(material.specificHeat()), material.name());
  }

  /** Nothing but a gas is lighter than air for its heat capacity, nothing conducts less than it. */
  @ParameterizedTest
  @MethodSource("catalogue")
  void foamsAloneConductLessThanStillAir(Material material) {
    boolean foam = material.equals(Materials.PIR);
    assertEquals(foam, material.conductivity() < Materials.STILL_AIR.conductivity());
  }

  @Test
  void offersTheClosestName() {
    InvalidInputException problem =
        assertThrows(InvalidInputException.class, () -> Materials.named("corugated board"));
    assertEquals("material", problem.field());
    assertTrue(problem.problem().contains("\"corrugated board\""), problem.problem());
  }

  /**
   * EN 13163, Annex F, mean curve, at the densities of its common table: the fourth decimal as
   * rounded from the curve.
   */
  @ParameterizedTest
  @CsvSource({
    "10, 0.0432",
    "12, 0.0404",
    "15, 0.0377",
    "18, 0.0359",
    "20, 0.0350",
    "25, 0.0336",
    "30, 0.0327",
    "35, 0.0321",
    "40, 0.0317"
  })
  void expandedPolystyreneFollowsEn13163(double density, double printed) {
    assertEquals(printed, Materials.expandedPolystyrene(density).conductivity(), 0.00005);
  }

  /** ASHRAE Fundamentals, moulded beads: 0.0355 W/(m K) at 20 kg/m3. */
  @Test
  void expandedPolystyreneAgreesWithAshrae() {
    assertTrue(Materials.EPS_20.conductivityRange().contains(0.0355));
    assertEquals(0.0355, Materials.EPS_20.conductivity(), 0.02 * 0.0355);
  }

  /** Yucel et al., measurements on 10 to 30 kg/m3: 0.036 to 0.046 W/(m K). */
  @ParameterizedTest
  @ValueSource(doubles = {10, 15, 20, 30})
  void expandedPolystyreneMeetsTheMeasuredRange(double density) {
    Range range = Materials.expandedPolystyrene(density).conductivityRange();
    assertTrue(range.high() >= 0.0345 && range.low() <= 0.046, range.toString());
  }

  @Test
  void expandedPolystyreneIsNamedByItsDensity() {
    assertEquals("EPS 20", Materials.EPS_20.name());
    assertEquals("EPS 17.5", Materials.expandedPolystyrene(17.5).name());
    assertEquals(Materials.EPS_30, Materials.expandedPolystyrene(30));
  }

  @Test
  void expandedPolystyreneRefusesOtherDensities() {
    assertThrows(InvalidInputException.class, () -> Materials.expandedPolystyrene(7.9));
    assertThrows(InvalidInputException.class, () -> Materials.expandedPolystyrene(55.1));
    assertThrows(InvalidInputException.class, () -> Materials.expandedPolystyrene(Double.NaN));
  }

  /** As printed in EN 12524:2000 for plastics, water and ice. */
  @ParameterizedTest
  @CsvSource({
    "polypropylene, 0.22, 910, 1800",
    "polystyrene, 0.16, 1050, 1300",
    "'polyethylene, low density', 0.33, 920, 2200",
    "'polyethylene, high density', 0.50, 980, 1800",
    "water, 0.60, 1000, 4190",
    "ice, 2.2, 900, 2000"
  })
  void designValuesOfEn12524(String name, double conductivity, double density, double heat) {
    assertProperties(Materials.named(name), conductivity, density, heat);
  }

  /** As printed in ASHRAE Fundamentals. */
  @ParameterizedTest
  @CsvSource({
    "paperboard, 0.072, 480, 1380",
    "loose cellulose, 0.042, 42.5, 1380",
    "XPS, 0.026, 32.5, 1470",
    "PIR, 0.0235, 30, 1470"
  })
  void valuesOfAshrae(String name, double conductivity, double density, double heat) {
    assertProperties(Materials.named(name), conductivity, density, heat);
  }

  private static void assertProperties(
      Material material, double conductivity, double density, double heat) {
    assertEquals(conductivity, material.conductivity());
    assertEquals(density, material.density());
    assertEquals(heat, material.specificHeat());
  }

  /** Mixing by mass, worked by hand: 60 kg/m3 of paper and three times as much water. */
  @Test
  void dampTowelHoldsThreeGramsOfWaterToAGramOfPaper() {
    Material towel = Materials.DAMP_PAPER_TOWEL;
    assertEquals(60 * (1 + 3), towel.density());
    assertEquals((1340 + 3 * 4190) / 4.0, towel.specificHeat(), 0.5);
    Range range = towel.conductivityRange();
    assertEquals(Math.sqrt(range.low() * range.high()), towel.conductivity(), 0.0005);
  }

  @Test
  void catalogueCannotBeChanged() {
    assertThrows(UnsupportedOperationException.class, () -> Materials.all().remove(0));
    assertFalse(Materials.all().isEmpty());
  }
}
