package stenotherm.validation.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stenotherm.validation.studies.Exact.CoolingShape.CYLINDER;
import static stenotherm.validation.studies.Exact.CoolingShape.SPHERE;

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
import stenotherm.conduction.ThinResistance;
import stenotherm.conduction.TransientSolution;
import stenotherm.conduction.TransientSolver;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Coordinates;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.material.Material;

/**
 * Rods, tubes, spheres and shells in their own coordinates: closed forms for steady layers, series
 * for cooling. First terms are checked against tables of the roots and coefficients, which were
 * recomputed with another program.
 */
class RadialCoordinatesTest {
  private static final Material INNER = Material.of("inner", 0.5, 1000, 1000);
  private static final Material OUTER = Material.of("outer", 0.04, 20, 1400);
  private static final double AMBIENT = 293.15;
  private static final double STEP = 10;
  private static final double TURN = 2 * Math.PI;

  private static Layout layers(Coordinates coordinates, double... radii) {
    double span = coordinates == Coordinates.CYLINDRICAL ? TURN : 1;
    double end = radii[radii.length - 1];
    Box all = new Box(new Point(radii[0], 0, 0), new Point(end, span, 1));
    if (radii.length == 2) {
      return new Layout(List.of(new Block.Solid("inner", all, INNER)), coordinates);
    }
    Box outer = new Box(new Point(radii[1], 0, 0), new Point(end, span, 1));
    return new Layout(
        List.of(new Block.Solid("inner", all, INNER), new Block.Solid("outer", outer, OUTER)),
        coordinates);
  }

  /**
   * A tube of two layers with a contact resistance between held surfaces: heat flow and the
   * temperatures where layers meet follow from resistances in series, on any grid.
   */
  @Test
  void layersOfTubeAreExact() {
    double flow =
        20
            / (Math.log(3 / 2.0) / (TURN * 0.5)
                + 0.1 / (TURN * 0.03)
                + Math.log(5 / 3.0) / (TURN * 0.04));
    double atContact = AMBIENT + STEP - flow * Math.log(3 / 2.0) / (TURN * 0.5);
    check(Coordinates.CYLINDRICAL, flow, atContact);
  }

  @Test
  void layersOfShellAreExact() {
    double whole = 4 * Math.PI;
    double inner = (1 / 0.02 - 1 / 0.03) / (whole * 0.5);
    double flow =
        20 / (inner + 0.1 / (whole * 0.03 * 0.03) + (1 / 0.03 - 1 / 0.05) / (whole * 0.04));
    check(Coordinates.SPHERICAL, flow, AMBIENT + STEP - flow * inner);
  }

  private static void check(Coordinates coordinates, double flow, double atContact) {
    for (double cell : new double[] {0.02, 0.004, 0.0007}) {
      SteadySolution solution =
          SteadySolver.solve(
              ConductionProblem.builder(
                      layers(coordinates, 0.02, 0.03, 0.05), MeshControl.uniform(cell))
                  .boundary(Face.X_MIN, Boundary.PrescribedTemperature.of(AMBIENT + STEP))
                  .boundary(Face.X_MAX, Boundary.PrescribedTemperature.of(AMBIENT - STEP))
                  .thinResistance(ThinResistance.between("inner", "outer", 0.1))
                  .build());
      // round-off of a system with up to 43 unknowns
      assertEquals(flow, solution.heatFlows().get("xMin"), 1e-9 * flow);
      assertEquals(-flow, solution.heatFlows().get("xMax"), 1e-9 * flow);
      assertEquals(atContact, solution.field().minimum("inner"), 1e-8);
      assertEquals(0, solution.imbalance(), 1e-9 * flow);
    }
  }

