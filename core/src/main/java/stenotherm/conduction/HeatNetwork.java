package stenotherm.conduction;

import java.util.List;
import java.util.Map;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.grid.Block;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.RectilinearGrid;
import stenotherm.material.Behaviour;

/**
 * A body as a network of heat capacities and conductances with named ports: C dT/dt = -G T + heat
 * from the ports. Solvers see the geometry only through it.
 *
 * <p>The conductance between two neighbouring cells is A / (d1/(2 k1) + R + d2/(2 k2)): two half
 * cells and the thin resistance between them in series.
 *
 * <p>Immutable, thus thread-safe.
 */
public final class HeatNetwork {
  private final CellNetwork cells;
  private final NetworkPatches patches;
  private final NetworkSources sources;
  private final List<Port.BoundaryPort> boundaryPorts;
  private final List<Port.SourcePort> sourcePorts;

  HeatNetwork(HeatNetworkBuilder builder) {
    this.cells =
        new CellNetwork(
            RectilinearGrid.of(
                builder.layout, builder.mesh, builder.uniformAxes(), builder.patchList()),
            builder.resistances);
    this.patches = new NetworkPatches(cells, builder);
    this.sources = new NetworkSources(cells, builder);
    this.boundaryPorts = patches.list().stream().map(Patch::port).toList();
    this.sourcePorts = sources.list().stream().map(SourceBlock::port).toList();
  }

  /** The same body with other conductivities of its cells. */
  private HeatNetwork(HeatNetwork other, CellNetwork cells) {
    this.cells = cells;
    this.patches = other.patches.before(cells);
    this.sources = other.sources;
    this.boundaryPorts = other.boundaryPorts;
    this.sourcePorts = other.sourcePorts;
  }

  /**
   * Starts a network of a layout.
   *
   * @param layout the blocks
   * @param mesh how fine the grid is
   * @return a builder whose faces are adiabatic until set otherwise
   */
  public static HeatNetworkBuilder builder(Layout layout, MeshControl mesh) {
    return new HeatNetworkBuilder(layout, mesh);
  }

  /**
   * The same body with other conductivities of some blocks, on the same grid and with the same
   * ports: cheaper than building it anew. A conductivity that is replaced here does not follow
   * temperature in a run with live conductivities.
   *
   * @param conductivities thermal conductivity by block [W/(m K)], each above 0
   * @return the changed network
   * @throws InvalidInputException if a block does not exist, is an environment or melts, or a
   *     conductivity is not a finite number above 0
   */
  public HeatNetwork withConductivities(Map<String, Double> conductivities) {
    return changed(conductivities, "conductivity of block ", "W/(m K)", (old, value) -> value);
  }

  private HeatNetwork changed(
      Map<String, Double> values, String of, String unit, DoubleBinaryOperator change) {
    RectilinearGrid grid = cells.grid();
    double[] changed = cells.conductivities();
    boolean[] given = cells.replaced();
    values.forEach(
        (name, value) -> {
          int index = grid.layout().indexOf(name);
          String field = of + "'" + name + "'";
          Block block = grid.layout().blocks().get(index);
          if (!block.isSolid()) {
            throw new InvalidInputException(field, "is that of an environment, which has none");
          }
          if (block.phaseChange().isPresent()) {
            throw new InvalidInputException(
                field, "follows from how much of it is liquid; change its material instead");
          }
          Checks.positive(field, value, unit);
          for (int cell : grid.cellsOf(index)) {
            changed[cell] = change.applyAsDouble(changed[cell], value);
            given[cell] = true;
          }
        });
    return new HeatNetwork(this, cells.with(grid, changed, given));
  }

  /**
   * The same body with the conductivities of some blocks multiplied, on the same grid and with the
   * same ports. They do not follow temperature in a run with live conductivities.
   *
   * @param factors what multiplies the conductivity of all cells of a block [-], by its name
   * @return the changed network
   * @throws InvalidInputException if a block does not exist, is an environment or melts, or a
   *     factor is not a finite number above 0
   */
  public HeatNetwork withFactors(Map<String, Double> factors) {
    return changed(
        factors, "factor on the conductivity of block ", "", (old, factor) -> old * factor);
  }

  /**
   * The same body with other conductivities of its materials, on the same grid and with the same
   * ports and thin resistances. Conductivities that the caller has replaced are discarded.
   *
   * @param layout the same blocks in the same places
   * @return the changed network
   * @throws InvalidInputException if a block differs in more than how its material conducts
   */
  public HeatNetwork withMaterialsOf(Layout layout) {
    RectilinearGrid same = grid().of(layout);
    double[] changed = new double[cells.count()];
    for (int cell = 0; cell < changed.length; cell++) {
      if (cells.isSolid(cell)) {
        Block.Solid block = layout.blocks().get(same.blockOf(cell)).asSolid().orElseThrow();
        changed[cell] = block.material().conductivity();
        if (block.material().volumetricHeatCapacity()
                != cells.material(cell).volumetricHeatCapacity()
            || !block.phaseChange().equals(cells.melting(cell))) {
          throw new InvalidInputException(
              "material of block '" + block.name() + "'",
              "stores heat differently; only how a material conducts may change");
        }
      }
    }
    return new HeatNetwork(this, cells.with(same, changed, new boolean[changed.length]));
  }

