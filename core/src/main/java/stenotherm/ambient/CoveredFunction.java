package stenotherm.ambient;

import stenotherm.base.Checks;
import stenotherm.base.Range;
import stenotherm.base.TimeFunction;

/** A function that refuses times outside its record instead of inventing weather. */
record CoveredFunction(TimeFunction inner, Range covered) implements TimeFunction {
  /** Sums of time steps may miss the ends of a record by rounding [s]. */
  private static final double ROUNDING = 1e-6;

  @Override
  public double at(double time) {
    return inner.at(checked(time));
  }

  @Override
  public double before(double time) {
    return inner.before(checked(time));
  }

  @Override
  public double mean(double from, double to) {
    return inner.mean(checked(from), checked(to));
  }

  @Override
  public double[] breakpoints(double from, double to) {
    return inner.breakpoints(Math.max(from, covered.low()), Math.min(to, covered.high()));
  }

  @Override
  public boolean isConstant() {
    return inner.isConstant();
  }

  private double checked(double time) {
    double moved = Math.min(Math.max(time, covered.low()), covered.high());
    return Checks.within(
        "time of the ambient temperature",
        Math.abs(moved - time) <= ROUNDING ? moved : time,
        covered,
        "s",
        "The record covers no other times: add days or hours to it.");
  }
}
