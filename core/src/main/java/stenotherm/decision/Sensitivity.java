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

  /**
   * Where in the range the margin of a side is smallest: an end, or the middle if both ends are
   * better.
   */
  End worse(Side side) {
    Change change = side == Side.COLD ? cold : hot;
    if (Math.min(change.atLow(), change.atHigh()) > 0) {
      return End.NOMINAL;
    }
    return change.atLow() <= change.atHigh() ? End.LOW : End.HIGH;
  }
}
