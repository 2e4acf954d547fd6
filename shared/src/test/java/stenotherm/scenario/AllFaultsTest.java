package stenotherm.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.base.MessageText;
import stenotherm.text.TextFormatException;

/** All faults of a file at once, each in one short line that can be shown. */
class AllFaultsTest {
  private static List<String> faults(String text) {
    TextFormatException all =
        assertThrows(TextFormatException.class, () -> ScenarioReader.read("s.yaml", text));
    List<String> lines = all.faults().stream().map(TextFormatException::getMessage).toList();
    assertEquals(String.join("\n", lines), all.getMessage());
    for (String line : lines) {
      assertTrue(line.length() <= MessageText.LONGEST, line);
      assertTrue(line.chars().noneMatch(Character::isISOControl), line);
    }
    return lines;
  }

  private static String with(String text, String... changes) {
    String changed = text;
    for (int index = 0; index < changes.length; index += 2) {
      changed = ScenarioFiles.with(changed, changes[index], changes[index + 1]);
    }
    return changed;
  }

  @Test
  void faultsOfAllPartsAreToldTogether() {
    List<String> lines =
        faults(
            with(
                ScenarioFiles.GOOD,
                "title:",
                "titel:",
                "leopard gecko",
                "leopard geko",
                "hold: 12 h",
                "hold: 12",
                "start: 21 °C",
                "start: 21",
                "ambient: 12 °C",
                "ambient: 12",
                "spread: 1.5 K",
                "spread: 1.5 °C",
                "wind: 1 m/s",
                "wind: 1",
                "foam: EPS 20, 19 mm",
                "foam: EPS 20",
                "fill: shredded paper",
                "fill: shreded paper",
                "fill: crumpled newspaper",
                "fyll: crumpled newspaper"));
    assertEquals(
        List.of(2, 3, 5, 8, 13, 18, 19, 23, 24, 30),
        lines.stream().map(line -> Integer.parseInt(line.split(":")[1])).toList(),
        String.join("\n", lines));
    assertTrue(lines.get(5).contains("(doorstep)"), lines.get(5));
    assertTrue(lines.get(9).contains("packings[1].fyll (plain): unknown key"), lines.get(9));
  }

  @Test
  void valuesThatAreMissingAreToldTogether() {
    List<String> lines =
        faults(with(ScenarioFiles.GOOD, "hold: 12 h", "hold:", "start: 21 °C", "start:"));
    assertEquals(2, lines.size(), String.join("\n", lines));
  }

  @Test
  void ofManyFaultsTheFirstTwentyAreShown() {
    StringBuilder places = new StringBuilder("  places:\n");
    for (int number = 0; number < 30; number++) {
      places.append("    - {name: p").append(number).append(", utc: noon}\n");
    }
    TextFormatException all =
        assertThrows(
            TextFormatException.class,
            () ->
                ScenarioReader.read(
                    "s.yaml", with(ScenarioFiles.GOOD, "  legs:\n", places + "  legs:\n")));
    assertEquals(21, all.getMessage().lines().count());
    assertTrue(all.getMessage().endsWith("\nand 10 more faults"), all.getMessage());
  }

  @Test
  void whatTerminalsActOnIsEscaped() {
    String escape = "\"\\e[31mred\\e[0m, 40 g\"";
    List<String> lines = faults(with(ScenarioFiles.GOOD, "leopard gecko, 40 g", escape));
    assertTrue(lines.get(0).contains("there is no \"\\u001B[31mred"), lines.get(0));
    List<String> half =
        faults(with(ScenarioFiles.GOOD, "leopard gecko, 40 g", "\"\\uD83E, 40 g\""));
    assertFalse(half.get(0).chars().anyMatch(each -> Character.isSurrogate((char) each)));
  }

  @Test
  void longTextsAreRefusedBeforeTheyAreReadFurther() {
    String text = with(ScenarioFiles.GOOD, "leopard gecko", "x".repeat(900_000));
    assertTrue(faults(text).get(0).endsWith("animal: is longer than 4000 characters"));
    String key = with(ScenarioFiles.GOOD, "hold:", "\"" + "x".repeat(900) + "\":");
    assertTrue(faults(key).get(0).contains("unknown key"));
  }

  @Test
  void manyCommasAreNoDeepRecursion() {
    String text = with(ScenarioFiles.GOOD, "hold: 12 h", "hold: 1" + ",1".repeat(1900));
    assertTrue(faults(text).get(0).contains("has a comma"));
  }

  @Test
  void yearsThatNobodyPlansForAreRefused() {
    String text = with(ScenarioFiles.JOURNEY, "sealed: 2014-07-10", "sealed: 3000-07-10");
    assertTrue(
        faults(text).get(0).endsWith("journey.sealed: must lie between the years 1900 and 2199"));
  }

  @Test
  void anAlligatorIsNoPython() {
    String text = with(ScenarioFiles.GOOD, "leopard gecko", "alligator");
    assertFalse(faults(text).get(0).contains("python"), faults(text).get(0));
  }

  @Test
  void nothingIsTakenSilently() {
    String twice = with(ScenarioFiles.JOURNEY, "{face: back, neighbour", "{face: left, neighbour");
    assertTrue(faults(twice).get(0).contains("touches[1] (van): overlaps one before it"));
    String indoors =
        with(
            ScenarioFiles.JOURNEY,
            "name: the pass, utc: '-06:00'",
            "name: the pass, utc: '-06:00', latitude: 39 °, longitude: -106 °",
            "'outdoors + 3 K, lag 2 h'",
            "12 °C",
            "sorting hub, spread: 4 K",
            "12 °C");
    assertEquals(
        List.of(
            "s.yaml:16:39: journey.places[0].latitude: has no effect, no leg there"
                + " follows the weather or the sun"),
        faults(indoors));
    String without = ScenarioFiles.GOOD.replaceAll("(?s)journey:.*packings:", "packings:");
    assertEquals(
        List.of(
            "s.yaml:1:1: journey: is missing and must be given, write for example journey:"
                + " \"overnight by air, 28 to 45 °F\""),
        faults(without));
    String rounded = with(ScenarioFiles.GOOD, "gecko, 40 g", "gecko, 20000.0000001 g");
    assertTrue(faults(rounded).get(0).contains("20000.0000001 g"), faults(rounded).get(0));
  }
}
