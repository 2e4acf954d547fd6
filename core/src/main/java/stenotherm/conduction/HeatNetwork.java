package stenotherm.conduction;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.grid.Block;
import stenotherm.grid.Coordinates;
import stenotherm.grid.FacePatch;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.RectilinearGrid;
import stenotherm.material.Behaviour;
import stenotherm.material.Material;
import stenotherm.material.Melting;

/**
 * A body as a network of heat capacities and conductances with named ports: C dT/dt = -G T + heat
 * from the ports. The one seam between geometry and solvers.
 *
 * <p>The conductance between two neighbouring cells is A / (d1/(2 k1) + R + d2/(2 k2)): the series
 * mean of two half cells and the thin resistances between them.
 *
 * <p>Stable. Immutable, thus thread-safe.
 */
public final class HeatNetwork {
  private final RectilinearGrid grid;
  private final boolean[] solid;
  private final double[] conductivity;

  /** Position of each cell in {@link #toward} over six, or -1; null if no cell has one. */
  private final int @Nullable [] towardOf;

  /** Conductivity between the centre and each face of cells that hold a melting front. */
  private final double[] toward;

  /** Cells whose conductivity the caller has replaced. */
  private final boolean[] replaced;

  private final double[] capacity;
  private final double[][] coupling;

  /** Thin resistance between each cell and its next neighbour along an axis [m2 K/W]. */
  private final double[][] thin;

  /** Where the conductances between cells lie and what of them does not depend on conductivity. */
  private final Couplings couplings;

  private final List<Patch> patches;
  private final List<SourceBlock> sources;
  private final List<Port.BoundaryPort> boundaryPorts;
  private final List<Port.SourcePort> sourcePorts;

  /**
   * Where the faces of each cell stand in the patches, at 6 cell + face: 1 + number over all
   * patches, or 0.
   */
  private final int[] patchFace;

  /** Number of the first face of each patch, over all patches. */
  private final int[] firstFace;

  private HeatNetwork(Builder builder) {
    Layout layout = builder.layout;
    this.grid =
        RectilinearGrid.of(layout, builder.mesh, builder.uniformAxes(), builder.patchList());
    int cells = grid.cellCount();
    this.solid = new boolean[cells];
    this.conductivity = new double[cells];
    this.replaced = new boolean[cells];
    this.towardOf = null;
    this.toward = new double[0];
    this.capacity = new double[cells];
    for (int cell = 0; cell < cells; cell++) {
      if (layout.blocks().get(grid.blockOf(cell)) instanceof Block.Solid block) {
        Material material = block.material();
        solid[cell] = true;
        conductivity[cell] = material.conductivity();
        capacity[cell] = material.volumetricHeatCapacity() * grid.volume(cell);
      }
    }
    this.coupling = new double[3][cells];
    this.thin = new double[3][cells];
    for (Axis axis : Axis.values()) {
      findThin(axis, builder.resistances);
    }
    this.couplings = new Couplings(grid, solid, thin);
    for (Axis axis : Axis.values()) {
      couple(axis);
    }
    this.patches = List.copyOf(findPatches(builder));
    this.sources = List.copyOf(findSources(builder));
    this.boundaryPorts = patches.stream().map(Patch::port).toList();
    this.sourcePorts = sources.stream().map(SourceBlock::port).toList();
    this.patchFace = new int[6 * cells];
    this.firstFace = new int[patches.size()];
    int number = 0;
    for (int p = 0; p < firstFace.length; p++) {
      Patch patch = patches.get(p);
      firstFace[p] = number;
      for (int f = 0; f < patch.cell().length; f++) {
        patchFace[6 * patch.cell()[f] + patch.face()[f].ordinal()] = ++number;
      }
    }
  }

  /** The same body with other conductivities of its cells; keeps the arrays. */
  private HeatNetwork(
      HeatNetwork other,
      double[] conductivity,
      boolean[] replaced,
      int @Nullable [] towardOf,
      double[] toward) {
    this(other, other.grid, conductivity, replaced, towardOf, toward);
  }

  /** The same on a grid of the same cells. */
  private HeatNetwork(
      HeatNetwork other,
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
    this.patches = other.patches.stream().map(this::resist).toList();
    this.sources = other.sources.stream().map(this::split).toList();
    this.boundaryPorts = other.boundaryPorts;
    this.sourcePorts = other.sourcePorts;
    this.patchFace = other.patchFace;
    this.firstFace = other.firstFace;
  }

