package stenotherm.modal;

import java.util.List;
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
  final double[] inputMatrix;

  /** Linear outputs, then the nodes of each block with extremes. */
  final Rows outputs;

  /** Heat flow into the body through each boundary. */
  final Rows flows;

  /** Position of the first node of each block among the outputs; one more at the end. */
  final int[] firstNode;

  /** Rows in the coordinates of the basis, and what the inputs add directly. */
  @SuppressWarnings("ArrayRecordComponent") // internal; never compared or printed
  record Rows(int count, double[][] ofVector, double[][] ofInput) {
    /** Some of the rows. */
    Rows chosen(int[] rows) {
      return new Rows(rows.length, chosen(rows, ofVector), chosen(rows, ofInput));
    }

    private static double[][] chosen(int[] rows, double[][] columns) {
      double[][] chosen = new double[columns.length][rows.length];
      for (int c = 0; c < chosen.length; c++) {
        for (int r = 0; r < rows.length; r++) {
          chosen[c][r] = columns[c][rows[r]];
        }
      }
      return chosen;
    }
  }

  Projection(ResolventSolver solver, KrylovBasis basis, OutputPlan plan) {
    ReducibleNetwork operator = solver.operator(0);
    Workers workers = solver.workers();
    size = basis.size();
    inputs = operator.inputs().size();
    boundaries = operator.network().boundaryPorts().size();
    conductance = solver.conductance(basis);
    Reading[] readings = new Reading[workers.threads()];
    readings[0] = new Reading(operator, plan);
    firstNode = readings[0].firstNode;
    int count = firstNode[firstNode.length - 1];
    outputs = new Rows(count, new double[size][], new double[inputs][]);
    flows = new Rows(boundaries, new double[size][], new double[inputs][]);
    inputMatrix = new double[size * inputs];
    List<LoadVector> loads = LoadVector.ofInputs(operator);
    workers.run(
        size + inputs,
        (worker, index) -> {
          if (readings[worker] == null) {
            readings[worker] = new Reading(solver.operator(worker), plan, readings[0]);
          }
          Reading reading = readings[worker];
          if (index < size) {
            double[] v = basis.vector(index);
            outputs.ofVector()[index] = reading.outputsOf(v, inputs);
            flows.ofVector()[index] = reading.operator.heatFlows(v, new double[inputs]);
            for (int input = 0; input < inputs; input++) {
              inputMatrix[index * inputs + input] = loads.get(input).product(v);
            }
          } else {
            double[] unit = new double[inputs];
            unit[index - size] = 1;
            outputs.ofInput()[index - size] = reading.outputsOf(unit);
            double[] cold = reading.operator.vector();
            flows.ofInput()[index - size] = reading.operator.heatFlows(cold, unit);
          }
        });
  }

  /** What one thread reads outputs with. */
  private static final class Reading {
    private final ReducibleNetwork operator;
    private final ReducibleNetwork.Reader reader;
    private final ReducibleNetwork.Nodes[] nodes;
    private final int[] firstNode;

    Reading(ReducibleNetwork operator, OutputPlan plan) {
      this.operator = operator;
      reader = operator.new Reader(plan.linear);
      nodes = new ReducibleNetwork.Nodes[plan.blocks.size()];
      firstNode = new int[nodes.length + 1];
      firstNode[0] = plan.linear.size();
      for (int block = 0; block < nodes.length; block++) {
        nodes[block] = operator.new Nodes(plan.blocks.get(block));
        firstNode[block + 1] = firstNode[block] + nodes[block].count();
      }
    }

    /** Takes over the nodes of another thread. */
    Reading(ReducibleNetwork operator, OutputPlan plan, Reading other) {
      this.operator = operator;
      reader = operator.new Reader(plan.linear);
      nodes = new ReducibleNetwork.Nodes[other.nodes.length];
      firstNode = other.firstNode;
      for (int block = 0; block < nodes.length; block++) {
        nodes[block] = operator.new Nodes(other.nodes[block]);
      }
    }

    /** Outputs of a state, all inputs being zero. */
    double[] outputsOf(double[] x, int inputs) {
      double[] values = linear(x, new double[inputs]);
      for (int block = 0; block < nodes.length; block++) {
        double[] of = nodes[block].read(x);
        System.arraycopy(of, 0, values, firstNode[block], of.length);
      }
      return values;
    }

    /** Outputs of inputs, the body being at 0 K. */
    double[] outputsOf(double[] inputs) {
      double[] cold = operator.vector();
      double[] values = linear(cold, inputs);
      for (int block = 0; block < nodes.length; block++) {
        if (nodes[block].reachedByInputs()) {
          double[] of = nodes[block].read(cold, inputs);
          System.arraycopy(of, 0, values, firstNode[block], of.length);
        }
      }
      return values;
    }

    private double[] linear(double[] x, double[] inputs) {
      double[] values = new double[firstNode[nodes.length]];
      System.arraycopy(reader.read(x, inputs), 0, values, 0, firstNode[0]);
      return values;
    }
  }
}
