package stenotherm.decision;

import stenotherm.conduction.DiscretisationEstimate;

/**
 * What finer grids would change in the temperatures of animals, from the nominal runs on three
 * grids (Richardson's extrapolation). The order is that of the largest changes over time, one for
 * all animals. Where the three grids show none between 0.5 and 2 nothing is extrapolated, and the
 * larger change bounds the error.
 */
final class GridCorrection {
  /** Factor on the larger change where nothing is extrapolated. */
  private static final double SAFETY = 1.25;

  private final boolean ordered;
  private final double error;

  /** What is added to the finest run: animal, time [K]. */
  private final double[][] added;

  /**
   * Compares three grids.
   *
   * @param coarse temperatures on the coarse grid: animal, time [K]
   * @param medium the same on the medium grid
   * @param fine the same on the fine grid
   * @param widths widths of the grids
   */
  GridCorrection(double[][] coarse, double[][] medium, double[][] fine, double[] widths) {
    double[][] first = difference(coarse, medium);
    double[][] second = difference(medium, fine);
    double larger = largest(first);
    double smaller = largest(second);
    double[] values = {larger * Math.signum(product(first, second)) + smaller, smaller, 0};
    DiscretisationEstimate estimate = DiscretisationEstimate.of(values, widths);
    // an order at the lower end would extrapolate to several times the last change
    this.ordered = estimate.order() > DiscretisationEstimate.TRUSTED_ORDER.low();
    this.added = new double[fine.length][fine[0].length];
    double shrink = Math.pow(widths[2] / widths[1], estimate.order());
    for (int animal = 0; ordered && animal < added.length; animal++) {
      for (int time = 0; time < added[animal].length; time++) {
        added[animal][time] = -second[animal][time] * shrink / (1 - shrink);
      }
    }
    this.error = ordered ? largest(added) / 2 : SAFETY * Math.max(larger, smaller);
  }

  boolean isOrdered() {
    return ordered;
  }

  /** Half of the largest correction, or a bound where there is none [K]. */
  double error() {
    return error;
  }

  double[][] added() {
    return added;
  }

  /** Difference of two histories: animal, time [K]. */
  static double[][] difference(double[][] one, double[][] other) {
    double[][] difference = new double[one.length][one[0].length];
    for (int animal = 0; animal < one.length; animal++) {
      for (int time = 0; time < one[animal].length; time++) {
        difference[animal][time] = one[animal][time] - other[animal][time];
      }
    }
    return difference;
  }

  /** The largest magnitude in a history. */
  static double largest(double[][] values) {
    double largest = 0;
    for (double[] row : values) {
      for (double value : row) {
        largest = Math.max(largest, Math.abs(value));
      }
    }
    return largest;
  }

  private static double product(double[][] one, double[][] other) {
    double sum = 0;
    for (int animal = 0; animal < one.length; animal++) {
      for (int time = 0; time < one[animal].length; time++) {
        sum += one[animal][time] * other[animal][time];
      }
    }
    return sum;
  }
}
