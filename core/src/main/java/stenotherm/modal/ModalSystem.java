package stenotherm.modal;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.decomposition.eig.SymmetricQRAlgorithmDecomposition_DDRM;

/**
 * A projected network in the coordinates of its own modes: dz/dt = -lambda z + B u, outputs and
 * heat flows as rows. Immutable once made.
 */
final class ModalSystem {
  /** Part of the largest eigenvalue that round-off may leave of one that is zero. */
  private static final double ROUND_OFF = 1e-12;

  final int modes;
  final int inputs;
  final double[] lambda;

  /** Size of the basis. */
  final int basisSize;

  /** The vectors of the basis that the modes are made of. */
  private final int[] members;

  /** Coordinates in its members: a row for each member, a column for each mode. */
  private final Columns rotation;

  /** B: a row for each mode, a column for each input. */
  private final Columns inputMatrix;

  /**
   * Diagonalises the part of a projection that some vectors span; with fewer of them it is a
   * coarser model of the same body.
   *
   * @param members those vectors of the basis
   */
  ModalSystem(Projection projection, int[] members) {
    this.modes = members.length;
    this.members = members;
    this.basisSize = projection.size();
    this.inputs = projection.inputs();
    DMatrixRMaj conductance = new DMatrixRMaj(modes, modes);
    for (int i = 0; i < modes; i++) {
      for (int j = 0; j < modes; j++) {
        conductance.set(
            i, j, projection.conductance()[members[i] * projection.size() + members[j]]);
      }
    }
    // vectors in the same pass as values, which for small matrices takes half of the time
    SymmetricQRAlgorithmDecomposition_DDRM eigen = new SymmetricQRAlgorithmDecomposition_DDRM(true);
    eigen.setComputeVectorsWithValues(true);
    if (!eigen.decompose(conductance)) {
      throw new IllegalStateException("the modes of the reduced network could not be found");
    }
    lambda = new double[modes];
    double largest = 0;
    for (int j = 0; j < modes; j++) {
      lambda[j] = eigen.getEigenvalue(j).getReal();
      largest = Math.max(largest, lambda[j]);
    }
    rotation = new Columns(modes, modes);
    for (int j = 0; j < modes; j++) {
      if (!(lambda[j] >= -ROUND_OFF * largest)) {
        throw new IllegalStateException(
            "the reduced network has a growing mode, rate " + -lambda[j] + " 1/s");
      }
      lambda[j] = Math.max(0, lambda[j]);
      DMatrixRMaj vector = eigen.getEigenVector(j);
      for (int i = 0; i < modes; i++) {
        rotation.of[j][i] = vector.get(i, 0);
      }
    }
    inputMatrix = new Columns(modes, inputs);
    double[] ofMembers = new double[modes];
    for (int u = 0; u < inputs; u++) {
      for (int i = 0; i < modes; i++) {
        ofMembers[i] = projection.drive()[members[i] * inputs + u];
      }
      rotation.multiplyTransposed(ofMembers, inputMatrix.of[u]);
    }
  }

  /** Computes the forces B u on the modes. */
  void force(double[] values, double[] force) {
    inputMatrix.multiply(values, force);
  }

  /** Rows in the coordinates of the modes, and after these what the inputs add directly. */
  private double[][] inModes(Projection.Rows rows) {
    double[][] inModes = new double[rows.count()][modes + inputs];
    double[] ofMembers = new double[modes];
    for (int r = 0; r < inModes.length; r++) {
      for (int i = 0; i < modes; i++) {
        ofMembers[i] = rows.ofVector()[members[i]][r];
      }
      rotation.multiplyTransposed(ofMembers, inModes[r]);
      for (int u = 0; u < inputs; u++) {
        inModes[r][modes + u] = rows.ofInput()[u][r];
      }
    }
    return inModes;
  }

  /** Rows in these modes that are read together. */
  RowBlock rows(Projection.Rows rows) {
    return new RowBlock(inModes(rows), modes, inputs);
  }

  /** Rows in these modes that are read one by one. */
  SingleRows singleRows(Projection.Rows rows) {
    return new SingleRows(inModes(rows));
  }

  /** Rows that are read together. */
  static final class RowBlock {
    private final Columns ofMode;

    /**
     * What the inputs add to the first rows; they add nothing to the others, as to nodes inside.
     */
    private final Columns ofInput;

    RowBlock(double[][] inModes, int modes, int inputs) {
      ofMode = new Columns(inModes.length, modes);
      int reached = 0;
      for (int r = 0; r < inModes.length; r++) {
        for (int j = 0; j < modes; j++) {
          ofMode.of[j][r] = inModes[r][j];
        }
        for (int u = 0; u < inputs; u++) {
          reached = inModes[r][modes + u] != 0 ? r + 1 : reached;
        }
      }
      ofInput = new Columns(reached, inputs);
      for (int u = 0; u < inputs; u++) {
        for (int r = 0; r < reached; r++) {
          ofInput.of[u][r] = inModes[r][modes + u];
        }
      }
    }

    int count() {
      return ofMode.rows;
    }

    /** Computes the values of the first rows, on which no input acts at once. */
    void values(double[] z, double[] values, int first) {
      ofMode.multiply(z, values, first);
    }

    /** Computes the values of all rows. */
    void values(double[] z, double[] u, double[] values) {
      ofMode.multiply(z, values);
      ofInput.add(u, values);
    }
  }

  /** Rows that are read one by one. */
  static final class SingleRows {
    private final double[][] row;

    SingleRows(double[][] inModes) {
      row = inModes;
    }

    double value(int index, double[] z, double[] u) {
      double[] entries = row[index];
      double sum = Columns.product(z, entries);
      for (int input = 0; input < u.length; input++) {
        sum += entries[z.length + input] * u[input];
      }
      return sum;
    }
  }

  /** Coordinates in the basis of a state of the modes; those of other vectors stay. */
  void toBasis(double[] z, double[] coordinates) {
    if (modes == basisSize) {
      rotation.multiply(z, coordinates);
      return;
    }
    double[] ofMembers = new double[modes];
    rotation.multiply(z, ofMembers);
    for (int i = 0; i < modes; i++) {
      coordinates[members[i]] = ofMembers[i];
    }
  }

  /** State of the modes that is closest to one of the basis. */
  void toModes(double[] coordinates, double[] z) {
    double[] ofMembers = new double[modes];
    for (int i = 0; i < modes; i++) {
      ofMembers[i] = coordinates[members[i]];
    }
    rotation.multiplyTransposed(ofMembers, z);
  }
}
