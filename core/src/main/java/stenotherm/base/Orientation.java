package stenotherm.base;

/**
 * How a parcel lies: which of its faces is up.
 *
 * <p>Stable. Thread-safe.
 */
public enum Orientation {
  /** Upright. */
  LID_UP(Face.Z_MAX),
  /** Upside down. */
  LID_DOWN(Face.Z_MIN),
  /** On its side, the face at the smallest x up. */
  X_MIN_UP(Face.X_MIN),
  /** On its side, the face at the largest x up. */
  X_MAX_UP(Face.X_MAX),
  /** On its side, the face at the smallest y up. */
  Y_MIN_UP(Face.Y_MIN),
  /** On its side, the face at the largest y up. */
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
  public HeatFlow outOf(Face face) {
    if (face == up) {
      return HeatFlow.UPWARD;
    }
    return face == down() ? HeatFlow.DOWNWARD : HeatFlow.HORIZONTAL;
  }
}
