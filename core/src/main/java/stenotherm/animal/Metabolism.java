package stenotherm.animal;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.Temperatures;

/**
 * What a resting animal that has not fed takes from its air and gives to it. A single animal may
 * differ from such laws by a factor of two or three; digesting or moving ones take several times as
 * much.
 *
 * <p>A value, thus thread-safe.
 *
 * @param oxygen oxygen taken up [mol/s]
 * @param carbonDioxide carbon dioxide breathed out [mol/s]
 * @param heat heat given off [W]
 * @param withinRange true if mass and temperature are those for which the law is meant
 */
public record Metabolism(double oxygen, double carbonDioxide, double heat, boolean withinRange) {
  /** Carbon dioxide given off per oxygen taken up [-]: 0.7 on fat, 0.8 on protein. */
  public static final double RESPIRATORY_QUOTIENT = 0.8;

  /** Heat per oxygen at 0 °C and 1 atm [J/mL]; textbooks of physiology, from memory. */
  public static final double HEAT_PER_MILLILITRE = 20.1;

  /** Law of lizards and snakes. */
  public static final Source REPTILES =
      Source.read(
          "Andrews and Pough 1985, Physiol. Zool. 58:214, as quoted in the NicheMapR manual",
          "equation 2: 0.013 m^0.80 10^(0.038 T) mL/h of oxygen, m in g, T in °C, times 10^0.14 for"
              + " resting instead of standard");

  /** Law of all groups. */
  public static final Source GROUPS =
      Source.read(
          "Gillooly et al. 2001, Science 293:2248, as quoted in the TrenchR package",
          "exp(a - b / T) m^0.75 / 60 W, m in g");

  /** Volume of a mole of an ideal gas at 0 °C and 1 atm [mL/mol], rounded (CODATA 2018). */
  private static final double MOLAR_VOLUME = 22_414;

  /** Resting rate over the standard one [-], {@link #REPTILES}. */
  private static final double RESTING = Math.pow(10, 0.14);

  /** Temperatures of the compiled measurements [K]; beyond them the exponential misleads. */
  private static final Range TEMPERATURES = new Range(278.15, 313.15);

  /**
   * Returns what a resting animal exchanges: a reptile by {@link #REPTILES}, others by {@link
   * #GROUPS}.
   *
   * @param group its group
   * @param mass mass [kg], 0.0001 to 20
   * @param temperature body temperature [K], 200 to 350, meant for 278 to 313
   * @return its exchange
   * @throws InvalidInputException if mass or temperature is out of its range
   */
  public static Metabolism resting(AnimalGroup group, double mass, double temperature) {
    double heat =
        group == AnimalGroup.REPTILE
            ? RESTING * standardUptake(mass, temperature) * MOLAR_VOLUME * HEAT_PER_MILLILITRE
            : heat(group, mass, temperature);
    double oxygen = heat / (HEAT_PER_MILLILITRE * MOLAR_VOLUME);
    return new Metabolism(
        oxygen, RESPIRATORY_QUOTIENT * oxygen, heat, TEMPERATURES.contains(temperature));
  }

  /**
   * Returns the standard uptake of oxygen of a lizard or snake by {@link #REPTILES}.
   *
   * @param mass mass [kg], 0.0001 to 20
   * @param temperature body temperature [K]
   * @return oxygen [mol/s]
   * @throws InvalidInputException if mass or temperature is out of its range
   */
  public static double standardUptake(double mass, double temperature) {
    check(mass, temperature);
    double millilitresPerHour =
        0.013
            * Math.pow(1000 * mass, 0.80)
            * Math.pow(10, 0.038 * Temperatures.toCelsius(temperature));
    return millilitresPerHour / (3600 * MOLAR_VOLUME);
  }

  /**
   * Returns the heat of a group's animal by {@link #GROUPS}. For reptiles it is 15 % to 20 % above
   * the resting rate of the other law.
   *
   * @param group its group
   * @param mass mass [kg], 0.0001 to 20
   * @param temperature body temperature [K]
   * @return the heat [W]
   * @throws InvalidInputException if mass or temperature is out of its range
   */
  public static double heat(AnimalGroup group, double mass, double temperature) {
    check(mass, temperature);
    double logarithm =
        switch (Checks.given("group of an animal", group)) {
          case REPTILE -> 26.85 - 8780 / temperature;
          case AMPHIBIAN -> 16.68 - 5760 / temperature;
          case INVERTEBRATE -> 27.62 - 9150 / temperature;
        };
    return Math.exp(logarithm) * Math.pow(1000 * mass, 0.75) / 60;
  }

  private static void check(double mass, double temperature) {
    Checks.mass("animal mass", mass, AnimalBody.MASSES, "");
    Checks.parcelTemperature("body temperature", temperature);
  }
}
