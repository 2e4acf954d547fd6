package stenotherm.modal;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import stenotherm.base.Range;

/**
 * By how much any node of a block can be colder or warmer than all candidates, whatever inputs do
 * within their spans, under one configuration and after others.
 *
 * <p>A node n is held against the mixture of candidates c that answers to all causes most alike,
 * with parts p_c that are not negative and add up to 1. The mixture lies between the candidates, so
 * that T_n is beyond their extreme by at most T_n - sum p_c T_c = r z, and {@link Response} bounds
 * that. Over all mixtures the least of the bounds is exactly what n can be beyond the candidates at
 * worst (the largest of a bilinear form in inputs and parts: von Neumann's minimax theorem, from
 * memory); the mixture here is the closest in the sum of squares, so that its bound is somewhat
 * more. A uniform field is the same in node and mixture and drops out.
 *
 * <p>After other configurations: with t the time since the last one ended, r z(t) is what inputs
 * have done since, and p z(0) with p_j = r_j exp(-lambda_j t); p z(0) is the same of the
 * configuration before, over the time that it lasts at least, and what is left of all before that,
 * at most the sum over its modes of what is left of each times the most that it may ever be. The
 * former part grows with t. The latter is convex in p, thus no more between two times than at the
 * larger end, but for what p bends in between. So nothing is missed between the times looked at.
 */
final class MissBound {
  /** Panels of times that are one where mixtures are sought. */
  private static final int TOGETHER = 7;

  /** How often a mixture is sought anew where it matters. */
  private static final int REFINEMENTS = 5;

  /** How many candidates a better mixture may be of. */
  private static final int POOL = 60;

  /** A mixture that is so many times more than enough is not made better. */
  private static final double HOPELESS = 1.6;

  /** Part of the sum of all differences below which they count alike. */
  private static final double ALIKE = 1e-3;

  /** Panels of the time since a change that are looked at together at first. */
  private static final int AT_FIRST = 8;

  /** Weight of the responses of a block that starts apart: only the largest one counts. */
  private static final double OF_STARTS = 0.3;

  /** Squared difference of responses that is negligible [K2]. */
  private static final double NEGLIGIBLE = 1e-10;

  private final Causes causes;
  private final Response ever;
  private final Response recent;

  /** From the configurations that may have been there before. */
  private final List<Passage> before;

  /** What each of them may bring along of each mode. */
  private final double[][] brought;

  /** The most of a state that may be there when a configuration begins. */
  private final double reach;

  /** Of each node, its temperature in the modes and what inputs add directly. */
  private final double[][] row;

  private final double[][] direct;

  /** Of each node, less the mean of all, what each cause does to it within each time [K]. */
  private final double[][] answer;

  /** Of each of these, how much of the span of the input lies above, in units of a half of it. */
  private double[] upwards = new double[0];

  /** Products of the answers of the candidates with those of all nodes. */
  private double[][] product = new double[0][];

  private final boolean[] asked;

  /** Squares of the answers, and of their differences to the mixtures. */
  private final double[] square;

  private final double[] unlike;
  private int[] candidate = new int[0];
  private final double[] amplitude;
  private final double[] difference;
  private final double[] directly;
  private final double[] passed;

  /** What inputs do up to each time ago, and what there was then, above and below. */
  private final double[] aboveUntil;

  private final double[] belowUntil;
  private final double[] aboveThen;
  private final double[] belowThen;

  /** What need not be known better. */
  private double enoughAbove;

  private double enoughBelow;

  /** What the last node can be above and below its mixture [K]. */
  private double above;

  private double below;

