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
 * year-month-day or with the month's name. What two people read as two days is no date.
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

  private static final Pattern HALF_DAY =
      Pattern.compile("(?i)([0-9]{1,2})(?::([0-9]{2}))?\\s*([ap])\\.?\\s?m\\.?");

  private static final String ORDINAL = "(?:st|nd|rd|th)?";

  /** The formatter of dates alone would take years with a sign. */
  private static final Pattern DATE =
      Pattern.compile(
          "(?<iso>[0-9]{4}-[0-9]{1,2}-[0-9]{1,2})"
              + ("|(?<monthBefore>\\p{L}{3,9})\\.?\\s+(?<dayAfter>[0-9]{1,2})" + ORDINAL)
              + "(?:\\s*,\\s*|\\s+)(?<yearAfter>[0-9]{4})(?![0-9:])"
              + ("|(?<dayBefore>[0-9]{1,2})" + ORDINAL + "\\.?\\s+(?<monthAfter>\\p{L}{3,9})")
              + "\\.?,?\\s+(?<yearLast>[0-9]{4})(?![0-9:])");

  private static final Pattern BETWEEN = Pattern.compile("T|\\s*,\\s*(?:at\\s+)?|\\s+(?:at\\s+)?");

  /** A date as in 7/15/2026, 15.10.2026 or 2026/7/15. */
  private static final Pattern NUMBERS_ALONE =
      Pattern.compile("(?s)(?:[0-9]{1,2}[./-][0-9]{1,2}[./-]|[0-9]{4}[./][0-9]).*");

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
   * @throws DateTimeException if it is none; noon and midnight by 12 am and 12 pm are none, as
   *     people mean either by both
   */
  static LocalTime clock(String text) {
    Matcher half = HALF_DAY.matcher(text);
    if (!half.matches()) {
      return LocalTime.parse(text, CLOCK);
    }
    int hour = Integer.parseInt(half.group(1));
    int minute = half.group(2) == null ? 0 : Integer.parseInt(half.group(2));
    if (hour < 1 || hour > 12 || (hour == 12 && minute == 0)) {
      throw new DateTimeException(text);
    }
    boolean afternoon = half.group(3).equalsIgnoreCase("p");
    return LocalTime.of(hour % 12 + (afternoon ? 12 : 0), minute);
  }

  /**
   * Reads a date.
   *
   * @throws DateTimeException if it is none
   */
  static LocalDate date(String text) {
    Matcher date = DATE.matcher(text);
    if (!date.matches()) {
      throw new DateTimeException(text);
    }
    return date(date);
  }

  /**
   * Reads a date with a time.
   *
   * @throws DateTimeException if it is none
   */
  static LocalDateTime dateTime(String text) {
    Matcher date = DATE.matcher(text);
    if (!date.lookingAt()) {
      throw new DateTimeException(text);
    }
    Matcher between = BETWEEN.matcher(text).region(date.end(), text.length());
    if (!between.lookingAt()) {
      throw new DateTimeException(text);
    }
    return date(date).atTime(clock(text.substring(between.end())));
  }

  private static LocalDate date(Matcher parts) {
    if (parts.group("iso") != null) {
      String[] numbers = parts.group("iso").split("-", -1);
      return LocalDate.of(
          Integer.parseInt(numbers[0]), Integer.parseInt(numbers[1]), Integer.parseInt(numbers[2]));
    }
    boolean monthFirst = parts.group("monthBefore") != null;
    String name = parts.group(monthFirst ? "monthBefore" : "monthAfter");
    Month month = month(name).orElseThrow(() -> new DateTimeException(name));
    return LocalDate.of(
        Integer.parseInt(parts.group(monthFirst ? "yearAfter" : "yearLast")),
        month,
        Integer.parseInt(parts.group(monthFirst ? "dayAfter" : "dayBefore")));
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
  static String notADay(String text) {
    return Messages.quote(text)
        + " is not a date"
        + superfluous(text, withoutWeekday(text), CalendarText::date)
            .orElseGet(() -> hints(text, false) + EXAMPLE_DAY);
  }

  /** What is wrong with a date with a time, as a clause. */
  static String notADate(String text) {
    return Messages.quote(text)
        + " is not a date with a time"
        + superfluous(text, withoutWeekday(text), CalendarText::dateTime)
            .orElseGet(() -> hints(text, true) + EXAMPLE_DATE);
  }

  /** What is wrong with a time of day, as a clause. */
  static String notAClock(String text) {
    return Messages.quote(text)
        + " is not a time of day"
        + superfluous(text, text, CalendarText::clock)
            .orElseGet(() -> hints(text, false) + EXAMPLE_CLOCK);
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
  private static boolean hasClock(String text, int start) {
    Matcher between = BETWEEN.matcher(text).region(start, text.length());
    return between.lookingAt() && canRead(text.substring(between.end()), CalendarText::clock);
  }

  private static String hints(String text, boolean timed) {
    List<String> hints = new ArrayList<>();
    Matcher date = DATE.matcher(text);
    if (NUMBERS_ALONE.matcher(text).matches()) {
      hints.add(
          "which number is the month is not certain: write its name or year-month-day"
              + (timed ? ", then the time" : ""));
    } else if (timed && date.matches()) {
      hints.add("the time is missing");
    } else if (isDated(text) && !date.lookingAt() && !text.matches("(?s)[0-9]{4}-.*")) {
      hints.add("the year is missing or out of its place, as in January 15, 2026");
    }
    if (NOON.matcher(text).matches()) {
      hints.add("12 am and 12 pm are not certain: 12:00 is noon, 00:00 begins the day");
    } else if (NOON_NAMED.matcher(text).matches()) {
      hints.add("noon is written 12:00, and 00:00 begins the day");
    } else if (timed && hints.isEmpty() && date.lookingAt() && !hasClock(text, date.end())) {
      hints.add("the time is written as in 15:00 or 3 pm");
    }
    return hints.isEmpty() ? "" : ": " + String.join("; ", hints);
  }
}
