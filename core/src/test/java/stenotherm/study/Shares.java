package stenotherm.study;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;

/**
 * Shares of the variance of any function of independent quantities, by pick-freeze: pairs of points
 * A and B, and for each quantity a point that is A but for this quantity's coordinate, which is
 * B's.
 *
 * <p>Sources: first order by A. Saltelli, P. Annoni, I. Azzini, F. Campolongo, M. Ratto and S.
 * Tarantola (2010), Variance based sensitivity analysis of model output. Design and estimator for
 * the total sensitivity index, Comput. Phys. Commun. 181, 259-270, table 2 (b); total by M. J. W.
 * Jansen (1999), Analysis of variance designs for model output, Comput. Phys. Commun. 117, 35-43.
 * Citations read in works that use them, formulas likewise.
 */
final class Shares {
  /** A pair of points has two coordinates for each. */
  private static final int MOST_QUANTITIES = SobolPoints.MOST_DIMENSIONS / 2;

  private final double[] first;
  private final double[] differences;
  private final double[] squares;
  private double sum;
  private double sumOfSquares;
  private long pairs;

  private Shares(int quantities) {
    first = new double[quantities];
    differences = new double[quantities];
    squares = new double[quantities];
  }

  /**
   * Estimates the shares, on this thread.
   *
   * @param names what the quantities are called, 1 to {@value #MOST_QUANTITIES}
   * @param function called with points whose coordinates are above 0 and below 1, in an array that
   *     it must neither keep nor change
   * @param replicates number of scramblings, at least 1
   * @param points pairs of points of each, a power of two; each takes two calls of the function,
   *     and one for each quantity
   * @param seed seed of the scramblings
   * @return the shares in the order of the names; 0 if the function does not vary
   * @throws InvalidInputException if a number is out of range
   */
  static List<Share> of(
      List<String> names,
      ToDoubleFunction<double[]> function,
      int replicates,
      int points,
      long seed) {
    int quantities = names.size();
    if (quantities < 1 || quantities > MOST_QUANTITIES) {
      throw new InvalidInputException(
          "quantities", quantities + " must be within 1 to " + MOST_QUANTITIES);
    }
    if (replicates < 1) {
      throw new InvalidInputException("replicates", replicates + " must be at least 1");
    }
    if (points < 1 || points > SobolPoints.MOST_POINTS || Integer.bitCount(points) != 1) {
      throw new InvalidInputException(
          "points", points + " must be a power of two up to " + SobolPoints.MOST_POINTS);
    }
    Shares shares = new Shares(quantities);
    for (int replicate = 0; replicate < replicates; replicate++) {
      Checks.notInterrupted("between replicates");
      SobolPoints pair = new SobolPoints(2 * quantities, seed, replicate);
      shares.add(pair, points, function);
    }
    return shares.result(names);
  }

  private void add(SobolPoints pair, int points, ToDoubleFunction<double[]> function) {
    int quantities = first.length;
    double[] both = new double[2 * quantities];
    double[] a = new double[quantities];
    double[] b = new double[quantities];
    for (int index = 0; index < points; index++) {
      pair.point(index, both);
      System.arraycopy(both, 0, a, 0, quantities);
      System.arraycopy(both, quantities, b, 0, quantities);
      double atA = function.applyAsDouble(a);
      double atB = function.applyAsDouble(b);
      for (int quantity = 0; quantity < quantities; quantity++) {
        double kept = a[quantity];
        a[quantity] = b[quantity];
        double difference = function.applyAsDouble(a) - atA;
        a[quantity] = kept;
        first[quantity] += atB * difference;
        differences[quantity] += difference;
        squares[quantity] += difference * difference;
      }
      sum += atA + atB;
      sumOfSquares += atA * atA + atB * atB;
      pairs++;
    }
  }

  private List<Share> result(List<String> names) {
    double mean = sum / (2 * pairs);
    double variance = sumOfSquares / (2 * pairs) - mean * mean;
    List<Share> shares = new ArrayList<>();
    for (int quantity = 0; quantity < first.length; quantity++) {
      // f(B) less its mean: a constant would add noise
      double ofFirst = (first[quantity] - mean * differences[quantity]) / pairs;
      double ofTotal = squares[quantity] / (2 * pairs);
      shares.add(
          variance > 0
              ? new Share(names.get(quantity), ofFirst / variance, ofTotal / variance)
              : new Share(names.get(quantity), 0, 0));
    }
    return List.copyOf(shares);
  }
}
