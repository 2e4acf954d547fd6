package stenotherm.modal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * Chooses among configurations those that differ most in how they take heat. With the states V that
 * a basis holds so far, V'GV is the heat that such states lose; the difference of two
 * configurations is that of V'GV, in units of the first one's.
 */
final class Representatives {
  private Representatives() {}

  /**
   * Chooses configurations, the first always.
   *
   * @param basis the steady answers of the first configuration
   * @param most how many, unless there are fewer
   * @return those chosen: first of all the first, then always the one that is farthest from all
   *     that are chosen already; all in their order if there are no more than wanted
   */
  static List<Reduction> choose(List<Reduction> all, Basis basis, int most) {
    if (all.size() <= most) {
      return all;
    }
    DMatrixRMaj[] losses = losses(all, basis);
    double[] distance = new double[all.size()];
    List<Reduction> chosen = new ArrayList<>();
    int next = 0;
    Arrays.fill(distance, Double.POSITIVE_INFINITY);
    while (chosen.size() < most) {
      chosen.add(all.get(next));
      int farthest = 0;
      for (int c = 0; c < distance.length; c++) {
        distance[c] = Math.min(distance[c], distance(losses[c], losses[next]));
        farthest = distance[c] > distance[farthest] ? c : farthest;
      }
      next = farthest;
    }
    return chosen;
  }

  /** The square of the Frobenius norm of the difference, in coordinates in which the first is 1. */
  private static double distance(DMatrixRMaj a, DMatrixRMaj b) {
    double sum = 0;
    for (int i = 0; i < a.numRows; i++) {
      for (int j = 0; j < a.numRows; j++) {
        sum += (a.get(i, j) - b.get(i, j)) * (a.get(j, i) - b.get(j, i));
      }
    }
    return sum;
  }

  /** V'GV of each configuration times the inverse of the first one's. */
  private static DMatrixRMaj[] losses(List<Reduction> all, Basis basis) {
    int size = basis.size();
    DMatrixRMaj first = new DMatrixRMaj(size, size, true, all.get(0).conductance(basis).clone());
    for (int i = 0; i < size; i++) {
      first.add(i, i, ReducedModel.SLOWEST);
    }
    DMatrixRMaj inverse = new DMatrixRMaj(size, size);
    if (!CommonOps_DDRM.invert(first, inverse)) {
      throw new IllegalStateException(
          "the steady answers of a configuration could not be compared");
    }
    DMatrixRMaj[] losses = new DMatrixRMaj[all.size()];
    for (int c = 0; c < losses.length; c++) {
      DMatrixRMaj loss = new DMatrixRMaj(size, size, true, all.get(c).conductance(basis));
      DMatrixRMaj relative = new DMatrixRMaj(size, size);
      CommonOps_DDRM.mult(inverse, loss, relative);
      losses[c] = relative;
      all.get(c).release();
    }
    return losses;
  }
}
