package stenotherm.base;

/**
 * A closed range of one quantity, its unit given by whoever holds it.
 *
 * <p>A value, thus thread-safe.
 *
 * @param low the lower end [unit of the quantity]
 * @param high the upper end [unit of the quantity], not below {@code low}
 */
public record Range(double low, double high) {
  /**
   * Checks the ends.
   *
   * @throws InvalidInputException if an end is NaN or the ends are in the wrong order
   */
  public Range {
    if (!(low <= high)) {
      throw wrong("range", low, high);
    }
  }

  /**
   * A range whose error message says which range it is.
   *
   * @param field name of the range
   * @param low the lower end [unit of the quantity]
   * @param high the upper end [unit of the quantity], not below {@code low}
   * @return the range
   * @throws InvalidInputException if an end is NaN or the ends are in the wrong order
   */
  public static Range of(String field, double low, double high) {
    if (!(low <= high)) {
      throw wrong(field, low, high);
    }
    return new Range(low, high);
  }

  private static InvalidInputException wrong(String field, double low, double high) {
    return new InvalidInputException(
        field, "from " + low + " to " + high + ": the low end must not be above the high end");
  }

  /**
   * Tells whether a value lies in the range, ends included.
   *
   * @param value the value [unit of the quantity]
   * @return true if it does
   */
  public boolean contains(double value) {
    return value >= low && value <= high;
  }

  /**
   * Returns the value at a position in the range: -1 is the low end, 0 a nominal value inside it, 1
   * the high end. Between and beyond these the value follows a geometric progression, or a linear
   * one where an end or the nominal value is not above 0.
   *
   * @param position the position [-]
   * @param nominal the nominal value [unit of the quantity]
   * @return the value [unit of the quantity]
   */
  public double at(double position, double nominal) {
    double end = position < 0 ? low : high;
    double steps = Math.abs(position);
    if (steps == 1) {
      return end;
    }
    return end > 0 && nominal > 0
        ? nominal * StrictMath.pow(end / nominal, steps)
        : nominal + steps * (end - nominal);
  }
}
