package stenotherm.modal;

import java.util.Arrays;

/**
 * The temperatures at all nodes of a block, less their mean, as a product Q R of low rank: cheaper
 * than the full matrix for thousands of snapshots. Q and R come from Gram-Schmidt with column
 * pivoting, each column scaled by the root mean square of its coordinate in snapshots, until little
 * is left. Immutable.
 */
final class LowRankField {
  /** What is left, summed over the columns, each a root mean square over the nodes [K]. */
  private static final double LEFT = 0.01;

  /** Q, orthonormal columns. */
  private final Columns q;

  /** R: a row for each column of Q, an entry for each coordinate and input. */
  private final double[][] r;

  /**
   * Factorises.
   *
   * @param from first of the rows that are nodes of the block
   * @param to the row after the last
   * @param amplitude root mean square of each coordinate, then of each input
   */
  LowRankField(Projection.Rows rows, int from, int to, double[] amplitude) {
    int nodes = to - from;
    double[][] left = centred(rows, from, to);
    double[] square = new double[left.length];
    for (int i = 0; i < left.length; i++) {
      for (int n = 0; n < left[i].length; n++) {
        left[i][n] *= amplitude[i];
      }
      square[i] = Columns.product(left[i], left[i]);
    }
    double[][] unit = new double[left.length][];
    double[][] along = new double[left.length][];
    int count = 0;
    while (count < left.length && sumOfRoots(square, nodes) > LEFT) {
      unit[count] = unit(left[largest(square)]);
      along[count] = orthogonalise(unit[count], left, square);
      count++;
    }
    q = new Columns(nodes, count);
    r = new double[count][left.length];
    for (int k = 0; k < count; k++) {
      System.arraycopy(unit[k], 0, q.of[k], 0, q.rows);
      for (int i = 0; i < left.length; i++) {
        r[k][i] = amplitude[i] > 0 ? along[k][i] / amplitude[i] : 0;
      }
    }
  }

  /** The columns of all coordinates and then of all inputs, each less its mean over the nodes. */
  private static double[][] centred(Projection.Rows rows, int from, int to) {
    double[][] centred = new double[rows.ofVector().length + rows.ofInput().length][];
    for (int i = 0; i < centred.length; i++) {
      double[] column =
          i < rows.ofVector().length
              ? rows.ofVector()[i]
              : rows.ofInput()[i - rows.ofVector().length];
      centred[i] = Arrays.copyOfRange(column, from, to);
      double mean = Arrays.stream(centred[i]).average().orElse(0);
      for (int n = 0; n < centred[i].length; n++) {
        centred[i][n] -= mean;
      }
    }
    return centred;
  }

  private static double sumOfRoots(double[] square, int nodes) {
    double sum = 0;
    for (double each : square) {
      sum += Math.sqrt(Math.max(0, each) / nodes);
    }
    return sum;
  }

  private static int largest(double[] square) {
    int largest = 0;
    for (int i = 1; i < square.length; i++) {
      largest = square[i] > square[largest] ? i : largest;
    }
    return largest;
  }

  private static double[] unit(double[] column) {
    double length = Math.sqrt(Columns.product(column, column));
    double[] unit = new double[column.length];
    for (int n = 0; n < unit.length; n++) {
      unit[n] = column[n] / length;
    }
    return unit;
  }

  /** Makes all columns orthogonal to a unit vector; returns its product with each. */
  private static double[] orthogonalise(double[] unit, double[][] left, double[] square) {
    double[] along = new double[left.length];
    for (int i = 0; i < along.length; i++) {
      along[i] = Columns.product(unit, left[i]);
      square[i] -= along[i] * along[i];
      double much = along[i];
      double[] column = left[i];
      for (int n = 0; n < column.length; n++) {
        column[n] -= much * unit[n];
      }
    }
    return along;
  }

  /** Working space for the products R x. */
  double[] amplitudes() {
    return new double[q.count()];
  }

  int count() {
    return q.rows;
  }

  /**
   * Computes the temperatures at all nodes, centred on their mean.
   *
   * @param state coordinates in the basis, then inputs
   * @param amplitudes working space
   */
  void values(double[] state, double[] amplitudes, double[] values) {
    for (int k = 0; k < r.length; k++) {
      amplitudes[k] = Columns.product(r[k], state);
    }
    q.multiply(amplitudes, values);
  }
}
