package stenotherm.conduction;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stenotherm.conduction.Bodies.assertRefused;
import static stenotherm.conduction.Bodies.point;

import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Outcome;
import stenotherm.base.ProgressListener;
import stenotherm.base.TimeFunction;
import stenotherm.conduction.IntegratorSettings.Scheme;
import stenotherm.grid.Block;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;

class TransientSolverTest {
  private static final List<Probe> MEAN = List.of(new Probe.Mean("mean", "foam"));
  private static final double[] HOURS = {0, 3600, 7200, 10800};

  private static ConductionProblem.Builder wall() {
    return ConductionProblem.builder(Bodies.wall(), MeshControl.uniform(0.004))
        .boundary(Face.X_MIN, Boundary.Convection.of(8, 310))
        .boundary(Face.X_MAX, Boundary.Convection.of(20, 280));
  }

  @Test
  void equilibriumStays() {
    TransientSolution solution =
        TransientSolver.solve(
            ConductionProblem.builder(Bodies.wall(), MeshControl.uniform(0.004))
                .boundary(Face.X_MIN, Boundary.Convection.of(8, 300))
                .initial(300)
                .build(),
            MEAN,
            HOURS,
            IntegratorSettings.standard());
    assertInstanceOf(Outcome.Completed.class, solution.outcome());
    assertArrayEquals(new double[] {300, 300, 300, 300}, solution.history("mean"), 1e-9);
    assertArrayEquals(HOURS, solution.times());
    assertTrue(solution.ledger().closes());
  }

  @Test
  void tendsToTheSteadyState() {
    ConductionProblem problem = wall().initial(290).initial("board", 300).build();
    TransientSolution solution =
        TransientSolver.solve(
            problem,
            List.of(new Probe.Mean("foam", "foam"), new Probe.Mean("board", "board")),
            new double[] {0, 1e6},
            IntegratorSettings.standard());
    assertEquals(290, solution.history("foam")[0], 1e-12);
    assertEquals(300, solution.history("board")[0], 1e-12);
    SteadySolution steady = SteadySolver.solve(problem);
    // the step tolerance bounds what the last, long steps leave
    assertEquals(steady.field().mean("foam"), solution.last("foam"), 0.005);
    assertEquals(steady.field().mean("board"), solution.last("board"), 0.005);
  }

  /**
   * An insulated body warms by the heat that it gets over its capacity, to the solver's tolerance.
   */
  @Test
  void insulatedBodyKeepsItsHeat() {
    TimeFunction power =
        TimeFunction.table(new double[] {0, 1000, 1000, 3000}, new double[] {5, 5, 0, 20});
    ConductionProblem problem =
        ConductionProblem.builder(Bodies.wall(), MeshControl.uniform(0.004))
            .source("board", power)
            .initial(290)
            .build();
    for (IntegratorSettings settings :
        List.of(IntegratorSettings.standard(), IntegratorSettings.fixed(Scheme.TR_BDF2, 250))) {
      TransientSolution solution =
          TransientSolver.solve(problem, List.of(), new double[] {3000}, settings);
      HeatLedger ledger = solution.ledger();
      // both schemes' quadrature is exact for a power that is linear in time
      assertEquals(5 * 1000 + 0.5 * 20 * 2000, ledger.sources().get("board"), 1e-6);
      assertTrue(ledger.closes());
      assertEquals(25000, ledger.stored(), 1e-6 * ledger.scale());
      assertEquals(Map.of(), ledger.boundaries());
    }
  }

  /** A source spreads by volume: an insulated block of one material stays even on a graded grid. */
  @Test
  void sourceHeatsEvenly() {
    Layout layout =
        new Layout(List.of(new Block.Solid("water", Bodies.slice(0, 0.1), Bodies.WATER)));
    ConductionProblem problem =
        ConductionProblem.builder(layout, MeshControl.graded(0.02, 0.001))
            .boundary(Face.X_MIN, Boundary.PrescribedFlux.of(0))
            .source("water", TimeFunction.constant(1000))
            .initial(290)
            .build();
    TransientSolution solution =
        TransientSolver.solve(
            problem, List.of(), new double[] {3600}, IntegratorSettings.standard());
    double expected = 290 + 1000 * 3600 / problem.network().totalCapacity();
    // the linear solver works to a hundredth of the step tolerance
    assertEquals(expected, solution.field().maximum("water"), 1e-4);
    assertEquals(expected, solution.field().minimum("water"), 1e-4);
  }

