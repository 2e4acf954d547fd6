package stenotherm.decision;

/**
 * How long the opening may be late before an animal leaves its alarm band, at the worse end of the
 * range, because one leg lasts longer: the last one, which then is a hold, or any other.
 *
 * <p>Experimental. Values, thus thread-safe.
 */
public sealed interface DelayMargin {
  /**
   * The alarm band was left before the planned opening.
   *
   * @param before how long before [s]
   */
  record AlreadyOutside(double before) implements DelayMargin {}

  /**
   * The alarm band is left so long after the planned opening.
   *
   * @param hold time after it [s]
   */
  record Until(double hold) implements DelayMargin {}

  /**
   * The alarm band still holds after the longest hold that was computed.
   *
   * @param hold that hold [s]
   */
  record AtLeast(double hold) implements DelayMargin {}
}
