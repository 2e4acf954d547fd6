package stenotherm.conduction;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Suggestions;
import stenotherm.grid.RectilinearGrid;

/** The sources of a heat network. */
final class NetworkSources {
  private final List<SourceBlock> sources;

  /**
   * Finds the cells of each source.
   *
   * @throws InvalidInputException if a source has no cells
   */
  NetworkSources(CellNetwork cells, HeatNetworkBuilder builder) {
    this.sources = find(cells, builder);
  }

  private static List<SourceBlock> find(CellNetwork cells, HeatNetworkBuilder builder) {
    List<SourceBlock> found = new ArrayList<>();
    for (String name : builder.sources) {
      Set<String> blocks = builder.heated.get(name);
      found.add(inBlocks(cells, name, blocks == null ? Set.of(name) : blocks));
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
    return new SourceBlock(new Port.SourcePort(name, volume), cells, share);
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
    throw Suggestions.unknown(
        "source", name, sources.stream().map(source -> source.port().name()).toList());
  }

  /** Refuses sources of the same names that heat other cells. */
  void requireSame(String field, NetworkSources other) {
    for (int s = 0; s < sources.size(); s++) {
      if (!Arrays.equals(sources.get(s).cell(), other.sources.get(s).cell())) {
        throw new InvalidInputException(
            field, "has the source '" + sources.get(s).port().name() + "' elsewhere");
      }
    }
  }
}
