package stenotherm.validation.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Source;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.FullEngine;
import stenotherm.conduction.InitialState;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.IntegratorSettings.Conductivities;
import stenotherm.conduction.IntegratorSettings.Scheme;
import stenotherm.conduction.Probe;
import stenotherm.conduction.SteadySolution;
import stenotherm.conduction.SteadySolver;
import stenotherm.conduction.TransientSolution;
import stenotherm.conduction.TransientSolver;
import stenotherm.grid.MeshControl;
import stenotherm.material.Behaviour;
import stenotherm.material.Material;
import stenotherm.material.TemperatureCorrection;

/**
 * Conductivities that follow temperature as k = k0 exp(f (T - T0)), against exact solutions for w =
 * exp(f (T - T0)), the Kirchhoff transform of T but for constants.
 */
class LiveConductivityTest {
  private static final double REFERENCE = 283.15;
  private static final double FACTOR = 0.02;
  private static final double LENGTH = 0.05;
  private static final Material MATERIAL =
      Material.of("foam", 0.04, 30, 1400)
          .withBehaviour(
              new Behaviour.Corrected(
                  new TemperatureCorrection(
                      FACTOR, REFERENCE, Source.assumed("steep for a test"))));
  private static final double ALPHA = MATERIAL.diffusivity();

  private static double transform(double temperature) {
    return Math.exp(FACTOR * (temperature - REFERENCE));
  }

  private static double inverse(double transformed) {
    return REFERENCE + Math.log(transformed) / FACTOR;
  }

  /** Steady: w is linear in x, the flux k0 dw / (f L). */
  @Test
  void steadySlabFollowsItsKirchhoffTransform() {
    double warm = 313.15;
    double cold = 253.15;
    double flux = 0.04 * (transform(warm) - transform(cold)) / (FACTOR * LENGTH);
    double[] cells = {10, 20, 40};
    double[] errors = new double[cells.length];
    double[] fluxErrors = new double[cells.length];
    for (int grid = 0; grid < cells.length; grid++) {
      ConductionProblem problem =
          ConductionProblem.builder(
                  Slab.layout(List.of(new Slab.Layer("foam", MATERIAL, LENGTH))),
                  MeshControl.uniform(LENGTH / cells[grid]))
              .boundary(Face.X_MIN, Boundary.PrescribedTemperature.of(warm))
              .boundary(Face.X_MAX, Boundary.PrescribedTemperature.of(cold))
              .build();
      SteadySolution steady = SteadySolver.solve(problem, 0, Conductivities.LIVE);
      fluxErrors[grid] = Math.abs(steady.heatFlows().get("xMin") / flux - 1);
      double exact = inverse((transform(warm) + transform(cold)) / 2);
      errors[grid] = Math.abs(steady.field().at(Slab.at(LENGTH / 2)) - exact);
      // frozen at its stated conductivity the slab is linear
      assertEquals(
          (warm + cold) / 2, SteadySolver.solve(problem).field().at(Slab.at(LENGTH / 2)), 1e-6);
    }
    Orders.check(2, 0.2, cells, errors);
    Orders.check(2, 0.2, cells, fluxErrors);
  }

  /**
   * Transient: dw/dt = alpha w d2w/dx2 has the solution (d - b x^2) / (1 + 2 b alpha t), insulated
   * at x = 0.
   */
  private static double exact(double x, double time) {
    double b = 0.5 / (LENGTH * LENGTH);
    return inverse((1.6 - b * x * x) / (1 + 2 * b * ALPHA * time));
  }

  private static final double END = 0.5 * LENGTH * LENGTH / ALPHA;

  private static TransientSolution cool(int cells, IntegratorSettings settings) {
    List<Slab.Layer> layers = new ArrayList<>();
    Map<String, Double> start = new HashMap<>();
    for (int cell = 0; cell < cells; cell++) {
      layers.add(new Slab.Layer("layer " + cell, MATERIAL, LENGTH / cells));
      start.put("layer " + cell, exact((cell + 0.5) * LENGTH / cells, 0));
    }
    ConductionProblem problem =
        ConductionProblem.builder(Slab.layout(layers), MeshControl.uniform(1))
            .boundary(Face.X_MAX, new Boundary.PrescribedTemperature(time -> exact(LENGTH, time)))
            .initial(new InitialState(300, start, Map.of()))
            .build();
    assertEquals(cells, problem.network().grid().cellCount());
    TransientSolution solution =
        TransientSolver.solve(
            problem,
            List.of(new Probe.At("inside", Slab.at(0)), new Probe.At("half", Slab.at(LENGTH / 2))),
            new double[] {END},
            settings);
    assertTrue(solution.outcome().isCompleted());
    assertTrue(solution.ledger().closes());
    return solution;
  }

