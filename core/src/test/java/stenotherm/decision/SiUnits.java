package stenotherm.decision;

import stenotherm.base.Checks;

/** Writes quantities in SI units. */
final class SiUnits implements UnitWords {
  @Override
  public String temperature(double kelvin) {
    return Checks.show(kelvin, "K");
  }

  @Override
  public String difference(double kelvin) {
    return Checks.show(kelvin, "K");
  }

  @Override
  public String length(double metres) {
    return Checks.show(metres, "m");
  }

  @Override
  public String size(double length, double width, double height) {
    return length(length) + " x " + length(width) + " x " + length(height);
  }
}
