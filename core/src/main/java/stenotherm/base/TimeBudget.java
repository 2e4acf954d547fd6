package stenotherm.base;

import java.util.function.Function;
import java.util.function.LongSupplier;

/**
 * How long a piece of work may take. One that would take longer is refused before the bulk of it.
 *
 * <p>How long it would take is estimated once, from the time that its first twentieth or so took
 * and from the share that it then says is done. That share rests on counts of packings and journeys
 * and on what these took beside each other where it was measured; the first seconds of a Java
 * machine are its slowest. Where it was tried, the estimate was 0.6 to 2 times what all took. Work
 * that was let through and yet is not done within the budget is stopped then.
 *
 * <p>Experimental. Immutable, thus thread-safe if its clock is.
 *
 * @param seconds longest time [s], above 0
 * @param clock a time that only grows, such as {@code System::nanoTime} [ns]
 */
public record TimeBudget(double seconds, LongSupplier clock) {
  /** Part of the work that tells how long all of it takes. */
  private static final double SAMPLE = 0.05;

  /**
   * Checks the time.
   *
   * @throws InvalidInputException if it is not above 0
   */
  public TimeBudget {
    Checks.positive("longest time", seconds, "s");
    Checks.given("clock", clock);
  }

  /**
   * Has work done that a listener may stop, within this time. The time is looked at whenever the
   * work says how much is done.
   *
   * @param hint what would take less time, as a sentence
   * @param listener told what the work tells, on the thread that tells it; may stop it, too
   * @param work what is done, with the listener that it must tell how much is done
   * @param <T> what comes of it
   * @return what comes of it
   * @throws InvalidInputException if it would take longer, or did; the message has the estimate,
   *     the time allowed and the hint
   */
  public <T> T within(
      String hint, ProgressListener listener, Function<? super ProgressListener, T> work) {
    Checks.given("hint", hint);
    Watch watch = new Watch(listener);
    T made;
    try {
      made = Checks.given("work", work).apply(watch);
    } catch (IllegalStateException stopped) {
      watch.listener.passOn();
      watch.requireTime(hint);
      throw stopped;
    }
    // some work returns what it has when it is stopped
    watch.requireTime(hint);
    return made;
  }

  /** Looks at the time. */
  private final class Watch implements ProgressListener {
    private final ListenerGuard listener;
    private final long start = clock.getAsLong();
    private boolean estimated;
    private String excess = "";

    Watch(ProgressListener listener) {
      this.listener = new ListenerGuard(listener);
    }

    @Override
    public synchronized Signal progress(double done, double total) {
      Signal signal = listener.progress(done, total);
      double share = done / total;
      if (excess.isEmpty() && share >= SAMPLE && share < 1) {
        double passed = (clock.getAsLong() - start) / 1e9;
        String percent = Math.round(100 * share) + " %";
        if (passed > seconds) {
          excess = "is over with " + percent + " of the work done";
        } else if (!estimated && passed / share > seconds) {
          excess =
              "would be about " + words(passed / share) + ", as the first " + percent + " tell";
        }
        estimated = true;
      }
      return excess.isEmpty() ? signal : Signal.STOP;
    }

    private synchronized void requireTime(String hint) {
      if (!excess.isEmpty()) {
        throw new InvalidInputException(
            "time", excess + "; allowed are " + words(seconds) + ". " + hint);
      }
    }
  }

  private static String words(double time) {
    return time < 2 * Times.MINUTE
        ? Checks.show(Math.ceil(10 * time) / 10, "s")
        : time < 2 * Times.HOUR
            ? Checks.show(Math.ceil(Times.toMinutes(time)), "min")
            : Checks.show(Math.ceil(10 * Times.toHours(time)) / 10, "h");
  }
}