  /** A patch before the cells of this network. */
  private Patch resist(Patch patch) {
    double[] resistance = new double[patch.cell().length];
    for (int f = 0; f < resistance.length; f++) {
      resistance[f] = resistance(patch.face()[f], patch.cell()[f], patch.thin()[f]);
    }
    return new Patch(
        patch.port(), patch.cell(), patch.face(), patch.area(), patch.thin(), resistance);
  }

  /**
   * Starts a network of a layout.
   *
   * @param layout the blocks
   * @param mesh how fine the grid is
   * @return a builder whose faces are adiabatic until set otherwise
   */
  public static Builder builder(Layout layout, MeshControl mesh) {
    return new Builder(layout, mesh);
  }

  /** Fills in the thin resistances between each cell and its next neighbour along an axis. */
  private void findThin(Axis axis, List<ThinResistance> resistances) {
    double[] along = thin[axis.ordinal()];
    int stride = grid.stride(axis);
    for (int cell = 0; cell < along.length; cell++) {
      int next = cell + stride;
      if (hasNext(axis, cell) && grid.blockOf(cell) != grid.blockOf(next)) {
        along[cell] = thinResistance(resistances, nameOf(cell), nameOf(next));
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
  private void couple(Axis axis, HeatNetwork other, boolean[] kept) {
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
  private boolean[] keptFrom(HeatNetwork other) {
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

  private static double thinResistance(List<ThinResistance> all, String one, String other) {
    double sum = 0;
    for (ThinResistance resistance : all) {
      if (resistance.separates(one, other)) {
        sum += resistance.resistance();
      }
    }
    return sum;
  }

  String nameOf(int cell) {
    return grid.layout().blocks().get(grid.blockOf(cell)).name();
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
  private double resistance(Face face, int cell, double thinResistance) {
    double share = grid.surfaceArea(face, cell) / grid.faceArea(face, cell);
    return halfResistance(face, cell) * share + thinResistance;
  }

  private List<Patch> findPatches(Builder builder) {
    Map<String, PatchCollector> collectors = new LinkedHashMap<>();
    builder.faces.forEach(
        (face, kind) -> collectors.put(face.label(), new PatchCollector(face.label(), kind)));
    builder.environments.forEach(
        (name, kind) -> {
          if (kind != BoundaryKind.ADIABATIC) {
            collectors.put(name, new PatchCollector(name, kind));
          }
        });
    builder.patches.forEach(
        (patch, kind) -> {
          if (kind != BoundaryKind.ADIABATIC) {
            collectors.put(patch.name(), new PatchCollector(patch.name(), kind));
          }
        });
    FacePatches facePatches = new FacePatches(grid, builder.patchList());
    for (int cell = 0; cell < solid.length; cell++) {
      if (!solid[cell]) {
        continue;
      }
      for (Face face : Face.values()) {
        String beyond = beyond(cell, face, facePatches);
        if (beyond != null && collectors.containsKey(beyond)) {
          double thin = thinResistance(builder.resistances, nameOf(cell), beyond);
          collectors.get(beyond).add(cell, face, thin);
        }
      }
    }
    List<Patch> found = new ArrayList<>();
    for (PatchCollector collector : collectors.values()) {
      if (collector.isEmpty() && facePatches.areOn(collector.name)) {
        // patches hide the whole face
        continue;
      }
      if (collector.isEmpty() && facePatches.include(collector.name)) {
        throw new InvalidInputException(
            "patch '" + collector.name + "'",
            "covers no solid cell: environments or later patches take all of it");
      }
      found.add(collector.patch());
    }
    return found;
  }

  /**
   * Name of the environment, the patch or the domain's face beyond a solid cell's face; null if a
   * solid cell lies there.
   */
  private @Nullable String beyond(int cell, Face face, FacePatches facePatches) {
    int position = grid.position(face.axis(), cell);
    int last = grid.count(face.axis()) - 1;
    if (position == (face.isMax() ? last : 0)) {
      return facePatches.boundaryAt(cell, face);
    }
    int neighbour = neighbour(cell, face);
    return solid[neighbour] ? null : nameOf(neighbour);
  }

  private int neighbour(int cell, Face face) {
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

  private List<SourceBlock> findSources(Builder builder) {
    List<SourceBlock> found = new ArrayList<>();
    for (String name : builder.sources) {
      Set<String> blocks = builder.heated.get(name);
      InnerSurface surface = builder.heatedSurfaces.get(name);
      if (surface != null) {
        found.add(onSurface(name, surface));
      } else {
        found.add(inBlocks(name, blocks == null ? Set.of(name) : blocks));
      }
    }
    return found;
  }

  /** A source spread evenly over blocks. */
  private SourceBlock inBlocks(String name, Set<String> blocks) {
    boolean[] isHeated = new boolean[grid.layout().blocks().size()];
    for (String block : blocks) {
      isHeated[requireSolidBlock(name, block)] = true;
    }
    int[] cells =
        IntStream.range(0, solid.length).filter(cell -> isHeated[grid.blockOf(cell)]).toArray();
    if (cells.length == 0) {
      throw new InvalidInputException(
          "source '" + name + "'", "has no cells left; later blocks override all of it");
    }
    double volume = Arrays.stream(cells).mapToDouble(grid::volume).sum();
    double[] share = Arrays.stream(cells).mapToDouble(cell -> grid.volume(cell) / volume).toArray();
    return new SourceBlock(new Port.SourcePort(name, volume), cells, null, share, share);
  }

  private int requireSolidBlock(String source, String name) {
    int block = grid.layout().indexOf(name);
    if (!isSolidBlock(block)) {
      throw new InvalidInputException(
          "source '" + source + "'",
          (source.equals(name) ? "" : "heats '" + name + "', which ")
              + "is an environment; only solid blocks can be heated");
    }
    return block;
  }

  private boolean isSolidBlock(int block) {
    return grid.layout().blocks().get(block) instanceof Block.Solid;
  }

  /** The cells whose faces make up an inner surface, on the side of its blocks. */
  int[] cellsBefore(String field, InnerSurface surface) {
    for (Set<String> names : List.of(surface.blocks(), surface.neighbours())) {
      for (String name : names) {
        if (!isSolidBlock(grid.layout().indexOf(name))) {
          throw new InvalidInputException(
              field,
              "lies at '" + name + "', an environment; an inner surface has solids on both sides");
        }
      }
    }
    Face side = surface.side();
    int[] before =
        IntStream.range(0, solid.length)
            .filter(
                cell ->
                    solid[cell]
                        && solidAcross(cell, side) >= 0
                        && surface.separates(nameOf(cell), nameOf(neighbour(cell, side))))
            .toArray();
    if (before.length == 0) {
      throw new InvalidInputException(
          field,
          "has no surface: nowhere does "
              + new TreeSet<>(surface.blocks())
              + " touch "
              + (surface.neighbours().isEmpty()
                  ? "another solid block"
                  : "any of " + new TreeSet<>(surface.neighbours()))
              + " across its "
              + side.label());
    }
    return before;
  }

  /** A source spread evenly over a surface between cells. */
  private SourceBlock onSurface(String name, InnerSurface surface) {
    Face side = surface.side();
    int[] before = cellsBefore("source '" + name + "'", surface);
    double area = Arrays.stream(before).mapToDouble(cell -> grid.surfaceArea(side, cell)).sum();
    int[] cells = new int[2 * before.length];
    Face[] through = new Face[cells.length];
    double[] part = new double[cells.length];
    for (int f = 0; f < before.length; f++) {
      cells[2 * f] = before[f];
      cells[2 * f + 1] = neighbour(before[f], side);
      through[2 * f] = side;
      through[2 * f + 1] = side.opposite();
      part[2 * f] = grid.surfaceArea(side, before[f]) / area;
      part[2 * f + 1] = part[2 * f];
    }
    return split(new SourceBlock(new Port.SourcePort(name, 0, area), cells, through, part, part));
  }

  /**
   * Shares of a source on a surface. The heat P that a face between two cells releases raises the
   * surface to T_s, from where it goes to both sides: P = (T_s - T_1) A / R_1 + (T_s - T_2) A / R_2
   * with the resistances R_1 of the half cell before the surface and R_2 of the thin resistance and
   * the half cell beyond it. Without T_s, the first term is P R_2 / (R_1 + R_2) and what flows
   * between the cells anyway, (T_2 - T_1) A / (R_1 + R_2); so the coupling stays and each side
   * takes a share as its own conductance from the surface. With G = A / (R_1 + R_2) the share
   * beyond is G R_1 / A.
   */
  private SourceBlock split(SourceBlock source) {
    Face[] through = source.through();
    if (through == null) {
      return source;
    }
    double[] share = new double[through.length];
    for (int f = 0; f < share.length; f += 2) {
      int cell = source.cell()[f];
      Face face = through[f];
      double beyond =
          couplingAcross(cell, face) * halfResistance(face, cell) / grid.faceArea(face, cell);
      share[f] = source.part()[f] * (1 - beyond);
      share[f + 1] = source.part()[f] * beyond;
    }
    return new SourceBlock(source.port(), source.cell(), through, source.part(), share);
  }

  /** Gathers the cell faces of one boundary. */
  private final class PatchCollector {
    private final String name;
    private final BoundaryKind kind;
    private final List<Integer> cells = new ArrayList<>();
    private final List<Face> faces = new ArrayList<>();
    private final List<Double> thin = new ArrayList<>();

    PatchCollector(String name, BoundaryKind kind) {
      this.name = name;
      this.kind = kind;
    }

    void add(int cell, Face face, double resistance) {
      cells.add(cell);
      faces.add(face);
      thin.add(resistance);
    }

    boolean isEmpty() {
      return cells.isEmpty();
    }

    Patch patch() {
      if (isEmpty()) {
        throw new InvalidInputException(
            "boundary '" + name + "'", "touches no solid cell, so that no heat could pass it");
      }
      int[] cell = cells.stream().mapToInt(Integer::intValue).toArray();
      double[] area = new double[cell.length];
      double[] resistance = new double[cell.length];
      for (int index = 0; index < cell.length; index++) {
        Face face = faces.get(index);
        area[index] = grid.surfaceArea(face, cell[index]);
        resistance[index] = resistance(face, cell[index], thin.get(index));
      }
      Port.BoundaryPort port = new Port.BoundaryPort(name, kind, Arrays.stream(area).sum());
      double[] thinOf = thin.stream().mapToDouble(Double::doubleValue).toArray();
      return new Patch(port, cell, faces.toArray(new Face[0]), area, thinOf, resistance);
    }
  }

  /**
   * The same body with other conductivities of some blocks, on the same grid and with the same
   * ports: cheaper than building it anew. A conductivity that is replaced here does not follow
   * temperature in a run with live conductivities: it is the caller's.
   *
   * @param conductivities thermal conductivity by block [W/(m K)], each above 0
   * @return the changed network
   * @throws InvalidInputException if a block does not exist, is an environment or melts, or a
   *     conductivity is not a finite number above 0
   */
  public HeatNetwork withConductivities(Map<String, Double> conductivities) {
    List<Block> blocks = grid.layout().blocks();
    double[] changed = conductivity.clone();
    boolean[] given = replaced.clone();
    conductivities.forEach(
        (name, value) -> {
          int index = grid.layout().indexOf(name);
          String field = "conductivity of block '" + name + "'";
          Block block = blocks.get(index);
          if (block instanceof Block.Environment) {
            throw new InvalidInputException(field, "is that of an environment, which has none");
          }
          if (melting(block).isPresent()) {
            throw new InvalidInputException(
                field, "follows from how much of it is liquid; change its material instead");
          }
          Checks.positive(field, value, "W/(m K)");
          for (int cell : grid.cellsOf(index)) {
            changed[cell] = value;
            given[cell] = true;
          }
        });
    return new HeatNetwork(this, changed, given, null, new double[0]);
  }

  /**
   * The same body with the conductivities of some blocks multiplied, on the same grid and with the
   * same ports. They do not follow temperature in a run with live conductivities.
   *
   * @param factors what multiplies the conductivity of all cells of a block [-], by its name
   * @return the changed network
   * @throws InvalidInputException if a block does not exist, or a factor is not a finite number
   *     above 0
   */
  public HeatNetwork withFactors(Map<String, Double> factors) {
    double[] changed = conductivity.clone();
    boolean[] given = replaced.clone();
    factors.forEach(
        (name, factor) -> {
          Checks.positive("factor on the conductivity of block '" + name + "'", factor, "");
          for (int cell : grid.cellsOf(grid.layout().indexOf(name))) {
            changed[cell] *= factor;
            given[cell] = true;
          }
        });
    return new HeatNetwork(this, changed, given, null, new double[0]);
  }

  /**
   * The same body of materials with other conductivities, on the same grid and with the same ports
   * and thin resistances. Conductivities that the caller has replaced are forgotten.
   *
   * @param layout the same blocks in the same places
   * @return the changed network
   * @throws InvalidInputException if a block differs in more than how its material conducts
   */
  public HeatNetwork withMaterialsOf(Layout layout) {
    RectilinearGrid same = grid.of(layout);
    double[] changed = new double[conductivity.length];
    for (int cell = 0; cell < changed.length; cell++) {
      if (layout.blocks().get(grid.blockOf(cell)) instanceof Block.Solid block) {
        changed[cell] = block.material().conductivity();
        if (block.material().volumetricHeatCapacity() != material(cell).volumetricHeatCapacity()
            || !melting(block).equals(melting(cell))) {
          throw new InvalidInputException(
              "material of block '" + block.name() + "'",
              "stores heat otherwise; only how a material conducts may change");
        }
      }
    }
    return new HeatNetwork(this, same, changed, new boolean[changed.length], null, new double[0]);
  }

  /**
   * Tells by how much conductivities differ from those of another network.
   *
   * @param other the same body on the same grid
   * @return the largest ratio of two conductivities of one cell less one, at least 0
   * @throws InvalidInputException if it is one on another grid
   */
  public double conductivityChange(HeatNetwork other) {
    requireSameGrid("other network", other.grid);
    double largest = 1;
    for (int cell = 0; cell < conductivity.length; cell++) {
      if (solid[cell]) {
        double ratio = conductivity[cell] / other.conductivity[cell];
        largest = Math.max(largest, Math.max(ratio, 1 / ratio));
      }
    }
    return largest - 1;
  }

  /**
   * The same body with the conductivity of each cell at its temperature, constant from then on, for
   * materials whose conductivity depends on temperature ({@link Behaviour.Corrected} and {@link
   * Behaviour.Voids}). Conductivities that the caller has replaced stay. Those set here are
   * replaced in their turn: they do not follow temperature in a run with live conductivities.
   *
   * @param field temperatures of a body on the same grid
   * @return the changed network
   * @throws InvalidInputException if the field is one of another grid
   */
  public HeatNetwork withConductivitiesAt(TemperatureField field) {
    requireSameGrid("field", field.grid());
    double[] changed = conductivity.clone();
    boolean[] given = replaced.clone();
    for (int cell = 0; cell < changed.length; cell++) {
      if (followsTemperature(cell)) {
        Behaviour behaviour = material(cell).behaviour();
        changed[cell] *= behaviour.conductivityRatio(field.ofCell(cell));
        given[cell] = true;
      }
    }
    return new HeatNetwork(this, changed, given, null, new double[0]);
  }

  /** Tells whether the conductivity of a cell depends on its temperature and is not replaced. */
  boolean followsTemperature(int cell) {
    return solid[cell]
        && !replaced[cell]
        && (material(cell).behaviour() instanceof Behaviour.Corrected
            || material(cell).behaviour() instanceof Behaviour.Voids);
  }

  /**
   * The same body with other conductivities of its cells [W/(m K)]. It keeps the arrays.
   *
   * @param positions position of each cell over six in the conductivities towards faces, or -1;
   *     null if there are none
   * @param towards conductivity between a cell's centre and each of its faces, where it is not that
   *     of the cell
   */
  HeatNetwork withCells(double[] conductivities, int @Nullable [] positions, double[] towards) {
    return new HeatNetwork(this, conductivities, replaced, positions, towards);
  }

  /**
   * Refuses a network that is not the same body on the same grid with the same ports;
   * conductivities and thin resistances may differ.
   */
  void requireSameBody(HeatNetwork other) {
    String field = "other network";
    requireSameGrid(field, other.grid);
    if (!portNames().equals(other.portNames())) {
      throw new InvalidInputException(
          field, "has the ports " + other.portNames() + " instead of " + portNames());
    }
    for (int s = 0; s < sources.size(); s++) {
      if (!sources.get(s).heatsLike(other.sources.get(s))) {
        throw new InvalidInputException(
            field, "has the source '" + sources.get(s).port().name() + "' elsewhere");
      }
    }
    for (int cell = 0; cell < solid.length; cell++) {
      if (solid[cell] != other.solid[cell]
          || capacity[cell] != other.capacity[cell]
          || !melting(cell).equals(other.melting(cell))) {
        throw new InvalidInputException(
            field,
            "stores heat otherwise in block '"
                + nameOf(cell)
                + "'; only conductivities and thin resistances may change during a run");
      }
    }
  }

  private void requireSameGrid(String field, RectilinearGrid other) {
    for (Axis axis : Axis.values()) {
      if (!Arrays.equals(grid.lines(axis), other.lines(axis))) {
        throw new InvalidInputException(field, "has another grid along " + axis);
      }
    }
  }

  private List<String> portNames() {
    return Stream.<Port>concat(boundaryPorts.stream(), sourcePorts.stream())
        .map(port -> port.name() + " [" + port.unit() + "]")
        .toList();
  }

  /** The material of a solid cell. */
  Material material(int cell) {
    return ((Block.Solid) grid.layout().blocks().get(grid.blockOf(cell))).material();
  }

  /** How a cell melts, if it does. */
  Optional<Melting> melting(int cell) {
    return melting(grid.layout().blocks().get(grid.blockOf(cell)));
  }

  /** How a block melts, if it does. */
  static Optional<Melting> melting(Block block) {
    return block instanceof Block.Solid solid
            && solid.material().behaviour() instanceof Behaviour.Melts melts
        ? Optional.of(melts.melting())
        : Optional.empty();
  }

  /** Tells whether the caller has replaced the conductivity of a cell. */
  boolean isReplaced(int cell) {
    return replaced[cell];
  }

  /**
   * Returns the grid.
   *
   * @return the grid
   */
  public RectilinearGrid grid() {
    return grid;
  }

  /**
   * Returns the number of solid cells, the unknowns.
   *
   * @return the number
   */
  public int solidCellCount() {
    int count = 0;
    for (boolean isSolid : solid) {
      count += isSolid ? 1 : 0;
    }
    return count;
  }

  /**
   * Returns the heat capacity of the whole body.
   *
   * @return the heat capacity [J/K]
   */
  public double totalCapacity() {
    return Arrays.stream(capacity).sum();
  }

  /**
   * Returns the ports of the boundaries: the faces in the order of {@link Face}, then the
   * environments, then the patches in the order in which they were named. A face that patches cover
   * altogether has none, nor has anything adiabatic.
   *
   * @return the ports
   */
  public List<Port.BoundaryPort> boundaryPorts() {
    return boundaryPorts;
  }

  /**
   * Returns the ports of the sources in the order in which they were named.
   *
   * @return the ports
   */
  public List<Port.SourcePort> sourcePorts() {
    return sourcePorts;
  }

  /** Position in {@link #patches()} of the boundary at a cell's face; -1 if there is none. */
  int patchAt(int cell, Face face) {
    int number = patchFace[6 * cell + face.ordinal()] - 1;
    int patch = firstFace.length - 1;
    while (patch >= 0 && firstFace[patch] > number) {
      patch--;
    }
    return number < 0 ? -1 : patch;
  }

  /** Position of a cell's face within the patch that {@link #patchAt} names. */
  int indexInPatch(int cell, Face face, int patch) {
    return patchFace[6 * cell + face.ordinal()] - 1 - firstFace[patch];
  }

  List<Patch> patches() {
    return patches;
  }

  List<SourceBlock> sources() {
    return sources;
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

  /**
   * Finds a boundary by its name.
   *
   * @param name face label, name of an environment or of a patch
   * @return position in {@link #boundaryPorts()}
   * @throws InvalidInputException if there is none; the message lists those there are
   */
  public int boundaryIndex(String name) {
    for (int index = 0; index < patches.size(); index++) {
      if (patches.get(index).port().name().equals(name)) {
        return index;
      }
    }
    throw new InvalidInputException(
        "boundary",
        "there is no boundary '"
            + name
            + "' that carries heat; there are "
            + patches.stream().map(patch -> patch.port().name()).toList());
  }

  /**
   * Finds a source by its name.
   *
   * @param name name of the source; of the heated block if it has none of its own
   * @return position in {@link #sourcePorts()}
   * @throws InvalidInputException if there is none; the message lists those there are
   */
  public int sourceIndex(String name) {
    for (int index = 0; index < sources.size(); index++) {
      if (sources.get(index).port().name().equals(name)) {
        return index;
      }
    }
    throw new InvalidInputException(
        "source",
        "there is no source '"
            + name
            + "'; there are "
            + sources.stream().map(source -> source.port().name()).toList());
  }

  /** Builds a network. Not thread-safe. */
  public static final class Builder {
    private final Layout layout;
    private final MeshControl mesh;
    private final Map<Face, BoundaryKind> faces = new EnumMap<>(Face.class);
    private final Map<String, BoundaryKind> environments = new LinkedHashMap<>();
    private final Map<FacePatch, BoundaryKind> patches = new LinkedHashMap<>();

    /** Names of all sources in their order. */
    private final Set<String> sources = new LinkedHashSet<>();

    /** Blocks of the sources with a name of their own. */
    private final Map<String, Set<String>> heated = new HashMap<>();

    private final Map<String, InnerSurface> heatedSurfaces = new HashMap<>();
    private final List<ThinResistance> resistances = new ArrayList<>();

    private Builder(Layout layout, MeshControl mesh) {
      this.layout = layout;
      this.mesh = mesh;
    }

    /**
     * Sets the kind of boundary at a face of the domain; a face is adiabatic until set.
     *
     * @param face the face
     * @param kind the kind of boundary
     * @return this builder
     */
    public Builder boundary(Face face, BoundaryKind kind) {
      if (kind == BoundaryKind.ADIABATIC) {
        faces.remove(face);
      } else {
        faces.put(face, kind);
      }
      return this;
    }

    /**
     * Sets the kind of boundary at the surface of an environment; every environment needs one.
     *
     * @param environment name of the environment block
     * @param kind the kind of boundary
     * @return this builder
     * @throws InvalidInputException if there is no environment of that name
     */
    public Builder boundary(String environment, BoundaryKind kind) {
      if (!(layout.blocks().get(layout.indexOf(environment)) instanceof Block.Environment)) {
        throw new InvalidInputException(
            "boundary '" + environment + "'", "is a solid block, not an environment");
      }
      environments.put(environment, kind);
      return this;
    }

    /**
     * Gives a part of a face a boundary of its own. Grid lines follow its edges. It overrides the
     * face and the patches before it; it has a port of its own unless it is adiabatic.
     *
     * @param patch the part of a face
     * @param kind the kind of boundary
     * @return this builder
     * @throws InvalidInputException if its name is taken, or it does not lie on its face
     */
    public Builder patch(FacePatch patch, BoundaryKind kind) {
      FacePatches.check(patch, layout, patches.keySet());
      patches.put(patch, kind);
      return this;
    }

    private List<FacePatch> patchList() {
      return List.copyOf(patches.keySet());
    }

    /**
     * Adds a heat source, spread evenly over the cells that the block keeps.
     *
     * @param block name of the block
     * @return this builder
     */
    public Builder source(String block) {
      sources.add(block);
      return this;
    }

    /**
     * Adds a heat source with a name of its own, spread evenly over the cells that blocks keep:
     * each gets a share of the power as its volume. Several sources may heat the same block.
     *
     * @param name name of the source
     * @param blocks names of the heated blocks
     * @return this builder
     * @throws InvalidInputException if the name is blank or taken, or there are no blocks
     */
    public Builder source(String name, Set<String> blocks) {
      requireFree(name);
      if (blocks.isEmpty()) {
        throw new InvalidInputException("source '" + name + "'", "needs at least one block");
      }
      sources.add(name);
      heated.put(name, Set.copyOf(blocks));
      return this;
    }

    /**
     * Adds a heat source on a surface between blocks, spread evenly over it: what condenses there,
     * or a thin heater. It raises the surface; each side takes its share through its own half cell,
     * and what lies beyond a thin resistance takes less.
     *
     * @param name name of the source
     * @param surface where the heat is released
     * @return this builder
     * @throws InvalidInputException if the name is blank or taken
     */
    public Builder source(String name, InnerSurface surface) {
      requireFree(name);
      sources.add(name);
      heatedSurfaces.put(name, surface);
      return this;
    }

    private void requireFree(String name) {
      Checks.name("source name", name);
      String field = "source '" + name + "'";
      if (layout.blocks().stream().anyMatch(block -> block.name().equals(name))) {
        throw new InvalidInputException(
            field, "is the name of a block; a source of that name heats that block alone");
      }
      for (Face face : Face.values()) {
        if (face.label().equals(name)) {
          throw new InvalidInputException(field, "is the name of a face of the domain");
        }
      }
      if (sources.contains(name)) {
        throw new InvalidInputException(field, "occurs twice; every source needs its own name");
      }
    }

    /** Refuses a source with the name of a patch. */
    private void checkNames() {
      for (FacePatch patch : patches.keySet()) {
        if (sources.contains(patch.name())) {
          throw new InvalidInputException(
              "source '" + patch.name() + "'", "is the name of a patch; every port needs its own");
        }
      }
    }

    /**
     * Adds a thin resistance.
     *
     * @param resistance the resistance
     * @return this builder
     * @throws InvalidInputException if it names a block that does not exist
     */
    public Builder thinResistance(ThinResistance resistance) {
      resistance.inside().forEach(layout::indexOf);
      resistance.outside().forEach(layout::indexOf);
      resistances.add(resistance);
      return this;
    }

    /**
     * Axes along which nothing varies: all blocks and patches span the domain and both ends are
     * adiabatic. One cell is exact.
     */
    private Set<Axis> uniformAxes() {
      Set<Axis> uniform = EnumSet.noneOf(Axis.class);
      for (Axis axis : Axis.values()) {
        boolean spanned =
            layout.blocks().stream()
                .allMatch(
                    block ->
                        block.box().min().along(axis) == layout.domain().min().along(axis)
                            && block.box().max().along(axis) == layout.domain().max().along(axis)
                            && !isCurvedAcross(axis, block));
        boolean adiabatic =
            !faces.containsKey(Face.of(axis, false)) && !faces.containsKey(Face.of(axis, true));
        if (spanned && adiabatic && patches.keySet().stream().allMatch(p -> spans(p, axis))) {
          uniform.add(axis);
        }
      }
      return uniform;
    }

    private static boolean isCurvedAcross(Axis axis, Block block) {
      return block instanceof Block.Solid solid && solid.shape().isCurvedAcross(axis);
    }

    private boolean spans(FacePatch patch, Axis axis) {
      return patch.face().axis() != axis
          && patch.region().min().along(axis) <= layout.domain().min().along(axis)
          && patch.region().max().along(axis) >= layout.domain().max().along(axis);
    }

    /**
     * Refuses boundaries where there is no surface: on an axis, a centre, a cut through a whole.
     */
    private void checkSurfaces() {
      Set<Face> used = EnumSet.noneOf(Face.class);
      used.addAll(faces.keySet());
      patches.keySet().forEach(patch -> used.add(patch.face()));
      for (Face face : used) {
        boolean isSurface =
            switch (layout.coordinates()) {
              case CARTESIAN -> true;
              case CYLINDRICAL -> face.axis() != Axis.Y;
              case SPHERICAL -> face.axis() == Axis.X;
            };
        boolean isCentre =
            layout.coordinates() != Coordinates.CARTESIAN
                && face == Face.X_MIN
                && layout.domain().min().x() == 0;
        if (!isSurface || isCentre) {
          throw new InvalidInputException(
              "boundary '" + face.label() + "'",
              isCentre
                  ? "lies at radius 0, where there is no surface"
                  : "is no surface in " + layout.coordinates() + " coordinates: nothing passes it");
        }
      }
    }

    /**
     * Makes the network.
     *
     * @return the network
     * @throws InvalidInputException if an environment has no boundary kind, a boundary touches no
     *     solid cell or lies where a radius or an angle has no surface, a source has no cells, no
     *     surface or the name of a patch, or the grid would be too large or too coarse for a round
     *     block
     */
    public HeatNetwork build() {
      checkSurfaces();
      checkNames();
      for (Block block : layout.blocks()) {
        if (block instanceof Block.Environment && !environments.containsKey(block.name())) {
          throw new InvalidInputException(
              "environment '" + block.name() + "'",
              "has no boundary; say how heat passes its surface");
        }
      }
      return new HeatNetwork(this);
    }
  }
}
