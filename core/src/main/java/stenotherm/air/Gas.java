package stenotherm.air;

import stenotherm.base.Source;

/**
 * The gases of air that a parcel's balances follow. Argon counts as nitrogen.
 *
 * <p>Thread-safe.
 */
public enum Gas {
  /** Oxygen. */
  OXYGEN(0.031998, 1.793e-5, 1.724, Sources.OXYGEN_AND_NITROGEN),
  /**
   * Nitrogen and argon. In air it diffuses against oxygen, so that both have the coefficient of
   * that pair.
   */
  NITROGEN(0.028014, 1.793e-5, 1.724, Sources.OXYGEN_AND_NITROGEN),
  /** Carbon dioxide. */
  CARBON_DIOXIDE(0.044010, 1.381e-5, 1.81, Sources.REVIEW),
  /** Water vapour. */
  WATER_VAPOUR(0.018015, 2.178e-5, 1.81, Sources.REVIEW);

  private static final class Sources {
    static final Source OXYGEN_AND_NITROGEN =
        Source.memory(
            "Marrero and Mason 1972, J. Phys. Chem. Ref. Data 1:3",
            "oxygen and nitrogen: 1.13e-5 T^1.724 cm2/s at 1 atm");
    static final Source REVIEW =
        Source.memory(
            "Massman 1998, Atmos. Environ. 32:1111",
            "in air at 0 °C and 1 atm: H2O 0.2178, CO2 0.1381 cm2/s, as T^1.81 / p");
  }

  private final double molarMass;
  private final double atFreezing;
  private final double exponent;
  private final Source source;

  Gas(double molarMass, double atFreezing, double exponent, Source source) {
    this.molarMass = molarMass;
    this.atFreezing = atFreezing;
    this.exponent = exponent;
    this.source = source;
  }

  /**
   * Returns the molar mass.
   *
   * @return the molar mass [kg/mol]; standard atomic weights, from memory
   */
  public double molarMass() {
    return molarMass;
  }

  /**
   * Returns the diffusion coefficient in air, a power of temperature over pressure, by {@link
   * #source}.
   *
   * @param temperature temperature [K], meant for 250 to 370
   * @param pressure absolute pressure [Pa]
   * @return the coefficient [m2/s]
   */
  public double diffusivity(double temperature, double pressure) {
    return atFreezing
        * Math.pow(temperature / 273.15, exponent)
        * (StandardAtmosphere.SEA_LEVEL_PRESSURE / pressure);
  }

  /**
   * Returns where the diffusion coefficient comes from.
   *
   * @return the source
   */
  public Source source() {
    return source;
  }
}
