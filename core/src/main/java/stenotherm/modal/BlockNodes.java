package stenotherm.modal;

import java.util.Arrays;

/** The temperatures at all nodes of a block, linear in the state and the inputs. Immutable. */
final class BlockNodes {
  private final Columns ofVector;
  private final Columns ofInput;

  /**
   * Takes over rows of a projection.
   *
   * @param from the first that is a node of the block
   * @param to the row after the last
   */
  BlockNodes(Projection.Rows rows, int from, int to) {
    ofVector = part(rows.ofVector(), from, to);
    ofInput = part(rows.ofInput(), from, to);
  }

  private static Columns part(double[][] columns, int from, int to) {
    Columns part = new Columns(to - from, columns.length);
    for (int c = 0; c < columns.length; c++) {
      part.of[c] = Arrays.copyOfRange(columns[c], from, to);
    }
    return part;
  }

  int count() {
    return ofVector.rows;
  }

  /** The columns of all coordinates and then of all inputs, each less its mean over the nodes. */
  double[][] apart() {
    double[][] apart = new double[ofVector.count() + ofInput.count()][];
    for (int i = 0; i < apart.length; i++) {
      double[] column = i < ofVector.count() ? ofVector.of[i] : ofInput.of[i - ofVector.count()];
      double mean = Arrays.stream(column).sum() / column.length;
      apart[i] = new double[column.length];
      for (int n = 0; n < column.length; n++) {
        apart[i][n] = column[n] - mean;
      }
    }
    return apart;
  }

  /** Computes the temperatures at all nodes from coordinates in the basis and inputs. */
  void values(double[] coordinates, double[] inputs, double[] values) {
    ofVector.multiply(coordinates, values);
    ofInput.add(inputs, 0, values);
  }
}
