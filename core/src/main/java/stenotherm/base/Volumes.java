package stenotherm.base;

/**
 * Converts volumes between cubic metres and everyday units.
 *
 * <p>Stateless, thus thread-safe.
 */
public final class Volumes {
  /**
   * One US fluid ounce [m3]: 1/128 of a gallon of 231 cubic inches, exact (NIST Handbook 44,
   * Appendix C; memory).
   */
  public static final double US_FLUID_OUNCE = 29.5735295625e-6;

  private Volumes() {}

  /**
   * Converts from litres.
   *
   * @param litres volume [L]
   * @return volume [m3]
   */
  public static double fromLitres(double litres) {
    return litres / 1000;
  }

  /**
   * Converts to litres.
   *
   * @param cubicMetres volume [m3]
   * @return volume [L]
   */
  public static double toLitres(double cubicMetres) {
    return cubicMetres * 1000;
  }

  /**
   * Converts from US fluid ounces.
   *
   * @param fluidOunces volume [fl oz]
   * @return volume [m3]
   */
  public static double fromFluidOunces(double fluidOunces) {
    return fluidOunces * US_FLUID_OUNCE;
  }
}
