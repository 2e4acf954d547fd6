package stenotherm.material;

import java.util.Optional;
import stenotherm.base.Checks;
import stenotherm.base.Radiation;

/**
 * How the properties of a material depend on its temperature.
 *
 * <p>The conductivity is that of the material times a ratio, so that its range holds at every
 * temperature.
 *
 * <p>Values, thus thread-safe.
 */
public sealed interface Behaviour {
  /**
   * Returns the ratio of the conductivity to that at the temperature where the material states it.
   *
   * @param temperature temperature of the material [K]
   * @return k(T) / k [-], above 0
   */
  double conductivityRatio(double temperature);

  /**
   * Tells whether the conductivity depends on temperature.
   *
   * @return false if the ratio is 1 at every temperature
   */
  default boolean followsTemperature() {
    return false;
  }

  /**
   * Returns the melting range and the latent heat of a material each part of which melts by its own
   * temperature.
   *
   * @return nothing if it does not melt, or {@linkplain MeltsAsOneBody as one body}
   */
  default Optional<Melting> phaseChange() {
    return Optional.empty();
  }

  /**
   * Returns the melting range and the latent heat, however it melts.
   *
   * @return nothing if it does not
   */
  default Optional<Melting> fusion() {
    return phaseChange();
  }

  /**
   * Returns how the voids of a loose fill conduct and radiate.
   *
   * @return the law; nothing if the material is no such fill
   */
  default Optional<FillLaw> fillLaw() {
    return Optional.empty();
  }

  /** Properties that do not depend on temperature. */
  record Constant() implements Behaviour {
    @Override
    public double conductivityRatio(double temperature) {
      return 1;
    }
  }

  /**
   * A conductivity that grows with temperature as insulation does.
   *
   * @param correction the law and its reference temperature
   */
  record Corrected(TemperatureCorrection correction) implements Behaviour {
    /**
     * Checks the parts.
     *
     * @throws stenotherm.base.InvalidInputException if one is null
     */
    public Corrected {
      Checks.given("correction", correction);
    }

    @Override
    public double conductivityRatio(double temperature) {
      return correction.factor(temperature);
    }

    @Override
    public boolean followsTemperature() {
      return true;
    }
  }

  /**
   * A loose fill whose voids conduct and radiate.
   *
   * @param law conductivity against temperature
   * @param referenceTemperature temperature at which the material states its conductivity [K]
   */
  record Voids(FillLaw law, double referenceTemperature) implements Behaviour {
    /** Temperature at which the catalogue states the conductivity of fills [K]: 20 °C. */
    public static final double ROOM = 293.15;

    /**
     * Checks the temperature.
     *
     * @throws stenotherm.base.InvalidInputException if it is not absolute
     */
    public Voids {
      Checks.given("law of a fill", law);
      Checks.temperature("reference temperature of a fill", referenceTemperature);
    }

    /**
     * The law of a fill whose conductivity at 20 °C is known. Gas and solid conduct what is not due
     * to radiation in the voids, the same at all temperatures.
     *
     * @param conductivity conductivity at 20 °C [W/(m K)], above 0
     * @param voidSize mean size of the voids [m], 0 or above
     * @param emissivity emissivity of the fill's surfaces [-], 0.01 to 1
     * @return the behaviour
     * @throws stenotherm.base.InvalidInputException if a number is out of its range, or voids of
     *     that size radiate more than the whole conductivity
     */
    public static Voids meeting(double conductivity, double voidSize, double emissivity) {
      double radiation =
          Radiation.exchangeFactor(emissivity, emissivity)
              * Radiation.blackCoefficient(ROOM)
              * voidSize;
      return new Voids(new FillLaw(conductivity - radiation, voidSize, emissivity), ROOM);
    }

    @Override
    public double conductivityRatio(double temperature) {
      return law.conductivity(temperature) / law.conductivity(referenceTemperature);
    }

    @Override
    public Optional<FillLaw> fillLaw() {
      return Optional.of(law);
    }

    @Override
    public boolean followsTemperature() {
      return true;
    }
  }

  /**
   * A material that melts and freezes without supercooling; the properties that the material itself
   * states are those of the solid.
   *
   * @param melting melting range, latent heat and the properties of the liquid
   */
  record Melts(Melting melting) implements Behaviour {
    /**
     * Checks the parts.
     *
     * @throws stenotherm.base.InvalidInputException if one is null
     */
    public Melts {
      Checks.given("melting", melting);
    }

    @Override
    public double conductivityRatio(double temperature) {
      return 1;
    }

    @Override
    public Optional<Melting> phaseChange() {
      return Optional.of(melting);
    }
  }

  /**
   * A material that melts as one body: by its mean temperature, which a source of heat in it keeps
   * where its enthalpy has it. To a network it is a material that does not melt, with the
   * properties of the liquid, which the material itself states.
   *
   * @param melting melting range, latent heat and the properties of the liquid
   * @param solidSpecificHeat specific heat capacity of the solid [J/(kg K)], above 0
   * @param solidConductivity conductivity of the solid [W/(m K)], above 0
   */
  record MeltsAsOneBody(Melting melting, double solidSpecificHeat, double solidConductivity)
      implements Behaviour {
    /**
     * Checks the parts.
     *
     * @throws stenotherm.base.InvalidInputException if one is null or not above 0
     */
    public MeltsAsOneBody {
      Checks.given("melting", melting);
      Checks.positive("specific heat of the solid", solidSpecificHeat, "J/(kg K)");
      Checks.positive("conductivity of the solid", solidConductivity, "W/(m K)");
    }

    @Override
    public double conductivityRatio(double temperature) {
      return 1;
    }

    @Override
    public Optional<Melting> fusion() {
      return Optional.of(melting);
    }

    /**
     * The enthalpy of a body of this material.
     *
     * @param mass its mass [kg]
     * @return the curve
     */
    public EnthalpyCurve curve(double mass) {
      return new EnthalpyCurve(melting, mass, solidSpecificHeat);
    }
  }
}
