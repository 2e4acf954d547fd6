package stenotherm.modal;

import java.util.Arrays;

/**
 * A dense matrix that is multiplied with vectors in every step. It is stored by columns, since sums
 * along a column do not wait for each other. Immutable once filled.
 */
final class Columns {
  final int rows;

  /** The columns; entry of row r and column c at [c][r]. */
  final double[][] of;

  Columns(int rows, int count) {
    this.rows = rows;
    this.of = new double[count][rows];
  }

  /** Takes over columns. */
  Columns(int rows, double[][] columns) {
    this.rows = rows;
    this.of = columns;
  }

  int count() {
    return of.length;
  }

  /** Computes A x. */
  void multiply(double[] x, double[] result) {
    multiply(x, result, rows);
  }

  /** Computes the first rows of A x. */
  void multiply(double[] x, double[] result, int first) {
    Arrays.fill(result, 0, first, 0);
    add(x, result, first);
  }

  /** Adds A x. */
  void add(double[] x, double[] result) {
    add(x, result, rows);
  }

  private void add(double[] x, double[] result, int first) {
    int c = 0;
    for (; c + 3 < of.length; c += 4) {
      addFour(of[c], of[c + 1], of[c + 2], of[c + 3], x, c, result, first);
    }
    for (; c < of.length; c++) {
      addOne(of[c], x[c], result, first);
    }
  }

  private static void addFour(
      double[] a, double[] b, double[] c, double[] d, double[] x, int at, double[] sum, int rows) {
    double xa = x[at];
    double xb = x[at + 1];
    double xc = x[at + 2];
    double xd = x[at + 3];
    for (int r = 0; r < rows; r++) {
      sum[r] += a[r] * xa + b[r] * xb + (c[r] * xc + d[r] * xd);
    }
  }

  private static void addOne(double[] a, double x, double[] sum, int rows) {
    for (int r = 0; r < rows; r++) {
      sum[r] += a[r] * x;
    }
  }

  /** Computes A' x. */
  void multiplyTransposed(double[] x, double[] result) {
    for (int c = 0; c < of.length; c++) {
      result[c] = product(of[c], x);
    }
  }

  /** Product of a vector with another one, which may be longer. */
  static double product(double[] a, double[] b) {
    double s0 = 0;
    double s1 = 0;
    double s2 = 0;
    double s3 = 0;
    int i = 0;
    for (; i + 3 < a.length; i += 4) {
      s0 += a[i] * b[i];
      s1 += a[i + 1] * b[i + 1];
      s2 += a[i + 2] * b[i + 2];
      s3 += a[i + 3] * b[i + 3];
    }
    for (; i < a.length; i++) {
      s0 += a[i] * b[i];
    }
    return s0 + s1 + (s2 + s3);
  }
}
