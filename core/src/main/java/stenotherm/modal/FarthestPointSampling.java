package stenotherm.modal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * Chooses configurations that differ most, by farthest-point sampling. The distance of two
 * configurations is that of their Galerkin projections V'GV on the basis so far, relative to the
 * first one's.
 */
final class FarthestPointSampling {
  private FarthestPointSampling() {}

  /**
   * Chooses configurations, the first always.
   *
   * @param basis the steady states of the first configuration
   * @param most how many, unless there are fewer
   * @return those chosen: the first, then always the one that is farthest from those chosen so far;
   *     all in their order if there are no more than wanted
   */
  static List<ResolventSolver> choose(List<ResolventSolver> all, KrylovBasis basis, int most) {
    if (all.size() <= most) {
      return all;
    }
    DMatrixRMaj[] projections = projections(all, basis);
    double[] distance = new double[all.size()];
    List<ResolventSolver> chosen = new ArrayList<>();
    int next = 0;
    Arrays.fill(distance, Double.POSITIVE_INFINITY);
    while (chosen.size() < most) {
      chosen.add(all.get(next));
      int farthest = 0;
      for (int c = 0; c < distance.length; c++) {
        distance[c] = Math.min(distance[c], distance(projections[c], projections[next]));
        farthest = distance[c] > distance[farthest] ? c : farthest;
      }
      next = farthest;
    }
    return chosen;
  }

  /**
   * Square of the Frobenius norm of the difference, in coordinates in which the first is the
   * identity.
   */
  private static double distance(DMatrixRMaj a, DMatrixRMaj b) {
    double sum = 0;
    for (int i = 0; i < a.numRows; i++) {
      for (int j = 0; j < a.numRows; j++) {
        sum += (a.get(i, j) - b.get(i, j)) * (a.get(j, i) - b.get(j, i));
      }
    }
    return sum;
  }

  /** The inverse of the first one's V'GV times that of each configuration. */
  private static DMatrixRMaj[] projections(List<ResolventSolver> all, KrylovBasis basis) {
    int size = basis.size();
    DMatrixRMaj first = new DMatrixRMaj(size, size, true, all.get(0).conductance(basis).clone());
    for (int i = 0; i < size; i++) {
      first.add(i, i, ReducedModel.LEAST_SHIFT);
    }
    DMatrixRMaj inverse = new DMatrixRMaj(size, size);
    if (!CommonOps_DDRM.invert(first, inverse)) {
      throw new IllegalStateException(
          "the projections of the configurations could not be compared");
    }
    DMatrixRMaj[] projections = new DMatrixRMaj[all.size()];
    for (int c = 0; c < projections.length; c++) {
      DMatrixRMaj projection = new DMatrixRMaj(size, size, true, all.get(c).conductance(basis));
      DMatrixRMaj relative = new DMatrixRMaj(size, size);
      CommonOps_DDRM.mult(inverse, projection, relative);
      projections[c] = relative;
      all.get(c).release();
    }
    return projections;
  }
}
