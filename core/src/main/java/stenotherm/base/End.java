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
   * Picks from a range.
   *
   * @param range the range
   * @param nominal the value inside it
   * @return the low end, the value or the high end
   */
  public double of(Range range, double nominal) {
    return switch (this) {
      case LOW -> range.low();
      case NOMINAL -> nominal;
      case HIGH -> range.high();
    };
  }
}
