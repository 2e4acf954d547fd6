package stenotherm.fleet;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Predicate;
import stenotherm.journey.Journey;
import stenotherm.scenario.Scenario;
import stenotherm.text.CsvTable;
import stenotherm.text.ScalarNode;
import stenotherm.weather.DayExtremes;
import stenotherm.weather.RecordedWeather;

/**
 * A way that parcels go: what is asked of a scenario, from one place to another.
 *
 * @param name name, unique among the lanes
 * @param scenario the scenario file, as the table names it
 * @param origin where parcels are sent from, such as {@code New York, UTC-5}
 * @param destination where they are sent to
 */
record Lane(String name, String scenario, String origin, String destination)
    implements Serializable {
  static final String NAME = "lane";
  static final String SCENARIO = "scenario";
  static final String ORIGIN = "origin";
  static final String DESTINATION = "destination";

  /** The columns of a table of lanes. */
  static final List<String> COLUMNS = List.of(NAME, SCENARIO, ORIGIN, DESTINATION);

  /** The journeys of the recorded days that are wanted. */
  List<Journey> journeys(Scenario asked, Predicate<LocalDate> wanted) {
    CsvTable alone =
        CsvTable.of("lane " + name, COLUMNS, List.of(List.of(name, scenario, origin, destination)));
    List<ScalarNode> row = alone.rows().get(0);
    return journeys(asked, row.get(2), row.get(3), wanted);
  }

  /**
   * The journeys between two places on the recorded days that are wanted.
   *
   * @throws stenotherm.text.TextFormatException if a place is not on record or has no clock, where
   *     its text stands
   */
  static List<Journey> journeys(
      Scenario asked, ScalarNode origin, ScalarNode destination, Predicate<LocalDate> wanted) {
    List<DayExtremes> here = days(origin);
    List<DayExtremes> there = days(destination);
    return asked.plan().between(origin, destination).onRecordedDays(here, there, wanted);
  }

  private static List<DayExtremes> days(ScalarNode place) {
    String text = place.text();
    int comma = text.lastIndexOf(',');
    String name = comma < 0 ? text : text.substring(0, comma);
    return place.locate("place", () -> RecordedWeather.bundled().days(name));
  }
}