  /**
   * Looks at a block.
   *
   * @param before from the configurations that may have been there before; empty if there is one
   *     alone
   * @param reach the most of a state that may be there when one begins
   * @param row temperatures in the modes of {@code causes}, a row for each node
   * @param direct what inputs of 1 add directly, a row for each node
   * @param asked whether the coldest and whether the warmest temperature is asked for
   */
  MissBound(
      Causes causes,
      List<Passage> before,
      double reach,
      double[][] row,
      double[][] direct,
      boolean[] asked) {
    this.asked = asked;
    this.causes = causes;
    this.reach = reach;
    this.row = row;
    this.direct = direct;
    this.ever = new Response(causes.ever);
    this.recent = new Response(causes.recent);
    this.amplitude = new double[causes.modes()];
    this.difference = new double[causes.modes()];
    this.passed = new double[causes.modes()];
    int times = causes.recent.panels + 1;
    this.aboveUntil = new double[times];
    this.belowUntil = new double[times];
    this.aboveThen = new double[times];
    this.belowThen = new double[times];
    this.directly = new double[causes.inputs.size()];
    this.before = before;
    this.brought = new double[before.size()][causes.modes()];
    for (int b = 0; b < brought.length; b++) {
      for (int j = 0; j < brought[b].length; j++) {
        brought[b][j] = before.get(b).ofMode(j);
      }
    }
    this.answer = answers();
    this.unlike = new double[row.length];
    this.square = new double[row.length];
    for (int n = 0; n < square.length; n++) {
      square[n] = Columns.product(answer[n], answer[n]);
    }
  }

  private static void multiply(double[] a, double[] b, double[] product) {
    for (int j = 0; j < product.length; j++) {
      product[j] = a[j] * b[j];
    }
  }

  private double[][] answers() {
    Decays decays = causes.ever;
    int groups = (decays.panels + TOGETHER - 1) / TOGETHER;
    int inputs = causes.inputs.size();
    int ofRest = before.isEmpty() ? 0 : causes.modes();
    int count = inputs * (groups + 1) + causes.starts.size() * groups + ofRest;
    double[][] answers = new double[row.length][count];
    double[] sums = new double[decays.panels];
    double[] mean = new double[count];
    upwards = new double[count];
    Arrays.fill(upwards, 1);
    for (int i = 0; i < inputs; i++) {
      Range range = causes.inputs.get(i).range();
      if (range.high() > range.low()) {
        Arrays.fill(
            upwards,
            i * (groups + 1),
            (i + 1) * (groups + 1),
            2 * range.high() / (range.high() - range.low()));
      }
    }
    for (int n = 0; n < row.length; n++) {
      int at = 0;
      for (int i = 0; i < inputs; i++) {
        Causes.Cause cause = causes.inputs.get(i);
        double half = (cause.range().high() - cause.range().low()) / 2;
        multiply(row[n], cause.ofModes(), amplitude);
        addUp(decays.integral, sums);
        for (int k = 0; k < decays.panels; k++) {
          answers[n][at + k / TOGETHER] += half * sums[k];
        }
        at += groups;
        answers[n][at++] = half * direct[n][i];
      }
      for (Causes.Cause cause : causes.starts) {
        multiply(row[n], cause.ofModes(), amplitude);
        addUp(decays.atEnd, sums);
        for (int k = 0; k < decays.panels; k += TOGETHER) {
          answers[n][at++] = OF_STARTS * cause.magnitude() * sums[k];
        }
      }
      for (int j = causes.ever.decaying; j < ofRest; j++) {
        double most = Math.min(reach, causes.mostEver[j]);
        answers[n][at + j] = most * row[n][j] * causes.left[j];
      }
      for (int q = 0; q < count; q++) {
        mean[q] += answers[n][q] / row.length;
      }
    }
    for (double[] of : answers) {
      for (int q = 0; q < count; q++) {
        of[q] -= mean[q];
      }
    }
    return answers;
  }

  /** Sums of the modes' values in each panel. */
  private void addUp(double[][] ofModes, double[] sums) {
    Arrays.fill(sums, 0);
    for (int j = causes.ever.decaying; j < amplitude.length; j++) {
      double much = amplitude[j];
      double[] of = ofModes[j];
      for (int k = 0; k < sums.length; k++) {
        sums[k] += much * of[k];
      }
    }
  }

  int nodes() {
    return row.length;
  }

  /** Takes some nodes among the candidates. */
  void add(int[] nodes) {
    int known = candidate.length;
    candidate = Arrays.copyOf(candidate, known + nodes.length);
    product = Arrays.copyOf(product, candidate.length);
    for (int i = 0; i < nodes.length; i++) {
      candidate[known + i] = nodes[i];
      double[] products = new double[row.length];
      for (int n = 0; n < products.length; n++) {
        products[n] = Columns.product(answer[nodes[i]], answer[n]);
      }
      product[known + i] = products;
    }
  }

