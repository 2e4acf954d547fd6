package stenotherm.ambient;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import stenotherm.base.Checks;
import stenotherm.base.Range;
import stenotherm.base.TimeFunction;

/**
 * A first-order lag behind another function: lag dy/dt = x - y. Over an interval in which x is x0 +
 * s (t - t0), y = x - s lag + (y0 - x0 + s lag) exp(-(t - t0)/lag).
 */
final class LaggedFunction implements TimeFunction {
  /** Longest piece over which the lagged value is taken as linear [s]. */
  private static final double LONGEST_PIECE = 600;

  private final TimeFunction input;
  private final double offset;
  private final double lag;
  private final double[] knots;

  /** Input after each knot and before the next one, lagged value at each knot. */
  private final double[] after;

  private final double[] beforeNext;
  private final double[] lagged;

  /** Begins at the input. */
  LaggedFunction(TimeFunction input, Range times, double offset, double lag) {
    this(input, times, offset, lag, input.at(times.low()));
  }

  /**
   * Begins at a value of its own.
   *
   * @param start lagged value at the beginning, without the offset
   */
  LaggedFunction(TimeFunction input, Range times, double offset, double lag, double start) {
    Checks.interval(times.low(), times.high());
    this.input = input;
    this.offset = offset;
    this.lag = lag;
    this.knots = knots(input, times);
    this.after = new double[knots.length];
    this.beforeNext = new double[knots.length];
    this.lagged = new double[knots.length];
    lagged[0] = start;
    for (int knot = 0; knot < knots.length; knot++) {
      after[knot] = input.at(knots[knot]);
      if (knot + 1 < knots.length) {
        beforeNext[knot] = input.before(knots[knot + 1]);
        lagged[knot + 1] = laggedAt(knot, knots[knot + 1]);
      }
      Ambient.checked(
          "ambient temperature with its offset", offset + (lag == 0 ? after : lagged)[knot]);
    }
  }

  private static double[] knots(TimeFunction input, Range times) {
    double[] inner = input.breakpoints(times.low(), times.high());
    double[] ends = new double[inner.length + 2];
    System.arraycopy(inner, 0, ends, 1, inner.length);
    ends[0] = times.low();
    ends[ends.length - 1] = times.high();
    return DoubleStream.concat(
            IntStream.range(0, ends.length - 1)
                .boxed()
                .flatMapToDouble(index -> pieces(ends[index], ends[index + 1])),
            Arrays.stream(ends, ends.length - 1, ends.length))
        .toArray();
  }

  /** The starts of equal pieces of an interval. */
  private static DoubleStream pieces(double from, double to) {
    int count = (int) Math.max(1, Math.ceil((to - from) / LONGEST_PIECE));
    return IntStream.range(0, count).mapToDouble(piece -> from + piece * (to - from) / count);
  }

  private double laggedAt(int knot, double time) {
    if (knot + 1 == knots.length) {
      return lagged[knot];
    }
    double width = knots[knot + 1] - knots[knot];
    double rise = beforeNext[knot] - after[knot];
    double passed = time - knots[knot];
    double behind = rise / width * lag;
    double now = after[knot] + rise * passed / width;
    return now - behind + (lagged[knot] - after[knot] + behind) * Math.exp(-passed / lag);
  }

  @Override
  public double at(double time) {
    return offset + (lag == 0 ? input.at(time) : laggedAt(knotBefore(time), time));
  }

  @Override
  public double before(double time) {
    return lag == 0 ? offset + input.before(time) : at(time);
  }

  private int knotBefore(double time) {
    int found = Arrays.binarySearch(knots, time);
    return Math.max(0, found >= 0 ? found : -found - 2);
  }

  @Override
  public double[] breakpoints(double from, double to) {
    return lag == 0
        ? input.breakpoints(from, to)
        : Arrays.stream(knots).filter(knot -> knot > from && knot < to).toArray();
  }

  /** The trapezoids between knots, as the lagged value is taken as linear there. */
  @Override
  public double mean(double from, double to) {
    if (lag == 0) {
      return offset + input.mean(from, to);
    }
    Checks.interval(from, to);
    double integral = 0;
    double left = from;
    double leftValue = at(from);
    for (int knot = knotBefore(from) + 1; left < to; knot++) {
      double right = knot < knots.length ? Math.min(to, knots[knot]) : to;
      double rightValue = at(right);
      integral += (right - left) * (leftValue + rightValue) / 2;
      left = right;
      leftValue = rightValue;
    }
    return integral / (to - from);
  }

  @Override
  public boolean isConstant() {
    return input.isConstant() && lagged[0] == after[0];
  }
}
