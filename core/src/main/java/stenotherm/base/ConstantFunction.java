package stenotherm.base;

/** A quantity that never changes. */
record ConstantFunction(double value) implements TimeFunction {
  ConstantFunction {
    Checks.finite("constant", value, "");
  }

  @Override
  public double at(double time) {
    return value;
  }

  @Override
  public boolean isConstant() {
    return true;
  }

  @Override
  public double mean(double from, double to) {
    return value;
  }
}