  /**
   * Raises what nodes can be beyond the candidates by one more node.
   *
   * @param most what they can be below all candidates and above [K]
   */
  void raise(int node, double[] most) {
    bound(node, most[0], most[1], false);
    most[0] = Math.max(most[0], asked[0] ? below : 0);
    most[1] = Math.max(most[1], asked[1] ? above : 0);
  }

  /**
   * Bounds what a node can be beyond the candidates where that matters.
   *
   * @param allowed what it may be [K]
   * @return at most what is allowed if it is no more than that in any run; else what it is [K]
   */
  double ifMore(int node, double allowed) {
    bound(node, allowed, allowed, true);
    return Math.max(asked[0] ? below : 0, asked[1] ? above : 0);
  }

  /** Bounds a node, with better mixtures where it is more than enough. */
  private void bound(int node, double enoughBelow, double enoughAbove, boolean aloneWillDo) {
    this.enoughBelow = enoughBelow;
    this.enoughAbove = enoughAbove;
    Mixture first = mixture(node);
    unlike[node] = first.of.square();
    bound(node, first, aloneWillDo);
    double leastBelow = below;
    double leastAbove = above;
    for (int side = -1; side <= 1; side += 2) {
      Mixture mixture = first;
      for (int pass = 0; pass < REFINEMENTS; pass++) {
        double least = side < 0 ? leastBelow : leastAbove;
        double enough = side < 0 ? enoughBelow : enoughAbove;
        boolean isHopeless = aloneWillDo && least > HOPELESS * enough;
        if (asked[side < 0 ? 0 : 1] && least > enough && !isHopeless) {
          mixture = weighted(node, mixture, side);
          bound(node, mixture, aloneWillDo);
          leastBelow = Math.min(leastBelow, below);
          leastAbove = Math.min(leastAbove, above);
        }
      }
    }
    below = leastBelow;
    above = leastAbove;
  }

  private void bound(int node, Mixture mixture, boolean aloneWillDo) {
    takeMixtureOff(node, mixture);
    boundAlone();
    if (!(aloneWillDo && matters(below, above))) {
      boundAfterOthers();
    }
  }

  private boolean matters(double ofColdest, double ofWarmest) {
    return (asked[0] && ofColdest > enoughBelow) || (asked[1] && ofWarmest > enoughAbove);
  }

  /** The closest mixture of all candidates. */
  private Mixture mixture(int node) {
    int[] all = new int[candidate.length];
    for (int c = 0; c < all.length; c++) {
      all[c] = c;
    }
    return new Mixture(
        all,
        new NearestMixture(
            all.length,
            (a, b) -> product[a][candidate[b]] - product[a][node] - product[b][node] + square[node],
            NEGLIGIBLE));
  }

  /**
   * A better mixture than another one. The sum of the squares of all differences, each divided by
   * its magnitude, is the sum of their magnitudes, which the bound is about: so the squares are
   * weighted by what the other mixture has left; and by what the input can do in that direction,
   * which may be nothing, as a power is never negative.
   *
   * @param side -1 for what the node can be below its mixture, 1 for what it can be above
   */
  private Mixture weighted(int node, Mixture last, int side) {
    double[] left = answer[node].clone();
    for (int m = 0; m < last.count(); m++) {
      double[] other = answer[candidate[last.candidate(m)]];
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
      distance[mixture.candidate(m)] = -1;
    }
    return IntStream.range(0, distance.length)
        .boxed()
        .sorted(Comparator.comparingDouble(c -> distance[c]))
        .limit(POOL)
        .mapToInt(Integer::intValue)
        .toArray();
  }

  /** A mixture of some of the candidates. */
  @SuppressWarnings("ArrayRecordComponent") // internal; never compared or printed
  private record Mixture(int[] pool, NearestMixture of) {
    int count() {
      return of.count();
    }

    int candidate(int index) {
      return pool[of.point(index)];
    }

    double part(int index) {
      return of.part(index);
    }
  }

  /** Tells whether a node answers more like another one than like its mixture when last bounded. */
  boolean isCloser(int node, int other) {
    double together = Columns.product(answer[node], answer[other]);
    return square[node] + square[other] - 2 * together < unlike[node];
  }

