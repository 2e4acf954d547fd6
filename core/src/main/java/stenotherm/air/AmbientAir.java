package stenotherm.air;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Source;

/**
 * The air outside a parcel.
 *
 * <p>A value, thus thread-safe.
 *
 * @param temperature temperature [K], 233.15 to 350
 * @param pressure absolute pressure [Pa], 30 000 to 110 000
 * @param relativeHumidity vapour pressure over its saturation [-], 0 to 1; below 0 °C over ice
 */
public record AmbientAir(double temperature, double pressure, double relativeHumidity) {
  /** Composition of dry air. */
  public static final Source DRY_AIR =
      Source.memory(
          "NOAA Global Monitoring Laboratory, annual means; U.S. Standard Atmosphere 1976",
          "oxygen 20.95 %, carbon dioxide 420 ppm (2023), the rest nitrogen and argon");

  /** Temperatures of air [K]: as far as its vapour is known. */
  public static final Range TEMPERATURES = new Range(MoistAir.SATURATION_RANGE.low(), 350);

  private static final Gas[] GASES = Gas.values();

  /** Part of oxygen in dry air [-], {@link #DRY_AIR}. */
  private static final double DRY_OXYGEN = 0.2095;

  /** Part of carbon dioxide in dry air [-], {@link #DRY_AIR}. */
  private static final double DRY_CARBON_DIOXIDE = 420e-6;

  /**
   * Checks the values.
   *
   * @throws InvalidInputException if a value is out of its range
   */
  public AmbientAir {
    Checks.within(
        "temperature of ambient air",
        temperature,
        TEMPERATURES,
        "K",
        "Temperatures are absolute, in kelvin: 20 °C is 293.15 K.");
    StandardAtmosphere.checkedPressure(pressure);
    Checks.within(
        "relative humidity",
        relativeHumidity,
        new Range(0, 1),
        "",
        "It is a fraction: 50 % are 0.5.");
  }

  /**
   * Returns the partial pressure of water vapour.
   *
   * @return the pressure [Pa]
   */
  public double vapourPressure() {
    return relativeHumidity * MoistAir.saturationPressure(temperature);
  }

  /**
   * Returns the share of one gas in all molecules.
   *
   * @param gas the gas
   * @return its mole fraction [-]; the four sum to 1
   */
  public double fraction(Gas gas) {
    return fraction(gas, vapourPressure() / pressure);
  }

  /** The mole fractions of all gases, in the order of the enum. */
  void fractions(double[] into) {
    double vapour = vapourPressure() / pressure;
    for (Gas gas : GASES) {
      into[gas.ordinal()] = fraction(gas, vapour);
    }
  }

  private static double fraction(Gas gas, double vapour) {
    return switch (gas) {
      case OXYGEN -> DRY_OXYGEN * (1 - vapour);
      case CARBON_DIOXIDE -> DRY_CARBON_DIOXIDE * (1 - vapour);
      case NITROGEN -> (1 - DRY_OXYGEN - DRY_CARBON_DIOXIDE) * (1 - vapour);
      case WATER_VAPOUR -> vapour;
    };
  }

  /**
   * Returns the density.
   *
   * @return the density [kg/m3]
   */
  public double density() {
    return MoistAir.density(temperature, pressure, vapourPressure());
  }
}
