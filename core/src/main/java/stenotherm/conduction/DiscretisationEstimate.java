package stenotherm.conduction;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;

/**
 * An estimate of the discretisation error of a quantity from its values on three grids (Roache
 * 1994, J. Fluids Eng. 116:405; from memory). The observed order is trusted between 0.5 and 2; the
 * safety factor is 1.25.
 *
 * <p>A value, thus thread-safe.
 *
 * @param fine value on the finest grid
 * @param order observed order of convergence, limited to the trusted range; NaN if the three values
 *     do not converge
 * @param error estimated error of {@code fine}, never negative [unit of the quantity]
 */
public record DiscretisationEstimate(double fine, double order, double error) {
  /** Orders outside this range are taken as its ends. */
  public static final Range TRUSTED_ORDER = new Range(0.5, 2);

  private static final double SAFETY = 1.25;

  /**
   * Estimates the error from three grids of any widths, in the form value = limit + constant
   * width^order.
   *
   * @param values the quantity on the coarse, the medium and the fine grid
   * @param widths a measure of the cell width of each grid, above 0, in any unit; if they do not
   *     decrease there is no order
   * @return the estimate; if the values do not converge, the larger change times the safety factor
   * @throws InvalidInputException if there are not three finite values, or a width is not above 0
   */
  public static DiscretisationEstimate of(double[] values, double[] widths) {
    if (values.length != 3 || widths.length != 3) {
      throw new InvalidInputException(
          "grids",
          values.length + " values and " + widths.length + " widths, three of each needed");
    }
    for (double value : values) {
      Checks.finite("value", value, "");
    }
    for (double width : widths) {
      Checks.positive("cell width", width, "");
    }
    double coarseStep = values[0] - values[1];
    double fineStep = values[1] - values[2];
    if (fineStep == 0) {
      // equal grids agree without having converged
      return new DiscretisationEstimate(values[2], Double.NaN, SAFETY * Math.abs(coarseStep));
    }
    boolean refined = widths[0] > widths[1] && widths[1] > widths[2];
    // the quotient of changes as the order goes to zero; below it the values do not converge
    double noOrder = Math.log(widths[0] / widths[1]) / Math.log(widths[1] / widths[2]);
    if (!refined || coarseStep / fineStep <= noOrder) {
      double larger = SAFETY * Math.max(Math.abs(coarseStep), Math.abs(fineStep));
      return new DiscretisationEstimate(values[2], Double.NaN, larger);
    }
    double order = order(widths, coarseStep / fineStep);
    double fineWidth = Math.pow(widths[2] / widths[1], order);
    double error = SAFETY * Math.abs(fineStep) * fineWidth / (1 - fineWidth);
    return new DiscretisationEstimate(values[2], order, error);
  }

  /**
   * The order within the trusted range whose quotient of changes is the one observed; the quotient
   * grows with it.
   */
  private static double order(double[] widths, double observed) {
    double low = TRUSTED_ORDER.low();
    double high = TRUSTED_ORDER.high();
    if (observed >= quotient(widths, high)) {
      return high;
    }
    if (observed <= quotient(widths, low)) {
      return low;
    }
    for (int halving = 0; halving < 50; halving++) {
      double middle = (low + high) / 2;
      if (quotient(widths, middle) < observed) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /** Change from coarse to medium over change from medium to fine, at an order. */
  private static double quotient(double[] widths, double order) {
    double medium = Math.pow(widths[1], order);
    return (Math.pow(widths[0], order) - medium) / (medium - Math.pow(widths[2], order));
  }
}
