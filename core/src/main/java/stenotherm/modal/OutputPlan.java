package stenotherm.modal;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import stenotherm.base.InvalidInputException;
import stenotherm.conduction.Probe;

/** Which outputs are linear in the state, and which are extremes of a block. */
final class OutputPlan {
  final List<Probe> probes;

  /** The linear ones, in their order. */
  final List<Probe> linear;

  /** The blocks with extremes, each once. */
  final List<String> blocks;

  /** Of each probe, position among the linear ones or, for an extreme, that of its block. */
  final int[] position;

  OutputPlan(List<Probe> probes) {
    this.probes = List.copyOf(probes);
    this.linear = new ArrayList<>();
    this.blocks = new ArrayList<>();
    this.position = new int[probes.size()];
    Set<String> names = new HashSet<>();
    for (int index = 0; index < position.length; index++) {
      Probe probe = probes.get(index);
      if (!names.add(probe.name())) {
        throw new InvalidInputException("probe", "the name '" + probe.name() + "' occurs twice");
      }
      if (probe instanceof Probe.Maximum maximum) {
        position[index] = positionOf(maximum.block());
      } else if (probe instanceof Probe.Minimum minimum) {
        position[index] = positionOf(minimum.block());
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
}
