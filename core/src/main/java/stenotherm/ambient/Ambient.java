package stenotherm.ambient;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;

/**
 * Makes ambient temperatures over time [K against s]. For daily lows and highs see {@link
 * DailyExtremes}.
 *
 * <p>Stateless, thus thread-safe; so are the functions it makes.
 */
public final class Ambient {
  private static final Range OFFSETS = new Range(-60, 60);
  private static final Range LAGS = new Range(0, 7 * Times.DAY);

  private Ambient() {}

  /**
   * A temperature that never changes.
   *
   * @param temperature the temperature [K]
   * @return the function, defined at all times
   * @throws InvalidInputException if the temperature is not within 200 K to 350 K
   */
  public static TimeFunction constant(double temperature) {
    return TimeFunction.constant(checked("ambient temperature", temperature));
  }

  /**
   * Readings an hour apart, linear between them.
   *
   * @param firstTime time of the first reading [s]
   * @param temperatures the readings in the order of time [K]; at least two; copied
   * @return the function; before the first and after the last reading it throws {@link
   *     InvalidInputException}
   * @throws InvalidInputException if there are fewer than two readings, the time is not finite or a
   *     reading is not within 200 K to 350 K
   */
  public static TimeFunction hourly(double firstTime, double[] temperatures) {
    Checks.finite("time of the first hourly reading", firstTime, "s");
    double[] times = new double[temperatures.length];
    for (int hour = 0; hour < times.length; hour++) {
      times[hour] = firstTime + hour * Times.HOUR;
    }
    return series(times, temperatures);
  }

  /**
   * Readings at any times, linear between them. Two readings at one time are a jump, and the later
   * one holds from then on.
   *
   * @param times times of the readings, ascending [s]; copied
   * @param temperatures the reading at each time [K]; at least two; copied
   * @return the function; before the first and after the last reading it throws {@link
   *     InvalidInputException}
   * @throws InvalidInputException if there are fewer than two readings, the columns differ in
   *     length, the times do not ascend or a reading is not within 200 K to 350 K
   */
  public static TimeFunction series(double[] times, double[] temperatures) {
    if (temperatures.length < 2) {
      throw new InvalidInputException(
          "ambient series", "needs at least two readings; for one use a constant");
    }
    for (int row = 0; row < temperatures.length; row++) {
      checked("ambient temperature, reading " + (row + 1), temperatures[row]);
    }
    TimeFunction table = TimeFunction.table(times, temperatures);
    return new CoveredFunction(table, new Range(times[0], times[times.length - 1]));
  }

  /**
   * The air in a van, a hall or a depot that follows the outdoor temperature, lagged and damped: T
   * = y + offset, lag dy/dt = outdoors - y, y beginning at the outdoor temperature. A daily swing
   * of period P is damped to 1/sqrt(1 + (2 pi lag/P)^2) of itself: 0.97 for a lag of 1 h, 0.69 for
   * 4 h. Exact for outdoor temperatures that are linear between breakpoints, as tables and {@link
   * DailyExtremes} are; others are taken as linear over each ten minutes.
   *
   * @param outdoors outdoor temperature [K against s]
   * @param times from when to when the result is needed [s]; the outdoor temperature must be known
   *     there
   * @param offset how much warmer it is on average [K], -60 to 60
   * @param lag time constant [s], 0 to 7 days; 0 for none
   * @return the function; at other times it throws {@link InvalidInputException}
   * @throws InvalidInputException if a value is out of its range, the outdoor temperature is not
   *     known, or the result is not within 200 K to 350 K
   */
  public static TimeFunction following(
      TimeFunction outdoors, Range times, double offset, double lag) {
    checkFollowing(offset, lag);
    return new CoveredFunction(new LaggedFunction(outdoors, times, offset, lag), times);
  }

  /**
   * What a parcel meets that lies among others, which have come with it: lag dy/dt = air - y,
   * beginning at a temperature of its own. Exact for air that is linear between breakpoints.
   *
   * @param air temperature of the air around the pile [K against s]
   * @param times from when to when the result is needed [s]
   * @param start temperature at the beginning [K]
   * @param lag time constant [s], above 0 and up to 7 days
   * @return the function; at other times it throws {@link InvalidInputException}
   * @throws InvalidInputException if a value is out of its range, or the temperature of the air is
   *     not known
   */
  public static TimeFunction lagging(TimeFunction air, Range times, double start, double lag) {
    checkFollowing(0, lag);
    checked("temperature that the pile begins at", start);
    return new CoveredFunction(new LaggedFunction(air, times, 0, lag, start), times);
  }

  /**
   * Air that is warmer than other air throughout.
   *
   * @param air temperature of the other air [K against s]
   * @param kelvin by how much, negative for colder air [K], -60 to 60
   * @return the function, known at the same times
   * @throws InvalidInputException if it is out of its range
   */
  public static TimeFunction warmer(TimeFunction air, double kelvin) {
    checkFollowing(kelvin, 0);
    return new WarmerCourse(Checks.given("air", air), kelvin);
  }

  static void checkFollowing(double offset, double lag) {
    Checks.within(
        "offset of the ambient temperature",
        offset,
        OFFSETS,
        "K",
        "It is a difference: 10 °F of difference are 5.6 K.");
    Checks.within(
        "lag of the ambient temperature", lag, LAGS, "s", "Lags are in seconds: 1 h is 3600 s.");
  }

  static double checked(String field, double temperature) {
    return Checks.parcelTemperature(field, temperature);
  }
}
