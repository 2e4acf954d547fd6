package stenotherm.decision;

/**
 * Error of the computed temperature of an animal, in parts that add up.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param grid what the grid leaves: as much as the correction that three grids give; a bound if
 *     these do not converge regularly [K]
 * @param ordered whether the three grids converge regularly
 * @param holding what holding coefficients over hours leaves: half of what taking them more often
 *     changes [K]
 * @param reduction what reducing the body to a few modes leaves [K]
 * @param condensation what condensing these for many journeys leaves [K]
 */
public record NumericalError(
    double grid, boolean ordered, double holding, double reduction, double condensation) {
  /**
   * Returns the whole error.
   *
   * @return the sum of the parts [K]
   */
  public double total() {
    return grid + holding + reduction + condensation;
  }
}
