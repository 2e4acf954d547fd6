package stenotherm.base;

/**
 * Heat radiation between grey surfaces, linearised about a mean temperature.
 *
 * <p>Stateless, thus thread-safe.
 */
public final class Radiation {
  /**
   * Stefan-Boltzmann constant [W/(m2 K4)], as printed by CODATA 2018 (from memory); it follows from
   * exact constants of the SI.
   */
  public static final double STEFAN_BOLTZMANN = 5.670374419e-8;

  private static final Range EMISSIVITIES = new Range(0.01, 1);

  private Radiation() {}

  /**
   * Returns the radiative coefficient of a black surface: 4 sigma T^3 (ISO 6946, Annex on surface
   * resistances). Compared with the exact difference of fourth powers it is too low by the fraction
   * (dT / 2 T)^2: 0.1 % for 20 K at 300 K.
   *
   * @param meanTemperature mean of the surface's and the surroundings' temperature [K]
   * @return the coefficient [W/(m2 K)]
   * @throws InvalidInputException if the temperature is not within 1 K to 5000 K
   */
  public static double blackCoefficient(double meanTemperature) {
    Checks.temperature("mean radiant temperature", meanTemperature);
    return 4 * STEFAN_BOLTZMANN * Math.pow(meanTemperature, 3);
  }

  /**
   * Returns the exchange factor of two large parallel surfaces: 1 / (1/e1 + 1/e2 - 1).
   *
   * @param first emissivity of one surface [-], 0.01 to 1
   * @param second emissivity of the other [-], 0.01 to 1
   * @return the factor [-], at most the smaller of the two
   * @throws InvalidInputException if an emissivity is out of its range
   */
  public static double exchangeFactor(double first, double second) {
    return 1 / (1 / emissivity(first) + 1 / emissivity(second) - 1);
  }

  /**
   * Checks an emissivity.
   *
   * @param value the emissivity [-], 0.01 to 1
   * @return the emissivity [-]
   * @throws InvalidInputException if it is out of its range
   */
  public static double emissivity(double value) {
    return Checks.within(
        "emissivity", value, EMISSIVITIES, "", "Board and plastics have about 0.9, foil 0.05.");
  }
}
