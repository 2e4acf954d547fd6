package stenotherm.validation.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static stenotherm.base.Temperatures.fromCelsius;
import static stenotherm.base.Temperatures.toCelsius;

import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.base.TimeFunction;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.Probe;
import stenotherm.conduction.SteadySolution;
import stenotherm.conduction.SteadySolver;
import stenotherm.conduction.TransientSolver;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.material.Material;

/** Worked examples of textbooks. */
class TextbookTest {
  private static Point at(double x) {
    return new Point(x, 0.5, 0.5);
  }

  /**
   * Incropera, DeWitt, Bergman and Lavine, Fundamentals of Heat and Mass Transfer, 6th edition,
   * example 3.7: a heated layer, insulated behind, under a layer cooled by water. The numbers are
   * remembered and agree with hand calculation.
   */
  @Test
  void incroperaHeatedLayer() {
    Material a = Material.of("A", 75, 3000, 700);
    Material b = Material.of("B", 150, 3000, 700);
    Layout layout =
        new Layout(
            List.of(
                new Block.Solid("A", Box.ofSize(0.070, 1, 1), a),
                new Block.Solid("B", new Box(new Point(0.050, 0, 0), new Point(0.070, 1, 1)), b)));
    SteadySolution solution =
        SteadySolver.solve(
            ConductionProblem.builder(layout, MeshControl.uniform(0.001))
                .boundary(Face.X_MAX, Boundary.Convection.of(1000, fromCelsius(30)))
                .source("A", TimeFunction.constant(1.5e6 * 0.050))
                .build());
    // the example's numbers are exact; a cell of 1 mm leaves q dx^2 / (8 k) = 0.0025 K in the
    // heated layer
    assertEquals(140, toCelsius(solution.field().at(at(0))), 0.005);
    assertEquals(115, toCelsius(solution.field().at(at(0.050))), 0.005);
    assertEquals(105, toCelsius(solution.field().at(at(0.070))), 0.005);
  }

  /** Steel, k = 45 W/(m K), a = 1.4e-5 m2/s, at 35 °C; 25 mm below the surface after 30 s. */
  private static double holman(Boundary boundary) {
    Material steel = Material.of("steel", 45, 45 / 1.4e-5 / 500, 500);
    Layout layout = new Layout(List.of(new Block.Solid("steel", Box.ofSize(0.3, 1, 1), steel)));
    ConductionProblem problem =
        ConductionProblem.builder(layout, new MeshControl(0.002, 0.0005, 1.1))
            .boundary(Face.X_MIN, boundary)
            .initial(fromCelsius(35))
            .build();
    double celsius =
        toCelsius(
            TransientSolver.solve(
                    problem,
                    List.of(new Probe.At("depth", at(0.025))),
                    new double[] {30},
                    IntegratorSettings.adaptive(1e-3))
                .last("depth"));
    return celsius;
  }

  /**
   * Holman, Heat Transfer, example 4-2: the surface is raised to 250 °C. Printed to 0.1 K;
   * remembered.
   */
  @Test
  void holmanSurfaceStep() {
    // half a unit of the last printed digit, and 0.02 K of the method
    assertEquals(118.5, holman(Boundary.PrescribedTemperature.of(fromCelsius(250))), 0.07);
  }

  /** The same example with a flux of 320 kW/m2; the value is read. */
  @Test
  void holmanFlux() {
    assertEquals(79.3, holman(Boundary.PrescribedFlux.of(3.2e5)), 0.07);
  }
}
