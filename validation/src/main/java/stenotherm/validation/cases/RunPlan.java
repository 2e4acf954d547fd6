package stenotherm.validation.cases;

import java.util.Optional;
import java.util.OptionalDouble;

/** What is computed of a case. */
sealed interface RunPlan {
  /** The history that is wanted; nothing for a steady state. */
  default Optional<Transient> history() {
    return Optional.empty();
  }

  /** The state that constant conditions lead to. */
  record Steady() implements RunPlan {}

  /**
   * A history from time zero.
   *
   * @param initial temperature at the start [K]
   * @param until end of the run [s]
   * @param timeTolerance largest estimated local error of a step [K]; where empty, the runner
   *     chooses it
   */
  record Transient(double initial, double until, OptionalDouble timeTolerance) implements RunPlan {
    @Override
    public Optional<Transient> history() {
      return Optional.of(this);
    }
  }
}
