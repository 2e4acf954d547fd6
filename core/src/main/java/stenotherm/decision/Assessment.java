package stenotherm.decision;

import java.util.List;
import stenotherm.conduction.DiscretisationEstimate;
import stenotherm.parcel.Container;
import stenotherm.transit.TransitResult;
import stenotherm.transit.Variation;

/**
 * A packing on a journey, judged over the ranges of its uncertain quantities.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 *
 * @param nominal the run with everything nominal, continued after the planned opening
 * @param coldEnd the run with every quantity at the end that is worse for the cold side
 * @param hotEnd the run with every quantity at the end that is worse for the hot side
 * @param lateEnds runs at the ends that are worse while the parcel is held after the planned
 *     opening, where these differ from the ends of the two runs before
 * @param plannedEnd the planned opening, since sealing [s]
 * @param sensitivities what each quantity does on its own
 * @param coldGrid estimated error of the grid in the nominal coldest temperature [K]
 * @param hotGrid estimated error of the grid in the nominal hottest temperature [K]
 * @param delay how late the parcel may be
 * @param verdict the verdict
 */
public record Assessment(
    TransitResult nominal,
    TransitResult coldEnd,
    TransitResult hotEnd,
    List<Variation> lateEnds,
    double plannedEnd,
    List<Sensitivity> sensitivities,
    DiscretisationEstimate coldGrid,
    DiscretisationEstimate hotGrid,
    DelayMargin delay,
    Verdict verdict) {
  /** Copies the lists. */
  public Assessment {
    lateEnds = List.copyOf(lateEnds);
    sensitivities = List.copyOf(sensitivities);
  }

  /**
   * Returns the nominal margin on a side until the planned opening.
   *
   * @param side the side
   * @return the smallest margin over all cups
   */
  public Margin nominalMargin(Side side) {
    return Margin.smallest(nominal, side, plannedEnd);
  }

  /**
   * Returns the smallest margin that one of the three runs leaves on a side, until the planned
   * opening.
   *
   * @param side the side
   * @return the smallest margin over all cups
   */
  public Margin worstMargin(Side side) {
    return Margin.worst(List.of(nominal, coldEnd, hotEnd), side, plannedEnd);
  }

  /**
   * Returns the largest margin that one of the three runs leaves on a side, until the planned
   * opening.
   *
   * @param side the side
   * @return the smallest margin over all cups
   */
  public Margin bestMargin(Side side) {
    return Margin.best(List.of(nominal, coldEnd, hotEnd), side, plannedEnd);
  }

  /**
   * Returns an estimate of the numerical error in the temperature that decides a side's margin:
   * that of the grid and that of the reduction to a few modes.
   *
   * @param side the side
   * @return the sum of both, never negative [K]
   */
  public double error(Side side) {
    double grid = (side == Side.COLD ? coldGrid : hotGrid).error();
    return grid + reductionError(List.of(nominal, coldEnd, hotEnd), side);
  }

  /** The largest estimate of the reduction's error over some runs and all cups [K]. */
  static double reductionError(List<TransitResult> runs, Side side) {
    double largest = 0;
    for (TransitResult run : runs) {
      for (Container cup : run.parcel().occupied()) {
        double error =
            side == Side.COLD
                ? run.reductionErrorOfColdest(cup.name())
                : run.reductionErrorOfHottest(cup.name());
        largest = Math.max(largest, error);
      }
    }
    return largest;
  }
}
