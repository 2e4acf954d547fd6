package stenotherm.text;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.Month;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Dates and times of day as people write them: on the clock of 24 hours or with am and pm, dates as
 * year-month-day, with the month's name, or as two numbers and a year. What two people read as two
 * days is no date, unless the rest of its column tells which number is the month.
 */
final class CalendarText {
  private static final String EXAMPLE_DAY = ", write for example 2026-12-01 or December 1 2026";
  private static final String EXAMPLE_DATE =
      ", write for example 2026-12-01 15:00 or December 1 2026 3 pm";
  private static final String EXAMPLE_CLOCK =
      ", write hours and minutes as in 06:30, 18:00 or 6:30 pm";

  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("HH:mm[:ss]", Locale.ROOT)
          .withResolverStyle(ResolverStyle.STRICT);

  /** Programs leave the zero out, where a person who does so may mean the afternoon. */
  private static final DateTimeFormatter CLOCK_OF_PROGRAMS =
      DateTimeFormatter.ofPattern("H:mm[:ss]", Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);

  private static final Pattern HALF_DAY =
      Pattern.compile(
          "(?i)(?<hour>[0-9]{1,2})(?::(?<minute>[0-9]{2})(?::(?<second>[0-9]{2}))?)?"
              + "\\s*(?<half>[ap])\\.?\\s?m\\.?");

  private static final String ORDINAL = "(?:st|nd|rd|th)?";

  /** The formatter of dates alone would take years with a sign. */
  private static final Pattern DATE =
      Pattern.compile(
          "(?<iso>[0-9]{4}(?<isoMark>[-/])[0-9]{1,2}\\k<isoMark>[0-9]{1,2})"
              + "|(?<first>[0-9]{1,2})(?<mark>[./-])(?<second>[0-9]{1,2})\\k<mark>"
              + "(?<yearOfNumbers>[0-9]{4})(?![0-9:])"
              + ("|(?<monthBefore>\\p{L}{3,9})\\.?\\s+(?<dayAfter>[0-9]{1,2})" + ORDINAL)
              + "(?:\\s*,\\s*|\\s+)(?<yearAfter>[0-9]{4})(?![0-9:])"
              + ("|(?<dayBefore>[0-9]{1,2})" + ORDINAL + "\\.?\\s+(?<monthAfter>\\p{L}{3,9})")
              + "\\.?,?\\s+(?<yearLast>[0-9]{4})(?![0-9:])");

  private static final Pattern BETWEEN = Pattern.compile("T|\\s*,\\s*(?:at\\s+)?|\\s+(?:at\\s+)?");

  /** A date as in 7/15/2026, 15.10.2026 or 2026/7/15. */
  private static final Pattern NUMBERS_ALONE =
      Pattern.compile("(?s)(?:[0-9]{1,2}[./-][0-9]{1,2}[./-]|[0-9]{4}[./][0-9]).*");

  private static final Pattern SHORT_YEAR =
      Pattern.compile("(?s)[0-9]{1,2}([./-])[0-9]{1,2}\\1[0-9]{2}(?![0-9:]).*");

  private static final Pattern MONTH_NAMED =
      Pattern.compile("(?s)(?:[0-9]{1,2}" + ORDINAL + "\\.?\\s+)?(\\p{L}{3,9})(?![\\p{L}]).*");

  private static final Pattern NOON = Pattern.compile("(?is).*\\b12(?::00)?\\s*[ap]\\.?\\s?m\\b.*");
  private static final Pattern NOON_NAMED = Pattern.compile("(?is).*\\b(?:noon|midnight)\\b.*");

  private static final Pattern WEEKDAY =
      Pattern.compile("(?i)^(?:mon|tue|wed|thu|fri|sat|sun)\\p{L}{0,6}[.,]*\\s+");

  /** A time zone after a time of day, by its letters or its difference from UTC. */
  private static final Pattern ZONE =
      Pattern.compile(
          "(?<!\\p{L})\\(?(?![ap]\\.?m)"
              + "((?:\\p{L}{1,8}\\s){0,2}\\p{L}{1,8}|[+\\-−][0-9]{1,2}(?::?[0-9]{2})?)\\)?$",
          Pattern.CASE_INSENSITIVE);

  /** Where a text stands, and which number of a date in numbers alone is the month there. */
  enum Place {
    /** By itself, typed by a person. */
    ALONE,
    /** In a column of a table in which no row tells. */
    COLUMN,
    /** In a column in which another row has a day before its month. */
    COLUMN_DAY_FIRST,
    /** In a column in which another row has a month before its day. */
    COLUMN_MONTH_FIRST
  }

