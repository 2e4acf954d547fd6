package stenotherm.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stenotherm.scenario.ScenarioReader;

/** Commands that ask what goes wrong and what is best. */
class HarmAndSearchTest {
  private static final String ROOM =
      """
      format: 1
      title: A night in a cold room
      units: metric
      animal: leopard gecko, 40 g
      cup: 110 x 80 x 60 mm
      hold: 2 h
      journey:
        sealed: 2026-12-01 18:00
        start: 24 °C
        from: Here, UTC+1
        to: There, UTC+1
        legs:
          - {name: room, at: origin, for: 8 h, ambient: 8 °C}
      packings:
        - {name: cube, box: 200 x 170 x 150 mm, foam: EPS 20 13 mm, fill: shredded paper, warmer: 40 hour warmer on lid}
      """;

  @TempDir private Path folder;

  private String out = "";
  private String err = "";

  private int run(String... args) {
    Said said = Said.to((Object[]) args);
    out = said.out();
    err = said.err();
    return said.code();
  }

  private String file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text).toString();
  }

  private JsonNode json(String name) throws IOException {
    return new ObjectMapper().readTree(folder.resolve("out").resolve(name).toFile());
  }

  @Test
  void theWorstMishapStandsFirst() throws IOException {
    String to = folder.resolve("out").toString();
    // by day, for the sun
    String scenario = file("room.yaml", ROOM.replace("18:00", "10:00"));
    assertEquals(0, run("break", scenario, "--mesh-scale", "2", "--out", to), () -> err);
    assertTrue(err.contains("nearest to harm is"), err);
    assertTrue(out.contains("Even as planned only "), out);
    String oneLine = out.replaceAll("\\s+", " ");
    assertTrue(oneLine.contains("temperature and air alone are judged, not the fall."), out);
    assertTrue(oneLine.contains("two hours of sun on the lid in 'room'"), out);
    assertFalse(out.matches("(?is).*\\bsafe\\b.*"), out);
    JsonNode all = json("break.json").get("singles");
    assertEquals("as planned", all.get(0).get("what").asText());
    for (int index = 2; index < all.size(); index++) {
      double before = all.get(index - 1).get("within").asDouble();
      assertTrue(before <= all.get(index).get("within").asDouble(), all.toString());
    }
    assertTrue(all.size() > 10, all.toString());
  }

  /** The weather of the usual mishaps is 5 K off. */
  @Test
  void mishapsAreToldInTheUnitsOfTheFile() throws IOException {
    String to = folder.resolve("out").toString();
    String bare =
        ROOM.replace(", warmer: 40 hour warmer on lid", "")
            .replace("for: 8 h, ambient: 8 °C", "for: 3 h, ambient: 21 °C");
    String scenario = file("us.yaml", bare.replace("units: metric", "units: us"));
    assertEquals(0, run("break", scenario, "--mesh-scale", "2", "--out", to), () -> err);
    assertTrue(out.contains("What would harm first: "), out);
    assertTrue(out.contains("9.0 F° colder than forecast"), out);
  }

  @Test
  void theBlockThatIsFoundCanBePasted() throws IOException {
    String to = folder.resolve("out").toString();
    String cool = ROOM.replace("for: 8 h, ambient: 8 °C", "for: 3 h, ambient: 18 °C");
    String scenario = file("room.yaml", cool);
    assertEquals(
        0,
        run(
            "search",
            scenario,
            "--mesh-scale",
            "2",
            "--candidates",
            "3",
            "--wanted",
            "60",
            "--divisor",
            "5000 cm3/kg",
            "--out",
            to),
        () -> err);
    assertFalse(out.matches("(?is).*\\bsafe\\b.*"), out);
    JsonNode found = json("search.json");
    assertTrue(found.get("tried").asInt() <= 3, "fewer where one reaches what is wanted");
    JsonNode first = found.get("checked").get(0);
    assertEquals(
        first.get("volume").asDouble() / 0.005, first.get("dimensional_weight").asDouble(), 1e-9);
    assertTrue(first.get("mishaps").asInt() >= 10, first.toString());
    String start = found.get("journey_block").asText();
    String pasted =
        (start.isEmpty() ? cool : cool.replace("  start: 24 °C\n", start))
            + found.get("block").asText();
    assertEquals(2, ScenarioReader.read("pasted", pasted).packings().size());
  }

  /** Whoever reads a block to paste takes it for an answer. */
  @Test
  void whatNobodyShouldSendIsNotToPaste() throws IOException {
    String to = folder.resolve("out").toString();
    String freezing = ROOM.replace("for: 8 h, ambient: 8 °C", "for: 20 h, ambient: -20 °C");
    String scenario = file("freezing.yaml", freezing);
    assertEquals(
        0,
        run("search", scenario, "--mesh-scale", "2", "--candidates", "3", "--out", to),
        () -> err);
    JsonNode found = json("search.json");
    assertTrue(found.get("answer").asText().contains("do not send it like this"), out);
    assertFalse(found.has("block"), found.toString());
    assertFalse(out.contains("To paste"), out);
    assertTrue(out.contains("What comes nearest, computed in full"), out);
    assertTrue(out.contains("What goes wrong with these, one thing at a time, in a typical"), out);
  }

  /** In the units of the file, and without a carrier's divisor. */
  @Test
  void aWarmNightNeedsNoWarmer() throws IOException {
    String mild =
        ROOM.replace("units: metric", "units: us")
            .replace("leopard gecko, 40 g", "leopard gecko, 2 oz")
            .replace("for: 8 h, ambient: 8 °C", "for: 3 h, ambient: 75 °F, spread: 3 F°")
            .replace(", warmer: 40 hour warmer on lid", "");
    String to = folder.resolve("out").toString();
    assertEquals(
        0,
        run(
            "search",
            file("mild.yaml", mild),
            "--mesh-scale",
            "2",
            "--candidates",
            "2",
            "--out",
            to),
        () -> err);
    assertTrue(out.contains("The smallest box found with which at least 95 of 100"), out);
    assertTrue(out.contains(" in outside), ") && out.contains("no warmer"), out);
    JsonNode first = json("search.json").get("checked").get(0);
    assertFalse(first.has("dimensional_weight"), first.toString());
    assertEquals(0, first.get("warmers").asInt());
    assertTrue(first.get("within").asDouble() >= 0.95, first.toString());
  }

  @Test
  void wrongOptionsAreRefused() throws IOException {
    String scenario = file("room.yaml", ROOM);
    assertEquals(2, run("search", scenario, "--wanted", "100"));
    assertEquals(2, run("search", scenario, "--divisor", "139"));
    assertTrue(err.contains("in3/lb"), err);
    assertEquals(2, run("break", scenario, "--packing", "cub"));
    assertTrue(err.contains("cube"), err);
  }
}
