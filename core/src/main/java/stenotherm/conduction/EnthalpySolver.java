package stenotherm.conduction;

import java.util.Arrays;

/**
 * Solves one implicit stage of a body that melts, H(T) / stage + G T = b, by Newton's method on the
 * enthalpy.
 *
 * <p>Each iteration solves a linear system with the slope dH/dT of every cell's phase. If the
 * temperature that results lies outside the phase, the cell takes the smaller of two steps: to the
 * enthalpy that the slope implies or to the enthalpy of that temperature. H(T) consists of three
 * straight lines, so the iteration ends as soon as every cell stays in its phase.
 *
 * <p>The resulting enthalpies satisfy the linear equation of the stage to round-off, and the heat
 * of the ports follows from the same equation. So the ledger closes however well the iteration has
 * converged; the tolerance leaves only a difference between T and T(H).
 *
 * <p>The idea is that of Voller and Swaminathan (1991), Numer. Heat Transfer B 19:175 (from
 * memory).
 */
final class EnthalpySolver {
  private static final int MOST_ITERATIONS = 40;

  /** The part of a cell's latent heat that may be lost when the cell changes its phase. */
  private static final double LARGEST_LOSS = 1e-14;

  private final HeatOperator operator;
  private final MeltingCells melting;
  private final double[] residual;
  private final double[] increment;
  private final double[] slope;

  /** Conjugate gradient iterations so far. */
  long iterations;

  EnthalpySolver(HeatOperator operator) {
    this.operator = operator;
    this.melting = operator.melting;
    this.residual = operator.system.vector();
    this.increment = operator.system.vector();
    this.slope = new double[melting.count()];
  }

  /**
   * Solves a stage; the operator is then factored for it.
   *
   * @param b right-hand side [W], padded
   * @param temperature first guess in, solution out [K], padded; of melting cells out only
   * @param enthalpy first guess in, solution out, of the melting cells [J]
   * @return false if it did not converge; a shorter stage will
   */
  boolean solve(
      double[] b, double[] temperature, double[] enthalpy, double stage, double tolerance) {
    for (int m = 0; m < slope.length; m++) {
      temperature[melting.at[m]] = melting.temperature(m, enthalpy[m]);
    }
    for (int iteration = 0; iteration < MOST_ITERATIONS; iteration++) {
      for (int m = 0; m < slope.length; m++) {
        slope[m] = melting.slope(m, melting.phase(m, enthalpy[m]));
      }
      double scale = operator.factor(stage, slope);
      findResidual(b, temperature, enthalpy, stage);
      Arrays.fill(increment, 0);
      iterations += operator.system.solve(residual, increment, tolerance, scale);
      if (update(temperature, enthalpy, tolerance)) {
        return true;
      }
    }
    return false;
  }

  private void findResidual(double[] b, double[] temperature, double[] enthalpy, double stage) {
    StructuredSystem system = operator.system;
    system.multiply(temperature, residual);
    for (int i = system.pad; i < system.pad + system.cells; i++) {
      residual[i] = b[i] - residual[i];
    }
    for (int m = 0; m < slope.length; m++) {
      int i = melting.at[m];
      // not from the product: slope times absolute temperature would lose digits
      residual[i] = b[i] - enthalpy[m] / stage - operator.outflow(i, temperature);
    }
  }

  /** Adds the increment; tells whether every melting cell has kept to its line. */
  private boolean update(double[] temperature, double[] enthalpy, double tolerance) {
    HeatNetwork network = operator.network();
    int pad = operator.system.pad;
    for (int cell = 0; cell < operator.system.cells; cell++) {
      // the solver's uniform correction reaches environments too; kept there it would enter the
      // heat balance of the next iteration
      if (network.cells().isSolid(cell)) {
        temperature[cell + pad] += increment[cell + pad];
      }
    }
    boolean settled = true;
    for (int m = 0; m < slope.length; m++) {
      int i = melting.at[m];
      double linear = enthalpy[m] + slope[m] * increment[i];
      if (melting.phase(m, linear) == melting.phase(m, enthalpy[m])) {
        enthalpy[m] = linear;
        continue;
      }
      double byTemperature = melting.enthalpy(m, temperature[i]);
      double before = enthalpy[m];
      if (Math.abs(linear - before) <= Math.abs(byTemperature - before)) {
        enthalpy[m] = linear;
        double of = melting.temperature(m, linear);
        if (Math.abs(of - temperature[i]) > tolerance) {
          settled = false;
          temperature[i] = of;
        }
      } else {
        enthalpy[m] = byTemperature;
        settled &= Math.abs(linear - byTemperature) <= LARGEST_LOSS * melting.latent(m);
      }
    }
    return settled;
  }
}
