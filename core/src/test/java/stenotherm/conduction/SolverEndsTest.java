package stenotherm.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.base.Outcome;
import stenotherm.base.TimeFunction;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.material.Material;

/** Solvers end within an iteration when they are interrupted, and say so when they cannot go on. */
class SolverEndsTest {
  private static ConductionProblem.Builder wall() {
    return ConductionProblem.builder(Bodies.wall(), MeshControl.uniform(0.004))
        .boundary(Face.X_MIN, Boundary.Convection.of(8, 310))
        .boundary(Face.X_MAX, Boundary.Convection.of(20, 280));
  }

  @Test
  void anInterruptEndsASteadySolve() {
    ConductionProblem problem = wall().build();
    Thread.currentThread().interrupt();
    try {
      assertThrows(CancellationException.class, () -> SteadySolver.solve(problem));
    } finally {
      assertTrue(Thread.interrupted(), "the interrupt must stay visible to the caller");
    }
  }

  /** The extreme of a block of many cells takes as long as a solution. */
  @Test
  void anInterruptEndsTheSearchForAnExtreme() {
    Box box = Box.ofSize(0.1, 0.1, 0.1);
    SteadySolution solution =
        SteadySolver.solve(
            ConductionProblem.builder(
                    new Layout(
                        List.of(new Block.Solid("foam", box, Material.of("foam", 0.03, 20, 1400)))),
                    MeshControl.uniform(0.005))
                .boundary(Face.X_MIN, Boundary.Convection.of(8, 310))
                .boundary(Face.Y_MIN, Boundary.Convection.of(8, 300))
                .boundary(Face.Z_MIN, Boundary.Convection.of(8, 290))
                .build());
    Thread.currentThread().interrupt();
    try {
      assertThrows(CancellationException.class, () -> solution.field().maximum("foam"));
      assertThrows(CancellationException.class, () -> solution.field().minimum("foam"));
    } finally {
      assertTrue(Thread.interrupted(), "the interrupt must stay visible to the caller");
    }
  }

  /** A step of a large grid takes seconds: the interrupt is not left until its end. */
  @Test
  void anInterruptWithinAStepLeavesTheStateBeforeIt() {
    TimeFunction interrupting =
        time -> {
          if (time > 1000) {
            Thread.currentThread().interrupt();
          }
          return 2;
        };
    ConductionProblem problem = wall().source("board", interrupting).initial(290).build();
    TransientSolution solution;
    try {
      solution =
          TransientSolver.solve(
              problem,
              List.of(new Probe.Mean("mean", "foam")),
              new double[] {0, 12_000},
              IntegratorSettings.fixed(IntegratorSettings.Scheme.TR_BDF2, 600));
    } finally {
      assertTrue(Thread.interrupted(), "the interrupt must stay visible to the caller");
    }
    assertEquals(
        new Outcome.Stopped("interrupted after 600 s of 12000 s", 600), solution.outcome());
    assertTrue(solution.ledger().closes());
  }

  @Test
  void sumsThatOverflowAreNamed() {
    ConductionProblem problem =
        wall().source("board", TimeFunction.constant(Double.MAX_VALUE)).build();
    IllegalStateException failure =
        assertThrows(IllegalStateException.class, () -> SteadySolver.solve(problem));
    assertEquals("the linear system met a number that is not finite", failure.getMessage());
  }
}
