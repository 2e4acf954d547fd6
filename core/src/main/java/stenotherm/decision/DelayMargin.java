package stenotherm.decision;

/**
 * How late the opening may be before an animal leaves its alarm band in the worst case, because one
 * leg lasts longer: the last one, which then is a hold, or any other.
 *
 * <p>Experimental. Values, thus thread-safe.
 */
public sealed interface DelayMargin {
  /**
   * Returns the time between the planned opening and the moment at which the alarm band is left.
   *
   * @return that time, 0 or above [s]: before the planned opening if {@link #isAlreadyOutside},
   *     only a lower bound if {@link #isAtLeast}
   */
  double time();

  /**
   * Tells whether the alarm band is left before the planned opening.
   *
   * @return true if no delay is left
   */
  default boolean isAlreadyOutside() {
    return false;
  }

  /**
   * Tells whether the alarm band still holds after the longest delay that was computed.
   *
   * @return true if {@link #time} is only a lower bound
   */
  default boolean isAtLeast() {
    return false;
  }

  /**
   * The alarm band is left before the planned opening.
   *
   * @param time how long before [s]
   */
  record AlreadyOutside(double time) implements DelayMargin {
    @Override
    public boolean isAlreadyOutside() {
      return true;
    }
  }

  /**
   * The alarm band is left so long after the planned opening.
   *
   * @param time time after it [s]
   */
  record Until(double time) implements DelayMargin {}

  /**
   * The alarm band still holds after the longest delay that was computed.
   *
   * @param time that delay [s]
   */
  record AtLeast(double time) implements DelayMargin {
    @Override
    public boolean isAtLeast() {
      return true;
    }
  }
}
