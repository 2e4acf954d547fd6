package stenotherm.grid;

import org.jspecify.annotations.Nullable;
import stenotherm.base.Axis;

/**
 * What part of its box a block fills.
 *
 * <p>Thread-safe.
 */
public enum Shape {
  /** The whole box. */
  BOX(null),
  /** The elliptic cylinder with its axis along x that touches the box; round if it is square. */
  CYLINDER_X(Axis.X),
  /** The elliptic cylinder with its axis along y that touches the box. */
  CYLINDER_Y(Axis.Y),
  /** The elliptic cylinder with its axis along z that touches the box. */
  CYLINDER_Z(Axis.Z);

  private final @Nullable Axis axis;

  Shape(@Nullable Axis axis) {
    this.axis = axis;
  }

  /**
   * Tells whether the surface is curved across an axis: the shape touches the two faces of its box
   * that are normal to this axis along a line only.
   *
   * @param across the axis
   * @return true for a cylinder whose own axis is another one
   */
  public boolean isCurvedAcross(Axis across) {
    return axis != null && axis != across;
  }

  /** The cylinder in a box; null if the shape is the box itself. */
  @Nullable EllipticCylinder cylinderIn(Box box) {
    return axis == null ? null : new EllipticCylinder(axis, box);
  }
}
