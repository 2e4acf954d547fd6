package stenotherm.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import stenotherm.conduction.ConductionProperties.Kind;
import stenotherm.grid.Layout;
import stenotherm.grid.RoundLayouts;

/** What conduction must keep where blocks are round, as it does for boxes. */
class RoundProperties {
  @Property(seed = "2201", tries = 30)
  void ledgerClosesAcrossJumps(
      @ForAll(supplier = RoundLayouts.class) Layout layout, @ForAll long seed) {
    ConductionProblem problem = ConductionProperties.problem(layout, seed, Kind.HEATED, false);
    TransientSolution solution =
        TransientSolver.solve(
            problem, List.of(), new double[] {1000, 3600}, IntegratorSettings.adaptive(0.05));
    assertTrue(solution.outcome().isCompleted(), () -> solution.outcome().toString());
    HeatLedger ledger = solution.ledger();
    assertTrue(ledger.closes(), () -> ledger.residual() + " of " + ledger.scale());
  }

  @Property(seed = "2202", tries = 60)
  void steadyHeatBalances(@ForAll(supplier = RoundLayouts.class) Layout layout, @ForAll long seed) {
    SteadySolution solution =
        SteadySolver.solve(ConductionProperties.problem(layout, seed, Kind.HEATED, false));
    double moved = 0;
    for (double flow : solution.heatFlows().values()) {
      moved += Math.abs(flow);
    }
    assertEquals(0, solution.imbalance(), 1e-6 * (moved + 1e-3));
  }

  @Property(seed = "2203", tries = 60)
  void steadyTemperaturesStayBetweenAmbients(
      @ForAll(supplier = RoundLayouts.class) Layout layout, @ForAll long seed) {
    ConductionProblem problem = ConductionProperties.problem(layout, seed, Kind.CONSTANT, false);
    ConductionProperties.assertWithinBounds(
        SteadySolver.solve(problem).field(), problem.network().grid());
  }

  @Property(seed = "2204", tries = 30)
  void mirroredBodyHasTheMirroredField(
      @ForAll(supplier = RoundLayouts.class) Layout layout, @ForAll long seed) {
    ConductionProperties.assertMirrored(layout, seed);
  }
}
