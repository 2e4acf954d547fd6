package stenotherm.base;

/**
 * Converts lengths between metres and everyday units. Inch and foot are exact (international yard
 * and pound agreement, 1959).
 *
 * <p>Stateless, thus thread-safe.
 */
public final class Lengths {
  /** One inch [m], exact. */
  public static final double INCH = 0.0254;

  /** One foot [m], exact. */
  public static final double FOOT = 0.3048;

  private Lengths() {}

  /**
   * Converts from millimetres.
   *
   * @param millimetres length [mm]
   * @return length [m]
   */
  public static double fromMillimetres(double millimetres) {
    return millimetres / 1000;
  }

  /**
   * Converts to millimetres.
   *
   * @param metres length [m]
   * @return length [mm]
   */
  public static double toMillimetres(double metres) {
    return metres * 1000;
  }

  /**
   * Converts from inches.
   *
   * @param inches length [in]
   * @return length [m]
   */
  public static double fromInches(double inches) {
    return inches * INCH;
  }

  /**
   * Converts to inches.
   *
   * @param metres length [m]
   * @return length [in]
   */
  public static double toInches(double metres) {
    return metres / INCH;
  }

  /**
   * Converts from feet.
   *
   * @param feet length [ft]
   * @return length [m]
   */
  public static double fromFeet(double feet) {
    return feet * FOOT;
  }

  /**
   * Converts to feet.
   *
   * @param metres length [m]
   * @return length [ft]
   */
  public static double toFeet(double metres) {
    return metres / FOOT;
  }
}
