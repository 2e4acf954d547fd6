package stenotherm.warmer;

import stenotherm.base.Checks;
import stenotherm.base.Range;
import stenotherm.base.Source;

/**
 * Heat from iron that oxidises as fast as air reaches it. Oxygen passes a film, a crust of oxide
 * that grows with the conversion X, and reacts; the three stand in series:
 *
 * <pre>
 *   r   = p_O2 / (R_film + R_crust + R_kinetic)                        [mol/s]
 *   R_film    = 1 / G_film                                             [Pa s/mol]
 *   R_crust   = crust / G_open ((1 - X)^(-1/3) - 1)
 *   R_kinetic = 1 / (k m a(T) (1 - X)^(2/3) w),  w = 1 - exp(-t / wetting)
 * </pre>
 *
 * <p>G_film is the conductance of the film as far as it is open, G_open that of the whole film at
 * sea level, m the iron, k and a(T) those of {@link PowderKinetics}. The crust has the form of an
 * ash layer around a shrinking core, the exponent 2/3 is that of the surface of grains that shrink
 * (Levenspiel, Chemical Reaction Engineering, from memory).
 *
 * <p>Limits: one temperature and one conversion for the whole powder; water is never short.
 *
 * <p>A value, thus thread-safe.
 *
 * @param iron mass of the iron [kg]
 * @param film the film
 * @param crust resistance of the crust when (1 - X)^(-1/3) is 2, over that of the open film [-], 0
 *     to 10
 * @param kinetics the powder
 * @param product what the iron becomes
 */
