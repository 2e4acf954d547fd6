package stenotherm.words;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import stenotherm.base.Checks;
import stenotherm.base.Lengths;
import stenotherm.base.Masses;
import stenotherm.base.TemperatureDifferences;
import stenotherm.base.Temperatures;
import stenotherm.base.Times;

/**
 * Writes quantities for people, in the units they think in. The decimal mark is a point, and there
 * is no negative zero.
 *
 * <p>Temperatures and differences of temperature stand in the reader's own scale alone, rounded
 * from the value. Do not compute with these numbers: take the value itself.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param units the reader's units
 */
public record Figures(Units units) {
  /** For readers of metric units. */
  public static final Figures METRIC = new Figures(Units.METRIC);

  /** For readers of US units. */
  public static final Figures US = new Figures(Units.US);

  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.ENGLISH);
  private static final DateTimeFormatter DAY_US =
      DateTimeFormatter.ofPattern("EEEE MMMM d", Locale.ENGLISH);
  private static final DateTimeFormatter SHORT_DAY =
      DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
  private static final DateTimeFormatter SHORT_DAY_US =
      DateTimeFormatter.ofPattern("EEE MMM d", Locale.ENGLISH);
  private static final DateTimeFormatter WEEKDAY =
      DateTimeFormatter.ofPattern("EEE", Locale.ENGLISH);
  private static final DateTimeFormatter DAY_AND_CLOCK =
      DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.ROOT);
  private static final DateTimeFormatter DAY_AND_CLOCK_US =
      DateTimeFormatter.ofPattern("MMM d HH:mm", Locale.ROOT);
  private static final DateTimeFormatter CLOCK_ON_DAY =
      DateTimeFormatter.ofPattern("HH:mm 'on' d MMMM", Locale.ENGLISH);
  private static final DateTimeFormatter CLOCK_ON_DAY_US =
      DateTimeFormatter.ofPattern("HH:mm 'on' MMMM d", Locale.ENGLISH);

  /**
   * Writes a temperature: to half a degree Celsius, to one degree Fahrenheit.
   *
   * @param kelvin the temperature [K]
   * @return for example {@code "4.5 °C"}, in US units {@code "40 °F"}
   * @throws stenotherm.base.InvalidInputException if it is not a possible temperature
   */
  public String temperature(double kelvin) {
    Checks.temperature("temperature", kelvin);
    return units == Units.US
        ? rounded(Temperatures.toFahrenheit(kelvin), 0) + " °F"
        : rounded(Math.rint(2 * Temperatures.toCelsius(kelvin)) / 2, 1) + " °C";
  }

  /**
   * Writes a difference of temperature, a spread or a margin: to a tenth of the reader's degree.
   * The offset of 32 has no part in it: 10 F° are 5.6 C°.
   *
   * @param kelvin the difference [K]
   * @return for example {@code "2.5 C°"}, in US units {@code "4.5 F°"}
   * @throws stenotherm.base.InvalidInputException if it is NaN or infinite
   */
  public String difference(double kelvin) {
    return degrees(kelvin) + " " + differenceUnit();
  }

  /**
   * Writes a difference of temperature as a number, for a column whose head has the {@link
   * #differenceUnit() unit}: to a tenth of the reader's degree.
   *
   * @param kelvin the difference [K]
   * @return for example {@code "2.5"}, in US units {@code "4.5"}
   * @throws stenotherm.base.InvalidInputException if it is NaN or infinite
   */
  public String degrees(double kelvin) {
    Checks.finite("temperature difference", kelvin, "K");
    return tenth(inDegrees(kelvin));
  }

  /**
   * Writes a small difference of temperature as a number: to a hundredth of the reader's degree.
   *
   * @param kelvin the difference [K]
   * @return for example {@code "0.03"}
   * @throws stenotherm.base.InvalidInputException if it is NaN or infinite
   */
  public String hundredths(double kelvin) {
    Checks.finite("temperature difference", kelvin, "K");
    return String.format(Locale.ROOT, "%.2f", inDegrees(kelvin));
  }

  private double inDegrees(double kelvin) {
    return units == Units.US ? TemperatureDifferences.toFahrenheit(kelvin) : kelvin;
  }

  /**
   * Writes a change of a difference of temperature as a number with its sign, for a column whose
   * head has the {@link #differenceUnit() unit}: to a tenth of the reader's degree.
   *
   * @param kelvin the change [K]
   * @return for example {@code "+2.5"}, in US units {@code "+4.5"}; no change is {@code "0.0"}
   * @throws stenotherm.base.InvalidInputException if it is NaN or infinite
   */
  public String change(double kelvin) {
    String text = degrees(kelvin);
    return text.startsWith("-") || text.equals("0.0") ? text : "+" + text;
  }

  /**
   * Returns the unit of differences of temperature.
   *
   * @return {@code "C°"}, in US units {@code "F°"}
   */
  public String differenceUnit() {
    return units == Units.US ? "F°" : "C°";
  }

  /**
   * Writes a length of a parcel or its parts: to a millimetre, below 10 mm to a tenth; to a
   * hundredth of an inch, from 10 in to a tenth.
   *
   * @param metres the length [m]
   * @return for example {@code "19 mm"}, in US units {@code "0.75 in"}
   * @throws stenotherm.base.InvalidInputException if it is negative or not finite
   */
  public String length(double metres) {
    Checks.notNegative("length", metres, "m");
    if (units == Units.US) {
      double inches = Lengths.toInches(metres);
      return rounded(inches, inches < 10 ? 2 : 1) + " in";
    }
    double millimetres = Lengths.toMillimetres(metres);
    return rounded(millimetres, millimetres < 10 ? 1 : 0) + " mm";
  }

  /**
   * Writes a length as a tape has it: to a millimetre, below 10 mm to a tenth; in US units below 1
   * in to a sixteenth of an inch, from there on to an eighth.
   *
   * @param metres the length [m]
   * @return for example {@code "19 mm"}, in US units {@code "3/4 in"} or {@code "2 5/8 in"}
   * @throws stenotherm.base.InvalidInputException if it is negative or not finite
   */
  public String tape(double metres) {
    return units == Units.US ? onTape(metres) + " in" : length(metres);
  }

  /**
   * Writes the size of a box as a tape has it.
   *
   * @param length its length [m]
   * @param width its width [m]
   * @param height its height [m]
   * @return for example {@code "200 x 170 x 154 mm"}, in US units {@code "8 3/8 x 8 3/8 x 7 3/8
   *     in"}
   * @throws stenotherm.base.InvalidInputException if one is negative or not finite
   */
  public String tapeSize(double length, double width, double height) {
    return units == Units.US
        ? onTape(length) + " x " + onTape(width) + " x " + onTape(height) + " in"
        : size(length, width, height);
  }

  /**
   * Writes the size of a panel that is cut to fit: rounded down to a part of a tape, a millimetre
   * or an eighth of an inch.
   *
   * @param length its length [m]
   * @param width its width [m]
   * @return for example {@code "200 x 154 mm"}, in US units {@code "8 x 5 1/2 in"}
   * @throws stenotherm.base.InvalidInputException if one is negative or not finite
   */
  public String cutSize(double length, double width) {
    return DoubleStream.of(length, width)
        .map(side -> Checks.notNegative("side of a panel", side, "m"))
        .mapToObj(
            side ->
                units == Units.US
                    ? fraction(roundedDown(Lengths.toInches(side), 8), 8)
                    : rounded(roundedDown(Lengths.toMillimetres(side), 1), 0))
        .collect(Collectors.joining(" x ", "", units == Units.US ? " in" : " mm"));
  }

  private static double roundedDown(double value, int parts) {
    // what is a whole part but for round-off stays
    return Math.floor(value * parts + 1e-6) / parts;
  }

  /**
   * Writes the diameter of a hole that is drilled or punched; in US units to a 64th of an inch, as
   * drills have it.
   *
   * @param metres the diameter [m]
   * @return for example {@code "6 mm"}, in US units {@code "1/4 in"}
   * @throws stenotherm.base.InvalidInputException if it is negative or not finite
   */
  public String drill(double metres) {
    Checks.notNegative("diameter", metres, "m");
    return units == Units.US ? fraction(Lengths.toInches(metres), 64) + " in" : length(metres);
  }

  private static String onTape(double metres) {
    Checks.notNegative("length", metres, "m");
    double inches = Lengths.toInches(metres);
    // Heat goes by the thickness of foam and fill. Half a sixteenth is 4 % of 3/4 in, half an
    // eighth no more than 6 % from 1 in on: fill is known and laid no better than to 10 %.
    return fraction(inches, inches < 1 ? 16 : 8);
  }

  /**
   * Writes inches as whole ones and a fraction, to the nearest part of one.
   *
   * @param inches the length [in]
   * @param parts into how many parts an inch is divided, a power of two
   * @return for example {@code "2 5/8"}; {@code "under 1/16"} for less than half a part
   * @throws stenotherm.base.InvalidInputException if the length is negative or not finite
   */
  public static String fraction(double inches, int parts) {
    Checks.notNegative("length", inches, "in");
    long all = Math.round(inches * parts);
    if (all == 0) {
      return inches == 0 ? "0" : "under 1/" + parts;
    }
    long whole = all / parts;
    int over = (int) (all % parts);
    if (over == 0) {
      return Long.toString(whole);
    }
    int common = Integer.lowestOneBit(over);
    String rest = over / common + "/" + parts / common;
    return whole == 0 ? rest : whole + " " + rest;
  }

  /**
   * Writes a mass: to a gram, below 10 g to a tenth, below 0.1 g to a milligram, from 1 kg to 10 g;
   * to a tenth of an ounce, below 0.95 oz to a hundredth, from 1 lb to a tenth of a pound. What has
   * less than a tenth of an ounce is in grams for all readers: nobody weighs a spiderling in
   * ounces.
   *
   * @param kilograms the mass [kg]
   * @return for example {@code "250 g"}, in US units {@code "8.8 oz"}
   * @throws stenotherm.base.InvalidInputException if it is negative or not finite
   */
  public String mass(double kilograms) {
    Checks.notNegative("mass", kilograms, "kg");
    double exact = Masses.toOunces(kilograms);
    if (units == Units.US && (exact >= 0.1 || kilograms == 0)) {
      if (exact < 0.95) {
        return rounded(exact, 2) + " oz";
      }
      double ounces = tenths(exact);
      return ounces < 16 ? rounded(ounces, 1) + " oz" : rounded(ounces / 16, 1) + " lb";
    }
    double grams = 1000 * kilograms;
    if (grams < 0.0995) {
      return rounded(grams, 3) + " g";
    }
    if (grams < 9.95) {
      return rounded(grams, 1) + " g";
    }
    return grams < 999.5 ? rounded(grams, 0) + " g" : rounded(kilograms, 2) + " kg";
  }

  /**
   * Writes the size of a box: to a millimetre; to a tenth of an inch.
   *
   * @param length its length [m]
   * @param width its width [m]
   * @param height its height [m]
   * @return for example {@code "200 x 170 x 154 mm"}, in US units {@code "7.9 x 6.7 x 6.1 in"}
   * @throws stenotherm.base.InvalidInputException if one is negative or not finite
   */
  public String size(double length, double width, double height) {
    return DoubleStream.of(length, width, height)
        .map(side -> Checks.notNegative("side of a box", side, "m"))
        .mapToObj(
            side ->
                units == Units.US
                    ? rounded(Lengths.toInches(side), 1)
                    : rounded(Lengths.toMillimetres(side), 0))
        .collect(Collectors.joining(" x ", "", units == Units.US ? " in" : " mm"));
  }

  /**
   * Writes how long something lasts: to a minute, below a minute to a second.
   *
   * @param seconds the duration [s]
   * @return for example {@code "45 s"}, {@code "30 min"}, {@code "19 h"}, {@code "2 h 30 min"}
   * @throws stenotherm.base.InvalidInputException if it is negative or not finite
   */
  public static String duration(double seconds) {
    Checks.notNegative("duration", seconds, "s");
    if (seconds < 59.5) {
      return Math.round(seconds) + " s";
    }
    long minutes = Math.round(Times.toMinutes(seconds));
    long hours = minutes / 60;
    String rest = minutes % 60 + " min";
    if (hours == 0) {
      return rest;
    }
    return minutes % 60 == 0 ? hours + " h" : hours + " h " + rest;
  }

  /**
   * Writes a power or a heat flow: to a hundredth of a watt, from 10 W to a tenth.
   *
   * @param watts the power [W]
   * @return for example {@code "1.25 W"}
   * @throws stenotherm.base.InvalidInputException if it is NaN or infinite
   */
  public static String power(double watts) {
    Checks.finite("power", watts, "W");
    return rounded(watts, Math.abs(watts) < 9.995 ? 2 : 1) + " W";
  }

  /**
   * Writes heat: to a hundredth of a kilojoule, from 1 kJ to a tenth, from 100 kJ to one.
   *
   * @param joules the heat [J]
   * @return for example {@code "35.2 kJ"}
   * @throws stenotherm.base.InvalidInputException if it is NaN or infinite
   */
  public static String heat(double joules) {
    Checks.finite("heat", joules, "J");
    double kilojoules = joules / 1000;
    double size = Math.abs(kilojoules);
    return rounded(kilojoules, size < 0.995 ? 2 : size < 99.95 ? 1 : 0) + " kJ";
  }

  /**
   * Joins two numbers of the same unit, which is told once.
   *
   * @param low for example {@code "28 °F"}
   * @param high for example {@code "45 °F"}
   * @return for example {@code "28 to 45 °F"}
   */
  public static String range(String low, String high) {
    return low.substring(0, low.indexOf(' ')) + " to " + high;
  }

  /**
   * Writes a clock time.
   *
   * @param time local date and time
   * @return for example {@code "04:30"}
   */
  public static String clock(LocalDateTime time) {
    return CLOCK.format(time);
  }

  /**
   * Writes a day and a clock time.
   *
   * @param time local date and time
   * @return for example {@code "13 Dec 04:30"}, in the US {@code "Dec 13 04:30"}
   */
  public String dayAndClock(LocalDateTime time) {
    return (units == Units.US ? DAY_AND_CLOCK_US : DAY_AND_CLOCK).format(time);
  }

  /**
   * Writes a clock time and its day, for a sentence.
   *
   * @param time local date and time
   * @return for example {@code "04:30 on 13 December"}, in the US {@code "04:30 on December 13"}
   */
  public String clockOnDay(LocalDateTime time) {
    return (units == Units.US ? CLOCK_ON_DAY_US : CLOCK_ON_DAY).format(time);
  }

  /**
   * Writes a day of the week with its date and a clock time.
   *
   * @param time local date and time
   * @return for example {@code "Fri 13 Dec 04:30"}, in the US {@code "Fri Dec 13 04:30"}
   */
  public String weekdayAndClock(LocalDateTime time) {
    return WEEKDAY.format(time) + " " + dayAndClock(time);
  }

  /**
   * Writes a day.
   *
   * @param date the date
   * @return for example {@code "Friday 13 December"}, in the US {@code "Friday December 13"}
   */
  public String day(LocalDate date) {
    return (units == Units.US ? DAY_US : DAY).format(date);
  }

  /**
   * Writes a day for a column.
   *
   * @param date the date
   * @return for example {@code "Fri 13 Dec"}, in the US {@code "Fri Dec 13"}
   */
  public String shortDay(LocalDate date) {
    return (units == Units.US ? SHORT_DAY_US : SHORT_DAY).format(date);
  }

  /**
   * Writes a number with exactly one decimal.
   *
   * @param value the number [in whatever unit]
   * @return for example {@code "-2.0"}
   */
  public static String tenth(double value) {
    return String.format(Locale.ROOT, "%.1f", tenths(value) + 0.0);
  }

  private static double tenths(double value) {
    return Math.rint(10 * value) / 10;
  }

  /** Without decimals that say nothing. */
  private static String rounded(double value, int decimals) {
    String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
    if (text.indexOf('.') >= 0) {
      text = text.replaceAll("\\.?0+$", "");
    }
    return text.equals("-0") ? "0" : text;
  }

  /**
   * Joins texts as a sentence does.
   *
   * @param texts the texts
   * @return for example "a, b and c"
   */
  public static String listed(List<String> texts) {
    int last = texts.size() - 1;
    return last < 1
        ? String.join("", texts)
        : String.join(", ", texts.subList(0, last)) + " and " + texts.get(last);
  }
}