  private CalendarText() {}

  /** Tells whether a text begins as a date does, right or wrong. */
  static boolean isDated(String text) {
    Matcher named = MONTH_NAMED.matcher(text);
    return text.matches("(?s)[0-9]{4}-.*")
        || NUMBERS_ALONE.matcher(text).matches()
        || (named.matches() && month(named.group(1)).isPresent());
  }

  /**
   * Reads a time of day.
   *
   * @throws DateTimeException if it is none; noon and midnight by 12 am and 12 pm are none outside
   *     columns, as people mean either by both, where programs all mean midnight by 12 am
   */
  static LocalTime clock(String text, Place place) {
    Matcher half = HALF_DAY.matcher(text);
    if (!half.matches()) {
      return LocalTime.parse(text, place == Place.ALONE ? CLOCK : CLOCK_OF_PROGRAMS);
    }
    int hour = Integer.parseInt(half.group("hour"));
    int minute = half.group("minute") == null ? 0 : Integer.parseInt(half.group("minute"));
    int second = half.group("second") == null ? 0 : Integer.parseInt(half.group("second"));
    boolean isTwelve = hour == 12 && minute == 0 && second == 0;
    if (hour < 1 || hour > 12 || (isTwelve && place == Place.ALONE)) {
      throw new DateTimeException(text);
    }
    boolean afternoon = half.group("half").equalsIgnoreCase("p");
    return LocalTime.of(hour % 12 + (afternoon ? 12 : 0), minute, second);
  }

  /**
   * Reads a date.
   *
   * @throws DateTimeException if it is none
   */
  static LocalDate date(String text, Place place) {
    Matcher date = DATE.matcher(text);
    if (!date.matches()) {
      throw new DateTimeException(text);
    }
    return date(date, place);
  }

  /**
   * Reads a date with a time.
   *
   * @throws DateTimeException if it is none
   */
  static LocalDateTime dateTime(String text, Place place) {
    Matcher date = DATE.matcher(text);
    if (!date.lookingAt()) {
      throw new DateTimeException(text);
    }
    Matcher between = BETWEEN.matcher(text).region(date.end(), text.length());
    if (!between.lookingAt()) {
      throw new DateTimeException(text);
    }
    return date(date, place).atTime(clock(text.substring(between.end()), place));
  }

  /**
   * Tells which number is the month in a text that begins with a date in numbers alone.
   *
   * @return one of a column told; {@link Place#COLUMN} if this text does not tell
   */
  static Place told(String text) {
    Matcher date = DATE.matcher(text);
    return date.lookingAt() && date.group("first") != null ? told(date) : Place.COLUMN;
  }

  private static Place told(Matcher numbers) {
    boolean firstIsDay = Integer.parseInt(numbers.group("first")) > Month.values().length;
    boolean secondIsDay = Integer.parseInt(numbers.group("second")) > Month.values().length;
    if (firstIsDay == secondIsDay) {
      return Place.COLUMN;
    }
    return firstIsDay ? Place.COLUMN_DAY_FIRST : Place.COLUMN_MONTH_FIRST;
  }

  private static LocalDate date(Matcher parts, Place place) {
    if (parts.group("iso") != null) {
      String[] numbers = parts.group("iso").split("[-/]", -1);
      return LocalDate.of(
          Integer.parseInt(numbers[0]), Integer.parseInt(numbers[1]), Integer.parseInt(numbers[2]));
    }
    if (parts.group("first") != null) {
      return ofNumbers(parts, place);
    }
    boolean monthFirst = parts.group("monthBefore") != null;
    String name = parts.group(monthFirst ? "monthBefore" : "monthAfter");
    Month month = month(name).orElseThrow(() -> new DateTimeException(name));
    return LocalDate.of(
        Integer.parseInt(parts.group(monthFirst ? "yearAfter" : "yearLast")),
        month,
        Integer.parseInt(parts.group(monthFirst ? "dayAfter" : "dayBefore")));
  }

  private static LocalDate ofNumbers(Matcher parts, Place place) {
    Place told = place == Place.ALONE || place == Place.COLUMN ? told(parts) : place;
    if (told == Place.COLUMN) {
      throw new DateTimeException(parts.group());
    }
    boolean monthFirst = told == Place.COLUMN_MONTH_FIRST;
    return LocalDate.of(
        Integer.parseInt(parts.group("yearOfNumbers")),
        Integer.parseInt(parts.group(monthFirst ? "first" : "second")),
        Integer.parseInt(parts.group(monthFirst ? "second" : "first")));
  }

