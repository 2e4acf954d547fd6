package stenotherm.modal;

/** Working space in which the outputs of a configuration are read. Belongs to one engine. */
final class Readings {
  private final OutputPlan plan;
  private final PreparedLeg leg;

  /** Linear outputs and temperatures at the candidates. */
  private final double[] row;

  /** Of each output, position among those rows. */
  private final int[] rowOf;

  /** Temperatures at all nodes of each block. */
  private final double[][] atNodes;

  /** Coordinates of the state in the basis. */
  private final double[] coordinates;

  /** The same, and the inputs, relative to a uniform temperature. */
  private final double[] relativeCoordinates;

  private final double[] relativeInputs;

  Readings(OutputPlan plan, PreparedLeg leg) {
    this.plan = plan;
    this.leg = leg;
    this.row = new double[leg.outputs.count()];
    this.rowOf = new int[plan.probes.size()];
    this.coordinates = new double[leg.whole.basisSize];
    this.relativeCoordinates = new double[coordinates.length];
    this.relativeInputs = new double[leg.whole.inputs];
    this.atNodes = new double[plan.blocks.size()][0];
  }

  /** Reads the outputs, and keeps where each of them was found. */
  void read(double[] z, double[] u, double[] values) {
    leg.outputs.values(z, u, row);
    for (int index = 0; index < values.length; index++) {
      int position = plan.position[index];
      if (plan.side[index] == 0) {
        rowOf[index] = position;
      } else {
        int from = leg.firstCandidate[position];
        int to = leg.firstCandidate[position + 1];
        rowOf[index] = plan.side[index] < 0 ? lowest(row, from, to) : highest(row, from, to);
      }
      values[index] = row[rowOf[index]];
    }
  }

  /** Adds the magnitudes of the differences to a coarser model where the outputs were found. */
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

  /** Moves extremes by what was missed. */
  void add(double[] missed, double[] values) {
    for (int index = 0; index < values.length; index++) {
      values[index] += plan.side[index] * missed[index];
    }
  }

  /**
   * Finds by how much the extremes that were read in a state differ from those over all nodes.
   * Nodes are computed relative to what was read, so that their single precision does not have to
   * hold the level of all temperatures.
   *
   * @param values what {@link #read} gave in that state
   * @param missed where to put it, 0 for what is no extreme [K]; may be {@code values}
   */
  void missed(double[] z, double[] u, Body body, double[] values, double[] missed) {
    leg.whole.toBasis(z, coordinates);
    for (int index = 0; index < missed.length; index++) {
      if (plan.side[index] == 0) {
        missed[index] = 0;
        continue;
      }
      int block = plan.position[index];
      BlockNodes nodes = leg.nodes(block);
      if (atNodes[block].length == 0) {
        atNodes[block] = new double[nodes.count()];
      }
      double[] at = atNodes[block];
      System.arraycopy(coordinates, 0, relativeCoordinates, 0, coordinates.length);
      System.arraycopy(u, 0, relativeInputs, 0, u.length);
      body.subtractLevel(values[index], relativeCoordinates, relativeInputs);
      nodes.values(relativeCoordinates, relativeInputs, at);
      double gap =
          plan.side[index] < 0 ? -at[lowest(at, 0, at.length)] : at[highest(at, 0, at.length)];
      missed[index] = Math.max(0, gap);
    }
  }
}