  @Test
  void areasAndVolumesAreThoseOfTheBody() {
    MeshControl mesh = MeshControl.graded(0.01, 0.002);
    ConductionProblem rod =
        ConductionProblem.builder(layers(Coordinates.CYLINDRICAL, 0, 0.05), mesh)
            .boundary(Face.X_MAX, Boundary.Convection.of(5, AMBIENT))
            .boundary(Face.Z_MAX, Boundary.Convection.of(5, AMBIENT))
            .source("inner", TimeFunction.constant(1))
            .build();
    assertEquals(TURN * 0.05, rod.network().boundaryPorts().get(0).area(), 1e-12);
    assertEquals(Math.PI * 0.0025, rod.network().boundaryPorts().get(1).area(), 1e-12);
    assertEquals(Math.PI * 0.0025, rod.network().sourcePorts().get(0).volume(), 1e-12);
    ConductionProblem ball =
        ConductionProblem.builder(layers(Coordinates.SPHERICAL, 0, 0.05), mesh)
            .boundary(Face.X_MAX, Boundary.Convection.of(5, AMBIENT))
            .source("inner", TimeFunction.constant(1))
            .build();
    assertEquals(4 * Math.PI * 0.0025, ball.network().boundaryPorts().get(0).area(), 1e-12);
    assertEquals(4 * Math.PI / 3 * 1.25e-4, ball.network().sourcePorts().get(0).volume(), 1e-12);
    // a film alone: the surface's mean is exact whatever the grid
    double rise = 1 / (5 * 4 * Math.PI * 0.0025);
    assertEquals(AMBIENT + rise, SteadySolver.solve(ball).field().surfaceMean("xMax"), 1e-8);
  }

  /**
   * Heated evenly, a rod is q r² / 4 k warmer at its axis than at its surface and a ball q r² / 6 k
   * at its centre. The innermost cell has just that temperature, on any grid.
   */
  @Test
  void centreOfHeatedBodyIsExact() {
    double heating = 1000;
    for (Coordinates coordinates : List.of(Coordinates.CYLINDRICAL, Coordinates.SPHERICAL)) {
      boolean isBall = coordinates == Coordinates.SPHERICAL;
      double volume = isBall ? 4 * Math.PI / 3 * 1.25e-4 : Math.PI * 0.0025;
      double exact = AMBIENT + heating * 0.0025 / ((isBall ? 6 : 4) * 0.5);
      for (int cells : new int[] {1, 7, 40}) {
        SteadySolution solution =
            SteadySolver.solve(
                ConductionProblem.builder(
                        layers(coordinates, 0, 0.05), MeshControl.uniform(0.05 / cells))
                    .boundary(Face.X_MAX, Boundary.PrescribedTemperature.of(AMBIENT))
                    .source("inner", TimeFunction.constant(heating * volume))
                    .build());
        assertEquals(exact, solution.field().maximum("inner"), 1e-8);
        assertEquals(exact, solution.field().at(new Point(0, 0.5, 0.5)), 1e-8);
      }
    }
  }

  /**
   * Half a thin ring, heated along one half of its arc, with a film on its outside: a fin. The
   * means of the two halves differ by Q (1 - tanh(m L) / (m L)), with Q the excess of a ring heated
   * all along.
   */
  @Test
  void heatSpreadsAlongTheAngle() {
    double thickness = 0.001;
    double film = 0.2;
    Box half = new Box(new Point(0.0495, 0, 0), new Point(0.0505, Math.PI, 1));
    Box left = new Box(new Point(0.0495, Math.PI / 2, 0), new Point(0.0505, Math.PI, 1));
    SteadySolution solution =
        SteadySolver.solve(
            ConductionProblem.builder(
                    Layout.cylindrical(
                        List.of(
                            new Block.Solid("right", half, INNER),
                            new Block.Solid("left", left, INNER))),
                    MeshControl.uniform(thickness))
                .boundary(Face.X_MAX, Boundary.Convection.of(film, AMBIENT))
                .source("right", TimeFunction.constant(1))
                .build());
    double excess = 1 / (film * 0.0505 * Math.PI / 2);
    double slope = Math.sqrt(film * 0.0505 / (0.5 * thickness * 0.05));
    double arc = slope * 0.05 * Math.PI / 2;
    double exact = excess * (1 - Math.tanh(arc) / arc);
    // the ring is 2 % of its radius thick, and its thickness 0.04 % of the film's resistance
    assertEquals(
        exact, solution.field().mean("right") - solution.field().mean("left"), 5e-4 * exact);
  }

