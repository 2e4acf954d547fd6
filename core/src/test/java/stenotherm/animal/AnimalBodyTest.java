package stenotherm.animal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stenotherm.base.InvalidInputException;
import stenotherm.material.Materials;

class AnimalBodyTest {
  /** 64 g of tissue of 1000 kg/m3 are 64 cm3: 8 cm by 4 cm by 2 cm. */
  @Test
  void extentsFollowFromMassDensityAndShape() {
    AnimalBody body = new AnimalBody(0.064, new Proportions(4, 2, 1));
    AnimalBody.Extents extents = body.extents(Materials.ANIMAL_TISSUE);
    assertEquals(0.08, extents.length(), 1e-15);
    assertEquals(0.04, extents.width(), 1e-15);
    assertEquals(0.02, extents.height(), 1e-15);
  }

  @Test
  void onlyRatiosOfProportionsCount() {
    AnimalBody.Extents small =
        new AnimalBody(0.012, new Proportions(0.4, 0.2, 0.1)).extents(Materials.ANIMAL_TISSUE);
    AnimalBody.Extents large =
        new AnimalBody(0.012, new Proportions(4, 2, 1)).extents(Materials.ANIMAL_TISSUE);
    assertEquals(large.length(), small.length(), 1e-15);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.01, 0.00009, 20.1, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesMassesOutOfRange(double mass) {
    assertThrows(InvalidInputException.class, () -> new AnimalBody(mass, new Proportions(1, 1, 1)));
  }

  @Test
  void refusesFlatProportions() {
    assertThrows(InvalidInputException.class, () -> new Proportions(1, 0, 1));
    assertThrows(InvalidInputException.class, () -> new Proportions(Double.NaN, 1, 1));
  }
}
