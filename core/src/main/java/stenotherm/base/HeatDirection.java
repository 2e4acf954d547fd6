package stenotherm.base;

/**
 * The direction that heat takes, which decides how air next to a surface moves. It is the direction
 * of the heat, not the way a surface lies: heat that leaves through a lid flows upward.
 *
 * <p>Thread-safe.
 */
public enum HeatDirection {
  /** Heat rises: out of a warm parcel's lid, into a cold parcel's floor. */
  UPWARD,
  /** Heat goes sideways: through the walls of a parcel that stands upright. */
  HORIZONTAL,
  /** Heat sinks: out of a warm parcel's floor, into a cold parcel's lid. */
  DOWNWARD;

  /**
   * Returns the direction of the same flow backwards.
   *
   * @return the opposite direction; horizontal stays horizontal
   */
  public HeatDirection reversed() {
    return switch (this) {
      case UPWARD -> DOWNWARD;
      case DOWNWARD -> UPWARD;
      case HORIZONTAL -> HORIZONTAL;
    };
  }
}
