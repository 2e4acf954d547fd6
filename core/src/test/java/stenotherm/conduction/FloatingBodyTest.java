package stenotherm.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.TimeFunction;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.material.Material;

/** Parts without a fixed level, and jumps that rounding could miss. */
class FloatingBodyTest {
  private static final Material STONE = Material.of("stone", 1, 2000, 1000);

  @Test
  void aPartWithoutAPathToABoundaryIsNamed() {
    Layout layout =
        new Layout(
            List.of(
                new Block.Solid("a", Box.ofSize(3, 1, 1), STONE),
                new Block.Environment("gap", new Box(new Point(1, 0, 0), new Point(2, 1, 1))),
                new Block.Solid("b", new Box(new Point(2, 0, 0), new Point(3, 1, 1)), STONE)));
    ConductionProblem problem =
        ConductionProblem.builder(layout, MeshControl.uniform(0.25))
            .boundary("gap", new Boundary.Adiabatic())
            .boundary(Face.X_MIN, Boundary.Convection.of(10, 300))
            .build();
    InvalidInputException refused =
        assertThrows(InvalidInputException.class, () -> SteadySolver.solve(problem));
    assertEquals(
        "boundaries: block 'b' has no path to a film or a held surface; its temperature level is"
            + " open",
        refused.getMessage());
  }

  @Test
  void aPointWhereNothingIsSolidIsRefusedBeforeTheRun() {
    Layout layout =
        new Layout(
            List.of(
                new Block.Solid("a", Box.ofSize(2, 1, 1), STONE),
                new Block.Environment("gap", new Box(new Point(1, 0, 0), new Point(2, 1, 1)))));
    ConductionProblem problem =
        ConductionProblem.builder(layout, MeshControl.uniform(0.25))
            .boundary("gap", Boundary.Convection.of(10, 300))
            .initial(290)
            .build();
    Probe inTheGap = new Probe.At("p", new Point(1.6, 0.4, 0.4));
    InvalidInputException refused =
        assertThrows(
            InvalidInputException.class,
            () ->
                TransientSolver.solve(
                    problem,
                    List.of(inTheGap),
                    new double[] {3600},
                    IntegratorSettings.standard(),
                    (done, total) -> {
                      throw new AssertionError("the run must not start");
                    }));
    assertEquals(
        "point: Point[x=1.6, y=0.4, z=0.4] lies inside an environment; nothing solid is there",
        refused.getMessage());
  }

  @Test
  void aJumpAtTheEndOfAStepIsNotSeenEarly() {
    // with this start and end, start + (end - start) rounds to above the end
    double jump = 1765.1641673166139;
    Layout layout = new Layout(List.of(new Block.Solid("a", Box.ofSize(1, 1, 1), STONE)));
    ConductionProblem problem =
        ConductionProblem.builder(layout, MeshControl.uniform(0.5))
            .boundary(Face.X_MIN, Boundary.Convection.of(10, 300))
            .source(
                "a",
                TimeFunction.table(new double[] {0, jump, jump, 9000}, new double[] {0, 0, 10, 10}))
            .initial(300)
            .build();
    TransientSolution solution =
        TransientSolver.solve(
            problem,
            List.of(new Probe.Mean("mean", "a")),
            new double[] {277.149068534546, 4000},
            IntegratorSettings.fixed(IntegratorSettings.Scheme.TR_BDF2, 5000));
    double given = solution.ledger().sources().getOrDefault("a", Double.NaN);
    assertEquals(10 * (4000 - jump), given, 1e-6);
  }
}
