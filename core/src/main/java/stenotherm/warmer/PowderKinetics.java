package stenotherm.warmer;

import stenotherm.base.Checks;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.Times;

/**
 * How fast salted wet iron powder takes up the oxygen that reaches it.
 *
 * <p>A value, thus thread-safe.
 *
 * @param conductance oxygen for its partial pressure and the mass of fresh iron at {@value
 *     #REFERENCE} K [mol/(s Pa kg)]
 * @param activationEnergy activation energy [J/mol], 0 to 150 000
 * @param wetting time in which the powder gets going once air reaches it [s]
 */
public record PowderKinetics(double conductance, double activationEnergy, double wetting) {
  /** Temperature at which the conductance is stated: 40 °C [K]. */
  public static final double REFERENCE = 313.15;

  /** Activation energy of salted wet iron [J/mol], see {@link #ACTIVATION_SOURCE}. */
  public static final double ACTIVATION = 40e3;

  /** Range that holds it nine times of ten [J/mol]: assumed. */
  public static final Range ACTIVATIONS = new Range(25e3, 60e3);

  /** Where the activation energy and its range come from. */
  public static final Source ACTIVATION_SOURCE =
      Source.assumed("no measurement of salted wet iron was found");

  /**
   * Oxygen that the fresh powder takes at 40 °C, over what its open film lets through [-]: assumed.
   * Makers choose finer powder for faster films.
   */
  static final double SURPLUS = 8;

  /** Molar gas constant [J/(mol K)], exact by definition but for the tenth digit. */
  static final double GAS_CONSTANT = 8.314462618;

  /**
   * Checks the values.
   *
   * @throws stenotherm.base.InvalidInputException if one is out of its range
   */
  public PowderKinetics {
    Checks.positive("conductance of the powder", conductance, "mol/(s Pa kg)");
    Checks.within(
        "activation energy",
        activationEnergy,
        new Range(0, 150e3),
        "J/mol",
        "40 kJ/mol are 40 000 J/mol.");
    Checks.positive("wetting time", wetting, "s");
  }

  /**
   * Returns the Arrhenius factor.
   *
   * @param temperature temperature of the powder [K]
   * @return rate over that at the reference temperature [-]
   */
  double arrhenius(double temperature) {
    return Math.exp(-activationEnergy / GAS_CONSTANT * (1 / temperature - 1 / REFERENCE));
  }

  /**
   * Returns how fast the rate grows with the temperature.
   *
   * @param temperature temperature of the powder [K]
   * @return logarithmic derivative [1/K]
   */
  double growth(double temperature) {
    return activationEnergy / (GAS_CONSTANT * temperature * temperature);
  }

  /**
   * Powder of which nothing is known but its film, iron and rated time.
   *
   * @param film the film
   * @param iron mass of the iron [kg]
   * @param duration rated time [s]
   * @return the usual powder
   */
  static PowderKinetics usual(AirFilm film, double iron, double duration) {
    return new PowderKinetics(
        SURPLUS * film.conductance(1, AirFilm.SEA_LEVEL) / iron,
        ACTIVATION,
        usualWetting(duration));
  }

  /** 15 s for each rated hour, at most 800 s [s]: assumed, from the rise times of practice. */
  static double usualWetting(double duration) {
    return Math.min(800, 15 * Times.toHours(duration));
  }
}
