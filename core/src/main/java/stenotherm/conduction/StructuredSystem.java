package stenotherm.conduction;

import stenotherm.base.Axis;
import stenotherm.grid.RectilinearGrid;

/**
 * A symmetric positive definite system on the seven-point stencil, A = D - (couplings to the six
 * neighbours), solved by conjugate gradients preconditioned with a modified incomplete Cholesky
 * factor.
 *
 * <p>Vectors are padded: the entry of cell c stands at c + {@link #pad}, with zeros before and
 * after, so that the neighbours of a cell at the grid's edge exist and carry nothing. The couplings
 * are those of a network; the diagonal is set apart.
 *
 * <p>Sources: Gustafsson (1978), A class of first order factorization methods, BIT 18:142 (modified
 * incomplete factor); Hestenes and Stiefel (1952), J. Res. NBS 49:409 (conjugate gradients). Both
 * from memory.
 */
final class StructuredSystem {
  /**
   * Part of the fill-in that is moved to the diagonal; 1 would keep row sums exactly but may break
   * down.
   */
  private static final double MODIFICATION = 0.97;

  /** A pivot below this part of its diagonal is replaced by the diagonal. */
  private static final double SMALLEST_PIVOT = 0.2;

  private static final int MOST_ITERATIONS = 5000;

  final int cells;
  final int pad;
  private final int strideY;
  private final int strideZ;
  private final double[] couplingX;
  private final double[] couplingY;
  private final double[] couplingZ;
  private final double[] diagonal;
  private final double[] inversePivot;
  private final double[] residual;
  private final double[] direction;
  private final double[] preconditioned;
  private final double[] product;

  /** Sum of all entries of A: what a uniform rise of 1 K takes [W/K]. */
  private double reaction;

  StructuredSystem(HeatNetwork network) {
    RectilinearGrid grid = network.grid();
    cells = grid.cellCount();
    strideY = grid.stride(Axis.Y);
    strideZ = grid.stride(Axis.Z);
    pad = strideZ;
    couplingX = vector();
    couplingY = vector();
    couplingZ = vector();
    use(network);
    diagonal = vector();
    inversePivot = vector();
    residual = vector();
    direction = vector();
    preconditioned = vector();
    product = vector();
  }

  /** A padded vector of zeros. */
  double[] vector() {
    return new double[cells + 2 * pad];
  }

  /** Takes over the couplings of a network; the system must then be factored anew. */
  void use(HeatNetwork network) {
    System.arraycopy(network.coupling(Axis.X), 0, couplingX, pad, cells);
    System.arraycopy(network.coupling(Axis.Y), 0, couplingY, pad, cells);
    System.arraycopy(network.coupling(Axis.Z), 0, couplingZ, pad, cells);
  }

  /**
   * Sets the diagonal to the couplings of each cell plus an addition, and factors the
   * preconditioner.
   *
   * @param addition what each cell's row sums to: conductance to the boundaries and C / (a dt)
   *     [W/K], padded
   */
  void factor(double[] addition) {
    reaction = 0;
    for (int i = pad; i < pad + cells; i++) {
      reaction += addition[i];
      double sum = couplingX[i] + couplingX[i - 1] + couplingY[i] + couplingY[i - strideY];
      diagonal[i] = addition[i] + sum + couplingZ[i] + couplingZ[i - strideZ];
      if (diagonal[i] == 0) {
        // a cell of an environment: any temperature will do, the row must not be singular
        diagonal[i] = 1;
      }
    }
    for (int i = pad; i < pad + cells; i++) {
      inversePivot[i] = inversePivot(i);
    }
  }

  /**
   * Changes the additions of a few cells after {@link #factor}. The preconditioner follows at these
   * cells only: the change decays from cell to cell, and any positive pivots make a preconditioner.
   *
   * @param at positions of the cells, ascending
   * @param addition what each row sums to, as in {@link #factor}, changed there only
   * @param sum sum of all additions [W/K]
   */
  void refactor(int[] at, double[] addition, double sum) {
    reaction = sum;
    for (int i : at) {
      diagonal[i] = addition[i] + couplingSum(i);
      inversePivot[i] = inversePivot(i);
    }
  }

  private double couplingSum(int i) {
    double sum = couplingX[i] + couplingX[i - 1] + couplingY[i] + couplingY[i - strideY];
    return sum + couplingZ[i] + couplingZ[i - strideZ];
  }

  private double inversePivot(int i) {
    double x = couplingX[i - 1];
    double y = couplingY[i - strideY];
    double z = couplingZ[i - strideZ];
    double fillX = couplingY[i - 1] + couplingZ[i - 1];
    double fillY = couplingX[i - strideY] + couplingZ[i - strideY];
    double fillZ = couplingX[i - strideZ] + couplingY[i - strideZ];
    double pivot =
        diagonal[i]
            - x * (x + MODIFICATION * fillX) * inversePivot[i - 1]
            - y * (y + MODIFICATION * fillY) * inversePivot[i - strideY]
            - z * (z + MODIFICATION * fillZ) * inversePivot[i - strideZ];
    return 1 / (pivot > SMALLEST_PIVOT * diagonal[i] ? pivot : diagonal[i]);
  }

