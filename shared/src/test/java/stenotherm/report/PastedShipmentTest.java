package stenotherm.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import stenotherm.base.Axis;
import stenotherm.decision.Remedy;
import stenotherm.parcel.Parcel;
import stenotherm.scenario.Scenario;
import stenotherm.scenario.ScenarioReader;

/** Whether what is pasted is read back is checked for all changes in {@link PackingBlockTest}. */
class PastedShipmentTest {
  private static final String SCENARIO =
      """
      format: 1
      title: A night in a cold room
      animal: leopard gecko, 40 g
      cup: 16 oz deli cup
      journey:
        sealed: 2026-12-01 18:00
        start: 24 °C
        legs:
          - {name: room, at: origin, for: 8 h, ambient: 8 °C}
          - {name: porch, at: origin, for: 2 h, ambient: 5 °C}
      packings:
        - {name: cube, box: 9 in cube carton, foam: EPS 20 1 in, fill: shredded paper, warmer: 40 hour warmer on lid}
      """;

  private static final Scenario READ = ScenarioReader.read("s.yaml", SCENARIO);

  private static PastedShipment pasted(Remedy change) {
    Parcel parcel = READ.packings().get(0);
    return PastedShipment.of(change, parcel, READ.journey(), READ).orElseThrow();
  }

  /** A carton is called as the file calls it; one that grows has its own inner size. */
  @Test
  void cartonsStayCartons() {
    assertTrue(pasted(new Remedy.HalfTaped()).packing().contains("    box: 9 in cube carton\n"));
    Parcel before = READ.packings().get(0);
    Remedy thicker = new Remedy.ThickerFoam();
    String block = pasted(thicker).packing();
    assertTrue(
        block.startsWith(
            """
              - name: 'cube, changed'
                box: 10 1/2 x 10 1/2 x 10 1/2 in carton
                foam: EPS 20 1 3/4 in
                fill: shredded paper
                warmer: 40 hour warmer on lid
                # the next larger carton that is sold: 30 x 30 x 30 cm carton
            """),
        block);
    Parcel after = ScenarioReader.read("pasted", SCENARIO + block).packings().get(1);
    for (Axis axis : Axis.values()) {
      assertEquals(before.outer().size(axis) + 0.0381, after.outer().size(axis), 1e-9, block);
      assertEquals(before.cavity().size(axis), after.cavity().size(axis), 1e-9, block);
    }
  }

  /** What the file has for all packings needs no word; what one has of its own does. */
  @Test
  void containersOfAPackingGoWithIt() {
    assertFalse(pasted(new Remedy.HalfTaped()).packing().contains("containers"));
    String own =
        SCENARIO
            .replace("cup: 16 oz deli cup\n", "")
            .replace("box: 9 in", "containers: [{size: 16 oz deli cup, holes: none}], box: 9 in");
    Scenario read = ScenarioReader.read("own.yaml", own);
    Parcel before = read.packings().get(0);
    String block =
        PastedShipment.of(new Remedy.HalfTaped(), before, read.journey(), read)
            .orElseThrow()
            .packing();
    assertTrue(block.endsWith("    containers: 'as in cube'\n"), block);
    Parcel after = ScenarioReader.read("pasted", own + block).packings().get(1);
    assertEquals(before.containers(), after.containers());
    String holed =
        PastedShipment.of(new Remedy.HolesInLids(), before, read.journey(), read)
            .orElseThrow()
            .packing();
    assertTrue(holed.contains("# with the containers, in each cup or vial that has less"), holed);
    String measured =
        own.replace(
            "on lid}\n",
            "on lid, measured: {foam conductivity: 0.036 (0.034 to 0.038) W/(m K)}}\n");
    Scenario told = ScenarioReader.read("measured.yaml", measured);
    String with =
        PastedShipment.of(new Remedy.HalfTaped(), told.packings().get(0), told.journey(), told)
            .orElseThrow()
            .packing();
    assertTrue(with.endsWith("    # with what was measured of 'cube'\n"), with);
  }

  @Test
  void aJourneyThatChangesIsToldApart() {
    PastedShipment both =
        pasted(new Remedy.Both(new Remedy.HandedOver("porch"), new Remedy.StartAt(301.15)));
    assertEquals("", both.packing());
    assertTrue(both.journey().startsWith("  start: 28 °C\n  without: 'porch'\n"), both.journey());
    String journey = SCENARIO.replace("  start: 24 °C\n", both.journey());
    Scenario changed = ScenarioReader.read("changed.yaml", journey);
    assertEquals(301.15, changed.journey().startTemperature(), 1e-9);
    assertEquals(1, changed.journey().legs().size());
    assertEquals("", pasted(new Remedy.MoreAir()).journey());
  }

  /** A file says more of a heater of one's own than its name. */
  @Test
  void ownWarmersAreNotPasted() {
    String heater =
        "{on: lid, watts: 1.5 W, lasting: 1 d, contents: 100 g, size: 100 x 80 x 10 mm}";
    Scenario own =
        ScenarioReader.read("own.yaml", SCENARIO.replace("40 hour warmer on lid", heater));
    Parcel parcel = own.packings().get(0);
    assertEquals(
        Optional.empty(), PastedShipment.of(new Remedy.ThickerFoam(), parcel, own.journey(), own));
    assertTrue(PastedShipment.of(new Remedy.NoWarmer(), parcel, own.journey(), own).isPresent());
  }
}
