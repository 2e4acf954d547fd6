package stenotherm.base;

/**
 * Which value of an uncertain quantity a run uses: the nominal one or an end of its range.
 *
 * <p>Thread-safe.
 */
public enum End {
  /** The low end. */
  LOW,
  /** The nominal value. */
  NOMINAL,
  /** The high end. */
  HIGH;

  /**
   * Returns the position in a range, see {@link Range#at}.
   *
   * @return -1, 0 or 1 [-]
   */
  public double position() {
    return ordinal() - 1;
  }
}
