package stenotherm.conduction;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import stenotherm.base.Face;

/**
 * The network under given conditions: conductances to the boundaries, heat from the ports, heat
 * flows. Vectors are padded as in {@link StructuredSystem}.
 */
final class HeatOperator {
  final StructuredSystem system;
  final MeltingCells melting;
  private HeatNetwork network;
  private List<Patch> patches;
  private List<SourceBlock> sources;

  /** Heat capacity of each cell [J/K], padded; of the solid where it melts. */
  final double[] capacity;

  /** Positions of the cells of environments in a padded vector, ascending. */
  final int[] environment;

  /** Conductance of each cell to all boundaries [W/K], padded. */
  private final double[] toBoundaries;

  private final double[][] conductance;
  private final double[] coefficient;
  private final double[] addition;

  /** The stage that the system is factored for [s]; NaN after the coefficients changed. */
  private double factoredStage = Double.NaN;

  /** The stage that the system is factored for with slopes of melting cells [s], or NaN. */
  private double meltingStage = Double.NaN;

  /** Row sums of the cells that do not melt, and of those that do as if they stayed solid [W/K]. */
  private double rowsThatStay;

  private double rowsIfSolid;

  HeatOperator(HeatNetwork network) {
    this.network = network;
    this.system = new StructuredSystem(network);
    this.melting = new MeltingCells(network, system.pad);
    this.patches = network.patches().list();
    this.sources = network.sources().list();
    this.capacity = system.vector();
    for (int cell = 0; cell < system.cells; cell++) {
      capacity[cell + system.pad] = network.cells().capacity(cell);
    }
    this.environment =
        IntStream.range(0, system.cells)
            .filter(cell -> !network.cells().isSolid(cell))
            .map(cell -> cell + system.pad)
            .toArray();
    this.toBoundaries = system.vector();
    this.addition = system.vector();
    this.conductance = new double[patches.size()][];
    this.coefficient = new double[patches.size()];
    Arrays.fill(coefficient, Double.NaN);
  }

  HeatNetwork network() {
    return network;
  }

  /** Continues with other conductivities or thin resistances of the same body. */
  void use(HeatNetwork other) {
    if (other == network) {
      return;
    }
    network = other;
    patches = other.patches().list();
    sources = other.sources().list();
    system.use(other);
    factoredStage = Double.NaN;
    meltingStage = Double.NaN;
    Arrays.fill(coefficient, Double.NaN);
  }

  /**
   * If something melts, makes the next call factor anew: a factor that was updated at a few cells
   * depends on its history.
   */
  void forgetMelting() {
    meltingStage = Double.NaN;
  }

  /** Takes over the surface coefficients; tells whether they changed. */
  boolean coefficients(Conditions conditions) {
    if (Arrays.equals(coefficient, conditions.coefficient)) {
      return false;
    }
    System.arraycopy(conditions.coefficient, 0, coefficient, 0, coefficient.length);
    factoredStage = Double.NaN;
    meltingStage = Double.NaN;
    Arrays.fill(toBoundaries, 0);
    for (int p = 0; p < patches.size(); p++) {
      Patch patch = patches.get(p);
      double[] each = new double[patch.cell().length];
      for (int f = 0; f < each.length; f++) {
        each[f] = patch.conductance(f, coefficient[p]);
        toBoundaries[patch.cell()[f] + system.pad] += each[f];
      }
      conductance[p] = each;
    }
    return true;
  }

  /** Prepares the system (C / stage + G) x = b; with an infinite stage it is G x = b. */
  void factor(double stage) {
    if (stage == factoredStage) {
      return;
    }
    factoredStage = stage;
    meltingStage = Double.NaN;
    if (Double.isInfinite(stage)) {
      system.factor(toBoundaries);
      return;
    }
    double rate = 1 / stage;
    for (int i = system.pad; i < system.pad + system.cells; i++) {
      addition[i] = toBoundaries[i] + capacity[i] * rate;
    }
    system.factor(addition);
  }