  @Test
  void seriesHaveTabulatedFirstTerms() {
    // root and coefficient at Bi = 0.1, 1 and 8 to eight digits
    assertEquals(0.44168178, CYLINDER.root(0.1, 0), 1e-8);
    assertEquals(1.0245794, CYLINDER.weight(CYLINDER.root(0.1, 0)), 1e-7);
    assertEquals(1.2557837, CYLINDER.root(1, 0), 1e-7);
    assertEquals(1.2070921, CYLINDER.weight(CYLINDER.root(1, 0)), 1e-7);
    assertEquals(2.1286385, CYLINDER.root(8, 0), 1e-7);
    assertEquals(1.5525781, CYLINDER.weight(CYLINDER.root(8, 0)), 1e-7);
    assertEquals(0.54228089, SPHERE.root(0.1, 0), 1e-8);
    assertEquals(1.0297977, SPHERE.weight(SPHERE.root(0.1, 0)), 1e-7);
    assertEquals(2.7653596, SPHERE.root(8, 0), 1e-7);
    assertEquals(1.892038, SPHERE.weight(SPHERE.root(8, 0)), 1e-6);
    // whole series
    assertEquals(0.97681651, CYLINDER.cooling(1, 0.1, 0), 1e-8);
    assertEquals(0.68456455, CYLINDER.cooling(1, 0.1, 1), 1e-8);
    assertEquals(0.14580006, CYLINDER.cooling(10, 0.5, 0), 1e-8);
    assertEquals(0.017757974, CYLINDER.cooling(10, 0.5, 1), 1e-8);
    assertEquals(0.77231161, SPHERE.cooling(1, 0.2, 0), 1e-8);
    assertEquals(0.69832443, SPHERE.cooling(1, 0.2, 0.5), 1e-8);
    assertEquals(0.49591218, SPHERE.cooling(1, 0.2, 1), 1e-8);
  }

  @Test
  void rodCoolsAsTheSeries() {
    cools(Coordinates.CYLINDRICAL, 1, 0.5);
    cools(Coordinates.CYLINDRICAL, 10, 0.2);
  }

  @Test
  void ballCoolsAsTheSeries() {
    cools(Coordinates.SPHERICAL, 1, 0.2);
    cools(Coordinates.SPHERICAL, 10, 0.1);
  }

  private static void cools(Coordinates coordinates, double biot, double fourier) {
    double radius = 0.05;
    double[] parts = {5, 10, 20, 40};
    double[][] errors = new double[2][4];
    double time = fourier * radius * radius / INNER.diffusivity();
    for (int grid = 0; grid < 4; grid++) {
      TransientSolution solution =
          TransientSolver.solve(
              ConductionProblem.builder(
                      layers(coordinates, 0, radius), MeshControl.uniform(radius / parts[grid]))
                  .boundary(
                      Face.X_MAX,
                      Boundary.Convection.of(biot * INNER.conductivity() / radius, AMBIENT))
                  .initial(AMBIENT + STEP)
                  .build(),
              List.of(
                  new Probe.At("centre", new Point(0, 0.5, 0.5)),
                  new Probe.At("surface", new Point(radius, 0.5, 0.5)),
                  new Probe.Minimum("least", "inner"),
                  new Probe.Maximum("most", "inner")),
              new double[] {time},
              IntegratorSettings.adaptive(3e-8));
      assertTrue(solution.outcome().isCompleted());
      assertTrue(solution.ledger().closes());
      for (int position = 0; position < 2; position++) {
        double series =
            coordinates == Coordinates.CYLINDRICAL
                ? CYLINDER.cooling(biot, fourier, position)
                : SPHERE.cooling(biot, fourier, position);
        errors[position][grid] =
            Math.abs(solution.last(position == 0 ? "centre" : "surface") - AMBIENT - STEP * series);
      }
      // no point is warmer than the start or colder than the ambient
      assertTrue(solution.last("least") >= AMBIENT && solution.last("most") <= AMBIENT + STEP);
    }
    // a second-order scheme, not yet in its limit on five and ten cells
    Orders.check(2, 0.2, parts, errors[0]);
    Orders.check(2, 0.2, parts, errors[1]);
    // the target for points is 0.02 K
    assertEquals(0, Math.max(errors[0][3], errors[1][3]), 0.005);
  }
}
