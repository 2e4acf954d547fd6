package stenotherm.validation.cases;

import java.util.Optional;

/**
 * One reference value with what was computed for it, all in the unit of the reference value.
 *
 * @param reference the reference value
 * @param computed what was computed, extrapolated where three grids show an order; NaN if nothing
 *     was
 * @param accuracy how accurate that is
 */
record ValueResult(Reference reference, double computed, Accuracy accuracy) {
  /**
   * How accurate a computed value is.
   *
   * @param grid estimated error that the grid leaves, from three grids; NaN if there are fewer
   * @param steps estimated error that the time steps leave; 0 in a steady case
   * @param order observed order of convergence; NaN if the three values do not tell one
   * @param target estimated error at which a value counts as converged
   */
  record Accuracy(double grid, double steps, double order, double target) {
    /** Estimated error in all; NaN if it is not known. */
    double estimate() {
      return grid + steps;
    }

    /** Whether the grid's part is only known to be below its value. */
    boolean isBound() {
      return Double.isNaN(order) && grid > 0;
    }

    boolean isConverged() {
      return estimate() <= target;
    }
  }

  double error() {
    return computed - reference.expected().value();
  }

  boolean isConverged() {
    return accuracy.isConverged();
  }

  /**
   * Tells whether the value lies within the tolerance; one that has not converged passes only if it
   * would even with its estimated error added.
   */
  boolean passed() {
    double doubt = isConverged() ? 0 : accuracy.estimate();
    return Math.abs(error()) + doubt <= reference.expected().tolerance();
  }

  /** What is unusual about the tolerance and should have a reason; empty if nothing is. */
  Optional<String> concern() {
    double tolerance = reference.expected().tolerance();
    if (reference.why().isEmpty() && tolerance > 2 * accuracy.estimate()) {
      return Optional.of("no reason stated");
    }
    return Optional.empty();
  }
}