  /**
   * After a jump outputs show the later row of a table, and the run goes on from the same
   * temperatures.
   */
  @Test
  void jumpIsMetExactly() {
    TimeFunction ambient =
        TimeFunction.table(new double[] {0, 3600, 3600}, new double[] {290, 290, 330});
    ConductionProblem problem =
        ConductionProblem.builder(Bodies.wall(), MeshControl.uniform(0.004))
            .boundary(Face.X_MIN, new Boundary.Convection(TimeFunction.constant(8), ambient))
            .initial(290)
            .build();
    TransientSolution solution =
        TransientSolver.solve(
            problem,
            List.of(new Probe.Mean("mean", "foam"), new Probe.HeatFlow("in", "xMin")),
            new double[] {3599, 3600, 3601},
            IntegratorSettings.standard());
    assertEquals(290, solution.history("mean")[1], 1e-9);
    double[] in = solution.history("in");
    assertEquals(0, in[0], 1e-9);
    double cell = problem.network().grid().width(stenotherm.base.Axis.X, 0);
    assertEquals(40 / (1 / 8.0 + cell / 2 / 0.036), in[1], 1e-6);
    assertTrue(in[2] < in[1] && in[2] > 0);
  }

  @Test
  void listenerStopsWithWhatWasReached() {
    ProgressListener stopLate =
        (done, total) -> {
          assertEquals(10800, total);
          return done > 5000 ? ProgressListener.Signal.STOP : ProgressListener.Signal.CONTINUE;
        };
    TransientSolution solution =
        TransientSolver.solve(
            wall().initial(290).build(),
            MEAN,
            HOURS,
            IntegratorSettings.fixed(Scheme.TR_BDF2, 600),
            stopLate);
    assertEquals(
        new Outcome.Stopped("stopped by the listener after 5400 s of 10800 s", 5400),
        solution.outcome());
    assertArrayEquals(new double[] {0, 3600}, solution.times());
    assertEquals(2, solution.history("mean").length);
    assertTrue(solution.ledger().closes());
  }

  /** Of the kinds of exceptions, too, that the solver knows as its own. */
  @Test
  void whatAListenerThrowsReachesTheCaller() {
    for (RuntimeException own :
        List.of(
            new IllegalStateException("own"),
            new CancellationException("own"),
            new InvalidInputException("own", "own"))) {
      assertSame(
          own,
          assertThrows(
              own.getClass(),
              () ->
                  TransientSolver.solve(
                      wall().initial(290).build(),
                      MEAN,
                      HOURS,
                      IntegratorSettings.fixed(Scheme.TR_BDF2, 600),
                      (done, total) -> {
                        throw own;
                      })));
    }
  }

  @Test
  void aStoredTimeThatWasReachedIsKept() {
    TransientSolution solution =
        TransientSolver.solve(
            wall().initial(290).build(),
            MEAN,
            HOURS,
            IntegratorSettings.fixed(Scheme.TR_BDF2, 600),
            (done, total) ->
                done >= 7200 ? ProgressListener.Signal.STOP : ProgressListener.Signal.CONTINUE);
    assertEquals(
        new Outcome.Stopped("stopped by the listener after 7200 s of 10800 s", 7200),
        solution.outcome());
    assertArrayEquals(new double[] {0, 3600, 7200}, solution.times());
    assertEquals(solution.field().mean("foam"), solution.last("mean"), 1e-12);
  }

  @Test
  void valuesThatAreNoNumbersFailWithWhatWasReached() {
    TimeFunction breaking = time -> time < 5000 ? 300 : Double.NaN;
    ConductionProblem problem =
        wall()
            .boundary(Face.X_MIN, new Boundary.Convection(TimeFunction.constant(8), breaking))
            .initial(290)
            .build();
    for (IntegratorSettings settings :
        List.of(
            IntegratorSettings.standard(),
            IntegratorSettings.fixed(Scheme.TR_BDF2, 600),
            IntegratorSettings.fixed(Scheme.BACKWARD_EULER, 600))) {
      TransientSolution solution = TransientSolver.solve(problem, MEAN, HOURS, settings);
      assertInstanceOf(Outcome.Failed.class, solution.outcome());
      assertArrayEquals(new double[] {0, 3600}, solution.times());
      assertTrue(solution.ledger().closes());
    }
    assertRefused(
        "boundary 'xMin': NaN K is not a finite number", () -> SteadySolver.solve(problem, 6000));
  }

