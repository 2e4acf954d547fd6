package stenotherm.conduction;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.grid.RectilinearGrid;

/** The sources of a heat network. */
final class NetworkSources {
  private final List<SourceBlock> sources;

  /**
   * Finds the cells of each source.
   *
   * @throws InvalidInputException if a source has no cells or no surface
   */
  NetworkSources(CellNetwork cells, HeatNetworkBuilder builder) {
    this.sources = find(cells, builder);
  }

  private NetworkSources(List<SourceBlock> sources) {
    this.sources = sources;
  }

  /** The same sources in cells of other conductivities. */
  NetworkSources in(CellNetwork cells) {
    return new NetworkSources(sources.stream().map(source -> split(cells, source)).toList());
  }

  private static List<SourceBlock> find(CellNetwork cells, HeatNetworkBuilder builder) {
    List<SourceBlock> found = new ArrayList<>();
    for (String name : builder.sources) {
      Set<String> blocks = builder.heated.get(name);
      InnerSurface surface = builder.heatedSurfaces.get(name);
      if (surface != null) {
        found.add(onSurface(cells, name, surface));
      } else {
        found.add(inBlocks(cells, name, blocks == null ? Set.of(name) : blocks));
      }
    }
    return found;
  }

  /** A source spread evenly over blocks. */
  private static SourceBlock inBlocks(CellNetwork network, String name, Set<String> blocks) {
    RectilinearGrid grid = network.grid();
    boolean[] isHeated = new boolean[grid.layout().blocks().size()];
    for (String block : blocks) {
      isHeated[requireSolidBlock(grid, name, block)] = true;
    }
    int[] cells =
        IntStream.range(0, network.count()).filter(cell -> isHeated[grid.blockOf(cell)]).toArray();
    if (cells.length == 0) {
      throw new InvalidInputException(
          "source '" + name + "'", "has no cells left; later blocks override all of it");
    }
    double volume = Arrays.stream(cells).mapToDouble(grid::volume).sum();
    double[] share = Arrays.stream(cells).mapToDouble(cell -> grid.volume(cell) / volume).toArray();
    return new SourceBlock(new Port.SourcePort(name, volume), cells, null, share, share);
  }

  private static int requireSolidBlock(RectilinearGrid grid, String source, String name) {
    int block = grid.layout().indexOf(name);
    if (!grid.layout().blocks().get(block).isSolid()) {
      throw new InvalidInputException(
          "source '" + source + "'",
          (source.equals(name) ? "" : "heats '" + name + "', which ")
              + "is an environment; only solid blocks can be heated");
    }
    return block;
  }

  /** A source spread evenly over a surface between cells. */
  private static SourceBlock onSurface(CellNetwork network, String name, InnerSurface surface) {
    RectilinearGrid grid = network.grid();
    Face side = surface.side();
    int[] before = network.cellsBefore("source '" + name + "'", surface);
    double area = Arrays.stream(before).mapToDouble(cell -> grid.surfaceArea(side, cell)).sum();
    int[] cells = new int[2 * before.length];
    Face[] through = new Face[cells.length];
    double[] part = new double[cells.length];
    for (int f = 0; f < before.length; f++) {
      cells[2 * f] = before[f];
      cells[2 * f + 1] = network.neighbour(before[f], side);
      through[2 * f] = side;
      through[2 * f + 1] = side.opposite();
      part[2 * f] = grid.surfaceArea(side, before[f]) / area;
      part[2 * f + 1] = part[2 * f];
    }
    return split(
        network, new SourceBlock(new Port.SourcePort(name, 0, area), cells, through, part, part));
  }

  /**
   * Shares of a source on a surface. The heat P that a face between two cells releases raises the
   * surface to T_s, from where it goes to both sides: P = (T_s - T_1) A / R_1 + (T_s - T_2) A / R_2
   * with the resistances R_1 of the half cell before the surface and R_2 of the thin resistance and
   * the half cell beyond it. With T_s eliminated the first term becomes P R_2 / (R_1 + R_2) plus
   * what flows between the cells without the source, (T_2 - T_1) A / (R_1 + R_2). So the coupling
   * stays, and each side takes a share in proportion to its conductance from the surface. With G =
   * A / (R_1 + R_2) the share beyond is G R_1 / A.
   */
  private static SourceBlock split(CellNetwork network, SourceBlock source) {
    Face[] through = source.through();
    if (through == null) {
      return source;
    }
    double[] share = new double[through.length];
    for (int f = 0; f < share.length; f += 2) {
      int cell = source.cell()[f];
      Face face = through[f];
      double beyond =
          network.couplingAcross(cell, face)
              * network.halfResistance(face, cell)
              / network.grid().faceArea(face, cell);
      share[f] = source.part()[f] * (1 - beyond);
      share[f + 1] = source.part()[f] * beyond;
    }
    return new SourceBlock(source.port(), source.cell(), through, source.part(), share);
  }

  List<SourceBlock> list() {
    return sources;
  }

  /** Position of a source by its name; see {@link HeatNetwork#sourceIndex}. */
  int indexOf(String name) {
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

  /** Refuses sources of the same names that heat other cells. */
  void requireSame(String field, NetworkSources other) {
    for (int s = 0; s < sources.size(); s++) {
      if (!sources.get(s).heatsLike(other.sources.get(s))) {
        throw new InvalidInputException(
            field, "has the source '" + sources.get(s).port().name() + "' elsewhere");
      }
    }
  }
}
