package stenotherm.parcel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stenotherm.air.Gas;
import stenotherm.base.Axis;
import stenotherm.base.InvalidInputException;
import stenotherm.material.Materials;

class LidHolesTest {
  private static final WallLayer WALL = new WallLayer(Materials.POLYPROPYLENE, 0.0005);

  @Test
  void vesselsHaveTheHolesThatAreStated() {
    LidHoles five = new LidHoles(5, 0.003);
    for (Vessel each :
        List.of(
            new Vessel.BoxCup(new Dimensions(0.1, 0.1, 0.06), WALL, five),
            new Vessel.RoundCup(0.1, 0.06, WALL, five),
            new Vessel.Vial(0.04, 0.1, Axis.X, WALL, five))) {
      assertEquals(5, each.holes().size());
      assertEquals(0.003, each.holes().get(0).diameter());
    }
    assertEquals(LidHoles.USUAL, new Vessel.RoundCup(0.1, 0.06, WALL).lid());
    assertEquals(
        List.of(), new Vessel.BoxCup(new Dimensions(1, 1, 1), WALL, LidHoles.NONE).holes());
    assertEquals(List.of(), new Vessel.Bag(new Dimensions(0.1, 0.1, 0.06), WALL).holes());
  }

  /**
   * A hole of 1 cm in a sheet without thickness takes D d (Stefan; Brown and Escombe 1900); the
   * lid's half millimetre takes a fifteenth of it.
   */
  @Test
  void aWideHolePassesWhatItsDiameterPasses() {
    double diffusivity = Gas.OXYGEN.diffusivity(293.15, 101325);
    double conductance =
        new LidHoles(1, 0.01).each().get(0).conductance(Gas.OXYGEN, 293.15, 101325);
    assertEquals(diffusivity * 0.01, conductance, 0.07 * diffusivity * 0.01);
    assertTrue(conductance < diffusivity * 0.01);
  }

  @Test
  void aTightLidIsCautionedWhereAnAnimalIsUnderIt() {
    Container usual = Packings.plain().containers().get(0);
    Dimensions inner = usual.vessel().inner();
    Container tight =
        new Container(
            "tub",
            new Vessel.BoxCup(inner, WALL, LidHoles.NONE),
            usual.position(),
            usual.bedding(),
            usual.occupant());
    String caution = "'tub' has no holes: all that there is to breathe in it is the air inside.";
    assertTrue(Packings.parcel(List.of(tight), List.of()).cautions().contains(caution));
    assertTrue(
        Packings.plain().cautions().stream().noneMatch(each -> each.contains("has no holes")));
  }

  @ParameterizedTest
  @CsvSource({"-1, 0.002, number", "1001, 0.002, number", "8, 0.0001, diameter", "8, 2, diameter"})
  void otherNumbersAreRefused(int count, double diameter, String word) {
    InvalidInputException refusal =
        assertThrows(InvalidInputException.class, () -> new LidHoles(count, diameter));
    assertTrue(refusal.getMessage().startsWith(word), refusal.getMessage());
  }
}
