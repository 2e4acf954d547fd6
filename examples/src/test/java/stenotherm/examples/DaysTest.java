package stenotherm.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Commands that ask for a day. */
class DaysTest {
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

  private String scenario() throws IOException {
    return file(
        "s.yaml",
        """
        format: 1
        title: Two days to choose from
        units: us
        animal: leopard gecko, 40 g
        cup: 110 x 80 x 60 mm
        journey: overnight by air, 30 to 45 °F
        packings:
          - {name: cube, box: 7 in cube carton, foam: EPS 20 3/4 in, fill: shredded paper}
          - {name: thick, box: 9 in cube carton, foam: EPS 20 1 1/2 in, fill: shredded paper}
        """);
  }

  private String scenarioWithForecast() throws IOException {
    return file(
        "days.yaml",
        Files.readString(Path.of(scenario()))
            + """
            forecast:
              - {date: 2026-12-01, origin: 0 to 10 °F, destination: 5 to 15 °F}
              - {date: 2026-12-02, origin: 66 to 78 °F, destination: 65 to 77 °F}
              - {date: 2026-12-03, origin: 66 to 78 °F, destination: 65 to 77 °F}
            """);
  }

  @Test
  void theMildDayComesFirst() throws IOException {
    String to = folder.resolve("out").toString();
    assertEquals(
        0,
        run("rank", scenarioWithForecast(), "--packing", "thick", "--mesh-scale", "2", "--out", to),
        () -> err);
    assertTrue(err.contains("Roughly: Wednesday December 2"), err);
    assertTrue(out.indexOf("Wed Dec 2  ") < out.indexOf("Tue Dec 1  "), out);
    assertTrue(out.contains("Packing 'thick'"), out);
    assertTrue(out.contains("Every parcel is sealed at 15:00: the file gives no hour."), out);
    assertTrue(
        out.contains("Thursday December 3") && out.contains("Each is due on the next day."), out);
    assertFalse(out.contains("Saturday"), out);
    assertTrue(out.contains("sent on Thursday December 3 or later arrives"), out);
    assertFalse(out.matches("(?is).*\\bsafe\\b.*"), out);
    JsonNode days =
        new ObjectMapper().readTree(folder.resolve("out").resolve("days.json").toFile());
    assertEquals("2026-12-02", days.get("days").get(0).get("sealed").asText().substring(0, 10));
    assertEquals("2026-12-03", days.get("days").get(0).get("due").asText());
    double mild =
        days.get("days").get(0).get("packings").get(0).get("odds").get("within").asDouble();
    double harsh =
        days.get("days").get(1).get("packings").get(0).get("odds").get("within").asDouble();
    assertTrue(mild > harsh, mild + " " + harsh);
  }

  /** Sealed on Friday, it is on the way on Saturday: few carriers deliver then. */
  @Test
  void aWeekendIsTold() throws IOException {
    String friday =
        Files.readString(Path.of(scenarioWithForecast()))
            .replace("2026-12-03", "2026-12-06")
            .replace("2026-12-02", "2026-12-05")
            .replace("2026-12-01", "2026-12-04");
    String to = folder.resolve("out").toString();
    assertEquals(
        0,
        run(
            "rank",
            file("end.yaml", friday),
            "--packing",
            "cube",
            "--mesh-scale",
            "2",
            "--out",
            to),
        () -> err);
    assertTrue(
        out.replaceAll("\\s+", " ")
            .contains(
                "On the way or due on a Saturday or Sunday if sealed on Friday December 4 and"
                    + " Saturday December 5. Ask your carrier whether it delivers then."),
        out);
    assertTrue(
        out.contains(" (on the way or due at a weekend: ask your carrier)"),
        () -> "beside the day itself: " + out);
  }

  @Test
  void aPackingThatIsNotThereIsRefused() throws IOException {
    assertEquals(
        ConsoleCommand.BAD_COMMAND_LINE, run("rank", scenarioWithForecast(), "--packing", "thik"));
    assertTrue(err.contains("thick"), err);
  }

