package stenotherm.modal;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

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

  /** Coordinates of each mode in its members: entry of member i and mode j at i modes + j. */
  private final double[] rotation;

  /** B, one row of inputs for each mode. */
  final double[] drive;

  /**
   * Diagonalises the part of a projection that some vectors span; with fewer of them it is a
   * coarser model of the same body.
   *
   * @param members those vectors of the basis
   */
  ModalSystem(Projection projection, int[] members) {
    this.modes = members.length;
    this.members = members;
    this.basisSize = projection.size;
    this.inputs = projection.inputs;
    DMatrixRMaj conductance = new DMatrixRMaj(modes, modes);
    for (int i = 0; i < modes; i++) {
      for (int j = 0; j < modes; j++) {
        conductance.set(i, j, projection.conductance[members[i] * projection.size + members[j]]);
      }
    }
    EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(modes, true, true);
    if (!eigen.decompose(conductance)) {
      throw new IllegalStateException("the modes of the reduced network could not be found");
    }
    lambda = new double[modes];
    double largest = 0;
    for (int j = 0; j < modes; j++) {
      lambda[j] = eigen.getEigenvalue(j).getReal();
      largest = Math.max(largest, lambda[j]);
    }
    rotation = new double[modes * modes];
    for (int j = 0; j < modes; j++) {
      if (!(lambda[j] >= -ROUND_OFF * largest)) {
        throw new IllegalStateException(
            "the reduced network has a growing mode, rate " + -lambda[j] + " 1/s");
      }
      lambda[j] = Math.max(0, lambda[j]);
      DMatrixRMaj vector = eigen.getEigenVector(j);
      for (int i = 0; i < modes; i++) {
        rotation[i * modes + j] = vector.get(i, 0);
      }
    }
    drive = new double[modes * inputs];
    for (int j = 0; j < modes; j++) {
      for (int u = 0; u < inputs; u++) {
        double sum = 0;
        for (int i = 0; i < modes; i++) {
          sum += rotation[i * modes + j] * projection.drive[members[i] * inputs + u];
        }
        drive[j * inputs + u] = sum;
      }
    }
  }

  /** Rows of a projection in these modes. */
  RowBlock rows(Projection.Rows rows, int[] chosen) {
    return new RowBlock(rows, chosen);
  }

  /** Rows in the coordinates of the modes, and what the inputs add directly. */
  final class RowBlock {
    final int count;
    private final double[] ofMode;
    private final double[] ofInput;

    private RowBlock(Projection.Rows rows, int[] chosen) {
      count = chosen.length;
      ofMode = new double[count * modes];
      ofInput = new double[count * inputs];
      for (int r = 0; r < count; r++) {
        for (int i = 0; i < modes; i++) {
          double entry = rows.ofVector()[members[i]][chosen[r]];
          for (int j = 0; j < modes; j++) {
            ofMode[r * modes + j] += entry * rotation[i * modes + j];
          }
        }
        for (int u = 0; u < inputs; u++) {
          ofInput[r * inputs + u] = rows.ofInput()[u][chosen[r]];
        }
      }
    }

    double value(int row, double[] z, double[] u) {
      double sum = 0;
      for (int j = 0; j < modes; j++) {
        sum += ofMode[row * modes + j] * z[j];
      }
      for (int i = 0; i < inputs; i++) {
        sum += ofInput[row * inputs + i] * u[i];
      }
      return sum;
    }
  }

  /** Answer to some inputs at a rate: coordinates of (G + s C)^-1 b in the basis. */
  void answer(int[] to, double shift, double[] coordinates) {
    double[] z = new double[modes];
    for (int j = 0; j < modes; j++) {
      double sum = 0;
      for (int input : to) {
        sum += drive[j * inputs + input];
      }
      z[j] = sum / (lambda[j] + shift);
    }
    toBasis(z, coordinates);
  }

  /** Coordinates in the basis of a state of the modes; those of other vectors stay. */
  void toBasis(double[] z, double[] coordinates) {
    for (int i = 0; i < modes; i++) {
      double sum = 0;
      for (int j = 0; j < modes; j++) {
        sum += rotation[i * modes + j] * z[j];
      }
      coordinates[members[i]] = sum;
    }
  }

  /** State of the modes that is closest to one of the basis. */
  void toModes(double[] coordinates, double[] z) {
    for (int j = 0; j < modes; j++) {
      double sum = 0;
      for (int i = 0; i < modes; i++) {
        sum += rotation[i * modes + j] * coordinates[members[i]];
      }
      z[j] = sum;
    }
  }
}
