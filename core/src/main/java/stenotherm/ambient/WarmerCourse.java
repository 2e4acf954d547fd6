package stenotherm.ambient;

import stenotherm.base.TimeFunction;

/** A temperature that is higher than another one by some kelvins throughout. */
record WarmerCourse(TimeFunction inner, double kelvin) implements TimeFunction {
  @Override
  public double at(double time) {
    return inner.at(time) + kelvin;
  }

  @Override
  public double before(double time) {
    return inner.before(time) + kelvin;
  }

  @Override
  public double mean(double from, double to) {
    return inner.mean(from, to) + kelvin;
  }

  @Override
  public double[] breakpoints(double from, double to) {
    return inner.breakpoints(from, to);
  }

  @Override
  public boolean isConstant() {
    return inner.isConstant();
  }
}
