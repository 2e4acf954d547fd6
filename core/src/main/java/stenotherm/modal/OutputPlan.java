package stenotherm.modal;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import stenotherm.base.InvalidInputException;
import stenotherm.conduction.Probe;

/** Which outputs are linear in the state, and which are extremes of a block. */
final class OutputPlan {
  final List<Probe> probes;

  /** The linear ones, in their order. */
  final List<Probe> linear;

  /** The blocks with extremes, each once. */
  final List<String> blocks;

  /**
   * For each probe -1 for the lowest temperature of a block, 1 for the highest, 0 for a linear
   * output.
   */
  final int[] side;

  /** For each probe its position among the linear ones or, for an extreme, that of its block. */
  final int[] position;

  /** Which probes are means of blocks. */
  final int[] means;

  OutputPlan(List<Probe> probes) {
    this.means =
        IntStream.range(0, probes.size())
            .filter(index -> probes.get(index) instanceof Probe.Mean)
            .toArray();
    this.probes = List.copyOf(probes);
    this.linear = new ArrayList<>();
    this.blocks = new ArrayList<>();
    this.position = new int[probes.size()];
    this.side = new int[probes.size()];
    Set<String> names = new HashSet<>();
    for (int index = 0; index < position.length; index++) {
      Probe probe = probes.get(index);
      if (!names.add(probe.name())) {
        throw new InvalidInputException("probe", "the name '" + probe.name() + "' occurs twice");
      }
      if (probe instanceof Probe.Maximum maximum) {
        position[index] = positionOf(maximum.block());
        side[index] = 1;
      } else if (probe instanceof Probe.Minimum minimum) {
        position[index] = positionOf(minimum.block());
        side[index] = -1;
      } else {
        position[index] = linear.size();
        linear.add(probe);
      }
    }
  }

  private int positionOf(String block) {
    if (!blocks.contains(block)) {
      blocks.add(block);
    }
    return blocks.indexOf(block);
  }

  /** Tells whether all outputs are means of blocks: they do not depend on conductivities. */
  boolean isOfMeans() {
    return blocks.isEmpty() && linear.stream().allMatch(probe -> probe instanceof Probe.Mean);
  }

  /** Tells whether a linear output is the mean of an outer surface or the heat flow through it. */
  boolean isOfBoundary(int linearOutput) {
    return boundaryOf(linearOutput) != null;
  }

  /** Tells whether a linear output is a heat flow rather than a temperature. */
  boolean isHeatFlow(int linearOutput) {
    return linear.get(linearOutput) instanceof Probe.HeatFlow;
  }

  /** The boundary whose surface or heat flow a linear output is; null if it is another output. */
  @Nullable String boundaryOf(int linearOutput) {
    Probe probe = linear.get(linearOutput);
    if (probe instanceof Probe.SurfaceMean surface) {
      return surface.boundary();
    }
    return probe instanceof Probe.HeatFlow flow ? flow.boundary() : null;
  }

  /** Tells whether the lowest (-1) or the highest (1) temperature of a block is an output. */
  boolean asksFor(int extreme, int block) {
    for (int index = 0; index < side.length; index++) {
      if (side[index] == extreme && position[index] == block) {
        return true;
      }
    }
    return false;
  }
}
