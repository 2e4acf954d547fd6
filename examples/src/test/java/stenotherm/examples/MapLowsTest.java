package stenotherm.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stenotherm.decision.Verdict;

class MapLowsTest {
  /** Both ends follow the weather; with a warmer, and without. */
  private static final String OUTDOORS =
      Small.SCENARIO
          .replace("ambient: 14 °C, spread: 3 K", "ambient: outdoors")
          .replace("ambient: 12 °C, spread: 3 K", "ambient: outdoors")
          .replace("from: Here, UTC-5", "from: Here, UTC-5\n  lows/highs: 5 to 12 °C");

  private static Said run(Object... args) {
    return Said.to(Stream.concat(Stream.of(MapLows.NAME), Stream.of(args)).toArray());
  }

  private static Path scenario(Path folder, String text) throws IOException {
    return Files.writeString(folder.resolve("scenario.yaml"), text);
  }

  @Test
  void aPackingWithAWarmerIsMappedWithAndWithout(@TempDir Path folder) throws IOException {
    Path report = folder.resolve("report");
    Said run =
        run(
            scenario(folder, OUTDOORS),
            "--mesh-scale",
            "2",
            "--nodes",
            "2",
            "--lows",
            "-20..35C",
            "--out",
            report);
    assertEquals(0, run.code(), run.err());
    assertTrue(
        run.err()
            .startsWith(
                "With which overnight lows does 'warm, \"foam\"' hold, with its warmer and without?"
                    + " The answer takes up to a few minutes."),
        run.err());
    assertTrue(run.err().contains("'warm, \"foam\"', the first of 2;"), run.err());
    assertTrue(run.err().contains("days as 7.0 C° warmer, as the file's lows and"), run.err());
    assertTrue(run.err().contains("First look, 9 typical journeys"), run.err());
    List<String> lines = run.out().lines().toList();
    assertTrue(lines.get(2).startsWith("With the warmer"), run.out());
    assertTrue(
        lines.stream()
            .anyMatch(
                line ->
                    line.matches(
                        "With the file's low of .* °C at the origin it .* with lows at the"
                            + " destination: with the warmer .*; without it .*")),
        run.out());
    assertTrue(
        lines.stream()
            .anyMatch(
                line ->
                    line.matches(
                        "With the lows of the file, .* °C at .*, read off the map: with the warmer,"
                            + " of 100 journeys .* go(es)? well.*Without the warmer, of 100 .*")),
        run.out());
    assertTrue(run.out().contains("- " + Verdict.DEFER), run.out());
    assertFalse(run.out().toLowerCase(Locale.ROOT).contains("safe"), run.out());
    String page = Files.readString(report.resolve("map.html"));
    assertTrue(page.contains(">low at the destination [°C]</text>"));
    assertTrue(page.indexOf("class=\"answer\"") < page.indexOf("<svg"));
    assertTrue(page.indexOf("<svg") < page.indexOf("id=\"cautions\""));
    List<String> odds = Files.readAllLines(report.resolve("map.csv"));
    assertEquals(1 + 2 * 13 * 13, odds.size());
    JsonNode json = new ObjectMapper().readTree(report.resolve("map.json").toFile());
    assertEquals(lines.get(2), json.get("headline").asText());
    assertEquals(128, json.get("maps").get(0).get("journeys").asInt());
    assertAgree(json, odds);
  }

  /** Nights and days of each end are those of the file: at one end cool days, warm ones there. */
  @Test
  void eachEndHasItsOwnDailyRange(@TempDir Path folder) throws IOException {
    String ends =
        OUTDOORS
            .replaceFirst("\n *lows/highs: 5 to 12 °C", "")
            .replaceFirst(
                "from: Here, UTC-5", "from: {name: Here, utc: UTC-5, lows/highs: 5 to 17 °C}")
            .replaceFirst(
                "to: There, UTC-6", "to: {name: There, utc: UTC-6, lows/highs: 4 to 11 °C}");
    Said run =
        run(
            scenario(folder, ends),
            "--mesh-scale",
            "2",
            "--nodes",
            "2",
            "--packing",
            "bare foam",
            "--json");
    assertEquals(0, run.code(), run.err());
    JsonNode json = new ObjectMapper().readTree(run.out());
    assertEquals(12, json.get("daily_range_at_origin_K").asDouble(), 1e-9);
    assertEquals(7, json.get("daily_range_at_destination_K").asDouble(), 1e-9);
    assertTrue(
        run.err().contains("12.0 C° warmer at the origin and 7.0 C° at the destination"),
        run.err());
    assertTrue(json.get("with_own_low_at_origin").asText().contains("5 °C at the origin"));
  }

