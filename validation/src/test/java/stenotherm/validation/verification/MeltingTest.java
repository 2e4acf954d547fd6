package stenotherm.validation.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.special.Erf;
import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.base.Range;
import stenotherm.base.TimeFunction;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.InitialState;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.Probe;
import stenotherm.conduction.SteadySolution;
import stenotherm.conduction.SteadySolver;
import stenotherm.conduction.TransientSolution;
import stenotherm.conduction.TransientSolver;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.material.Behaviour;
import stenotherm.material.Material;
import stenotherm.material.Melting;

/**
 * Melting against the similarity solutions of Stefan (one phase) and Neumann (two phases), Carslaw
 * and Jaeger, Conduction of Heat in Solids, 2nd edition, sections 11.2 and 11.3, and against
 * balances that hold exactly. The front stands at 2 lambda sqrt(alpha t).
 */
class MeltingTest {
  private static final double MELTS_AT = 273.15;
  private static final double LATENT = 333_600;
  private static final double DENSITY = 950;
  private static final double LENGTH = 0.05;

  /** Liquid with the conductivity and the specific heat of water. */
  private static final double LIQUID = 0.57;

  private static final double LIQUID_HEAT = 4200;
  private static final double ALPHA = LIQUID / (DENSITY * LIQUID_HEAT);

  /** How far the surface is above the melting temperature [K]. */
  private static final double STEP = 20;

  private static Material pack(double solid, double solidHeat, double width) {
    Range range = new Range(MELTS_AT - width / 2, MELTS_AT + width / 2);
    return Material.of("pack", solid, DENSITY, solidHeat)
        .withBehaviour(new Behaviour.Melts(new Melting(range, LATENT, LIQUID, LIQUID_HEAT)));
  }

  /** Ice to water. */
  private static Material ice() {
    return pack(2.2, 2100, 0);
  }

