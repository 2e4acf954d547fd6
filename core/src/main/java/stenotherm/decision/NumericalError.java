package stenotherm.decision;

import stenotherm.parcel.Parcel;

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
 * @param melting what taking packs that melt as one body each leaves; 0 without such a pack [K]
 * @param ordered whether the three grids converge regularly
 * @param holding what holding coefficients over hours leaves: half of what taking them more often
 *     changes [K]
 * @param reduction what reducing the body to a few modes leaves [K]
 * @param condensation what condensing these for many journeys leaves [K]
 */
public record NumericalError(
    double grid,
    double warmer,
    double melting,
    boolean ordered,
    double holding,
    double reduction,
    double condensation) {
  /** The most that was found with a pack in fill, at the coldest and hottest of an animal [K]. */
  private static final double MELTING = 0.4;

  /**
   * The same with several packs, or without a fill, where more heat reaches the edges of a pack.
   */
  private static final double MELTING_FASTER = 0.65;

  /** What taking packs as bodies leaves in a packing [K]; measured in {@code PacksAsBodiesTest}. */
  static double ofMelting(Parcel parcel) {
    long melting = parcel.packs().stream().filter(pack -> pack.pack().melts()).count();
    if (melting == 0) {
      return 0;
    }
    return melting == 1 && parcel.filling().fill().isPresent() ? MELTING : MELTING_FASTER;
  }

  /**
   * Error without a warmer and without a pack that melts.
   *
   * @param grid what the grid leaves [K]
   * @param ordered whether the three grids converge regularly
   * @param holding what holding coefficients over hours leaves [K]
   * @param reduction what reducing the body to a few modes leaves [K]
   * @param condensation what condensing these for many journeys leaves [K]
   */
  public NumericalError(
      double grid, boolean ordered, double holding, double reduction, double condensation) {
    this(grid, 0, 0, ordered, holding, reduction, condensation);
  }

  /**
   * Returns the whole error of an animal.
   *
   * @return the sum of the parts but the warmer's [K]
   */
  public double total() {
    return grid + holding + reduction + condensation + melting;
  }
}
