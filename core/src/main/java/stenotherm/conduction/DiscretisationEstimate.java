package stenotherm.conduction;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;

/**
 * The discretisation error of a quantity from its values on three grids (Richardson extrapolation
 * and the grid convergence index; Roache 1994, J. Fluids Eng. 116:405; from memory).
 *
 * <p>Values that order follow value = limit + constant width^order with an order of 0.5 to 2; their
 * limit is a better value than that of the finest grid. A change that falls faster than the
 * scheme's second order is taken as of second order: the errors of two grids happen to be alike.
 * Where values do not approach a limit, or more slowly than with the order 0.5, the finest value
 * stands and its error is a bound.
 *
 * <p>The extrapolated value is off by at least half of the correction, and by what the correction
 * exceeds that of second order: a low observed order comes from a singular field, but also from
 * grids whose numbers of cells do not grow alike, and then the correction is too large.
 *
 * <p>A value, thus thread-safe.
 *
 * @param fine value on the finest grid [unit of the quantity]
 * @param order observed order of convergence [-], at most 2; NaN if the three values do not tell
 *     one
 * @param error estimated error of {@code fine}, never negative [unit of the quantity]
 * @param extrapolation what is better than {@code fine}; that itself if there is no order
 */
public record DiscretisationEstimate(
    double fine, double order, double error, Extrapolation extrapolation) {
  /**
   * What the values tend to.
   *
   * @param value the extrapolated value [unit of the quantity]
   * @param error estimated error of {@code value}, never negative [unit of the quantity]; a bound
   *     if there is no order
   */
  public record Extrapolation(double value, double error) {}

  /** Orders that are trusted; faster ones are taken as its high end. */
  public static final Range TRUSTED_ORDER = new Range(0.5, 2);

  private static final double SAFETY = 1.25;

  /** The least part of a correction that may be wrong. */
  private static final double DOUBT = 0.5;

  private static final double ROUND_OFF = 1e-9;

  /**
   * Estimates the error from three grids of any widths.
   *
   * @param values three values, the quantity on the coarse, the medium and the fine grid [unit of
   *     the quantity]
   * @param widths three values, a measure of the cell width of each grid [any unit], above 0; if
   *     they do not decrease there is no order
   * @return the estimate; if the values do not converge, the larger change times the safety factor
   * @throws InvalidInputException if there are not three finite values, or a width is not above 0
   */
  public static DiscretisationEstimate of(double[] values, double[] widths) {
    check(values, widths);
    double fine = values[2];
    double coarseStep = values[0] - values[1];
    double fineStep = values[1] - fine;
    boolean refined = widths[0] > widths[1] && widths[1] > widths[2];
    // equal grids agree without having converged
    if (fineStep == 0 || !refined) {
      return bound(fine, Math.max(Math.abs(coarseStep), Math.abs(fineStep)));
    }
    double observed = coarseStep / fineStep;
    double slowest = correction(widths[1], widths[2], TRUSTED_ORDER.low()) * Math.abs(fineStep);
    if (observed < quotient(widths, TRUSTED_ORDER.low()) * (1 - ROUND_OFF)) {
      // values that still approach a limit, if slowly, have farther to go than they have come
      double noOrder = Math.log(widths[0] / widths[1]) / Math.log(widths[1] / widths[2]);
      double ahead = observed > noOrder ? slowest : 0;
      return bound(fine, Math.max(ahead, Math.max(Math.abs(coarseStep), Math.abs(fineStep))));
    }
    double order = order(widths, observed);
    double correction = correction(widths[1], widths[2], order) * fineStep;
    double size = Math.abs(correction);
    double ofSecondOrder =
        correction(widths[1], widths[2], TRUSTED_ORDER.high()) * Math.abs(fineStep);
    // what the coarse change says that second order leaves: more only where luck made the fine one
    double square = widths[1] * widths[1];
    double byCoarse =
        Math.abs(coarseStep) * widths[2] * widths[2] / (widths[0] * widths[0] - square);
    double valueError =
        Math.max(DOUBT * size, Math.max(size - ofSecondOrder, SAFETY * (byCoarse - size)));
    return new DiscretisationEstimate(
        fine,
        order,
        SAFETY * Math.max(size, byCoarse),
        new Extrapolation(fine - correction, valueError));
  }

  private static DiscretisationEstimate bound(double fine, double largestChange) {
    double error = SAFETY * largestChange;
    return new DiscretisationEstimate(fine, Double.NaN, error, new Extrapolation(fine, error));
  }

  /**
   * Returns the extrapolated value.
   *
   * @return the value [unit of the quantity]; {@link #fine} if there is no order
   */
  public double value() {
    return extrapolation.value();
  }

  /**
   * Returns the estimated error of {@link #value}.
   *
   * @return the error, never negative [unit of the quantity]; a bound if there is no order
   */
  public double valueError() {
    return extrapolation.error();
  }

  /**
   * Tells whether the grids do not order, so that the error is only known to be below a bound.
   *
   * @return true if there is no order
   */
  public boolean isBound() {
    return Double.isNaN(order);
  }

  private static void check(double[] values, double[] widths) {
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
  }

  /** Error of the finer of two grids over the change between them, at an order. */
  private static double correction(double wide, double narrow, double order) {
    double ratio = Math.pow(narrow / wide, order);
    return ratio / (1 - ratio);
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
