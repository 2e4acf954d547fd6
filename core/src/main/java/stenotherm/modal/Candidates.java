package stenotherm.modal;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * The nodes of a block at which its extremes are looked for during a run: so many that in none of a
 * number of usual states under some of the configurations is an extreme over them further from that
 * over all nodes than a small difference. Immutable once chosen.
 */
final class Candidates {
  /**
   * What the extremes over the candidates may miss in the states looked at [K], or as a part of the
   * block's spread, whichever is more.
   */
  private static final double MISSED = 0.002;

  private static final double PART_MISSED = 0.005;

  private static final int SAMPLES = 3000;
  private static final int MOST_LEGS = 3;
  private static final long SEED = 20;

  private final List<Integer> nodes = new ArrayList<>();

  /**
   * Chooses the candidates of each block with extremes.
   *
   * @param legs the body in each configuration
   */
  static List<Candidates> choose(OutputPlan plan, List<ProjectedLeg> legs, Body body) {
    List<Candidates> chosen = new ArrayList<>();
    for (int block = 0; block < plan.blocks.size(); block++) {
      chosen.add(new Candidates());
    }
    if (chosen.isEmpty()) {
      return chosen;
    }
    int looked = Math.min(MOST_LEGS, legs.size());
    Random random = new Random(SEED);
    for (int l = 0; l < looked; l++) {
      ProjectedLeg leg = legs.get(l * legs.size() / looked);
      choose(plan, leg, new UsualState(leg.whole, body), SAMPLES / looked, random, chosen);
    }
    return chosen;
  }

  private static void choose(
      OutputPlan plan,
      ProjectedLeg leg,
      UsualState usual,
      int samples,
      Random random,
      List<Candidates> chosen) {
    double[] amplitude = usual.amplitude(random);
    Shapes[] shapes = new Shapes[chosen.size()];
    double[][] amplitudes = new double[shapes.length][];
    double[][] values = new double[shapes.length][];
    for (int block = 0; block < shapes.length; block++) {
      shapes[block] = new Shapes(leg.nodes[block], amplitude);
      amplitudes[block] = shapes[block].amplitudes();
      values[block] = new double[shapes[block].count()];
    }
    for (int sample = 0; sample < samples; sample++) {
      usual.draw(random);
      for (int block = 0; block < shapes.length; block++) {
        shapes[block].values(usual.state, amplitudes[block], values[block]);
        for (int side = -1; side <= 1; side += 2) {
          if (plan.asksFor(side, block)) {
            chosen.get(block).add(side, values[block]);
          }
        }
      }
    }
  }

  /**
   * Adds the extreme node if those there are miss too much of it.
   *
   * @param side -1 for the coldest, 1 for the warmest
   */
  private void add(int side, double[] values) {
    int extreme = 0;
    int opposite = 0;
    for (int n = 1; n < values.length; n++) {
      if (side * values[n] > side * values[extreme]) {
        extreme = n;
      }
      if (side * values[n] < side * values[opposite]) {
        opposite = n;
      }
    }
    double spread = Math.abs(values[extreme] - values[opposite]);
    double allowed = Math.max(MISSED, PART_MISSED * spread);
    for (int known : nodes) {
      if (side * values[known] >= side * values[extreme] - allowed) {
        return;
      }
    }
    nodes.add(extreme);
  }

  int count() {
    return nodes.size();
  }

  int node(int candidate) {
    return nodes.get(candidate);
  }
}
