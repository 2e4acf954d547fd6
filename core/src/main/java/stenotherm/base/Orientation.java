package stenotherm.base;

/**
 * How a parcel lies: which of its faces is up.
 *
 * <p>Thread-safe.
 */
public enum Orientation {
  /** Upright. */
  LID_UP(Face.Z_MAX),
  /** Upside down. */
  LID_DOWN(Face.Z_MIN),
  /** On its side, the left face up. */
  X_MIN_UP(Face.X_MIN),
  /** On its side, the right face up. */
  X_MAX_UP(Face.X_MAX),
  /** On its side, the front up. */
  Y_MIN_UP(Face.Y_MIN),
  /** On its side, the back up. */
  Y_MAX_UP(Face.Y_MAX);

  private final Face up;

  Orientation(Face up) {
    this.up = up;
  }

  /**
   * Returns the face of the parcel that is up.
   *
   * @return the face, named as if the parcel stood upright
   */
  public Face up() {
    return up;
  }

  /**
   * Returns the face of the parcel that lies below.
   *
   * @return the face, named as if the parcel stood upright
   */
  public Face down() {
    return up.opposite();
  }

  /**
   * Returns the direction of heat that leaves the parcel through one of its faces.
   *
   * @param face the face, named as if the parcel stood upright
   * @return upward through the face that is up, downward through the one below, else horizontal
   */
  public HeatDirection outOf(Face face) {
    if (face == up) {
      return HeatDirection.UPWARD;
    }
    return face == down() ? HeatDirection.DOWNWARD : HeatDirection.HORIZONTAL;
  }

  /**
   * Returns the face of the parcel that points in a given direction. A parcel gets from upright to
   * another orientation by turning about its y axis, or about its x axis if its front or back is to
   * be up.
   *
   * @param world the direction, as the face of an upright parcel that points there
   * @return the face of this parcel that points there
   */
  public Face facing(Face world) {
    Face east = Face.X_MAX;
    Face north = Face.Y_MAX;
    switch (this) {
      case LID_UP -> {}
      case LID_DOWN -> east = Face.X_MIN;
      case X_MIN_UP -> east = Face.Z_MAX;
      case X_MAX_UP -> east = Face.Z_MIN;
      case Y_MIN_UP -> north = Face.Z_MAX;
      case Y_MAX_UP -> north = Face.Z_MIN;
    }
    return switch (world) {
      case X_MIN -> east.opposite();
      case X_MAX -> east;
      case Y_MIN -> north.opposite();
      case Y_MAX -> north;
      case Z_MIN -> down();
      case Z_MAX -> up;
    };
  }

  /**
   * Returns the words that reports use.
   *
   * @return for example "upside down"
   */
  public String words() {
    return switch (this) {
      case LID_UP -> "upright";
      case LID_DOWN -> "upside down";
      case X_MIN_UP, X_MAX_UP, Y_MIN_UP, Y_MAX_UP -> "on its side, " + up.words() + " face up";
    };
  }
}
