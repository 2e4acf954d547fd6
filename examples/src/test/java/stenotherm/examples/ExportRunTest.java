package stenotherm.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What other programs get of a run. */
class ExportRunTest {
  @TempDir private Path folder;

  private JsonNode exported(String file) throws IOException {
    Said said = Said.to("export", file, "--mesh-scale", "2", "--out", folder.resolve("out"));
    assertEquals(0, said.code(), said.err());
    assertTrue(said.out().contains("it is no verdict"), said.out());
    assertFalse(said.out().matches("(?is).*\\bsafe\\b.*"), said.out());
    return new ObjectMapper().readTree(folder.resolve("out").resolve("export.json").toFile());
  }

  private List<String> lines(String name) throws IOException {
    return Files.readAllLines(folder.resolve("out").resolve(name));
  }

  /** Values of a column. */
  private double[] column(String head) throws IOException {
    List<String> lines = lines("history.csv");
    int at = Arrays.asList(lines.get(0).split(",")).indexOf(head);
    assertTrue(at >= 0, head + " in " + lines.get(0));
    return lines.stream()
        .skip(1)
        .mapToDouble(line -> Double.parseDouble(line.split(",", -1)[at]))
        .toArray();
  }

  private void requireWhole(JsonNode summary) throws IOException {
    List<String> history = lines("history.csv");
    int columns = history.get(0).split(",").length;
    for (String line : history) {
      assertEquals(columns, line.split(",", -1).length, line);
    }
    for (String name : List.of("coldest.vtk", "hottest.vtk")) {
      assertTrue(lines(name).contains("CELL_DATA " + summary.get("cells").asInt()), name);
    }
  }

  @Test
  void whatOneRunIsGoesWithItsFields() throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("one.yaml"),
            """
            format: 1
            title: One box
            units: us
            animal: leopard gecko, 40 g
            cup: 16 oz deli cup
            journey: overnight by air, 30 to 45 °F
            packings:
              - name: warm
                box: 7 in cube carton
                foam: EPS 20 3/4 in
                fill: shredded paper
                warmer: 40 hour warmer on lid
            """);
    JsonNode summary = exported(file.toString());
    requireWhole(summary);
    double[] times = column("time_s");
    double[] coldest = column("cup animal_coldest_K");
    double[] hottest = column("cup animal_hottest_K");
    double[] mean = column("cup animal_mean_K");
    for (int row = 0; row < times.length; row++) {
      assertTrue(coldest[row] <= mean[row] && mean[row] <= hottest[row], "row " + row);
    }
    double least = Arrays.stream(mean).min().orElseThrow();
    int at = Arrays.stream(mean).boxed().toList().indexOf(least);
    assertEquals(times[at], summary.get("coldest_moment_s").asDouble(), 1800);
    assertTrue(Arrays.stream(column("warmer power_W")).max().orElseThrow() > 1);
    assertTrue(column("warmer conversion")[times.length - 1] > 0.2);
    assertTrue(Arrays.stream(column("cup oxygen_mole_fraction")).allMatch(part -> part < 0.21));
  }

  @Test
  void aPackingWithoutWarmerHasNoColumnOfOne() throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("two.yaml"),
            """
            format: 1
            title: Mild days
            units: metric
            animal: leopard gecko, 40 g
            cup: 16 oz deli cup
            journey: overnight by air, 10 to 18 °C
            packings:
              - {name: plain, box: 7 in cube carton, foam: EPS 20 19 mm, fill: shredded paper}
            """);
    JsonNode summary = exported(file.toString());
    requireWhole(summary);
    assertEquals("plain", summary.get("packing").asText());
    assertFalse(lines("history.csv").get(0).contains("power_W"));
    assertTrue(summary.get("blocks").findValuesAsText("name").contains("cup animal"));
  }
}