  /** A month by its name or the beginning of it, of three letters or more. */
  private static Optional<Month> month(String name) {
    String wanted = name.toLowerCase(Locale.ROOT);
    for (Month month : Month.values()) {
      String full = month.getDisplayName(TextStyle.FULL, Locale.ENGLISH).toLowerCase(Locale.ROOT);
      if (full.startsWith(wanted)) {
        return Optional.of(month);
      }
    }
    return Optional.empty();
  }

  /** What is wrong with a date, as a clause. */
  static String notADay(String text, Place place) {
    return Messages.quote(text)
        + " is not a date"
        + superfluous(text, withoutWeekday(text), bare -> date(bare, place))
            .orElseGet(() -> hints(text, false, place) + EXAMPLE_DAY);
  }

  /** What is wrong with a date with a time, as a clause. */
  static String notADate(String text, Place place) {
    return Messages.quote(text)
        + " is not a date with a time"
        + superfluous(text, withoutWeekday(text), bare -> dateTime(bare, place))
            .orElseGet(() -> hints(text, true, place) + EXAMPLE_DATE);
  }

  /** What is wrong with a time of day, as a clause. */
  static String notAClock(String text) {
    return Messages.quote(text)
        + " is not a time of day"
        + superfluous(text, text, bare -> clock(bare, Place.ALONE))
            .orElseGet(() -> hints(text, false, Place.ALONE) + EXAMPLE_CLOCK);
  }

  /** Without the day of the week, which a date does not need; a time of day alone would. */
  private static String withoutWeekday(String text) {
    return WEEKDAY.matcher(text).replaceFirst("");
  }

  /** What to leave out, and what is left, if that can be read. */
  private static Optional<String> superfluous(
      String text, String zoned, Function<String, ?> reading) {
    Matcher zone = ZONE.matcher(zoned);
    boolean hasZone = zone.find();
    String bare = hasZone ? zoned.substring(0, zone.start()).strip() : zoned;
    if (!canRead(bare, reading)) {
      return Optional.empty();
    }
    List<String> hints = new ArrayList<>();
    if (hasZone) {
      hints.add(
          "hours are those of the clock at the place, leave "
              + Messages.quote(zone.group(1))
              + " out");
    }
    if (!zoned.equals(text)) {
      hints.add("leave the day of the week out");
    }
    return Optional.of(": " + String.join("; ", hints) + ", write " + Messages.plain(bare));
  }

  private static boolean canRead(String text, Function<String, ?> reading) {
    try {
      return reading.apply(text) != null;
    } catch (DateTimeException other) {
      return false;
    }
  }

  /** Tells whether a time of day follows a date. */
  private static boolean hasClock(String text, int start, Place place) {
    Matcher between = BETWEEN.matcher(text).region(start, text.length());
    return between.lookingAt()
        && canRead(text.substring(between.end()), bare -> clock(bare, place));
  }

  private static String hints(String text, boolean timed, Place place) {
    List<String> hints = new ArrayList<>();
    Matcher date = DATE.matcher(text);
    if (SHORT_YEAR.matcher(text).matches()) {
      hints.add("the year needs four digits, as in 2026");
    } else if (isMonthUncertain(text, place)) {
      hints.add(
          "which number is the month is not certain"
              + (place == Place.COLUMN ? ", in no row of its column is one of them above 12" : "")
              + ": write its name or year-month-day"
              + (timed ? ", then the time" : ""));
    } else if (timed && date.matches()) {
      hints.add("the time is missing");
    } else if (isDated(text) && !date.lookingAt() && !text.matches("(?s)[0-9]{4}-.*")) {
      hints.add("the year is missing or out of its place, as in January 15 2026");
    }
    if (place == Place.ALONE && NOON.matcher(text).matches()) {
      hints.add("12 am and 12 pm are not certain: 12:00 is noon, 00:00 begins the day");
    } else if (NOON_NAMED.matcher(text).matches()) {
      hints.add("noon is written 12:00, and 00:00 begins the day");
    } else if (timed && hints.isEmpty() && date.lookingAt() && !hasClock(text, date.end(), place)) {
      hints.add("the time is written as in 15:00 or 3 pm");
    }
    return hints.isEmpty() ? "" : ": " + String.join("; ", hints);
  }

  private static boolean isMonthUncertain(String text, Place place) {
    Matcher date = DATE.matcher(text);
    if (!date.lookingAt()) {
      return NUMBERS_ALONE.matcher(text).matches();
    }
    return date.group("first") != null
        && (place == Place.ALONE || place == Place.COLUMN)
        && told(date) == Place.COLUMN
        && Integer.parseInt(date.group("first")) <= Month.values().length;
  }
}
