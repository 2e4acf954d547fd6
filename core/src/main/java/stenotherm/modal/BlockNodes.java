package stenotherm.modal;

import java.util.Arrays;

/**
 * The temperatures at all nodes of a block, linear in the state and the inputs. In single
 * precision, since there are many of them and a tenth of a millikelvin is enough. Immutable.
 */
final class BlockNodes {
  private final int count;

  /** A column for each coordinate. */
  private final float[][] ofVector;

  /** A column for each input; empty if it adds nothing to any node, as to those inside a body. */
  private final float[][] ofInput;

  /**
   * Takes over rows of a projection.
   *
   * @param from the first that is a node of the block
   * @param to the row after the last
   */
  BlockNodes(Projection.Rows rows, int from, int to) {
    count = to - from;
    ofVector = part(rows.ofVector(), from, to);
    ofInput = part(rows.ofInput(), from, to);
    for (int u = 0; u < ofInput.length; u++) {
      if (isZero(ofInput[u])) {
        ofInput[u] = new float[0];
      }
    }
  }

  private static float[][] part(double[][] columns, int from, int to) {
    float[][] part = new float[columns.length][to - from];
    for (int c = 0; c < columns.length; c++) {
      for (int n = from; n < to; n++) {
        part[c][n - from] = (float) columns[c][n];
      }
    }
    return part;
  }

  private static boolean isZero(float[] column) {
    for (float entry : column) {
      if (entry != 0) {
        return false;
      }
    }
    return true;
  }

  int count() {
    return count;
  }

  /**
   * The columns of all coordinates and then of all inputs, each centred on its mean over the nodes.
   */
  double[][] centred() {
    double[][] centred = new double[ofVector.length + ofInput.length][count];
    for (int i = 0; i < centred.length; i++) {
      float[] column = i < ofVector.length ? ofVector[i] : ofInput[i - ofVector.length];
      double sum = 0;
      for (float entry : column) {
        sum += entry;
      }
      for (int n = 0; n < column.length; n++) {
        centred[i][n] = column[n] - sum / count;
      }
    }
    return centred;
  }

  /** Computes the temperatures at all nodes from coordinates in the basis and inputs. */
  void values(double[] coordinates, double[] inputs, double[] values) {
    Arrays.fill(values, 0);
    int c = 0;
    for (; c + 3 < ofVector.length; c += 4) {
      addFour(
          ofVector[c], ofVector[c + 1], ofVector[c + 2], ofVector[c + 3], coordinates, c, values);
    }
    for (; c < ofVector.length; c++) {
      addOne(ofVector[c], coordinates[c], values);
    }
    for (int u = 0; u < ofInput.length; u++) {
      addOne(ofInput[u], inputs[u], values);
    }
  }

  private static void addFour(
      float[] a, float[] b, float[] c, float[] d, double[] x, int at, double[] sum) {
    double xa = x[at];
    double xb = x[at + 1];
    double xc = x[at + 2];
    double xd = x[at + 3];
    for (int n = 0; n < sum.length; n++) {
      sum[n] += a[n] * xa + b[n] * xb + (c[n] * xc + d[n] * xd);
    }
  }

  private static void addOne(float[] a, double x, double[] sum) {
    for (int n = 0; n < a.length; n++) {
      sum[n] += a[n] * x;
    }
  }
}
