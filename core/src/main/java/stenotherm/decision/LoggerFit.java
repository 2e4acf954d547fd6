package stenotherm.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;

/**
 * What a logger's trace tells of a box. Least squares over the logarithms of the fitted quantities,
 * of a gap over its third power, with which air flows, and over what a trace leaves open: how well
 * the outside exchanges heat with the air, the temperature at closing, and an offset of each
 * sensor. Each pulls towards its usual value:
 *
 * <pre>
 *   sum (whitened (computed + offset - measured) / noise)^2 + sum (quantity / spread)^2 = min
 * </pre>
 *
 * <p>Spreads, as a central 90 %: twice the stated range of a conductivity, as a test is made where
 * it is in doubt; the upper end of the range of a gap; the stated range of a warmer's strength and
 * of the exchange outside; 2 K of the temperature at closing; 0.5 K of an offset against the sensor
 * outside, as loggers state it. All are assumed. The noise, how long it lasts and what sensors have
 * in common come from what is left; it decays exponentially over time, one law for all sensors,
 * which takes in the steps of a logger's digits and what the model misses, and is at least 0.05 K.
 * The sensor outside is taken to err as those inside do, which all of them then share. That sensors
 * show their surroundings at once is assumed, too.
 *
 * <p>Intervals hold 90 % for a problem that is linear near its solution; the command {@code
 * logger-coverage} of the validation tells how often they do.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class LoggerFit {
  /** By what factor the spread of a conductivity is wider than its stated range [-]. */
  public static final double WIDENING = 2;

  /** Central 90 % of the offset of a sensor [K]. */
  public static final double OFFSET = 0.5;

  /** Quantities that go together more closely than this are not told apart [-]. */
  public static final double INSEPARABLE = 0.95;

  /** An interval wider than this part of the stated range tells nothing new [-]. */
  private static final double AS_WIDE = 0.9;

  /** Noise that loggers do not have [K]. */
  private static final double MISFIT = 1;

  /** A box that stays so close to its surroundings tells nothing [K]. */
  private static final double FLAT = 2;

  private final LoggerLeastSquares found;

  private LoggerFit(LoggerLeastSquares found) {
    this.found = found;
  }

  /**
   * A fitted quantity.
   *
   * @param quantity which
   * @param value most likely value [unit of the quantity]
   * @param interval interval that holds it with 90 % [unit of the quantity]
   */
  public record Estimate(LoggerQuantity quantity, double value, Range interval) {
    /**
     * Tells whether the trace tells more than the stated range.
     *
     * @return false if the interval is about as wide as the range, or wider, as it is written or as
     *     heat and air flow by it
     */
    public boolean isTold() {
      double width = quantity.scaled(interval.high()) - quantity.scaled(interval.low());
      return width < AS_WIDE * quantity.statedWidth()
          && width(interval) < AS_WIDE * width(quantity.stated());
    }

    private static double width(Range range) {
      return range.high() - range.low();
    }
  }

  static LoggerFit of(TestBox box, LoggerTrace trace) {
    return new LoggerFit(new LoggerLeastSquares(box, trace));
  }

  /**
   * Returns the fitted quantities.
   *
   * @return an estimate of each; unmodifiable
   */
  public List<Estimate> estimates() {
    return found.estimates();
  }

  /**
   * Returns how closely two quantities go together.
   *
   * @param one position among the estimates
   * @param other position among the estimates
   * @return correlation of the logarithms [-], -1 to 1
   * @throws InvalidInputException if there is no such estimate
   */
  public double correlation(int one, int other) {
    int last = estimates().size() - 1;
    requirePosition("estimate", one, last);
    requirePosition("estimate", other, last);
    return found.correlation(one, other);
  }

  private static void requirePosition(String what, int position, int last) {
    if (position < 0 || position > last) {
      throw new InvalidInputException(
          "position of the " + what, position + " must lie between 0 and " + last);
    }
  }

  /**
   * Returns the times of what was compared.
   *
   * @return a copy, ascending: those of the trace, or means of some of its rows, at most 100 [s]
   */
  public double[] times() {
    return found.times().clone();
  }

  /**
   * Returns the temperature outside.
   *
   * @return a copy, a value for each time [K]
   */
  public double[] outside() {
    return LoggerTrace.means(found.trace().outside(), TestBox.MOST_ROWS);
  }

  /**
   * Returns what a sensor showed.
   *
   * @param sensor its position in the trace
   * @return a copy, a value for each time [K]
   * @throws InvalidInputException if there is no such sensor
   */
  public double[] measured(int sensor) {
    requirePosition("sensor", sensor, found.measured().length - 1);
    return found.measured()[sensor].clone();
  }

  /**
   * Returns what was computed for a sensor, its offset included.
   *
   * @param sensor its position in the trace
   * @return a copy, a value for each time [K]
   * @throws InvalidInputException if there is no such sensor
   */
  public double[] computed(int sensor) {
    requirePosition("sensor", sensor, found.measured().length - 1);
    return found.computed()[sensor].clone();
  }

  /**
   * Returns the offset of a sensor against the one outside.
   *
   * @param sensor its position in the trace
   * @return how much warmer it shows, most likely value [K]
   * @throws InvalidInputException if there is no such sensor
   */
  public double offset(int sensor) {
    requirePosition("sensor", sensor, found.measured().length - 1);
    return found.offset(sensor);
  }

  /**
   * Returns the temperature at closing.
   *
   * @return most likely value [K]
   */
  public double start() {
    return found.start();
  }

  /**
   * Returns what is left between computed and measured.
   *
   * @return standard deviation [K]
   */
  public double noise() {
    return found.noise();
  }

  /**
   * Tells whether the trace may be of the box that it was taken for.
   *
   * @return false if more is left than loggers err: what was fitted then makes up for a fault, and
   *     is no value of the box
   */
  public boolean isOfThisBox() {
    return noise() <= MISFIT;
  }

  /**
   * Returns how long what is left lasts.
   *
   * @return time in which its correlation falls to 1/e [s]; 0 if rows are independent
   */
  public double lasting() {
    return found.lasting();
  }

  /**
   * Returns what the trace does not tell.
   *
   * @return sentences; empty if it tells all that was asked
   */
  public List<String> untold() {
    List<String> all = new ArrayList<>();
    double apart = 0;
    double[] outside = outside();
    for (double[] readings : found.measured()) {
      for (int row = 0; row < readings.length; row++) {
        apart = Math.max(apart, Math.abs(readings[row] - outside[row]));
      }
    }
    if (apart < FLAT) {
      all.add(
          String.format(
              Locale.ROOT,
              "The trace is too flat: inside and outside are never more than %.1f K apart. Use a"
                  + " warmer, or carry the box from a warm room into the cold.",
              apart));
    }
    if (!isOfThisBox()) {
      all.add(
          String.format(
              Locale.ROOT,
              "What is left, %.1f K, is more than loggers err: the box, its air or a sensor's place"
                  + " was not what the scenario says.",
              found.noise()));
    }
    for (Estimate each : estimates()) {
      Range possible = each.quantity().possible();
      if (each.value() <= possible.low() * 1.001 || each.value() >= possible.high() * 0.999) {
        all.add(
            "The "
                + each.quantity().name()
                + " went to the end of what can be computed: take it for a fault, not for a value.");
      } else if (!each.isTold()) {
        all.add(
            "The trace does not tell the "
                + each.quantity().name()
                + ": its interval is not narrower than its stated range.");
      }
    }
    all.addAll(found.inseparable(INSEPARABLE));
    all.addAll(found.box().unfitted());
    return List.copyOf(all);
  }
}
