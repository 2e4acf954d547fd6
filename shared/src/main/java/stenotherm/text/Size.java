package stenotherm.text;

import stenotherm.base.Checks;

/**
 * Three lengths in the order in which the file gives them.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param x the first length [m]
 * @param y the second length [m]
 * @param z the third length [m]
 */
public record Size(double x, double y, double z) {
  /**
   * Checks the lengths.
   *
   * @param x the first length [m]
   * @param y the second length [m]
   * @param z the third length [m]
   * @throws stenotherm.base.InvalidInputException if a length is not a finite number above zero
   */
  public Size {
    Checks.positive("first length", x, "m");
    Checks.positive("second length", y, "m");
    Checks.positive("third length", z, "m");
  }
}
