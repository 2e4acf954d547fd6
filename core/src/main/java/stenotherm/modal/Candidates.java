package stenotherm.modal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/**
 * The nodes of a block at which its extremes are read during a run. They are chosen from random
 * snapshots under some of the configurations: in each snapshot one of them must come close to the
 * extreme over all nodes. A few nodes do for many snapshots. The choice is a greedy set cover:
 * always the node that is close to the extreme in most of the snapshots not yet covered. Unchanged
 * afterwards.
 */
final class Candidates {
  /**
   * What the candidates may miss of an extreme in a snapshot [K], or as a part of the spread within
   * the block, whichever is more.
   */
  private static final double MISSED = 0.001;

  private static final double PART_MISSED = 0.001;

  /**
   * Fewest snapshots of a configuration. With a third of them one of thirty random parcels misses
   * the hottest node of a warmer by 0.08 K; with these none misses one by 0.05 K.
   */
  private static final int OF_EACH = 600;

  /** Fewest snapshots of all configurations. */
  private static final int OF_ALL = 2000;

  private static final int MOST_CONFIGURATIONS = 12;
  private static final long SEED = 20;

  private final List<Integer> nodes = new ArrayList<>();

  /** For each extreme of each snapshot, the nodes that come close to it, ascending. */
  private final List<int[]> close = new ArrayList<>();

  /** Working space for one snapshot. */
  private final int[] found;

  private Candidates(int all) {
    found = new int[all];
  }

  /**
   * Chooses the candidates of each block with extremes.
   *
   * @param systems the body under some configurations
   */
  static List<Candidates> choose(
      OutputPlan plan, List<OutputRows> outputs, List<ModalSystem> systems, Body body) {
    int[] firstNode = outputs.get(0).firstNode;
    List<Candidates> chosen = new ArrayList<>();
    for (int block = 0; block < plan.blocks.size(); block++) {
      chosen.add(new Candidates(firstNode[block + 1] - firstNode[block]));
    }
    if (chosen.isEmpty()) {
      return chosen;
    }
    int looked = Math.min(MOST_CONFIGURATIONS, systems.size());
    int samples = Math.max(OF_EACH, OF_ALL / looked);
    Random random = new Random(SEED);
    for (int n = 0; n < looked; n++) {
      int index = n * systems.size() / looked;
      RandomSnapshot snapshot = new RandomSnapshot(systems.get(index), body);
      look(plan, outputs.get(index), snapshot, samples, random, chosen);
    }
    chosen.forEach(Candidates::coverAll);
    return chosen;
  }

  private static void look(
      OutputPlan plan,
      OutputRows outputs,
      RandomSnapshot snapshot,
      int samples,
      Random random,
      List<Candidates> chosen) {
    double[] amplitude = snapshot.amplitude(random);
    LowRankField[] fields = new LowRankField[chosen.size()];
    double[][] amplitudes = new double[fields.length][];
    double[][] values = new double[fields.length][];
    for (int block = 0; block < fields.length; block++) {
      int from = outputs.firstNode[block];
      fields[block] = new LowRankField(outputs.rows, from, outputs.firstNode[block + 1], amplitude);
      amplitudes[block] = fields[block].amplitudes();
      values[block] = new double[fields[block].count()];
    }
    for (int sample = 0; sample < samples; sample++) {
      snapshot.draw(random);
      for (int block = 0; block < fields.length; block++) {
        fields[block].values(snapshot.state, amplitudes[block], values[block]);
        for (int side = -1; side <= 1; side += 2) {
          if (plan.asksFor(side, block)) {
            chosen.get(block).look(side, values[block]);
          }
        }
      }
    }
  }

  /**
   * Notes which nodes come close to an extreme.
   *
   * @param side -1 for the coldest, 1 for the warmest
   */
  private void look(int side, double[] values) {
    double highest = Double.NEGATIVE_INFINITY;
    double lowest = Double.POSITIVE_INFINITY;
    for (double value : values) {
      highest = value > highest ? value : highest;
      lowest = value < lowest ? value : lowest;
    }
    double allowed = Math.max(MISSED, PART_MISSED * (highest - lowest));
    int count = 0;
    for (int n = 0; n < values.length; n++) {
      if (side < 0 ? values[n] <= lowest + allowed : values[n] >= highest - allowed) {
        found[count++] = n;
      }
    }
    close.add(Arrays.copyOf(found, count));
  }

  private void coverAll() {
    int all = found.length;
    int[] covers = new int[all];
    for (int[] each : close) {
      for (int node : each) {
        covers[node]++;
      }
    }
    while (!close.isEmpty()) {
      int best = 0;
      for (int node = 1; node < all; node++) {
        best = covers[node] > covers[best] ? node : best;
      }
      nodes.add(best);
      int chosen = best;
      close.removeIf(
          each -> {
            boolean covered = Arrays.binarySearch(each, chosen) >= 0;
            if (covered) {
              for (int node : each) {
                covers[node]--;
              }
            }
            return covered;
          });
    }
  }

  /** The nodes chosen. */
  List<Integer> nodes() {
    return nodes;
  }
}
