package stenotherm.base;

/**
 * A closed range of one quantity, its unit given by whoever holds it.
 *
 * <p>A value, thus thread-safe.
 *
 * @param low the lower end
 * @param high the upper end, not below {@code low}
 */
public record Range(double low, double high) {
  /**
   * Checks the ends.
   *
   * @throws InvalidInputException if an end is NaN or the ends are in the wrong order
   */
  public Range {
    if (!(low <= high)) {
      throw new InvalidInputException(
          "range", "from " + low + " to " + high + ": the low end must not be above the high end");
    }
  }

  /**
   * Tells whether a value lies in the range, ends included.
   *
   * @param value the value
   * @return true if it does
   */
  public boolean contains(double value) {
    return value >= low && value <= high;
  }
}
