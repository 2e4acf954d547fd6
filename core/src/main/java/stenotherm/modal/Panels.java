package stenotherm.modal;

import java.util.List;

/**
 * Products of many vectors with many others. The cells are taken in pieces that stay in the cache,
 * and four vectors at a time, so that each number read is used several times.
 */
final class Panels {
  /** Cells in a piece. */
  private static final int PIECE = 2048;

  private static final int TOGETHER = 4;

  private Panels() {}

  /** Computes V'Y. */
  static double[][] products(Crew crew, List<double[]> v, List<double[]> y) {
    double[][] result = new double[v.size()][y.size()];
    if (y.isEmpty()) {
      return result;
    }
    int groups = (v.size() + TOGETHER - 1) / TOGETHER;
    crew.run(
        groups,
        (worker, group) -> {
          int first = group * TOGETHER;
          int length = y.get(0).length;
          for (int from = 0; from < length; from += PIECE) {
            int to = Math.min(from + PIECE, length);
            for (int column = 0; column < y.size(); column++) {
              if (first + TOGETHER <= v.size()) {
                addProducts(v, first, y.get(column), from, to, result, column);
              } else {
                for (int row = first; row < v.size(); row++) {
                  result[row][column] += product(v.get(row), y.get(column), from, to);
                }
              }
            }
          }
        });
    return result;
  }

  private static void addProducts(
      List<double[]> v, int first, double[] y, int from, int to, double[][] result, int column) {
    double[] v0 = v.get(first);
    double[] v1 = v.get(first + 1);
    double[] v2 = v.get(first + 2);
    double[] v3 = v.get(first + 3);
    double s0 = 0;
    double s1 = 0;
    double s2 = 0;
    double s3 = 0;
    for (int i = from; i < to; i++) {
      double of = y[i];
      s0 += v0[i] * of;
      s1 += v1[i] * of;
      s2 += v2[i] * of;
      s3 += v3[i] * of;
    }
    result[first][column] += s0;
    result[first + 1][column] += s1;
    result[first + 2][column] += s2;
    result[first + 3][column] += s3;
  }

  /** Computes the product of two vectors over some cells. */
  static double product(double[] a, double[] b, int from, int to) {
    double s0 = 0;
    double s1 = 0;
    double s2 = 0;
    double s3 = 0;
    int i = from;
    for (; i + 3 < to; i += 4) {
      s0 += a[i] * b[i];
      s1 += a[i + 1] * b[i + 1];
      s2 += a[i + 2] * b[i + 2];
      s3 += a[i + 3] * b[i + 3];
    }
    for (; i < to; i++) {
      s0 += a[i] * b[i];
    }
    return s0 + s1 + (s2 + s3);
  }

  /**
   * Adds V Z to X.
   *
   * @param z a row for each of V, a column for each of X
   */
  static void addCombinations(Crew crew, List<double[]> v, double[][] z, List<double[]> x) {
    if (x.isEmpty()) {
      return;
    }
    int length = x.get(0).length;
    crew.run(
        (length + PIECE - 1) / PIECE,
        (worker, piece) -> {
          int from = piece * PIECE;
          int to = Math.min(from + PIECE, length);
          for (int column = 0; column < x.size(); column++) {
            double[] sum = x.get(column);
            int row = 0;
            for (; row + TOGETHER <= v.size(); row += TOGETHER) {
              addFour(v, row, z, column, sum, from, to);
            }
            for (; row < v.size(); row++) {
              add(v.get(row), z[row][column], sum, from, to);
            }
          }
        });
  }

  private static void addFour(
      List<double[]> v, int first, double[][] z, int column, double[] sum, int from, int to) {
    double[] v0 = v.get(first);
    double[] v1 = v.get(first + 1);
    double[] v2 = v.get(first + 2);
    double[] v3 = v.get(first + 3);
    double z0 = z[first][column];
    double z1 = z[first + 1][column];
    double z2 = z[first + 2][column];
    double z3 = z[first + 3][column];
    for (int i = from; i < to; i++) {
      sum[i] += z0 * v0[i] + z1 * v1[i] + z2 * v2[i] + z3 * v3[i];
    }
  }

  /** Adds a multiple of a vector to another over some cells. */
  static void add(double[] v, double factor, double[] sum, int from, int to) {
    for (int i = from; i < to; i++) {
      sum[i] += factor * v[i];
    }
  }
}
