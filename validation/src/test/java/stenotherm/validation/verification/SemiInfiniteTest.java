package stenotherm.validation.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static stenotherm.base.Temperatures.fromCelsius;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.special.Erf;
import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.base.Sinusoid;
import stenotherm.base.Times;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.Probe;
import stenotherm.conduction.TransientSolution;
import stenotherm.conduction.TransientSolver;
import stenotherm.grid.MeshControl;
import stenotherm.material.Material;

/**
 * A half space of concrete, cut off where nothing arrives: Carslaw and Jaeger, 2nd edition,
 * sections 2.4 to 2.9.
 */
class SemiInfiniteTest {
  private static final Material CONCRETE = Material.of("concrete", 1.4, 2300, 880);
  private static final double START = fromCelsius(20);
  private static final double HOUR = Times.HOUR;
  private static final double[] DEPTHS = {0, 0.02, 0.05, 0.1};

  private static double worstError(
      Boundary boundary, double depth, double end, DoubleUnaryOperator rise) {
    ConductionProblem problem =
        ConductionProblem.builder(
                Slab.layout(List.of(new Slab.Layer("ground", CONCRETE, depth))),
                new MeshControl(0.002, 0.0005, 1.1))
            .boundary(Face.X_MIN, boundary)
            .initial(START)
            .build();
    List<Probe> probes = new ArrayList<>();
    for (double x : DEPTHS) {
      probes.add(new Probe.At("x " + x, Slab.at(x)));
    }
    TransientSolution solution =
        TransientSolver.solve(
            problem, probes, new double[] {end}, IntegratorSettings.adaptive(1e-4));
    double worst = 0;
    for (double x : DEPTHS) {
      double error = solution.last("x " + x) - START - rise.applyAsDouble(x);
      worst = Math.max(worst, Math.abs(error));
    }
    return worst;
  }

  private static double eta(double x) {
    return x / (2 * Math.sqrt(CONCRETE.diffusivity() * HOUR));
  }

  @Test
  void temperatureStep() {
    Boundary boundary = Boundary.PrescribedTemperature.of(fromCelsius(0));
    // a quarter of the library's target of 0.02 K for interior points
    assertEquals(0, worstError(boundary, 0.6, HOUR, x -> -20 * Erf.erfc(eta(x))), 0.005);
  }

  @Test
  void fluxStep() {
    double flux = 300;
    double scale = 2 * flux * Math.sqrt(CONCRETE.diffusivity() * HOUR) / CONCRETE.conductivity();
    DoubleUnaryOperator rise =
        x -> scale * (Math.exp(-eta(x) * eta(x)) / Math.sqrt(Math.PI) - eta(x) * Erf.erfc(eta(x)));
    // the closed form against a known value at the surface
    assertEquals(12.06586, rise.applyAsDouble(0), 1e-5);
    assertEquals(0, worstError(Boundary.PrescribedFlux.of(flux), 0.6, HOUR, rise), 0.005);
  }

  @Test
  void ambientStep() {
    double h = 25;
    double b = h * Math.sqrt(CONCRETE.diffusivity() * HOUR) / CONCRETE.conductivity();
    DoubleUnaryOperator rise =
        x -> -20 * (Erf.erfc(eta(x)) - Math.exp(2 * eta(x) * b + b * b) * Erf.erfc(eta(x) + b));
    assertEquals(9.1855559 - 20, rise.applyAsDouble(0), 1e-6);
    assertEquals(0, worstError(Boundary.Convection.of(h, fromCelsius(0)), 0.6, HOUR, rise), 0.005);
  }

  /** The surface swings by 10 K in a day; after forty days the start is forgotten near it. */
  @Test
  void sinusoidalSurface() {
    double omega = 2 * Math.PI / Times.DAY;
    double penetration = Math.sqrt(2 * CONCRETE.diffusivity() / omega);
    assertEquals(0.1379, penetration, 0.001);
    double end = 40.3 * Times.DAY;
    DoubleUnaryOperator rise =
        x -> 10 * Math.exp(-x / penetration) * Math.sin(omega * end - x / penetration);
    Boundary boundary =
        new Boundary.PrescribedTemperature(
            new Sinusoid(START, new Sinusoid.Wave(10, Times.DAY, 0)));
    assertEquals(0, worstError(boundary, 2.5, end, rise), 0.02);
  }
}
