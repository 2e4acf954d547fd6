package stenotherm.parcel;

import java.util.Locale;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.Lengths;
import stenotherm.grid.Box;

/** Lengths as messages show them: in millimetres and, for readers of US units, in inches. */
final class LengthText {
  private LengthText() {}

  /** For example "19.0 mm (0.75 in)". */
  static String of(double metres) {
    return of(Lengths.toMillimetres(metres), Lengths.toInches(metres));
  }

  /** The same, of numbers that are rounded already. */
  static String of(double millimetres, double inches) {
    return String.format(Locale.ROOT, "%.1f mm (%.2f in)", millimetres, inches);
  }

  /** For example "300 x 200 x 150 mm". */
  static String millimetres(double x, double y, double z) {
    return Checks.show(Lengths.toMillimetres(x), "x ")
        + Checks.show(Lengths.toMillimetres(y), "x ")
        + Checks.show(Lengths.toMillimetres(z), "mm");
  }

  /** For example "300.0 x 200.0 x 150.0 mm (11.81 x 7.87 x 5.91 in)". */
  static String of(Box box) {
    double x = box.size(Axis.X);
    double y = box.size(Axis.Y);
    double z = box.size(Axis.Z);
    return String.format(
        Locale.ROOT,
        "%.1f x %.1f x %.1f mm (%.2f x %.2f x %.2f in)",
        Lengths.toMillimetres(x),
        Lengths.toMillimetres(y),
        Lengths.toMillimetres(z),
        Lengths.toInches(x),
        Lengths.toInches(y),
        Lengths.toInches(z));
  }
}
