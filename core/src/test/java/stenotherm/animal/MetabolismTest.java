package stenotherm.animal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stenotherm.base.InvalidInputException;
import stenotherm.material.Materials;

class MetabolismTest {
  /** TrenchR's own test value of Gillooly et al. 2001 (read): 100 g at 303 K, 0.0628 W. */
  @Test
  void reptileOfAHundredGrams() {
    assertEquals(0.0628, Metabolism.heat(AnimalGroup.REPTILE, 0.1, 303), 0.00005);
  }

  /** Andrews and Pough 1985: 40 g at 25 °C, 2.2 mL/h and 0.012 W standard, 0.017 W resting. */
  @Test
  void lizardOfFortyGrams() {
    double standard = Metabolism.standardUptake(0.040, 298.15);
    assertEquals(2.2, standard * 22_414 * 3600, 0.05);
    assertEquals(0.012, standard * 22_414 * Metabolism.HEAT_PER_MILLILITRE, 0.0005);
    Metabolism resting = Metabolism.resting(AnimalGroup.REPTILE, 0.040, 298.15);
    assertEquals(0.017, resting.heat(), 0.0005);
    // 10^0.14
    assertEquals(1.380384, resting.oxygen() / standard, 1e-6);
    assertEquals(0.8 * resting.oxygen(), resting.carbonDioxide(), 1e-15);
    // 450 kJ/mol of oxygen
    assertEquals(450e3, resting.heat() / resting.oxygen(), 1e3);
    assertTrue(resting.withinRange());
    assertFalse(Metabolism.resting(AnimalGroup.REPTILE, 0.040, 320).withinRange());
  }

  /** By hand: exp(16.68 - 5760/293.15) 10^0.75 / 60 and exp(27.62 - 9150/293.15) 1 / 60. */
  @Test
  void othersFollowTheirGroup() {
    assertEquals(0.0048, Metabolism.resting(AnimalGroup.AMPHIBIAN, 0.010, 293.15).heat(), 0.0001);
    assertEquals(
        0.00046, Metabolism.resting(AnimalGroup.INVERTEBRATE, 0.001, 293.15).heat(), 0.00001);
  }

  @Test
  void theCatalogueKnowsGroups() {
    assertEquals(Optional.of(AnimalGroup.REPTILE), Animals.group(Animals.LEOPARD_GECKO));
    assertEquals(Optional.of(AnimalGroup.REPTILE), Animals.group(Animals.CORN_SNAKE));
    assertEquals(Optional.of(AnimalGroup.AMPHIBIAN), Animals.group(Animals.FIRE_SALAMANDER));
    assertEquals(Optional.of(AnimalGroup.INVERTEBRATE), Animals.group(Animals.JUMPING_SPIDER));
    for (Animal animal : Animals.all()) {
      assertTrue(Animals.group(animal).isPresent(), animal.name());
    }
    Animal own =
        new Animal(
            "my pet",
            "species not given",
            Animals.COQUI.tolerance(),
            Materials.ANIMAL_TISSUE,
            Animals.COQUI.restingShape(),
            List.of());
    assertEquals(Optional.empty(), Animals.group(own));
  }

  @Test
  void refusesGramsAndCelsius() {
    assertThrows(
        InvalidInputException.class, () -> Metabolism.resting(AnimalGroup.REPTILE, 40, 298));
    assertThrows(
        InvalidInputException.class, () -> Metabolism.resting(AnimalGroup.REPTILE, 0.04, 25));
  }
}
