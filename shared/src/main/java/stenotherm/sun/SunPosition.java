package stenotherm.sun;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;
import stenotherm.base.Checks;
import stenotherm.base.Range;

/**
 * Where the middle of the sun's disc is seen, refraction included.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param zenithAngle angle from straight up, 0 to 180 [°]
 * @param azimuth angle from north by way of east, 0 to 360 [°]
 */
public record SunPosition(double zenithAngle, double azimuth) {
  /**
   * The standard atmosphere of almanacs [hPa], at sea level: refraction is a fiftieth of a degree
   * (Meeus 1998, Astronomical Algorithms, chapter 16, from memory).
   */
  private static final double PRESSURE_HPA = 1010;

  private static final double AIR_CELSIUS = 10;

  /**
   * For which the difference of clock and earth's rotation is estimated (Espenak and Meeus 2006).
   */
  private static final Range YEARS = new Range(-500, 2999);

  /**
   * Checks the angles.
   *
   * @throws stenotherm.base.InvalidInputException if an angle is out of its range
   */
  public SunPosition {
    Checks.within("zenith angle", zenithAngle, new Range(0, 180), "°", "0 is straight up.");
    Checks.within("azimuth", azimuth, new Range(0, 360), "°", "0 is north, 90 east.");
  }

  /**
   * Computes the position by the algorithm of I. Reda and A. Andreas, "Solar position algorithm for
   * solar radiation applications", NREL/TP-560-34302 (2008), good to 0.0003°, from sea level in an
   * atmosphere of 1010 hPa and 10 °C.
   *
   * @param site the place
   * @param localTime the local clock there
   * @return the position
   * @throws stenotherm.base.InvalidInputException if the year is not within -500 to 2999
   */
  public static SunPosition at(SunSite site, LocalDateTime localTime) {
    Checks.within("year", localTime.getYear(), YEARS, "", "The earth's turning is not known then.");
    OffsetDateTime time = localTime.atOffset(site.utcOffset());
    SolarPosition position =
        SPA.calculateSolarPosition(
            time.toZonedDateTime(),
            site.latitude(),
            site.longitude(),
            0,
            DeltaT.estimate(time.toLocalDate()),
            PRESSURE_HPA,
            AIR_CELSIUS);
    return new SunPosition(position.zenithAngle(), position.azimuth());
  }

  /**
   * Returns how high the sun stands.
   *
   * @return angle above the horizon, negative below it [°]
   */
  public double elevation() {
    return 90 - zenithAngle;
  }

  /**
   * Returns the cosine of the angle between the sun's rays and the normal of a vertical face;
   * negative if the sun stands behind the face.
   */
  double cosineOnVertical(double faceAzimuth) {
    return Math.sin(Math.toRadians(zenithAngle)) * Math.cos(Math.toRadians(azimuth - faceAzimuth));
  }

  double cosineOnHorizontal() {
    return Math.cos(Math.toRadians(zenithAngle));
  }
}
