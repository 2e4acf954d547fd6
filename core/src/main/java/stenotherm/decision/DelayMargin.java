package stenotherm.decision;

/**
 * How much later than planned the opening may be, all nominal, before an animal leaves what it
 * tolerates, because one leg lasts longer: the last one, which then is a hold, or any other.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param time the delay that was found to hold, 0 or above [s]
 * @param isAtLeast whether that is the longest delay that was tried, so that the margin may be
 *     larger
 */
public record DelayMargin(double time, boolean isAtLeast) {}
