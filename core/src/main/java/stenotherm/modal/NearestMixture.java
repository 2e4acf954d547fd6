package stenotherm.modal;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * The mixture of some points, with parts that are not negative and add up to 1, that comes closest
 * to another point. Wolfe's method: the points that take part are found one after the other; where
 * the closest mixture of them has a negative part, the point that gets there first leaves again.
 *
 * <p>Source: Wolfe (1976), Finding the nearest point in a polytope, Math. Programming 11:128, from
 * memory.
 */
final class NearestMixture {
  /** Part of the squared distance that is not worth another point. */
  private static final double ENOUGH = 1e-5;

  /** Ends a search that round-off keeps from ending; the mixture so far is as valid as any. */
  private static final int MOST_POINTS = 200;

  /** Added to a diagonal of 2 in the mean, so that points that nearly coincide leave a factor. */
  private static final double REGULAR = 1e-12;

  private final int points;
  private final Products products;

  /** Of each point that takes part, its position, its products with all, and its part. */
  private int[] point = new int[8];

  private double[][] product = new double[8][];

  private double[] part = new double[8];
  private int count;
  private double square;

  /** Products of the differences between points and the target. */
  interface Products {
    double of(int a, int b);
  }

  /**
   * Finds the mixture.
   *
   * @param points how many there are, at least one
   * @param products of the differences from the target
   * @param negligible squared distance below which all is well
   */
  NearestMixture(int points, Products products, double negligible) {
    this.points = points;
    this.products = products;
    int nearest = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int p = 0; p < points; p++) {
      double distance = products.of(p, p);
      nearest = distance < least ? p : nearest;
      least = Math.min(least, distance);
    }
    take(nearest, 1);
    double[] along = new double[points];
    for (int round = 0; round < MOST_POINTS; round++) {
      square = 0;
      Arrays.fill(along, 0);
      for (int i = 0; i < count; i++) {
        for (int p = 0; p < points; p++) {
          along[p] += part[i] * product[i][p];
        }
      }
      for (int i = 0; i < count; i++) {
        square += part[i] * along[point[i]];
      }
      int best = 0;
      for (int p = 1; p < points; p++) {
        best = along[p] < along[best] ? p : best;
      }
      if (square <= negligible || square - along[best] <= ENOUGH * square || takesPart(best)) {
        break;
      }
      take(best, 0);
      settle();
    }
    makeWhole();
  }

  /** Takes off what round-off has left of negative parts, and of their sum being other than 1. */
  private void makeWhole() {
    double sum = 0;
    for (int i = 0; i < count; i++) {
      part[i] = Math.max(0, part[i]);
      sum += part[i];
    }
    for (int i = 0; i < count; i++) {
      part[i] /= sum;
    }
  }

  private boolean takesPart(int candidate) {
    for (int i = 0; i < count; i++) {
      if (point[i] == candidate) {
        return true;
      }
    }
    return false;
  }

  private void take(int candidate, double share) {
    if (count == point.length) {
      point = Arrays.copyOf(point, 2 * count);
      part = Arrays.copyOf(part, 2 * count);
      product = Arrays.copyOf(product, 2 * count);
    }
    double[] row = new double[points];
    for (int p = 0; p < points; p++) {
      row[p] = products.of(candidate, p);
    }
    product[count] = row;
    point[count] = candidate;
    part[count++] = share;
  }

  /** Goes to the closest mixture of the points that take part, or as far as no part is negative. */
  private void settle() {
    while (true) {
      double[] wanted = closest();
      double step = 1;
      int first = -1;
      for (int i = 0; i < count; i++) {
        if (wanted[i] <= 0 && part[i] <= step * (part[i] - wanted[i])) {
          step = part[i] > 0 ? part[i] / (part[i] - wanted[i]) : 0;
          first = i;
        }
      }
      for (int i = 0; i < count; i++) {
        part[i] += step * (wanted[i] - part[i]);
      }
      if (first < 0 || count == 1) {
        return;
      }
      count--;
      point[first] = point[count];
      part[first] = part[count];
      product[first] = product[count];
    }
  }

  /** Parts of the closest mixture if they may be negative. */
  private double[] closest() {
    DMatrixRMaj matrix = new DMatrixRMaj(count, count);
    double scale = 0;
    for (int i = 0; i < count; i++) {
      scale += product[i][point[i]] / count;
    }
    for (int i = 0; i < count; i++) {
      for (int k = 0; k < count; k++) {
        // with any number added to all entries the solution is the same but for a factor
        matrix.set(i, k, product[i][point[k]] / scale + 1);
      }
      matrix.add(i, i, REGULAR);
    }
    LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.symmPosDef(count);
    DMatrixRMaj ones = new DMatrixRMaj(count, 1);
    ones.fill(1);
    DMatrixRMaj solution = new DMatrixRMaj(count, 1);
    if (!solver.setA(matrix)) {
      // points that coincide but for round-off: what there is will do
      return Arrays.copyOf(part, count);
    }
    solver.solve(ones, solution);
    double sum = 0;
    for (double each : solution.data) {
      sum += each;
    }
    double[] wanted = new double[count];
    for (int i = 0; i < count; i++) {
      wanted[i] = solution.data[i] / sum;
    }
    return wanted;
  }

  /** How many points take part. */
  int count() {
    return count;
  }

  /** Squared distance from the target. */
  double square() {
    return square;
  }

  int point(int index) {
    return point[index];
  }

  double part(int index) {
    return part[index];
  }
}
