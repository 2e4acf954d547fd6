package stenotherm.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import stenotherm.scenario.ScenarioReader;

class PackingSheetTest {
  private static String sheet(String scenario) {
    PackingSheet sheet =
        PackingSheet.asPacked(
            PagesToLookAt.of(
                ScenarioReader.read("sheet.yaml", "format: 1\ntitle: Sheet\n" + scenario)));
    StringWriter text = new StringWriter();
    sheet.print(new PrintWriter(text, true));
    return text.toString();
  }

  /** Nobody seals on the preset's 15 January. */
  @Test
  void withoutADateHoursAreCountedFromSealing() {
    String sheet =
        sheet(
            """
            animal: corn snake, 60 g
            cup: small cloth bag
            hold: 3 h
            journey:
              lows/highs: 9 to 18 °C
              legs:
                - {name: van, at: origin, for: 5 h, ambient: outdoors}
            packings:
              - {name: box, box: 240 x 200 x 160 mm, foam: EPS 20 19 mm, fill: none, warmer: 40 h on lid}
            """);
    assertTrue(sheet.contains("- 30 min before sealing: take 'warmer' out"), sheet);
    assertTrue(sheet.contains("- Seal. Box and bag have 21 °C.\n"), sheet);
    assertTrue(sheet.contains("- 5 h after sealing: to be opened.\n"), sheet);
    assertTrue(sheet.contains("later than 8 h after sealing, 3 h late: "), sheet);
    assertTrue(sheet.contains("those of a parcel sealed on day 1 at 15:00.\n"), sheet);
    assertTrue(sheet.contains(" air beside the bag: "), sheet);
    assertFalse(sheet.contains("Jan"), sheet);
    assertFalse(sheet.contains("may be opened"), sheet);
    assertFalse(sheet.contains("packed like this"), sheet);
  }

  @Test
  void withADateTheClockIsTold() {
    String sheet =
        sheet(
            """
            animal: leopard gecko, 40 g
            containers:
              - {name: one, size: 16 oz deli cup}
              - {name: two, size: 16 oz deli cup, on-top-of: one}
            hold: 3 h
            journey:
              sealed: 2026-03-02 18:00
              legs:
                - {name: shop, at: origin, for: 5 h, ambient: 21 °C}
            packings:
              - {name: box, box: 240 x 200 x 240 mm, foam: EPS 20 19 mm, fill: shredded paper}
            """);
    assertTrue(
        sheet.contains("- Mon 2 Mar 18:00: seal. Box, fill, cups and bedding have 21 °C."), sheet);
    assertTrue(sheet.contains("- Mon 2 Mar 23:00: to be opened, 5 h after sealing.\n"), sheet);
    assertTrue(
        sheet.contains(
            "- If it might be opened later than Tue 3 Mar 02:00, 3 h late: what comes then was not"
                + " computed.\n"),
        sheet);
    assertFalse(sheet.contains("Sunday"), sheet);
    assertEquals(1, sheet.split("fill beside the cups: ", -1).length - 1, sheet);
  }

  /** A file computes one of several in a container; the sheet is for all of them. */
  @Test
  void severalInAContainerAreCountedAndTheirBeddingIsNamedInFull() {
    String sheet =
        sheet(
            """
            containers:
              - {name: one, size: 16 oz deli cup, animal: 'garden snail, 4 x 12 g', bedding: damp sphagnum 15 mm}
              - {name: two, size: 16 oz deli cup, on-top-of: one, animal: 'garden snail, 12 g', bedding: {material: dry paper towel, thickness: 4 mm, water: 250 %}}
            hold: 3 h
            journey:
              sealed: 2026-03-06 18:00
              legs:
                - {name: shop, at: origin, for: 7 h, ambient: 18 °C}
            packings:
              - {name: box, box: 240 x 200 x 240 mm, foam: EPS 20 19 mm, fill: shredded paper}
            """);
    // lines are broken at blanks
    String said = sheet.replaceAll("\\s+", " ");
    assertTrue(said.contains("In it: 4 garden snails of 12 g each on damp sphagnum 15 mm."), sheet);
    assertTrue(said.contains("In it: garden snail, 12 g on moist paper towel 4 mm."), sheet);
    assertTrue(said.contains("Contents: 5 garden snails ("), sheet);
    assertTrue(said.contains("- Sat 7 Mar 01:00: to be opened"), sheet);
    assertTrue(
        said.contains(
            "- It is on the way or due on a Saturday or Sunday. Ask your carrier whether it delivers"
                + " then."),
        sheet);
    assertFalse(said.contains("packed like this"), sheet);
    assertTrue(said.contains("Animals: of 5, ___ move, ___ weak, ___ dead."), sheet);
  }

  @Test
  void whatDoesNotHoldIsNotToBeSentPackedLikeThis() {
    String sheet =
        sheet(
            """
            animal: leopard gecko, 40 g
            cup: 16 oz deli cup
            hold: 3 h
            journey:
              sealed: 2026-03-02 18:00
              legs:
                - {name: yard, at: origin, for: 9 h, ambient: -20 °C}
            packings:
              - {name: box, box: 240 x 200 x 160 mm, foam: EPS 20 10 mm, fill: none}
            """);
    assertTrue(
        sheet.contains(
            "Do not send:\n- On this journey, packed like this: it goes wrong too often.\n"),
        sheet);
  }

  @Test
  void namesOfSeveralAnimals() {
    assertEquals("leopard geckos", PackingSteps.several("leopard gecko"));
    assertEquals(
        "Madagascar hissing cockroaches", PackingSteps.several("Madagascar hissing cockroach"));
    assertEquals("praying mantis", PackingSteps.several("praying mantis"));
    assertEquals("rough woodlice", PackingSteps.several("rough woodlouse"));
    assertEquals("zebrafish", PackingSteps.several("zebrafish"));
  }
}
