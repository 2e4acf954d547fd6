package stenotherm.animal;

import java.util.Arrays;
import java.util.Locale;
import java.util.OptionalDouble;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Temperatures;
import stenotherm.base.Times;

/**
 * How a temperature history treated an animal: how long and how far its coldest part was too cold
 * and its hottest part too hot.
 *
 * <p>Between the times given, both temperatures are taken as linear, and every crossing of a limit
 * is found on that line, so the durations do not depend on how densely a history is sampled as long
 * as it is linear between its points. A temperature right at a limit is not outside it.
 *
 * <p>Time outside the critical limits is counted as well, but its length means little: there an
 * animal fails within minutes.
 *
 * <p>The limits are temperatures of the core, see {@link Tolerance}. Judged by the coldest and the
 * hottest part of a block, an exposure is thus on the cautious side; a history of the mean may be
 * given as both.
 *
 * <p>A value, thus thread-safe.
 *
 * @param tolerance what the history was judged by
 * @param comfortable what lay outside the comfortable band
 * @param alarm what lay outside the alarm band
 * @param critical what lay outside the critical limits
 * @param coldest the coldest moment of the coldest part
 * @param hottest the hottest moment of the hottest part
 */
public record Exposure(
    Tolerance tolerance,
    Excursions comfortable,
    Excursions alarm,
    Excursions critical,
    Moment coldest,
    Moment hottest) {

  /**
   * Judges a temperature history.
   *
   * @param tolerance what to judge it by
   * @param times times, strictly ascending [s]; at least two
   * @param coldest temperature of the animal's coldest part at each time [K]
   * @param hottest temperature of its hottest part at each time [K], never below {@code coldest}
   * @return the exposure
   * @throws InvalidInputException if the columns differ in length or have fewer than two rows, the
   *     times do not ascend, or a temperature is not within 180 K to 400 K or in the wrong order
   */
  public static Exposure of(
      Tolerance tolerance, double[] times, double[] coldest, double[] hottest) {
    Checks.given("tolerance", tolerance);
    check(
        Checks.given("times", times),
        Checks.given("coldest", coldest),
        Checks.given("hottest", hottest));
    return new Exposure(
        tolerance,
        outside(tolerance.comfortable().range(), times, coldest, hottest),
        outside(tolerance.alarm().range(), times, coldest, hottest),
        outside(tolerance.critical().range(), times, coldest, hottest),
        lowest(times, coldest),
        highest(times, hottest));
  }

  /**
   * Returns what lay outside one of the three pairs of temperatures.
   *
   * @param limit which pair
   * @return time and degree-time outside it
   */
  public Excursions outside(Limit limit) {
    return switch (limit) {
      case COMFORTABLE -> comfortable;
      case ALARM -> alarm;
      case CRITICAL -> critical;
    };
  }

  /**
   * Returns the smallest margin on the cold side, reached at the time of {@link #coldest}.
   *
   * @param limit which lower limit
   * @return coldest temperature less the limit [K]; negative if it was passed
   */
  public double coldMargin(Limit limit) {
    return coldest.temperature() - tolerance.band(limit).range().low();
  }

  /**
   * Returns the smallest margin on the hot side, reached at the time of {@link #hottest}.
   *
   * @param limit which upper limit
   * @return the limit less the hottest temperature [K]; negative if it was passed
   */
  public double hotMargin(Limit limit) {
    return tolerance.band(limit).range().high() - hottest.temperature();
  }

  /**
   * What lay outside one band.
   *
   * @param duration time during which the coldest part was too cold, or the hottest too hot, or
   *     both [s]; not more than the sum of the two sides
   * @param cold the cold side
   * @param hot the hot side
   */
  public record Excursions(double duration, Excursion cold, Excursion hot) {
    /**
     * Returns when the band was first left on either side.
     *
     * @return the time [s]; empty if it never was
     */
    public OptionalDouble firstBreach() {
      double first =
          Math.min(
              cold.firstBreach().orElse(Double.POSITIVE_INFINITY),
              hot.firstBreach().orElse(Double.POSITIVE_INFINITY));
      return first == Double.POSITIVE_INFINITY ? OptionalDouble.empty() : OptionalDouble.of(first);
    }
  }

  /**
   * What lay beyond one limit.
   *
   * @param duration time beyond it [s]
   * @param degreeTime integral of the temperature difference beyond it over time [K s]; divide by
   *     3600 for degree-hours
   * @param firstBreach when it was first passed [s]; empty if it never was
   */
  public record Excursion(double duration, double degreeTime, OptionalDouble firstBreach) {}

  /**
   * A temperature at a time.
   *
   * @param temperature temperature [K]
   * @param time time [s]; the first such time if there are several
   */
  public record Moment(double temperature, double time) {}

  /**
   * Returns the extremes and how long the animal was outside of its alarm band.
   *
   * @return for example "11.9 °C after 4.5 h to 22.0 °C after 0.0 h, outside the alarm band for 0.3
   *     h"
   */
  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "%.1f °C after %.1f h to %.1f °C after %.1f h, outside the alarm band for %.1f h",
        Temperatures.toCelsius(coldest.temperature()),
        Times.toHours(coldest.time()),
        Temperatures.toCelsius(hottest.temperature()),
        Times.toHours(hottest.time()),
        Times.toHours(alarm.duration()));
  }

  private static void check(double[] times, double[] coldest, double[] hottest) {
    if (times.length < 2 || coldest.length != times.length || hottest.length != times.length) {
      throw new InvalidInputException(
          "temperature history",
          times.length
              + " times, "
              + coldest.length
              + " coldest and "
              + hottest.length
              + " hottest temperatures; all three need the same number of rows, at least 2");
    }
    for (int row = 0; row < times.length; row++) {
      Checks.finite("history time, row " + (row + 1), times[row], "s");
      TemperatureBand.checked("coldest temperature, row " + (row + 1), coldest[row]);
      TemperatureBand.checked("hottest temperature, row " + (row + 1), hottest[row]);
      if (row > 0 && times[row] <= times[row - 1]) {
        throw new InvalidInputException(
            "history time, row " + (row + 1),
            times[row] + " s does not come after " + times[row - 1] + " s");
      }
      if (coldest[row] > hottest[row]) {
        throw new InvalidInputException(
            "coldest temperature, row " + (row + 1),
            Checks.show(coldest[row], "K")
                + " is above the hottest, "
                + Checks.show(hottest[row], "K"));
      }
    }
  }

  private static Excursions outside(
      Range band, double[] times, double[] coldest, double[] hottest) {
    double[] shortfalls = Arrays.stream(coldest).map(value -> band.low() - value).toArray();
    double[] excesses = Arrays.stream(hottest).map(value -> value - band.high()).toArray();
    double duration = 0;
    for (int row = 1; row < times.length; row++) {
      double length = times[row] - times[row - 1];
      Part cold = Part.above(shortfalls[row - 1], shortfalls[row]);
      Part hot = Part.above(excesses[row - 1], excesses[row]);
      duration += (cold.length() + hot.length() - cold.overlap(hot)) * length;
    }
    return new Excursions(duration, side(times, shortfalls), side(times, excesses));
  }

  /** Integrates what is above zero of a quantity that is linear between its rows. */
  private static Excursion side(double[] times, double[] beyond) {
    double duration = 0;
    double degreeTime = 0;
    OptionalDouble firstBreach = OptionalDouble.empty();
    for (int row = 1; row < times.length; row++) {
      double length = times[row] - times[row - 1];
      Part part = Part.above(beyond[row - 1], beyond[row]);
      if (part.length() > 0) {
        duration += part.length() * length;
        double mean = (Math.max(beyond[row - 1], 0) + Math.max(beyond[row], 0)) / 2;
        degreeTime += mean * part.length() * length;
        if (firstBreach.isEmpty()) {
          firstBreach = OptionalDouble.of(times[row - 1] + part.from() * length);
        }
      }
    }
    return new Excursion(duration, degreeTime, firstBreach);
  }

  private static Moment lowest(double[] times, double[] values) {
    int best = 0;
    for (int row = 1; row < values.length; row++) {
      best = values[row] < values[best] ? row : best;
    }
    return new Moment(values[best], times[best]);
  }

  private static Moment highest(double[] times, double[] values) {
    int best = 0;
    for (int row = 1; row < values.length; row++) {
      best = values[row] > values[best] ? row : best;
    }
    return new Moment(values[best], times[best]);
  }

  /** The part of an interval, as fractions of it, in which something linear is above zero. */
  private record Part(double from, double to) {
    private static final Part NONE = new Part(0, 0);

    static Part above(double atStart, double atEnd) {
      if (atStart <= 0 && atEnd <= 0) {
        return NONE;
      }
      double crossing = atStart / (atStart - atEnd);
      return new Part(atStart >= 0 ? 0 : crossing, atEnd >= 0 ? 1 : crossing);
    }

    double length() {
      return to - from;
    }

    double overlap(Part other) {
      return Math.max(0, Math.min(to, other.to) - Math.max(from, other.from));
    }
  }
}
