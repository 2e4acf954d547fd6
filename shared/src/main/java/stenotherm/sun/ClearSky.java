package stenotherm.sun;

import stenotherm.base.Checks;
import stenotherm.base.Range;

/**
 * Irradiance under a cloudless sky by the model of ASHRAE Handbook Fundamentals, chapter "Climatic
 * design information", as it stands since 2013 (C. A. Gueymard and D. Thevenard, "Revising ASHRAE
 * climatic data for design and standards, part 2: clear-sky solar radiation model", ASHRAE
 * Transactions 119(2), 2013). The equations were read in two programs that implement it; they agree
 * on all coefficients but the sign of the smallest, where a third and the printed handbook as
 * remembered have plus.
 *
 * <p>Range: any solar elevation above the horizon, any place that its station data describe. The
 * model knows no altitude of its own; the depths of a high station hold that.
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class ClearSky {
  /** Mean irradiance outside the atmosphere of the model [W/m2], its equation for E0. */
  private static final double SOLAR_CONSTANT = 1367;

  private ClearSky() {}

  /**
   * Computes the irradiance.
   *
   * @param depths how clear the sky is
   * @param sun where the sun stands
   * @param dayOfYear 1 on the first of January, to 366
   * @return the irradiance, none while the middle of the sun is below the horizon
   * @throws stenotherm.base.InvalidInputException if the day is out of its range
   */
  public static Irradiance irradiance(OpticalDepths depths, SunPosition sun, int dayOfYear) {
    Checks.within("day of year", dayOfYear, new Range(1, 366), "", "1 January is day 1.");
    if (sun.elevation() <= 0) {
      return Irradiance.NONE;
    }
    double outside = extraterrestrial(dayOfYear);
    double airMass = airMass(sun.elevation());
    return new Irradiance(
        outside * Math.exp(-depths.beam() * Math.pow(airMass, depths.beamExponent())),
        outside * Math.exp(-depths.diffuse() * Math.pow(airMass, depths.diffuseExponent())));
  }

  /** Irradiance outside the atmosphere, on a face turned to the sun [W/m2]. */
  static double extraterrestrial(int dayOfYear) {
    return SOLAR_CONSTANT * (1 + 0.033 * Math.cos(2 * Math.PI * (dayOfYear - 3) / 365));
  }

  /**
   * Air that light passes, relative to the sun straight up, at an elevation in degrees: F. Kasten
   * and A. T. Young, Applied Optics 28 (1989) 4735.
   */
  static double airMass(double elevation) {
    return 1
        / (Math.sin(Math.toRadians(elevation)) + 0.50572 * Math.pow(6.07995 + elevation, -1.6364));
  }
}
