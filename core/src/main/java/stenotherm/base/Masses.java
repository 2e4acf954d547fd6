package stenotherm.base;

/**
 * Converts masses between kilograms and everyday units. The pound is exact (international yard and
 * pound agreement, 1959).
 *
 * <p>Stateless, thus thread-safe.
 */
public final class Masses {
  /** One avoirdupois pound [kg], exact. */
  public static final double POUND = 0.45359237;

  /** One avoirdupois ounce [kg], a sixteenth of a pound. */
  public static final double OUNCE = POUND / 16;

  private Masses() {}

  /**
   * Converts from grams.
   *
   * @param grams mass [g]
   * @return mass [kg]
   */
  public static double fromGrams(double grams) {
    return grams / 1000;
  }

  /**
   * Converts to grams.
   *
   * @param kilograms mass [kg]
   * @return mass [g]
   */
  public static double toGrams(double kilograms) {
    return kilograms * 1000;
  }

  /**
   * Converts from ounces.
   *
   * @param ounces mass [oz]
   * @return mass [kg]
   */
  public static double fromOunces(double ounces) {
    return ounces * OUNCE;
  }

  /**
   * Converts to ounces.
   *
   * @param kilograms mass [kg]
   * @return mass [oz]
   */
  public static double toOunces(double kilograms) {
    return kilograms / OUNCE;
  }

  /**
   * Converts from pounds.
   *
   * @param pounds mass [lb]
   * @return mass [kg]
   */
  public static double fromPounds(double pounds) {
    return pounds * POUND;
  }

  /**
   * Converts to pounds.
   *
   * @param kilograms mass [kg]
   * @return mass [lb]
   */
  public static double toPounds(double kilograms) {
    return kilograms / POUND;
  }
}
