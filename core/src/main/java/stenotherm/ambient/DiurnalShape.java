package stenotherm.ambient;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Source;

/**
 * The course of outdoor temperature over a day: at each hour, by which fraction of the daily range
 * it is below the day's high.
 *
 * <p>The fractions are those of ASHRAE (2009 edition on; earlier editions printed another table,
 * whose high is at 15 h only). Its coldest hour is 5 h and its hottest 14 h to 15 h, in apparent
 * solar time. Between the hours the shape is linear. If the low or the high is stated at another
 * hour, the rising limb (5 h to 14 h in the table) and the falling limb (15 h to 5 h) are stretched
 * to fit; the hour of level temperature at the high stays an hour.
 *
 * <p>Limits: a clear or average day. A front, a warm night or a foggy morning has no such shape.
 *
 * <p>A value, thus thread-safe.
 *
 * @param hourOfLow hour of the day at which it is coldest [h], 0 to 22
 * @param hourOfHigh middle of the hottest hour [h], at least 2 h after the low and at most 22 h
 *     after it, below 24
 */
public record DiurnalShape(double hourOfLow, double hourOfHigh) {
  /** Fractions at 5 h to 14 h. */
  private static final double[] RISING = {
    1.00, 0.98, 0.91, 0.74, 0.55, 0.38, 0.23, 0.13, 0.05, 0.00
  };

  /** Fractions at 15 h to 24 h and on to 5 h. */
  private static final double[] FALLING = {
    0.00, 0.06, 0.14, 0.24, 0.39, 0.50, 0.59, 0.68, 0.75, 0.82, 0.88, 0.92, 0.95, 0.98, 1.00
  };

  private static final double HALF_LEVEL = 0.5;
  private static final double DAY = 24;
  private static final Range HOURS_OF_LOW = new Range(0, 22);
  private static final Range HOURS_BETWEEN = new Range(2, 22);

  /** Where the fractions come from. */
  public static final Source SOURCE =
      Source.read("ASHRAE Handbook - Fundamentals 2021", "ch. 14, Table 6");

  /** The shape in apparent solar time, as printed: low at 5 h, high from 14 h to 15 h. */
  public static final DiurnalShape SOLAR_TIME = new DiurnalShape(5, 14.5);

  /**
   * Checks the hours.
   *
   * @throws InvalidInputException if an hour is out of its range
   */
  public DiurnalShape {
    Checks.within(
        "hour of the daily low", hourOfLow, HOURS_OF_LOW, "h", "It is usually near sunrise.");
    Checks.within(
        "hours from the daily low to the high",
        hourOfHigh - hourOfLow,
        HOURS_BETWEEN,
        "h",
        "The low comes before the high of the same day.");
    if (hourOfHigh >= DAY) {
      throw new InvalidInputException(
          "hour of the daily high", Checks.show(hourOfHigh, "h") + " must be below 24 h");
    }
  }

  /**
   * The shape on a clock that is ahead of apparent solar time, as under daylight saving.
   *
   * @param clockAhead clock time less apparent solar time [h], -5 to 9
   * @return the shape in clock time
   * @throws InvalidInputException if an hour leaves its range
   */
  public static DiurnalShape onClock(double clockAhead) {
    return new DiurnalShape(SOLAR_TIME.hourOfLow + clockAhead, SOLAR_TIME.hourOfHigh + clockAhead);
  }

  /**
   * Returns the fraction of the daily range by which it is colder than the day's high, for a day
   * among equal days.
   *
   * @param hour hour of the day [h], any finite number: the shape repeats every 24 h
   * @return the fraction [-], 0 to 1
   * @throws InvalidInputException if the hour is not finite
   */
  public double fractionBelowHigh(double hour) {
    Checks.finite("hour of the day", hour, "h");
    double sinceLow = hour - hourOfLow;
    sinceLow -= DAY * Math.floor(sinceLow / DAY);
    if (sinceLow <= risingHours()) {
      return interpolate(RISING, sinceLow / risingHours());
    }
    double sinceHigh = sinceLow - risingHours() - 2 * HALF_LEVEL;
    return sinceHigh <= 0 ? 0 : interpolate(FALLING, sinceHigh / fallingHours());
  }

  /** Hours from the low to the start of the hottest hour. */
  double risingHours() {
    return hourOfHigh - HALF_LEVEL - hourOfLow;
  }

  /** Hours from the end of the hottest hour to the next low. */
  double fallingHours() {
    return DAY - 2 * HALF_LEVEL - risingHours();
  }

  /** Number of knots of the rising limb, both ends included. */
  int risingKnots() {
    return RISING.length;
  }

  /** Number of knots of the falling limb, both ends included. */
  int fallingKnots() {
    return FALLING.length;
  }

  /** Hour of a knot of the rising limb. */
  double risingHour(int knot) {
    return hourOfLow + risingHours() * knot / (RISING.length - 1);
  }

  /** Hour of a knot of the falling limb; beyond 24 for what falls on the next day. */
  double fallingHour(int knot) {
    return hourOfHigh + HALF_LEVEL + fallingHours() * knot / (FALLING.length - 1);
  }

  /** Fraction at a knot of the rising limb. */
  double risingFraction(int knot) {
    return RISING[knot];
  }

  /** Fraction at a knot of the falling limb. */
  double fallingFraction(int knot) {
    return FALLING[knot];
  }

  private static double interpolate(double[] fractions, double share) {
    double position = Math.min(share, 1) * (fractions.length - 1);
    int left = Math.min((int) position, fractions.length - 2);
    return fractions[left] + (position - left) * (fractions[left + 1] - fractions[left]);
  }
}
