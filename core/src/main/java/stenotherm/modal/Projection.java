package stenotherm.modal;

import stenotherm.conduction.ReducibleNetwork;

/**
 * A network as the basis V sees it: V'GV, V'B, and the rows of all outputs times V. Rows are stored
 * one after the other.
 */
final class Projection {
  final int size;
  final int inputs;
  final int boundaries;

  /** V'GV, symmetric. */
  final double[] conductance;

  /** V'B, one row of inputs for each vector. */
  final double[] drive;

  /** Linear outputs, then the nodes of each block with extremes. */
  final Rows outputs;

  /** Heat flow into the body through each boundary. */
  final Rows flows;

  /** Position of the first node of each block among the outputs; one more at the end. */
  final int[] firstNode;

  /** Rows in the coordinates of the basis, and what the inputs add directly. */
  @SuppressWarnings("ArrayRecordComponent") // internal; never compared or printed
  record Rows(int count, double[][] ofVector, double[][] ofInput) {
    /** Entry of a row: of a vector, or after those of an input. */
    double entry(int row, int position) {
      return position < ofVector.length
          ? ofVector[position][row]
          : ofInput[position - ofVector.length][row];
    }
  }

  Projection(ReducibleNetwork operator, Basis basis, OutputPlan plan) {
    size = basis.size();
    inputs = operator.inputs().size();
    boundaries = operator.network().boundaryPorts().size();
    conductance = new double[size * size];
    drive = new double[size * inputs];
    ReducibleNetwork.Reader reader = operator.new Reader(plan.linear);
    ReducibleNetwork.Nodes[] nodes = new ReducibleNetwork.Nodes[plan.blocks.size()];
    firstNode = new int[nodes.length + 1];
    firstNode[0] = plan.linear.size();
    for (int block = 0; block < nodes.length; block++) {
      nodes[block] = operator.new Nodes(plan.blocks.get(block));
      firstNode[block + 1] = firstNode[block] + nodes[block].count();
    }
    int count = firstNode[nodes.length];
    outputs = new Rows(count, new double[size][], new double[inputs][]);
    flows = new Rows(boundaries, new double[size][], new double[inputs][]);
    double[] heat = operator.vector();
    double[] products = new double[size];
    double[] none = new double[inputs];
    for (int j = 0; j < size; j++) {
      double[] v = basis.vector(j);
      operator.conduct(v, heat);
      basis.products(heat, products, j + 1);
      for (int i = 0; i <= j; i++) {
        conductance[i * size + j] = products[i];
        conductance[j * size + i] = products[i];
      }
      outputs.ofVector()[j] = read(reader, nodes, v, none);
      flows.ofVector()[j] = operator.heatFlows(v, none);
    }
    double[] cold = operator.vector();
    for (int input = 0; input < inputs; input++) {
      basis.products(operator.heatOf(input), products, size);
      for (int i = 0; i < size; i++) {
        drive[i * inputs + input] = products[i];
      }
      double[] unit = new double[inputs];
      unit[input] = 1;
      outputs.ofInput()[input] = read(reader, nodes, cold, unit);
      flows.ofInput()[input] = operator.heatFlows(cold, unit);
    }
  }

  private double[] read(
      ReducibleNetwork.Reader reader, ReducibleNetwork.Nodes[] nodes, double[] x, double[] inputs) {
    double[] values = new double[firstNode[nodes.length]];
    System.arraycopy(reader.read(x, inputs), 0, values, 0, firstNode[0]);
    for (int block = 0; block < nodes.length; block++) {
      double[] of = nodes[block].read(x, inputs);
      System.arraycopy(of, 0, values, firstNode[block], of.length);
    }
    return values;
  }
}
