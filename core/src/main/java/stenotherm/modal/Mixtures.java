package stenotherm.modal;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;
import stenotherm.base.Range;

/**
 * Mixtures of the candidates of a block that answer to all causes most like one of its nodes. A
 * bound holds with any mixture; which one is taken, and all numbers here, only tell how close it is
 * and how long it takes (found by trial on random bodies). Not thread-safe while candidates are
 * added.
 */
final class Mixtures {
  /** Panels of times that are one here. */
  private static final int TOGETHER = 7;

  /** How many candidates a better mixture may be of. */
  private static final int POOL = 60;

  /** Part of the sum of all differences below which they count alike. */
  private static final double ALIKE = 1e-3;

  /** Weight of the responses of a block that starts apart: only the largest one counts. */
  private static final double OF_STARTS = 0.3;

  /** Squared difference of answers that is negligible [K2]. */
  private static final double NEGLIGIBLE = 1e-10;

  private final Causes causes;

  /** Of each node, less the mean of all, what each cause does to it within each time [K]. */
  private final double[][] answer;

  /** Of each of these, how much of the span of the input lies above, in units of a half of it. */
  private final double[] upwards;

  /** Squares of the answers, and of their differences to the closest mixtures found. */
  private final double[] square;

  private final double[] unlike;
  private int[] candidate = new int[0];

  /** Products of the answers of the candidates with those of all nodes. */
  private double[][] product = new double[0][];

  /** A mixture of some of the candidates, which are told by their positions among all. */
  @SuppressWarnings("ArrayRecordComponent") // internal; never compared or printed
  record Mixture(int[] candidate, int[] pool, NearestMixture of) {
    int count() {
      return of.count();
    }

    int position(int index) {
      return pool[of.point(index)];
    }

    int node(int index) {
      return candidate[position(index)];
    }

    double part(int index) {
      return of.part(index);
    }
  }

  /**
   * Takes a block up, still without candidates.
   *
   * @param followsOthers whether other configurations may have been there before
   * @param row temperatures in the modes of {@code causes}, a row for each node
   * @param direct what inputs of 1 add directly, a row for each node
   */
  Mixtures(Causes causes, boolean followsOthers, double[][] row, double[][] direct) {
    this.causes = causes;
    int groups = (causes.ever.panels + TOGETHER - 1) / TOGETHER;
    int inputs = causes.inputs.size();
    int ofRest = followsOthers ? causes.modes() : 0;
    int count = inputs * (groups + 1) + causes.starts.size() * groups + ofRest;
    upwards = new double[count];
    Arrays.fill(upwards, 1);
    for (int i = 0; i < inputs; i++) {
      Range range = causes.inputs.get(i).range();
      if (range.high() > range.low()) {
        double above = 2 * range.high() / (range.high() - range.low());
        Arrays.fill(upwards, i * (groups + 1), (i + 1) * (groups + 1), above);
      }
    }
    answer = new double[row.length][count];
    double[] mean = new double[count];
    for (int n = 0; n < row.length; n++) {
      findAnswer(row[n], direct[n], answer[n]);
      for (int q = 0; q < count; q++) {
        mean[q] += answer[n][q] / row.length;
      }
    }
    for (double[] of : answer) {
      for (int q = 0; q < count; q++) {
        of[q] -= mean[q];
      }
    }
    unlike = new double[row.length];
    square = new double[row.length];
    for (int n = 0; n < square.length; n++) {
      square[n] = Columns.product(answer[n], answer[n]);
    }
  }

  /** What inputs, blocks that start apart, and the rest of earlier times do to a node. */
  private void findAnswer(double[] row, double[] direct, double[] found) {
    Decays decays = causes.ever;
    double[] sums = new double[decays.panels];
    int at = 0;
    for (int i = 0; i < causes.inputs.size(); i++) {
      Causes.Cause cause = causes.inputs.get(i);
      double half = (cause.range().high() - cause.range().low()) / 2;
      addUp(row, cause, decays.integral, sums);
      for (int k = 0; k < decays.panels; k++) {
        found[at + k / TOGETHER] += half * sums[k];
      }
      at += (decays.panels + TOGETHER - 1) / TOGETHER;
      found[at++] = half * direct[i];
    }
    for (Causes.Cause cause : causes.starts) {
      addUp(row, cause, decays.atEnd, sums);
      for (int k = 0; k < decays.panels; k += TOGETHER) {
        found[at++] = OF_STARTS * cause.magnitude() * sums[k];
      }
    }
    int ofRest = found.length - at;
    for (int j = decays.decaying; j < ofRest; j++) {
      found[at + j] = causes.mostEver[j] * row[j] * causes.left[j];
    }
  }

