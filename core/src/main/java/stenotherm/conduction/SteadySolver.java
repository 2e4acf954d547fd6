package stenotherm.conduction;

import java.util.Arrays;
import java.util.concurrent.CancellationException;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.grid.RectilinearGrid;

/**
 * Solves div(k grad T) + q = 0 under the conditions of one instant.
 *
 * <p>A melting material is solid below its melting range and liquid above it; a cell at the front
 * has the liquid fraction at which its temperature lies in the range. Latent heat plays no part.
 *
 * <p>Stateless, thus thread-safe.
 */
public final class SteadySolver {
  /** The linear solver's tolerance [K], far below any discretisation error. */
  private static final double TOLERANCE = 1e-9;

  /** The largest change of a temperature when conductivities have settled [K]. */
  private static final double SETTLED = 1e-6;

  private static final int MOST_ROUNDS = 300;

  private SteadySolver() {}

  /**
   * Solves a problem under its conditions at time zero.
   *
   * @param problem the problem; its initial temperature is not used
   * @return the steady state
   * @throws InvalidInputException if no film and no held surface fixes the temperature level, or a
   *     value that drives the problem is not finite then
   * @throws IllegalStateException if the linear solver fails, as where values are so large that
   *     their sums are not finite; the message says how
   * @throws CancellationException if the thread is interrupted
   */
  public static SteadySolution solve(ConductionProblem problem) {
    return solve(problem, 0);
  }

  /**
   * Solves a problem under its conditions at a time, as if they had lasted for ever.
   *
   * @param problem the problem; its initial temperature is not used
   * @param time the time whose conditions hold [s]
   * @return the steady state
   * @throws InvalidInputException if no film and no held surface fixes the temperature level, or a
   *     value that drives the problem is not finite then
   * @throws IllegalStateException if the linear solver fails, as where values are so large that
   *     their sums are not finite; the message says how
   * @throws CancellationException if the thread is interrupted
   */
  public static SteadySolution solve(ConductionProblem problem, double time) {
    return solve(problem, time, IntegratorSettings.Conductivities.FROZEN);
  }

  /**
   * Solves a problem under its conditions at a time, as if they had lasted for ever.
   *
   * @param problem the problem; its initial temperature is not used
   * @param time the time whose conditions hold [s]
   * @param conductivities whether conductivities that depend on temperature follow that of each
   *     cell; they are then iterated until temperatures settle within 1e-6 K
   * @return the steady state
   * @throws InvalidInputException if no film and no held surface fixes the temperature level, a
   *     value that drives the problem is not finite then, or conductivities do not settle, which
   *     happens if so much of a block is within its melting range that the steady state is not
   *     unique
   * @throws IllegalStateException if the linear solver fails, as where values are so large that
   *     their sums are not finite; the message says how
   * @throws CancellationException if the thread is interrupted
   */
  public static SteadySolution solve(
      ConductionProblem problem, double time, IntegratorSettings.Conductivities conductivities) {
    Conditions conditions = new Conditions(problem.network());
    problem.forcing().at(time, conditions);
    requireFinite(problem.network(), conditions);
    return solve(new HeatOperator(problem.network()), conditions, conductivities);
  }

  private static void requireFinite(HeatNetwork network, Conditions conditions) {
    for (int p = 0; p < conditions.boundary.length; p++) {
      Port port = network.boundaryPorts().get(p);
      Checks.finite("boundary '" + port.name() + "'", conditions.boundary[p], port.unit());
    }
    for (int s = 0; s < conditions.power.length; s++) {
      Port port = network.sourcePorts().get(s);
      Checks.finite("source '" + port.name() + "'", conditions.power[s], port.unit());
    }
  }

  private static SteadySolution solve(
      HeatOperator operator, Conditions conditions, IntegratorSettings.Conductivities kind) {
    operator.coefficients(conditions);
    operator.factor(Double.POSITIVE_INFINITY);
    if (!operator.system.isRegular()) {
      throw new InvalidInputException(
          "boundaries",
          "no film and no held surface fixes the temperature level; a steady state needs at least"
              + " one");
    }
    int floating = operator.floatingCell();
    if (floating >= 0) {
      RectilinearGrid grid = operator.network().grid();
      throw new InvalidInputException(
          "boundaries",
          "block '"
              + grid.layout().blocks().get(grid.blockOf(floating)).name()
              + "' has no path to a film or a held surface; its temperature level is open");
    }
    CellConductivities conductivities =
        new CellConductivities(operator.network(), operator.melting, kind);
    double[] temperature = operator.system.vector();
    int iterations = solveOnce(operator, conditions, temperature);
    if (conductivities.vary()) {
      iterations += settle(operator, conditions, conductivities, temperature);
    }
    return new SteadySolution(operator, temperature, conditions, iterations);
  }

  /** Solves with the conductivities that the operator holds, from a first guess. */
  private static int solveOnce(HeatOperator operator, Conditions conditions, double[] temperature) {
    operator.coefficients(conditions);
    operator.factor(Double.POSITIVE_INFINITY);
    // solving for the difference to a reference keeps digits that absolute temperatures would lose
    double reference = reference(operator.network(), conditions);
    Conditions shifted = new Conditions(operator.network());
    shifted.copyFrom(conditions);
    shift(operator.network(), shifted, -reference);
    double[] heat = operator.system.vector();
    operator.addPortHeat(shifted, heat);
    double[] difference = operator.system.vector();
    int iterations = operator.system.solve(heat, difference, TOLERANCE);
    for (int i = operator.system.pad; i < operator.system.pad + operator.system.cells; i++) {
      temperature[i] = difference[i] + reference;
    }
    return iterations;
  }

  /** Solves again with the conductivities of the last solution until neither changes. */
  private static int settle(
      HeatOperator operator,
      Conditions conditions,
      CellConductivities conductivities,
      double[] temperature) {
    MeltingFront front = new MeltingFront(operator.melting);
    int iterations = 0;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double mismatch = front.follow(temperature);
      double[] before = temperature.clone();
      operator.use(
          conductivities.withFractions(temperature, operator.system.pad, front.fraction()));
      iterations += solveOnce(operator, conditions, temperature);
      double change = 0;
      for (int i = 0; i < before.length; i++) {
        change = Math.max(change, Math.abs(temperature[i] - before[i]));
      }
      if (change <= SETTLED && mismatch <= MeltingFront.CLOSE) {
        return iterations;
      }
    }
    throw new InvalidInputException(
        "conductivities",
        "do not settle in "
            + MOST_ROUNDS
            + " rounds; where a block lies in its melting range the steady state may not be unique");
  }

  private static double reference(HeatNetwork network, Conditions conditions) {
    return Arrays.stream(indices(network))
        .mapToDouble(p -> conditions.boundary[p])
        .average()
        .orElse(0);
  }

  private static void shift(HeatNetwork network, Conditions conditions, double by) {
    for (int p : indices(network)) {
      conditions.boundary[p] += by;
    }
  }

  /** Boundaries whose value is a temperature. */
  private static int[] indices(HeatNetwork network) {
    int count = network.patches().list().size();
    return java.util.stream.IntStream.range(0, count)
        .filter(p -> network.patches().list().get(p).port().kind() != BoundaryKind.FLUX)
        .toArray();
  }
}
