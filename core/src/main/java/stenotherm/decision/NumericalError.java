package stenotherm.decision;

/**
 * Error of the computed temperature of an animal, in parts that add up, and of a warmer.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param grid what the grid leaves: as much as the correction that three grids give; a bound if
 *     these do not converge regularly [K]
 * @param warmer what the grid leaves in the mean and the highest temperature of a warmer, no part
 *     of the total: 1.25 times what cells half as wide have changed in its mean, the largest of all
 *     warmers and times; 0 without a warmer [K]
 * @param ordered whether the three grids converge regularly
 * @param holding what holding coefficients over hours leaves: half of what taking them more often
 *     changes [K]
 * @param reduction what reducing the body to a few modes leaves [K]
 * @param condensation what condensing these for many journeys leaves [K]
 */
public record NumericalError(
    double grid,
    double warmer,
    boolean ordered,
    double holding,
    double reduction,
    double condensation) {
  /**
   * Error without a warmer.
   *
   * @param grid what the grid leaves [K]
   * @param ordered whether the three grids converge regularly
   * @param holding what holding coefficients over hours leaves [K]
   * @param reduction what reducing the body to a few modes leaves [K]
   * @param condensation what condensing these for many journeys leaves [K]
   */
  public NumericalError(
      double grid, boolean ordered, double holding, double reduction, double condensation) {
    this(grid, 0, ordered, holding, reduction, condensation);
  }

  /**
   * Returns the whole error of an animal.
   *
   * @return the sum of the parts but the warmer's [K]
   */
  public double total() {
    return grid + holding + reduction + condensation;
  }
}
