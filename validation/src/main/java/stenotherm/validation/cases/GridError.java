package stenotherm.validation.cases;

import stenotherm.conduction.DiscretisationEstimate;

/**
 * The estimated error of the finest of three grids.
 *
 * @param size estimated error, never negative
 * @param order observed order of convergence; NaN if the three values do not tell one
 */
record GridError(double size, double order) {
  /** As in {@link DiscretisationEstimate}. */
  private static final double SAFETY = 1.25;

  /**
   * Estimates the error.
   *
   * @param values the quantity on the coarse, the medium and the fine grid
   * @param widths how wide cells are on each, in any unit, descending
   */
  static GridError of(double[] values, double[] widths) {
    DiscretisationEstimate estimate = DiscretisationEstimate.of(values, widths);
    // a change that falls faster than the scheme's second order is luck: the errors of two grids
    // happen to be alike, and the fine change says nothing
    double[] square = {widths[0] * widths[0], widths[1] * widths[1], widths[2] * widths[2]};
    double perSquare = Math.abs(values[0] - values[1]) / (square[0] - square[1]);
    return new GridError(
        Math.max(estimate.error(), SAFETY * perSquare * square[2]), estimate.order());
  }
}
