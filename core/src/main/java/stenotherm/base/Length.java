package stenotherm.base;

/**
 * A length with its unit spelled out, for arguments where millimetres and inches are easily taken
 * for metres.
 *
 * <p>A value, thus thread-safe.
 *
 * @param metres the length [m]
 */
public record Length(double metres) {
  /**
   * Checks the number.
   *
   * @throws InvalidInputException if it is not finite
   */
  public Length {
    Checks.finite("length", metres, "m");
  }

  /**
   * A length in millimetres.
   *
   * @param millimetres the length [mm]
   * @return the length
   * @throws InvalidInputException if it is not finite
   */
  public static Length millimetres(double millimetres) {
    return new Length(Lengths.fromMillimetres(Checks.finite("length", millimetres, "mm")));
  }

  /**
   * A length in inches.
   *
   * @param inches the length [in]
   * @return the length
   * @throws InvalidInputException if it is not finite
   */
  public static Length inches(double inches) {
    return new Length(Lengths.fromInches(Checks.finite("length", inches, "in")));
  }
}
