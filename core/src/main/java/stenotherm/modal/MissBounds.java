package stenotherm.modal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.conduction.Port;

/** The bounds of all blocks with extremes of a model, for runs that stay within spans. */
final class MissBounds {
  /** How often the most of each mode is found anew from that of the others. */
  private static final int ROUNDS = 4;

  /** How many nodes are added at a time at least. */
  private static final int LEAST_LOT = 4;

  private final OutputPlan plan;
  private final Body body;
  private final Spans spans;
  private final List<Seen> configurations;
  final List<Causes> causes = new ArrayList<>();
  private final double reach;

  /** To each configuration from all others. */
  private final List<List<Passage>> passages;

  /** A configuration in its modes. */
  @SuppressWarnings("ArrayRecordComponent") // internal; never compared or printed
  record Seen(ModalSystem system, BlockNodes[] nodes) {}

  MissBounds(OutputPlan plan, Body body, List<Seen> configurations, Spans spans) {
    this.plan = plan;
    this.body = body;
    this.configurations = configurations;
    this.spans = spans;
    spans.requireFit(body.inputs, body.startingApart());
    List<Range> drives = drives();
    List<Range> apart = new ArrayList<>();
    for (String block : body.startingApart()) {
      apart.add(spans.ofStart(block));
    }
    double kept = 0;
    for (Seen each : configurations) {
      Causes of = new Causes(each.system, body, drives, apart, spans.shortestStay());
      causes.add(of);
      kept = Math.max(kept, of.left[0]);
    }
    double most = 0;
    for (Causes each : causes) {
      most = Math.max(most, each.reach(body, kept));
    }
    reach = most;
    for (Causes each : causes) {
      Arrays.fill(each.mostEver, reach);
    }
    passages = passages();
  }

  /** The most of a state that may be there when a configuration begins. */
  double reach() {
    return reach;
  }

  /** From each configuration to each other one. */
  private List<List<Passage>> passages() {
    List<List<Passage>> to = new ArrayList<>();
    for (Causes later : causes) {
      List<Passage> from = new ArrayList<>();
      for (Causes earlier : causes) {
        if (earlier != later) {
          from.add(new Passage(earlier, later, reach));
        }
      }
      to.add(from);
    }
    for (int round = 0; round < ROUNDS; round++) {
      for (int c = 0; c < to.size(); c++) {
        causes.get(c).lower(to.get(c));
      }
    }
    return to;
  }

  /** Ranges of the drives, temperatures counted from one that all surroundings may have. */
  private List<Range> drives() {
    double low = Double.NEGATIVE_INFINITY;
    double high = Double.POSITIVE_INFINITY;
    for (Port port : body.inputs) {
      Range span = spans.of(port);
      if (port.unit().equals("K")) {
        low = Math.max(low, span.low());
        high = Math.min(high, span.high());
      }
    }
    if (low > high) {
      throw new InvalidInputException(
          "spans",
          "there is no temperature at which a run could begin, as all ambients may have it: one is at"
              + " least "
              + low
              + " K, another at most "
              + high
              + " K");
    }
    double level = (low + high) / 2;
    List<Range> drives = new ArrayList<>();
    for (int drive = 0; drive < body.drives.count(); drive++) {
      double from = Double.NEGATIVE_INFINITY;
      double to = Double.POSITIVE_INFINITY;
      for (int input : body.drives.members(drive)) {
        Range span = spans.of(body.inputs.get(input));
        from = Math.max(from, span.low());
        to = Math.min(to, span.high());
      }
      boolean isTemperature = body.drives.unit(drive).equals("K");
      drives.add(isTemperature ? new Range(from - level, to - level) : new Range(from, to));
    }
    return drives;
  }

  /**
   * What the coldest and the warmest of the candidates of a block can miss [K].
   *
   * @return of the coldest, then of the warmest; infinite if there is no bound
   */
  double[] missed(int block, int[] candidates) {
    double[] most = new double[2];
    if (isUnbounded()) {
      Arrays.fill(most, Double.POSITIVE_INFINITY);
      return most;
    }
    for (int c = 0; c < causes.size(); c++) {
      MissBound bound = bound(c, block);
      bound.add(candidates);
      boolean[] chosen = new boolean[bound.nodes()];
      for (int candidate : candidates) {
        chosen[candidate] = true;
      }
      for (int node = 0; node < chosen.length; node++) {
        if (!chosen[node]) {
          bound.raise(node, most);
        }
      }
    }
    return most;
  }

  /** Where several configurations take turns and one keeps its heat, states have no bound. */
  boolean isUnbounded() {
    return causes.size() > 1 && causes.stream().anyMatch(each -> each.ever.decaying > 0);
  }

  /**
   * Adds to the candidates of a block until none of its extremes misses more than allowed: always
   * nodes that miss most, and of those that are like one another only one at a time. There must be
   * a bound.
   *
   * @param allowed what they may miss [K]
   * @return the nodes added
   */
  int[] toAdd(int block, int[] candidates, double allowed) {
    List<Integer> added = new ArrayList<>();
    List<MissBound> bounds = new ArrayList<>();
    for (int c = 0; c < causes.size(); c++) {
      bounds.add(bound(c, block));
    }
    List<Integer> open = new ArrayList<>();
    for (int node = 0; node < bounds.get(0).nodes(); node++) {
      open.add(node);
    }
    for (int candidate : candidates) {
      open.remove((Integer) candidate);
    }
    int[] lot = candidates;
    while (lot.length > 0) {
      for (MissBound bound : bounds) {
        bound.add(lot);
      }
      double[] miss = new double[bounds.get(0).nodes()];
      open.removeIf(
          node -> {
            for (MissBound bound : bounds) {
              miss[node] = Math.max(miss[node], bound.ifMore(node, allowed));
            }
            return miss[node] <= allowed;
          });
      open.sort(Comparator.comparingDouble(node -> -miss[node]));
      lot = lot(open, bounds.get(0), Math.max(LEAST_LOT, added.size() / 4));
      for (int node : lot) {
        open.remove((Integer) node);
        added.add(node);
      }
    }
    return added.stream().mapToInt(Integer::intValue).toArray();
  }

  /** The first of some nodes, without those that are closer to an earlier one than to a mixture. */
  private static int[] lot(List<Integer> nodes, MissBound bound, int most) {
    int[] lot = new int[most];
    int count = 0;
    for (int node : nodes) {
      boolean isNew = count < most;
      for (int i = 0; i < count && isNew; i++) {
        isNew = !bound.isCloser(node, lot[i]);
      }
      if (isNew) {
        lot[count++] = node;
      }
    }
    return Arrays.copyOf(lot, count);
  }

  /** A block under a configuration, still without candidates. */
  MissBound bound(int configuration, int block) {
    Causes now = causes.get(configuration);
    BlockNodes nodes = configurations.get(configuration).nodes[block];
    double[][] rows = new double[nodes.count()][];
    double[][] direct = new double[nodes.count()][now.inputs.size()];
    for (int n = 0; n < rows.length; n++) {
      rows[n] = now.row(nodes.row(n));
      for (int drive = 0; drive < now.inputs.size(); drive++) {
        direct[n][drive] = nodes.direct(n, body.drives.members(drive));
      }
    }
    boolean[] asked = {plan.asksFor(-1, block), plan.asksFor(1, block)};
    return new MissBound(now, passages.get(configuration), reach, rows, direct, asked);
  }
}
