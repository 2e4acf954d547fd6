package stenotherm.base;

import java.util.Optional;

/**
 * How a run ended. A result that carries {@link Stopped} or {@link Failed} is partial: it holds
 * everything up to the last good state.
 *
 * <p>Values, thus thread-safe.
 */
public sealed interface Outcome {
  /**
   * Tells whether the run reached its end.
   *
   * @return true for {@link Completed} only
   */
  default boolean isCompleted() {
    return false;
  }

  /**
   * Returns why the run did not reach its end.
   *
   * @return who stopped it or what failed; nothing if it is completed
   */
  default Optional<String> whyUnfinished() {
    return Optional.empty();
  }

  /** The run reached its end. */
  record Completed() implements Outcome {
    @Override
    public boolean isCompleted() {
      return true;
    }
  }

  /**
   * A listener or an interrupt stopped the run.
   *
   * @param reason who stopped it
   * @param lastTime time of the last good state [s]
   */
  record Stopped(String reason, double lastTime) implements Outcome {
    @Override
    public Optional<String> whyUnfinished() {
      return Optional.of(reason);
    }
  }

  /**
   * The run could not go on.
   *
   * @param reason what failed
   * @param lastTime time of the last good state [s]
   */
  record Failed(String reason, double lastTime) implements Outcome {
    @Override
    public Optional<String> whyUnfinished() {
      return Optional.of(reason);
    }
  }
}
