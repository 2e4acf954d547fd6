package stenotherm.decision;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Times;

/**
 * What loggers recorded in and around a box without an animal, from its closing on.
 *
 * <p>Immutable, thus thread-safe.
 */
public final class LoggerTrace {
  /** Fewer rows do not tell some quantities and their own noise. */
  private static final int LEAST_ROWS = 20;

  private static final Range DURATIONS = new Range(Times.fromHours(3), Times.fromDays(30));

  /** What is between two rows farther apart is not known [s]. */
  private static final double LONGEST_GAP = Times.fromHours(2);

  private static final Range OUTSIDE = new Range(200, 350);

  /** Beside a warmer it may be hot. */
  private static final Range INSIDE = new Range(200, 400);

  private final double[] times;
  private final double[] outside;
  private final List<LoggerSensor> sensors;
  private final double[][] inside;

  /**
   * Checks and copies the readings.
   *
   * @param times time of each row, ascending from the closing of the box at the first [s]
   * @param outside temperature of the air around the box at each time [K]
   * @param sensors the sensors inside, at least one
   * @param inside their readings [K]: a row for each sensor, a column for each time
   * @throws InvalidInputException if there are fewer than 20 times, they span less than 3 h or more
   *     than 30 days, do not ascend or lie more than 2 h apart, there is no sensor, a name occurs
   *     twice, rows differ in length, or a temperature is not within 200 K to 350 K outside and 200
   *     K to 400 K inside
   */
  public LoggerTrace(
      double[] times, double[] outside, List<LoggerSensor> sensors, double[][] inside) {
    this.sensors = Checks.notEmpty("sensors", sensors);
    Set<String> names = new HashSet<>();
    for (LoggerSensor sensor : this.sensors) {
      if (!names.add(sensor.name())) {
        throw new InvalidInputException(
            "sensors", "'" + sensor.name() + "' occurs twice; each needs a name of its own");
      }
    }
    if (inside.length != this.sensors.size()) {
      throw new InvalidInputException(
          "readings", inside.length + " columns but " + this.sensors.size() + " sensors");
    }
    checkTimes(times);
    checkReadings("temperature outside", outside, times.length, OUTSIDE);
    for (int sensor = 0; sensor < inside.length; sensor++) {
      String field = "reading of '" + this.sensors.get(sensor).name() + "'";
      checkReadings(field, inside[sensor], times.length, INSIDE);
    }
    this.times = times.clone();
    this.outside = outside.clone();
    this.inside = Arrays.stream(inside).map(double[]::clone).toArray(double[][]::new);
    for (int row = 0; row < times.length; row++) {
      this.times[row] -= times[0];
    }
  }

  private static void checkTimes(double[] times) {
    if (times.length < LEAST_ROWS) {
      throw new InvalidInputException(
          "trace", times.length + " rows are too few; at least " + LEAST_ROWS + " are needed");
    }
    for (int row = 0; row < times.length; row++) {
      Checks.finite("time, row " + (row + 1), times[row], "s");
      double gap = row == 0 ? 1 : times[row] - times[row - 1];
      if (!(gap > 0) || gap > LONGEST_GAP) {
        throw new InvalidInputException(
            "time, row " + (row + 1),
            String.format(
                Locale.ROOT,
                "comes %.3g h after the row before; rows must ascend, at most 2 h apart",
                Times.toHours(gap)));
      }
    }
    Checks.within(
        "length of the trace",
        times[times.length - 1] - times[0],
        DURATIONS,
        "s",
        "A box takes some hours to settle; two days tell most.");
  }

  private static void checkReadings(String field, double[] readings, int rows, Range range) {
    if (readings.length != rows) {
      throw new InvalidInputException(field, readings.length + " readings but " + rows + " times");
    }
    for (int row = 0; row < rows; row++) {
      Checks.within(field + ", row " + (row + 1), readings[row], range, "K", "It is in kelvins.");
    }
  }

  /**
   * The means of as many rows that follow each other; what is left at the end joins the last mean.
   *
   * @param values a value for each time
   * @param most largest number of means
   * @return the means; a copy of the values if there are no more
   */
  static double[] means(double[] values, int most) {
    int each = (values.length + most - 1) / most;
    double[] means = new double[values.length / each];
    for (int row = 0; row < means.length; row++) {
      int to = row == means.length - 1 ? values.length : (row + 1) * each;
      means[row] = Arrays.stream(values, row * each, to).average().orElseThrow();
    }
    return means;
  }

  /**
   * Returns the times.
   *
   * @return a copy, ascending from 0 [s]
   */
  public double[] times() {
    return times.clone();
  }

  /**
   * Returns the temperature of the air outside.
   *
   * @return a copy, a value for each time [K]
   */
  public double[] outside() {
    return outside.clone();
  }

  /**
   * Returns the sensors inside.
   *
   * @return the sensors; unmodifiable
   */
  public List<LoggerSensor> sensors() {
    return sensors;
  }

  /**
   * Returns the readings of a sensor.
   *
   * @param sensor its position among the sensors
   * @return a copy, a value for each time [K]
   * @throws IndexOutOfBoundsException if there is no such sensor
   */
  public double[] inside(int sensor) {
    return inside[sensor].clone();
  }

  /**
   * Returns how long was recorded.
   *
   * @return time of the last row [s]
   */
  public double duration() {
    return times[times.length - 1];
  }
}
