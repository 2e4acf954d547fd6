package stenotherm.validation.benchmark;

import stenotherm.base.InvalidInputException;
import stenotherm.conduction.Probe;
import stenotherm.conduction.TransientSolution;

/**
 * How far the histories of one output in two runs are apart.
 *
 * <p>Internal. A value, thus thread-safe.
 *
 * @param probe the output
 * @param largest largest difference in magnitude over the stored times [unit of the output]
 * @param time where it occurs [s]
 */
public record HistoryDifference(Probe probe, double largest, double time) {
  /**
   * Compares an output of two runs that stored at the same times.
   *
   * @param run the one run
   * @param reference the other
   * @param probe the output
   * @return the largest difference
   * @throws InvalidInputException if a run did not complete
   */
  public static HistoryDifference of(
      TransientSolution run, TransientSolution reference, Probe probe) {
    if (!run.outcome().isCompleted() || !reference.outcome().isCompleted()) {
      throw new InvalidInputException(
          "run", "did not complete: " + run.outcome() + ", " + reference.outcome());
    }
    double[] times = run.times();
    double[] values = run.history(probe.name());
    double[] exact = reference.history(probe.name());
    double largest = 0;
    double time = times[0];
    for (int row = 0; row < times.length; row++) {
      double difference = Math.abs(values[row] - exact[row]);
      // in this order NaN comes last, so that it counts as the worst
      if (Double.compare(difference, largest) > 0) {
        largest = difference;
        time = times[row];
      }
    }
    return new HistoryDifference(probe, largest, time);
  }
}
