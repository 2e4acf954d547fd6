package stenotherm.air;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Source;

/**
 * A panel of foam, through which gases diffuse but no air flows. Other gases diffuse through it in
 * proportion to their diffusivities in air.
 *
 * <p>A value, thus thread-safe.
 *
 * @param area area [m2]
 * @param thickness thickness [m]
 * @param oxygenDiffusivity effective diffusion coefficient of oxygen at 20 °C and 101 325 Pa
 *     [m2/s], 0 for foam that is tight
 */
public record FoamPanel(double area, double thickness, double oxygenDiffusivity)
    implements Opening {
  /** Usual effective diffusion coefficient of oxygen in foam of expanded polystyrene [m2/s]. */
  public static final double EXPANDED_POLYSTYRENE = 2e-7;

  /** What that of expanded polystyrene may be [m2/s]; it decides much and is hardly known. */
  public static final Range EXPANDED_POLYSTYRENE_RANGE = new Range(1e-7, 3e-7);

  /** Where the values of expanded polystyrene come from. */
  public static final Source SOURCE =
      Source.derived(
          "Dunne et al. 2008, AIChE Annual Meeting (abstract: 1e-7 m2/s by order of magnitude, test"
              + " gas not stated)",
          "and 3.3e-7 m2/s from the vapour resistance factor 60 of ISO 10456; the value between"
              + " them is assumed");

  private static final double REFERENCE =
      Gas.OXYGEN.diffusivity(293.15, StandardAtmosphere.SEA_LEVEL_PRESSURE);

  /**
   * Checks the values.
   *
   * @throws InvalidInputException if a size is not above 0, or the coefficient is negative or above
   *     that of free air
   */
  public FoamPanel {
    Checks.positive("area of a foam panel", area, "m2");
    Checks.positive("thickness of a foam panel", thickness, "m");
    Checks.within(
        "oxygen diffusivity of foam",
        oxygenDiffusivity,
        new Range(0, REFERENCE),
        "m2/s",
        "Foam lets less through than air: expanded polystyrene about 2e-7 m2/s, tight foam 0.");
  }

  @Override
  public double conductance(Gas gas, double temperature, double pressure) {
    double ratio = gas.diffusivity(temperature, pressure) / REFERENCE;
    return oxygenDiffusivity * ratio * area / thickness;
  }

  @Override
  public double laminarResistance(double temperature) {
    return Double.POSITIVE_INFINITY;
  }

  @Override
  public double inertialResistance(double density) {
    return Double.POSITIVE_INFINITY;
  }

  @Override
  public double reynolds(double flow, double temperature, double density) {
    return 0;
  }
}
