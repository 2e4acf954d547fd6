package stenotherm.study;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;

/**
 * Fits quadratic functions of standard normal scores to samples of one or more values by least
 * squares. Samples go into the normal equations as they come, so that memory does not depend on
 * their number; the values share the matrix of these. One for each replicate, joined in the order
 * of the replicates, gives the same bits for any number of threads.
 *
 * <p>The terms are orthonormal Hermite polynomials of the scores z: 1, z, (z² - 1)/√2, and products
 * of two scores. Their mean product is the unit matrix, so the normal equations are
 * well-conditioned and the squares of the coefficients are parts of the variance.
 *
 * <p>Not thread-safe.
 */
final class QuadraticResponse {
  static final int MOST_QUANTITIES = 40;

  /** Samples for each coefficient that products of scores need. */
  private static final int SAMPLES_PER_COEFFICIENT = 3;

  private final int quantities;

  /** Sums of products of two terms: the lower triangle, row by row. */
  private final double[] products;

  /** Sums of products of a term and each value: a row for each value. */
  private final double[][] moments;

  private final double[] sumsOfSquares;
  private long samples;
  private final double[] terms;

  /**
   * Starts without samples.
   *
   * @param quantities number of scores, 1 to {@value #MOST_QUANTITIES}
   * @param values number of values of a sample
   * @param most how many samples will come at most: where they are too few for products of two
   *     scores, these are left out from the beginning
   * @throws InvalidInputException if there are no quantities or too many
   */
  QuadraticResponse(int quantities, int values, long most) {
    if (quantities < 1 || quantities > MOST_QUANTITIES) {
      throw new InvalidInputException(
          "quantities", quantities + " must be within 1 to " + MOST_QUANTITIES);
    }
    this.quantities = quantities;
    int count = count(quantities, isEnoughForProducts(quantities, most));
    this.products = new double[count * (count + 1) / 2];
    this.moments = new double[values][count];
    this.sumsOfSquares = new double[values];
    this.terms = new double[count];
  }

  /** Number of coefficients. */
  private static int count(int quantities, boolean crossed) {
    return 1 + 2 * quantities + (crossed ? quantities * (quantities - 1) / 2 : 0);
  }

  private static boolean isEnoughForProducts(int quantities, long samples) {
    return samples >= (long) SAMPLES_PER_COEFFICIENT * count(quantities, true);
  }

  /**
   * The terms at a point; those with two scores come last, and are left out if there is no room.
   *
   * @throws InvalidInputException if the point has another number of coordinates, or one is no
   *     share
   */
  static void evaluate(int quantities, double[] point, double[] into) {
    if (point.length != quantities) {
      throw new InvalidInputException(
          "point", "has " + point.length + " coordinates and must have " + quantities);
    }
    into[0] = 1;
    for (int quantity = 0; quantity < quantities; quantity++) {
      double score = NormalScores.of(point[quantity]);
      into[1 + quantity] = score;
      into[1 + quantities + quantity] = (score * score - 1) / Math.sqrt(2);
    }
    int next = 1 + 2 * quantities;
    for (int one = 0; one < quantities && next < into.length; one++) {
      for (int other = one + 1; other < quantities; other++) {
        into[next++] = into[1 + one] * into[1 + other];
      }
    }
  }

  /**
   * Adds a sample.
   *
   * @param point shares of all cases that lie lower, one for each quantity, above 0 and below 1
   * @param values the values there, of the order of their spread: a large constant costs digits
   * @throws InvalidInputException if the point is not one of the quantities, or a value is not
   *     finite
   */
  void add(double[] point, double... values) {
    for (double value : values) {
      Checks.finite("value", value, "");
    }
    evaluate(quantities, point, terms);
    int next = 0;
    for (int row = 0; row < terms.length; row++) {
      double term = terms[row];
      for (int column = 0; column <= row; column++) {
        products[next++] += term * terms[column];
      }
      for (int value = 0; value < moments.length; value++) {
        moments[value][row] += term * values[value];
      }
    }
    for (int value = 0; value < moments.length; value++) {
      sumsOfSquares[value] += values[value] * values[value];
    }
    samples++;
  }

  /**
   * Adds all samples of another one.
   *
   * @throws InvalidInputException if it has another number of quantities
   */
  void addAll(QuadraticResponse other) {
    if (other.quantities != quantities) {
      throw new InvalidInputException(
          "quantities", other.quantities + " must be " + quantities + " as of the other response");
    }
    addAll(products, other.products);
    for (int value = 0; value < moments.length; value++) {
      addAll(moments[value], other.moments[value]);
    }
    addAll(sumsOfSquares, other.sumsOfSquares);
    samples += other.samples;
  }

  private static void addAll(double[] sum, double[] more) {
    for (int index = 0; index < sum.length; index++) {
      sum[index] += more[index];
    }
  }

  /** Tells whether there are more samples than coefficients, those of products left out. */
  boolean canBeFitted() {
    return samples > count(quantities, false);
  }

  /**
   * Fits the function of a value: with products of two scores if there are at least three samples
   * for each coefficient, else with linear terms and squares only.
   *
   * @param value number of the value, from 0
   * @throws InvalidInputException if there are not more samples than coefficients
   * @throws IllegalStateException if the samples do not determine the coefficients
   */
  QuadraticFit fit(int value) {
    double[] ofValue = moments[value];
    double sumOfSquares = sumsOfSquares[value];
    int count = Math.min(terms.length, count(quantities, isEnoughForProducts(quantities, samples)));
    if (samples <= count) {
      throw new InvalidInputException(
          "samples", samples + " must be more than the " + count + " coefficients of the response");
    }
    DMatrixRMaj matrix = new DMatrixRMaj(count, count);
    DMatrixRMaj right = new DMatrixRMaj(count, 1);
    int next = 0;
    for (int row = 0; row < count; row++) {
      right.set(row, 0, ofValue[row]);
      for (int column = 0; column <= row; column++) {
        double product = products[next++];
        matrix.set(row, column, product);
        matrix.set(column, row, product);
      }
    }
    DMatrixRMaj solution = new DMatrixRMaj(count, 1);
    LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.symmPosDef(count);
    if (!solver.setA(matrix)) {
      throw new IllegalStateException("the samples do not determine the response");
    }
    solver.solve(right, solution);
    double[] coefficients = solution.getData().clone();
    double variation = sumOfSquares - ofValue[0] * ofValue[0] / samples;
    if (variation <= samples * Math.ulp(sumOfSquares)) {
      // no more than round-off: the value is a constant
      Arrays.fill(coefficients, 1, count, 0);
      return new QuadraticFit(quantities, coefficients, 0);
    }
    double left = sumOfSquares;
    for (int term = 0; term < count; term++) {
      left -= coefficients[term] * ofValue[term];
    }
    // mean squares by degrees of freedom; round-off may leave less than nothing
    double unexplained = Math.max(0, left) / (samples - count) * (samples - 1) / variation;
    return new QuadraticFit(quantities, coefficients, unexplained);
  }
}
