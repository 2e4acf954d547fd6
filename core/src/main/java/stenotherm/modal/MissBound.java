package stenotherm.modal;

import java.util.Arrays;
import java.util.List;

/**
 * By how much any node of a block can be colder or warmer than all candidates, whatever inputs do
 * within their spans, under one configuration and after others.
 *
 * <p>A node n is held against the mixture of candidates c that answers to all causes most alike,
 * with parts p_c that are not negative and add up to 1. The mixture lies between the candidates, so
 * that T_n is beyond their extreme by at most T_n - sum p_c T_c = r z, and {@link Response} bounds
 * that. Under one configuration, if no block starts apart, the least of the bounds over all
 * mixtures is exactly what n can be beyond the candidates at worst (the largest of a bilinear form
 * in inputs and parts: von Neumann's minimax theorem, from memory); the mixture here is the closest
 * in the sum of squares, so that its bound is somewhat more. A uniform field is the same in node
 * and mixture and drops out.
 *
 * <p>After other configurations: with t the time since the last one ended, r z(t) is what inputs
 * have done since, and p z(0) with p_j = r_j exp(-lambda_j t); p z(0) is the same of the
 * configuration before, over the time that it lasts at least, and what is left of all before that,
 * at most the sum over its modes of what is left of each times the most that it may ever be. The
 * former part grows with t. The latter is convex in p, thus no more between two times than at the
 * larger end, but for what p bends in between. So nothing is missed between the times looked at.
 */
final class MissBound {
  /** How often a mixture is sought anew where it matters. */
  private static final int REFINEMENTS = 5;

  /** A mixture that is so many times more than enough is not made better. */
  private static final double HOPELESS = 1.6;

  /** Panels of the time since a change that are looked at together at first. */
  private static final int AT_FIRST = 8;

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

  private final boolean[] asked;
  private final Mixtures mixtures;
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
    this.mixtures = new Mixtures(causes, !before.isEmpty(), row, direct);
  }

  private static void multiply(double[] a, double[] b, double[] product) {
    for (int j = 0; j < product.length; j++) {
      product[j] = a[j] * b[j];
    }
  }

  int nodes() {
    return row.length;
  }

  /** Takes some nodes among the candidates. */
  void add(int[] nodes) {
    mixtures.add(nodes);
  }

  /** Tells whether a node answers more like another one than like its mixture when last bounded. */
  boolean isCloser(int node, int other) {
    return mixtures.isCloser(node, other);
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

  /**
   * Bounds a node, with better mixtures where it is more than enough.
   *
   * @param aloneWillDo whether a side need not be bounded after other configurations where it is
   *     more than enough without them: they can only add to it. Of the other side nothing is known
   *     then, least of all that it is enough
   */
  private void bound(int node, double enoughBelow, double enoughAbove, boolean aloneWillDo) {
    this.enoughBelow = enoughBelow;
    this.enoughAbove = enoughAbove;
    Mixtures.Mixture first = mixtures.closest(node);
    takeMixtureOff(node, first);
    boundAlone();
    boolean isPartial = aloneWillDo && !before.isEmpty();
    double leastBelow;
    double leastAbove;
    if (isPartial && matters(below, above)) {
      leastBelow = below > enoughBelow ? below : Double.POSITIVE_INFINITY;
      leastAbove = above > enoughAbove ? above : Double.POSITIVE_INFINITY;
    } else {
      boundAfterOthers();
      leastBelow = below;
      leastAbove = above;
    }
    for (int side = -1; side <= 1; side += 2) {
      Mixtures.Mixture mixture = first;
      for (int pass = 0; pass < REFINEMENTS; pass++) {
        double least = side < 0 ? leastBelow : leastAbove;
        double enough = side < 0 ? enoughBelow : enoughAbove;
        boolean isHopeless =
            aloneWillDo && least < Double.POSITIVE_INFINITY && least > HOPELESS * enough;
        if (asked[side < 0 ? 0 : 1] && least > enough && !isHopeless) {
          mixture = mixtures.better(node, mixture, side);
          takeMixtureOff(node, mixture);
          boundAlone();
          boolean isTold = isPartial && (side < 0 ? below : above) > enough;
          if (!isTold) {
            boundAfterOthers();
          }
          if (side < 0 || !isTold) {
            leastBelow = Math.min(leastBelow, below);
          }
          if (side > 0 || !isTold) {
            leastAbove = Math.min(leastAbove, above);
          }
        }
      }
    }
    below = leastBelow;
    above = leastAbove;
  }

  private boolean matters(double ofColdest, double ofWarmest) {
    return (asked[0] && ofColdest > enoughBelow) || (asked[1] && ofWarmest > enoughAbove);
  }

  private void takeMixtureOff(int node, Mixtures.Mixture mixture) {
    System.arraycopy(row[node], 0, difference, 0, difference.length);
    System.arraycopy(direct[node], 0, directly, 0, directly.length);
    for (int m = 0; m < mixture.count(); m++) {
      int other = mixture.node(m);
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
