package stenotherm.ambient;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Source;

/**
 * Transport properties of air for convection correlations.
 *
 * <p>A value, thus thread-safe.
 *
 * @param conductivity thermal conductivity [W/(m K)], above 0
 * @param kinematicViscosity kinematic viscosity [m2/s], above 0
 * @param diffusivity thermal diffusivity [m2/s], above 0
 */
public record AirProperties(double conductivity, double kinematicViscosity, double diffusivity) {
  /**
   * Where {@link #dry} comes from. Against Table A.4 of Incropera and DeWitt (from memory), whose
   * densities are those of 100 kPa, it is within 1 % from 250 K to 400 K.
   */
  public static final Source SOURCE =
      Source.memory(
          "U.S. Standard Atmosphere 1976",
          "eqs. 51 and 53 for viscosity and conductivity; perfect gas; specific heat 1007 J/(kg"
              + " K)");

  /** Pressure of the standard atmosphere at sea level [Pa]. */
  public static final double SEA_LEVEL_PRESSURE = 101_325;

  private static final Range TEMPERATURES = new Range(200, 450);
  private static final Range PRESSURES = new Range(30_000, 110_000);
  private static final double GAS_CONSTANT = 287.05;
  private static final double SPECIFIC_HEAT = 1007;

  /**
   * Checks the properties.
   *
   * @throws InvalidInputException if one is not a finite number above 0
   */
  public AirProperties {
    Checks.positive("conductivity of air", conductivity, "W/(m K)");
    Checks.positive("kinematic viscosity of air", kinematicViscosity, "m2/s");
    Checks.positive("thermal diffusivity of air", diffusivity, "m2/s");
  }

  /**
   * Dry air.
   *
   * @param temperature temperature, for a correlation that of the film: the mean of surface and air
   *     [K], 200 to 450
   * @param pressure pressure [Pa], 30 000 to 110 000
   * @return its properties
   * @throws InvalidInputException if an argument is out of its range
   */
  public static AirProperties dry(double temperature, double pressure) {
    Checks.within(
        "temperature of air", temperature, TEMPERATURES, "K", "Beyond, the laws are untested.");
    checkedPressure(pressure);
    double rootCubed = temperature * Math.sqrt(temperature);
    double viscosity = 1.458e-6 * rootCubed / (temperature + 110.4);
    double conductivity =
        2.64638e-3 * rootCubed / (temperature + 245.4 * Math.pow(10, -12 / temperature));
    double density = pressure / (GAS_CONSTANT * temperature);
    return new AirProperties(
        conductivity, viscosity / density, conductivity / (density * SPECIFIC_HEAT));
  }

  /** Pressure as a multiple of that at sea level. */
  static double relativePressure(double pressure) {
    return checkedPressure(pressure) / SEA_LEVEL_PRESSURE;
  }

  private static double checkedPressure(double pressure) {
    return Checks.within(
        "pressure of air",
        pressure,
        PRESSURES,
        "Pa",
        "Pressures are absolute, in pascals: the sea-level atmosphere has 101 325 Pa.");
  }

  /**
   * Returns the Prandtl number.
   *
   * @return kinematic viscosity over thermal diffusivity
   */
  public double prandtl() {
    return kinematicViscosity / diffusivity;
  }
}
