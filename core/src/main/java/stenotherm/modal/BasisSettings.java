package stenotherm.modal;

import java.util.Arrays;
import java.util.stream.IntStream;

/** Which shifts enter the basis of a model, and how accurately. */
enum BasisSettings {
  /** The whole model, with error estimates. */
  WHOLE(
      new int[] {0, 5, 3, 7, 1, 4, 2},
      new int[] {6, 7, 8},
      1e-9,
      1e-6,
      1e-2,
      new int[] {8, 6},
      new int[] {0, 5, 3, 7, 1, 4, 2, 8, 6},
      0.02),
  /**
   * Means of blocks and points far from edges, without error estimates: what settles within half a
   * minute is left out, and what follows a change of films. Measured on two boxes, on journeys that
   * differ in everything uncertain: means of animals differ from those of the whole model by at
   * most 0.014 K, with half of its vectors.
   */
  MEANS(
      new int[] {0, 7, 3, 1, 4, 2},
      new int[0],
      1e-9,
      1e-6,
      1e-2,
      new int[0],
      new int[] {0, 7, 3, 1, 4, 2},
      0.02),
  /** Mean fields over an hour or more, to some tenths of a kelvin. */
  SCOUTING(new int[] {0, 1, 3, 4}, new int[0], 1e-4, 1e-4, 1e-1, new int[0], new int[] {0}, 0.05);

  /** Factor on the residual threshold for a body with a single load. */
  private static final double ALONE = 0.1;

  /**
   * Factor on the threshold for each part that the lightest block with an output has in the heat
   * capacity of the body.
   */
  private static final double FOR_LIGHTEST = 2;

  /** Error of a solution that is added, as part of the residual threshold. */
  static final double ENRICHED = 0.1;

  /**
   * Indices of the shifts at which the resolvents of the inputs enter the basis before those that
   * coarser models leave out: first those at the ends, then those between, which a basis of the
   * ends approximates well. Taken in ascending order they gave a tenth more vectors.
   */
  final int[] shifts;

  /** The same for the residuals that arise when a run goes to the next configuration. */
  final int[] switchShifts;

  /** Tolerance of a steady state, as a part of the uniform rise that the load would cause. */
  private final double steadyTolerance;

  /**
   * The same at other shifts; larger, since errors of basis vectors are not errors of the model.
   */
  private final double shiftedTolerance;

  /**
   * Error of a Galerkin solution up to which nothing is added to the basis for it, as part of the
   * same rise. It is estimated from the residual, in the energy norm of the whole body, where a
   * light cup hardly counts; so it shrinks with the part of the lightest block that is read. What
   * it leaves on random parcels and journeys is printed by {@code modal-agreement}.
   */
  private final double residualThreshold;

  /**
   * Indices of the shifts that enter last; the coarser models leave out one each. There a coarser
   * model interpolates between the shifts around, as the whole model does between all shifts.
   */
  final int[] shiftsLeftOut;

  /**
   * Indices of the shifts at which weak loads are looked at. Without those of an hour down to
   * minutes, what evaporates in a cup left up to 0.06 K in the coldest part of its animal; they
   * cost few vectors, since most of them are good enough already.
   */
  final int[] weakShifts;

  /**
   * Error of a Galerkin solution that is left for a weak load, in the same units as that of the
   * others. Milliwatts raise a parcel by tenths of a kelvin.
   */
  final double weakThreshold;

  BasisSettings(
      int[] shifts,
      int[] switchShifts,
      double steadyTolerance,
      double shiftedTolerance,
      double residualThreshold,
      int[] shiftsLeftOut,
      int[] weakShifts,
      double weakThreshold) {
    this.shifts = shifts;
    this.switchShifts = switchShifts;
    this.steadyTolerance = steadyTolerance;
    this.shiftedTolerance = shiftedTolerance;
    this.residualThreshold = residualThreshold;
    this.shiftsLeftOut = shiftsLeftOut;
    this.weakShifts = weakShifts;
    this.weakThreshold = weakThreshold;
  }

  /**
   * Error of a Galerkin solution up to which nothing is added to the basis for it.
   *
   * @param loads number of loads; with a single one more vectors cost little, and there are none of
   *     other loads to help
   * @param lightest part of the lightest block with an output in the heat capacity of the body
   */
  double residualThreshold(int loads, double lightest) {
    double ofLoads = loads == 1 ? ALONE : 1;
    return ofLoads * Math.min(1, FOR_LIGHTEST * lightest) * residualThreshold;
  }

  /** All shifts, in the order in which they enter the basis. */
  int[] allShifts() {
    return IntStream.concat(Arrays.stream(shifts), Arrays.stream(shiftsLeftOut)).toArray();
  }

  /** Tolerance of the solutions at a shift, by its index. */
  double tolerance(int shift) {
    return shift == 0 ? steadyTolerance : shiftedTolerance;
  }
}
