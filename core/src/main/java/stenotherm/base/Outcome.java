package stenotherm.base;

/**
 * How a run ended. A result that carries {@link Stopped} or {@link Failed} is partial: it holds
 * everything up to the last good state.
 *
 * <p>Stable. Values, thus thread-safe.
 */
public sealed interface Outcome {
  /**
   * Tells whether the run reached its end.
   *
   * @return true for {@link Completed} only
   */
  default boolean isCompleted() {
    return this instanceof Completed;
  }

  /** The run reached its end. */
  record Completed() implements Outcome {}

  /**
   * A listener or an interrupt stopped the run.
   *
   * @param reason who stopped it
   * @param lastTime time of the last good state [s]
   */
  record Stopped(String reason, double lastTime) implements Outcome {}

  /**
   * The run could not go on.
   *
   * @param reason what failed
   * @param lastTime time of the last good state [s]
   */
  record Failed(String reason, double lastTime) implements Outcome {}
}
