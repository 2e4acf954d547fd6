package stenotherm.weather;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Source;
import stenotherm.base.Suggestions;
import stenotherm.base.Temperatures;

/**
 * Weather that was recorded: the lowest and highest temperature of each day at a few places.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class RecordedWeather {
  /** Of a row of the record: place, date, highest and lowest. */
  private static final int COLUMNS = 4;

  /** Where the cities are, east of Greenwich [°]. */
  private static final Map<String, Double> LONGITUDES =
      Map.of("new york", -74.0, "seattle", -122.3);

  private final NavigableMap<String, List<DayExtremes>> days;

  private RecordedWeather(NavigableMap<String, List<DayExtremes>> days) {
    this.days = days;
  }

  /**
   * The record that comes with the library: New York and Seattle, 2012 to 2015. It is read at the
   * first call and kept.
   *
   * @return the record
   */
  public static RecordedWeather bundled() {
    return Bundled.WEATHER;
  }

  /**
   * Returns where the record comes from.
   *
   * @return the citation
   */
  public Source source() {
    return Source.read(
        "NOAA, daily summaries 2012-2015 (public domain)",
        "file weather.csv of vega-datasets 3.2.1");
  }

  /**
   * Returns the places with days on record.
   *
   * @return their names in alphabetical order, unmodifiable
   */
  public List<String> places() {
    return List.copyOf(days.keySet());
  }

  /**
   * Tells whether a place has days on record.
   *
   * @param place name of the place; upper and lower case are alike
   * @return true if {@link #days(String)} has some
   */
  public boolean has(String place) {
    return days.containsKey(place.strip());
  }

  /**
   * Returns where a place is.
   *
   * @param place name of the place; upper and lower case are alike
   * @return its longitude, east of Greenwich positive [°]; empty if it is not on record
   */
  public Optional<Double> longitude(String place) {
    return Optional.ofNullable(LONGITUDES.get(place.strip().toLowerCase(Locale.ROOT)));
  }

  /**
   * Returns all days of a place.
   *
   * @param place name of the place; upper and lower case are alike
   * @return every calendar day of the record in order of date, without gaps, unmodifiable
   * @throws InvalidInputException if there is no such place
   */
  public List<DayExtremes> days(String place) {
    List<DayExtremes> record = days.get(place.strip());
    if (record == null) {
      throw new InvalidInputException(
          "place",
          "\""
              + place
              + "\" has no recorded weather. "
              + Suggestions.closest(place, days.keySet())
                  .map(known -> "Did you mean \"" + known + "\"? ")
                  .orElse("")
              + "Recorded places: "
              + String.join(", ", days.keySet()));
    }
    return record;
  }

  /**
   * Returns the days of a place from one date to another, both included.
   *
   * @param place name of the place; upper and lower case are alike
   * @param first the first day
   * @param last the last day, not before the first
   * @return the days in order of date, without gaps, unmodifiable
   * @throws InvalidInputException if there is no such place, a date is outside the record, or the
   *     last day is before the first
   */
  public List<DayExtremes> days(String place, LocalDate first, LocalDate last) {
    List<DayExtremes> record = days(place);
    int from = index(record, "first day", first);
    int to = index(record, "last day", last);
    if (to < from) {
      throw new InvalidInputException(
          "last day", last + " is before the first day, " + first + ". Swap the two dates.");
    }
    return record.subList(from, to + 1);
  }

  /**
   * Returns one day of a place.
   *
   * @param place name of the place; upper and lower case are alike
   * @param date the calendar day
   * @return the day
   * @throws InvalidInputException if there is no such place or the date is outside the record
   */
  public DayExtremes day(String place, LocalDate date) {
    List<DayExtremes> record = days(place);
    return record.get(index(record, "date", date));
  }

  private static int index(List<DayExtremes> record, String field, LocalDate date) {
    LocalDate first = record.get(0).date();
    LocalDate last = record.get(record.size() - 1).date();
    if (date.isBefore(first) || date.isAfter(last)) {
      throw new InvalidInputException(
          field, date + " is outside the record, which runs from " + first + " to " + last);
    }
    return Math.toIntExact(date.toEpochDay() - first.toEpochDay());
  }

  /** Reads the file at the first call, once, safely from any thread. */
  private static final class Bundled {
    static final RecordedWeather WEATHER = new RecordedWeather(readDays("daily.csv"));

    private static NavigableMap<String, List<DayExtremes>> readDays(String file) {
      NavigableMap<String, List<DayExtremes>> days = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
      for (String[] row : rows(file)) {
        List<DayExtremes> record = days.computeIfAbsent(row[0], place -> new ArrayList<>());
        LocalDate date = LocalDate.parse(row[1]);
        // Days are found by their distance from the first one, so there must be no gap.
        if (!record.isEmpty() && !date.equals(record.get(record.size() - 1).date().plusDays(1))) {
          throw new IllegalStateException(file + ": " + row[0] + " has a gap before " + date);
        }
        record.add(new DayExtremes(date, kelvin(row[3]), kelvin(row[2])));
      }
      days.replaceAll((place, record) -> List.copyOf(record));
      return Collections.unmodifiableNavigableMap(days);
    }

    private static double kelvin(String celsius) {
      return Temperatures.fromCelsius(Double.parseDouble(celsius));
    }

    /** The rows after the comment lines and the row of column names. */
    private static List<String[]> rows(String file) {
      try (InputStream in = RecordedWeather.class.getResourceAsStream(file)) {
        if (in == null) {
          throw new IllegalStateException(file + " is missing from the library's jar");
        }
        BufferedReader reader =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
        List<String[]> rows =
            reader
                .lines()
                .filter(line -> !line.startsWith("#"))
                .skip(1)
                .map(line -> line.split(",", -1))
                .toList();
        for (String[] row : rows) {
          if (row.length != COLUMNS) {
            throw new IllegalStateException(
                file + ": " + COLUMNS + " columns expected in " + String.join(",", row));
          }
        }
        return rows;
      } catch (IOException e) {
        throw new UncheckedIOException(file, e);
      }
    }
  }
}