  /** Sums of what a cause does through all modes, in each panel. */
  private void addUp(double[] row, Causes.Cause cause, double[][] ofModes, double[] sums) {
    Arrays.fill(sums, 0);
    for (int j = causes.ever.decaying; j < row.length; j++) {
      double much = row[j] * cause.ofModes()[j];
      double[] of = ofModes[j];
      for (int k = 0; k < sums.length; k++) {
        sums[k] += much * of[k];
      }
    }
  }

  /** Takes some nodes among the candidates. */
  void add(int[] nodes) {
    int known = candidate.length;
    candidate = Arrays.copyOf(candidate, known + nodes.length);
    product = Arrays.copyOf(product, candidate.length);
    for (int i = 0; i < nodes.length; i++) {
      candidate[known + i] = nodes[i];
      double[] products = new double[answer.length];
      for (int n = 0; n < products.length; n++) {
        products[n] = Columns.product(answer[nodes[i]], answer[n]);
      }
      product[known + i] = products;
    }
  }

  /** The closest mixture of all candidates. */
  Mixture closest(int node) {
    int[] all = IntStream.range(0, candidate.length).toArray();
    NearestMixture of =
        new NearestMixture(
            all.length,
            (a, b) -> product[a][candidate[b]] - product[a][node] - product[b][node] + square[node],
            NEGLIGIBLE);
    unlike[node] = of.square();
    return new Mixture(candidate, all, of);
  }

  /**
   * A better mixture than another one. The sum of the squares of all differences, each divided by
   * its magnitude, is the sum of their magnitudes, which the bound is about: so the squares are
   * weighted by what the other mixture has left; and by what the input can do in that direction,
   * which may be nothing, as a power is never negative.
   *
   * @param side -1 for what the node can be below its mixture, 1 for what it can be above
   */
  Mixture better(int node, Mixture last, int side) {
    double[] left = answer[node].clone();
    for (int m = 0; m < last.count(); m++) {
      double[] other = answer[last.node(m)];
      for (int q = 0; q < left.length; q++) {
        left[q] -= last.part(m) * other[q];
      }
    }
    double sum = 0;
    for (double each : left) {
      sum += Math.abs(each);
    }
    double[] weight = new double[left.length];
    for (int q = 0; q < left.length; q++) {
      double matters = side * left[q] > 0 ? upwards[q] : 2 - upwards[q];
      weight[q] = Math.sqrt(Math.max(ALIKE, matters) / (Math.abs(left[q]) + ALIKE * sum));
    }
    int[] pool = pool(node, last);
    double[][] weighted = new double[pool.length][left.length];
    for (int c = 0; c < weighted.length; c++) {
      double[] other = answer[candidate[pool[c]]];
      for (int q = 0; q < left.length; q++) {
        weighted[c][q] = weight[q] * (other[q] - answer[node][q]);
      }
    }
    return new Mixture(
        candidate,
        pool,
        new NearestMixture(
            weighted.length, (a, b) -> Columns.product(weighted[a], weighted[b]), 0));
  }

  /** The candidates of a mixture, and more that answer most like a node. */
  private int[] pool(int node, Mixture mixture) {
    double[] distance = new double[candidate.length];
    for (int c = 0; c < distance.length; c++) {
      distance[c] = square[candidate[c]] + square[node] - 2 * product[c][node];
    }
    for (int m = 0; m < mixture.count(); m++) {
      distance[mixture.position(m)] = -1;
    }
    return IntStream.range(0, distance.length)
        .boxed()
        .sorted(Comparator.comparingDouble(c -> distance[c]))
        .limit(POOL)
        .mapToInt(Integer::intValue)
        .toArray();
  }

  /** Tells whether a node answers more like another one than like the closest mixture found. */
  boolean isCloser(int node, int other) {
    double together = Columns.product(answer[node], answer[other]);
    return square[node] + square[other] - 2 * together < unlike[node];
  }
}
