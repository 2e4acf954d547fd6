package stenotherm.ambient;

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
