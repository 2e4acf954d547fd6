package stenotherm.conduction;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stenotherm.conduction.Bodies.assertRefused;
import static stenotherm.conduction.Bodies.point;

import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.base.TimeFunction;
import stenotherm.grid.MeshControl;

class FullEngineTest {
  private static final List<Probe> PROBES =
      List.of(
          new Probe.Mean("mean", "board"),
          new Probe.At("joint", point(0.03)),
          new Probe.Maximum("warmest", "foam"),
          new Probe.Minimum("coldest", "foam"),
          new Probe.SurfaceMean("surface", "xMin"),
          new Probe.HeatFlow("in", "xMin"));

  private static ConductionProblem problem(TimeFunction ambient, TimeFunction power) {
    return ConductionProblem.builder(Bodies.wall(), MeshControl.uniform(0.004))
        .boundary(Face.X_MIN, new Boundary.Convection(TimeFunction.constant(8), ambient))
        .boundary(Face.X_MAX, Boundary.PrescribedTemperature.of(285))
        .source("board", power)
        .initial(290)
        .build();
  }

  private static FullEngine engine(ConductionProblem problem) {
    FullEngine engine =
        new FullEngine(problem.network(), PROBES, 290, IntegratorSettings.standard());
    engine.useCoefficients(new double[] {8, 0});
    return engine;
  }

  @Test
  void aFilmThatNobodySetIsRefused() {
    ConductionProblem problem = problem(TimeFunction.constant(280), TimeFunction.constant(0));
    FullEngine engine =
        new FullEngine(problem.network(), PROBES, 290, IntegratorSettings.standard());
    double[] inputs = {280, 285, 0};
    assertRefused(
        "surface coefficient of xMin: is not set; set all of them before the first step, 0 where"
            + " no heat passes",
        () -> engine.advance(60, inputs, inputs));
  }

  /**
   * Ambient and power are tables with kinks and one jump; the engine gets them interval by
   * interval.
   */
  @Test
  void equalsTransientSolverForPiecewiseLinearInputs() {
    double[] times = {0, 1800, 3600, 5400, 7200};
    TimeFunction ambient =
        TimeFunction.table(
            new double[] {0, 1800, 3600, 3600, 5400, 7200},
            new double[] {300, 320, 310, 270, 270, 290});
    TimeFunction power = TimeFunction.table(new double[] {0, 5400, 7200}, new double[] {0, 6, 6});
    ConductionProblem problem = problem(ambient, power);
    TransientSolution solution =
        TransientSolver.solve(problem, PROBES, times, IntegratorSettings.standard());
    FullEngine engine = engine(problem);
    double[] values = new double[PROBES.size()];
    for (int interval = 1; interval < times.length; interval++) {
      double from = times[interval - 1];
      double to = times[interval];
      engine.advance(
          to - from,
          new double[] {ambient.at(from), 285, power.at(from)},
          new double[] {ambient.before(to), 285, power.before(to)});
      assertEquals(to, engine.time(), 1e-9);
      engine.read(values);
      for (int probe = 0; probe < values.length; probe++) {
        String name = PROBES.get(probe).name();
        // the solver's outputs at the jump show the ambient after it; temperatures inside do not
        // jump
        if (to != 3600 || name.equals("mean") || name.equals("joint")) {
          assertEquals(solution.history(name)[interval], values[probe], 1e-9, name);
        }
      }
    }
    assertTrue(engine.ledger().closes());
    assertEquals(solution.ledger().stored(), engine.ledger().stored(), 1e-6);
    assertEquals(List.of("foam", "board"), List.copyOf(engine.ledger().storedIn().keySet()));
    double capacityOfBoard = 0.01 * Bodies.BOARD.density() * Bodies.BOARD.specificHeat();
    double storedInBoard = engine.ledger().storedIn().get("board");
    assertEquals(capacityOfBoard * (values[0] - 290), storedInBoard, 1e-9 * capacityOfBoard);
    assertEquals(solution.work(), engine.work());
    assertEquals(values[0], engine.field().mean("board"), 1e-12);
  }