  @Test
  void transientFollowsItsTransformWithTheSquareOfTheCellWidth() {
    double[] cells = {8, 16, 32};
    double[] errors = new double[cells.length];
    for (int grid = 0; grid < cells.length; grid++) {
      errors[grid] =
          Math.abs(
              cool((int) cells[grid], IntegratorSettings.adaptive(1e-6).live()).last("half")
                  - exact(LENGTH / 2, END));
    }
    Orders.check(2, 0.2, cells, errors);
  }

  @Test
  void stepsStayOfSecondOrder() {
    double fine =
        cool(16, IntegratorSettings.fixed(Scheme.TR_BDF2, END / 1280).live()).last("half");
    double[] steps = {10, 20, 40, 80};
    double[] errors = new double[steps.length];
    for (int run = 0; run < steps.length; run++) {
      IntegratorSettings settings =
          IntegratorSettings.fixed(Scheme.TR_BDF2, END / steps[run]).live();
      errors[run] = Math.abs(cool(16, settings).last("half") - fine);
    }
    Orders.check(2, 0.25, steps, errors);
  }

  /** A conductivity that the caller replaces is the caller's: it stays. */
  @Test
  void replacedConductivitiesStay() {
    ConductionProblem problem = slab(10);
    FullEngine engine =
        new FullEngine(
            problem.network().withConductivities(Map.of("foam", 0.05)),
            List.of(new Probe.HeatFlow("in", "xMin")),
            280,
            IntegratorSettings.standard().live());
    double[] held = {300, 260};
    engine.advance(1e6, held, held);
    double[] flow = new double[1];
    engine.read(flow);
    // the step tolerance bounds what the last, long steps leave
    assertEquals(0.05 * 40 / LENGTH, flow[0], 0.05);
    engine.use(problem.network());
    engine.advance(1e6, held, held);
    engine.read(flow);
    double flux = SteadySolver.solve(problem, 0, Conductivities.LIVE).heatFlows().get("xMin");
    assertEquals(flux, flow[0], 0.05);
    assertTrue(engine.ledger().closes());
  }

  /** Constant conductivities taken cell by cell from a steady state hold that state. */
  @Test
  void conductivitiesOfAFieldKeepItsSteadyState() {
    ConductionProblem problem = slab(10);
    SteadySolution live = SteadySolver.solve(problem, 0, Conductivities.LIVE);
    double[] values = settled(problem, live);
    // the step tolerance bounds what the last, long steps leave
    assertEquals(live.heatFlows().get("xMin"), values[0], 0.05);
    assertEquals(live.field().at(Slab.at(LENGTH / 2)), values[1], 0.01);
    assertTrue(
        Math.abs(values[1] - 280) > 0.5,
        "a slab of one conductivity would have 280 K in its middle");
    InvalidInputException refused =
        assertThrows(
            InvalidInputException.class,
            () -> slab("wool", 10).network().withConductivitiesAt(live.field()));
    assertTrue(refused.getMessage().startsWith("layout: has other blocks"), refused.getMessage());
  }

  /** A field on a coarse grid does nearly as well as one on the grid itself. */
  @Test
  void conductivitiesOfAFieldOnACoarserGridNearlyKeepItsSteadyState() {
    SteadySolution coarse = SteadySolver.solve(slab(10), 0, Conductivities.LIVE);
    ConductionProblem problem = slab(40);
    SteadySolution fine = SteadySolver.solve(problem, 0, Conductivities.LIVE);
    double live = fine.heatFlows().get("xMin");
    assertEquals(live, settled(problem, fine)[0], 1e-6 * live);
    assertEquals(live, settled(problem, coarse)[0], 1e-3 * live);
  }

  /**
   * The heat that the slab lets in [W] and the temperature of its middle [K] long after its
   * conductivities were held at those of a field.
   */
  private static double[] settled(ConductionProblem problem, SteadySolution at) {
    FullEngine engine =
        new FullEngine(
            problem.network().withConductivitiesAt(at.field()),
            List.of(new Probe.HeatFlow("in", "xMin"), new Probe.At("half", Slab.at(LENGTH / 2))),
            280,
            IntegratorSettings.standard());
    double[] held = {300, 260};
    engine.advance(1e7, held, held);
    double[] values = new double[2];
    engine.read(values);
    return values;
  }

  private static ConductionProblem slab(int cells) {
    return slab("foam", cells);
  }

  private static ConductionProblem slab(String name, int cells) {
    return ConductionProblem.builder(
            Slab.layout(List.of(new Slab.Layer(name, MATERIAL, LENGTH))),
            MeshControl.uniform(LENGTH / cells))
        .boundary(Face.X_MIN, Boundary.PrescribedTemperature.of(300))
        .boundary(Face.X_MAX, Boundary.PrescribedTemperature.of(260))
        .build();
  }
}
