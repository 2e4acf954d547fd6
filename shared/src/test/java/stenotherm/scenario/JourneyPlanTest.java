package stenotherm.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Temperatures;
import stenotherm.base.Times;
import stenotherm.journey.Journey;
import stenotherm.text.CsvTable;
import stenotherm.text.ScalarNode;
import stenotherm.text.TextFormatException;
import stenotherm.weather.DayExtremes;
import stenotherm.weather.RecordedWeather;

class JourneyPlanTest {
  private static final String HEAD =
      """
      format: 1
      title: Other weather
      animal: leopard gecko, 40 g
      cup: 16 oz deli cup
      packings:
        - {name: box, box: 7 x 7 x 6 in carton, foam: EPS 20 3/4 in, fill: shredded paper}
      journey:
      """;

  private static Scenario scenario(String journey) {
    return ScenarioReader.read("plan.yaml", HEAD + journey.indent(2));
  }

  private static OtherWeather.EndWeather daily(double low, double high, double spread) {
    return OtherWeather.EndWeather.daily(
        new Range(Temperatures.fromCelsius(low), Temperatures.fromCelsius(high)), spread);
  }

  @Test
  void otherWeatherIsWhatAFileWithItGives() {
    String places =
        "template: overnight by air\nsealed: 2014-01-%s 16:00\n"
            + "from: {name: here, utc: UTC-5, lows/highs: %s °C, spread: %s K}\n"
            + "to: {name: there, utc: UTC-8, lows/highs: %s °C, spread: %s K}\n";
    Scenario given = scenario(places.formatted("15", "-2 to 5", "3", "8 to 16", "3"));
    Scenario other = scenario(places.formatted("20", "1 to 9", "2", "-6 to 3", "4"));
    Journey made =
        given
            .plan()
            .in(new OtherWeather(LocalDate.of(2014, 1, 20), daily(1, 9, 2), daily(-6, 3, 4)));
    assertSameAir(other.journey(), made);
  }

  @Test
  void daysGoByTheirDates() {
    Scenario recorded =
        scenario(
            "template: overnight by air\nsealed: 2014-01-15 16:00\n"
                + "from: New York, UTC-5\nto: Seattle, UTC-8\n");
    RecordedWeather weather = RecordedWeather.bundled();
    LocalDate first = LocalDate.of(2014, 1, 1);
    LocalDate last = LocalDate.of(2014, 2, 1);
    OtherWeather same =
        new OtherWeather(
            LocalDate.of(2014, 1, 15),
            new OtherWeather.EndWeather(first, ranges(weather.days("New York", first, last)), 1),
            new OtherWeather.EndWeather(first, ranges(weather.days("Seattle", first, last)), 1));
    assertSameAir(recorded.journey(), recorded.plan().in(same));
  }

  @Test
  void weatherIsOffByWhatCanBe() {
    LocalDate first = LocalDate.of(2014, 1, 1);
    List<Range> day = List.of(new Range(270, 280));
    for (double wrong : new double[] {-1, 31, Double.NaN}) {
      assertThrows(
          InvalidInputException.class, () -> new OtherWeather.EndWeather(first, day, wrong));
    }
    assertEquals(30, new OtherWeather.EndWeather(first, day, 30).spread());
  }

  private static List<Range> ranges(List<DayExtremes> days) {
    return days.stream().map(day -> new Range(day.low(), day.high())).toList();
  }

  private static void assertSameAir(Journey expected, Journey made) {
    assertEquals(expected.sealing(), made.sealing());
    assertEquals(expected.duration(), made.duration(), 1e-6);
    for (int leg = 0; leg < expected.legs().size(); leg++) {
      var here = expected.legs().get(leg).surroundings();
      var there = made.legs().get(leg).surroundings();
      assertEquals(here.spread(), there.spread());
      for (double time = expected.start(leg);
          time < expected.start(leg + 1) + Times.fromHours(5);
          time += 600) {
        assertEquals(here.ambient().at(time), there.ambient().at(time), 1e-9);
      }
    }
  }

