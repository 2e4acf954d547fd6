package stenotherm.base;

/**
 * A mass with its unit spelled out, for arguments where grams and ounces are easily taken for
 * kilograms.
 *
 * <p>A value, thus thread-safe.
 *
 * @param kilograms the mass [kg], above 0
 */
public record Mass(double kilograms) {
  /**
   * Checks the number.
   *
   * @throws InvalidInputException if it is not finite and above 0
   */
  public Mass {
    Checks.positive("mass", kilograms, "kg");
  }

  /**
   * A mass in grams.
   *
   * @param grams the mass [g]
   * @return the mass
   * @throws InvalidInputException if it is not finite and above 0
   */
  public static Mass grams(double grams) {
    return new Mass(Masses.fromGrams(Checks.positive("mass", grams, "g")));
  }

  /**
   * A mass in ounces.
   *
   * @param ounces the mass [oz]
   * @return the mass
   * @throws InvalidInputException if it is not finite and above 0
   */
  public static Mass ounces(double ounces) {
    return new Mass(Masses.fromOunces(Checks.positive("mass", ounces, "oz")));
  }

  /**
   * A mass in pounds.
   *
   * @param pounds the mass [lb]
   * @return the mass
   * @throws InvalidInputException if it is not finite and above 0
   */
  public static Mass pounds(double pounds) {
    return new Mass(Masses.fromPounds(Checks.positive("mass", pounds, "lb")));
  }
}
