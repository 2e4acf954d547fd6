package stenotherm.ambient;

import stenotherm.air.StandardAtmosphere;
import stenotherm.base.Checks;
import stenotherm.base.HeatDirection;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Radiation;

/**
 * The exchange of heat between a surface and its surroundings: convection to the air and linearised
 * radiation to what it faces, both at one ambient temperature (form of ISO 6946:2017, Annex C).
 *
 * <p>A value, thus thread-safe.
 *
 * @param convective convective coefficient [W/(m2 K)], 0 or above
 * @param radiative radiative coefficient [W/(m2 K)], 0 or above; the two are not both 0
 */
public record SurfaceFilm(double convective, double radiative) {
  /**
   * Checks the coefficients.
   *
   * @throws InvalidInputException if one is negative, or both are 0
   */
  public SurfaceFilm {
    Checks.notNegative("convective coefficient", convective, "W/(m2 K)");
    Checks.notNegative("radiative coefficient", radiative, "W/(m2 K)");
    Checks.positive("surface coefficient", convective + radiative, "W/(m2 K)");
  }

  /**
   * The film of a surface that faces a large room or the open, at sea level.
   *
   * @param movement how the air moves
   * @param heatFlow direction of the heat
   * @param emissivity emissivity of the surface [-], 0.01 to 1; about 0.9 unless metallic
   * @param meanTemperature mean of the surface's and the surroundings' temperature [K]
   * @return the film
   * @throws InvalidInputException if the emissivity is out of its range or the temperature is not
   *     absolute
   */
  public static SurfaceFilm of(
      AirMovement movement, HeatDirection heatFlow, double emissivity, double meanTemperature) {
    return of(
        movement, heatFlow, emissivity, meanTemperature, StandardAtmosphere.SEA_LEVEL_PRESSURE);
  }

  /**
   * The film of a surface that faces a large room or the open.
   *
   * @param movement how the air moves
   * @param heatFlow direction of the heat
   * @param emissivity emissivity of the surface [-], 0.01 to 1; about 0.9 unless metallic
   * @param meanTemperature mean of the surface's and the surroundings' temperature [K]
   * @param pressure pressure of the air [Pa], 30 000 to 110 000
   * @return the film
   * @throws InvalidInputException if the emissivity or the pressure is out of its range or the
   *     temperature is not absolute
   */
  public static SurfaceFilm of(
      AirMovement movement,
      HeatDirection heatFlow,
      double emissivity,
      double meanTemperature,
      double pressure) {
    return new SurfaceFilm(
        movement.convective(heatFlow, pressure),
        Radiation.emissivity(emissivity) * Radiation.blackCoefficient(meanTemperature));
  }

  /**
   * Returns the surface coefficient.
   *
   * @return convective plus radiative coefficient [W/(m2 K)]
   */
  public double coefficient() {
    return convective + radiative;
  }

  /**
   * Returns the surface resistance.
   *
   * @return 1 over the coefficient [m2 K/W]
   */
  public double resistance() {
    return 1 / coefficient();
  }
}
