package stenotherm.validation.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stenotherm.base.Temperatures.fromCelsius;
import static stenotherm.base.Temperatures.toCelsius;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stenotherm.base.Face;
import stenotherm.base.Sinusoid;
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
import stenotherm.grid.MeshControl;
import stenotherm.material.Material;

/**
 * Layered walls: resistances in series, and the transfer matrices of periodic conduction (ISO
 * 13786).
 */
class LayeredWallTest {
  private static final double INSIDE_FILM = 0.13;
  private static final double OUTSIDE_FILM = 0.04;
  private static final Material FOAM = Material.of("foam", 0.036, 20, 1450);
  private static final Material BOARD = Material.of("board", 0.06, 170, 1400);
  private static final Material CONCRETE = Material.of("concrete", 1.8, 2400, 1000);
  private static final Material WOOL = Material.of("wool", 0.04, 30, 1400);
  private static final Material COATING = Material.of("coating", 1.0, 1200, 1500);
  private static final Material BRICK = Material.of("brick", 0.77, 1700, 800);

  private static ConductionProblem.Builder wall(List<Slab.Layer> layers, MeshControl mesh) {
    return ConductionProblem.builder(Slab.layout(layers), mesh);
  }

  /** 30 °C to 0 °C through foam, a gap of 0.11 m2 K/W, board and two films: 1.18 m2 K/W in all. */
  @Test
  void gapAsLayer() {
    Material gap = Material.of("gap", 0.005 / 0.11, 1.2, 1006);
    SteadySolution solution =
        SteadySolver.solve(
            wall(
                    List.of(
                        new Slab.Layer("foam", FOAM, 0.030),
                        new Slab.Layer("gap", gap, 0.005),
                        new Slab.Layer("board", BOARD, 0.004)),
                    MeshControl.graded(0.005, 0.001))
                .boundary(Face.X_MIN, Boundary.Convection.of(1 / INSIDE_FILM, fromCelsius(30)))
                .boundary(Face.X_MAX, Boundary.Convection.of(1 / OUTSIDE_FILM, fromCelsius(0)))
                .build());
    // the field is linear in each layer, which the scheme holds exactly; left is the solver's
    // tolerance
    double tolerance = 1e-6;
    assertEquals(30 / 1.18, solution.heatFlows().get("xMin"), tolerance);
    assertEquals(-30 / 1.18, solution.heatFlows().get("xMax"), tolerance);
    assertEquals(26.694915, toCelsius(solution.field().at(Slab.at(0))), tolerance);
    assertEquals(5.5084746, toCelsius(solution.field().at(Slab.at(0.030))), tolerance);
    assertEquals(2.7118644, toCelsius(solution.field().at(Slab.at(0.035))), tolerance);
    assertEquals(1.0169492, toCelsius(solution.field().at(Slab.at(0.039))), tolerance);
    assertEquals(26.694915, toCelsius(solution.field().surfaceMean("xMin")), tolerance);
  }

  /** The same wall with the gap as a resistance without thickness: the field jumps there. */
  @Test
  void gapAsThinResistance() {
    SteadySolution solution =
        SteadySolver.solve(
            wall(
                    List.of(
                        new Slab.Layer("foam", FOAM, 0.030), new Slab.Layer("board", BOARD, 0.004)),
                    MeshControl.graded(0.005, 0.001))
                .boundary(Face.X_MIN, Boundary.Convection.of(1 / INSIDE_FILM, fromCelsius(30)))
                .boundary(Face.X_MAX, Boundary.Convection.of(1 / OUTSIDE_FILM, fromCelsius(0)))
                .thinResistance(ThinResistance.between("foam", "board", 0.11))
                .build());
    double tolerance = 1e-6;
    assertEquals(30 / 1.18, solution.heatFlows().get("xMin"), tolerance);
    assertEquals(5.5084746, toCelsius(solution.field().minimum("foam")), tolerance);
    assertEquals(2.7118644, toCelsius(solution.field().maximum("board")), tolerance);
  }

