package stenotherm.base;

import java.util.Arrays;

/**
 * A quantity that varies in time, piecewise smooth. Between {@linkplain #breakpoints breakpoints}
 * it is smooth; at a breakpoint it may have a kink or a jump, and the value after the jump holds
 * from then on.
 *
 * <p>Implementations must be immutable and thread-safe; those of this library are.
 */
public interface TimeFunction {
  /**
   * Returns the value at a time; at a jump, the value after it.
   *
   * @param time time [s]
   * @return the value [unit of the quantity]
   */
  double at(double time);

  /**
   * Returns the limit from earlier times; differs from {@link #at} at a jump only.
   *
   * @param time time [s]
   * @return the value just before [unit of the quantity]
   */
  default double before(double time) {
    return at(time);
  }

  /**
   * Returns the times of kinks and jumps strictly between two times, in ascending order.
   *
   * @param from start of the interval [s]
   * @param to end of the interval [s]
   * @return the times, ascending [s]; empty if the function is smooth there
   */
  default double[] breakpoints(double from, double to) {
    return new double[0];
  }

  /**
   * Tells whether the value never changes.
   *
   * @return true only if it is the same at all times
   */
  default boolean isConstant() {
    return false;
  }

  /**
   * Returns the mean over an interval: Simpson's rule on 64 parts between breakpoints, exact for
   * tables.
   *
   * @param from start of the interval [s]
   * @param to end of the interval [s], above {@code from}
   * @return the mean [unit of the quantity]
   * @throws InvalidInputException if the interval is empty
   */
  default double mean(double from, double to) {
    Checks.interval(from, to);
    double[] inner = breakpoints(from, to);
    double[] knots = Arrays.copyOf(inner, inner.length + 1);
    knots[inner.length] = to;
    double integral = 0;
    double left = from;
    for (double right : knots) {
      int parts = 64;
      double width = (right - left) / parts;
      double sum = at(left) + before(right);
      for (int part = 1; part < parts; part++) {
        sum += (part % 2 == 0 ? 2 : 4) * at(left + part * width);
      }
      integral += sum * width / 3;
      left = right;
    }
    return integral / (to - from);
  }

  /**
   * A constant.
   *
   * @param value the value [unit of the quantity]
   * @return the function
   * @throws InvalidInputException if the value is NaN or infinite
   */
  static TimeFunction constant(double value) {
    return new ConstantFunction(value);
  }

  /**
   * A table, linear between its rows and constant outside them. Two rows at the same time are a
   * jump; the later row holds from then on.
   *
   * @param times times in ascending order [s]; each at most twice
   * @param values value of each row [unit of the quantity]
   * @return the function
   * @throws InvalidInputException if the table is empty, its columns differ in length, a time
   *     occurs more than twice or out of order, or a number is not finite
   */
  static TimeFunction table(double[] times, double[] values) {
    return new TableFunction(
        Checks.given("times of a table", times), Checks.given("values of a table", values));
  }
}
