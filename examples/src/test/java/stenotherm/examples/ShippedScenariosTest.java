package stenotherm.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import stenotherm.picture.ReportLabels;

/** Every scenario that is shipped runs, on a coarse mesh, and is listed in the page of examples. */
class ShippedScenariosTest {
  private static final Path FOLDER = Path.of("src/main/resources/stenotherm/examples");

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          cold-night.yaml       | temperature [°C] | with warmer
          two-frogs-by-air.yaml | temperature [°F] | Each animal on its own
          summer-day.yaml       | temperature [°C] | Melted part of the packs
          """)
  void runs(String name, String axis, String content, @TempDir Path folder) throws IOException {
    String text = Files.readString(FOLDER.resolve(name));
    assertTrue(text.lines().count() <= 25, "a scenario is short");
    // an hour of hold instead of a day: a test needs no more
    String hurried = text.replaceFirst("(hold: 12 h\n)?journey:", "hold: 1 h\njourney:");
    Path scenario = Files.writeString(folder.resolve(name), hurried);
    Path out = folder.resolve("report");
    StringWriter printed = new StringWriter();
    StringWriter complaints = new StringWriter();
    int code =
        new CommandLine(new CompareParcels())
            .setOut(new PrintWriter(printed, true))
            .setErr(new PrintWriter(complaints, true))
            .execute(scenario.toString(), "--out", out.toString(), "--mesh-scale", "2");
    assertEquals(0, code, complaints.toString());
    String report = Files.readString(out.resolve("report.html"));
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
      assertEquals(List.of("cold-night.yaml", "summer-day.yaml", "two-frogs-by-air.yaml"), names);
      names.forEach(name -> assertTrue(page.contains(name), name));
    }
  }
}
