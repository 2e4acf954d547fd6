package stenotherm.text;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stenotherm.base.Range;

/**
 * A single value of a document, kept as the raw text that the file gives. The methods read it as
 * what the caller says it is and return SI values; none of them judges whether the value is
 * sensible.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class ScalarNode implements Node {
  private static final Pattern OFFSET =
      Pattern.compile(
          "(?:UTC\\s*([+\\-−])([0-9]{1,2})(?::?([0-9]{2}))?|([+\\-−])([0-9]{2}):([0-9]{2}))");

  /**
   * Hours from UTC of clocks in the United States: 15 U.S.C. 260a and 261, from memory. Elsewhere
   * the same letters mean other clocks, so they are no offset.
   */
  private static final Map<String, Integer> UNITED_STATES =
      Map.of(
          "EST", -5, "EDT", -4, "CST", -6, "CDT", -5, "MST", -7, "MDT", -6, "PST", -8, "PDT", -7);

  private static final Map<String, Boolean> YES_NO =
      Map.of("yes", true, "no", false, "true", true, "false", false);

  private final TextPosition position;
  private final String path;
  private final String raw;

  /** What a complaint about this value ends with. */
  private final String hint;

  ScalarNode(TextPosition position, String path, String raw) {
    this(position, path, raw, "");
  }

  private ScalarNode(TextPosition position, String path, String raw, String hint) {
    this.position = position;
    this.path = path;
    this.raw = raw;
    this.hint = hint;
  }

  ScalarNode withHint(String more) {
    return new ScalarNode(position, path, raw, more);
  }

  @Override
  public TextFormatException fail(String problem) {
    return new TextFormatException(position, path, problem + hint);
  }

  @Override
  public TextPosition position() {
    return position;
  }

  @Override
  public String path() {
    return path;
  }

  @Override
  public String kind() {
    return "a single value";
  }

  @Override
  public ScalarNode asScalar() {
    return this;
  }

  /**
   * Reads a text.
   *
   * @return the text without blanks at its ends
   * @throws TextFormatException if it is blank
   */
  public String text() {
    String text = raw.strip();
    if (text.isEmpty()) {
      throw fail("must not be empty");
    }
    return text;
  }

  /**
   * Returns the text with fractions of a single sign written out.
   *
   * @return for example {@code foam 1 3/4 in} for {@code foam 1¾ in}
   * @throws TextFormatException if it is blank
   */
  public String writtenOut() {
    return Numbers.writtenOut(text());
  }

  /**
   * Returns whether there is nothing but blanks in this value.
   *
   * @return true for a blank text
   */
  public boolean isBlank() {
    return raw.isBlank();
  }

  /**
   * Returns the mapping that this text is short for.
   *
   * @param texts the keys that the long form would have had, with the pieces of this text
   * @return the mapping; complaints about it and its values name this value's place and path
   */
  public MappingNode shortFor(Map<String, String> texts) {
    Map<String, MappingNode.Entry> entries = new LinkedHashMap<>();
    texts.forEach((key, text) -> entries.put(key, new MappingNode.Entry(position, piece(text))));
    return new MappingNode(position, path, entries);
  }

  /**
   * Returns a piece of this text as a value of its own, for texts that hold several things, such as
   * {@code leopard gecko, 40 g}. Complaints about the piece name this value's place.
   *
   * @param piece the piece
   * @return the piece as a value
   */
  public ScalarNode piece(String piece) {
    return new ScalarNode(position, path, piece, hint);
  }

  /**
   * Reads a name that stands for something.
   *
   * @param <T> what the names stand for
   * @param choices the names and what they stand for, listed in messages in the map's order
   * @return what the name stands for
   * @throws TextFormatException if the text is none of the names
   */
  public <T> T choice(Map<String, T> choices) {
    T chosen = choices.get(text());
    if (chosen == null) {
      throw fail(
          "unknown name " + Messages.quote(raw) + Messages.allowed(text(), choices.keySet()));
    }
    return chosen;
  }

  /**
   * Reads a name that stands for something, with capital and small letters alike.
   *
   * @param <T> what the names stand for
   * @param choices as for {@link #choice}; of names that differ in capitals only, the exact one
   * @return what the name stands for
   * @throws TextFormatException if the text is none of the names
   */
  public <T> T choiceInAnyCase(Map<String, T> choices) {
    List<String> alike = choices.keySet().stream().filter(text()::equalsIgnoreCase).toList();
    return (alike.size() == 1 ? piece(alike.get(0)) : this).choice(choices);
  }

  /**
   * Reads a number without a unit.
   *
   * @return the number [-], finite
   * @throws TextFormatException if the text is not a decimal number
   */
  public double number() {
    return Numbers.read(this, text());
  }

  /**
   * Reads {@code yes} or {@code no} ({@code true} and {@code false}, which JSON needs, mean the
   * same).
   *
   * @return true for yes
   * @throws TextFormatException if the text is something else
   */
  public boolean yesOrNo() {
    Boolean value = YES_NO.get(text());
    if (value == null) {
      throw fail(Messages.quote(raw) + " is neither yes nor no");
    }
    return value;
  }

  /**
   * Reads a temperature, for example {@code 28 °F}, {@code -2.5 °C}, {@code 20 degC} or {@code
   * 293.15 K}.
   *
   * @return the temperature [K]
   * @throws TextFormatException if the text is not a number with a unit of temperature
   */
  public double temperature() {
    return Quantity.TEMPERATURE.read(this, text());
  }

  /**
   * Writes a temperature in the unit that this text has.
   *
   * @param kelvin the temperature [K]
   * @return for example {@code "66 °C"}; in kelvin if the text has no unit of temperature
   */
  public String temperatureAsTyped(double kelvin) {
    return Quantity.TEMPERATURE.asTyped(text(), kelvin);
  }

  /**
   * Tells which other unit may have been meant.
   *
   * @param kelvin the temperature as it was typed [K]
   * @param likely where it must lie [K]
   * @return units in which the same number would lie there; possibly none
   */
  public List<String> otherTemperatureUnits(double kelvin, Range likely) {
    return Quantity.TEMPERATURE.otherUnits(text(), kelvin, likely);
  }

  /**
   * Returns whether this is written as two values, with "to" or a hyphen between them.
   *
   * @return true for example for {@code 28 to 45 °F} and for {@code 28-45 °F}
   */
  public boolean isRange() {
    return Quantity.isRange(text());
  }

  @Override
  public Range temperatureRange() {
    return Quantity.TEMPERATURE.readRange(this, text());
  }

  /**
   * Reads a temperature difference, for example {@code 5 K}, {@code 5 C°} or {@code 9 F°}. A
   * difference is not a point on a scale, so {@code °C} and {@code °F} are refused.
   *
   * @return the difference [K]
   * @throws TextFormatException if the text is not a number with a unit of temperature difference
   */
  public double temperatureDifference() {
    return Quantity.TEMPERATURE_DIFFERENCE.read(this, text());
  }

  /**
   * Reads a length, for example {@code 19 mm}, {@code 0.75 in} or {@code 12"}.
   *
   * @return the length [m]
   * @throws TextFormatException if the text is not a number with a unit of length
   */
  public double length() {
    return Quantity.LENGTH.read(this, writtenOut());
  }

  /**
   * Reads three lengths, for example {@code 300 x 200 x 150 mm} or {@code 1 ft x 8 in x 6 in}.
   *
   * @return the lengths in the file's order
   * @throws TextFormatException if the text is not three lengths above zero with one unit for all
   *     or one each
   */
  public Size size() {
    double[] lengths = Quantity.LENGTH.readProduct(this, writtenOut(), 3);
    return locate(() -> new Size(lengths[0], lengths[1], lengths[2]));
  }

  /**
   * Reads two lengths, for example {@code 100 x 60 mm} for a diameter and a height.
   *
   * @return the lengths in the file's order [m]
   * @throws TextFormatException if the text is not two lengths with one unit for both or one each
   */
  public List<Double> twoLengths() {
    double[] lengths = Quantity.LENGTH.readProduct(this, writtenOut(), 2);
    return List.of(lengths[0], lengths[1]);
  }

  /**
   * Returns how many lengths this is written as.
   *
   * @return 3 for {@code 300 x 200 x 150 mm}, right or wrong; 1 for what holds no "x" before a
   *     number
   */
  public int factors() {
    return Quantity.factors(writtenOut());
  }

  /**
   * Reads an angle, for example {@code -73.9 °}.
   *
   * @return the angle [°]
   * @throws TextFormatException if the text is not a number with a unit of angle
   */
  public double angle() {
    return Quantity.ANGLE.read(this, text());
  }

  /**
   * Reads a mass, for example {@code 12 g}, {@code 45 grams} or {@code 1 1/2 oz}.
   *
   * @return the mass [kg]
   * @throws TextFormatException if the text is not a number with a unit of mass
   */
  public double mass() {
    return Quantity.MASS.read(this, writtenOut());
  }

  /**
   * Reads a duration, for example {@code 90 min} or {@code 1 h 30 min}.
   *
   * @return the duration [s]
   * @throws TextFormatException if the text is not numbers with units of time, from the large unit
   *     to the small one
   */
  public double duration() {
    return Quantity.DURATION.readSum(this, text());
  }

  /**
   * Reads a speed, for example {@code 2 m/s}, {@code 10 km/h} or {@code 5 mph}.
   *
   * @return the speed [m/s]
   * @throws TextFormatException if the text is not a number with a unit of speed
   */
  public double speed() {
    return Quantity.SPEED.read(this, text());
  }

  /**
   * Reads a thermal resistance of an area, for example {@code 0.05 m2 K/W}.
   *
   * @return the resistance [m2 K/W]
   * @throws TextFormatException if the text is not a number with a unit of thermal resistance
   */
  public double thermalResistance() {
    return Quantity.THERMAL_RESISTANCE.read(this, text());
  }

  /**
   * Reads a thermal conductivity, for example {@code 0.05 W/(m K)}.
   *
   * @return the conductivity [W/(m K)]
   * @throws TextFormatException if the text is not a number with a unit of thermal conductivity
   */
  public double conductivity() {
    return Quantity.CONDUCTIVITY.read(this, text());
  }

  /**
   * Reads a power, for example {@code 2 W}.
   *
   * @return the power [W]
   * @throws TextFormatException if the text is not a number with a unit of power
   */
  public double power() {
    return Quantity.POWER.read(this, text());
  }

  /**
   * Reads a percentage, for example {@code 20 %}. A bare number is refused, because 0.2 and 20 are
   * both likely.
   *
   * @return the share: 0.2 for {@code 20 %} [-]
   * @throws TextFormatException if the text is not a number with a percent sign
   */
  public double percentage() {
    return Quantity.PERCENTAGE.read(this, text());
  }

  /**
   * Tells whether this begins as a date does, right or wrong, and not with a time of day.
   *
   * @return true for example for {@code 2013-12-12 18:00} and for {@code 12 December}
   */
  public boolean isDated() {
    return CalendarText.isDated(text());
  }

  /**
   * Reads a date with a time, for example {@code 2013-12-12 18:00}, {@code December 12, 2013, 6 pm}
   * or {@code 12/13/2013 6 pm}; a {@code T} may stand for the blank.
   *
   * @return the date and time on a local clock
   * @throws TextFormatException if the text is not one, names a day that no calendar has, or does
   *     not tell the month from the day
   */
  public LocalDateTime localDateTime() {
    return localDateTime(CalendarText.Place.ALONE);
  }

  LocalDateTime localDateTime(CalendarText.Place place) {
    return calendar(
        text -> CalendarText.dateTime(text, place), text -> CalendarText.notADate(text, place));
  }

  /**
   * Reads a date, for example {@code 2013-12-12}, {@code 12 December 2013} or {@code 12/13/2013}.
   *
   * @return the date
   * @throws TextFormatException if the text is not one, names a day that no calendar has, or does
   *     not tell the month from the day
   */
  public LocalDate date() {
    return date(CalendarText.Place.ALONE);
  }

  LocalDate date(CalendarText.Place place) {
    return calendar(
        text -> CalendarText.date(text, place), text -> CalendarText.notADay(text, place));
  }

  /**
   * Reads a time of day, for example {@code 18:00} or {@code 6 pm}.
   *
   * @return the time of day
   * @throws TextFormatException if the text is not one
   */
  public LocalTime clock() {
    return calendar(
        text -> CalendarText.clock(text, CalendarText.Place.ALONE), CalendarText::notAClock);
  }

  private <T> T calendar(Function<String, T> reading, UnaryOperator<String> problem) {
    String text = text();
    try {
      return reading.apply(text);
    } catch (DateTimeException fault) {
      throw new TextFormatException(position, path, problem.apply(text), fault);
    }
  }

  /**
   * Reads a difference between local time and UTC, for example {@code UTC-5}, {@code UTC+5:30} or
   * {@code -05:00}.
   *
   * @return the offset, positive east
   * @throws TextFormatException if the text is not one; names of zones are refused, because their
   *     offset depends on the date
   */
  public ZoneOffset utcOffset() {
    if (text().equals("UTC") || text().equals("Z")) {
      return ZoneOffset.UTC;
    }
    Matcher matcher = OFFSET.matcher(text());
    if (matcher.matches()) {
      boolean named = matcher.group(1) != null;
      int sign = matcher.group(named ? 1 : 4).equals("+") ? 1 : -1;
      int hours = Integer.parseInt(matcher.group(named ? 2 : 5));
      String minuteText = matcher.group(named ? 3 : 6);
      int minutes = minuteText == null ? 0 : Integer.parseInt(minuteText);
      try {
        return ZoneOffset.ofHoursMinutes(sign * hours, sign * minutes);
      } catch (DateTimeException fault) {
        throw new TextFormatException(
            position, path, Messages.quote(raw) + " must lie between UTC-18 and UTC+18", fault);
      }
    }
    Integer american = UNITED_STATES.get(text());
    throw fail(
        Messages.quote(raw)
            + " is not an offset from UTC, write for example UTC-5 or -05:00"
            + (american == null ? "" : "; in the United States it is UTC" + american));
  }
}
