package stenotherm.conduction;

import java.util.Arrays;
import java.util.concurrent.CancellationException;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.grid.RectilinearGrid;

/**
 * A symmetric positive definite system on the seven-point stencil, A = D - (couplings to the six
 * neighbours), solved by conjugate gradients preconditioned with a modified incomplete Cholesky
 * factor.
 *
 * <p>Vectors are padded: the entry of cell c stands at c + {@link #pad}, with zeros before and
 * after, so that a cell at the grid's edge has neighbours too, with zero couplings. The couplings
 * are those of a network; the diagonal is set separately.
 *
 * <p>The factor M = (D + L) D^-1 (D + L') has the couplings L of A itself and pivots D of its own.
 * The iteration works on the matrix scaled by D^-1/2 and preconditioned on both sides by the
 * triangles: with the scaled couplings L and diagonal d, (1 + L)^-1 (L + d + L') (1 + L')^-1 p = t
 * + (1 + L)^-1 (p - (2 - d) t), t = (1 + L')^-1 p. Two sweeps do the work of a product with A and
 * two sweeps; iterates and stopping rule are those of the usual form but for round-off. Solving for
 * several right-hand sides in one sweep gained only a sixth and was left out.
 *
 * <p>Sources: Gustafsson (1978), A class of first order factorization methods, BIT 18:142 (modified
 * incomplete factor); Hestenes and Stiefel (1952), J. Res. NBS 49:409 (conjugate gradients);
 * Eisenstat (1981), Efficient implementation of a class of preconditioned conjugate gradient
 * methods, SIAM J. Sci. Stat. Comput. 2:1 (the product from the sweeps). All from memory.
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

  /** Planes of cells whose pivots are found side by side. */
  private static final int PLANES = 4;

  private static final double[] NONE = {};

  final int cells;
  final int pad;
  private final int strideY;
  private final int strideZ;
  private final double[] couplingX;
  private final double[] couplingY;
  private final double[] couplingZ;

  /** Sum of the couplings of each cell. */
  private final double[] couplingSum;

  /** What eliminating a cell subtracts from the next one's pivot, over its inverse pivot. */
  private double[] eliminationX = NONE;

  private double[] eliminationY = NONE;
  private double[] eliminationZ = NONE;
  private double[] diagonal = NONE;
  private double[] inversePivot = NONE;

  /** Square root of {@link #inversePivot}: entries of D^-1/2 of the factor. */
  private double[] root = NONE;

  /** Couplings of the matrix that {@link #root} scales on both sides. */
  private double[] scaledX = NONE;

  private double[] scaledY = NONE;
  private double[] scaledZ = NONE;

  /** 2 minus the diagonal of that matrix. */
  private double[] excess = NONE;

  /** Row sums of A times {@link #root}: the weights of the scaled x in the sum of all rows. */
  private double[] rowSum = NONE;

  private double[] residual = NONE;
  private double[] direction = NONE;
  private double[] upper = NONE;
  private double[] lower = NONE;
  private double[] correction = NONE;

  private boolean eliminationsKnown;

  /** Sum of all entries of A: what a uniform rise of 1 K takes [W/K]. */
  private double reaction;

  /** Sum of b - A x over all cells where an iteration started [W]. */
  private double sumAtStart;

  StructuredSystem(HeatNetwork network) {
    RectilinearGrid grid = network.grid();
    cells = grid.cellCount();
    strideY = grid.stride(Axis.Y);
    strideZ = grid.stride(Axis.Z);
    pad = strideZ;
    couplingX = vector();
    couplingY = vector();
    couplingZ = vector();
    couplingSum = vector();
    use(network);
  }

  /** Makes the vectors that a factor and its solves need; products with G do without. */
  private void makeRoom() {
    if (diagonal == NONE) {
      eliminationX = vector();
      eliminationY = vector();
      eliminationZ = vector();
      diagonal = vector();
      inversePivot = vector();
      root = vector();
      scaledX = vector();
      scaledY = vector();
      scaledZ = vector();
      excess = vector();
      rowSum = vector();
      residual = vector();
      direction = vector();
      upper = vector();
      lower = vector();
      correction = vector();
    }
  }

  /** A padded vector of zeros. */
  double[] vector() {
    return new double[cells + 2 * pad];
  }

  /** Takes over the couplings of a network; the system must then be factored anew. */
  void use(HeatNetwork network) {
    System.arraycopy(network.cells().coupling(Axis.X), 0, couplingX, pad, cells);
    System.arraycopy(network.cells().coupling(Axis.Y), 0, couplingY, pad, cells);
    System.arraycopy(network.cells().coupling(Axis.Z), 0, couplingZ, pad, cells);
    eliminationsKnown = false;
    for (int i = pad; i < pad + cells; i++) {
      double sum = couplingX[i] + couplingX[i - 1] + couplingY[i] + couplingY[i - strideY];
      couplingSum[i] = sum + couplingZ[i] + couplingZ[i - strideZ];
    }
  }

  private void findEliminations() {
    for (int i = pad; i < pad + cells && !eliminationsKnown; i++) {
      double x = couplingX[i];
      double y = couplingY[i];
      double z = couplingZ[i];
      eliminationX[i] = x * (x + MODIFICATION * (y + z));
      eliminationY[i] = y * (y + MODIFICATION * (x + z));
      eliminationZ[i] = z * (z + MODIFICATION * (x + y));
    }
    eliminationsKnown = true;
  }

  /**
   * Sets the diagonal to the couplings of each cell plus an addition, and factors the
   * preconditioner.
   *
   * @param addition what each cell's row sums to: conductance to the boundaries and C / (a dt)
   *     [W/K], padded
   */
  void factor(double[] addition) {
    int end = pad + cells;
    makeRoom();
    findEliminations();
    reaction = sum(addition);
    for (int i = pad; i < end; i++) {
      diagonal[i] = addition[i] + couplingSum[i];
    }
    for (int plane = pad; plane < end; plane += PLANES * strideZ) {
      findPivots(plane, Math.min(PLANES, (end - plane) / strideZ));
    }
    for (int i = pad; i < end; i++) {
      root[i] = Math.sqrt(inversePivot[i]);
    }
    for (int i = pad; i < end; i++) {
      excess[i] = 2 - diagonal[i] * inversePivot[i];
      rowSum[i] = addition[i] * root[i];
    }
    for (int i = pad; i < end; i++) {
      scale(i);
    }
  }

  /**
   * Finds the pivots of some planes normal to z, each one cell behind the plane before it. A pivot
   * must wait for those of its neighbours; several planes at once take the time of one.
   */
  private void findPivots(int plane, int planes) {
    for (int step = 0; step < strideZ + planes - 1; step++) {
      int first = Math.max(0, step - strideZ + 1);
      int last = Math.min(planes - 1, step);
      for (int p = first; p <= last; p++) {
        findPivot(plane + p * strideZ + step - p);
      }
    }
  }

  private void findPivot(int i) {
    if (diagonal[i] == 0) {
      // a cell of an environment: any temperature will do, the row must not be singular
      diagonal[i] = 1;
    }
    double own = diagonal[i];
    double pivot =
        own
            - eliminationX[i - 1] * inversePivot[i - 1]
            - eliminationY[i - strideY] * inversePivot[i - strideY]
            - eliminationZ[i - strideZ] * inversePivot[i - strideZ];
    inversePivot[i] = 1 / (pivot > SMALLEST_PIVOT * own ? pivot : own);
  }

  /**
   * Changes the additions of a few cells after {@link #factor}. The preconditioner is updated at
   * these cells only: the change decays from cell to cell, and any positive pivots make a
   * preconditioner.
   *
   * @param at positions of the cells, ascending
   * @param addition what each row sums to, as in {@link #factor}, changed there only
   * @param sum sum of all additions [W/K]
   */
  void refactor(int[] at, double[] addition, double sum) {
    reaction = sum;
    for (int i : at) {
      diagonal[i] = addition[i] + couplingSum[i];
      findPivot(i);
      root[i] = Math.sqrt(inversePivot[i]);
      excess[i] = 2 - diagonal[i] * inversePivot[i];
      rowSum[i] = addition[i] * root[i];
    }
    for (int i : at) {
      scale(i);
      scaledX[i - 1] = couplingX[i - 1] * root[i - 1] * root[i];
      scaledY[i - strideY] = couplingY[i - strideY] * root[i - strideY] * root[i];
      scaledZ[i - strideZ] = couplingZ[i - strideZ] * root[i - strideZ] * root[i];
    }
  }

  private void scale(int i) {
    scaledX[i] = couplingX[i] * root[i] * root[i + 1];
    scaledY[i] = couplingY[i] * root[i] * root[i + strideY];
    scaledZ[i] = couplingZ[i] * root[i] * root[i + strideZ];
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

  /** Computes r = (1 + L)^-1 D^-1/2 (b - A x), the residual that the iteration works on. */
  private void startFrom(double[] b, double[] x) {
    int dy = strideY;
    int dz = strideZ;
    double previous = 0;
    double before = 0;
    double own = x[pad];
    double couplingBefore = 0;
    double sum = 0;
    for (int i = pad; i < pad + cells; i++) {
      double after = x[i + 1];
      double couplingAfter = couplingX[i];
      double left =
          b[i]
              - diagonal[i] * own
              + couplingAfter * after
              + couplingBefore * before
              + couplingY[i] * x[i + dy]
              + couplingY[i - dy] * x[i - dy]
              + couplingZ[i] * x[i + dz]
              + couplingZ[i - dz] * x[i - dz];
      sum += left;
      double known = Math.fma(scaledY[i - dy], residual[i - dy], root[i] * left);
      known = Math.fma(scaledZ[i - dz], residual[i - dz], known);
      previous = Math.fma(scaledX[i - 1], previous, known);
      residual[i] = previous;
      before = own;
      own = after;
      couplingBefore = couplingAfter;
    }
    sumAtStart = sum;
  }

  /** Computes r = (1 + L)^-1 D^-1/2 b, the residual of x = 0. */
  private void startFrom(double[] b) {
    int dy = strideY;
    int dz = strideZ;
    double previous = 0;
    double sum = 0;
    for (int i = pad; i < pad + cells; i++) {
      double left = b[i];
      sum += left;
      double known = Math.fma(scaledY[i - dy], residual[i - dy], root[i] * left);
      known = Math.fma(scaledZ[i - dz], residual[i - dz], known);
      previous = Math.fma(scaledX[i - 1], previous, known);
      residual[i] = previous;
    }
    sumAtStart = sum;
  }

  /** Computes p = r + beta p and t = (1 + U)^-1 p in one sweep backward. */
  private void sweepBackward(double beta) {
    double[] p = direction;
    double[] r = residual;
    double[] t = upper;
    int dy = strideY;
    int dz = strideZ;
    double next = 0;
    for (int i = pad + cells - 1; i >= pad; i--) {
      double along = Math.fma(beta, p[i], r[i]);
      p[i] = along;
      double known = Math.fma(scaledZ[i], t[i + dz], Math.fma(scaledY[i], t[i + dy], along));
      // fused multiply-add shortens the recurrence along x, in which each cell waits for the one
      // before
      next = Math.fma(scaledX[i], next, known);
      t[i] = next;
    }
  }

  /**
   * Computes w = (1 + L)^-1 (p - (2 - d) t) in one sweep forward, so that t + w is the product of
   * the preconditioned matrix with p.
   *
   * @return p' (t + w)
   */
  private double sweepForward() {
    double[] p = direction;
    double[] t = upper;
    double[] w = lower;
    int dy = strideY;
    int dz = strideZ;
    double previous = 0;
    double sum = 0;
    for (int i = pad; i < pad + cells; i++) {
      double along = p[i];
      double above = t[i];
      double known = Math.fma(-excess[i], above, along);
      known = Math.fma(scaledZ[i - dz], w[i - dz], Math.fma(scaledY[i - dy], w[i - dy], known));
      previous = Math.fma(scaledX[i - 1], previous, known);
      w[i] = previous;
      sum = Math.fma(along, above + previous, sum);
    }
    return sum;
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

  /** Sum over all cells, in four independent partial sums. */
  private double sum(double[] a) {
    int end = pad + cells;
    double s0 = 0;
    double s1 = 0;
    double s2 = 0;
    double s3 = 0;
    int i = pad;
    for (; i + 3 < end; i += 4) {
      s0 += a[i];
      s1 += a[i + 1];
      s2 += a[i + 2];
      s3 += a[i + 3];
    }
    for (; i < end; i++) {
      s0 += a[i];
    }
    return s0 + s1 + (s2 + s3);
  }

  /** Sum of the products over all cells, in four partial sums like {@link #sum}. */
  private double product(double[] a, double[] b) {
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
   * Estimates the error of an x as {@link #solve} does: the uniform error of the same energy norm.
   *
   * @return the error [K]
   */
  double error(double[] b, double[] x) {
    startFrom(b, x);
    return Math.sqrt(product(residual, residual) / reaction);
  }

  /**
   * Solves A x = b, starting from the x given.
   *
   * <p>An iteration is one sweep backward and one forward. It stops when the updated residual r has
   * sqrt(r' M^-1 r) at most tolerance times sqrt(1' A 1): the tolerance is the uniform error that
   * has the same energy norm. A last uniform correction makes the sum of the residual zero, so that
   * the heat balance of the whole body closes to round-off.
   *
   * @param b right-hand side [W], padded
   * @param x first guess in, solution out [K], padded
   * @param tolerance [K]
   * @return number of iterations
   * @throws SolverFailure if it does not converge or meets a number that is not finite
   * @throws CancellationException if the thread is interrupted; x is then as it was
   */
  int solve(double[] b, double[] x, double tolerance) {
    return solve(b, x, tolerance, reaction);
  }

  /**
   * Solves A x = b with another scale of the stopping rule.
   *
   * @param scale what a uniform rise of 1 K takes in the stopping rule [W/K], where 1' A 1 holds
   *     the latent heat of a few cells and says nothing about the others
   */
  int solve(double[] b, double[] x, double tolerance, double scale) {
    startFrom(b, x);
    return iterate(x, tolerance, scale, 0);
  }

  /**
   * Solves A x = b like {@link #solve(double[], double[], double)}, with at least one iteration. An
   * error in a few cells counts little in the energy norm and could pass the test.
   */
  int solveAnyway(double[] b, double[] x, double tolerance) {
    startFrom(b, x);
    return iterate(x, tolerance, reaction, 1);
  }

  /** Solves like {@link #solveAnyway} from x = 0. */
  int solveFromZero(double[] b, double[] x, double tolerance) {
    Arrays.fill(x, 0);
    startFrom(b);
    return iterate(x, tolerance, reaction, 1);
  }

  private int iterate(double[] x, double tolerance, double scale, int fewest) {
    int end = pad + cells;
    double target = tolerance * tolerance * scale;
    double rho = product(residual, residual);
    System.arraycopy(residual, pad, direction, pad, cells);
    Arrays.fill(correction, 0);
    double beta = 0;
    int iteration = 0;
    while (rho > target || (iteration < fewest && rho > 0)) {
      if (++iteration > MOST_ITERATIONS) {
        throw new SolverFailure(
            "conjugate gradients did not converge in " + MOST_ITERATIONS + " iterations");
      }
      // a large system takes minutes; this look takes next to nothing of an iteration
      Checks.notInterrupted("while solving");
      sweepBackward(beta);
      double alpha = rho / sweepForward();
      for (int i = pad; i < end; i++) {
        correction[i] += alpha * upper[i];
        residual[i] -= alpha * (upper[i] + lower[i]);
      }
      // apart from the update, which runs on several cells at once
      double next = product(residual, residual);
      beta = next / rho;
      rho = next;
    }
    if (!(rho >= 0)) {
      throw new SolverFailure("the linear system met a number that is not finite");
    }
    double shift = reaction > 0 ? (sumAtStart - product(rowSum, correction)) / reaction : 0;
    for (int i = pad; i < end; i++) {
      x[i] += root[i] * correction[i] + shift;
    }
    return iteration;
  }
}