  @Test
  void interruptStopsWithWhatWasReached() {
    ConductionProblem problem = wall().initial(290).build();
    Thread.currentThread().interrupt();
    TransientSolution solution;
    try {
      solution =
          TransientSolver.solve(
              problem, MEAN, HOURS, IntegratorSettings.fixed(Scheme.TR_BDF2, 600));
    } finally {
      // clears the mark for the tests that follow
      assertTrue(Thread.interrupted(), "the interrupt must stay visible to the caller");
    }
    assertEquals(new Outcome.Stopped("interrupted after 0 s of 10800 s", 0), solution.outcome());
    assertArrayEquals(new double[] {0}, solution.times());
    assertEquals(0, solution.work().steps());
    assertTrue(solution.ledger().closes());
  }

  @Test
  void tooManyStepsFail() {
    TransientSolution solution =
        TransientSolver.solve(
            ConductionProblem.builder(Bodies.wall(), MeshControl.uniform(1))
                .boundary(Face.X_MIN, Boundary.Convection.of(8, 310))
                .initial(290)
                .build(),
            MEAN,
            new double[] {0, 1e9},
            IntegratorSettings.fixed(Scheme.BACKWARD_EULER, 1));
    Outcome.Failed failed = assertInstanceOf(Outcome.Failed.class, solution.outcome());
    assertEquals("more than 2000000 steps; the step tolerance is too tight", failed.reason());
    assertArrayEquals(new double[] {0}, solution.times());
    assertTrue(solution.ledger().closes());
  }

  @Test
  void inputsAreChecked() {
    ConductionProblem problem = wall().initial(290).build();
    IntegratorSettings settings = IntegratorSettings.standard();
    assertRefused(
        "initial temperature: is missing; a transient needs a start",
        () -> TransientSolver.solve(wall().build(), MEAN, HOURS, settings));
    assertRefused(
        "stored times: must not be empty",
        () -> TransientSolver.solve(problem, MEAN, new double[0], settings));
    assertRefused(
        "stored times: 1.0 s does not come after 1.0 s",
        () -> TransientSolver.solve(problem, MEAN, new double[] {1, 1}, settings));
    assertRefused(
        "stored time: -1 s must be a finite number, 0 or above",
        () -> TransientSolver.solve(problem, MEAN, new double[] {-1}, settings));
    assertRefused(
        "probe: the name 'mean' occurs twice",
        () ->
            TransientSolver.solve(
                problem, List.of(MEAN.get(0), new Probe.Mean("mean", "board")), HOURS, settings));
    assertRefused(
        "block: there is no \"fom\". Did you mean \"foam\"?",
        () ->
            TransientSolver.solve(
                problem, List.of(new Probe.Maximum("max", "fom")), HOURS, settings));
    assertRefused(
        "boundary: there is no \"wall\". Known: xMin, xMax.",
        () ->
            TransientSolver.solve(
                problem, List.of(new Probe.HeatFlow("q", "wall")), HOURS, settings));
    assertRefused(
        "point: X = 1 m lies outside the domain, 0 m to 0.04 m",
        () ->
            TransientSolver.solve(problem, List.of(new Probe.At("p", point(1))), HOURS, settings));
    TransientSolution solution = TransientSolver.solve(problem, MEAN, HOURS, settings);
    assertRefused(
        "probe: there is no \"men\". Did you mean \"mean\"?", () -> solution.history("men"));
    assertEquals(MEAN, solution.probes());
  }

  @Test
  void coefficientsAreNotNegative() {
    Boundary falling =
        new Boundary.Convection(
            TimeFunction.table(new double[] {0, 100}, new double[] {5, -5}),
            TimeFunction.constant(300));
    ConductionProblem problem = wall().boundary(Face.X_MIN, falling).initial(290).build();
    assertRefused(
        "surface coefficient: -5 W/(m2 K) must be a finite number, 0 or above",
        () -> SteadySolver.solve(problem, 100));
  }

