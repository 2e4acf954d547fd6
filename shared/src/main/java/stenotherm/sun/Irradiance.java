package stenotherm.sun;

import stenotherm.base.Checks;

/**
 * Solar power near the ground.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param directNormal of the beam, on a face turned to the sun [W/m2]
 * @param diffuseHorizontal of the rest of the sky, on a horizontal face [W/m2]
 */
public record Irradiance(double directNormal, double diffuseHorizontal) {
  /** No sun. */
  public static final Irradiance NONE = new Irradiance(0, 0);

  /**
   * Checks the values.
   *
   * @throws stenotherm.base.InvalidInputException if one is negative or not finite
   */
  public Irradiance {
    Checks.notNegative("direct normal irradiance", directNormal, "W/m2");
    Checks.notNegative("diffuse horizontal irradiance", diffuseHorizontal, "W/m2");
  }

  /**
   * Returns what falls on horizontal ground.
   *
   * @param sun where the sun stands
   * @return beam and diffuse light together [W/m2]
   */
  public double globalHorizontal(SunPosition sun) {
    return directNormal * Math.max(0, sun.cosineOnHorizontal()) + diffuseHorizontal;
  }
}
