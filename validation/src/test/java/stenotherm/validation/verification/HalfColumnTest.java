package stenotherm.validation.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static stenotherm.base.Temperatures.fromCelsius;
import static stenotherm.base.Temperatures.toCelsius;

import java.util.List;
import org.junit.jupiter.api.Test;
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
import stenotherm.material.Material;

/**
 * Laplace's equation in a rectangle with a jump of the prescribed temperature at a corner: Fourier
 * series.
 */
class HalfColumnTest {
  /**
   * Separation of variables for 20 °C on the top edge, 0 °C left and below, no flow on the right
   * [°C].
   */
  private static double exact(double x, double y) {
    double sum = 0;
    for (int n = 1; n < 200; n += 2) {
      double a = n * Math.PI / 2;
      // sinh(a y) / sinh(2 a), without overflow
      double ratio = Math.exp(a * (y - 2)) * -Math.expm1(-2 * a * y) / -Math.expm1(-4 * a);
      sum += Math.sin(a * x) * ratio / n;
    }
    return 80 / Math.PI * sum;
  }

  @Test
  void seriesGivesKnownValues() {
    assertEquals(5.0, exact(1, 1), 1e-9);
    assertEquals(9.6581878, exact(0.25, 1.75), 1e-6);
    assertEquals(0.8863142, exact(1, 0.25), 1e-6);
  }

  @Test
  void fieldFollowsSeries() {
    Material any = Material.of("column", 0.3, 1000, 1000);
    Layout layout = new Layout(List.of(new Block.Solid("column", Box.ofSize(1, 2, 1), any)));
    ConductionProblem problem =
        ConductionProblem.builder(layout, MeshControl.uniform(0.025))
            .boundary(Face.Y_MAX, Boundary.PrescribedTemperature.of(fromCelsius(20)))
            .boundary(Face.X_MIN, Boundary.PrescribedTemperature.of(fromCelsius(0)))
            .boundary(Face.Y_MIN, Boundary.PrescribedTemperature.of(fromCelsius(0)))
            .build();
    SteadySolution solution = SteadySolver.solve(problem);
    double worst = 0;
    for (int i = 1; i <= 4; i++) {
      for (int j = 1; j <= 7; j++) {
        double celsius = toCelsius(solution.field().at(new Point(0.25 * i, 0.25 * j, 0.5)));
        double error = Math.abs(celsius - exact(0.25 * i, 0.25 * j));
        worst = Math.max(worst, error);
      }
    }
    // the library's target for interior points
    assertEquals(0, worst, 0.02);
  }
}
