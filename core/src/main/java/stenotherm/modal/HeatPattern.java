package stenotherm.modal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import stenotherm.conduction.ReducibleNetwork;

/** The heat that something gives each cell [W], with a list of the few that get any. Immutable. */
final class HeatPattern {
  private final double[] heat;
  private final int[] at;

  /**
   * Lists the cells that get heat.
   *
   * @param heat a vector; must not be changed afterwards
   */
  HeatPattern(double[] heat) {
    this.heat = heat;
    int[] found = new int[heat.length];
    int count = 0;
    for (int i = 0; i < heat.length; i++) {
      if (heat[i] != 0) {
        found[count++] = i;
      }
    }
    at = Arrays.copyOf(found, count);
  }

  /** The patterns of all inputs of a network. */
  static List<HeatPattern> ofInputs(ReducibleNetwork operator) {
    List<HeatPattern> patterns = new ArrayList<>();
    for (int input = 0; input < operator.inputs().size(); input++) {
      patterns.add(new HeatPattern(operator.heatOf(input)));
    }
    return patterns;
  }

  /** The vector; not to be changed. */
  double[] vector() {
    return heat;
  }

  /** Sum of the magnitudes. */
  double magnitude() {
    double sum = 0;
    for (int i : at) {
      sum += Math.abs(heat[i]);
    }
    return sum;
  }

  /** The product with a state. */
  double product(double[] x) {
    double sum = 0;
    for (int i : at) {
      sum += heat[i] * x[i];
    }
    return sum;
  }
}
