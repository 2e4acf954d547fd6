package stenotherm.sun;

import java.time.ZoneOffset;
import stenotherm.base.Checks;
import stenotherm.base.Range;

/**
 * A point on the globe, with the clock that people there read.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param latitude north of the equator positive, −90 to 90 [°]
 * @param longitude east of Greenwich positive, −180 to 180 [°]
 * @param utcOffset the local clock's offset from UTC, summer time included
 */
public record SunSite(double latitude, double longitude, ZoneOffset utcOffset) {
  /**
   * Checks the coordinates.
   *
   * @throws stenotherm.base.InvalidInputException if a coordinate is out of its range
   */
  public SunSite {
    Checks.within("latitude", latitude, new Range(-90, 90), "°", "North is positive.");
    Checks.within(
        "longitude",
        longitude,
        new Range(-180, 180),
        "°",
        "East is positive: all of the Americas is negative.");
  }
}