  @Test
  void steadyStateNeedsALevel() {
    String message =
        "boundaries: no film and no held surface fixes the temperature level; a steady state needs at"
            + " least one";
    assertRefused(
        message,
        () ->
            SteadySolver.solve(
                ConductionProblem.builder(Bodies.wall(), MeshControl.uniform(0.01))
                    .boundary(Face.X_MIN, Boundary.PrescribedFlux.of(1))
                    .build()));
    assertRefused(
        message,
        () ->
            SteadySolver.solve(
                ConductionProblem.builder(Bodies.wall(), MeshControl.uniform(0.01))
                    .boundary(Face.X_MIN, Boundary.Convection.of(0, 300))
                    .build()));
  }

  @Test
  void settingsAreChecked() {
    assertRefused(
        "scheme: backward Euler has no error estimate here; give it a fixed step",
        () ->
            new IntegratorSettings(
                Scheme.BACKWARD_EULER, 0.01, 10, false, IntegratorSettings.Conductivities.FROZEN));
    assertRefused(
        "fixed step: Infinity s must be a finite number above 0",
        () -> IntegratorSettings.fixed(Scheme.TR_BDF2, Double.POSITIVE_INFINITY));
    assertRefused(
        "largest step: 0 s must be above 0", () -> IntegratorSettings.fixed(Scheme.TR_BDF2, 0));
    assertRefused(
        "step tolerance: 0 K must lie between 1.00000e-09 K and 10 K. 0.005 K is usual; the error of a run"
            + " is larger.",
        () -> IntegratorSettings.adaptive(0));
  }

  /** One order of magnitude in the step tolerance must not leave the error where it was. */
  @Test
  void toleranceControlsTheError() {
    double[] errors = new double[3];
    double[] tolerances = {0.1, 0.01, 0.001};
    ConductionProblem problem = wall().initial(290).build();
    double exact = meanAfter(problem, IntegratorSettings.adaptive(1e-7));
    for (int run = 0; run < 3; run++) {
      errors[run] =
          Math.abs(meanAfter(problem, IntegratorSettings.adaptive(tolerances[run])) - exact);
      // some tens of steps, each within its tolerance, most of which later steps forget
      assertTrue(errors[run] < 5 * tolerances[run], () -> "errors " + List.of(errors[0]));
    }
    assertTrue(errors[2] < 0.2 * errors[0]);
  }

  private static double meanAfter(ConductionProblem problem, IntegratorSettings settings) {
    return TransientSolver.solve(problem, MEAN, new double[] {900}, settings).last("mean");
  }

  /** What goes wrong on the way leaves the history up to there. */
  @Test
  void filmBelowZeroMidwayFailsWithWhatCameBefore() {
    TimeFunction film = TimeFunction.table(new double[] {0, 7200}, new double[] {8, -8});
    Boundary falling = new Boundary.Convection(film, TimeFunction.constant(300));
    TransientSolution solution =
        TransientSolver.solve(
            wall().boundary(Face.X_MIN, falling).initial(290).build(),
            MEAN,
            new double[] {0, 1800, 7200},
            IntegratorSettings.standard());
    Outcome.Failed failed = assertInstanceOf(Outcome.Failed.class, solution.outcome());
    assertTrue(failed.reason().startsWith("surface coefficient: -"), failed.reason());
    assertArrayEquals(new double[] {0, 1800}, solution.times());
    assertTrue(solution.ledger().closes());
  }

  /** Stops that differ by round-off are one: no step between them. */
  @Test
  void stopsARoundingApartCostNoStep() {
    double hour = 3600;
    double justBefore = hour - 2 * Math.ulp(hour);
    TimeFunction ambient =
        TimeFunction.table(new double[] {0, justBefore, 7200}, new double[] {290, 300, 300});
    IntegratorSettings settings = IntegratorSettings.fixed(Scheme.TR_BDF2, 600);
    TransientSolution solution =
        TransientSolver.solve(
            wall()
                .boundary(Face.X_MIN, new Boundary.Convection(TimeFunction.constant(8), ambient))
                .initial(290)
                .build(),
            MEAN,
            new double[] {hour, 7200},
            settings);
    assertEquals(12, solution.work().steps());
    assertArrayEquals(new double[] {hour, 7200}, solution.times());
  }
}