  /** Computes A x. */
  void multiply(double[] x, double[] result) {
    int end = pad + cells;
    int dy = strideY;
    int dz = strideZ;
    for (int i = pad; i < end; i++) {
      result[i] =
          diagonal[i] * x[i]
              - couplingX[i] * x[i + 1]
              - couplingX[i - 1] * x[i - 1]
              - couplingY[i] * x[i + dy]
              - couplingY[i - dy] * x[i - dy]
              - couplingZ[i] * x[i + dz]
              - couplingZ[i - dz] * x[i - dz];
    }
  }

  /** Computes M^-1 r by a forward and a backward sweep. */
  private void precondition(double[] r, double[] result) {
    int end = pad + cells;
    int dy = strideY;
    int dz = strideZ;
    double previous = 0;
    for (int i = pad; i < end; i++) {
      double inverse = inversePivot[i];
      double known = r[i] + couplingY[i - dy] * result[i - dy] + couplingZ[i - dz] * result[i - dz];
      // fused: the recurrence along x is a chain of single operations
      previous = Math.fma(couplingX[i - 1] * inverse, previous, known * inverse);
      result[i] = previous;
    }
    double next = 0;
    for (int i = end - 1; i >= pad; i--) {
      double inverse = inversePivot[i];
      double known = couplingY[i] * result[i + dy] + couplingZ[i] * result[i + dz];
      next = Math.fma(couplingX[i] * inverse, next, Math.fma(known, inverse, result[i]));
      result[i] = next;
    }
  }

  /** Heat that leaves a cell for its neighbours [W]. */
  double outflow(int i, double[] x) {
    double own = x[i];
    return couplingX[i] * (own - x[i + 1])
        + couplingX[i - 1] * (own - x[i - 1])
        + couplingY[i] * (own - x[i + strideY])
        + couplingY[i - strideY] * (own - x[i - strideY])
        + couplingZ[i] * (own - x[i + strideZ])
        + couplingZ[i - strideZ] * (own - x[i - strideZ]);
  }

  private double dot(double[] a, double[] b) {
    int end = pad + cells;
    double s0 = 0;
    double s1 = 0;
    double s2 = 0;
    double s3 = 0;
    int i = pad;
    for (; i + 3 < end; i += 4) {
      s0 += a[i] * b[i];
      s1 += a[i + 1] * b[i + 1];
      s2 += a[i + 2] * b[i + 2];
      s3 += a[i + 3] * b[i + 3];
    }
    for (; i < end; i++) {
      s0 += a[i] * b[i];
    }
    return s0 + s1 + (s2 + s3);
  }

  /**
   * Tells whether a uniform rise meets any resistance; if not, the temperature level is
   * undetermined.
   */
  boolean isRegular() {
    return reaction > 0;
  }

  /**
   * Solves A x = b, starting from the x given.
   *
   * <p>An iteration is one product with A and one preconditioner sweep. It stops when the updated
   * residual r has sqrt(r' M^-1 r) at most tolerance times sqrt(1' A 1): an estimate of the error
   * in the energy norm, as if it were a uniform error of that many kelvin. A last uniform
   * correction makes the sum of the residual vanish, so that the heat balance of the whole body
   * closes to round-off.
   *
   * @param b right-hand side [W], padded
   * @param x first guess in, solution out [K], padded
   * @param tolerance [K]
   * @return number of iterations
   * @throws SolverFailure if it does not converge or meets a number that is not finite
   */
  int solve(double[] b, double[] x, double tolerance) {
    return solve(b, x, tolerance, reaction);
  }

  /**
   * Solves A x = b with a stopping rule of its own scale.
   *
   * @param scale what a uniform rise of 1 K takes in the stopping rule [W/K], where 1' A 1 holds
   *     the latent heat of a few cells and says nothing about the others
   */
  int solve(double[] b, double[] x, double tolerance, double scale) {
    int end = pad + cells;
    multiply(x, residual);
    for (int i = pad; i < end; i++) {
      residual[i] = b[i] - residual[i];
    }
    double target = tolerance * tolerance * scale;
    precondition(residual, preconditioned);
    double rho = dot(residual, preconditioned);
    System.arraycopy(preconditioned, pad, direction, pad, cells);
    int iteration = 0;
    while (rho > target) {
      if (++iteration > MOST_ITERATIONS) {
        throw new SolverFailure(
            "conjugate gradients did not converge in " + MOST_ITERATIONS + " iterations");
      }
      multiply(direction, product);
      double alpha = rho / dot(direction, product);
      for (int i = pad; i < end; i++) {
        x[i] += alpha * direction[i];
        residual[i] -= alpha * product[i];
      }
      precondition(residual, preconditioned);
      double next = dot(residual, preconditioned);
      double beta = next / rho;
      for (int i = pad; i < end; i++) {
        direction[i] = preconditioned[i] + beta * direction[i];
      }
      rho = next;
    }
    if (!(rho >= 0)) {
      throw new SolverFailure("the linear system met a number that is not finite");
    }
    if (reaction > 0) {
      double sum = 0;
      for (int i = pad; i < end; i++) {
        sum += residual[i];
      }
      double shift = sum / reaction;
      for (int i = pad; i < end; i++) {
        x[i] += shift;
      }
    }
    return iteration;
  }
}
