package stenotherm.modal;

/** Which shifts enter the basis of a model, and how accurately. */
enum BasisSettings {
  /** The whole model, with error estimates. */
  WHOLE(
      new int[] {0, 5, 3, 7, 1, 4, 2, 8, 6},
      new int[] {6, 7, 8},
      1e-9,
      1e-6,
      3e-4,
      new int[] {8, 6}),
  /** Mean fields over an hour or more, to some tenths of a kelvin. */
  SCOUTING(new int[] {0, 1, 3, 4}, new int[0], 1e-4, 1e-4, 1e-1, new int[0]);

  /** Factor of the residual threshold for a body with a single load. */
  private static final double ALONE = 0.1;

  /** Error of a solution that is added, as part of the residual threshold. */
  private static final double ENRICHED = 0.1;

  /**
   * Indices of the shifts at which the resolvents of the inputs enter the basis: first those at the
   * ends, then those between, which a basis of the ends approximates well. In ascending order
   * bodies that took up other properties came to a tenth more vectors.
   */
  final int[] shifts;

  /** The same for the residuals that arise when a run switches to the next configuration. */
  final int[] switchShifts;

  /** Tolerance of a steady state, as part of the uniform rise that the load would cause. */
  private final double steadyTolerance;

  /** The same at other shifts: errors of basis vectors are not errors of the model. */
  private final double shiftedTolerance;

  /**
   * Error of a Galerkin solution up to which a basis that was found for other configurations is not
   * enriched, as part of the same rise. It is estimated from the residual, in the energy norm of
   * the whole body; the error of a light cup may be many times as large: on 60 random parcels and
   * journeys means were off by 0.19 K with a hundredth, by 0.03 K with a thousandth, by 0.01 K with
   * two of ten thousand, but on one of 75 others, with a single load, by 0.06 K.
   */
  private final double residualThreshold;

  /**
   * Indices of the shifts that the coarser models leave out, one each: of the last to enter, where
   * the basis interpolates from the shifts around, as it does between all shifts.
   */
  final int[] shiftsLeftOut;

  BasisSettings(
      int[] shifts,
      int[] switchShifts,
      double steadyTolerance,
      double shiftedTolerance,
      double residualThreshold,
      int[] shiftsLeftOut) {
    this.shifts = shifts;
    this.switchShifts = switchShifts;
    this.steadyTolerance = steadyTolerance;
    this.shiftedTolerance = shiftedTolerance;
    this.residualThreshold = residualThreshold;
    this.shiftsLeftOut = shiftsLeftOut;
  }

  /**
   * Error of a Galerkin solution up to which the basis is not enriched.
   *
   * @param loads number of loads: where there is a single one, more shifts cost little, and no
   *     other load's vectors help
   */
  double residualThreshold(int loads) {
    return loads == 1 ? ALONE * residualThreshold : residualThreshold;
  }

  /** Error of the solutions by which a basis is enriched. */
  double enrichmentTolerance(int loads) {
    return ENRICHED * residualThreshold(loads);
  }

  /** Tolerance of the solutions at a shift, by its index. */
  double tolerance(int shift) {
    return shift == 0 ? steadyTolerance : shiftedTolerance;
  }
}