  @Test
  void namesItsPorts() {
    FullEngine engine = engine(problem(TimeFunction.constant(300), TimeFunction.constant(0)));
    assertEquals(
        List.of("xMin", "xMax", "board"), engine.inputs().stream().map(Port::name).toList());
    assertEquals(PROBES, engine.outputs());
    assertEquals(0, engine.time());
  }

  @Test
  void nothingFlowsBeforeTheFirstInterval() {
    FullEngine engine = engine(problem(TimeFunction.constant(300), TimeFunction.constant(5)));
    double[] values = new double[PROBES.size()];
    engine.read(values);
    assertArrayEquals(new double[] {290, 290, 290, 290, 290, 0}, values, 1e-9);
    assertTrue(engine.ledger().closes());
  }

  @Test
  void changedCoefficientsHoldFromThen() {
    FullEngine engine = engine(problem(TimeFunction.constant(300), TimeFunction.constant(0)));
    double[] inputs = {310, 285, 0};
    engine.advance(3e5, inputs, inputs);
    engine.useCoefficients(new double[] {2, 0});
    engine.advance(3e5, inputs, inputs);
    double[] values = new double[PROBES.size()];
    engine.read(values);
    double flux = 25 / (1 / 2.0 + 0.03 / 0.036 + 0.01 / 0.06);
    // the step tolerance bounds what the last, long steps leave
    assertEquals(flux, values[5], 0.01);
    assertEquals(310 - flux / 2, values[4], 0.005);
    assertTrue(engine.ledger().closes());
  }

  @Test
  void inputsAreChecked() {
    ConductionProblem problem = problem(TimeFunction.constant(300), TimeFunction.constant(0));
    FullEngine engine = engine(problem);
    double[] inputs = {310, 285, 0};
    assertRefused(
        "inputs at start: 2 values given, 3 needed",
        () -> engine.advance(1, new double[2], inputs));
    assertRefused(
        "inputs at end: 4 values given, 3 needed", () -> engine.advance(1, inputs, new double[4]));
    assertRefused(
        "input 'xMax': NaN K is not a finite number",
        () -> engine.advance(1, inputs, new double[] {310, Double.NaN, 0}));
    assertRefused(
        "duration: 0 s must be a finite number above 0", () -> engine.advance(0, inputs, inputs));
    assertRefused(
        "coefficients: 3 values given, 2 needed", () -> engine.useCoefficients(new double[3]));
    assertRefused(
        "surface coefficient of xMin: -1 W/(m2 K) must be a finite number, 0 or above",
        () -> engine.useCoefficients(new double[] {-1, 0}));
    assertRefused("outputs: 1 values given, 6 needed", () -> engine.read(new double[1]));
    assertRefused(
        "initial temperature: NaN K must lie between 1 K and 5000 K. Temperatures are absolute, in"
            + " kelvin: 20 °C is 293.15 K.",
        () -> new FullEngine(problem.network(), PROBES, Double.NaN, IntegratorSettings.standard()));
    assertEquals(0, engine.time());
  }

  /** A refused call must leave the engine as it was. */
  @Test
  void refusedInputsChangeNothing() {
    ConductionProblem problem = problem(TimeFunction.constant(300), TimeFunction.constant(0));
    double[] inputs = {310, 285, 0};
    FullEngine calm = engine(problem);
    calm.advance(600, inputs, inputs);
    calm.advance(600, inputs, inputs);
    FullEngine disturbed = engine(problem);
    disturbed.advance(600, inputs, inputs);
    assertRefused(
        "input 'xMax': Infinity K is not a finite number",
        () -> disturbed.advance(600, new double[] {400, Double.POSITIVE_INFINITY, 0}, inputs));
    assertRefused(
        "surface coefficient of xMin: NaN W/(m2 K) must be a finite number, 0 or above",
        () -> disturbed.useCoefficients(new double[] {Double.NaN, 0}));
    double[] expected = new double[PROBES.size()];
    double[] values = new double[PROBES.size()];
    disturbed.advance(600, inputs, inputs);
    calm.read(expected);
    disturbed.read(values);
    for (int probe = 0; probe < values.length; probe++) {
      assertEquals(expected[probe], values[probe], 1e-9);
    }
    assertEquals(calm.work(), disturbed.work());
  }
}
