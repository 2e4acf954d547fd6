package stenotherm.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stenotherm.picture.ReportLabels;

/** Scenarios that are allowed and seldom; so mild that no better packing is sought. */
class OddScenariosTest {
  private static final String ONE_LEG =
      """
      format: 1
      title: Small
      animal: leopard gecko, 40 g
      cup: 110 x 80 x 60 mm
      hold: 3 h
      journey:
        sealed: 2026-01-15 18:00
        start: 21 °C
        from: Here, UTC-5
        to: There, UTC-6
        legs:
          - {name: van, at: origin, for: 2 h, ambient: 24 °C, spread: 3 K}
      packings:
        - {name: bare, box: 200 x 170 x 150 mm, foam: EPS 20 13 mm, fill: shredded paper}
      """;

  @TempDir Path folder;

  private String run(String scenario) throws IOException {
    Path file = Files.writeString(folder.resolve("odd.yaml"), scenario);
    Said said = Said.to(file, "--out", folder.resolve("out"), "--mesh-scale=2");
    assertEquals(0, said.code(), said.err());
    return said.out();
  }

  private String file(String name) throws IOException {
    return Files.readString(folder.resolve("out").resolve(name));
  }

  /** The opening lies between two stored times, or before the second one. */
  @ParameterizedTest
  @CsvSource({"1 min, 1 min", "1 min, 3 h", "7 min, 3 h"})
  void shortJourneysHaveChartsAndNumbers(String lasting, String hold) throws IOException {
    run(ONE_LEG.replace("for: 2 h", "for: " + lasting).replace("hold: 3 h", "hold: " + hold));
    assertFalse(file("summary.json").contains("NaN"));
    assertFalse(file("history.csv").contains("NaN"));
    assertEquals(2 * 4, file("report.html").split("<svg", -1).length - 1);
    assertEquals(List.of(), ReportLabels.collisions(file("report.html")));
  }

  @Test
  void namesSteerNeitherTerminalNorSpreadsheet() throws IOException {
    String odd =
        ONE_LEG
            .replace("title: Small", "title: \"half \\ud83d, red \\e[31m\"")
            .replace("name: bare", "name: \"=1+1\"")
            .replace("for: 2 h", "for: 1 h");
    String out = run(odd);
    assertFalse(out.contains("\u001b"), out);
    assertTrue(out.startsWith("half \\uD83D, red \\u001B[31m"), out);
    assertTrue(file("history.csv").lines().skip(1).allMatch(line -> line.startsWith("'=1+1,no,")));
    assertTrue(file("report.html").contains("half  , red  [31m"), "what no page can hold");
  }
}
