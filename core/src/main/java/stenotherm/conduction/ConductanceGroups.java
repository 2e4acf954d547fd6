package stenotherm.conduction;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stenotherm.base.Axis;
import stenotherm.base.Face;

/**
 * Sorts all conductances of a network into groups that change by the same ratio. Two are in one
 * group if they lie between the same blocks and these have the same shares in the resistance, to a
 * hundredth. The group takes the mean shares, weighted by conductance. The error this causes is of
 * second order in the difference of the shares and in the change.
 */
final class ConductanceGroups {
  /** Difference of shares, and of logarithms of resistances, that makes another group. */
  private static final double STEP = 0.01;

  private final HeatNetwork network;
  private final int pad;

  /** Position of each block of the layout among the varying ones, or -1. */
  private final int[] varying;

  /** Position of each cell within the group that is being made. */
  private final int[] position;

  private final Map<ConductanceGroup.Key, Gathered> all = new LinkedHashMap<>();

  /** The conductances of one group as they are found. */
  private static final class Gathered {
    private int[] one = new int[16];
    private int[] other = new int[16];
    private double[] entry = new double[16];
    private int count;
    private double weight;
    private double first;
    private double second;

    void add(int cell, int next, double value, double shareOfFirst, double shareOfSecond) {
      if (count == one.length) {
        one = Arrays.copyOf(one, 2 * count);
        other = Arrays.copyOf(other, 2 * count);
        entry = Arrays.copyOf(entry, 2 * count);
      }
      one[count] = cell;
      other[count] = next;
      entry[count++] = value;
      weight += value;
      first += value * shareOfFirst;
      second += value * shareOfSecond;
    }
  }

  private ConductanceGroups(HeatNetwork network, int pad, List<String> blocks) {
    this.network = network;
    this.pad = pad;
    this.varying = new int[network.grid().layout().blocks().size()];
    this.position = new int[network.grid().cellCount()];
    Arrays.fill(varying, ConductanceGroup.FIXED);
    for (int index = 0; index < blocks.size(); index++) {
      varying[network.grid().layout().indexOf(blocks.get(index))] = index;
    }
  }

  /**
   * Groups the conductances of a network.
   *
   * @param pad position of the first cell in vectors
   * @param blocks names of the blocks whose conductivity varies
   */
  static List<ConductanceGroup> of(HeatNetwork network, int pad, List<String> blocks) {
    ConductanceGroups groups = new ConductanceGroups(network, pad, blocks);
    for (Axis axis : Axis.values()) {
      groups.addAlong(axis);
    }
    List<Patch> patches = network.patches().list();
    for (int port = 0; port < patches.size(); port++) {
      groups.addPatch(port, patches.get(port));
    }
    List<ConductanceGroup> made = new ArrayList<>();
    groups.all.forEach((key, gathered) -> made.add(groups.made(key, gathered)));
    return made;
  }

  private int varyingAt(int cell) {
    return varying[network.grid().blockOf(cell)];
  }

  private void addAlong(Axis axis) {
    double[] coupling = network.cells().coupling(axis);
    int stride = network.grid().stride(axis);
    Face up = Face.of(axis, true);
    for (int cell = 0; cell < coupling.length; cell++) {
      if (coupling[cell] > 0) {
        int next = cell + stride;
        int first = varyingAt(cell);
        int second = varyingAt(next);
        if (first == second) {
          add(
              new ConductanceGroup.Key(-1, first, second, 0, 0),
              cell,
              next,
              coupling[cell],
              0.5,
              0.5);
        } else {
          double perArea = coupling[cell] / network.grid().faceArea(up, cell);
          double own = perArea * network.cells().halfResistance(up, cell);
          double beyond = perArea * network.cells().halfResistance(up.opposite(), next);
          addBetween(first, second, cell, next, coupling[cell], own, beyond);
        }
      }
    }
  }

  /** Adds a conductance between two blocks, the one with the lower position first. */
  private void addBetween(
      int first, int second, int cell, int next, double value, double own, double beyond) {
    boolean inOrder = first <= second;
    double shareOfFirst = inOrder ? own : beyond;
    double shareOfSecond = inOrder ? beyond : own;
    ConductanceGroup.Key key =
        new ConductanceGroup.Key(
            -1,
            Math.min(first, second),
            Math.max(first, second),
            Math.min(first, second) == ConductanceGroup.FIXED ? 0 : rounded(shareOfFirst),
            rounded(shareOfSecond));
    add(key, cell, next, value, shareOfFirst, shareOfSecond);
  }

  private static int rounded(double share) {
    return (int) Math.rint(share / STEP);
  }

  private void addPatch(int port, Patch patch) {
    for (int f = 0; f < patch.cell().length; f++) {
      int cell = patch.cell()[f];
      double half = patch.resistance()[f] - patch.thin()[f];
      double thin = patch.thin()[f];
      ConductanceGroup.Key key =
          new ConductanceGroup.Key(
              port,
              varyingAt(cell),
              ConductanceGroup.FIXED,
              rounded(Math.log(half)),
              thin > 0 ? rounded(Math.log(thin)) : Integer.MIN_VALUE);
      add(key, cell, cell, patch.area()[f], half, thin);
    }
  }

  private void add(
      ConductanceGroup.Key key,
      int cell,
      int next,
      double value,
      double shareOfFirst,
      double shareOfSecond) {
    all.computeIfAbsent(key, unknown -> new Gathered())
        .add(cell, next, value, shareOfFirst, shareOfSecond);
  }

  /** The cells of a group, ascending, each once. */
  private static int[] cellsOf(Gathered gathered) {
    int[] all = Arrays.copyOf(gathered.one, 2 * gathered.count);
    System.arraycopy(gathered.other, 0, all, gathered.count, gathered.count);
    Arrays.sort(all);
    int count = 0;
    for (int cell : all) {
      if (count == 0 || all[count - 1] != cell) {
        all[count++] = cell;
      }
    }
    return Arrays.copyOf(all, count);
  }

  private ConductanceGroup made(ConductanceGroup.Key key, Gathered gathered) {
    boolean outer = key.port() >= 0;
    int[] cells = cellsOf(gathered);
    for (int i = 0; i < cells.length; i++) {
      position[cells[i]] = i;
    }
    int[] rowStart = new int[cells.length + 1];
    int[] one = new int[gathered.count];
    int[] other = new int[gathered.count];
    for (int e = 0; e < gathered.count; e++) {
      one[e] = position[gathered.one[e]];
      other[e] = position[gathered.other[e]];
      rowStart[one[e] + 1]++;
      if (!outer) {
        rowStart[other[e] + 1]++;
      }
    }
    for (int i = 0; i < cells.length; i++) {
      rowStart[i + 1] += rowStart[i];
    }
    int[] next = Arrays.copyOf(rowStart, cells.length);
    int[] neighbour = new int[rowStart[cells.length]];
    double[] entry = new double[neighbour.length];
    for (int e = 0; e < gathered.count; e++) {
      neighbour[next[one[e]]] = other[e];
      entry[next[one[e]]++] = gathered.entry[e];
      if (!outer) {
        neighbour[next[other[e]]] = one[e];
        entry[next[other[e]]++] = gathered.entry[e];
      }
    }
    for (int i = 0; i < cells.length; i++) {
      cells[i] += pad;
    }
    ConductanceGroup.Shares shares =
        new ConductanceGroup.Shares(
            gathered.first / gathered.weight, gathered.second / gathered.weight);
    return new ConductanceGroup(key, shares, cells, rowStart, neighbour, entry);
  }
}
