package stenotherm.base;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Argument checks that return their argument, so that a record's constructor reads as its contract.
 * NaN and infinities are always bad values.
 *
 * <p>Stateless, thus thread-safe.
 */
public final class Checks {
  /** Colder and hotter than any parcel, and the air at the ground or in a vehicle [K]. */
  public static final Range PARCEL_TEMPERATURES = new Range(200, 350);

  private Checks() {}

  /**
   * Checks that an object is there, and so is all that it holds if it is a collection or a map.
   *
   * @param <T> type of the object
   * @param field name of the input
   * @param value the object
   * @return the object
   * @throws InvalidInputException if it is null or holds a null
   */
  public static <T> T given(String field, @Nullable T value) {
    if (value == null) {
      throw new InvalidInputException(field, "must not be null");
    }
    Collection<?> held =
        value instanceof Map<?, ?> map
            ? map.values()
            : value instanceof Collection<?> all ? all : List.of();
    // no stream: runs come here at every step
    for (Object each : held) {
      if (each == null) {
        throw new InvalidInputException(field, "must not hold a null");
      }
    }
    return value;
  }

  /**
   * Looks for an interrupt: whoever waits for something long may stop it. The thread stays
   * interrupted.
   *
   * @param doing what is stopped, as in "interrupted while making a grid"
   * @throws CancellationException if the thread is interrupted
   */
  public static void notInterrupted(String doing) {
    if (Thread.currentThread().isInterrupted()) {
      throw new CancellationException("interrupted " + doing);
    }
  }

  /**
   * Checks that a value is finite.
   *
   * @param field name of the input
   * @param value the value [unit]
   * @param unit unit shown in the message, for example {@code "W/(m K)"}
   * @return the value [in its unit]
   * @throws InvalidInputException if the value is NaN or infinite
   */
  public static double finite(String field, double value, String unit) {
    if (!Double.isFinite(value)) {
      throw new InvalidInputException(field, show(value, unit) + " is not a finite number");
    }
    return value;
  }