  /**
   * The same body with the conductivity of each cell at its temperature, constant from then on, for
   * materials whose conductivity depends on temperature ({@link Behaviour#followsTemperature()}).
   * Conductivities that the caller has replaced stay. Those set here count as replaced too: they do
   * not follow temperature in a run with live conductivities.
   *
   * @param field temperatures of a body of the same blocks. Where it has another grid, a cell has
   *     the temperature of the cell there that holds its centre
   * @return the changed network
   * @throws InvalidInputException if the field is one of other blocks
   */
  public HeatNetwork withConductivitiesAt(TemperatureField field) {
    int[] there = field.cellsAtCentresOf(grid());
    double[] changed = cells.conductivities();
    boolean[] given = cells.replaced();
    for (int cell = 0; cell < changed.length; cell++) {
      if (cells.followsTemperature(cell)) {
        Behaviour behaviour = cells.material(cell).behaviour();
        changed[cell] *= behaviour.conductivityRatio(field.ofCell(there[cell]));
        given[cell] = true;
      }
    }
    return new HeatNetwork(this, cells.with(grid(), changed, given));
  }

  /**
   * The same body with other conductivities of its cells [W/(m K)]. It keeps the arrays.
   *
   * @param positions position of each cell in the conductivities towards faces, divided by six, or
   *     -1; null if there are none
   * @param towards conductivity between a cell's centre and each of its faces, where it is not that
   *     of the cell
   */
  HeatNetwork withCells(double[] conductivities, int @Nullable [] positions, double[] towards) {
    return new HeatNetwork(this, cells.with(conductivities, positions, towards));
  }

  /**
   * Refuses a network that is not the same body on the same grid with the same ports;
   * conductivities and thin resistances may differ.
   */
  void requireSameBody(HeatNetwork other) {
    String field = "other network";
    cells.requireSameGrid(field, other.grid());
    if (!portNames().equals(other.portNames())) {
      throw new InvalidInputException(
          field, "has the ports " + other.portNames() + " instead of " + portNames());
    }
    sources.requireSame(field, other.sources);
    cells.requireSameStorage(field, other.cells);
  }

  private List<String> portNames() {
    return Stream.<Port>concat(boundaryPorts.stream(), sourcePorts.stream())
        .map(port -> port.name() + " [" + port.unit() + "]")
        .toList();
  }

  /**
   * Returns the grid.
   *
   * @return the grid
   */
  public RectilinearGrid grid() {
    return cells.grid();
  }

  /**
   * Returns the number of solid cells, the unknowns.
   *
   * @return the number
   */
  public int solidCellCount() {
    return cells.solidCount();
  }

  /**
   * Returns the heat capacity of the whole body.
   *
   * @return the heat capacity [J/K]
   */
  public double totalCapacity() {
    return cells.totalCapacity();
  }

  /**
   * Returns the ports of the boundaries: the faces in the order of {@link Face}, then the
   * environments, then the patches in the order in which they were named. A face that patches cover
   * completely has no port, nor has an adiabatic boundary.
   *
   * @return the ports
   */
  public List<Port.BoundaryPort> boundaryPorts() {
    return boundaryPorts;
  }

  /**
   * Returns all ports, in the order of the arrays of inputs. {@link PortIndex} finds them by name.
   *
   * @return boundary ports, then source ports
   */
  public List<Port> inputs() {
    return Stream.<Port>concat(boundaryPorts.stream(), sourcePorts.stream()).toList();
  }

  /**
   * Returns the ports of the sources in the order in which they were named.
   *
   * @return the ports
   */
  public List<Port.SourcePort> sourcePorts() {
    return sourcePorts;
  }

  /**
   * Finds a boundary by its name.
   *
   * @param name face label, name of an environment or of a patch
   * @return position in {@link #boundaryPorts()}
   * @throws InvalidInputException if there is none; the message offers the closest name or lists
   *     all
   */
  public int boundaryIndex(String name) {
    return patches.indexOf(name);
  }

  /**
   * Finds a source by its name.
   *
   * @param name name of the source; of the heated block if it has none of its own
   * @return position in {@link #sourcePorts()}
   * @throws InvalidInputException if there is none; the message offers the closest name or lists
   *     all
   */
  public int sourceIndex(String name) {
    return sources.indexOf(name);
  }

  CellNetwork cells() {
    return cells;
  }

  NetworkPatches patches() {
    return patches;
  }

  NetworkSources sources() {
    return sources;
  }
}
