package stenotherm.parcel;

import stenotherm.base.Checks;
import stenotherm.grid.Box;
import stenotherm.grid.Point;

/**
 * Where something stands in the cavity, seen from the centre of the inner floor of the upright
 * parcel.
 *
 * <p>A value, thus thread-safe.
 *
 * @param alongX its centre from the centre of the cavity, along x [m]
 * @param alongY its centre from the centre of the cavity, along y [m]
 * @param aboveFloor its bottom above the inner floor [m], 0 or above
 */
public record Position(double alongX, double alongY, double aboveFloor) {
  /** In the middle, on the floor. */
  public static final Position MIDDLE_OF_FLOOR = new Position(0, 0, 0);

  /**
   * Checks the position.
   *
   * @throws stenotherm.base.InvalidInputException if a coordinate is not finite or the height is
   *     negative
   */
  public Position {
    Checks.finite("offset along x", alongX, "m");
    Checks.finite("offset along y", alongY, "m");
    Checks.notNegative("height above floor", aboveFloor, "m");
  }

  /** The point of the cavity where the middle of the thing's bottom is. */
  Point in(Box cavity) {
    Point centre = cavity.centre();
    return new Point(centre.x() + alongX, centre.y() + alongY, cavity.min().z() + aboveFloor);
  }
}
