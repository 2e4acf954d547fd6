package stenotherm.conduction;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;

/**
 * An estimate of the error that a grid leaves, from the same quantity on three grids (Roache 1994,
 * J. Fluids Eng. 116:405; from memory). The observed order is trusted between 0.5 and 2; the safety
 * factor is 1.25.
 *
 * <p>Stable. A value, thus thread-safe.
 *
 * @param fine value on the finest grid
 * @param order observed order of convergence, limited to the trusted range; NaN if the three values
 *     do not approach a limit
 * @param error estimated error of {@code fine}, never negative [unit of the quantity]
 */
public record DiscretisationEstimate(double fine, double order, double error) {
  /** Orders outside this range are taken as its ends. */
  public static final Range TRUSTED_ORDER = new Range(0.5, 2);

  private static final double SAFETY = 1.25;

  /**
   * Estimates the error from three grids whose cell widths have a constant ratio.
   *
   * @param values the quantity on the coarse, the medium and the fine grid
   * @param ratio ratio of the cell widths of one grid to the next finer one, above 1
   * @return the estimate
   * @throws InvalidInputException if there are not three finite values or the ratio is not above 1
   */
  public static DiscretisationEstimate of(double[] values, double ratio) {
    if (values.length != 3) {
      throw new InvalidInputException("values", values.length + " given, three grids needed");
    }
    for (double value : values) {
      Checks.finite("value", value, "");
    }
    if (!(ratio > 1) || Double.isInfinite(ratio)) {
      throw new InvalidInputException("ratio of cell widths", ratio + " must be above 1");
    }
    double coarseStep = values[0] - values[1];
    double fineStep = values[1] - values[2];
    if (fineStep == 0) {
      return new DiscretisationEstimate(values[2], TRUSTED_ORDER.high(), 0);
    }
    double quotient = coarseStep / fineStep;
    if (quotient <= 1) {
      // oscillating or diverging: no order; the larger change is the only honest measure
      double error = SAFETY * Math.max(Math.abs(coarseStep), Math.abs(fineStep));
      return new DiscretisationEstimate(values[2], Double.NaN, error);
    }
    double observed = Math.log(quotient) / Math.log(ratio);
    double order = Math.max(TRUSTED_ORDER.low(), Math.min(TRUSTED_ORDER.high(), observed));
    double error = SAFETY * Math.abs(fineStep) / (Math.pow(ratio, order) - 1);
    return new DiscretisationEstimate(values[2], order, error);
  }
}
