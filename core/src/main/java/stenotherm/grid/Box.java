package stenotherm.grid;

import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;

/**
 * A box parallel to the axes.
 *
 * <p>A value, thus thread-safe.
 *
 * @param min corner of the smallest coordinates [m]
 * @param max corner of the largest coordinates [m]
 */
public record Box(Point min, Point max) {
  /**
   * Checks that the extent along each axis is positive.
   *
   * @throws InvalidInputException if it is not
   */
  public Box {
    Checks.given("min", min);
    Checks.given("max", max);
    for (Axis axis : Axis.values()) {
      if (!(max.along(axis) > min.along(axis))) {
        throw new InvalidInputException(
            "box",
            axis
                + " runs from "
                + Checks.show(min.along(axis), "m")
                + " to "
                + Checks.show(max.along(axis), "m")
                + "; the end must be larger than the start");
      }
    }
  }

  /**
   * A box with one corner at the origin.
   *
   * @param x extent along x [m]
   * @param y extent along y [m]
   * @param z extent along z [m]
   * @return the box
   */
  public static Box ofSize(double x, double y, double z) {
    return new Box(new Point(0, 0, 0), new Point(x, y, z));
  }

  /**
   * Returns the extent along an axis.
   *
   * @param axis the axis
   * @return the extent [m]
   */
  public double size(Axis axis) {
    return max.along(axis) - min.along(axis);
  }

  /**
   * Returns the coordinate of a face along its axis.
   *
   * @param face the face
   * @return the coordinate [m]
   */
  public double at(Face face) {
    return (face.isMax() ? max : min).along(face.axis());
  }

  /**
   * Returns the area of a face.
   *
   * @param face the face
   * @return the area [m2]
   */
  public double area(Face face) {
    return volume() / size(face.axis());
  }

  /**
   * Returns the volume.
   *
   * @return the volume [m3]
   */
  public double volume() {
    return size(Axis.X) * size(Axis.Y) * size(Axis.Z);
  }

  /**
   * Returns the centre.
   *
   * @return the centre
   */
  public Point centre() {
    return new Point((min.x() + max.x()) / 2, (min.y() + max.y()) / 2, (min.z() + max.z()) / 2);
  }

  /**
   * Returns the box moved by a vector.
   *
   * @param shift the vector, as a point seen from the origin [m]
   * @return the moved box
   */
  public Box plus(Point shift) {
    return new Box(min.plus(shift), max.plus(shift));
  }

  /**
   * Tells whether a point lies in the closed box.
   *
   * @param point the point
   * @return true if it lies inside or on the surface
   */
  public boolean contains(Point point) {
    for (Axis axis : Axis.values()) {
      if (point.along(axis) < min.along(axis) || point.along(axis) > max.along(axis)) {
        return false;
      }
    }
    return true;
  }

  /**
   * Returns by how much another box sticks out of this one beyond a face.
   *
   * @param other the other box
   * @param face the face of this box
   * @return the excess [m], negative if the other box ends before the face
   */
  public double excess(Box other, Face face) {
    double difference = other.at(face) - at(face);
    return face.isMax() ? difference : -difference;
  }

  /**
   * Returns the depth to which two boxes overlap: the smallest of the three extents of what they
   * share. One of them must move by this to be clear of the other.
   *
   * @param other the other box
   * @return the depth of the overlap [m]; negative or zero if the boxes do not overlap
   */
  public double overlap(Box other) {
    double depth = Double.POSITIVE_INFINITY;
    for (Axis axis : Axis.values()) {
      double shared =
          Math.min(max.along(axis), other.max.along(axis))
              - Math.max(min.along(axis), other.min.along(axis));
      depth = Math.min(depth, shared);
    }
    return depth;
  }
}
