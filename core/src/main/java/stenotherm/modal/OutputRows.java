package stenotherm.modal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Workers;
import stenotherm.conduction.Port;
import stenotherm.conduction.ReducibleNetwork;

/**
 * The outputs of each basis vector and input: the linear outputs, then the nodes of each block with
 * extremes. At an edge of a block they depend on the conductivities on both sides; they are read at
 * some of them, see {@link InterpolatedRows}. Means of outer surfaces and heat flows depend on
 * films as well: their rows are zero here, each configuration puts those of a {@link Projection}
 * there.
 */
final class OutputRows {
  /** Rows of all linear outputs and nodes. */
  final Projection.Rows rows;

  /** Position of the first node of each block; one more at the end. */
  final int[] firstNode;

  private OutputRows(Projection.Rows rows, int[] firstNode) {
    this.rows = rows;
    this.firstNode = firstNode;
  }

  /**
   * Reads the outputs of all vectors.
   *
   * @throws InvalidInputException if a point or a block with extremes lies on an outer surface
   */
  static OutputRows of(
      Configuration configuration, OutputPlan plan, KrylovBasis basis, Workers workers) {
    Reading[] readings = new Reading[workers.threads()];
    readings[0] = new Reading(configuration.operator(), plan, null);
    int[] firstNode = readings[0].firstNode;
    int size = basis.size();
    List<Port> inputs = readings[0].operator.inputs();
    Projection.Rows rows =
        new Projection.Rows(
            firstNode[firstNode.length - 1], new double[size][], new double[inputs.size()][]);
    workers.run(
        size,
        (worker, index) -> {
          if (readings[worker] == null) {
            readings[worker] = new Reading(configuration.operator(), plan, readings[0]);
          }
          double[] noInputs = new double[inputs.size()];
          rows.ofVector()[index] = readings[worker].outputs(basis.vector(index), noInputs);
        });
    for (int input = 0; input < inputs.size(); input++) {
      double[] unit = new double[inputs.size()];
      unit[input] = 1;
      rows.ofInput()[input] = readings[0].outputs(readings[0].operator.vector(), unit);
      if (inputs.get(input) instanceof Port.BoundaryPort port) {
        refuseReached(rows.ofInput()[input], port, plan, firstNode);
      }
    }
    return new OutputRows(rows, firstNode);
  }

  /** Refuses outputs that change at once with the input of a boundary. */
  private static void refuseReached(
      double[] ofInput, Port.BoundaryPort port, OutputPlan plan, int[] firstNode) {
    for (int row = 0; row < ofInput.length; row++) {
      if (ofInput[row] != 0) {
        String name = row < firstNode[0] ? plan.linear.get(row).name() : "extreme of a block";
        throw new InvalidInputException(
            "output '" + name + "'",
            "lies on the outer surface at '"
                + port.name()
                + "', whose temperature follows the film; ask for the mean of that surface, or step"
                + " every cell");
      }
    }
  }

  /** Reads outputs on one thread. */
  private static final class Reading {
    private final ReducibleNetwork operator;
    private final ReducibleNetwork.Reader reader;
    private final List<ReducibleNetwork.Nodes> nodes = new ArrayList<>();
    private final int[] firstNode;

    /** Rows of the linear outputs that are read: those of no boundary. */
    private final int[] inner;

    /**
     * Looks up names and points.
     *
     * @param other that of another thread, whose nodes are shared; null for the first
     */
    Reading(ReducibleNetwork operator, OutputPlan plan, @Nullable Reading other) {
      this.operator = operator;
      inner =
          IntStream.range(0, plan.linear.size()).filter(row -> !plan.isOfBoundary(row)).toArray();
      reader = operator.new Reader(Arrays.stream(inner).mapToObj(plan.linear::get).toList());
      firstNode = new int[plan.blocks.size() + 1];
      firstNode[0] = plan.linear.size();
      for (int block = 0; block < plan.blocks.size(); block++) {
        nodes.add(
            other == null
                ? operator.new Nodes(plan.blocks.get(block))
                : operator.new Nodes(other.nodes.get(block)));
        firstNode[block + 1] = firstNode[block] + nodes.get(block).count();
      }
    }

    double[] outputs(double[] x, double[] inputs) {
      double[] values = new double[firstNode[firstNode.length - 1]];
      double[] linear = reader.read(x, inputs);
      for (int row = 0; row < inner.length; row++) {
        values[inner[row]] = linear[row];
      }
      for (int block = 0; block < nodes.size(); block++) {
        ReducibleNetwork.Nodes of = nodes.get(block);
        double[] read = of.reachedByInputs() && !isZero(inputs) ? of.read(x, inputs) : of.read(x);
        System.arraycopy(read, 0, values, firstNode[block], read.length);
      }
      return values;
    }

    private static boolean isZero(double[] inputs) {
      for (double input : inputs) {
        if (input != 0) {
          return false;
        }
      }
      return true;
    }
  }

  /** The linear outputs and some nodes of each block. */
  Projection.Rows chosen(List<Candidates> candidates) {
    List<Integer> chosen = new ArrayList<>();
    for (int row = 0; row < firstNode[0]; row++) {
      chosen.add(row);
    }
    for (int block = 0; block < candidates.size(); block++) {
      for (int node : candidates.get(block).nodes()) {
        chosen.add(firstNode[block] + node);
      }
    }
    return rows.chosen(chosen.stream().mapToInt(Integer::intValue).toArray());
  }
}
