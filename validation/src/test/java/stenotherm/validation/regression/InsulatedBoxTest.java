package stenotherm.validation.regression;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.Probe;
import stenotherm.conduction.SteadySolution;
import stenotherm.conduction.SteadySolver;
import stenotherm.conduction.ThinResistance;
import stenotherm.conduction.TransientSolution;
import stenotherm.conduction.TransientSolver;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.material.Material;

/**
 * A foam box with fill, a cup of water and a heater in a day that jumps from warm to cold: the
 * library against its own output, first recorded when the exact solutions and the published values
 * passed. The grid is coarse; these are no true temperatures.
 */
class InsulatedBoxTest {
  private static final double ROOM = 293.15;

  private static ConductionProblem problem() {
    Material foam = Material.of("foam", 0.034, 22, 1450);
    Material fill = Material.of("fill", 0.06, 30, 1400);
    Material water = Material.of("water", 0.6, 1000, 4186);
    Material powder = Material.of("powder", 0.3, 900, 900);
    Layout layout =
        new Layout(
            List.of(
                new Block.Solid("foam", Box.ofSize(0.25, 0.20, 0.18), foam),
                new Block.Solid(
                    "fill",
                    new Box(new Point(0.02, 0.02, 0.02), new Point(0.23, 0.18, 0.16)),
                    fill),
                new Block.Solid(
                    "cup",
                    new Box(new Point(0.09, 0.07, 0.03), new Point(0.16, 0.14, 0.08)),
                    water),
                new Block.Solid(
                    "heater",
                    new Box(new Point(0.08, 0.06, 0.145), new Point(0.17, 0.15, 0.16)),
                    powder)));
    TimeFunction outdoors =
        TimeFunction.table(
            new double[] {0, 6 * Times.HOUR, 6 * Times.HOUR, 24 * Times.HOUR},
            new double[] {ROOM, ROOM, 268.15, 278.15});
    TimeFunction power =
        TimeFunction.table(
            new double[] {0, Times.HOUR, 20 * Times.HOUR, 24 * Times.HOUR},
            new double[] {0, 2.5, 2, 0});
    ConductionProblem.Builder builder =
        ConductionProblem.builder(layout, MeshControl.uniform(0.008))
            .source("heater", power)
            .thinResistance(ThinResistance.around(Set.of("cup"), 0.02))
            .initial(ROOM)
            .initial("cup", 298.15);
    for (Face face : Face.values()) {
      if (face != Face.Z_MIN) {
        builder.boundary(face, new Boundary.Convection(TimeFunction.constant(8), outdoors));
      }
    }
    return builder.build();
  }

  @Test
  void steadyStateAtTenHours() {
    SteadySolution solution = SteadySolver.solve(problem(), 10 * Times.HOUR);
    // what two orders of summation and the linear solver's tolerance may change
    assertEquals(282.321628, solution.field().mean("cup"), 1e-5);
    assertEquals(335.837338, solution.field().maximum("heater"), 1e-5);
    assertEquals(-1.26546120, solution.heatFlows().get("zMax"), 1e-7);
  }

  @Test
  void dayWithAJump() {
    TransientSolution solution =
        TransientSolver.solve(
            problem(),
            List.of(
                new Probe.Mean("cup", "cup"),
                new Probe.Minimum("coldest", "cup"),
                new Probe.Maximum("heater", "heater")),
            new double[] {6 * Times.HOUR, 12 * Times.HOUR, 24 * Times.HOUR},
            IntegratorSettings.adaptive(1e-3));
    assertTrue(solution.outcome().isCompleted());
    assertTrue(solution.ledger().closes());
    // five times the step tolerance: other steps may be chosen, the history must not move
    double tolerance = 5e-3;
    assertArrayEquals(
        new double[] {300.60075, 292.42342, 286.64251}, solution.history("cup"), tolerance);
    assertArrayEquals(
        new double[] {299.63948, 290.36679, 285.82174}, solution.history("coldest"), tolerance);
    assertArrayEquals(
        new double[] {361.11921, 337.47175, 290.22819}, solution.history("heater"), tolerance);
  }
}