public record IronPowder(
    double iron, AirFilm film, double crust, PowderKinetics kinetics, OxidationProduct product)
    implements HeatRelease {
  /** Where the law comes from. */
  public static final Source SOURCE =
      Source.memory(
          "Levenspiel, Chemical Reaction Engineering",
          "resistances of film, ash layer and reaction in series");

  /** The last part of the iron does not matter; beyond it the powder counts as spent [-]. */
  static final double SPENT = 0.999;

  /**
   * Checks the values.
   *
   * @throws stenotherm.base.InvalidInputException if one is out of its range
   */
  public IronPowder {
    Checks.positive("mass of iron", iron, "kg");
    Checks.given("film", film);
    Checks.within("crust", crust, new Range(0, 10), "", "0.5 is usual.");
    Checks.given("kinetics", kinetics);
    Checks.given("product", product);
  }

  /**
   * The same warmer with a powder that reacts more or less readily.
   *
   * @param factor factor on the conductance of the powder [-], above 0
   * @return the changed warmer
   */
  public IronPowder reacting(double factor) {
    PowderKinetics other =
        new PowderKinetics(
            factor * kinetics.conductance(), kinetics.activationEnergy(), kinetics.wetting());
    return new IronPowder(iron, film, crust, other, product);
  }

  /**
   * The same warmer with a powder whose rate grows more or less with temperature; at {@value
   * PowderKinetics#REFERENCE} K the rate stays. The film is kept, although with another activation
   * energy a rating would give another one: in its range that moves the power on the bench of
   * ratings by less than 3 %, a tenth of what the bench's conductance does.
   *
   * @param activationEnergy activation energy [J/mol], 0 to 150 000
   * @return the changed warmer
   * @throws stenotherm.base.InvalidInputException if it is out of its range
   */
  public IronPowder withActivation(double activationEnergy) {
    PowderKinetics other =
        new PowderKinetics(kinetics.conductance(), activationEnergy, kinetics.wetting());
    return new IronPowder(iron, film, crust, other, product);
  }

  /**
   * What reaches the powder and how it is.
   *
   * @param open part of the film that is not covered [-], 0 to 1
   * @param pressure total pressure of the air [Pa]
   * @param temperature temperature of the powder [K]
   */
  public record Supply(double open, double pressure, double temperature) {}

  /**
   * Returns how much oxygen the warmer takes for its partial pressure outside the film.
   *
   * @param conversion part of the iron that is oxidised [-], 0 to 1
   * @param age time since air reached the powder [s]; none is taken before
   * @param at film, pressure and temperature
   * @return uptake over partial pressure [mol/(s Pa)]
   */
  public double uptake(double conversion, double age, Supply at) {
    if (age <= 0 || at.open <= 0 || conversion >= SPENT) {
      return 0;
    }
    return 1
        / (filmResistance(at)
            + crustResistance(conversion)
            + kineticResistance(conversion, age, at));
  }

  private double filmResistance(Supply at) {
    return 1 / film.conductance(at.open, at.pressure);
  }

  private double crustResistance(double conversion) {
    return crust
        / film.conductance(1, AirFilm.SEA_LEVEL)
        * (1 / StrictMath.cbrt(1 - conversion) - 1);
  }

  private double kineticResistance(double conversion, double age, Supply at) {
    double wet = -Math.expm1(-age / kinetics.wetting());
    double grain = StrictMath.cbrt(1 - conversion);
    return 1
        / (kinetics.conductance()
            * iron
            * kinetics.arrhenius(at.temperature)
            * grain
            * grain
            * wet);
  }

  /** What holds a warmer back most. */
  public enum LimitedBy {
    /** It has not been opened yet, or its film is covered altogether. */
    CLOSED("no air reaches it"),
    /** The film. */
    FILM("its film, as it should be: it has air enough"),
    /** The crust of oxide. */
    CRUST("the crust on its iron"),
    /** The reaction: it is too cold, or has just been opened. */
    KINETICS("the cold"),
    /** The oxygen around it. */
    OXYGEN("the air around it, which has little oxygen left"),
    /** Its iron is used up. */
    SPENT("its iron, which is used up");

    private final String words;

    LimitedBy(String words) {
      this.words = words;
    }

    /**
     * Returns the words that reports use.
     *
     * @return what follows "limited by"
     */
    public String words() {
      return words;
    }
  }

  /** Part of the oxygen of outside air below which the air counts as what limits a warmer. */
  private static final double SHORT_OF_OXYGEN = 0.7;

  /**
   * Returns what holds the warmer back most.
   *
   * @param conversion part of the iron that is oxidised [-]
   * @param age time since air reached the powder [s]
   * @param at film, pressure and temperature
   * @param oxygen oxygen in the air around it, over that of outside air [-]
   * @return the largest resistance
   */
  public LimitedBy limitedBy(double conversion, double age, Supply at, double oxygen) {
    if (conversion >= SPENT) {
      return LimitedBy.SPENT;
    }
    if (age <= 0 || at.open <= 0) {
      return LimitedBy.CLOSED;
    }
    if (oxygen < SHORT_OF_OXYGEN) {
      return LimitedBy.OXYGEN;
    }
    double ofFilm = filmResistance(at);
    double ofCrust = crustResistance(conversion);
    double ofKinetics = kineticResistance(conversion, age, at);
    if (ofKinetics > Math.max(ofFilm, ofCrust)) {
      return LimitedBy.KINETICS;
    }
    return ofCrust > ofFilm ? LimitedBy.CRUST : LimitedBy.FILM;
  }

  /**
   * Returns how fast the uptake grows with the temperature. Times the rise of the powder over its
   * surroundings it is the gain of the loop from heat to temperature to heat: below 1 a small
   * disturbance of a steady state dies away; a warmer whose gain reaches 1 goes out in the cold or
   * runs away to a hotter state. With s the part of the resistance that is the reaction's, the gain
   * is s (1 - s) times what the film alone would allow times the growth of the reaction: where that
   * product is below 4 no warmer can.
   *
   * @param conversion part of the iron that is oxidised [-]
   * @param age time since air reached the powder [s]
   * @param at film, pressure and temperature
   * @return logarithmic derivative of the uptake [1/K]
   */
  public double growth(double conversion, double age, Supply at) {
    double uptake = uptake(conversion, age, at);
    return uptake == 0
        ? 0
        : uptake * kineticResistance(conversion, age, at) * kinetics.growth(at.temperature);
  }

  /**
   * Returns all of the heat that the iron can give.
   *
   * @return the heat [J]
   */
  public double heat() {
    return iron * product.heatPerIron();
  }

  /**
   * Returns by how much an uptake of oxygen converts the iron.
   *
   * @return conversion per oxygen [1/mol]
   */
  public double conversionPerOxygen() {
    return 1 / (iron * product.oxygenPerIron());
  }
}
