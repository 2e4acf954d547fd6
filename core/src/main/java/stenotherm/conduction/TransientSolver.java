package stenotherm.conduction;

import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.ListenerGuard;
import stenotherm.base.Outcome;
import stenotherm.base.ProgressListener;

/**
 * Solves a conduction problem in time. Steps end on every stored time and on every kink and jump of
 * boundaries and sources.
 *
 * <p>Stateless, thus thread-safe.
 */
public final class TransientSolver {
  private TransientSolver() {}

  /**
   * Solves from time zero.
   *
   * @param problem the problem, with an initial temperature
   * @param probes the outputs
   * @param storedTimes when to store outputs [s], ascending, not negative; the last is the end of
   *     the run
   * @param settings how to step
   * @return the history; partial if the outcome is not completed
   * @throws InvalidInputException if the problem has no initial temperature, a probe does not
   *     exist, or the times do not ascend
   */
  public static TransientSolution solve(
      ConductionProblem problem,
      List<Probe> probes,
      double[] storedTimes,
      IntegratorSettings settings) {
    return solve(problem, probes, storedTimes, settings, ProgressListener.NONE);
  }

  /**
   * Solves from time zero, watched by a listener.
   *
   * @param problem the problem, with an initial temperature
   * @param probes the outputs
   * @param storedTimes when to store outputs [s], ascending, not negative; the last is the end of
   *     the run
   * @param settings how to step
   * @param listener told on the calling thread after each step how much is done of the last stored
   *     time [s]; may stop the run. What it throws is thrown here as it is
   * @return the history; partial if the outcome is not completed
   * @throws InvalidInputException if the problem has no initial temperature, a probe does not
   *     exist, or the times do not ascend
   */
  public static TransientSolution solve(
      ConductionProblem problem,
      List<Probe> probes,
      double[] storedTimes,
      IntegratorSettings settings,
      ProgressListener listener) {
    checkTimes(storedTimes);
    return new Run(problem, probes, storedTimes, settings, listener).run();
  }

  private static void checkTimes(double[] times) {
    if (times.length == 0) {
      throw new InvalidInputException("stored times", "must not be empty");
    }
    for (int index = 0; index < times.length; index++) {
      Checks.notNegative("stored time", times[index], "s");
      if (index > 0 && !(times[index] > times[index - 1])) {
        throw new InvalidInputException(
            "stored times", times[index] + " s does not come after " + times[index - 1] + " s");
      }
    }
  }

  /** One run. */
  private static final class Run {
    private final ConductionProblem problem;
    private final double[] storedTimes;
    private final ListenerGuard listener;
    private final HeatOperator operator;
    private final Forcing forcing;
    private final Probes probes;
    private final TimeIntegrator integrator;
    private final BodyState initial;
    private final double[][] values;
    private final Conditions conditions;
    private final Conditions beforeJump;

    Run(
        ConductionProblem problem,
        List<Probe> probes,
        double[] storedTimes,
        IntegratorSettings settings,
        ProgressListener listener) {
      this.problem = problem;
      this.storedTimes = storedTimes.clone();
      this.listener = new ListenerGuard(listener);
      this.operator = new HeatOperator(problem.network());
      this.forcing = problem.forcing();
      this.probes = new Probes(operator, probes);
      this.initial = problem.initial(operator);
      this.integrator = new TimeIntegrator(operator, forcing, settings, 0, initial.copy());
      this.values = new double[storedTimes.length][probes.size()];
      this.conditions = new Conditions(problem.network());
      this.beforeJump = new Conditions(problem.network());
    }

    TransientSolution run() {
      double end = storedTimes[storedTimes.length - 1];
      TreeSet<Double> stops = new TreeSet<>();
      for (double time : problem.breakpoints(0, end)) {
        stops.add(time);
      }
      int stored = 0;
      Outcome outcome = new Outcome.Completed();
      integrator.jump();
      // wrong conditions at the start are refused; what fails later is an outcome
      forcing.at(0, conditions);
      try {
        for (double time : storedTimes) {
          stops.add(time);
        }
        for (double stop : stops) {
          boolean goOn = integrator.advance(stop, listener, end);
          if (integrator.time == stop && stop == storedTimes[stored]) {
            store(stop, values[stored]);
            stored++;
          }
          if (!goOn) {
            outcome =
                stopped(
                    Thread.currentThread().isInterrupted()
                        ? "interrupted"
                        : "stopped by the listener");
            break;
          }
          jumpIfNeeded(stop);
        }
      } catch (CancellationException interrupt) {
        listener.passOn();
        outcome = stopped("interrupted");
      } catch (SolverFailure failure) {
        outcome = new Outcome.Failed(String.valueOf(failure.getMessage()), integrator.time);
      } catch (InvalidInputException refused) {
        listener.passOn();
        // a boundary has left its range during the run, such as a film below zero
        outcome = new Outcome.Failed(String.valueOf(refused.getMessage()), integrator.time);
      }
      forcing.before(integrator.time, conditions);
      operator.coefficients(conditions);
      return new TransientSolution(
          outcome,
          probes.list(),
          Arrays.copyOf(storedTimes, stored),
          Arrays.copyOf(values, stored),
          new TemperatureField(operator, integrator.temperature(), conditions),
          Ledgers.of(operator, integrator, initial),
          new TransientSolution.Work(
              integrator.steps, integrator.rejected, integrator.iterations()));
    }

    private Outcome stopped(String how) {
      double end = storedTimes[storedTimes.length - 1];
      return new Outcome.Stopped(
          how + " after " + Checks.show(integrator.time, "s") + " of " + Checks.show(end, "s"),
          integrator.time);
    }

    /** Stores outputs; at a jump, under the conditions after it. */
    private void store(double time, double[] into) {
      forcing.at(time, conditions);
      operator.coefficients(conditions);
      probes.read(integrator.temperature(), integrator.enthalpy(), conditions, into);
    }

    private void jumpIfNeeded(double time) {
      forcing.before(time, beforeJump);
      forcing.at(time, conditions);
      if (!conditions.sameAs(beforeJump)) {
        integrator.jump();
      }
    }
  }
}
