package stenotherm.grid;

import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;

/**
 * A point in space.
 *
 * <p>A value, thus thread-safe.
 *
 * @param x first coordinate [m]
 * @param y second coordinate [m]
 * @param z third coordinate [m]
 */
public record Point(double x, double y, double z) {
  /**
   * Checks the coordinates.
   *
   * @throws InvalidInputException if a coordinate is not finite
   */
  public Point {
    Checks.finite("x", x, "m");
    Checks.finite("y", y, "m");
    Checks.finite("z", z, "m");
  }

  /**
   * Returns one coordinate.
   *
   * @param axis which one
   * @return the coordinate [m]
   */
  public double along(Axis axis) {
    return switch (axis) {
      case X -> x;
      case Y -> y;
      case Z -> z;
    };
  }

  /**
   * Returns the point moved by a vector.
   *
   * @param shift the vector, as a point seen from the origin [m]
   * @return the moved point
   */
  public Point plus(Point shift) {
    return new Point(x + shift.x, y + shift.y, z + shift.z);
  }
}
