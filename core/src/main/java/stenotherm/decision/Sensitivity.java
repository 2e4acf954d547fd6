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
 * @param coldAtLow change of the cold margin at the low end [K]
 * @param coldAtHigh change of the cold margin at the high end [K]
 * @param hotAtLow change of the hot margin at the low end [K]
 * @param hotAtHigh change of the hot margin at the high end [K]
 */
public record Sensitivity(
    Factor factor, double coldAtLow, double coldAtHigh, double hotAtLow, double hotAtHigh) {
  /** The end at which the margin of a side is smaller. */
  End worse(Side side) {
    double low = side == Side.COLD ? coldAtLow : hotAtLow;
    double high = side == Side.COLD ? coldAtHigh : hotAtHigh;
    return low <= high ? End.LOW : End.HIGH;
  }
}
