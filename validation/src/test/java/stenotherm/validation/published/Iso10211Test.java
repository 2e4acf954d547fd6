package stenotherm.validation.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static stenotherm.base.Temperatures.fromCelsius;
import static stenotherm.base.Temperatures.toCelsius;

import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.SteadySolution;
import stenotherm.conduction.SteadySolver;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.grid.RectilinearGrid;
import stenotherm.material.Material;

/**
 * Test reference cases of ISO 10211 (2007, Annex A; 2017, Annex C) for methods that compute thermal
 * bridges. The limits are those that the standard sets for a high-precision method.
 */
class Iso10211Test {
  /**
   * Printed temperatures of case 1 [°C]: rows from y = 1.75 down to 0.25, columns x = 0.25 to 1.
   */
  private static final double[][] CASE_1 = {
    {9.7, 13.4, 14.7, 15.1},
    {5.3, 8.6, 10.3, 10.8},
    {3.2, 5.6, 7.0, 7.5},
    {2.0, 3.6, 4.7, 5.0},
    {1.3, 2.3, 3.0, 3.2},
    {0.7, 1.4, 1.8, 1.9},
    {0.3, 0.6, 0.8, 0.9},
  };

  @Test
  void case1HalfColumn() {
    Material any = Material.of("column", 1, 1000, 1000);
    Layout layout = new Layout(List.of(new Block.Solid("column", Box.ofSize(1, 2, 1), any)));
    ConductionProblem problem =
        ConductionProblem.builder(layout, MeshControl.uniform(0.025))
            .boundary(Face.Y_MAX, Boundary.PrescribedTemperature.of(fromCelsius(20)))
            .boundary(Face.X_MIN, Boundary.PrescribedTemperature.of(fromCelsius(0)))
            .boundary(Face.Y_MIN, Boundary.PrescribedTemperature.of(fromCelsius(0)))
            .build();
    SteadySolution solution = SteadySolver.solve(problem);
    for (int row = 0; row < CASE_1.length; row++) {
      for (int column = 0; column < CASE_1[row].length; column++) {
        Point point = new Point(0.25 * (column + 1), 1.75 - 0.25 * row, 0.5);
        double celsius = toCelsius(solution.field().at(point));
        // the standard's limit; the printed values are rounded to half of it
        assertEquals(CASE_1[row][column], celsius, 0.1, point::toString);
      }
    }
  }

  private static Box box(double x0, double x1, double y0, double y1) {
    return new Box(new Point(x0 / 1000, y0 / 1000, 0), new Point(x1 / 1000, y1 / 1000, 1));
  }

  /** Composite of four materials with a metal bracket; one metre deep. */
  @Test
  void case2MetalBracket() {
    Material cover = Material.of("cover", 1.15, 2000, 1000);
    Material block = Material.of("block", 0.12, 500, 1600);
    Material insulation = Material.of("insulation", 0.029, 30, 1400);
    Material metal = Material.of("metal", 230, 2700, 900);
    Layout layout =
        new Layout(
            List.of(
                new Block.Solid("insulation", box(0, 500, 0, 47.5), insulation),
                new Block.Solid("cover", box(0, 500, 41.5, 47.5), cover),
                new Block.Solid("block", box(0, 15, 36.5, 41.5), block),
                new Block.Solid("strip", box(0, 500, 0, 1.5), metal),
                new Block.Solid("web", box(0, 1.5, 1.5, 36.5), metal),
                new Block.Solid("shelf", box(0, 15, 35, 36.5), metal)));
    ConductionProblem problem =
        ConductionProblem.builder(layout, new MeshControl(0.01, 0.0008, 1.3))
            .boundary(Face.Y_MAX, Boundary.Convection.of(1 / 0.06, fromCelsius(0)))
            .boundary(Face.Y_MIN, Boundary.Convection.of(1 / 0.11, fromCelsius(20)))
            .build();
    SteadySolution solution = SteadySolver.solve(problem);
    double[][] points = {
      {0, 47.5, 7.1},
      {500, 47.5, 0.8},
      {0, 41.5, 7.9},
      {15, 41.5, 6.3},
      {500, 41.5, 0.8},
      {0, 36.5, 16.4},
      {15, 36.5, 16.3},
      {0, 0, 16.8},
      {500, 0, 18.3},
    };
    for (double[] point : points) {
      Point where = new Point(point[0] / 1000, point[1] / 1000, 0.5);
      // the standard's limit; at two of the points three materials meet
      assertEquals(point[2], toCelsius(solution.field().at(where)), 0.1, where::toString);
    }
    // the standard's limit for the heat flow: 0.1 W/m
    assertEquals(9.5, solution.heatFlows().get("yMin"), 0.1);
    assertEquals(-9.5, solution.heatFlows().get("yMax"), 0.1);
  }

  /** A quarter of the model: the planes through the bar's axis are adiabatic by symmetry. */
  @Test
  void case4IronBar() {
    Material insulation = Material.of("insulation", 0.1, 30, 1400);
    Material iron = Material.of("iron", 50, 7800, 450);
    double end = 0.6;
    Layout layout =
        new Layout(
            List.of(
                new Block.Solid("insulation", Box.ofSize(0.5, 0.5, end + 0.1), insulation),
                new Block.Environment(
                    "inside", new Box(new Point(0, 0, 0.2), new Point(0.5, 0.5, end + 0.1))),
                new Block.Solid("bar", Box.ofSize(0.05, 0.025, end), iron)));
    ConductionProblem problem =
        ConductionProblem.builder(layout, new MeshControl(0.03, 0.002, 1.3))
            .boundary(Face.Z_MIN, Boundary.Convection.of(1 / 0.10, fromCelsius(0)))
            .boundary("inside", Boundary.Convection.of(1 / 0.10, fromCelsius(1)))
            .build();
    SteadySolution solution = SteadySolver.solve(problem);
    double inside = 4 * solution.heatFlows().get("inside");
    double outside = -4 * solution.heatFlows().get("zMin");
    // the standard's limit for a heat flow: 1 %
    assertEquals(0.540, inside, 0.0054);
    assertEquals(0.540, outside, 0.0054);
    double warmest = Double.NEGATIVE_INFINITY;
    RectilinearGrid grid = problem.network().grid();
    for (double x : grid.lines(Axis.X)) {
      for (double y : grid.lines(Axis.Y)) {
        warmest = Math.max(warmest, solution.field().at(new Point(x, y, 0)));
      }
    }
    // the standard's limit for this temperature
    assertEquals(0.805, toCelsius(warmest), 0.005);
  }
}
