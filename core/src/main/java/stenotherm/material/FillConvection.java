package stenotherm.material;

import java.util.Optional;
import stenotherm.base.Checks;
import stenotherm.base.Range;
import stenotherm.base.Source;

/**
 * Whether the air in a fill begins to move when the fill is warmer below than above. Two numbers
 * decide: the Darcy-Rayleigh number of the whole layer, for air that seeps through the fill, and
 * the Rayleigh number of a single void.
 *
 * <p>Ra_D = g beta dT K H / (nu a_m), with the permeability K, the height H and a_m the
 * conductivity of the fill over the volumetric heat capacity of air; Ra_d = g beta (dT/H) d^4 / (nu
 * a).
 *
 * <p>Limits: a horizontal layer of infinite extent between airtight surfaces. Beside warm walls air
 * moves slowly at any difference. How much more heat a convecting fill transfers is not computed.
 *
 * <p>A value, thus thread-safe.
 *
 * @param conductivity conductivity of the fill at rest [W/(m K)], above 0
 * @param voidSize mean size of the voids [m], above 0
 * @param permeability range of the permeability [m2], above 0
 * @param source where the permeability comes from
 */
public record FillConvection(
    double conductivity, double voidSize, Range permeability, Source source) {
  /** The Darcy-Rayleigh number at which a layer begins to convect: 4 pi squared. */
  public static final double CRITICAL_DARCY_RAYLEIGH = 4 * Math.PI * Math.PI;

  /** Where that comes from. */
  public static final Source DARCY_SOURCE =
      Source.memory(
          "Horton and Rogers 1945, J. Appl. Phys. 16:367-370; Lapwood 1948, Proc. Camb. Phil. Soc."
              + " 44:508-521",
          "critical number of a porous layer between tight isothermal surfaces");

  /**
   * The Rayleigh number at which the air in a flat void begins to convect, {@link
   * #RAYLEIGH_SOURCE}.
   */
  public static final double CRITICAL_RAYLEIGH = 1708;

  /** Where that comes from. */
  public static final Source RAYLEIGH_SOURCE =
      Source.memory(
          "Pellew and Southwell 1940, Proc. R. Soc. A 176:312-343",
          "layer between two solid surfaces, 1707.8");

  /** Where the permeability of voids comes from. */
  public static final Source PERMEABILITY_SOURCE =
      Source.derived(
          "Carman 1937, Trans. Inst. Chem. Eng. 15:150-166",
          "Kozeny's constant of 5 (from memory), K = porosity d^2 / 80 with the mean void as"
              + " hydraulic diameter and a porosity of 0.95; a factor of 3 either way is assumed");

  /** Porosity of a loose fill [-], assumed: see {@link #PERMEABILITY_SOURCE}. */
  private static final double POROSITY = 0.95;

  private static final double KOZENY = 80;
  private static final double SPREAD = 3;

  /** Standard gravity [m/s2], exact by definition (CGPM 1901). */
  private static final double GRAVITY = 9.80665;

  /** Kinematic viscosity of air at 20 °C [m2/s]; Incropera and DeWitt, Table A.4 (from memory). */
  private static final double VISCOSITY = 1.51e-5;

  private static final double VISCOSITY_TEMPERATURE = 293.15;

  /**
   * Exponent of absolute temperature in the kinematic viscosity and the diffusivity of air: 1 by
   * the density, 0.75 assumed for viscosity and conductivity.
   */
  private static final double GROWTH = 1.75;

  /**
   * Checks the numbers.
   *
   * @throws stenotherm.base.InvalidInputException if one is not above 0
   */
  public FillConvection {
    Checks.given("permeability of a fill", permeability);
    Checks.given("source of a fill", source);
    Checks.positive("conductivity of a fill", conductivity, "W/(m K)");
    Checks.positive("size of the voids of a fill", voidSize, "m");
    Checks.positive("permeability of a fill", permeability.low(), "m2");
    Checks.positive("permeability of a fill", permeability.high(), "m2");
  }

  /**
   * The convection of a material whose voids are known.
   *
   * @param fill the fill
   * @return its convection; empty if its behaviour is not {@link Behaviour.Voids}
   */
  public static Optional<FillConvection> of(Material fill) {
    return fill.behaviour()
        .fillLaw()
        .map(FillLaw::voidSize)
        .filter(size -> size > 0)
        .map(size -> ofVoids(fill, size));
  }

  private static FillConvection ofVoids(Material fill, double size) {
    double permeability = POROSITY * size * size / KOZENY;
    return new FillConvection(
        fill.conductivity(),
        size,
        new Range(permeability / SPREAD, permeability * SPREAD),
        PERMEABILITY_SOURCE);
  }

  /**
   * Returns the Darcy-Rayleigh number at the ends of the range of permeability.
   *
   * @param height height of the layer [m], above 0
   * @param difference how much warmer the layer is below than above [K], 0 or above
   * @param meanTemperature mean temperature [K]
   * @return the numbers [-]
   * @throws stenotherm.base.InvalidInputException if a value is out of its range
   */
  public Range darcyRayleigh(double height, double difference, double meanTemperature) {
    double perPermeability =
        buoyancy(height, difference, meanTemperature)
            * height
            * height
            / (viscosity(meanTemperature)
                * conductivity
                / Materials.STILL_AIR.volumetricHeatCapacity());
    return new Range(permeability.low() * perPermeability, permeability.high() * perPermeability);
  }

  /**
   * Returns the Rayleigh number of one void.
   *
   * @param height height of the layer [m], above 0
   * @param difference how much warmer the layer is below than above [K], 0 or above
   * @param meanTemperature mean temperature [K]
   * @return the number [-]
   * @throws stenotherm.base.InvalidInputException if a value is out of its range
   */
  public double voidRayleigh(double height, double difference, double meanTemperature) {
    double diffusivity =
        Materials.STILL_AIR.diffusivity()
            * Math.pow(meanTemperature / VISCOSITY_TEMPERATURE, GROWTH);
    return buoyancy(height, difference, meanTemperature)
        * Math.pow(voidSize, 4)
        / (viscosity(meanTemperature) * diffusivity);
  }

  /** Buoyancy per unit height, g beta dT / H [1/s2]. */
  private static double buoyancy(double height, double difference, double meanTemperature) {
    Checks.positive("height of a fill", height, "m");
    Checks.notNegative("temperature difference over a fill", difference, "K");
    Checks.temperature("mean temperature of a fill", meanTemperature);
    return GRAVITY / meanTemperature * difference / height;
  }

  private static double viscosity(double temperature) {
    return VISCOSITY * Math.pow(temperature / VISCOSITY_TEMPERATURE, GROWTH);
  }
}