  /**
   * Checks that a value is finite and above zero.
   *
   * @param field name of the input
   * @param value the value [unit]
   * @param unit unit shown in the message
   * @return the value [in its unit]
   * @throws InvalidInputException if the value is not a finite number above zero
   */
  public static double positive(String field, double value, String unit) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new InvalidInputException(
          field,
          show(value, unit) + " must be a finite number above 0",
          new InvalidInputException.Bounds(value, 0, Double.POSITIVE_INFINITY, true, unit, ""));
    }
    return value;
  }

  /**
   * Checks that a value is finite and not below zero.
   *
   * @param field name of the input
   * @param value the value [unit]
   * @param unit unit shown in the message
   * @return the value [in its unit]
   * @throws InvalidInputException if the value is negative, NaN or infinite
   */
  public static double notNegative(String field, double value, String unit) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw new InvalidInputException(
          field,
          show(value, unit) + " must be a finite number, 0 or above",
          new InvalidInputException.Bounds(value, 0, Double.POSITIVE_INFINITY, false, unit, ""));
    }
    return value;
  }

  /**
   * Checks that a function of time is not below zero. It is looked at where it has breakpoints, as
   * tables have in each row; between the breakpoints of other functions it is not checked.
   *
   * @param field name of the input
   * @param function the function [unit]
   * @param unit unit shown in the message
   * @return the function
   * @throws InvalidInputException if it is below zero within ten years before or after time zero
   */
  public static TimeFunction notNegative(String field, TimeFunction function, String unit) {
    given(field, function);
    double tenYears = 3653 * Times.DAY;
    for (double time : function.breakpoints(-tenYears, tenYears)) {
      double least = Math.min(function.at(time), function.before(time));
      if (least < 0) {
        throw new InvalidInputException(
            field, show(least, unit) + " at " + show(time, "s") + " must be 0 or above");
      }
    }
    if (function.isConstant()) {
      notNegative(field, function.at(0), unit);
    }
    return function;
  }

  /**
   * Checks that a value lies in a closed range.
   *
   * @param field name of the input
   * @param value the value [unit]
   * @param allowed the closed range that it must lie in [unit]
   * @param unit unit shown in the message
   * @param hint what the user should check, as a sentence; may be empty
   * @return the value [in its unit]
   * @throws InvalidInputException if the value is outside the range or NaN
   */
  public static double within(String field, double value, Range allowed, String unit, String hint) {
    if (!allowed.contains(value)) {
      throw outside(
          field,
          value,
          each -> show(each, unit),
          hint,
          new InvalidInputException.Bounds(
              value, allowed.low(), allowed.high(), false, unit, hint));
    }
    return value;
  }

  /** Says what is wrong with a value outside of its bounds, in words for a value of its kind. */
  private static InvalidInputException outside(
      String field,
      double value,
      DoubleFunction<String> words,
      String hint,
      InvalidInputException.Bounds bounds) {
    // six digits may hide by how little it is outside
    String shown = words.apply(value);
    String least = words.apply(bounds.least());
    String most = words.apply(bounds.most());
    boolean isHidden = shown.equals(least) || shown.equals(most);
    return new InvalidInputException(
        field,
        (isHidden ? value + " " + bounds.unit() : shown)
            + " must lie between "
            + least
            + " and "
            + most
            + (hint.isEmpty() ? "" : ". " + hint),
        bounds);
  }

  /**
   * Checks that a length is finite and above zero. Callers write lengths in metres, millimetres and
   * inches; a message has millimetres.
   *
   * @param field name of the input
   * @param metres the length [m]
   * @return the length [m]
   * @throws InvalidInputException if it is not a finite number above zero
   */
  public static double extent(String field, double metres) {
    if (!(metres > 0) || Double.isInfinite(metres)) {
      throw new InvalidInputException(
          field,
          show(Lengths.toMillimetres(metres), "mm")
              + (Double.isFinite(metres) ? " must be above 0" : " must be a finite number above 0"),
          new InvalidInputException.Bounds(metres, 0, Double.POSITIVE_INFINITY, true, "m", ""));
    }
    return metres;
  }

  /**
   * Checks that a mass lies in a closed range. Callers write masses in kilograms, grams, ounces and
   * pounds; a message has grams below a kilogram, and asks whether grams were taken for kilograms
   * or kilograms for grams where that would fit.
   *
   * @param field name of the input
   * @param kilograms the mass [kg]
   * @param allowed the closed range that it must lie in [kg]
   * @param hint what the user should check, as a sentence; may be empty
   * @return the mass [kg]
   * @throws InvalidInputException if it is outside the range or NaN
   */
  public static double mass(String field, double kilograms, Range allowed, String hint) {
    if (!allowed.contains(kilograms)) {
      String meant =
          allowed.contains(Masses.toGrams(kilograms))
              ? "Is it in kilograms?"
              : allowed.contains(Masses.fromGrams(kilograms)) ? "Is it in grams?" : "";
      throw outside(
          field,
          kilograms,
          each -> Math.abs(each) < 1 ? show(Masses.toGrams(each), "g") : show(each, "kg"),
          (hint + " " + meant).strip(),
          new InvalidInputException.Bounds(
              kilograms, allowed.low(), allowed.high(), false, "kg", hint));
    }
    return kilograms;
  }

  /**
   * Checks that a duration lies in a closed range. Callers write durations in seconds or as a
   * {@link java.time.Duration}; a message has the unit that suits the number, and asks whether
   * hours were taken for seconds where that would fit.
   *
   * @param field name of the input
   * @param seconds the duration [s]
   * @param allowed the closed range that it must lie in [s]
   * @return the duration [s]
   * @throws InvalidInputException if it is outside the range or NaN
   */
  public static double duration(String field, double seconds, Range allowed) {
    if (!allowed.contains(seconds)) {
      boolean isHours =
          seconds > 0 && seconds < allowed.low() && allowed.contains(Times.fromHours(seconds));
      throw outside(
          field,
          seconds,
          Checks::duration,
          isHours ? "Is it in hours?" : "",
          new InvalidInputException.Bounds(seconds, allowed.low(), allowed.high(), false, "s", ""));
    }
    return seconds;
  }

  private static String duration(double seconds) {
    double size = Math.abs(seconds);
    if (size < Times.MINUTE) {
      return show(seconds, "s");
    }
    if (size < Times.HOUR) {
      return show(Times.toMinutes(seconds), "min");
    }
    return size < 2 * Times.DAY
        ? show(Times.toHours(seconds), "h")
        : show(seconds / Times.DAY, "days");
  }

  /**
   * Checks that a temperature is absolute and plausible.
   *
   * @param field name of the input
   * @param value the temperature [K]
   * @return the temperature [K]
   * @throws InvalidInputException if the value is not within 1 K to 5000 K
   */
  public static double temperature(String field, double value) {
    return within(
        field,
        value,
        new Range(1, 5000),
        "K",
        "Temperatures are absolute, in kelvin: 20 °C is 293.15 K.");
  }

  /**
   * Checks that a temperature is one that a parcel may have or meet: narrow enough to tell kelvin
   * from degrees Celsius or Fahrenheit.
   *
   * @param field name of the input
   * @param value the temperature [K]
   * @return the temperature [K]
   * @throws InvalidInputException if the value is not within 200 K to 350 K
   */
  public static double parcelTemperature(String field, double value) {
    return within(
        field,
        value,
        PARCEL_TEMPERATURES,
        "K",
        "Temperatures are absolute, in kelvin: 20 °C is 293.15 K.");
  }

  /**
   * Checks that an interval of time has a length.
   *
   * @param from start [s]
   * @param to end [s]
   * @throws InvalidInputException if the end does not come after the start
   */
  public static void interval(double from, double to) {
    if (!(to > from)) {
      throw new InvalidInputException(
          "interval", "from " + from + " s to " + to + " s: the end must come after the start");
    }
  }

  /**
   * Checks that a name is not blank.
   *
   * @param field name of the input
   * @param value the name
   * @return the name
   * @throws InvalidInputException if the name is blank
   */
  public static String name(String field, String value) {
    if (given(field, value).isBlank()) {
      throw new InvalidInputException(field, "must not be blank");
    }
    return value;
  }

  /**
   * Checks that a list holds something and copies it.
   *
   * @param <T> element type
   * @param field name of the input
   * @param value the list
   * @return an unmodifiable copy
   * @throws InvalidInputException if the list is empty
   */
  public static <T> List<T> notEmpty(String field, List<T> value) {
    if (given(field, value).isEmpty()) {
      throw new InvalidInputException(field, "must not be empty");
    }
    return List.copyOf(value);
  }

  /**
   * Writes a value with its unit for a message: at most six significant digits, with a decimal
   * point.
   *
   * @param value the value [unit]
   * @param unit the unit, empty for a pure number
   * @return for example {@code "0.035 W/(m K)"}
   */
  public static String show(double value, String unit) {
    String number = String.format(Locale.ROOT, "%.6g", value);
    if (Double.isFinite(value) && number.indexOf('e') < 0 && number.indexOf('.') >= 0) {
      number = number.replaceAll("0+$", "").replaceAll("\\.$", "");
    }
    return unit.isEmpty() ? number : number + " " + unit;
  }
}
