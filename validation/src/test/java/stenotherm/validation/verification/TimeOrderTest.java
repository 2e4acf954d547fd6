package stenotherm.validation.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.base.Sinusoid;
import stenotherm.base.TimeFunction;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.IntegratorSettings.Scheme;
import stenotherm.conduction.Probe;
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

  private static double errorAtEnd(Scheme scheme, int steps) {
    Material material = Material.of("lump", 0.5, 1000, 1000);
    double thickness = 0.02;
    ConductionProblem problem =
        ConductionProblem.builder(
                Slab.layout(List.of(new Slab.Layer("lump", material, thickness))),
                MeshControl.uniform(1))
            .boundary(
                Face.X_MIN,
                new Boundary.Convection(
                    TimeFunction.constant(20),
                    new Sinusoid(MEAN, new Sinusoid.Wave(AMPLITUDE, PERIOD, 0))))
            .initial(START)
            .build();
    assertEquals(1, problem.network().grid().cellCount());
    double conductance = 1 / (thickness / 2 / 0.5 + 1 / 20.0);
    double rate = conductance / (1e6 * thickness);
    double omega = 2 * Math.PI / PERIOD;
    double gain = 1 / Math.hypot(1, omega / rate);
    double lag = Math.atan2(omega, rate);
    double periodicAtStart = MEAN - AMPLITUDE * gain * Math.sin(lag);
    double exact =
        MEAN
            + AMPLITUDE * gain * Math.sin(omega * END - lag)
            + (START - periodicAtStart) * Math.exp(-rate * END);
    double got =
        TransientSolver.solve(
                problem,
                List.of(new Probe.Mean("mean", "lump")),
                new double[] {END},
                IntegratorSettings.fixed(scheme, END / steps))
            .last("mean");
    return Math.abs(got - exact);
  }

  private static void checkOrder(Scheme scheme, double order, double tolerance) {
    double[] steps = {20, 40, 80, 160};
    double[] errors = new double[steps.length];
    for (int run = 0; run < steps.length; run++) {
      errors[run] = errorAtEnd(scheme, (int) steps[run]);
    }
    Orders.check(order, tolerance, steps, errors);
  }

  @Test
  void trBdf2IsSecondOrder() {
    checkOrder(Scheme.TR_BDF2, 2, 0.1);
  }

  @Test
  void backwardEulerIsFirstOrder() {
    checkOrder(Scheme.BACKWARD_EULER, 1, 0.1);
  }
}
