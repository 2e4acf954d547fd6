package stenotherm.modal;

import java.util.Random;
import java.util.TreeSet;

/**
 * The points of a block among which its extremes are looked for during a run: the nodes that are
 * warmest or coldest in any of a number of usual states, each of them a random mixture of the
 * body's answers to its inputs. Few of them weigh much in any one mixture, so that the states
 * differ in kind and not only in strength.
 */
final class Candidates {
  private static final int SAMPLES = 1000;
  private static final long SEED = 20;

  /** Rows of the outputs of a projection. */
  final int[] rows;

  /**
   * Chooses among rows of a projection.
   *
   * @param from the first row
   * @param to the row after the last
   */
  Candidates(Projection projection, int from, int to, UsualStates usual) {
    int count = to - from;
    int length = usual.amplitude.length;
    double[][] point = new double[count][length];
    for (int row = 0; row < count; row++) {
      for (int i = 0; i < length; i++) {
        point[row][i] = usual.amplitude[i] * projection.outputs.entry(from + row, i);
      }
    }
    TreeSet<Integer> chosen = new TreeSet<>();
    Random random = new Random(SEED);
    double[] state = new double[length];
    for (int sample = 0; sample < SAMPLES; sample++) {
      usual.draw(random, state);
      int warmest = 0;
      int coldest = 0;
      double highest = Double.NEGATIVE_INFINITY;
      double lowest = Double.POSITIVE_INFINITY;
      for (int row = 0; row < count; row++) {
        double value = dot(point[row], state);
        if (value > highest) {
          highest = value;
          warmest = row;
        }
        if (value < lowest) {
          lowest = value;
          coldest = row;
        }
      }
      chosen.add(warmest);
      chosen.add(coldest);
    }
    rows = chosen.stream().mapToInt(row -> from + row).toArray();
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
