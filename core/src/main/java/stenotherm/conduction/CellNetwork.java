package stenotherm.conduction;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.grid.Block;
import stenotherm.grid.RectilinearGrid;
import stenotherm.material.Material;
import stenotherm.material.Melting;

/** The cells of a heat network: their heat capacities and the conductances between them. */
final class CellNetwork {
  private final RectilinearGrid grid;
  private final boolean[] solid;
  private final double[] conductivity;

  /** Position of each cell in {@link #toward}, divided by six, or -1; null if no cell has one. */
  private final int @Nullable [] towardOf;

  /** Conductivity between the centre and each face of cells that hold a melting front. */
  private final double[] toward;

  /** Cells whose conductivity the caller has replaced. */
  private final boolean[] replaced;

  private final double[] capacity;
  private final double[][] coupling;

  /** Thin resistance between each cell and its next neighbour along an axis [m2 K/W]. */
  private final double[][] thin;

  /** The parts of the conductances between cells that do not depend on conductivity. */
  private final Couplings couplings;

  /** The cells of a grid, of their blocks' materials. */
  CellNetwork(RectilinearGrid grid, List<ThinResistance> resistances) {
    int cells = grid.cellCount();
    this.grid = grid;
    this.solid = new boolean[cells];
    this.conductivity = new double[cells];
    this.replaced = new boolean[cells];
    this.towardOf = null;
    this.toward = new double[0];
    this.capacity = new double[cells];
    for (int cell = 0; cell < cells; cell++) {
      if (blockOf(cell).isSolid()) {
        Material material = material(cell);
        solid[cell] = true;
        conductivity[cell] = material.conductivity();
        capacity[cell] = material.volumetricHeatCapacity() * grid.volume(cell);
      }
    }
    this.coupling = new double[3][cells];
    this.thin = new double[3][cells];
    for (Axis axis : Axis.values()) {
      Checks.notInterrupted("while making a grid");
      findThin(axis, resistances);
    }
    this.couplings = new Couplings(grid, solid, thin);
    for (Axis axis : Axis.values()) {
      couple(axis);
    }
  }

  private CellNetwork(
      CellNetwork other,
      RectilinearGrid grid,
      double[] conductivity,
      boolean[] replaced,
      int @Nullable [] towardOf,
      double[] toward) {
    this.towardOf = towardOf;
    this.toward = toward;
    this.grid = grid;
    this.solid = other.solid;
    this.conductivity = conductivity;
    this.replaced = replaced;
    this.capacity = other.capacity;
    this.thin = other.thin;
    this.couplings = other.couplings;
    this.coupling = new double[3][conductivity.length];
    boolean[] kept = keptFrom(other);
    for (Axis axis : Axis.values()) {
      couple(axis, other, kept);
    }
  }

  /**
   * The same cells with other conductivities [W/(m K)]. It keeps the arrays.
   *
   * @param others a grid of the same cells
   * @param conductivities of each cell
   * @param given cells whose conductivity the caller has replaced
   */
  CellNetwork with(RectilinearGrid others, double[] conductivities, boolean[] given) {
    return new CellNetwork(this, others, conductivities, given, null, new double[0]);
  }

  /** The same with conductivities towards faces, see {@link HeatNetwork#withCells}. */
  CellNetwork with(double[] conductivities, int @Nullable [] positions, double[] towards) {
    return new CellNetwork(this, grid, conductivities, replaced, positions, towards);
  }

  /** Fills in the thin resistances between each cell and its next neighbour along an axis. */
  private void findThin(Axis axis, List<ThinResistance> resistances) {
    double[] along = thin[axis.ordinal()];
    int stride = grid.stride(axis);
    for (int cell = 0; cell < along.length; cell++) {
      int next = cell + stride;
      if (hasNext(axis, cell) && grid.blockOf(cell) != grid.blockOf(next)) {
        along[cell] = ThinResistance.sum(resistances, nameOf(cell), nameOf(next));
      }
    }
  }

  /** Fills in the conductances between each cell and its next neighbour along an axis. */
  private void couple(Axis axis) {
    double[] along = coupling[axis.ordinal()];
    for (int cell = 0; cell < along.length; cell++) {
      along[cell] = couplings.isCoupled(axis, cell) ? couplingAlong(axis, cell) : 0;
    }
  }

  /** The same where most conductances are those of another network. */
  private void couple(Axis axis, CellNetwork other, boolean[] kept) {
    double[] along = coupling[axis.ordinal()];
    System.arraycopy(other.coupling[axis.ordinal()], 0, along, 0, along.length);
    int stride = grid.stride(axis);
    for (int cell = 0; cell < along.length - stride; cell++) {
      if (!(kept[cell] && kept[cell + stride]) && couplings.isCoupled(axis, cell)) {
        along[cell] = couplingAlong(axis, cell);
      }
    }
  }

  private double couplingAlong(Axis axis, int cell) {
    int next = cell + grid.stride(axis);
    return couplings.conductance(
        axis,
        cell,
        conductivityTowards(Face.of(axis, true), cell),
        conductivityTowards(Face.of(axis, false), next));
  }

