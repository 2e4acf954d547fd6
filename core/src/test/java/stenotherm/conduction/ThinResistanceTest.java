package stenotherm.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static stenotherm.conduction.Bodies.assertRefused;
import static stenotherm.conduction.Bodies.point;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.grid.Block;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;

/**
 * Series resistances have exact solutions that the scheme holds; tolerances are those of the linear
 * solver.
 */
class ThinResistanceTest {
  private static final double TOLERANCE = 1e-6;
  private static final double WALL = 0.03 / 0.036 + 0.01 / 0.06;

  private static ConductionProblem.Builder wall() {
    return ConductionProblem.builder(Bodies.wall(), MeshControl.uniform(0.004))
        .boundary(Face.X_MIN, Boundary.PrescribedTemperature.of(310))
        .boundary(Face.X_MAX, Boundary.PrescribedTemperature.of(280));
  }

  @Test
  void temperatureJumpsByFluxTimesResistance() {
    SteadySolution solution =
        SteadySolver.solve(
            wall().thinResistance(ThinResistance.between("board", "foam", 0.2)).build());
    double flux = 30 / (WALL + 0.2);
    assertEquals(flux, solution.heatFlows().get("xMin"), TOLERANCE);
    double foamSide = 310 - flux * 0.03 / 0.036;
    double boardSide = 280 + flux * 0.01 / 0.06;
    assertEquals(flux * 0.2, foamSide - boardSide, 1e-9);
    assertEquals(foamSide, solution.field().minimum("foam"), TOLERANCE);
    assertEquals(boardSide, solution.field().maximum("board"), TOLERANCE);
    assertEquals(foamSide, solution.field().at(point(0.03 - 1e-7)), 1e-3);
    assertEquals(boardSide, solution.field().at(point(0.03 + 1e-7)), 1e-3);
    // on the resistance itself: the mean of its sides
    assertEquals((foamSide + boardSide) / 2, solution.field().at(point(0.03)), TOLERANCE);
  }

  @Test
  void severalOnOneFaceAddUp() {
    SteadySolution solution =
        SteadySolver.solve(
            wall()
                .thinResistance(ThinResistance.between("board", "foam", 0.2))
                .thinResistance(ThinResistance.around(Set.of("board"), 0.1))
                .thinResistance(ThinResistance.around(Set.of("foam", "board"), 0.05))
                .build());
    // the second lies on the joint and on the outer face of the board, the third on both outer
    // faces
    double flux = 30 / (WALL + 0.2 + 0.1 + 0.1 + 2 * 0.05);
    assertEquals(flux, solution.heatFlows().get("xMin"), TOLERANCE);
    assertEquals(-flux, solution.heatFlows().get("xMax"), TOLERANCE);
  }

  @Test
  void liesBetweenFilmAndSurface() {
    SteadySolution solution =
        SteadySolver.solve(
            ConductionProblem.builder(Bodies.wall(), MeshControl.uniform(0.004))
                .boundary(Face.X_MIN, Boundary.Convection.of(8, 310))
                .boundary(Face.X_MAX, Boundary.PrescribedTemperature.of(280))
                .thinResistance(ThinResistance.around(Set.of("foam", "board"), 0.3))
                .build());
    double flux = 30 / (1 / 8.0 + 0.3 + WALL + 0.3);
    assertEquals(flux, solution.heatFlows().get("xMin"), TOLERANCE);
    // the surface of the solid, under the resistance
    assertEquals(310 - flux * (1 / 8.0 + 0.3), solution.field().surfaceMean("xMin"), TOLERANCE);
  }

  @Test
  void liesBetweenBlockAndEnvironment() {
    Layout layout =
        new Layout(
            List.of(
                new Block.Solid("foam", Bodies.slice(0, 0.1), Bodies.FOAM),
                new Block.Environment("room", Bodies.slice(0.06, 0.1))));
    SteadySolution solution =
        SteadySolver.solve(
            ConductionProblem.builder(layout, MeshControl.uniform(0.02))
                .boundary(Face.X_MIN, Boundary.PrescribedTemperature.of(310))
                .boundary("room", Boundary.Convection.of(5, 290))
                .thinResistance(ThinResistance.between("foam", "room", 0.4))
                .build());
    assertEquals(20 / (0.06 / 0.036 + 0.4 + 0.2), solution.heatFlows().get("xMin"), TOLERANCE);
  }

  @Test
  void checksItself() {
    assertRefused(
        "thin resistance: needs at least one block inside",
        () -> ThinResistance.around(Set.of(), 1));
    assertRefused(
        "thin resistance: 'a' is on both sides", () -> ThinResistance.between("a", "a", 1));
    assertRefused(
        "thin resistance: -1 m2 K/W must be a finite number, 0 or above",
        () -> ThinResistance.between("a", "b", -1));
    assertRefused(
        "thin resistance: NaN m2 K/W must be a finite number, 0 or above",
        () -> ThinResistance.between("a", "b", Double.NaN));
  }
}
