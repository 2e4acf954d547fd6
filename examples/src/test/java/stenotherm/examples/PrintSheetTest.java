package stenotherm.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stenotherm.decision.Verdict;
import stenotherm.picture.ReportLabels;

class PrintSheetTest {
  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String scenario, String... more) throws IOException {
    Path file = Files.writeString(folder.resolve("scenario.yaml"), scenario);
    Stream<String> args =
        Stream.of(
            "print",
            file.toString(),
            "--out",
            folder.resolve("sheet").toString(),
            "--mesh-scale=2");
    return Stenotherm.run(
        new PrintWriter(out, true),
        new PrintWriter(err, true),
        Stream.concat(args, Stream.of(more)).toArray(String[]::new));
  }

  private String file(String name) throws IOException {
    return Files.readString(folder.resolve("sheet").resolve(name));
  }

  @Test
  void theNamedPackingAsTheFileHasIt() throws IOException {
    String map =
        map(
            """
            {"title": "Small <test> & \\"more\\"", "packing": "warm, \\"foam\\"",
             "daily_range_at_origin_K": 8, "daily_range_at_destination_K": 8, "headline": "It holds with overnight lows from 1 to 9 °C."}
            """);
    assertEquals(
        0, run(Small.SCENARIO, "--packing", "warm, \"foam\"", "--map", map), err::toString);
    String page = file("packing-sheet.html");
    assertTrue(
        page.contains(
            "By the map, with nights as cold as the low and days 8.0\u00a0C° warmer: It holds with overnight lows from 1"
                + " to 9\u00a0°C."),
        page);
    assertTrue(page.contains("warm, &quot;foam&quot;, with warmer: "), page);
    assertTrue(page.contains("15\u00a0Jan 17:30: take 'warmer' out"), page);
    assertTrue(page.contains("15\u00a0Jan 18:00: seal."), page);
    assertTrue(page.contains("1 leopard gecko (Eublepharis macularius)"), page);
    assertTrue(page.contains("Without the warmer "), page);
    assertTrue(page.contains(Verdict.DEFER), page);
    assertFalse(page.toLowerCase(Locale.ROOT).contains("safe"));
    assertEquals(2, page.split("<svg", -1).length - 1, "for wide and narrow screens");
    assertEquals(List.of(), ReportLabels.collisions(page));
    assertEquals(List.of(), ReportLabels.clipped(page));
    assertTrue(
        out.toString().contains("1. Line the box, 200 x 170 x 150 mm outside"), out::toString);
    assertTrue(file("packing-sheet.json").contains("\"warmer\" : true"));
  }

  @Test
  void thePackingThatTheComparisonTakesInUsUnits() throws IOException {
    String scenario =
        Small.SCENARIO
            .replace("title:", "units: us\ntitle:")
            .replaceAll("  - \\{name: 'warm[^\n]*\n", "")
            .replace("bare foam, ", "'bare', holes: 2 x 6 mm on lid, ");
    assertEquals(0, run(scenario, "--quick", "--json"), err::toString);
    String page = file("packing-sheet.html");
    assertFalse(page.contains("<svg"));
    assertTrue(page.contains("Make 2 holes of 15/64 in in the lid"), page);
    assertFalse(page.contains("°C"), page);
    assertEquals(file("packing-sheet.json"), out.toString());
  }

  private String map(String json) throws IOException {
    return Files.writeString(folder.resolve("map.json"), json).toString();
  }

  @Test
  void aMapOfSomethingElseIsRefused() throws IOException {
    String good =
        "{'title': 'Small', 'packing': 'bare foam', 'daily_range_at_origin_K': 8, 'daily_range_at_destination_K': 8, 'headline': 'x'}";
    String map = map(good.replace('\'', '"'));
    assertEquals(
        ConsoleCommand.BAD_SCENARIO, run(Small.SCENARIO, "--packing", "bare foam", "--map", map));
    assertTrue(err.toString().contains("is a map of the title 'Small', not of"), err::toString);
    map("{\"headline\": 3}");
    assertEquals(
        ConsoleCommand.BAD_SCENARIO, run(Small.SCENARIO, "--packing", "bare foam", "--map", map));
    assertTrue(err.toString().contains("is not what the command map writes"), err::toString);
    map("no JSON");
    assertEquals(
        ConsoleCommand.BAD_SCENARIO, run(Small.SCENARIO, "--packing", "bare foam", "--map", map));
    assertEquals(ConsoleCommand.BAD_COMMAND_LINE, run(Small.SCENARIO, "--map", map));
  }

  @Test
  void anUnknownPackingIsToldWithThoseThatThereAre() throws IOException {
    assertEquals(ConsoleCommand.BAD_SCENARIO, run(Small.SCENARIO, "--packing", "other"));
    assertTrue(err.toString().contains("'bare foam'"), err::toString);
    assertFalse(Files.exists(folder.resolve("sheet")));
  }
}