  /** Root of a rising function between 0 and 3. */
  private static double root(DoubleUnaryOperator function) {
    double low = 1e-9;
    double high = 3;
    for (int turn = 0; turn < 100; turn++) {
      double middle = (low + high) / 2;
      if (function.applyAsDouble(middle) < 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /**
   * One phase: sqrt(pi) lambda exp(lambda^2) erf(lambda) is the Stefan number c dT / latent heat.
   */
  private static double stefan(double number) {
    return root(x -> Math.sqrt(Math.PI) * x * Math.exp(x * x) * Erf.erf(x) - number);
  }

  @Test
  void transcendentalEquationGivesKnownRoots() {
    double[] numbers = {0.01, 0.1, 0.3, 1, 3};
    double[] roots = {0.0705932766, 0.220016273, 0.369880217, 0.620062633, 0.91375127};
    for (int row = 0; row < numbers.length; row++) {
      // as many digits as the reference has
      assertEquals(roots[row], stefan(numbers[row]), 1e-9);
    }
  }

  private static TransientSolution melt(
      InitialState initial, double solid, int cells, double until, double stepTolerance) {
    // insulated at the far end: a surface held just at the melting point would melt it, slowly, as
    // a range of 2 mK stands for that point
    ConductionProblem problem =
        ConductionProblem.builder(
                Slab.layout(List.of(new Slab.Layer("pack", pack(solid, 2100, 0), LENGTH))),
                MeshControl.uniform(LENGTH / cells))
            .boundary(Face.X_MIN, Boundary.PrescribedTemperature.of(MELTS_AT + STEP))
            .initial(initial)
            .build();
    TransientSolution solution =
        TransientSolver.solve(
            problem,
            List.of(
                new Probe.LiquidFraction("liquid", "pack"),
                new Probe.At("in the liquid", Slab.at(LENGTH / 8)),
                new Probe.At("in the solid", Slab.at(LENGTH / 2))),
            new double[] {until / 4, until},
            IntegratorSettings.adaptive(stepTolerance));
    assertTrue(solution.outcome().isCompleted());
    assertEquals(0, solution.ledger().residual(), 1e-8 * DENSITY * LENGTH * LATENT);
    return solution;
  }

  /**
   * Solid at its melting temperature: the front goes by the heat that the liquid conducts alone.
   */
  @Test
  void oneFrontFollowsStefan() {
    double lambda = stefan(LIQUID_HEAT * STEP / LATENT);
    double until = Math.pow(LENGTH / 4 / (2 * lambda), 2) / ALPHA;
    InitialState solid = InitialState.uniform(MELTS_AT).partlyMelted("pack", 0);
    double[] cells = {20, 40, 80};
    double[] errors = new double[cells.length];
    for (int grid = 0; grid < cells.length; grid++) {
      TransientSolution solution = melt(solid, 2.2, (int) cells[grid], until, 1e-3);
      errors[grid] = Math.abs(solution.last("liquid") - 0.25);
      if (grid == 2) {
        double eta = LENGTH / 8 / (2 * Math.sqrt(ALPHA * until));
        double exact = MELTS_AT + STEP * (1 - Erf.erf(eta) / Erf.erf(lambda));
        // the front steps from cell to cell, and the liquid behind it swings by a part of what
        // lies across a cell: 1 K here
        assertEquals(exact, solution.last("in the liquid"), 0.05);
      }
    }
    // the front's place within its cell makes the error swing: measured 2.1 and 1.9
    Orders.check(2, 0.3, cells, errors);
    assertEquals(0, errors[2], 1e-4);
  }

  /** Solid below its melting temperature, far away: both phases conduct. */
  @Test
  void frontBetweenTwoPhasesFollowsNeumann() {
    double below = 10;
    double solid = 2.2;
    double alphaSolid = solid / (DENSITY * 2100);
    double ratio = Math.sqrt(ALPHA / alphaSolid);
    double number = LIQUID_HEAT * STEP / LATENT;
    double lambda =
        root(
            x ->
                Math.sqrt(Math.PI) * x / number
                    - Math.exp(-x * x) / Erf.erf(x)
                    + solid
                        / LIQUID
                        * ratio
                        * (below / STEP)
                        * Math.exp(-Math.pow(ratio * x, 2))
                        / Erf.erfc(ratio * x));
    // the cold has not come to the far end: erfc of 2.7 is 1e-4
    double until = Math.pow(LENGTH / 2 / 2.7, 2) / alphaSolid;
    double front = 2 * lambda * Math.sqrt(ALPHA * until) / LENGTH;
    double[] cells = {50, 100, 200};
    double[] errors = new double[cells.length];
    for (int grid = 0; grid < cells.length; grid++) {
      TransientSolution solution =
          melt(InitialState.uniform(MELTS_AT - below), solid, (int) cells[grid], until, 1e-3);
      errors[grid] = Math.abs(solution.last("liquid") - front) / front;
      double eta = LENGTH / 2 / (2 * Math.sqrt(alphaSolid * until));
      double exact = MELTS_AT - below + below * Erf.erfc(eta) / Erf.erfc(ratio * lambda);
      // measured 0.03 K on the coarsest grid
      assertEquals(exact, solution.last("in the solid"), 0.05);
    }
    // measured 1.4 %, 0.7 % and 0.5 % of the front's way, which is 2, 4 and 8 cells
    assertEquals(0, errors[0], 0.02);
    assertEquals(0, errors[1], 0.01);
    assertEquals(0, errors[2], 0.01);
  }

  /** What is taken out of a pack and put back leaves it as it was. */
  @Test
  void roundTripReturnsToItsStart() {
    double hour = 3600;
    TimeFunction flux =
        TimeFunction.table(
            new double[] {0, hour, hour, 2 * hour, 2 * hour, 400 * hour},
            new double[] {-400, -400, 400, 400, 0, 0});
    ConductionProblem problem =
        ConductionProblem.builder(
                Slab.layout(List.of(new Slab.Layer("pack", ice(), 0.02))),
                MeshControl.uniform(0.001))
            .boundary(Face.X_MIN, new Boundary.PrescribedFlux(flux))
            .initial(InitialState.uniform(300).partlyMelted("pack", 0.2))
            .build();
    TransientSolution solution =
        TransientSolver.solve(
            problem,
            List.of(
                new Probe.LiquidFraction("liquid", "pack"),
                new Probe.Minimum("coldest", "pack"),
                new Probe.Maximum("warmest", "pack")),
            new double[] {hour, 400 * hour},
            IntegratorSettings.standard());
    double latent = DENSITY * 0.02 * LATENT;
    assertEquals(0, solution.history("liquid")[0], 1e-12);
    assertTrue(solution.history("coldest")[0] < MELTS_AT - 1);
    assertEquals(0, solution.ledger().stored(), 1e-8 * latent);
    assertEquals(0, solution.ledger().residual(), 1e-8 * latent);
    // the spread melting range leaves a thousandth of a kelvin
    assertEquals(0.2, solution.last("liquid"), 1e-5);
    assertEquals(MELTS_AT, solution.last("coldest"), 0.002);
    assertEquals(MELTS_AT, solution.last("warmest"), 0.002);
  }

  private static Box box(double low, double high) {
    return new Box(new Point(low, low, low), new Point(high, high, high));
  }

  /** A pack in foam under a warm film on all sides. */
  private static ConductionProblem cube() {
    Layout layout =
        new Layout(
            List.of(
                new Block.Solid("foam", box(0, 0.1), Material.of("foam", 0.036, 20, 1450)),
                new Block.Solid("pack", box(0.03, 0.07), pack(2.2, 2100, 2))));
    ConductionProblem.Builder builder =
        ConductionProblem.builder(layout, new MeshControl(0.01, 0.005, 1.3))
            .initial(InitialState.uniform(300).with("pack", 268));
    for (Face face : Face.values()) {
      builder.boundary(face, Boundary.Convection.of(10, 310));
    }
    return builder.build();
  }

  @Test
  void cubeMeltsEvenlyFromAllSides() {
    double[] times = new double[60];
    for (int row = 0; row < times.length; row++) {
      times[row] = row * 1800;
    }
    TransientSolution solution =
        TransientSolver.solve(
            cube(),
            List.of(
                new Probe.LiquidFraction("liquid", "pack"),
                new Probe.At("low", new Point(0.035, 0.05, 0.05)),
                new Probe.At("high", new Point(0.05, 0.065, 0.05)),
                new Probe.At("up", new Point(0.05, 0.05, 0.065))),
            times,
            IntegratorSettings.standard());
    double[] liquid = solution.history("liquid");
    for (int row = 1; row < times.length; row++) {
      // the heat goes in only; round-off remains where all is liquid
      assertTrue(liquid[row] >= liquid[row - 1] - 1e-12);
      // the linear solver works to a hundredth of the step tolerance
      assertEquals(solution.history("low")[row], solution.history("high")[row], 1e-3);
      assertEquals(solution.history("low")[row], solution.history("up")[row], 1e-3);
    }
    assertEquals(0, liquid[0]);
    assertEquals(1, liquid[liquid.length - 1], 1e-12);
    double latent = DENSITY * Math.pow(0.04, 3) * LATENT;
    assertEquals(0, solution.ledger().residual(), 1e-8 * latent);
  }

  /** Steady: ice on the cold side, water on the warm one, the front where k dT / dx agrees. */
  @Test
  void steadyFrontStandsWhereTheFluxesMeet() {
    double cold = 10;
    double flux = (2.2 * cold + LIQUID * STEP) / LENGTH;
    double front = LIQUID * STEP / flux;
    ConductionProblem problem =
        ConductionProblem.builder(
                Slab.layout(List.of(new Slab.Layer("pack", ice(), LENGTH))),
                MeshControl.uniform(LENGTH / 40))
            .boundary(Face.X_MIN, Boundary.PrescribedTemperature.of(MELTS_AT + STEP))
            .boundary(Face.X_MAX, Boundary.PrescribedTemperature.of(MELTS_AT - cold))
            .build();
    SteadySolution steady = SteadySolver.solve(problem);
    assertEquals(0, steady.imbalance(), 1e-9 * flux);
    // the front is placed within its cell; measured 3e-4
    assertEquals(flux, steady.heatFlows().get("xMin"), 1e-3 * flux);
    // a quarter of what lies across a cell of water
    assertEquals(MELTS_AT, steady.field().at(Slab.at(front)), 0.5);
  }
}
