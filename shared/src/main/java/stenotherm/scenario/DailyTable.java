package stenotherm.scenario;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stenotherm.base.Range;
import stenotherm.text.CsvTable;
import stenotherm.text.Faults;
import stenotherm.text.MappingNode;
import stenotherm.text.ScalarNode;
import stenotherm.text.SequenceNode;
import stenotherm.text.TextFormatException;
import stenotherm.weather.DayExtremes;

/**
 * Lows and highs day by day, as forecast or as a station recorded them: a table with commas and a
 * row for each day, without gaps. Its first column is {@code date}; the others have their unit in
 * brackets.
 *
 * <ul>
 *   <li>Of one place: {@code low [°F], high [°F]}.
 *   <li>Of both ends of a journey: {@code origin low [°F], origin high [°F], destination low [°F],
 *       destination high [°F]}.
 * </ul>
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class DailyTable {
  private static final String DATE = "date";
  private static final String LOW = "low";
  private static final String HIGH = "high";
  private static final int MOST_DAYS = 40_000;

  /** More than any forecast has. */
  private static final int MOST_LISTED = 60;

  private static final Pattern HEAD = Pattern.compile("(.*\\S)\\s*\\[\\s*(.+?)\\s*]");

  private final LocalDate first;
  private final Map<String, List<Range>> places;

  private DailyTable(LocalDate first, Map<String, List<Range>> places) {
    this.first = first;
    this.places = places;
  }

  /**
   * Reads a table of one place.
   *
   * @param path a file in UTF-8
   * @return the days
   * @throws IOException if the file cannot be read
   * @throws TextFormatException if the file is no such table
   */
  public static List<DayExtremes> readPlace(Path path) throws IOException {
    return place(CsvTable.read(path));
  }

  /** Days of one place, from text; {@code fileName} is what messages show. */
  static List<DayExtremes> readPlace(String fileName, String text) {
    return place(CsvTable.parse(fileName, text));
  }

  private static List<DayExtremes> place(CsvTable table) {
    DailyTable read = new Reader(table, "").read();
    List<DayExtremes> days = new ArrayList<>();
    for (Range range : read.of("")) {
      days.add(new DayExtremes(read.first.plusDays(days.size()), range.low(), range.high()));
    }
    return days;
  }

  /**
   * Reads a table of both ends of a journey.
   *
   * @param path a file in UTF-8
   * @return the table
   * @throws IOException if the file cannot be read
   * @throws TextFormatException if the file is no such table
   */
  public static DailyTable readEnds(Path path) throws IOException {
    return ends(CsvTable.read(path));
  }

  /** A table of both ends, from text; {@code fileName} is what messages show. */
  static DailyTable readEnds(String fileName, String text) {
    return ends(CsvTable.parse(fileName, text));
  }

  private static DailyTable ends(CsvTable table) {
    return new Reader(table, Sites.ORIGIN, Sites.DESTINATION).read();
  }

  /** Days of both ends as a scenario lists them. */
  static DailyTable readEnds(SequenceNode list, Assumptions assumptions) {
    List<MappingNode> days = list.mappings();
    if (days.size() > MOST_LISTED) {
      throw list.fail("must have at most " + MOST_LISTED + " days");
    }
    Faults faults = new Faults();
    List<LocalDate> dates = new ArrayList<>();
    List<Range> origin = new ArrayList<>();
    List<Range> destination = new ArrayList<>();
    for (MappingNode each : days) {
      KeyedSection day = KeyedSection.of(each, Vocabulary.FORECAST, assumptions);
      faults.attempt(() -> following(day.require(DATE).asScalar(), dates)).ifPresent(dates::add);
      faults
          .attempt(() -> PlausibleTemperatures.outdoors(day.require(Sites.ORIGIN)))
          .ifPresent(origin::add);
      faults
          .attempt(() -> PlausibleTemperatures.outdoors(day.require(Sites.DESTINATION)))
          .ifPresent(destination::add);
    }
    faults.throwIfAny();
    return new DailyTable(
        dates.get(0),
        Map.of(Sites.ORIGIN, List.copyOf(origin), Sites.DESTINATION, List.copyOf(destination)));
  }

  private static LocalDate following(ScalarNode node, List<LocalDate> before) {
    LocalDate date = node.date();
    if (!before.isEmpty()) {
      requireDay(node, date, before.get(before.size() - 1).plusDays(1));
    }
    return date;
  }

  private static void requireDay(ScalarNode node, LocalDate date, LocalDate expected) {
    if (!date.equals(expected)) {
      throw node.fail("must be " + expected + ": days follow each other without gaps");
    }
  }

  /** Lows and highs at a place [K]. */
  private List<Range> of(String place) {
    return places.getOrDefault(place, List.of());
  }

  /**
   * Returns the first day.
   *
   * @return its date
   */
  public LocalDate first() {
    return first;
  }

  /**
   * Returns the last day.
   *
   * @return its date
   */
  public LocalDate last() {
    return first.plusDays(origin().size() - 1L);
  }

  /**
   * Returns the days at the origin.
   *
   * @return low and high of each day from the first on [K]; unmodifiable
   */
  public List<Range> origin() {
    return of(Sites.ORIGIN);
  }

  /**
   * Returns the days at the destination.
   *
   * @return low and high of each day from the first on [K]; unmodifiable
   */
  public List<Range> destination() {
    return of(Sites.DESTINATION);
  }

  /** Reads columns by their names. */
  private static final class Reader {
    private final CsvTable table;
    private final List<String> places;
    private final Map<String, Column> columns = new LinkedHashMap<>();

    Reader(CsvTable table, String... places) {
      this.table = table;
      this.places = List.of(places);
      Map<String, String> names = new LinkedHashMap<>();
      for (String place : places) {
        names.put(name(place, LOW), name(place, LOW));
        names.put(name(place, HIGH), name(place, HIGH));
      }
      List<ScalarNode> header =
          table.headerLike(DATE + "," + String.join(" [°F],", names.keySet()) + " [°F]");
      header.get(0).choiceInAnyCase(Map.of(DATE, DATE));
      for (int number = 1; number < header.size(); number++) {
        ScalarNode head = header.get(number);
        Matcher parts = HEAD.matcher(head.text());
        if (!parts.matches()) {
          throw head.fail("needs its unit in brackets");
        }
        String name = head.piece(parts.group(1)).choiceInAnyCase(names);
        // a reading of 0 tells whether it is a unit of temperature
        head.piece("0 " + parts.group(2)).temperature();
        if (columns.put(name, new Column(number, parts.group(2))) != null) {
          throw head.fail("is a column twice");
        }
      }
      for (String name : names.keySet()) {
        if (!columns.containsKey(name)) {
          throw header.get(0).fail("needs a column '" + name + "' beside it, with its unit");
        }
      }
    }

    private record Column(int number, String unit) {}

    DailyTable read() {
      LocalDate first = checkedDates();
      Map<String, List<Range>> days = new LinkedHashMap<>();
      for (String place : places) {
        days.put(place, ranges(column(name(place, LOW)), column(name(place, HIGH))));
      }
      return new DailyTable(first, days);
    }

    private static String name(String place, String end) {
      return place.isEmpty() ? end : place + " " + end;
    }

    private Column column(String name) {
      Column column = columns.get(name);
      if (column == null) {
        throw new IllegalStateException(name);
      }
      return column;
    }

    private LocalDate checkedDates() {
      if (table.rows().isEmpty() || table.rows().size() > MOST_DAYS) {
        throw table
            .header()
            .get(0)
            .fail("needs 1 to " + MOST_DAYS + " rows below it, there are " + table.rows().size());
      }
      List<LocalDate> dates = table.dates(0);
      LocalDate first = dates.get(0);
      for (int row = 0; row < dates.size(); row++) {
        requireDay(table.rows().get(row).get(0), dates.get(row), first.plusDays(row));
      }
      return first;
    }

    private List<Range> ranges(Column low, Column high) {
      List<Range> ranges = new ArrayList<>();
      for (List<ScalarNode> row : table.rows()) {
        double lowest = PlausibleTemperatures.low(reading(row.get(low.number()), low.unit()));
        double highest = PlausibleTemperatures.high(reading(row.get(high.number()), high.unit()));
        if (lowest > highest) {
          throw row.get(low.number()).fail("is above the high of that day");
        }
        ranges.add(new Range(lowest, highest));
      }
      return List.copyOf(ranges);
    }

    private static ScalarNode reading(ScalarNode value, String unit) {
      // a number alone: the unit is the column's
      value.number();
      return value.piece(value.text() + " " + unit);
    }
  }
}
