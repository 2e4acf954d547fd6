package stenotherm.validation.benchmark;

import java.util.function.Function;
import stenotherm.base.InvalidInputException;
import stenotherm.transit.TransitResult;

/**
 * How far the histories of two transits of the same parcel are apart, over the stored times.
 *
 * <p>Internal. A value, thus thread-safe.
 *
 * @param mean largest difference of the animals' mean temperatures [K]
 * @param coldest largest difference of their coldest parts [K]
 * @param hottest largest difference of their hottest parts [K]
 * @param warmer largest difference of the warmers' mean temperatures [K]; 0 without any
 */
public record TransitDifference(double mean, double coldest, double hottest, double warmer) {
  /**
   * Compares two runs that stored at the same times.
   *
   * @param run the one run
   * @param reference the other
   * @return the largest differences
   * @throws InvalidInputException if a run did not complete
   */
  public static TransitDifference of(TransitResult run, TransitResult reference) {
    if (!run.outcome().isCompleted() || !reference.outcome().isCompleted()) {
      throw new InvalidInputException(
          "run", "did not complete: " + run.outcome() + ", " + reference.outcome());
    }
    double mean = 0;
    double coldest = 0;
    double hottest = 0;
    for (var cup : run.parcel().occupied()) {
      mean = Math.max(mean, largest(run, reference, result -> result.mean(cup.name())));
      coldest = Math.max(coldest, largest(run, reference, result -> result.coldest(cup.name())));
      hottest = Math.max(hottest, largest(run, reference, result -> result.hottest(cup.name())));
    }
    double warmer = 0;
    for (var placed : run.parcel().warmers()) {
      warmer = Math.max(warmer, largest(run, reference, result -> result.mean(placed.name())));
    }
    return new TransitDifference(mean, coldest, hottest, warmer);
  }

  /**
   * The largest of all.
   *
   * @return the difference [K]
   */
  public double largest() {
    return Math.max(Math.max(mean, warmer), Math.max(coldest, hottest));
  }

  private static double largest(
      TransitResult run, TransitResult reference, Function<TransitResult, double[]> history) {
    double[] values = history.apply(run);
    double[] exact = history.apply(reference);
    double largest = 0;
    for (int row = 0; row < values.length; row++) {
      // NaN stays, so that it counts as the worst
      largest = Math.max(largest, Math.abs(values[row] - exact[row]));
    }
    return largest;
  }
}
