package stenotherm.ambient;

import java.util.ArrayList;
import java.util.List;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.TimeFunction;

/**
 * How the air temperature in a kind of surroundings follows from that outdoors.
 *
 * <p>Values, thus thread-safe.
 */
public sealed interface AmbientRule {
  /**
   * Returns the temperature of the air.
   *
   * @param outdoors outdoor temperature [K against s]
   * @param times from when to when it is needed [s]; it should begin a few lags before the parcel
   *     arrives
   * @return the temperature [K against s]
   * @throws InvalidInputException if the outdoor temperature is not known then
   */
  TimeFunction course(TimeFunction outdoors, Range times);

  /**
   * Returns the time constant with which the air follows the outdoor temperature.
   *
   * @return the lag [s]; 0 if there is none
   */
  default double lag() {
    return 0;
  }

  /**
   * Tells whether the outdoor temperature matters.
   *
   * @return true unless the temperature is held
   */
  default boolean followsOutdoors() {
    return false;
  }

  /**
   * Returns how much of an error of the outdoor temperature passes on to the air.
   *
   * @param air the air's temperature by this rule [K against s]
   * @param times from when to when the parcel is there [s]
   * @return the share [-], 0 to 1
   */
  default double passedOn(TimeFunction air, Range times) {
    return followsOutdoors() ? 1 : 0;
  }

  /**
   * Air that follows the outdoor air.
   *
   * @param offset how much warmer it is on average [K], -60 to 60
   * @param lag time constant with which it follows [s], 0 to 7 days; 0 for no lag
   */
  record Following(double offset, double lag) implements AmbientRule {
    /**
     * Checks the numbers.
     *
     * @throws InvalidInputException if one is out of its range
     */
    public Following {
      Ambient.checkFollowing(offset, lag);
    }

    @Override
    public boolean followsOutdoors() {
      return true;
    }

    @Override
    public TimeFunction course(TimeFunction outdoors, Range times) {
      return Ambient.following(outdoors, times, offset, lag);
    }
  }

  /**
   * Air that follows the outdoor air, but is heated where it would be too cold; it is not cooled.
   *
   * @param unheated how it would follow without heating
   * @param lowest temperature to which it is heated [K], 200 to 350
   */
  record HeatedWhenCold(Following unheated, double lowest) implements AmbientRule {
    /**
     * Checks the temperature.
     *
     * @throws InvalidInputException if it is out of its range
     */
    public HeatedWhenCold {
      Checks.given("unheated", unheated);
      Ambient.checked("temperature to which air is heated", lowest);
    }

    @Override
    public double lag() {
      return unheated.lag();
    }

    @Override
    public boolean followsOutdoors() {
      return true;
    }

    /** The share of the time in which it is not heated. */
    @Override
    public double passedOn(TimeFunction air, Range times) {
      Checks.interval(times.low(), times.high());
      int parts = 100;
      double part = (times.high() - times.low()) / parts;
      int free = 0;
      for (int index = 0; index < parts; index++) {
        if (air.at(times.low() + (index + 0.5) * part) > lowest) {
          free++;
        }
      }
      return (double) free / parts;
    }

    /** Linear between the breakpoints without heating and the times at which it begins or ends. */
    @Override
    public TimeFunction course(TimeFunction outdoors, Range times) {
      TimeFunction free = unheated.course(outdoors, times);
      if (free.isConstant()) {
        return Ambient.constant(Math.max(lowest, free.at(times.low())));
      }
      double[] inner = free.breakpoints(times.low(), times.high());
      List<double[]> rows = new ArrayList<>();
      double left = times.low();
      for (int index = 0; index <= inner.length; index++) {
        double right = index < inner.length ? inner[index] : times.high();
        double first = free.at(left);
        double last = free.before(right);
        rows.add(new double[] {left, Math.max(lowest, first)});
        if ((first - lowest) * (last - lowest) < 0) {
          rows.add(
              new double[] {left + (right - left) * (lowest - first) / (last - first), lowest});
        }
        rows.add(new double[] {right, Math.max(lowest, last)});
        left = right;
      }
      return TimeFunction.table(column(rows, 0), column(rows, 1));
    }

    private static double[] column(List<double[]> rows, int column) {
      return rows.stream().mapToDouble(row -> row[column]).toArray();
    }
  }

  /**
   * Air that is heated or cooled to one temperature.
   *
   * @param temperature the temperature [K], 200 to 350
   */
  record Held(double temperature) implements AmbientRule {
    /**
     * Checks the temperature.
     *
     * @throws InvalidInputException if it is out of its range
     */
    public Held {
      Ambient.checked("temperature that is held", temperature);
    }

    @Override
    public TimeFunction course(TimeFunction outdoors, Range times) {
      return Ambient.constant(temperature);
    }
  }
}