  /**
   * A wall and its periodic thermal transmittance for one day: magnitude [W/(m2 K)] and lead [h].
   */
  record Periodic(String name, List<Slab.Layer> layers, double magnitude, double lead) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Periodic> periodicWalls() {
    return Stream.of(
        new Periodic(
            "concrete",
            List.of(new Slab.Layer("concrete", CONCRETE, 0.200)),
            1.8270711,
            -5.6756893),
        new Periodic(
            "insulated concrete",
            List.of(
                new Slab.Layer("concrete", CONCRETE, 0.200),
                new Slab.Layer("wool", WOOL, 0.100),
                new Slab.Layer("coating", COATING, 0.005)),
            0.060558015,
            -8.1088174),
        new Periodic(
            "foam and board",
            List.of(new Slab.Layer("foam", FOAM, 0.030), new Slab.Layer("board", BOARD, 0.004)),
            0.93452679,
            -0.0695154),
        new Periodic(
            "brick", List.of(new Slab.Layer("brick", BRICK, 0.215)), 1.2514865, -5.9099946));
  }

  /**
   * Heat flow out of the inside surface per kelvin of the outside air, both as complex amplitudes.
   */
  private static Complex transmittance(List<Slab.Layer> layers, double omega) {
    Complex[][] matrix = film(INSIDE_FILM);
    for (Slab.Layer layer : layers) {
      Complex root = new Complex(0, omega / layer.material().diffusivity()).sqrt();
      Complex argument = root.multiply(layer.thickness());
      Complex k = root.multiply(layer.material().conductivity());
      matrix =
          product(
              matrix,
              new Complex[][] {
                {argument.cosh(), argument.sinh().divide(k).negate()},
                {argument.sinh().multiply(k).negate(), argument.cosh()}
              });
    }
    return product(matrix, film(OUTSIDE_FILM))[0][1].reciprocal().negate();
  }

  private static Complex[][] film(double resistance) {
    return new Complex[][] {{Complex.ONE, new Complex(-resistance)}, {Complex.ZERO, Complex.ONE}};
  }

  private static Complex[][] product(Complex[][] a, Complex[][] b) {
    Complex[][] c = new Complex[2][2];
    for (int i = 0; i < 2; i++) {
      for (int j = 0; j < 2; j++) {
        c[i][j] = a[i][0].multiply(b[0][j]).add(a[i][1].multiply(b[1][j]));
      }
    }
    return c;
  }

  @ParameterizedTest
  @MethodSource("periodicWalls")
  void matrixGivesKnownValues(Periodic wall) {
    Complex y = transmittance(wall.layers(), 2 * Math.PI / Times.DAY);
    assertEquals(wall.magnitude(), y.abs(), 1e-6 * wall.magnitude());
    assertEquals(wall.lead(), y.getArgument() * 24 / (2 * Math.PI), 1e-6);
  }

  /**
   * The outside air swings by 10 K in a day; compared is the heat flow at the inside surface over
   * the last day.
   */
  @ParameterizedTest
  @MethodSource("periodicWalls")
  void heatFlowFollowsTransferMatrix(Periodic wall) {
    double omega = 2 * Math.PI / Times.DAY;
    double mean = fromCelsius(10);
    double amplitude = 10;
    ConductionProblem problem =
        wall(wall.layers(), MeshControl.graded(0.006, 0.001))
            .boundary(Face.X_MIN, Boundary.Convection.of(1 / INSIDE_FILM, mean))
            .boundary(
                Face.X_MAX,
                new Boundary.Convection(
                    TimeFunction.constant(1 / OUTSIDE_FILM),
                    new Sinusoid(mean, new Sinusoid.Wave(amplitude, Times.DAY, 0))))
            .initial(mean)
            .build();
    // the start has died away after 12 days: the slowest wall forgets by exp(-1) in less than 1.2
    // days
    double[] times = new double[24];
    for (int hour = 0; hour < 24; hour++) {
      times[hour] = 12 * Times.DAY + hour * Times.HOUR;
    }
    TransientSolution solution =
        TransientSolver.solve(
            problem,
            List.of(new Probe.HeatFlow("in", "xMin")),
            times,
            IntegratorSettings.adaptive(1e-4));
    assertTrue(solution.outcome().isCompleted());
    assertTrue(solution.ledger().closes());
    Complex y = transmittance(wall.layers(), omega);
    double worst = 0;
    for (int hour = 0; hour < 24; hour++) {
      // heat flows out of the wall into the room when the outside is warm
      double exact = -amplitude * y.abs() * Math.sin(omega * times[hour] + y.getArgument());
      worst = Math.max(worst, Math.abs(solution.history("in")[hour] - exact));
    }
    // the library's target for heat flows: 0.1 %, here of the amplitude
    assertEquals(0, worst, 1e-3 * amplitude * y.abs());
  }
}
