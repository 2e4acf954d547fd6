package stenotherm.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Temperatures;

class RecordedWeatherTest {
  private static final double ROUNDING = 1e-9;

  private final RecordedWeather weather = RecordedWeather.bundled();

  @Test
  void holdsTwoPlaces() {
    assertEquals(List.of("New York", "Seattle"), weather.places());
    assertSame(weather, RecordedWeather.bundled());
    assertTrue(weather.source().text().contains("public domain"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"New York", "Seattle"})
  void hasEveryDayOfFourYears(String place) {
    List<DayExtremes> days = weather.days(place);
    assertEquals(4 * 365 + 1, days.size());
    for (int i = 0; i < days.size(); i++) {
      assertEquals(LocalDate.of(2012, 1, 1).plusDays(i), days.get(i).date());
    }
  }

  // Looked up by eye in the package's own file weather.csv.
  @ParameterizedTest
  @CsvSource({
    "New York, 2012-01-01, 3.3, 10.0",
    "New York, 2013-07-18, 25.0, 37.8",
    "New York, 2014-01-04, -16.0, -0.5",
    "Seattle, 2012-02-29, 1.1, 5.0",
    "Seattle, 2013-12-07, -7.1, 0.0",
    "Seattle, 2015-12-31, -2.1, 5.6",
    "' seattle ', 2015-12-31, -2.1, 5.6",
  })
  void agreesWithTheSource(String place, LocalDate date, double low, double high) {
    DayExtremes day = weather.day(place, date);
    assertEquals(date, day.date());
    assertEquals(low, Temperatures.toCelsius(day.low()), ROUNDING);
    assertEquals(high, Temperatures.toCelsius(day.high()), ROUNDING);
  }

  // Means taken with awk over the package's own file, printed to six digits.
  @ParameterizedTest
  @CsvSource({"New York, 8.98987, 17.0992", "Seattle, 8.23477, 16.4391"})
  void hasTheMeansOfTheSource(String place, double meanLow, double meanHigh) {
    assertEquals(meanLow, meanCelsius(place, DayExtremes::low), 1e-4);
    assertEquals(meanHigh, meanCelsius(place, DayExtremes::high), 1e-4);
  }

  private double meanCelsius(String place, ToDoubleFunction<DayExtremes> which) {
    double kelvin = weather.days(place).stream().mapToDouble(which).average().orElseThrow();
    return Temperatures.toCelsius(kelvin);
  }

  @Test
  void extremesOfTheRecordLieInNewYork() {
    List<DayExtremes> all =
        weather.places().stream().flatMap(place -> weather.days(place).stream()).toList();
    DayExtremes coldest = all.stream().min(Comparator.comparing(DayExtremes::low)).orElseThrow();
    DayExtremes hottest = all.stream().max(Comparator.comparing(DayExtremes::high)).orElseThrow();
    assertEquals(weather.day("New York", LocalDate.of(2014, 1, 4)), coldest);
    assertEquals(weather.day("New York", LocalDate.of(2013, 7, 18)), hottest);
  }

  @Test
  void rangeIncludesBothEnds() {
    LocalDate first = LocalDate.of(2014, 1, 3);
    List<DayExtremes> days = weather.days("New York", first, first.plusDays(3));
    assertEquals(4, days.size());
    assertEquals(first, days.get(0).date());
    assertEquals(first.plusDays(3), days.get(3).date());
    assertEquals(1, weather.days("New York", first, first).size());
  }

  @ParameterizedTest
  @CsvSource({"Sea Tle, Seattle", "new yrok, New York"})
  void unknownPlaceIsAnsweredWithTheClosest(String typed, String meant) {
    InvalidInputException e = assertThrows(InvalidInputException.class, () -> weather.days(typed));
    assertTrue(e.getMessage().contains('"' + typed + '"'), e.getMessage());
    assertTrue(e.getMessage().contains("Did you mean \"" + meant + "\"?"), e.getMessage());
    assertTrue(e.getMessage().contains("New York, Seattle"), e.getMessage());
  }

  @ParameterizedTest
  @ValueSource(strings = {"Chicago", "NYC"})
  void placeUnlikeAnyIsAnsweredWithTheRecordedOnes(String typed) {
    assertEquals(
        "place: \"" + typed + "\" has no recorded weather. Recorded places: New York, Seattle",
        assertThrows(InvalidInputException.class, () -> weather.days(typed)).getMessage());
  }

  @ParameterizedTest
  @ValueSource(strings = {"2011-12-31", "2016-01-01"})
  void dateOutsideTheRecordIsAnsweredWithItsRange(LocalDate date) {
    InvalidInputException e =
        assertThrows(InvalidInputException.class, () -> weather.day("Seattle", date));
    assertEquals(
        "date: " + date + " is outside the record, which runs from 2012-01-01 to 2015-12-31",
        e.getMessage());
    LocalDate inside = LocalDate.of(2013, 1, 1);
    assertEquals(
        "first day",
        assertThrows(InvalidInputException.class, () -> weather.days("Seattle", date, inside))
            .field());
    assertEquals(
        "last day",
        assertThrows(InvalidInputException.class, () -> weather.days("Seattle", inside, date))
            .field());
  }

  @Test
  void datesInTheWrongOrderAreRefused() {
    LocalDate first = LocalDate.of(2013, 1, 2);
    InvalidInputException e =
        assertThrows(
            InvalidInputException.class, () -> weather.days("Seattle", first, first.minusDays(1)));
    assertEquals("last day", e.field());
  }

  @Test
  void recordIsReadOnly() {
    assertThrows(UnsupportedOperationException.class, () -> weather.days("Seattle").remove(0));
  }

  @Test
  void dayWithSwappedTemperaturesIsRefused() {
    LocalDate date = LocalDate.of(2014, 1, 4);
    InvalidInputException e =
        assertThrows(InvalidInputException.class, () -> new DayExtremes(date, 280, 270));
    assertTrue(e.getMessage().contains("280 K"), e.getMessage());
    assertTrue(e.getMessage().contains("swapped"), e.getMessage());
    assertThrows(InvalidInputException.class, () -> new DayExtremes(date, Double.NaN, 270));
  }
}