  /**
   * Prepares the system (dH/dT / stage + G) x = b.
   *
   * @param slope dH/dT of the melting cells [J/K]
   * @return what a uniform rise of 1 K would take if nothing melted [W/K]
   */
  double factor(double stage, double[] slope) {
    boolean anew = stage != meltingStage;
    if (anew) {
      factoredStage = Double.NaN;
      meltingStage = stage;
      rowsThatStay = 0;
      for (int i = system.pad; i < system.pad + system.cells; i++) {
        addition[i] = toBoundaries[i] + capacity[i] / stage;
        rowsThatStay += addition[i];
      }
      rowsIfSolid = 0;
      for (int i : melting.at) {
        rowsIfSolid += addition[i];
      }
      rowsThatStay -= rowsIfSolid;
    }
    double melted = 0;
    for (int m = 0; m < slope.length; m++) {
      int i = melting.at[m];
      addition[i] = toBoundaries[i] + slope[m] / stage;
      melted += addition[i];
    }
    if (anew) {
      system.factor(addition);
    } else {
      system.refactor(melting.at, addition, rowsThatStay + melted);
    }
    return rowsThatStay + rowsIfSolid;
  }

  /** Heat that leaves a cell for its neighbours and for boundaries at 0 K [W]. */
  double outflow(int i, double[] temperature) {
    return system.outflow(i, temperature) + toBoundaries[i] * temperature[i];
  }

  /** A solid cell without a path to a film or a held surface; -1 if there is none. */
  int floatingCell() {
    boolean[] reached = new boolean[system.cells];
    int[] queue = new int[system.cells];
    int queued = 0;
    for (int cell = 0; cell < system.cells; cell++) {
      if (toBoundaries[cell + system.pad] > 0) {
        reached[cell] = true;
        queue[queued++] = cell;
      }
    }
    for (int head = 0; head < queued; head++) {
      for (Face face : Face.values()) {
        if (network.cells().couplingAcross(queue[head], face) > 0) {
          int stride = network.grid().stride(face.axis());
          int next = face.isMax() ? queue[head] + stride : queue[head] - stride;
          if (!reached[next]) {
            reached[next] = true;
            queue[queued++] = next;
          }
        }
      }
    }
    for (int cell = 0; cell < system.cells; cell++) {
      if (network.cells().isSolid(cell) && !reached[cell]) {
        return cell;
      }
    }
    return -1;
  }

  /** Adds to a right-hand side the heat that the ports would give cells at 0 K [W]. */
  void addPortHeat(Conditions conditions, double[] rightHandSide) {
    for (int p = 0; p < patches.size(); p++) {
      Patch patch = patches.get(p);
      double value = conditions.boundary[p];
      boolean flux = patch.port().kind() == BoundaryKind.FLUX;
      for (int f = 0; f < patch.cell().length; f++) {
        double heat = flux ? patch.area()[f] * value : conductance[p][f] * value;
        rightHandSide[patch.cell()[f] + system.pad] += heat;
      }
    }
    for (int s = 0; s < sources.size(); s++) {
      SourceBlock source = sources.get(s);
      for (int c = 0; c < source.cell().length; c++) {
        rightHandSide[source.cell()[c] + system.pad] += source.share()[c] * conditions.power[s];
      }
    }
  }

  /** Heat flow into the body through a cell's face under a boundary [W]. */
  private double heatFlow(int patch, int index, double temperature, Conditions conditions) {
    Patch p = patches.get(patch);
    return p.port().kind() == BoundaryKind.FLUX
        ? p.area()[index] * conditions.boundary[patch]
        : conductance[patch][index] * (conditions.boundary[patch] - temperature);
  }

  /** Heat flow into the body through each boundary [W]. */
  void heatFlows(double[] temperature, Conditions conditions, double[] flows) {
    for (int p = 0; p < patches.size(); p++) {
      int[] cell = patches.get(p).cell();
      double sum = 0;
      for (int f = 0; f < cell.length; f++) {
        sum += heatFlow(p, f, temperature[cell[f] + system.pad], conditions);
      }
      flows[p] = sum;
    }
  }

  /** Heat that leaves the body through each boundary for a rise of its cells [W]. */
  void heatLost(double[] rise, double[] flows) {
    for (int p = 0; p < patches.size(); p++) {
      Patch patch = patches.get(p);
      double sum = 0;
      if (patch.port().kind() != BoundaryKind.FLUX) {
        for (int f = 0; f < patch.cell().length; f++) {
          sum += conductance[p][f] * rise[patch.cell()[f] + system.pad];
        }
      }
      flows[p] = sum;
    }
  }

  /**
   * Net heat into each cell, -G T + ports [W]; needs the factor for an infinite stage or none at
   * all.
   */
  void netHeat(double[] temperature, Conditions conditions, double[] result) {
    factor(Double.POSITIVE_INFINITY);
    system.multiply(temperature, result);
    for (int i = system.pad; i < system.pad + system.cells; i++) {
      result[i] = -result[i];
    }
    addPortHeat(conditions, result);
    for (int i : environment) {
      result[i] = 0;
    }
  }
}
