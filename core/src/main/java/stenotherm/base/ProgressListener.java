package stenotherm.base;

/**
 * Watches a run and may stop it. Called on the thread that runs the computation, after each
 * accepted step or each finished part of a study.
 */
@FunctionalInterface
public interface ProgressListener {
  /** What the run should do next. */
  enum Signal {
    /** Go on. */
    CONTINUE,
    /** Stop now and return the partial result. */
    STOP
  }

  /** A listener that never stops a run. */
  ProgressListener NONE = (done, total) -> Signal.CONTINUE;

  /**
   * Reports progress.
   *
   * @param done how much is done [s or -], in the unit of {@code total}: simulated seconds for a
   *     solver, runs for a study
   * @param total how much there is to do [s or -]
   * @return whether to go on
   */
  Signal progress(double done, double total);
}