  /** Cells that conduct towards each of their faces as they do in another network. */
  private boolean[] keptFrom(CellNetwork other) {
    boolean[] kept = new boolean[conductivity.length];
    for (int cell = 0; cell < kept.length; cell++) {
      kept[cell] =
          conductivity[cell] == other.conductivity[cell]
              && (towardOf == null || towardOf[cell] < 0)
              && (other.towardOf == null || other.towardOf[cell] < 0);
    }
    return kept;
  }

  /** Tells whether a cell and its next neighbour along an axis exist and are solid. */
  private boolean hasNext(Axis axis, int cell) {
    return grid.position(axis, cell) + 1 < grid.count(axis)
        && solid[cell]
        && solid[cell + grid.stride(axis)];
  }

  RectilinearGrid grid() {
    return grid;
  }

  int count() {
    return solid.length;
  }

  private Block blockOf(int cell) {
    return grid.layout().blocks().get(grid.blockOf(cell));
  }

  String nameOf(int cell) {
    return blockOf(cell).name();
  }

  /** Resistance between a cell's centre and one of its faces, for unit area of it [m2 K/W]. */
  double halfResistance(Face face, int cell) {
    return grid.reach(face, cell) / conductivityTowards(face, cell);
  }

  private double conductivityTowards(Face face, int cell) {
    int own = towardOf == null ? -1 : towardOf[cell];
    return own < 0 ? conductivity[cell] : toward[6 * own + face.ordinal()];
  }

  /** The solid cell beyond a face of a cell; -1 if there is none. */
  int solidAcross(int cell, Face face) {
    int position = grid.position(face.axis(), cell);
    if (position == (face.isMax() ? grid.count(face.axis()) - 1 : 0)) {
      return -1;
    }
    int next = neighbour(cell, face);
    return solid[next] ? next : -1;
  }

  /** Resistance between a cell's centre and the true surface beyond a face of it [m2 K/W]. */
  double resistance(Face face, int cell, double thinResistance) {
    return halfResistance(face, cell) * grid.surfaceShare(face, cell) + thinResistance;
  }

  int neighbour(int cell, Face face) {
    return face.isMax() ? cell + grid.stride(face.axis()) : cell - grid.stride(face.axis());
  }

  /** Conductance to the solid neighbour beyond a face [W/K]; 0 if there is none. */
  double couplingAcross(int cell, Face face) {
    int position = grid.position(face.axis(), cell);
    if (face.isMax()) {
      return coupling[face.axis().ordinal()][cell];
    }
    return position == 0 ? 0 : coupling[face.axis().ordinal()][cell - grid.stride(face.axis())];
  }

  /**
   * Tells whether a thin resistance lies on a face between two solid cells: the field jumps there.
   */
  boolean resistedAcross(int cell, Face face) {
    int position = grid.position(face.axis(), cell);
    if (face.isMax()) {
      return thin[face.axis().ordinal()][cell] > 0;
    }
    return position > 0 && thin[face.axis().ordinal()][cell - grid.stride(face.axis())] > 0;
  }

  /** The material of a solid cell. */
  Material material(int cell) {
    return blockOf(cell).asSolid().orElseThrow().material();
  }

  /** How a cell melts, if it does. */
  Optional<Melting> melting(int cell) {
    return blockOf(cell).phaseChange();
  }

  /** Tells whether the conductivity of a cell depends on its temperature and is not replaced. */
  boolean followsTemperature(int cell) {
    return solid[cell] && !replaced[cell] && material(cell).behaviour().followsTemperature();
  }

  boolean isSolid(int cell) {
    return solid[cell];
  }

  double conductivity(int cell) {
    return conductivity[cell];
  }

  double capacity(int cell) {
    return capacity[cell];
  }

  /**
   * Conductance between each cell and its next neighbour along an axis [W/K]; not to be changed.
   */
  double[] coupling(Axis axis) {
    return coupling[axis.ordinal()];
  }

  /** Conductivities of all cells [W/(m K)], a copy. */
  double[] conductivities() {
    return conductivity.clone();
  }

  /** Cells whose conductivity the caller has replaced, a copy. */
  boolean[] replaced() {
    return replaced.clone();
  }

  int solidCount() {
    int number = 0;
    for (boolean isSolid : solid) {
      number += isSolid ? 1 : 0;
    }
    return number;
  }

  double totalCapacity() {
    return Arrays.stream(capacity).sum();
  }

  /** Refuses cells of the same grid that store heat differently. */
  void requireSameStorage(String field, CellNetwork other) {
    for (int cell = 0; cell < solid.length; cell++) {
      if (solid[cell] != other.solid[cell]
          || capacity[cell] != other.capacity[cell]
          || !melting(cell).equals(other.melting(cell))) {
        throw new InvalidInputException(
            field,
            "stores heat differently in block '"
                + nameOf(cell)
                + "'; only conductivities and thin resistances may change during a run");
      }
    }
  }

  void requireSameGrid(String field, RectilinearGrid other) {
    for (Axis axis : Axis.values()) {
      if (!Arrays.equals(grid.lines(axis), other.lines(axis))) {
        throw new InvalidInputException(field, "has another grid along " + axis);
      }
    }
  }
}
