package stenotherm.sun;

import stenotherm.base.Checks;
import stenotherm.base.Range;

/**
 * The sky over a place and the ground under it.
 *
 * <p>Clouds take their part of the global irradiance by 1 − 0.75 N^3.4 of the cloud cover N (F.
 * Kasten and G. Czeplak, Solar Energy 24 (1980) 177, from memory: means over many hours at Hamburg;
 * a single cloud does more or less). It is assumed that the beam keeps the uncovered part 1 − N of
 * its clear-sky value and that the rest is diffuse.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param clear how clear the sky is between the clouds
 * @param cloudCover the part of the sky that is covered, 0 to 1 [-]
 * @param groundReflectance the part of the light that the ground reflects, 0 to 1 [-]
 */
public record Sky(OpticalDepths clear, double cloudCover, double groundReflectance) {
  /**
   * Reflectance of most ground: 0.2 [-], ASHRAE Handbook Fundamentals, from memory; fresh snow has
   * about 0.8.
   */
  public static final double COMMON_GROUND = 0.2;

  /**
   * Checks the sky.
   *
   * @throws stenotherm.base.InvalidInputException if a part is not within 0 to 1
   */
  public Sky {
    Range part = new Range(0, 1);
    Checks.within("cloud cover", cloudCover, part, "", "Half a sky of cloud is 0.5.");
    Checks.within(
        "ground reflectance", groundReflectance, part, "", "Grass has 0.2, fresh snow 0.8.");
  }

  /**
   * A sky without clouds over common ground: the most sun, thus the cautious side for overheating.
   *
   * @param clear how clear the sky is
   * @return the sky
   */
  public static Sky cloudless(OpticalDepths clear) {
    return new Sky(clear, 0, COMMON_GROUND);
  }

  /**
   * Computes the irradiance near the ground.
   *
   * @param sun where the sun stands
   * @param dayOfYear 1 on the first of January, to 366
   * @return the irradiance, none while the middle of the sun is below the horizon
   * @throws stenotherm.base.InvalidInputException if the day is out of its range
   */
  public Irradiance irradiance(SunPosition sun, int dayOfYear) {
    Irradiance cloudless = ClearSky.irradiance(clear, sun, dayOfYear);
    double direct = cloudless.directNormal() * (1 - cloudCover);
    double global = cloudless.globalHorizontal(sun) * (1 - 0.75 * Math.pow(cloudCover, 3.4));
    double diffuse = global - direct * Math.max(0, sun.cosineOnHorizontal());
    return new Irradiance(direct, Math.max(0, diffuse));
  }

  /** What falls on a face that looks up [W/m2]. */
  double onUpperFace(SunPosition sun, int dayOfYear) {
    return irradiance(sun, dayOfYear).globalHorizontal(sun);
  }

  /** What falls on a face that looks down, at some height above sunlit ground [W/m2]. */
  double onLowerFace(SunPosition sun, int dayOfYear) {
    return groundReflectance * onUpperFace(sun, dayOfYear);
  }

  /** What falls on a face that looks to an azimuth in degrees [W/m2]. */
  double onVerticalFace(SunPosition sun, int dayOfYear, double faceAzimuth) {
    Irradiance irradiance = irradiance(sun, dayOfYear);
    double cosine = sun.cosineOnVertical(faceAzimuth);
    double direct = irradiance.directNormal() * Math.max(0, cosine);
    double sky = irradiance.diffuseHorizontal() * verticalShare(cosine);
    double ground = groundReflectance * irradiance.globalHorizontal(sun) / 2;
    return direct + sky + ground;
  }

  /**
   * Diffuse light on a vertical face over that on a horizontal one. Clear sky: more from around the
   * sun (J. L. Threlkeld 1963, as in ASHRAE Handbook Fundamentals, from memory). Cloud: half, the
   * part of an evenly bright sky that the face sees. Between them by cloud cover, which is assumed.
   */
  private double verticalShare(double cosine) {
    double clearShare = Math.max(0.45, 0.55 + 0.437 * cosine + 0.313 * cosine * cosine);
    return (1 - cloudCover) * clearShare + cloudCover * 0.5;
  }
}
