package stenotherm.modal;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import stenotherm.base.InvalidInputException;
import stenotherm.conduction.InitialState;
import stenotherm.conduction.Port;
import stenotherm.conduction.ReducibleNetwork;

/**
 * What all configurations of a body have in common, in the coordinates of the basis. Immutable once
 * made.
 */
final class Body {
  final List<Port> inputs;
  final List<String> solidBlocks;

  /** Heat content of each solid block, a row for each vector of the basis. */
  private final double[][] stored;

  private final double[] uniform;

  /** Coordinates of the states in which one block is 1 K warmer than the rest. */
  private final Map<String, double[]> apart = new TreeMap<>();

  final InputGroups groups;

  /** Heat that the whole body takes per kelvin [J/K]. */
  final double capacity;

  Body(
      ReducibleNetwork operator, KrylovBasis basis, Set<String> startingApart, InputGroups groups) {
    inputs = operator.inputs();
    this.groups = groups;
    capacity = operator.network().totalCapacity();
    solidBlocks = operator.solidBlocks();
    stored = new double[basis.size()][];
    for (int j = 0; j < stored.length; j++) {
      stored[j] = operator.storedIn(basis.vector(j));
    }
    uniform = basis.project(operator.indicator(Optional.empty()));
    for (String block : startingApart) {
      apart.put(block, basis.project(operator.indicator(Optional.of(block))));
    }
  }

  /** Makes a body that was stored. */
  Body(
      InputGroups groups,
      double capacity,
      List<String> solidBlocks,
      double[] uniform,
      double[][] stored,
      Map<String, double[]> apart) {
    this.inputs = groups.inputs();
    this.groups = groups;
    this.capacity = capacity;
    this.solidBlocks = solidBlocks;
    this.uniform = uniform;
    this.stored = stored;
    this.apart.putAll(apart);
  }

  void write(StoredOutput out) throws IOException {
    out.real(capacity);
    out.integer(solidBlocks.size());
    for (String block : solidBlocks) {
      out.text(block);
    }
    out.integer(uniform.length);
    out.reals(uniform);
    for (double[] row : stored) {
      out.reals(row);
    }
    out.integer(apart.size());
    for (Map.Entry<String, double[]> block : apart.entrySet()) {
      out.text(block.getKey());
      out.reals(block.getValue());
    }
  }

  /** Position of a boundary among the inputs. */
  int boundary(String name) {
    for (int input = 0; input < inputs.size(); input++) {
      if (inputs.get(input) instanceof Port.BoundaryPort && inputs.get(input).name().equals(name)) {
        return input;
      }
    }
    throw new IllegalStateException("there is no boundary '" + name + "'");
  }

  int basisSize() {
    return uniform.length;
  }

  /** Coordinates of the uniform field of 1 K. */
  double[] uniform() {
    return uniform;
  }

  /** Heat content of each solid block, a row for each vector of the basis. */
  double[][] stored() {
    return stored;
  }

  Set<String> startingApart() {
    return apart.keySet();
  }

  /** Coordinates of the states in which one block is 1 K warmer than the rest. */
  List<double[]> apart() {
    return new ArrayList<>(apart.values());
  }

  /** Coordinates of a state at the start. */
  double[] coordinates(InitialState state) {
    if (!state.liquidFractions().isEmpty()) {
      throw new InvalidInputException(
          "initial liquid fraction of " + state.liquidFractions().keySet(),
          "is given, but nothing melts in a reduced model");
    }
    double[] coordinates = new double[uniform.length];
    for (int j = 0; j < coordinates.length; j++) {
      coordinates[j] = state.temperature() * uniform[j];
    }
    state
        .temperatures()
        .forEach(
            (block, temperature) -> {
              double difference = temperature - state.temperature();
              double[] of = apart.get(block);
              if (!solidBlocks.contains(block)) {
                throw new InvalidInputException(
                    "initial temperature of " + block,
                    "is given, but there is no such solid block; there are " + solidBlocks);
              }
              if (difference != 0 && of == null) {
                throw new InvalidInputException(
                    "initial temperature of " + block,
                    "differs from that of the rest, but the model was built for "
                        + (apart.isEmpty() ? "no such block" : apart.keySet() + " alone"));
              }
              if (of != null) {
                for (int j = 0; j < coordinates.length; j++) {
                  coordinates[j] += difference * of[j];
                }
              }
            });
    return coordinates;
  }

  /** Heat content of each solid block [J]. */
  double[] storedIn(double[] coordinates) {
    double[] sums = new double[solidBlocks.size()];
    for (int j = 0; j < coordinates.length; j++) {
      for (int block = 0; block < sums.length; block++) {
        sums[block] += coordinates[j] * stored[j][block];
      }
    }
    return sums;
  }

  /**
   * Mean temperature of some blocks [K].
   *
   * @param blocks positions among the solid blocks, each with cells
   */
  double[] meanOf(int[] blocks, double[] coordinates) {
    double[] means = new double[blocks.length];
    for (int b = 0; b < means.length; b++) {
      double heat = 0;
      double perKelvin = 0;
      for (int j = 0; j < coordinates.length; j++) {
        heat += coordinates[j] * stored[j][blocks[b]];
        perKelvin += uniform[j] * stored[j][blocks[b]];
      }
      means[b] = heat / perKelvin;
    }
    return means;
  }
}