  @Test
  void aForecastIsAskedFor() throws IOException {
    String to = folder.resolve("out").toString();
    assertEquals(ConsoleCommand.BAD_SCENARIO, run("rank", scenario(), "--out", to));
    assertTrue(err.contains("forecast: is missing: list days in the file"), err);
    String none = folder.resolve("none.csv").toString();
    assertEquals(
        ConsoleCommand.BAD_SCENARIO,
        run("rank", scenarioWithForecast(), "--forecast", none, "--out", to));
    assertTrue(err.contains("cannot be read"), err);
    String table =
        file(
            "week.csv",
            """
            date,origin low [°F],origin high [°F],destination low [°F],destination high [°F]
            2026-12-01,0,10,5,15
            2026-12-03,66,78,65,77
            """);
    assertEquals(
        ConsoleCommand.BAD_SCENARIO,
        run("rank", scenarioWithForecast(), "--forecast", table, "--out", to));
    assertTrue(err.contains("must be 2026-12-02"), err);
  }

  @Test
  void aStationsRecordIsReplayed() throws IOException {
    List<String> rows = new ArrayList<>(List.of("date,low [°F],high [°F]"));
    LocalDate day = LocalDate.of(2025, 1, 28);
    for (int n = 0; n < 13; n++) {
      rows.add(day.plusDays(n) + (n < 5 ? ",0,10" : ",66,78"));
    }
    String station = file("station.csv", String.join("\n", rows) + "\n");
    assertEquals(
        0,
        run(
            "replay",
            scenario(),
            "--origin",
            station,
            "--destination",
            station,
            "--mesh-scale",
            "2",
            "--json"),
        () -> err);
    JsonNode answer = new ObjectMapper().readTree(out);
    assertEquals(10, answer.get("days").asInt());
    int held = 0;
    for (JsonNode month : answer.get("months")) {
      held += month.get("days_with_80_of_100_well").asInt();
    }
    assertTrue(
        answer
            .get("answer")
            .asText()
            .contains(
                "80 or more of 100 go well on " + (held == 0 ? "none" : held) + " of 10 days."),
        out);
    assertTrue(err.contains("Roughly, by every 7th day: Of 100 departures"), err);
    JsonNode months = answer.get("months");
    double cold = months.get(0).get("too_cold_better_way").asDouble();
    assertTrue(cold > 0.99 && months.get(0).get("too_hot_better_way").asDouble() < 0.01, out);
    assertEquals(1, months.get(0).get("month").asInt());
    assertEquals(3, months.get(0).get("days").asInt());
    assertTrue(
        months.get(0).get("within_without").asDouble()
            < months.get(1).get("within_without").asDouble(),
        out);
  }

  /** From one place to another, over the end of a year, with a warmer and without. */
  @Test
  void recordsOfBothEndsAreReplayed() throws IOException {
    String outdoors =
        Small.SCENARIO
            .replaceAll("ambient: 1[24] °C, spread: 3 K", "ambient: outdoors")
            .replace("from: Here, UTC-5", "from: Here, UTC-5\n  lows/highs: 5 to 12 °C");
    List<String> cold = new ArrayList<>(List.of("date,low [°C],high [°C]"));
    List<String> mild = new ArrayList<>(cold);
    LocalDate day = LocalDate.of(2024, 12, 29);
    for (int n = 0; n < 5; n++) {
      cold.add(day.plusDays(n) + ",-20,-10");
      mild.add(day.plusDays(n) + ",22,26");
    }
    String to = folder.resolve("out").toString();
    assertEquals(
        0,
        run(
            "replay",
            file("outdoors.yaml", outdoors),
            "--origin",
            file("cold.csv", String.join("\n", cold)),
            "--destination",
            file("mild.csv", String.join("\n", mild)),
            "--months",
            "12,1",
            "--mesh-scale",
            "2",
            "--out",
            to),
        () -> err);
    assertTrue(out.contains("December") && out.contains("January"), out);
    assertFalse(out.matches("(?is).*\\bsafe\\b.*"), out);
    List<String> rows = Files.readAllLines(folder.resolve("out").resolve("replay.csv"));
    assertEquals(1 + 2 * 3, rows.size(), rows.toString());
    String page = Files.readString(folder.resolve("out").resolve("replay.html"));
    assertTrue(page.contains(">in the better way each day</text>"), page);
    assertTrue(page.indexOf("--months 6,7,8") < page.indexOf("<svg"), page);
  }

  @Test
  void placesWithoutARecordNeedOne() throws IOException {
    assertEquals(ConsoleCommand.BAD_SCENARIO, run("replay", scenario()));
    assertTrue(err.contains("--origin") && err.contains("New York"), err);
  }
}
