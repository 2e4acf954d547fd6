package stenotherm.conduction;

import java.util.Arrays;
import stenotherm.base.Face;

/**
 * The temperatures of nodes of the continuous field as weighted sums of cell temperatures, with all
 * inputs zero: a few weights for each node. Speeds up reading many fields of one body. Immutable
 * once filled.
 */
final class NodeRows {
  private final HeatNetwork network;
  private final double[] coefficient;

  /** Position of the first entry of each row; one more at the end. */
  private final int[] start;

  private int[] cell = new int[1024];
  private double[] weight = new double[1024];
  private boolean reachedByInputs;

  /**
   * Finds the rows.
   *
   * @param coefficient one for each boundary [W/(m2 K)]
   * @param cells cell of each node
   * @param nodes its number, from 0 to 26
   */
  NodeRows(HeatNetwork network, double[] coefficient, int[] cells, int[] nodes) {
    this.network = network;
    this.coefficient = coefficient;
    this.start = new int[cells.length + 1];
    for (int row = 0; row < cells.length; row++) {
      int n = nodes[row];
      int[] side = {n % 3 - 1, n / 3 % 3 - 1, n / 9 - 1};
      start[row + 1] = start[row];
      TemperatureField.takeApart(network, cells[row], side, new Row(row));
    }
  }

  /** Gathers the weights of one row. */
  private final class Row implements TemperatureField.Parts {
    private final int row;

    Row(int row) {
      this.row = row;
    }

    @Override
    public void centre(int at, double part) {
      int end = start[row + 1];
      for (int entry = start[row]; entry < end; entry++) {
        if (cell[entry] == at) {
          weight[entry] += part;
          return;
        }
      }
      if (end == cell.length) {
        cell = Arrays.copyOf(cell, 2 * end);
        weight = Arrays.copyOf(weight, 2 * end);
      }
      cell[end] = at;
      weight[end] = part;
      start[row + 1] = end + 1;
    }

    @Override
    public void rise(int at, Face face, double part) {
      double coupling = network.cells().couplingAcross(at, face);
      int p = coupling > 0 ? -1 : network.patches().at(at, face);
      double conductance = coupling;
      if (p >= 0) {
        reachedByInputs = true;
        Patch patch = network.patches().list().get(p);
        conductance =
            patch.port().kind() == BoundaryKind.FLUX
                ? 0
                : patch.conductance(network.patches().indexIn(at, face, p), coefficient[p]);
      }
      if (conductance == 0 || part == 0) {
        return;
      }
      double perKelvin =
          part
              * conductance
              * network.cells().halfResistance(face, at)
              / network.grid().faceArea(face, at);
      centre(at, -perKelvin);
      if (coupling > 0) {
        int stride = network.grid().stride(face.axis());
        centre(face.isMax() ? at + stride : at - stride, perKelvin);
      }
    }
  }

  /**
   * Tells whether inputs may change the temperature of a node at once, with those of the cells
   * fixed.
   */
  boolean reachedByInputs() {
    return reachedByInputs;
  }

  /** Reads all nodes from the temperatures of the cells, padded. */
  double[] read(double[] temperature, int pad) {
    double[] values = new double[start.length - 1];
    for (int row = 0; row < values.length; row++) {
      double sum = 0;
      for (int entry = start[row]; entry < start[row + 1]; entry++) {
        sum += weight[entry] * temperature[cell[entry] + pad];
      }
      values[row] = sum;
    }
    return values;
  }
}
