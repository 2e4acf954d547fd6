package stenotherm.base;

/**
 * The six faces of a box.
 *
 * <p>Thread-safe.
 */
public enum Face {
  /** The left face of a parcel that stands upright: the face at the smallest x. */
  X_MIN(Axis.X, false),
  /** The right face of a parcel that stands upright: the face at the largest x. */
  X_MAX(Axis.X, true),
  /** The front of a parcel that stands upright: the face at the smallest y. */
  Y_MIN(Axis.Y, false),
  /** The back of a parcel that stands upright: the face at the largest y. */
  Y_MAX(Axis.Y, true),
  /** The floor of a parcel that stands upright: the face at the smallest z. */
  Z_MIN(Axis.Z, false),
  /** The lid of a parcel that stands upright: the face at the largest z. */
  Z_MAX(Axis.Z, true);

  private final Axis axis;
  private final boolean max;

  Face(Axis axis, boolean max) {
    this.axis = axis;
    this.max = max;
  }

  /**
   * Returns the axis that the face is normal to.
   *
   * @return the axis
   */
  public Axis axis() {
    return axis;
  }

  /**
   * Tells whether the face lies at the larger coordinate.
   *
   * @return true for the three faces whose outward normal points along the axis
   */
  public boolean isMax() {
    return max;
  }

  /**
   * Returns the face on the other side.
   *
   * @return the opposite face
   */
  public Face opposite() {
    return of(axis, !max);
  }

  /**
   * Finds the face of an axis and side.
   *
   * @param axis the axis that the face is normal to
   * @param max true for the face at the larger coordinate
   * @return the face
   */
  public static Face of(Axis axis, boolean max) {
    // values() would copy an array, and loops over cells call this
    return switch (axis) {
      case X -> max ? X_MAX : X_MIN;
      case Y -> max ? Y_MAX : Y_MIN;
      case Z -> max ? Z_MAX : Z_MIN;
    };
  }

  /**
   * Returns the name used in code, case files and names of boundaries; people read {@link #words}.
   *
   * @return {@code "xMin"} to {@code "zMax"}
   */
  public String label() {
    return axis.name().toLowerCase(java.util.Locale.ROOT) + (max ? "Max" : "Min");
  }

  /**
   * Returns what people call the face of a parcel, as if it stood upright: left and right are the
   * ends of its x axis, front and back those of y.
   *
   * @return "lid", "floor", "left", "right", "front" or "back"
   */
  public String words() {
    return switch (this) {
      case X_MIN -> "left";
      case X_MAX -> "right";
      case Y_MIN -> "front";
      case Y_MAX -> "back";
      case Z_MIN -> "floor";
      case Z_MAX -> "lid";
    };
  }
}
