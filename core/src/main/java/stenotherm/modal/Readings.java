package stenotherm.modal;

/** Reads the outputs of a configuration, with working space of its own. Belongs to one engine. */
final class Readings {
  private final OutputPlan plan;
  private final int[] firstCandidate;
  private final ModalConfiguration configuration;

  /** The outputs in the basis, for configurations without outputs in their modes. */
  private final Columns inBasis;

  /** Linear outputs and temperatures at the candidates. */
  private final double[] row;

  /** Position of each output among those rows. */
  private final int[] rowOf;

  private final double[] coordinates;
  private final double[] flows;
  private final double[] surfaces;

  Readings(ReducedModel model, ModalConfiguration configuration) {
    this.plan = model.plan();
    this.firstCandidate = model.firstCandidate();
    this.configuration = configuration;
    this.row = new double[firstCandidate[firstCandidate.length - 1]];
    this.inBasis = new Columns(row.length, configuration.inBasis.ofVector());
    this.rowOf = new int[plan.probes.size()];
    this.coordinates = new double[model.modes()];
    this.flows = new double[configuration.flows.count()];
    this.surfaces = new double[configuration.surfaces.count()];
  }

  /** Computes linear outputs and temperatures at the candidates. */
  private void readRows(double[] z, double[] u) {
    ModalSystem.RowBlock outputs = configuration.outputs;
    if (outputs != null) {
      outputs.values(z, u, row);
      return;
    }
    configuration.system.toBasis(z, coordinates);
    inBasis.multiply(coordinates, row);
    for (int input = 0; input < u.length; input++) {
      Panels.add(configuration.inBasis.ofInput()[input], u[input], row, 0, row.length);
    }
    if (!configuration.model.readsBoundaries()) {
      return;
    }
    configuration.flows.values(coordinates, u, flows);
    configuration.surfaces.values(coordinates, u, surfaces);
    for (int linear = 0; linear < plan.linear.size(); linear++) {
      int boundary = configuration.model.boundaryOf(linear);
      if (boundary >= 0) {
        row[linear] = plan.isHeatFlow(linear) ? flows[boundary] : surfaces[boundary];
      }
    }
  }

  /** Reads the means of blocks, on which no input acts at once. */
  void readMeans(double[] z, double[] values) {
    ModalSystem.RowBlock outputs = configuration.outputs;
    if (outputs != null) {
      outputs.values(z, row, plan.linear.size());
    } else {
      configuration.system.toBasis(z, coordinates);
      inBasis.multiply(coordinates, row, plan.linear.size());
    }
    for (int index : plan.means) {
      values[index] = row[plan.position[index]];
    }
  }

  /** Reads the outputs and keeps the row of each. */
  void read(double[] z, double[] u, double[] values) {
    readRows(z, u);
    for (int index = 0; index < values.length; index++) {
      int position = plan.position[index];
      if (plan.side[index] == 0) {
        rowOf[index] = position;
      } else {
        int from = firstCandidate[position];
        int to = firstCandidate[position + 1];
        rowOf[index] = plan.side[index] < 0 ? lowest(row, from, to) : highest(row, from, to);
      }
      values[index] = row[rowOf[index]];
    }
  }

  /** Adds the magnitudes of the differences to a coarser model in the rows kept. */
  void addDifferences(
      ModalSystem.SingleRows coarser, double[] z, double[] u, double[] values, double[] sums) {
    for (int index = 0; index < values.length; index++) {
      sums[index] += Math.abs(values[index] - coarser.value(rowOf[index], z, u));
    }
  }

  private static int lowest(double[] values, int from, int to) {
    int lowest = from;
    for (int i = from + 1; i < to; i++) {
      if (values[i] < values[lowest]) {
        lowest = i;
      }
    }
    return lowest;
  }

  private static int highest(double[] values, int from, int to) {
    int highest = from;
    for (int i = from + 1; i < to; i++) {
      if (values[i] > values[highest]) {
        highest = i;
      }
    }
    return highest;
  }
}
