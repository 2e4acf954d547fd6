package stenotherm.validation.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.base.Sinusoid;
import stenotherm.base.TimeFunction;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.IntegratorSettings.Scheme;
import stenotherm.conduction.Probe;
import stenotherm.conduction.TransientSolution;
import stenotherm.conduction.TransientSolver;
import stenotherm.grid.MeshControl;
import stenotherm.material.Material;

/**
 * Order of the time schemes on a body of one cell: C dT/dt = G (T_ambient - T) with a sinusoidal
 * ambient has a closed solution, so that no space error enters.
 */
class TimeOrderTest {
  private static final double MEAN = 290;
  private static final double AMPLITUDE = 10;
  private static final double PERIOD = 3600;
  private static final double START = 310;
  private static final double END = 5000;
  private static final double THICKNESS = 0.02;
  private static final Material LUMP = Material.of("lump", 0.5, 1000, 1000);

  /** What the lump's temperature decays at with a film of 20 W/(m2 K) on one side [1/s]. */
  private static final double RATE = 1 / (THICKNESS / 2 / 0.5 + 1 / 20.0) / (1e6 * THICKNESS);

  /** Steps of their own choice, which their greatest length then makes equal. */
  private static IntegratorSettings corrected(double tolerance, double step) {
    return new IntegratorSettings(
        Scheme.TR_BDF2, tolerance, step, false, IntegratorSettings.Conductivities.FROZEN);
  }

  private static double errorAtEnd(IntegratorSettings settings, int steps) {
    ConductionProblem problem =
        ConductionProblem.builder(
                Slab.layout(List.of(new Slab.Layer("lump", LUMP, THICKNESS))),
                MeshControl.uniform(1))
            .boundary(
                Face.X_MIN,
                new Boundary.Convection(
                    TimeFunction.constant(20),
                    new Sinusoid(MEAN, new Sinusoid.Wave(AMPLITUDE, PERIOD, 0))))
            .initial(START)
            .build();
    assertEquals(1, problem.network().grid().cellCount());
    double omega = 2 * Math.PI / PERIOD;
    double gain = 1 / Math.hypot(1, omega / RATE);
    double lag = Math.atan2(omega, RATE);
    double periodicAtStart = MEAN - AMPLITUDE * gain * Math.sin(lag);
    double exact =
        MEAN
            + AMPLITUDE * gain * Math.sin(omega * END - lag)
            + (START - periodicAtStart) * Math.exp(-RATE * END);
    TransientSolution solution =
        TransientSolver.solve(
            problem, List.of(new Probe.Mean("mean", "lump")), new double[] {END}, settings);
    assertEquals(steps, solution.work().steps());
    return Math.abs(solution.last("mean") - exact);
  }

  private static void checkOrder(
      DoubleFunction<IntegratorSettings> ofStep, double order, double tolerance) {
    double[] steps = {20, 40, 80, 160};
    double[] errors = new double[steps.length];
    for (int run = 0; run < steps.length; run++) {
      errors[run] = errorAtEnd(ofStep.apply(END / steps[run]), (int) steps[run]);
    }
    Orders.check(order, tolerance, steps, errors);
  }

  @Test
  void trBdf2IsSecondOrder() {
    checkOrder(step -> IntegratorSettings.fixed(Scheme.TR_BDF2, step), 2, 0.1);
  }

  @Test
  void stepsOfTheirOwnChoiceAreOfThirdOrder() {
    checkOrder(step -> corrected(1, step), 3, 0.1);
  }

  /** Stages, estimate and both filters of one cell are solved exactly, so that all digits count. */
  @Test
  void theCorrectionIsFilteredTwice() {
    for (double rateTimesStep : new double[] {0.1, 1, 5, 40, 150}) {
      int steps = 4;
      double step = rateTimesStep / RATE;
      ConductionProblem problem =
          ConductionProblem.builder(
                  Slab.layout(List.of(new Slab.Layer("lump", LUMP, THICKNESS))),
                  MeshControl.uniform(1))
              .boundary(Face.X_MIN, Boundary.Convection.of(20, MEAN))
              .initial(MEAN + 1)
              .build();
      TransientSolution solution =
          TransientSolver.solve(
              problem,
              List.of(new Probe.Mean("mean", "lump")),
              new double[] {steps * step},
              corrected(10, step));
      assertEquals(steps, solution.work().steps());
      double factor = factor(-rateTimesStep);
      // never negative by more than is written of it, and going to zero
      assertTrue(factor > -0.045 && factor < 1 / (1 + 0.1 * rateTimesStep), "factor " + factor);
      double expected = MEAN + Math.pow(factor, steps);
      // round-off of a temperature in some dozen operations
      assertEquals(expected, solution.last("mean"), 1e-11);
    }
  }

  /** What a step makes of y for dt y' = z y: TR-BDF2 less its error filtered twice. */
  private static double factor(double z) {
    double d = 1 - Math.sqrt(0.5);
    double w = Math.sqrt(2) / 4;
    double filter = 1 / (1 - d * z);
    double middle = (1 + d * z) * filter;
    double end = (1 + w * z * (1 + middle)) * filter;
    double[] embedded = {(1 - w) / 3, (3 * w + 1) / 3, d / 3};
    double error = z * (w - embedded[0] + (w - embedded[1]) * middle + (d - embedded[2]) * end);
    return end - filter * filter * error;
  }

  @Test
  void backwardEulerIsFirstOrder() {
    checkOrder(step -> IntegratorSettings.fixed(Scheme.BACKWARD_EULER, step), 1, 0.1);
  }
}
