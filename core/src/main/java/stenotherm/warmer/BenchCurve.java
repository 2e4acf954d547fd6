package stenotherm.warmer;

import java.util.Arrays;
import java.util.stream.IntStream;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.Temperatures;

/**
 * Temperature of a warmer over the time since it was opened, measured or computed, and what is read
 * off it in the sense of JIS S 4100. Linear between its rows.
 *
 * <p>Immutable, thus thread-safe.
 */
public final class BenchCurve {
  /** Where the definitions come from. */
  public static final Source SOURCE =
      Source.read("JIS S 4100:2007", "definitions of rise time, duration and guaranteed time");

  /** The temperature from which a warmer counts as working: 40 °C [K]. */
  public static final double USEFUL = Temperatures.CELSIUS_ZERO + 40;

  /** Warm to the touch, a little above the skin: 35 °C [K], assumed. */
  public static final double WARM = Temperatures.CELSIUS_ZERO + 35;

  private final double[] times;
  private final double[] temperatures;

  /**
   * States the rows.
   *
   * @param times times since the warmer was opened, ascending, the first 0 [s]
   * @param temperatures temperature at each time [K], 200 to 420
   * @throws InvalidInputException if there are fewer than two rows, the columns differ in length,
   *     times do not ascend from 0, or a temperature is out of its range
   */
  public BenchCurve(double[] times, double[] temperatures) {
    this.times = Checks.given("times of a curve", times).clone();
    this.temperatures = Checks.given("temperatures of a curve", temperatures).clone();
    if (times.length < 2 || times.length != temperatures.length) {
      throw new InvalidInputException(
          "curve",
          times.length + " times and " + temperatures.length + " temperatures: needs two or more");
    }
    for (int row = 0; row < times.length; row++) {
      if (row == 0 ? times[0] != 0 : !(times[row] > times[row - 1])) {
        throw new InvalidInputException(
            "times of a curve", "row " + (row + 1) + ": must ascend from 0 at the opening");
      }
      Checks.finite("times of a curve", times[row], "s");
      Checks.within(
          "temperatures of a curve",
          temperatures[row],
          HOTTEST,
          "K",
          "Temperatures are absolute, in kelvin: 20 °C is 293.15 K.");
    }
  }

  /** 20 °C taken for kelvin is refused, and so is what melts a pouch. */
  private static final Range HOTTEST = new Range(200, 420);

  /**
   * Returns the temperature.
   *
   * @param time time since opening [s]
   * @return temperature [K], that of the last row after it
   */
  public double at(double time) {
    return interpolated(temperatures, time);
  }

  /** Interpolates a column of the same rows. */
  double interpolated(double[] column, double time) {
    int found = Arrays.binarySearch(times, time);
    if (found >= 0) {
      return column[found];
    }
    int right = -found - 1;
    if (right == 0 || right == times.length) {
      return column[Math.min(right, times.length - 1)];
    }
    double part = (time - times[right - 1]) / (times[right] - times[right - 1]);
    return column[right - 1] + part * (column[right] - column[right - 1]);
  }

  /**
   * Picks rows after the first, closer together at the beginning, while a warmer warms up.
   *
   * @param most how many at most
   * @return their times [s]
   */
  double[] sampled(int most) {
    int rows = times.length - 1;
    return IntStream.rangeClosed(1, most)
        .map(pick -> (int) Math.ceil(rows * Math.pow((double) pick / most, 2) - 1e-9))
        .distinct()
        .mapToDouble(row -> times[row])
        .toArray();
  }

  /**
   * Returns the last time.
   *
   * @return time of the last row [s]
   */
  public double end() {
    return times[times.length - 1];
  }

  /**
   * Returns the highest temperature.
   *
   * @return that of the hottest row [K]
   */
  public double peak() {
    return temperatures[hottest()];
  }

  /**
   * Returns when it is hottest.
   *
   * @return time of the hottest row [s]
   */
  public double peakTime() {
    return times[hottest()];
  }

  private int hottest() {
    int hottest = 0;
    for (int row = 1; row < times.length; row++) {
      if (temperatures[row] > temperatures[hottest]) {
        hottest = row;
      }
    }
    return hottest;
  }

  /**
   * Returns the rise time.
   *
   * @return time until 40 °C is reached [s], infinite if it never is
   */
  public double rise() {
    return reaches(USEFUL);
  }

  /**
   * Returns when a temperature is first reached, as {@link #WARM} is when a warmer feels warm.
   *
   * @param temperature temperature [K]
   * @return time since opening [s], infinite if it never is
   */
  public double reaches(double temperature) {
    if (temperatures[0] >= temperature) {
      return 0;
    }
    for (int row = 1; row < times.length; row++) {
      if (temperatures[row] >= temperature) {
        return crossing(row, temperature);
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  /**
   * Returns when the plateau is reached, assumed to be at 95 % of the rise from the first row to
   * the peak.
   *
   * @return time since opening [s]
   */
  public double plateau() {
    return reaches(temperatures[0] + 0.95 * (peak() - temperatures[0]));
  }

  /** Where the line that ends in a row passes a temperature. */
  private double crossing(int row, double temperature) {
    double part =
        (temperature - temperatures[row - 1]) / (temperatures[row] - temperatures[row - 1]);
    return times[row - 1] + part * (times[row] - times[row - 1]);
  }

  /**
   * Returns how long it works.
   *
   * @return time at or above 40 °C [s]
   */
  public double duration() {
    return above(USEFUL)[0];
  }

  /**
   * Returns the guaranteed time, in which a warmer is well above 40 °C.
   *
   * @return time at or above the middle of the peak and 40 °C [s], 0 if it is never so warm
   */
  public double guaranteed() {
    return peak() < USEFUL ? 0 : above((peak() + USEFUL) / 2)[0];
  }

  /**
   * Returns the mean temperature while it works.
   *
   * @return mean while at or above 40 °C [K], NaN if it never is
   */
  public double mean() {
    double[] found = above(USEFUL);
    return found[1] / found[0];
  }

  /** Time at or above a temperature [s], and the integral of the temperature over it [K s]. */
  private double[] above(double temperature) {
    double time = 0;
    double integral = 0;
    for (int row = 1; row < times.length; row++) {
      double left = temperatures[row - 1];
      double right = temperatures[row];
      if (Math.max(left, right) < temperature) {
        continue;
      }
      double from = left < temperature ? crossing(row, temperature) : times[row - 1];
      double to = right < temperature ? crossing(row, temperature) : times[row];
      time += to - from;
      integral += (to - from) * (Math.max(left, temperature) + Math.max(right, temperature)) / 2;
    }
    return new double[] {time, integral};
  }

  /** When it falls below 40 °C for good, the end if it does not. */
  double falls() {
    int row = times.length - 1;
    if (temperatures[row] >= USEFUL) {
      return end();
    }
    while (row > 0 && temperatures[row - 1] < USEFUL) {
      row--;
    }
    return row == 0 ? 0 : crossing(row, USEFUL);
  }
}
