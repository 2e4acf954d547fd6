package stenotherm.parcel;

import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.grid.Box;
import stenotherm.grid.Point;

/**
 * Length, width and height of something box-shaped, or of the box around it.
 *
 * <p>A value, thus thread-safe.
 *
 * @param length along x [m], above 0
 * @param width along y [m], above 0
 * @param height along z [m], above 0
 */
public record Dimensions(double length, double width, double height) {
  /**
   * Checks the dimensions.
   *
   * @throws stenotherm.base.InvalidInputException if one is not a finite number above 0
   */
  public Dimensions {
    Checks.extent("length", length);
    Checks.extent("width", width);
    Checks.extent("height", height);
  }

  /**
   * Returns the extent along an axis.
   *
   * @param axis the axis
   * @return length, width or height [m]
   */
  public double along(Axis axis) {
    return switch (axis) {
      case X -> length;
      case Y -> width;
      case Z -> height;
    };
  }

  /**
   * Returns the volume of the box.
   *
   * @return the volume [m3]
   */
  public double volume() {
    return length * width * height;
  }

  /** The box of these dimensions around a point of its floor's centre. */
  Box above(Point floor) {
    return new Box(
        new Point(floor.x() - length / 2, floor.y() - width / 2, floor.z()),
        new Point(floor.x() + length / 2, floor.y() + width / 2, floor.z() + height));
  }
}