  private void takeMixtureOff(int node, Mixture mixture) {
    System.arraycopy(row[node], 0, difference, 0, difference.length);
    System.arraycopy(direct[node], 0, directly, 0, directly.length);
    for (int m = 0; m < mixture.count(); m++) {
      int other = candidate[mixture.candidate(m)];
      double part = mixture.part(m);
      for (int j = 0; j < difference.length; j++) {
        difference[j] -= part * row[other][j];
      }
      for (int i = 0; i < directly.length; i++) {
        directly[i] -= part * direct[other][i];
      }
    }
  }

  /** In a run that begins under this configuration, or in which it has long been the same. */
  private void boundAlone() {
    above = 0;
    below = 0;
    for (int i = 0; i < directly.length; i++) {
      Causes.Cause cause = causes.inputs.get(i);
      above += cause.most(Math.max(0, directly[i]), Math.max(0, -directly[i]));
      below += cause.most(Math.max(0, -directly[i]), Math.max(0, directly[i]));
    }
    aboveUntil[0] = above;
    belowUntil[0] = below;
    for (Causes.Cause cause : causes.inputs) {
      multiply(difference, cause.ofModes(), amplitude);
      ever.bound(amplitude);
      above += cause.most(ever.positive, ever.negative);
      below += cause.most(ever.negative, ever.positive);
    }
    double started = 0;
    double startedBelow = 0;
    for (Causes.Cause cause : causes.starts) {
      multiply(difference, cause.ofModes(), amplitude);
      ever.bound(amplitude);
      started += Math.max(cause.most(ever.highest, 0), cause.most(0, ever.lowest));
      startedBelow += Math.max(cause.most(ever.lowest, 0), cause.most(0, ever.highest));
    }
    double left = before.isEmpty() ? 0 : causes.ofEarlier(difference, reach);
    above += Math.max(started, left);
    below += Math.max(startedBelow, left);
  }

  /** In a run in which this configuration has been there for less than the shortest time. */
  private void boundAfterOthers() {
    if (before.isEmpty()) {
      return;
    }
    Arrays.fill(aboveUntil, 1, aboveUntil.length, aboveUntil[0]);
    Arrays.fill(belowUntil, 1, belowUntil.length, belowUntil[0]);
    for (Causes.Cause cause : causes.inputs) {
      multiply(difference, cause.ofModes(), amplitude);
      recent.bound(amplitude);
      for (int k = 0; k < causes.recent.panels; k++) {
        aboveUntil[k + 1] += cause.most(recent.positiveUntil[k], recent.negativeUntil[k]);
        belowUntil[k + 1] += cause.most(recent.negativeUntil[k], recent.positiveUntil[k]);
      }
    }
    for (int b = 0; b < brought.length; b++) {
      Arrays.fill(aboveThen, Double.NaN);
      for (int from = 0; from < causes.recent.panels; from += AT_FIRST) {
        boundBetween(b, from, Math.min(from + AT_FIRST, causes.recent.panels));
      }
    }
  }

  /** If the configuration has changed between two of the times ago. */
  private void boundBetween(int b, int from, int to) {
    Decays times = causes.recent;
    double sag = 0;
    for (int j = times.decaying; j < difference.length; j++) {
      sag += Math.abs(difference[j]) * times.curvature[j][from] * brought[b][j];
    }
    double width = times.time(to) - times.time(from);
    sag *= width * width / 8;
    boundAt(b, from);
    boundAt(b, to);
    double most = aboveUntil[to] + Math.max(aboveThen[from], aboveThen[to]) + sag;
    double least = belowUntil[to] + Math.max(belowThen[from], belowThen[to]) + sag;
    boolean matters =
        (asked[1] && most > Math.max(above, enoughAbove))
            || (asked[0] && least > Math.max(below, enoughBelow));
    if (matters && to - from > 1) {
      int middle = (from + to) / 2;
      boundBetween(b, from, middle);
      boundBetween(b, middle, to);
    } else {
      above = Math.max(above, most);
      below = Math.max(below, least);
    }
  }

  private void boundAt(int b, int time) {
    if (Double.isNaN(aboveThen[time])) {
      for (int j = 0; j < passed.length; j++) {
        passed[j] = difference[j] * (time == 0 ? 1 : causes.recent.atEnd[j][time - 1]);
      }
      before.get(b).bound(passed);
      aboveThen[time] = before.get(b).above;
      belowThen[time] = before.get(b).below;
    }
  }
}
