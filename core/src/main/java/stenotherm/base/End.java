package stenotherm.base;

/**
 * Which end of a stated range a run takes.
 *
 * <p>Thread-safe.
 */
public enum End {
  /** The low end. */
  LOW,
  /** The value itself. */
  NOMINAL,
  /** The high end. */
  HIGH;

  /**
   * Returns the position in a range, see {@link Range#at}.
   *
   * @return -1, 0 or 1
   */
  public double position() {
    return ordinal() - 1;
  }
}
