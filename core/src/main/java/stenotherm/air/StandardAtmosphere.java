package stenotherm.air;

import stenotherm.base.Checks;
import stenotherm.base.Range;
import stenotherm.base.Source;

/**
 * Pressure of the air against altitude.
 *
 * <p>Stateless, thus thread-safe.
 */
public final class StandardAtmosphere {
  /** Where the law comes from. */
  public static final Source SOURCE =
      Source.memory(
          "ICAO Standard Atmosphere, Doc 7488, and U.S. Standard Atmosphere 1976",
          "troposphere: 101 325 Pa (1 - 2.25577e-5 z)^5.25588");

  /** Pressure of the standard atmosphere at sea level [Pa], {@link #SOURCE}. */
  public static final double SEA_LEVEL_PRESSURE = 101_325;

  private static final Range PRESSURES = new Range(30_000, 110_000);

  /** From the shores of the lowest lakes to the highest mountains [m]. */
  private static final Range ALTITUDES = new Range(-500, 9000);

  /**
   * Where parcels come [m]: the highest towns lie at about 5100 m, and cabins and holds of aircraft
   * are kept at the pressure of about 2400 m or less (both from memory). More is likely in feet.
   */
  private static final Range PLACES = new Range(-500, 5500);

  private StandardAtmosphere() {}

  /**
   * Returns the pressure at an altitude, by {@link #SOURCE}.
   *
   * @param altitude height above sea level, or that to which a cabin is pressurised [m], -500 to
   *     9000
   * @return the pressure [Pa]
   * @throws stenotherm.base.InvalidInputException if the altitude is out of its range
   */
  public static double pressure(double altitude) {
    Checks.within("altitude", altitude, ALTITUDES, "m", "");
    return SEA_LEVEL_PRESSURE * Math.pow(1 - 2.25577e-5 * altitude, 5.25588);
  }

  /**
   * Returns a pressure as a multiple of that at sea level.
   *
   * @param pressure absolute pressure [Pa], 30 000 to 110 000
   * @return the ratio [-]
   * @throws stenotherm.base.InvalidInputException if the pressure is out of its range
   */
  public static double relativePressure(double pressure) {
    return checkedPressure(pressure) / SEA_LEVEL_PRESSURE;
  }

  /** Checks that a pressure is one of outside air. */
  static double checkedPressure(double pressure) {
    return Checks.within(
        "pressure of air",
        pressure,
        PRESSURES,
        "Pa",
        "Pressures are absolute, in pascals: the sea-level atmosphere has 101 325 Pa.");
  }

  /**
   * Checks the altitude of a place where a parcel may come.
   *
   * @param field name of the input
   * @param altitude the altitude [m]
   * @return the altitude [m]
   * @throws stenotherm.base.InvalidInputException if it is not within -500 m to 5500 m
   */
  public static double checked(String field, double altitude) {
    return Checks.within(
        field,
        altitude,
        PLACES,
        "m",
        "Cabins and holds of aircraft are kept at 2400 m or less: 8000 ft are 2438 m.");
  }
}