  /** Lines bound the odds that the other file has. */
  private static void assertAgree(JsonNode json, List<String> odds) {
    int inside = 0;
    for (String row : odds.subList(1, odds.size())) {
      // the packing's name has a comma, so that the columns are counted from the end
      String[] cells = row.split(",");
      double[] numbers = new double[9];
      for (int n = 0; n < 9; n++) {
        numbers[n] = Double.parseDouble(cells[cells.length - 9 + n]);
      }
      boolean warmer = cells[cells.length - 10].equals("yes");
      JsonNode level = json.get("maps").get(warmer ? 0 : 1).get("levels").get(1);
      assertEquals(0.8, level.get("least").asDouble());
      for (JsonNode line : level.get("lows_at_origin_K")) {
        if (line.get("low_destination_K").asDouble() == numbers[1]) {
          boolean within = false;
          for (JsonNode stretch : line.get("from_to")) {
            within |=
                numbers[0] >= stretch.get(0).asDouble() && numbers[0] <= stretch.get(1).asDouble();
          }
          assertEquals(numbers[3] >= 0.8, within, row);
          inside += within ? 1 : 0;
        }
      }
    }
    assertTrue(inside > 0, "some lows hold");
  }

  @Test
  void aPackingWithoutWarmerIsMappedOnceAsJson(@TempDir Path folder) throws IOException {
    String originAlone =
        OUTDOORS.replace(
            "at: destination, for: 3 h, ambient: outdoors",
            "at: destination, for: 3 h, ambient: 20 °C");
    Said run =
        run(
            scenario(folder, originAlone + "units: us\n"),
            "--mesh-scale",
            "2",
            "--nodes",
            "2",
            "--packing",
            "bare foam",
            "--lows",
            "10 to 40",
            "--daily-range",
            "12",
            "--json");
    assertEquals(0, run.code(), run.err());
    assertFalse(Files.exists(Path.of("stenotherm-map")), "files only where they are asked for");
    JsonNode json = new ObjectMapper().readTree(run.out());
    assertEquals(1, json.get("maps").size());
    assertEquals(12 / 1.8, json.get("daily_range_at_origin_K").asDouble(), 1e-9);
    assertEquals(12 / 1.8, json.get("daily_range_at_destination_K").asDouble(), 1e-9);
    assertEquals(277.59, json.get("highest_low_K").asDouble(), 0.01);
    String headline = json.get("headline").asText();
    assertTrue(headline.startsWith("Do not send it like this: "), headline);
    JsonNode best = json.get("maps").get(0).get("best_equal_low");
    assertTrue(
        best.get("sentence")
            .asText()
            .matches(
                "It does best with lows of 40 °F at both ends: of 100 such journeys [1-4]?[0-9] go"
                    + " well; too cold in [5-9][0-9]\\."),
        best.toString());
    assertEquals(277.59, best.get("low_K").asDouble(), 0.01);
    double fail = 1 - best.get("odds").get("within").asDouble();
    assertEquals(fail, best.get("too_cold").asDouble(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({
    "--lows, 10..85X, such as 10..85F",
    "--lows, 85..10, the lower temperature first",
    "--lows, -100..20C, within -60 to 50 °C",
    "--daily-range, warm, such as 18F°",
    "--daily-range, 0K, 0.5 to 30 K",
    "--nodes, 1, within 2 to 33"
  })
  void wrongOptionsAreRefused(String option, String value, String hint, @TempDir Path folder)
      throws IOException {
    Said run = run(scenario(folder, OUTDOORS), option + "=" + value, "--out", folder.resolve("r"));
    assertEquals(ConsoleCommand.BAD_COMMAND_LINE, run.code(), run.err());
    assertTrue(run.err().contains(option + ": " + value), run.err());
    assertTrue(run.err().contains(hint), run.err());
    assertFalse(Files.exists(folder.resolve("r")));
  }

  @Test
  void whatCannotBeMappedIsRefusedBeforeWork(@TempDir Path folder) throws IOException {
    Said indoors = run(scenario(folder, Small.SCENARIO), "--out", folder.resolve("r"));
    assertEquals(ConsoleCommand.BAD_SCENARIO, indoors.code(), indoors.err());
    assertTrue(indoors.err().contains("does not depend on the weather"), indoors.err());
  }
}
