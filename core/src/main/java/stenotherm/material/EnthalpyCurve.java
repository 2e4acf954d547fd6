package stenotherm.material;

/**
 * The enthalpy h(T) of a body that melts [J]: that of the solid up to the solidus, then the latent
 * heat over the melting range, then that of the liquid. Its zero is the solid at 0 K, so that a
 * solid body holds C T as every other body does. It freezes along the same curve: there is no
 * supercooling.
 *
 * <p>The curve must rise everywhere, so that temperature and enthalpy follow from each other. A
 * range narrower than {@link #NARROWEST} is spread to that width about its middle, with the
 * sensible heat of that width added to the latent heat, so that nothing changes outside it.
 *
 * <p>Immutable, thus thread-safe.
 */
public final class EnthalpyCurve {
  /** The narrowest melting range [K]; it moves a melting temperature by half of that at most. */
  public static final double NARROWEST = 0.002;

  private final double solidus;
  private final double liquidus;
  private final double solidCapacity;
  private final double liquidCapacity;
  private final double atSolidus;
  private final double atLiquidus;

  /**
   * The curve of a body.
   *
   * @param melting how its material melts
   * @param mass its mass [kg], above 0
   * @param solidSpecificHeat specific heat capacity of the solid [J/(kg K)], above 0
   */
  public EnthalpyCurve(Melting melting, double mass, double solidSpecificHeat) {
    solidCapacity = mass * solidSpecificHeat;
    liquidCapacity = mass * melting.liquidSpecificHeat();
    double width = melting.range().high() - melting.range().low();
    double spread = Math.max(0, NARROWEST - width) / 2;
    solidus = melting.range().low() - spread;
    liquidus = melting.range().high() + spread;
    atSolidus = solidCapacity * solidus;
    atLiquidus =
        atSolidus + mass * melting.latentHeat() + (solidCapacity + liquidCapacity) * spread;
  }

  /**
   * Tells the phase.
   *
   * @param enthalpy enthalpy [J]
   * @return -1 solid, 0 melting, 1 liquid
   */
  public int phase(double enthalpy) {
    if (enthalpy <= atSolidus) {
      return -1;
    }
    return enthalpy < atLiquidus ? 0 : 1;
  }

  /**
   * Returns the temperature.
   *
   * @param enthalpy enthalpy [J]
   * @return the temperature [K]
   */
  public double temperature(double enthalpy) {
    return switch (phase(enthalpy)) {
      case -1 -> enthalpy / solidCapacity;
      case 0 -> solidus + (enthalpy - atSolidus) / slope(0);
      default -> liquidus + (enthalpy - atLiquidus) / liquidCapacity;
    };
  }

  /**
   * Returns the enthalpy.
   *
   * @param temperature temperature [K]
   * @return the enthalpy [J]
   */
  public double enthalpy(double temperature) {
    if (temperature <= solidus) {
      return solidCapacity * temperature;
    }
    if (temperature < liquidus) {
      return atSolidus + slope(0) * (temperature - solidus);
    }
    return atLiquidus + liquidCapacity * (temperature - liquidus);
  }

  /**
   * Returns the enthalpy of a body that is partly liquid.
   *
   * @param fraction liquid part [-], 0 to 1
   * @return the enthalpy [J]
   */
  public double enthalpyAtFraction(double fraction) {
    return atSolidus + fraction * latent();
  }

  /**
   * Returns the heat taken per kelvin.
   *
   * @param phase -1 solid, 0 melting, 1 liquid
   * @return the slope of the curve [J/K]
   */
  public double slope(int phase) {
    return switch (phase) {
      case -1 -> solidCapacity;
      case 0 -> latent() / (liquidus - solidus);
      default -> liquidCapacity;
    };
  }

  /**
   * Returns the heat between solidus and liquidus.
   *
   * @return the heat [J]
   */
  public double latent() {
    return atLiquidus - atSolidus;
  }

  /**
   * Returns the liquid part.
   *
   * @param enthalpy enthalpy [J]
   * @return the part [-], 0 to 1
   */
  public double liquidFraction(double enthalpy) {
    return Math.max(0, Math.min(1, (enthalpy - atSolidus) / latent()));
  }
}
