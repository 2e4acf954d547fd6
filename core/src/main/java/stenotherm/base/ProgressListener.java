package stenotherm.base;

/**
 * Watches work that takes long, and may stop it. It is called on the thread that does the work: the
 * calling one or, where several share the work, any of these, but never two at a time for one piece
 * of work. Each method that takes a listener says what it counts: simulated time, journeys, or the
 * part of the whole, of 1.
 *
 * <p>A stop takes effect when the listener is next told something, which may be seconds later. Who
 * wants one sooner interrupts the calling thread ({@link Thread#interrupt}): solvers look for that
 * at every step. What a listener throws ends the work and reaches the caller as it is; it is told
 * nothing after that.
 */
@FunctionalInterface
public interface ProgressListener {
  /** What the work should do next. */
  enum Signal {
    /** Go on. */
    CONTINUE,
    /** Stop now: a run returns what it has, all else ends with a CancellationException. */
    STOP
  }

  /** A listener that never stops anything. */
  ProgressListener NONE = (done, total) -> Signal.CONTINUE;

  /**
   * Reports progress.
   *
   * @param done how much is done [s or -], in the unit of {@code total}: simulated time of a run
   *     [s], journeys of a study, part of an assessment, a search or a model's making [-]
   * @param total how much there is to do [s or -]: the duration of the journey or the last stored
   *     time [s], the journeys, 1
   * @return whether to go on
   */
  Signal progress(double done, double total);
}
