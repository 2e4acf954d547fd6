package stenotherm.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stenotherm.journey.Leg;
import stenotherm.text.TextFormatException;

/** A journey whose weather stands in a forecast alone. */
class ForecastWeatherTest {
  private static final String SCENARIO =
      """
      format: 1
      title: Which day?
      animal: leopard gecko, 40 g
      cup: 110 x 80 x 60 mm
      journey: {template: overnight by air}
      packings:
        - {name: cube, box: 7 in cube carton, foam: EPS 20 3/4 in, fill: shredded paper}
      """;

  private static final String FORECAST =
      """
      forecast:
        - {date: 2027-03-09, origin: 42 to 60 °F, destination: 30 to 48 °F}
        - {date: 2027-03-10, origin: 40 to 58 °F, destination: 33 to 50 °F}
      """;

  @TempDir private Path folder;

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("s.yaml"), text);
  }

  /** The journey is that of a file which gives these lows and highs. */
  private static void assertGiven(String days, Scenario scenario) {
    List<Leg> expected =
        ScenarioReader.read(
                "given.yaml", SCENARIO.replace("air}", "air, lows/highs: " + days + "}"))
            .journey()
            .legs();
    List<Leg> legs = scenario.journey().legs();
    assertEquals(expected.size(), legs.size());
    double end = 0;
    for (int leg = 0; leg < legs.size(); leg++) {
      end += legs.get(leg).duration();
      assertEquals(
          expected.get(leg).surroundings().ambient().at(end),
          legs.get(leg).surroundings().ambient().at(end),
          1e-9,
          legs.get(leg).name());
    }
    assertTrue(
        scenario.assumptions().stream().anyMatch(each -> each.contains("Error of forecast")),
        () -> scenario.assumptions().toString());
  }

  @Test
  void aRankingNeedsNoOtherWeather() throws IOException {
    Path both = file(SCENARIO + FORECAST);
    assertGiven("42 to 60 °F", ScenarioReader.readForForecast(both, Optional.empty()));
    DailyTable table =
        DailyTable.readEnds(
            "week.csv",
            """
            date,origin low [°C],origin high [°C],destination low [°C],destination high [°C]
            2027-03-09,1,7,2,8
            """);
    assertGiven("1 to 7 °C", ScenarioReader.readForForecast(both, Optional.of(table)));
    assertGiven("1 to 7 °C", ScenarioReader.readForForecast(file(SCENARIO), Optional.of(table)));
  }

  @Test
  void weatherOfTheJourneyStays() throws IOException {
    String given = SCENARIO.replace("air}", "air, lows/highs: 20 to 30 °F}");
    assertGiven(
        "20 to 30 °F", ScenarioReader.readForForecast(file(given + FORECAST), Optional.empty()));
  }

  @Test
  void otherQuestionsSayWhatAForecastIsFor() {
    TextFormatException fault =
        assertThrows(
            TextFormatException.class, () -> ScenarioReader.read("s.yaml", SCENARIO + FORECAST));
    assertEquals(
        "s.yaml:5:10: journey: needs lows/highs, such as 42 to 60 °F, or a place with recorded"
            + " weather as from; the forecast is for the command rank alone",
        fault.getMessage());
  }

  @Test
  void withoutAForecastNothingIsMadeUp() throws IOException {
    Path neither = file(SCENARIO);
    TextFormatException fault =
        assertThrows(
            TextFormatException.class,
            () -> ScenarioReader.readForForecast(neither, Optional.empty()));
    assertTrue(
        fault.getMessage().contains("needs lows/highs, such as 28 to 45 °F"), fault::getMessage);
  }
}
