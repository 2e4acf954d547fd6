package stenotherm.warmer;

import stenotherm.base.Checks;

/**
 * The film that meters the air to the powder of a warmer.
 *
 * <p>A value, thus thread-safe.
 *
 * @param permeance oxygen through the film for a difference of its partial pressure, at sea level
 *     [mol/(s m2 Pa)]
 * @param area breathable area [m2]
 * @param transport how the oxygen passes the pores
 */
public record AirFilm(double permeance, double area, Transport transport) {
  /** Pressure at which the permeance is stated [Pa]: one atmosphere, exact by definition. */
  static final double SEA_LEVEL = 101_325;

  /**
   * How oxygen passes the pores of a film.
   *
   * <p>Thread-safe.
   */
  public enum Transport {
    /** Molecules hit the walls of narrow pores: the permeance does not depend on the pressure. */
    KNUDSEN,
    /** Oxygen diffuses through the air in wide pores: thin air lets it through more easily. */
    FICK
  }

  /**
   * Checks the values.
   *
   * @throws stenotherm.base.InvalidInputException if one is not above 0
   */
  public AirFilm {
    Checks.positive("permeance of the film", permeance, "mol/(s m2 Pa)");
    Checks.positive("area of the film", area, "m2");
    Checks.given("transport through the film", transport);
  }

  /**
   * Returns what the film lets through.
   *
   * @param open part of the film that is not covered [-], 0 to 1
   * @param pressure total pressure of the air [Pa]
   * @return oxygen for a difference of its partial pressure [mol/(s Pa)]
   */
  public double conductance(double open, double pressure) {
    double thinAir = transport == Transport.FICK ? SEA_LEVEL / pressure : 1;
    return permeance * area * open * thinAir;
  }
}
