package stenotherm.modal;

import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * Rows of outputs that were read at some factors on conductivities, interpolated for others: the
 * combination of those read whose factors, in logarithms, combine to the factors wanted, with
 * weights that sum to 1 and prefer what is near (the weights of locally linear embedding, Roweis
 * and Saul 2000, Science 290:2323, with a penalty on distance). Exact at what was read. Immutable.
 *
 * @param factors factors at which rows were read
 * @param rows the rows there
 */
record InterpolatedRows(List<double[]> factors, List<Projection.Rows> rows) {
  /** Weight of the penalty on distance beside the residual. */
  private static final double PENALTY = 0.01;

  /** Sums of squares of logarithms that are no distance. */
  private static final double SAME = 1e-20;

  /** Copies the lists. */
  InterpolatedRows {
    factors = List.copyOf(factors);
    rows = List.copyOf(rows);
  }

  /** How many rows there are. */
  int count() {
    return rows.get(0).count();
  }

  /** The rows at some factors. */
  Projection.Rows at(double[] wanted) {
    double[] weights = weights(wanted);
    Projection.Rows sum = rows.get(0).copy();
    for (double[] column : sum.ofVector()) {
      for (int r = 0; r < column.length; r++) {
        column[r] *= weights[0];
      }
    }
    for (int read = 1; read < weights.length; read++) {
      for (int c = 0; weights[read] != 0 && c < sum.ofVector().length; c++) {
        double[] column = sum.ofVector()[c];
        Panels.add(rows.get(read).ofVector()[c], weights[read], column, 0, column.length);
      }
    }
    return sum;
  }

  private double[] weights(double[] wanted) {
    int count = factors.size();
    double[][] apart = new double[count][wanted.length];
    double[] weights = new double[count];
    for (int read = 0; read < count; read++) {
      for (int block = 0; block < wanted.length; block++) {
        apart[read][block] = Math.log(factors.get(read)[block] / wanted[block]);
      }
      if (Columns.product(apart[read], apart[read]) < SAME) {
        weights[read] = 1;
        return weights;
      }
    }
    DMatrixRMaj matrix = new DMatrixRMaj(count, count);
    DMatrixRMaj ones = new DMatrixRMaj(count, 1);
    DMatrixRMaj solution = new DMatrixRMaj(count, 1);
    for (int i = 0; i < count; i++) {
      ones.set(i, 0, 1);
      for (int j = 0; j < count; j++) {
        double product = Columns.product(apart[i], apart[j]);
        matrix.set(i, j, i == j ? (1 + PENALTY) * product : product);
      }
    }
    LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.symmPosDef(count);
    if (!solver.setA(matrix)) {
      throw new IllegalStateException("no weights between the conductivities that were read");
    }
    solver.solve(ones, solution);
    double total = 0;
    for (int i = 0; i < count; i++) {
      total += solution.get(i, 0);
    }
    for (int i = 0; i < count; i++) {
      weights[i] = solution.get(i, 0) / total;
    }
    return weights;
  }
}
