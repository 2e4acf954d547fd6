package stenotherm.modal;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * The nodes of a block at which its extremes are looked for during a run: so many that in none of a
 * number of usual states, spread over the configurations, an extreme over them is further from that
 * over all nodes than a small difference. Immutable.
 *
 * <p>Tried instead: all nodes put together from a few shapes with a bound on the remainder. It took
 * 35 to 55 shapes for 96 modes to come below 1 mK, so that it saved nothing.
 */
final class Candidates {
  /**
   * What the extremes over the candidates may miss in the states looked at [K], or as a part of the
   * block's spread, whichever is more.
   */
  private static final double MISSED = 0.002;

  private static final double PART_MISSED = 0.005;

  private static final int SAMPLES = 1500;
  private static final long SEED = 20;

  /** Nodes at which the coldest is looked for, and those at which the warmest is. */
  private final List<Integer> cold = new ArrayList<>();

  private final List<Integer> warm = new ArrayList<>();

  /**
   * Chooses the candidates of each block with extremes.
   *
   * @param legs the body in each configuration
   */
  static List<Candidates> choose(OutputPlan plan, List<ProjectedLeg> legs, Body body) {
    List<Candidates> chosen = new ArrayList<>();
    double[][] values = new double[plan.blocks.size()][];
    for (int block = 0; block < values.length; block++) {
      chosen.add(new Candidates());
      values[block] = new double[legs.get(0).nodes[block].count()];
    }
    Random random = new Random(SEED);
    UsualState state = new UsualState(legs.get(0).whole, body);
    for (int sample = 0; sample < SAMPLES && values.length > 0; sample++) {
      ProjectedLeg leg = legs.get(sample % legs.size());
      state.draw(random, leg.whole);
      for (int block = 0; block < values.length; block++) {
        leg.nodes[block].values(state.coordinates, state.inputs, values[block]);
        if (plan.asksFor(-1, block)) {
          add(-1, values[block], chosen.get(block).cold);
        }
        if (plan.asksFor(1, block)) {
          add(1, values[block], chosen.get(block).warm);
        }
      }
    }
    return chosen;
  }

  /** Adds the extreme node if those there are miss too much of it. */
  private static void add(int sign, double[] values, List<Integer> nodes) {
    int extreme = 0;
    int opposite = 0;
    for (int n = 1; n < values.length; n++) {
      if (sign * values[n] > sign * values[extreme]) {
        extreme = n;
      }
      if (sign * values[n] < sign * values[opposite]) {
        opposite = n;
      }
    }
    double spread = Math.abs(values[extreme] - values[opposite]);
    double allowed = Math.max(MISSED, PART_MISSED * spread);
    for (int known : nodes) {
      if (sign * values[known] >= sign * values[extreme] - allowed) {
        return;
      }
    }
    nodes.add(extreme);
  }

  int coldest() {
    return cold.size();
  }

  int count() {
    return cold.size() + warm.size();
  }

  /** Node of a candidate; first those for the coldest, then those for the warmest. */
  int node(int candidate) {
    return candidate < cold.size() ? cold.get(candidate) : warm.get(candidate - cold.size());
  }
}
