package stenotherm.modal;

import java.util.ArrayList;
import java.util.List;
import stenotherm.base.Workers;

/**
 * Products of many vectors with many others. The cells are taken in pieces that fit the cache, four
 * vectors with two of the others at a time, so that each number read is used several times.
 */
final class Panels {
  /** Cells in a piece. */
  private static final int PIECE = 2048;

  /** The same where the pieces of all vectors and of their products must fit. */
  private static final int SHORT_PIECE = 512;

  /** Parts of the body whose sums are kept apart. */
  private static final int PARTS = 8;

  private static final int TOGETHER = 4;

  private Panels() {}

  /** Computes V'Y. */
  static double[][] products(Workers workers, List<double[]> v, List<double[]> y) {
    double[][] result = new double[v.size()][y.size()];
    if (y.isEmpty()) {
      return result;
    }
    int length = y.get(0).length;
    int groups = (v.size() + TOGETHER - 1) / TOGETHER;
    workers.run(
        groups,
        (worker, group) -> {
          int first = group * TOGETHER;
          int end = Math.min(first + TOGETHER, v.size());
          for (int from = 0; from < length; from += PIECE) {
            int count = Math.min(PIECE, length - from);
            for (int column = 0; column < y.size(); column += 2) {
              int last = Math.min(column + 2, y.size());
              addProducts(v, first, end, from, y, column, last, from, count, result);
            }
          }
        });
    return result;
  }

  /**
   * Computes the columns of V'GV from one vector on.
   *
   * @param multiply computes a part of G v
   * @return a row for each of V, a column for each of the vectors; entries below the diagonal of
   *     the symmetric whole are not computed
   */
  static double[][] symmetricProducts(
      Workers workers, List<double[]> v, int known, Multiply multiply) {
    int columns = v.size() - known;
    int length = v.get(0).length;
    int pieces = (length + SHORT_PIECE - 1) / SHORT_PIECE;
    // the number of parts does not depend on that of the threads: the same bits for any
    double[][][] sums = new double[PARTS][v.size()][columns];
    List<List<double[]>> ofWorkers = new ArrayList<>();
    for (int worker = 0; worker < workers.threads(); worker++) {
      ofWorkers.add(List.of(new double[columns][SHORT_PIECE]));
    }
    workers.run(
        PARTS,
        (worker, part) -> {
          List<double[]> of = ofWorkers.get(worker);
          for (int piece = part * pieces / PARTS; piece < (part + 1) * pieces / PARTS; piece++) {
            int from = piece * SHORT_PIECE;
            int count = Math.min(SHORT_PIECE, length - from);
            for (int column = 0; column < columns; column++) {
              multiply.part(worker, v.get(known + column), from, count, of.get(column));
            }
            for (int column = 0; column < columns; column += 2) {
              int last = Math.min(column + 2, columns);
              for (int first = 0; first < known + last; first += TOGETHER) {
                int end = Math.min(first + TOGETHER, v.size());
                addProducts(v, first, end, from, of, column, last, 0, count, sums[part]);
              }
            }
          }
        });
    double[][] result = sums[0];
    for (int part = 1; part < PARTS; part++) {
      for (int row = 0; row < result.length; row++) {
        for (int column = 0; column < columns; column++) {
          result[row][column] += sums[part][row][column];
        }
      }
    }
    return result;
  }

  /** Multiplies a vector with a matrix, a part of it at a time. */
  interface Multiply {
    /**
     * Computes some entries of the product.
     *
     * @param worker number of the thread
     * @param from position of the first entry
     * @param result where to put the entries, from its start
     */
    void part(int worker, double[] v, int from, int count, double[] result);
  }

  /**
   * Adds products over some cells of up to four vectors with up to two.
   *
   * @param fromV position of the first cell in the former
   * @param fromY position of the same cell in the latter
   */
  private static void addProducts(
      List<double[]> v,
      int firstV,
      int endV,
      int fromV,
      List<double[]> y,
      int firstY,
      int endY,
      int fromY,
      int count,
      double[][] result) {
    if (endV == firstV + TOGETHER && endY == firstY + 2) {
      addTile(v, firstV, fromV, y, firstY, fromY, count, result);
      return;
    }
    for (int row = firstV; row < endV; row++) {
      for (int column = firstY; column < endY; column++) {
        result[row][column] += product(v.get(row), fromV, y.get(column), fromY, count);
      }
    }
  }

  private static void addTile(
      List<double[]> v,
      int firstV,
      int fromV,
      List<double[]> y,
      int firstY,
      int fromY,
      int count,
      double[][] result) {
    double[] v0 = v.get(firstV);
    double[] v1 = v.get(firstV + 1);
    double[] v2 = v.get(firstV + 2);
    double[] v3 = v.get(firstV + 3);
    double[] ya = y.get(firstY);
    double[] yb = y.get(firstY + 1);
    double a0 = 0;
    double a1 = 0;
    double a2 = 0;
    double a3 = 0;
    double b0 = 0;
    double b1 = 0;
    double b2 = 0;
    double b3 = 0;
    for (int i = 0; i < count; i++) {
      double a = ya[fromY + i];
      double b = yb[fromY + i];
      a0 += v0[fromV + i] * a;
      a1 += v1[fromV + i] * a;
      a2 += v2[fromV + i] * a;
      a3 += v3[fromV + i] * a;
      b0 += v0[fromV + i] * b;
      b1 += v1[fromV + i] * b;
      b2 += v2[fromV + i] * b;
      b3 += v3[fromV + i] * b;
    }
    result[firstV][firstY] += a0;
    result[firstV + 1][firstY] += a1;
    result[firstV + 2][firstY] += a2;
    result[firstV + 3][firstY] += a3;
    result[firstV][firstY + 1] += b0;
    result[firstV + 1][firstY + 1] += b1;
    result[firstV + 2][firstY + 1] += b2;
    result[firstV + 3][firstY + 1] += b3;
  }

  /**
   * Computes the product of two vectors over some cells.
   *
   * @param fromA position of the first cell in a
   * @param fromB position of the same cell in b
   */
  private static double product(double[] a, int fromA, double[] b, int fromB, int count) {
    double s0 = 0;
    double s1 = 0;
    double s2 = 0;
    double s3 = 0;
    int i = 0;
    for (; i + 3 < count; i += 4) {
      s0 += a[fromA + i] * b[fromB + i];
      s1 += a[fromA + i + 1] * b[fromB + i + 1];
      s2 += a[fromA + i + 2] * b[fromB + i + 2];
      s3 += a[fromA + i + 3] * b[fromB + i + 3];
    }
    for (; i < count; i++) {
      s0 += a[fromA + i] * b[fromB + i];
    }
    return s0 + s1 + (s2 + s3);
  }

  /**
   * Adds V Z to X.
   *
   * @param z a row for each of V, a column for each of X
   */
  static void addCombinations(Workers workers, List<double[]> v, double[][] z, List<double[]> x) {
    if (x.isEmpty()) {
      return;
    }
    int length = x.get(0).length;
    workers.run(
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
