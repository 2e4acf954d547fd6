package stenotherm.transit;

import org.jspecify.annotations.Nullable;

/**
 * Which engine ran.
 *
 * @param cells number of solid cells
 * @param reason why it is not the one that was asked for; empty if there is nothing to say
 * @param reduction the reduction, if a reduced model ran
 * @param change by how much coefficients would still change at the mean temperatures of the run;
 *     NaN if they were not found beforehand
 */
record EngineChoice(int cells, String reason, @Nullable Reduction reduction, double change) {
  /** A run whose coefficients follow its state. */
  static EngineChoice full(int cells, String reason) {
    return new EngineChoice(cells, reason, null, Double.NaN);
  }
}
