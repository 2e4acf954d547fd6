package stenotherm.material;

import stenotherm.base.Checks;

/**
 * How the properties of a material answer to its temperature.
 *
 * <p>Conductivity is a property of the material times a ratio, so that the range of the
 * conductivity keeps its meaning at every temperature.
 *
 * <p>Experimental. Values, thus thread-safe.
 */
public sealed interface Behaviour {
  /**
   * Returns the ratio of the conductivity to that at the temperature where the material states it.
   *
   * @param temperature temperature of the material [K]
   * @return k(T) / k, above 0
   */
  double conductivityRatio(double temperature);

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
   * @param correction the law and where it starts from
   */
  record Corrected(TemperatureCorrection correction) implements Behaviour {
    @Override
    public double conductivityRatio(double temperature) {
      return correction.factor(temperature);
    }
  }

  /**
   * A loose fill whose voids conduct and radiate.
   *
   * @param law conductivity against temperature
   * @param referenceTemperature temperature at which the material states its conductivity [K]
   */
  record Voids(FillLaw law, double referenceTemperature) implements Behaviour {
    /**
     * Checks the temperature.
     *
     * @throws stenotherm.base.InvalidInputException if it is not absolute
     */
    public Voids {
      Checks.temperature("reference temperature of a fill", referenceTemperature);
    }

    @Override
    public double conductivityRatio(double temperature) {
      return law.conductivity(temperature) / law.conductivity(referenceTemperature);
    }
  }

  /**
   * A material that melts and freezes without supercooling; the properties that the material itself
   * states are those of the solid.
   *
   * @param melting where and with how much heat it melts, and the liquid's properties
   */
  record Melts(Melting melting) implements Behaviour {
    @Override
    public double conductivityRatio(double temperature) {
      return 1;
    }
  }
}
