package stenotherm.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Lengths;
import stenotherm.base.Masses;
import stenotherm.base.Range;
import stenotherm.base.TemperatureDifferences;
import stenotherm.base.Temperatures;
import stenotherm.base.Times;

/**
 * A quantity as files write it: a number and one of the quantity's units. The units of a kind are
 * written down once, here, and messages and reference pages list them from here.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public enum Quantity {
  /** A temperature, read in K. */
  TEMPERATURE(
      "a temperature",
      "K",
      "20 °C or 68 °F",
      unit("°C", Temperatures::fromCelsius, degrees("C", "Celsius")),
      unit("°F", Temperatures::fromFahrenheit, degrees("F", "Fahrenheit")),
      unit("K", kelvin -> kelvin)),
  /** A difference of temperatures, read in K. */
  TEMPERATURE_DIFFERENCE(
      "a temperature difference",
      "K",
      "5 K or 9 F°",
      unit("K", kelvin -> kelvin),
      unit("C°", kelvin -> kelvin),
      unit("F°", TemperatureDifferences::fromFahrenheit)),
  /** A length, read in m. */
  LENGTH(
      "a length",
      "m",
      "30 cm or 12 in",
      unit("mm", Lengths::fromMillimetres, metric("millimetre")),
      unit("cm", centimetres -> Lengths.fromMillimetres(centimetres * 10), metric("centimetre")),
      unit("m", metres -> metres, metric("metre")),
      unit("in", Lengths::fromInches, "\"", "inch", "inches"),
      unit("ft", Lengths::fromFeet, "foot", "feet")),
  /** A mass, read in kg. */
  MASS(
      "a mass",
      "kg",
      "12 g or 0.5 oz",
      unit("g", Masses::fromGrams, "gram", "grams", "gm", "gms"),
      unit("kg", kilograms -> kilograms, "kilogram", "kilograms", "kilo", "kilos", "kgs"),
      unit("oz", Masses::fromOunces, "ounce", "ounces"),
      unit("lb", Masses::fromPounds, "lbs", "pound", "pounds")),
  /** A duration, read in s; the only one that may be a sum, {@code 1 h 30 min}. */
  DURATION(
      "a duration",
      "s",
      "90 min or 1 h 30 min",
      unit("h", Times::fromHours, "hr", "hrs", "hour", "hours"),
      unit("min", Times::fromMinutes, "mins", "minute", "minutes"),
      unit("d", Times::fromDays, "day", "days"),
      unit("s", seconds -> seconds, "sec", "secs", "second", "seconds")),
  /** A speed, read in m/s. */
  SPEED(
      "a speed",
      "m/s",
      "2 m/s or 5 mph",
      unit("m/s", speed -> speed),
      unit("km/h", speed -> speed * 1000 / Times.HOUR),
      // A mile is 5280 feet.
      unit("mph", speed -> Lengths.fromFeet(speed * 5280) / Times.HOUR)),
  /** A thermal resistance of unit area, read in m2 K/W. */
  THERMAL_RESISTANCE(
      "a thermal resistance", "m2 K/W", "0.05 m2 K/W", unit("m2 K/W", resistance -> resistance)),
  /** A thermal conductivity, read in W/(m K). */
  CONDUCTIVITY(
      "a thermal conductivity",
      "W/(m K)",
      "0.05 W/(m K)",
      unit("W/(m K)", conductivity -> conductivity, "W/mK", "W/m/K")),
  /** A power, read in W. */
  POWER("a power", "W", "2 W", unit("W", watts -> watts, "watt", "watts")),
  /** An angle, read in degrees. */
  ANGLE("an angle", "°", "40.7 °", unit("°", degrees -> degrees, "deg", "degree", "degrees")),
  /** A share, read as a number from 0 to 1 for 0 % to 100 %. */
  PERCENTAGE("a percentage", "", "20 %", unit("%", percent -> percent / 100, "percent"));

  /** How a range of temperatures is written. */
  static final String RANGE_FORM = "must be two temperatures, write 28 to 45 °F or [28 °F, 45 °F]";

  private static final Pattern TO = Pattern.compile("\\s+to\\s+");

  /** Two numbers with a hyphen or a dash between them, the first with or without its unit. */
  private static final Pattern DASH =
      Pattern.compile("([+\\-−]?[0-9.]+[^0-9\\-–—−]*)[-–—]\\s*([+\\-−]?[0-9.].*)", Pattern.DOTALL);

  private static final Pattern SIGN_AND_HYPHEN =
      Pattern.compile("[\\-−][^-]*[^\\s-]-.*|.*-[\\-−].*", Pattern.DOTALL);

  /** Between two lengths; not the x of a box. */
  private static final Pattern TIMES =
      Pattern.compile("(?i)(?:\\s*(?<!bo)[x×*]\\s*|\\s+by\\s+)(?=[+\\-−.0-9])");

  /** Degrees without their scale. */
  private static final Set<String> DEGREES = Set.of("°", "deg", "degree", "degrees");

  /** The words that follow a number up to the next number, for example in {@code 1 h 30 min}. */
  private static final Pattern UNIT_BEFORE_NUMBER = Pattern.compile("[^0-9+\\-−.]*");

  /** The unit that follows a number in a text. */
  private static final Pattern UNIT_AFTER_NUMBER = Pattern.compile("[0-9.]\\s*([^\\s0-9.,]+)");

  /** Hints for callers of the library, who give SI values; files have units. */
  private static final Pattern SI_HINT = Pattern.compile(".* in (?:kelvin|kilograms|seconds)\\b.*");

  /** Units in which a small number reads better. */
  private static final Map<String, String> SMALLER =
      Map.of("kg", "g", "lb", "oz", "m", "mm", "ft", "in");

  /** Units in which a large number reads better. */
  private static final Map<String, String> LARGER = Map.of("g", "kg", "oz", "lb");

  private static final double SMALL = 0.1;
  private static final double LARGE = 1000;

  private record Unit(String name, DoubleUnaryOperator toSi, List<String> spellings) {
    /** A value in SI, in this unit; units differ by a factor and an offset. */
    double of(double si) {
      double offset = toSi.applyAsDouble(0);
      return (si - offset) / (toSi.applyAsDouble(1) - offset);
    }

    String show(double si) {
      return Checks.show(of(si), name);
    }
  }

  private final String kind;
  private final String siUnit;
  private final String example;
  private final List<Unit> units;

  Quantity(String kind, String siUnit, String example, Unit... units) {
    this.kind = kind;
    this.siUnit = siUnit;
    this.example = example;
    this.units = List.of(units);
  }

  /**
   * Returns what the quantity is, in the words of messages.
   *
   * @return for example {@code "a length"}
   */
  public String kind() {
    return kind;
  }

  /**
   * Returns one or two values as files may write them.
   *
   * @return for example {@code "30 cm or 12 in"}
   */
  public String example() {
    return example;
  }

  /**
   * Returns the names of the units that a file may use.
   *
   * @return the names, the most usual first
   */
  public List<String> unitNames() {
    return units.stream().map(Unit::name).toList();
  }

  /** How people write degrees of a scale. */
  private static String[] degrees(String letter, String name) {
    return new String[] {
      letter,
      name,
      "deg" + letter,
      "deg" + name,
      "degree" + letter,
      "degrees" + letter,
      "degrees" + name,
      "°" + name,
      letter.equals("C") ? "℃" : "℉"
    };
  }

  /** One and several of a metric unit of length, in British and in American spelling. */
  private static String[] metric(String british) {
    String american = british.replace("metre", "meter");
    return new String[] {british, british + "s", american, american + "s"};
  }

  private static Unit unit(String name, DoubleUnaryOperator toSi, String... otherSpellings) {
    List<String> spellings = new ArrayList<>();
    spellings.add(normalised(name));
    for (String spelling : otherSpellings) {
      spellings.add(normalised(spelling));
    }
    return new Unit(name, toSi, List.copyOf(spellings));
  }

  /**
   * Removes differences that carry no meaning: spaces, dots between units, the point after what is
   * cut short ({@code in.}), look-alike signs, raised digits.
   */
  private static String normalised(String unit) {
    return unit.replaceAll("[\\s·\u00a0]|(?<=\\p{L})\\.$", "")
        .replace('º', '°')
        .replace('˚', '°')
        .replace('″', '"')
        .replace('”', '"')
        .replace('²', '2')
        .replace('³', '3');
  }

  /** Reads a single number with its unit. */
  double read(ScalarNode node, String text) {
    Term term = term(node, text);
    return value(node, term, text);
  }

  /** Reads a sum from the large unit to the small one, {@code 1 h 30 min}. */
  double readSum(ScalarNode node, String text) {
    List<Term> terms = new ArrayList<>();
    String rest = text;
    do {
      Matcher number = number(node, rest, text);
      Matcher words = UNIT_BEFORE_NUMBER.matcher(rest).region(number.end(), rest.length());
      terms.add(Term.of(number.group(), words.lookingAt() ? words.group() : ""));
      rest = rest.substring(words.end());
    } while (!rest.isEmpty());

    double sum = 0;
    double previousSize = Double.POSITIVE_INFINITY;
    for (Term term : terms) {
      if (terms.size() > 1 && !Character.isDigit(term.number().charAt(0))) {
        throw node.fail(notOfThisKind(text));
      }
      Unit unit = unitOf(node, term, text);
      double size = unit.toSi().applyAsDouble(1);
      if (size >= previousSize) {
        throw node.fail(
            Messages.quote(text)
                + " must go from the large unit to the small one, as in "
                + example);
      }
      previousSize = size;
      sum += unit.toSi().applyAsDouble(Numbers.toDouble(node, term.number()));
    }
    return requireFinite(node, sum, text);
  }

  /** Reads several numbers with one unit for all or one each. */
  double[] readProduct(ScalarNode node, String text, int count) {
    String[] parts = TIMES.split(text, -1);
    if (parts.length != count) {
      throw node.fail(
          Messages.quote(text)
              + " is not "
              + (count == 3 ? "three" : "two")
              + " lengths, write for example "
              + productExample(count));
    }
    List<Term> terms = new ArrayList<>();
    for (String part : parts) {
      terms.add(term(node, part));
    }
    boolean oneForAll =
        terms.subList(0, count - 1).stream().map(Term::unit).allMatch(String::isEmpty);
    double[] values = new double[count];
    for (int i = 0; i < count; i++) {
      String unit = oneForAll ? terms.get(count - 1).unit() : terms.get(i).unit();
      if (unit.isEmpty()) {
        throw node.fail(
            Messages.quote(text)
                + " needs one unit at the end or one for each length, write for example "
                + (oneForAll
                    ? Messages.plain(text) + " mm or " + Messages.plain(text) + " in"
                    : productExample(count)));
      }
      values[i] = value(node, new Term(terms.get(i).number(), unit), text);
    }
    return values;
  }

  /**
   * Says what is wrong with a number that a text holds, in the unit of the text.
   *
   * @param text what the file says
   * @param fault what a check in SI units found
   * @return the problem as a clause; as the check put it if the text has no unit for it
   */
  static String problem(String text, InvalidInputException fault) {
    InvalidInputException.Bounds bounds = fault.bounds().orElse(null);
    if (bounds != null) {
      for (Quantity each : values()) {
        Optional<Unit> typed =
            each.siUnit.equals(bounds.unit()) ? each.unitIn(text) : Optional.empty();
        if (typed.isPresent()) {
          return each.problem(bounds, typed.get());
        }
      }
    }
    return fault.problem();
  }

  /** The first unit of this kind in a text. */
  private Optional<Unit> unitIn(String text) {
    return UNIT_AFTER_NUMBER
        .matcher(text)
        .results()
        .map(match -> normalised(match.group(1)))
        .flatMap(word -> units.stream().filter(unit -> unit.spellings().contains(word)))
        .findFirst();
  }

  /** A value in the unit of a text. */
  String asTyped(String text, double si) {
    return unitIn(text).map(unit -> unit.show(si)).orElseGet(() -> Checks.show(si, siUnit));
  }

  /** Units in which the number of a text would lie in a range. */
  List<String> otherUnits(String text, double si, Range likely) {
    return unitIn(text).stream()
        .flatMap(
            typed ->
                units.stream()
                    .filter(other -> likely.contains(other.toSi().applyAsDouble(typed.of(si)))))
        .map(Unit::name)
        .toList();
  }

  private String problem(InvalidInputException.Bounds bounds, Unit typed) {
    String shown = typed.show(bounds.value());
    if (Double.isInfinite(bounds.most())) {
      boolean fromZero = bounds.least() == 0;
      String least = fromZero ? "0" : limit(bounds.least(), typed);
      return shown + " must be " + (bounds.above() ? "above " + least : least + " or above");
    }
    boolean isHidden =
        shown.equals(typed.show(bounds.least())) || shown.equals(typed.show(bounds.most()));
    String hint = bounds.hint();
    return (isHidden ? typed.of(bounds.value()) + " " + typed.name() : shown)
        + " must lie between "
        + limit(bounds.least(), typed)
        + " and "
        + limit(bounds.most(), typed)
        + (hint.isEmpty() || SI_HINT.matcher(hint).matches() ? "" : ". " + hint);
  }

  /** A limit in the unit that was typed, or in one of the same system that suits it. */
  private String limit(double si, Unit typed) {
    double number = Math.abs(typed.of(si));
    String name = typed.name();
    if (number > 0 && number < SMALL) {
      name = SMALLER.getOrDefault(name, name);
    } else if (number >= LARGE) {
      name = LARGER.getOrDefault(name, name);
    }
    String wanted = name;
    return units.stream()
        .filter(unit -> unit.name().equals(wanted))
        .findFirst()
        .orElse(typed)
        .show(si);
  }

  private static String productExample(int count) {
    return count == 3 ? "300 x 200 x 150 mm or 12 x 8 x 6 in" : "100 x 60 mm or 4 x 2 1/2 in";
  }

  /** How many lengths a text is written as, right or wrong. */
  static int factors(String text) {
    return TIMES.split(text, -1).length;
  }

  /** Tells whether a text is written as two values, right or wrong. */
  static boolean isRange(String text) {
    return TO.matcher(text).find() || DASH.matcher(text).matches();
  }

  /** Reads two values around "to" or a hyphen, the first with or without its own unit. */
  Range readRange(ScalarNode node, String text) {
    Matcher dash = DASH.matcher(text);
    boolean hyphened = !TO.matcher(text).find() && dash.matches();
    String[] parts =
        hyphened ? new String[] {dash.group(1).strip(), dash.group(2)} : TO.split(text, -1);
    if (parts.length != 2) {
      throw node.fail(RANGE_FORM + ", not " + Messages.quote(text));
    }
    if (hyphened && SIGN_AND_HYPHEN.matcher(text).matches()) {
      throw node.fail(
          Messages.quote(text) + " has a minus sign and a hyphen, write for example -2 to 6 °C");
    }
    Term high = term(node, parts[1]);
    Term given = term(node, parts[0]);
    // of 28° to 45 °F the scale stands once
    Term low = DEGREES.contains(normalised(given.unit())) ? new Term(given.number(), "") : given;
    double highValue = value(node, high, text);
    String lowUnit = low.unit().isEmpty() ? high.unit() : low.unit();
    double lowValue = value(node, new Term(low.number(), lowUnit), text);
    boolean oneUnit = low.unit().isEmpty() || low.unit().equals(high.unit());
    String swapped =
        oneUnit
            ? high.number() + " to " + low.number() + " " + high.unit()
            : parts[1].strip() + " to " + parts[0];
    return orderedRange(node, lowValue, highValue, text, swapped);
  }

  static Range orderedRange(Node node, double low, double high, String text, String swapped) {
    if (low > high) {
      throw node.fail(
          Messages.quote(text)
              + " must have the lower temperature first, write "
              + Messages.plain(swapped));
    }
    return new Range(low, high);
  }

  /** A number and the text after it, empty if there is none. */
  private record Term(String number, String unit) {
    /** A unit of nothing but signs that carry no meaning is none. */
    static Term of(String number, String unit) {
      return new Term(number, normalised(unit).isEmpty() ? "" : unit.strip());
    }
  }

  private Term term(ScalarNode node, String text) {
    Matcher number = number(node, text, text);
    return Term.of(number.group(), text.substring(number.end()));
  }

  private Matcher number(ScalarNode node, String text, String whole) {
    Numbers.refuseForeignForms(node, text);
    Matcher fraction = Numbers.FRACTION.matcher(text);
    if ((this == LENGTH || this == MASS) && fraction.lookingAt()) {
      return fraction;
    }
    Numbers.refuseFraction(node, text);
    Matcher number = Numbers.leading(text);
    if (!number.lookingAt()) {
      throw node.fail(notOfThisKind(whole));
    }
    return number;
  }

  private double value(ScalarNode node, Term term, String whole) {
    Unit unit = unitOf(node, term, whole);
    return requireFinite(
        node, unit.toSi().applyAsDouble(Numbers.toDouble(node, term.number())), whole);
  }

  /** A finite number may become infinite by its unit's factor. */
  private static double requireFinite(ScalarNode node, double value, String whole) {
    if (!Double.isFinite(value)) {
      throw node.fail(Messages.quote(whole) + " is too large a number");
    }
    return value;
  }

  private Unit unitOf(ScalarNode node, Term term, String whole) {
    boolean isScaleMissing = this == TEMPERATURE && DEGREES.contains(normalised(term.unit()));
    if (term.unit().isEmpty() || isScaleMissing) {
      throw node.fail(
          Messages.quote(whole) + " has no unit, write for example " + withUnits(term.number()));
    }
    String wanted = normalised(term.unit());
    for (Unit unit : units) {
      if (unit.spellings().contains(wanted)) {
        return unit;
      }
    }
    if (!Character.isLetter(wanted.charAt(0)) && "°\"%".indexOf(wanted.charAt(0)) < 0) {
      throw node.fail(notOfThisKind(whole));
    }
    throw node.fail(
        Messages.quote(whole)
            + " is not "
            + kind
            + ", the unit must be one of "
            + String.join(", ", unitNames())
            + closeUnit(wanted));
  }

  /** The user's own number with the first units of the kind, so that the answer can be copied. */
  private String withUnits(String number) {
    if (number.contains("/")) {
      return number + (this == MASS ? " oz" : " in");
    }
    List<String> choices = new ArrayList<>();
    for (Unit unit : units.subList(0, Math.min(2, units.size()))) {
      choices.add(number + " " + unit.name());
    }
    return String.join(" or ", choices);
  }

  private String notOfThisKind(String text) {
    return Messages.quote(text) + " is not " + kind + ", write for example " + example;
  }

  /** Unit names are too short for a general closeness; a wrong case is what people type. */
  private Optional<Unit> unitInAnotherCase(String wanted) {
    return units.stream()
        .filter(
            unit ->
                unit.spellings().stream()
                    .anyMatch(
                        spelling ->
                            spelling
                                .toLowerCase(Locale.ROOT)
                                .equals(wanted.toLowerCase(Locale.ROOT))))
        .findFirst();
  }

  private String closeUnit(String wanted) {
    List<String> spellings = units.stream().flatMap(unit -> unit.spellings().stream()).toList();
    return unitInAnotherCase(wanted)
        .map(unit -> ". Did you mean '" + unit.name() + "'?")
        .orElse(wanted.length() < 4 ? "" : Messages.didYouMean(wanted, spellings));
  }
}