  @Test
  void aJourneyIndoorsHasNoOtherWeather() {
    Scenario indoors =
        scenario(
            "from: Here, UTC\nsealed: 2014-01-15 16:00\n"
                + "legs:\n  - {name: cellar, at: origin, for: 8 h, ambient: 12 °C}\n");
    OtherWeather weather =
        new OtherWeather(LocalDate.of(2014, 1, 20), daily(1, 9, 2), daily(1, 9, 2));
    TextFormatException refused =
        assertThrows(TextFormatException.class, () -> indoors.plan().in(weather));
    assertTrue(
        String.valueOf(refused.getMessage()).contains("does not depend on the weather"),
        refused.getMessage());
  }

  private static final String NEW_YORK_TO_SEATTLE =
      "template: overnight by air\nsealed: 2014-01-15 16:00\n"
          + "from: New York, UTC-5\nto: Seattle, UTC-8\n";

  /** Overnight: the day before, both days on the way, and the day after are on record. */
  @Test
  void recordedDaysAreThoseThatCanBeFollowed() {
    RecordedWeather weather = RecordedWeather.bundled();
    LocalDate first = LocalDate.of(2014, 1, 13);
    List<DayExtremes> here = weather.days("New York", first, LocalDate.of(2014, 1, 20));
    List<DayExtremes> there =
        weather.days("Seattle", LocalDate.of(2014, 1, 11), LocalDate.of(2014, 1, 18));
    JourneyPlan plan = scenario(NEW_YORK_TO_SEATTLE).plan();
    List<Journey> journeys = plan.onRecordedDays(here, there, day -> true);
    assertEquals(
        List.of(14, 15, 16),
        journeys.stream().map(each -> each.sealing().getDayOfMonth()).toList());
    assertSameAir(scenario(NEW_YORK_TO_SEATTLE).journey(), journeys.get(1));
    assertEquals(1, plan.onRecordedDays(here, there, day -> day.getDayOfMonth() == 16).size());
    assertEquals(List.of(), plan.onRecordedDays(here, there.subList(0, 2), day -> true));
  }

  private static List<ScalarNode> ends(String origin, String destination) {
    return CsvTable.of(
            "lanes.csv", List.of("from here", "to there"), List.of(List.of(origin, destination)))
        .rows()
        .get(0);
  }

  @Test
  void betweenOtherPlacesItIsWhatAFileWithThemGives() {
    Scenario back =
        scenario(
            "template: overnight by air\nsealed: 2014-01-15 16:00\n"
                + "from: Seattle, UTC-8\nto: New York, UTC-5\n");
    RecordedWeather weather = RecordedWeather.bundled();
    List<ScalarNode> ends = ends("Seattle, UTC-8", "New York, UTC-5");
    for (String journey :
        List.of(NEW_YORK_TO_SEATTLE, "template: overnight by air\nlows/highs: 28 to 45 °F\n")) {
      JourneyPlan plan = scenario(journey).plan().between(ends.get(0), ends.get(1));
      List<Journey> made =
          plan.onRecordedDays(
              weather.days("Seattle"),
              weather.days("New York"),
              day -> day.equals(LocalDate.of(2014, 1, 15)));
      Journey same = made.get(0);
      assertEquals(back.journey().legs().get(0).place(), same.legs().get(0).place());
      if (journey.equals(NEW_YORK_TO_SEATTLE)) {
        assertSameAir(back.journey(), same);
      }
    }
  }

  @Test
  void otherPlacesAreComplainedOfWhereTheyStand() {
    List<ScalarNode> ends = ends("Seattle", "New York, UTC+9");
    JourneyPlan plan = scenario(NEW_YORK_TO_SEATTLE).plan().between(ends.get(0), ends.get(1));
    OtherWeather mild =
        new OtherWeather(LocalDate.of(2014, 1, 20), daily(1, 9, 2), daily(-6, 3, 4));
    String message =
        String.valueOf(assertThrows(TextFormatException.class, () -> plan.in(mild)).getMessage());
    assertTrue(message.startsWith("lanes.csv:2:1: from here: must be a place and its"), message);
    assertTrue(message.contains("\nlanes.csv:2:2: to there"), message);
  }

  @Test
  void tablesOfOtherSourcesAreAsStrict() {
    assertThrows(TextFormatException.class, () -> CsvTable.of("t", List.of(), List.of()));
    String message =
        String.valueOf(
            assertThrows(
                    TextFormatException.class,
                    () ->
                        CsvTable.of(
                            "t", List.of("a", "b"), List.of(List.of("1", "2"), List.of("3"))))
                .getMessage());
    assertEquals("t:3:1: has 1 value but there are 2 columns", message);
  }
}
