package stenotherm.base;

import java.time.Duration;

/**
 * Converts durations between seconds and everyday units.
 *
 * <p>Stateless, thus thread-safe.
 */
public final class Times {
  /** One minute [s]. */
  public static final double MINUTE = 60;

  /** One hour [s]. */
  public static final double HOUR = 3600;

  /** One day [s]. */
  public static final double DAY = 86400;

  private Times() {}

  /**
   * Converts from a duration of any length; of very long ones some digits are lost.
   *
   * @param duration the duration
   * @return duration [s]
   */
  public static double seconds(Duration duration) {
    return duration.getSeconds() + duration.getNano() / 1e9;
  }

  /**
   * Converts from minutes.
   *
   * @param minutes duration [min]
   * @return duration [s]
   */
  public static double fromMinutes(double minutes) {
    return minutes * MINUTE;
  }

  /**
   * Converts to minutes.
   *
   * @param seconds duration [s]
   * @return duration [min]
   */
  public static double toMinutes(double seconds) {
    return seconds / MINUTE;
  }

  /**
   * Converts from hours.
   *
   * @param hours duration [h]
   * @return duration [s]
   */
  public static double fromHours(double hours) {
    return hours * HOUR;
  }

  /**
   * Converts to hours.
   *
   * @param seconds duration [s]
   * @return duration [h]
   */
  public static double toHours(double seconds) {
    return seconds / HOUR;
  }

  /**
   * Converts from days.
   *
   * @param days duration [d]
   * @return duration [s]
   */
  public static double fromDays(double days) {
    return days * DAY;
  }
}
