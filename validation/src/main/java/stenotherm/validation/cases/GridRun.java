package stenotherm.validation.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import stenotherm.base.Outcome;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.Probe;
import stenotherm.conduction.SteadySolution;
import stenotherm.conduction.SteadySolver;
import stenotherm.conduction.TransientSolution;
import stenotherm.conduction.TransientSolver;

/**
 * A case on one grid.
 *
 * @param cells number of cells, environments included
 * @param steps time steps; 0 in a steady case
 * @param values the outputs that the reference values ask for, in SI units and in their order
 * @param seconds wall-clock time [s]
 */
record GridRun(int cells, long steps, List<Double> values, double seconds) {
  GridRun {
    values = List.copyOf(values);
  }

  /** A run that did not reach its end. */
  static final class Unfinished extends Exception {
    private static final long serialVersionUID = 1L;

    Unfinished(String reason) {
      super(reason);
    }
  }

  /**
   * Solves a steady case.
   *
   * @throws Unfinished if the solver failed
   * @throws CancellationException if the thread is interrupted
   */
  static GridRun steady(CaseFile file, ConductionProblem problem) throws Unfinished {
    long start = System.nanoTime();
    SteadySolution solution;
    try {
      solution = SteadySolver.solve(problem);
    } catch (CancellationException interrupt) {
      throw interrupt;
    } catch (IllegalStateException failure) {
      throw new Unfinished(String.valueOf(failure.getMessage()));
    }
    List<Double> values = new ArrayList<>();
    for (Reference reference : file.references()) {
      Probe probe = file.probe(reference.probe());
      values.add(outward(probe, solution.value(probe)));
    }
    return new GridRun(problem.network().grid().cellCount(), 0, values, since(start));
  }

  /** Cases count a heat flow out of the body. */
  private static double outward(Probe probe, double value) {
    // 0 less a value, so that no heat is not written as -0
    return probe.isHeatFlow() ? 0 - value : value;
  }

  /**
   * Solves a transient case up to the last reference value.
   *
   * @throws Unfinished if the solver failed
   * @throws CancellationException if the thread is interrupted
   */
  static GridRun history(CaseFile file, ConductionProblem problem, double stepTolerance)
      throws Unfinished {
    long start = System.nanoTime();
    TreeSet<Double> times = new TreeSet<>();
    file.references().forEach(reference -> times.add(reference.time().orElseThrow()));
    double[] stored = times.stream().mapToDouble(Double::doubleValue).toArray();
    TransientSolution solution =
        TransientSolver.solve(
            problem, file.probes(), stored, IntegratorSettings.adaptive(stepTolerance));
    Optional<String> unfinished = solution.outcome().whyUnfinished();
    if (solution.outcome() instanceof Outcome.Stopped) {
      throw new CancellationException(unfinished.orElseThrow());
    }
    if (unfinished.isPresent()) {
      throw new Unfinished(unfinished.get());
    }
    List<Double> values = new ArrayList<>();
    for (Reference reference : file.references()) {
      int index = java.util.Arrays.binarySearch(stored, reference.time().orElseThrow());
      double value = solution.history(reference.probe())[index];
      values.add(outward(file.probe(reference.probe()), value));
    }
    return new GridRun(
        problem.network().grid().cellCount(), solution.work().steps(), values, since(start));
  }

  /** Seconds since an instant of the clock that {@link System#nanoTime} reads. */
  static double since(long start) {
    return (System.nanoTime() - start) * 1e-9;
  }
}
