package stenotherm.ambient;

import java.util.List;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;

/**
 * Outdoor temperature from daily lows and highs: each low rises to the high of its day and each
 * high falls to the low of the next day, by the limbs of a {@link DiurnalShape}. It meets every low
 * and high exactly, has no jump at midnight, and on each limb stays between the limb's two ends.
 *
 * <p>The day before the first is taken to be like the first, the day after the last like the last.
 * Times outside the days given are refused.
 *
 * <p>Immutable, thus thread-safe.
 */
public final class DailyExtremes implements TimeFunction {
  private final double firstMidnight;
  private final List<Range> days;
  private final DiurnalShape shape;
  private final CoveredFunction course;

  /**
   * Joins lows and highs of consecutive days.
   *
   * @param firstMidnight time at which the first day begins, on the same clock as the times asked
   *     for [s]; negative if the clock starts later, for example -54 000 s if time zero is 15:00
   * @param days low and high of each day [K], at least one day; copied
   * @param shape the course of a day, its hours on the clock whose midnight is meant
   * @throws InvalidInputException if there is no day, a temperature is not within 200 K to 350 K or
   *     the midnight is not finite
   */
  public DailyExtremes(double firstMidnight, List<Range> days, DiurnalShape shape) {
    this.firstMidnight = Checks.finite("first midnight", firstMidnight, "s");
    this.days = Checks.notEmpty("days of lows and highs", days);
    this.shape = shape;
    for (int day = 0; day < this.days.size(); day++) {
      Ambient.checked("low of day " + (day + 1), this.days.get(day).low());
      Ambient.checked("high of day " + (day + 1), this.days.get(day).high());
    }
    Range covered = new Range(firstMidnight, firstMidnight + this.days.size() * Times.DAY);
    this.course = new CoveredFunction(join(), covered);
  }

  /**
   * Returns the days given.
   *
   * @return low and high of each day [K]; unmodifiable
   */
  public List<Range> days() {
    return days;
  }

  /**
   * Returns the course of a day that joins them.
   *
   * @return the shape
   */
  public DiurnalShape shape() {
    return shape;
  }

  /**
   * Returns the times for which the temperature is known.
   *
   * @return from the first midnight to the last [s]
   */
  public Range covered() {
    return course.covered();
  }

  /**
   * {@inheritDoc}
   *
   * @throws InvalidInputException if the time is outside {@link #covered}
   */
  @Override
  public double at(double time) {
    return course.at(time);
  }

  @Override
  public double[] breakpoints(double from, double to) {
    return course.breakpoints(from, to);
  }

  /**
   * Exact, as for tables.
   *
   * @throws InvalidInputException if the interval is empty or outside {@link #covered}
   */
  @Override
  public double mean(double from, double to) {
    return course.mean(from, to);
  }

  @Override
  public boolean isConstant() {
    return course.isConstant();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof DailyExtremes extremes && course.equals(extremes.course);
  }

  @Override
  public int hashCode() {
    return course.hashCode();
  }

  @Override
  public String toString() {
    return "daily lows and highs of " + days.size() + " days from " + firstMidnight + " s";
  }

  /** The limbs as one table, from the low before the first day to the low after the last. */
  private TimeFunction join() {
    // The last knot of a falling limb is the first of the next rising one.
    int perDay = shape.risingKnots() + shape.fallingKnots() - 1;
    int rows = (days.size() + 2) * perDay;
    double[] times = new double[rows];
    double[] temperatures = new double[rows];
    int row = 0;
    for (int number = -1; number <= days.size(); number++) {
      double midnight = firstMidnight + number * Times.DAY;
      Range today = day(number);
      for (int knot = 0; knot < shape.risingKnots(); knot++) {
        times[row] = midnight + Times.fromHours(shape.risingHour(knot));
        temperatures[row++] = below(today.high(), today.low(), shape.risingFraction(knot));
      }
      double nextLow = day(number + 1).low();
      for (int knot = 0; knot < shape.fallingKnots() - 1; knot++) {
        times[row] = midnight + Times.fromHours(shape.fallingHour(knot));
        temperatures[row++] = below(today.high(), nextLow, shape.fallingFraction(knot));
      }
    }
    return TimeFunction.table(times, temperatures);
  }

  private Range day(int number) {
    return days.get(Math.min(Math.max(number, 0), days.size() - 1));
  }

  /** Weighted so that both ends come out to the bit. */
  private static double below(double high, double low, double fraction) {
    double value = (1 - fraction) * high + fraction * low;
    return Math.min(Math.max(value, Math.min(low, high)), Math.max(low, high));
  }
}
