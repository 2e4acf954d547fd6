package stenotherm.base;

import java.util.Arrays;

/** A table: linear between rows and constant outside; two rows at the same time are a jump. */
final class TableFunction implements TimeFunction {
  private final double[] times;
  private final double[] values;

  TableFunction(double[] times, double[] values) {
    if (times.length == 0) {
      throw new InvalidInputException("table", "must have at least one row");
    }
    if (times.length != values.length) {
      throw new InvalidInputException(
          "table", times.length + " times but " + values.length + " values");
    }
    for (int row = 0; row < times.length; row++) {
      Checks.finite("table time, row " + (row + 1), times[row], "s");
      Checks.finite("table value, row " + (row + 1), values[row], "");
      if (row > 0 && times[row] < times[row - 1]) {
        throw new InvalidInputException(
            "table time, row " + (row + 1),
            times[row] + " s comes after " + times[row - 1] + " s; rows must ascend in time");
      }
      if (row > 1 && times[row] == times[row - 2]) {
        throw new InvalidInputException(
            "table time, row " + (row + 1),
            times[row] + " s occurs more than twice; two rows at the same time are a jump");
      }
    }
    this.times = times.clone();
    this.values = values.clone();
  }

  @Override
  public double at(double time) {
    return interpolate(firstAfter(time), time);
  }

  @Override
  public double before(double time) {
    return interpolate(firstNotBefore(time), time);
  }

  private double interpolate(int upper, double time) {
    if (upper == 0) {
      return values[0];
    }
    if (upper == times.length) {
      return values[times.length - 1];
    }
    double left = times[upper - 1];
    double fraction = (time - left) / (times[upper] - left);
    return values[upper - 1] + fraction * (values[upper] - values[upper - 1]);
  }

  /** Index of the first row later than a time; the table's length if there is none. */
  private int firstAfter(double time) {
    int low = 0;
    int high = times.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (times[middle] > time) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  /** Index of the first row not earlier than a time; the table's length if there is none. */
  private int firstNotBefore(double time) {
    int index = firstAfter(time);
    while (index > 0 && times[index - 1] == time) {
      index--;
    }
    return index;
  }

  @Override
  public double[] breakpoints(double from, double to) {
    int first = firstAfter(from);
    int end = Math.max(first, firstNotBefore(to));
    return Arrays.stream(times, first, end).distinct().toArray();
  }

  /** Exact: the trapezoids between rows. */
  @Override
  public double mean(double from, double to) {
    Checks.interval(from, to);
    double integral = 0;
    double left = from;
    double leftValue = at(from);
    for (int row = firstAfter(from); row < times.length && times[row] < to; row++) {
      integral += (times[row] - left) * (leftValue + before(times[row])) / 2;
      left = times[row];
      leftValue = at(left);
    }
    return (integral + (to - left) * (leftValue + before(to)) / 2) / (to - from);
  }

  @Override
  public boolean isConstant() {
    return Arrays.stream(values).allMatch(value -> value == values[0]);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TableFunction table
        && Arrays.equals(times, table.times)
        && Arrays.equals(values, table.values);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(times) + Arrays.hashCode(values);
  }

  @Override
  public String toString() {
    return "table of "
        + times.length
        + " rows, "
        + times[0]
        + " s to "
        + times[times.length - 1]
        + " s";
  }
}
