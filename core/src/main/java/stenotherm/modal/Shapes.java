package stenotherm.modal;

import java.util.Arrays;

/**
 * The temperatures at all nodes of a block less their mean, put together from a few shapes: cheaper
 * than the nodes' own rows where thousands of states are looked at. The shapes are found by
 * Gram-Schmidt on the columns of the rows, each in its usual strength, the largest of what is left
 * first, until little is left. Immutable.
 */
final class Shapes {
  /** What is left, summed over the columns, each a root mean square over the nodes [K]. */
  private static final double LEFT = 0.01;

  private final Columns shapes;

  /** How much of each shape is in each coordinate and input of 1. */
  private final double[][] share;

  /**
   * Finds the shapes.
   *
   * @param from first of the rows that are nodes of the block
   * @param to the row after the last
   * @param amplitude usual strength of each coordinate, then of each input
   */
  Shapes(Projection.Rows rows, int from, int to, double[] amplitude) {
    int nodes = to - from;
    double[][] left = apart(rows, from, to);
    double[] square = new double[left.length];
    for (int i = 0; i < left.length; i++) {
      for (int n = 0; n < left[i].length; n++) {
        left[i][n] *= amplitude[i];
      }
      square[i] = Columns.product(left[i], left[i]);
    }
    double[][] shape = new double[left.length][];
    double[][] along = new double[left.length][];
    int count = 0;
    while (count < left.length && sumOfRoots(square, nodes) > LEFT) {
      shape[count] = unit(left[largest(square)]);
      along[count] = takeAway(shape[count], left, square);
      count++;
    }
    shapes = new Columns(nodes, count);
    share = new double[count][left.length];
    for (int k = 0; k < count; k++) {
      System.arraycopy(shape[k], 0, shapes.of[k], 0, shapes.rows);
      for (int i = 0; i < left.length; i++) {
        share[k][i] = amplitude[i] > 0 ? along[k][i] / amplitude[i] : 0;
      }
    }
  }

  /** The columns of all coordinates and then of all inputs, each less its mean over the nodes. */
  private static double[][] apart(Projection.Rows rows, int from, int to) {
    double[][] apart = new double[rows.ofVector().length + rows.ofInput().length][];
    for (int i = 0; i < apart.length; i++) {
      double[] column =
          i < rows.ofVector().length
              ? rows.ofVector()[i]
              : rows.ofInput()[i - rows.ofVector().length];
      apart[i] = Arrays.copyOfRange(column, from, to);
      double mean = Arrays.stream(apart[i]).average().orElse(0);
      for (int n = 0; n < apart[i].length; n++) {
        apart[i][n] -= mean;
      }
    }
    return apart;
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

  /** Takes a shape out of all columns; returns how much of it was in each. */
  private static double[] takeAway(double[] shape, double[][] left, double[] square) {
    double[] along = new double[left.length];
    for (int i = 0; i < along.length; i++) {
      along[i] = Columns.product(shape, left[i]);
      square[i] -= along[i] * along[i];
      double much = along[i];
      double[] column = left[i];
      for (int n = 0; n < column.length; n++) {
        column[n] -= much * shape[n];
      }
    }
    return along;
  }

  /** Working space for amplitudes. */
  double[] amplitudes() {
    return new double[shapes.count()];
  }

  int count() {
    return shapes.rows;
  }

  /**
   * Computes the temperatures at all nodes less their mean.
   *
   * @param state coordinates in the basis, then inputs
   * @param amplitudes working space
   */
  void values(double[] state, double[] amplitudes, double[] values) {
    for (int k = 0; k < share.length; k++) {
      amplitudes[k] = Columns.product(share[k], state);
    }
    shapes.multiply(amplitudes, values);
  }
}
