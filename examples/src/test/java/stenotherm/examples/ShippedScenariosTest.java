package stenotherm.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stenotherm.base.Times;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.picture.ReportLabels;
import stenotherm.report.ComparisonReport;
import stenotherm.report.HurriedComparison;
import stenotherm.scenario.Scenario;
import stenotherm.scenario.ScenarioReader;
import stenotherm.transit.TransitSettings;

/** Every scenario that is shipped has a report, of coarse cells, and is on the page of examples. */
class ShippedScenariosTest {
  private static final Path FOLDER = Path.of("src/main/resources/stenotherm/examples");

  /**
   * Coarser than the program allows in cells, stored values and steps; its command line is tested
   * on a parcel of few cells.
   */
  private static final TransitSettings COARSE =
      new TransitSettings(
          TransitSettings.standard().mesh().scaled(8),
          Times.HOUR,
          IntegratorSettings.adaptive(0.1));

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          cold-night.yaml       | temperature [°C] | with warmer
          two-frogs-by-air.yaml | temperature [°F] | Each animal on its own
          own-warmer.yaml       | temperature [°C] | with warmer
          summer-day.yaml       | temperature [°C] | Melted part of the packs
          """)
  void runs(String name, String axis, String content) throws IOException {
    String text = Files.readString(FOLDER.resolve(name));
    assertTrue(text.lines().count() <= 25, "a scenario is short");
    assertTrue(
        ScenarioReader.read(name, text, FOLDER).packings().size() > 1, "something to compare");
    // an hour of hold and the last packing, as all have the same parts of a report
    String hurried =
        text.replaceFirst("(hold: 12 h\n)?journey:", "hold: 1 h\njourney:")
            .replaceAll("  - \\{name: [^\n]*, box: [^\n]*\n(?=  - )", "");
    Scenario one = ScenarioReader.read(name, hurried, FOLDER);
    assertEquals(1, one.packings().size());
    ComparisonReport comparison = HurriedComparison.run(one, COARSE);
    StringWriter printed = new StringWriter();
    comparison.print(new PrintWriter(printed, true));
    Map<String, byte[]> files = comparison.files(true);
    String report = new String(files.get(ComparisonReport.PAGE), StandardCharsets.UTF_8);
    assertTrue(report.contains(axis), axis);
    assertTrue(report.contains(content), content);
    assertTrue(printed.toString().contains(content), printed.toString());
    assertTrue(ReportLabels.count(report) > 100, "the pictures have labels");
    assertEquals(List.of(), ReportLabels.collisions(report));
    assertEquals(List.of(), ReportLabels.clipped(report));
  }

  @Test
  void allAreRunAndListed() throws IOException {
    String page = Files.readString(Path.of("README.md"));
    try (Stream<Path> files = Files.list(FOLDER)) {
      List<String> names = files.map(file -> file.getFileName().toString()).sorted().toList();
      assertEquals(
          List.of(
              "cold-night.yaml",
              "own-warmer.yaml",
              "summer-day.yaml",
              "test-box.csv",
              "two-frogs-by-air.yaml",
              "warmer-curve.csv"),
          names);
      names.forEach(name -> assertTrue(page.contains(name), name));
    }
  }
}
