package stenotherm.decision;

import stenotherm.base.End;
import stenotherm.transit.Factor;

/**
 * What one uncertain quantity does to the margins when it goes to the ends of its range and all
 * others stay nominal, found on a coarser grid.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param factor the quantity
 * @param cold change of the cold margin
 * @param hot change of the hot margin
 */
public record Sensitivity(Factor factor, Change cold, Change hot) {
  /**
   * Changes of a margin.
   *
   * @param atLow with the quantity at the low end of its range [K]
   * @param atHigh with the quantity at the high end [K]
   */
  public record Change(double atLow, double atHigh) {}

  /** The end at which the margin of a side is smaller. */
  End worse(Side side) {
    Change change = side == Side.COLD ? cold : hot;
    return change.atLow() <= change.atHigh() ? End.LOW : End.HIGH;
  }
}
