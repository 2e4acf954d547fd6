package stenotherm.validation.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stenotherm.validation.studies.Exact.CoolingShape.CYLINDER;
import static stenotherm.validation.studies.Exact.CoolingShape.SLAB;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.TimeFunction;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.Probe;
import stenotherm.conduction.SteadySolution;
import stenotherm.conduction.SteadySolver;
import stenotherm.conduction.TemperatureField;
import stenotherm.conduction.ThinResistance;
import stenotherm.conduction.TransientSolution;
import stenotherm.conduction.TransientSolver;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.grid.Shape;
import stenotherm.material.Material;

/** Cylinders stepped on the rectilinear grid against closed forms and series. */
class RoundBlockTest {
  private static final double AMBIENT = 293.15;
  private static final double RADIUS = 0.05;
  private static final Material BODY = Material.of("body", 0.5, 1000, 1000);

  private static Box around(double radius, double from, double to) {
    return new Box(new Point(-radius, -radius, from), new Point(radius, radius, to));
  }

  private static Block.Solid cylinder(
      String name, double radius, double from, double to, Material material) {
    return new Block.Solid(name, around(radius, from, to), material, Shape.CYLINDER_Z);
  }

  private static Block room(double from, double to) {
    // not centred, so that nothing rests on symmetry
    return new Block.Environment(
        "room", new Box(new Point(-0.09, -0.085, from), new Point(0.1, 0.11, to)));
  }

  /** Meshes of 3, 6, 12 and 24 cells to a radius, even ones or graded to the cylinder's box. */
  private static List<MeshControl> meshes(double radius) {
    List<MeshControl> meshes = new ArrayList<>();
    for (int cells : new int[] {3, 6, 12, 24}) {
      meshes.add(MeshControl.uniform(radius / cells));
      meshes.add(MeshControl.graded(radius / cells, radius / cells / 4));
    }
    return meshes;
  }

  private static ConductionProblem.Builder rod(MeshControl mesh, double film) {
    return ConductionProblem.builder(
            new Layout(List.of(room(0, 1), cylinder("rod", RADIUS, 0, 1, BODY))), mesh)
        .boundary("room", Boundary.Convection.of(film, AMBIENT));
  }

  @Test
  void areaAndVolumeAreTheTrueOnesOnAnyGrid() {
    for (MeshControl mesh : meshes(RADIUS)) {
      ConductionProblem problem = rod(mesh, 10).source("rod", TimeFunction.constant(1)).build();
      double area = problem.network().boundaryPorts().get(0).area();
      // every piece of the surface belongs to just one step along each axis
      assertEquals(2 * Math.PI * RADIUS, area, 1e-6 * area);
      double volume = problem.network().sourcePorts().get(0).volume();
      // 16 lines to a cell; three cells to a radius are worst
      assertEquals(Math.PI * RADIUS * RADIUS, volume, 3e-4 * volume);
    }
  }

  @Test
  void ellipseLyingAlongAnyAxisHasItsPerimeter() {
    // half axes 2 and 1; the perimeter of an ellipse of that ratio is 9.688448 (complete elliptic
    // integral, computed with 30 digits by the arithmetic-geometric mean)
    for (Axis axis : Axis.values()) {
      Box domain = new Box(new Point(-3, -3, -3), new Point(3, 3, 3));
      Box box =
          switch (axis) {
            case X -> new Box(new Point(-0.5, -1, -2), new Point(0.5, 1, 2));
            case Y -> new Box(new Point(-2, -0.5, -1), new Point(2, 0.5, 1));
            case Z -> new Box(new Point(-1, -2, -0.5), new Point(1, 2, 0.5));
          };
      Shape shape = Shape.valueOf("CYLINDER_" + axis);
      ConductionProblem problem =
          ConductionProblem.builder(
                  new Layout(
                      List.of(
                          new Block.Environment("room", domain),
                          new Block.Solid("ellipse", box, BODY, shape))),
                  MeshControl.uniform(0.2))
              .boundary("room", Boundary.Convection.of(10, AMBIENT))
              .source("ellipse", TimeFunction.constant(1))
              .build();
      double both = 2 * 2 * Math.PI;
      // the ends are as right as the volume is
      assertEquals(9.688448 + both, problem.network().boundaryPorts().get(0).area(), 2e-3);
      assertEquals(2 * Math.PI, problem.network().sourcePorts().get(0).volume(), 1e-3);
    }
  }

  /** Heated evenly in a room: q r / 2 h at the surface and q r² / 4 k more at the axis. */
  @Test
  void heatedRodConverges() {
    double heating = 1000;
    double film = 10;
    double atSurface = heating * RADIUS / (2 * film);
    double atAxis = atSurface + heating * RADIUS * RADIUS / (4 * BODY.conductivity());
    // of the rise of the axis, for 3, 6, 12 and 24 cells to the radius
    double[] allowed = {0.018, 0.006, 0.002, 0.0005};
    List<MeshControl> meshes = meshes(RADIUS);
    for (int mesh = 0; mesh < meshes.size(); mesh++) {
      double power = heating * Math.PI * RADIUS * RADIUS;
      SteadySolution solution =
          SteadySolver.solve(
              rod(meshes.get(mesh), film).source("rod", TimeFunction.constant(power)).build());
      TemperatureField field = solution.field();
      double tolerance = allowed[mesh / 2] * atAxis;
      // area and power are right, and with them this mean
      assertEquals(AMBIENT + atSurface, field.surfaceMean("room"), 1e-5 * atSurface);
      assertEquals(AMBIENT + atAxis, field.maximum("rod"), tolerance);
      assertEquals(AMBIENT + (atAxis + atSurface) / 2, field.mean("rod"), tolerance);
      assertEquals(AMBIENT + atSurface, field.minimum("rod"), tolerance);
      assertEquals(0, solution.imbalance(), 1e-9 * power);
    }
  }

  /** A heated rod within a thick round sleeve, with or without a thin resistance between them. */
  @Test
  void rodInSleeveConverges() {
    // of the rise of the axis, for 3, 6, 12 and 24 cells to the inner radius; extremes at a jump of
    // the conductivity, half a cell from the true surface, converge with the first order
    double[] allowed = {0.035, 0.01, 0.006, 0.0035};
    for (double[] set :
        new double[][] {{5, 0.5, 0}, {0.05, 0.5, 0}, {5, 0.05, 0.1}, {0.5, 0.5, 0.1}}) {
      Material inner = BODY.withConductivity(set[0]);
      Material sleeve = BODY.withConductivity(set[1]);
      List<MeshControl> meshes = meshes(0.03);
      double atOuter = 20 / (10 * 2 * Math.PI * 0.08);
      double atSleeve = atOuter + 20 * Math.log(0.08 / 0.03) / (2 * Math.PI * set[1]);
      double atRod = atSleeve + 20 * set[2] / (2 * Math.PI * 0.03);
      double atAxis = atRod + 20 / (4 * Math.PI * set[0]);
      for (int mesh = 0; mesh < meshes.size(); mesh++) {
        TemperatureField field =
            SteadySolver.solve(
                    ConductionProblem.builder(
                            new Layout(
                                List.of(
                                    room(0, 1),
                                    cylinder("sleeve", 0.08, 0, 1, sleeve),
                                    cylinder("rod", 0.03, 0, 1, inner))),
                            meshes.get(mesh))
                        .boundary("room", Boundary.Convection.of(10, AMBIENT))
                        .thinResistance(ThinResistance.between("rod", "sleeve", set[2]))
                        .source("rod", TimeFunction.constant(20))
                        .build())
                .field();
        double tolerance = allowed[mesh / 2] * atAxis;

        assertEquals(AMBIENT + atAxis, field.maximum("rod"), tolerance);
        assertEquals(AMBIENT + (atAxis + atRod) / 2, field.mean("rod"), tolerance);
        assertEquals(AMBIENT + atRod, field.minimum("rod"), tolerance);
        assertEquals(AMBIENT + atSleeve, field.maximum("sleeve"), tolerance);
        assertEquals(AMBIENT + atOuter, field.minimum("sleeve"), tolerance);
      }
    }
  }

  /**
   * A closed cup of conducting contents with a thin wall between it and conducting surroundings:
   * power times resistance over the true area of side and ends.
   */
  @Test
  void wallOfCupHasItsTrueArea() {
    Material well = BODY.withConductivity(1e5);
    double area = 2 * Math.PI * 0.04 * 0.06 + 2 * Math.PI * 0.0016;
    for (int cells : new int[] {3, 5, 8}) {
      TemperatureField field =
          SteadySolver.solve(
                  ConductionProblem.builder(
                          new Layout(
                              List.of(
                                  new Block.Solid(
                                      "fill",
                                      new Box(new Point(-0.1, -0.08, 0), new Point(0.11, 0.1, 0.1)),
                                      well),
                                  cylinder("cup", 0.04, 0.02, 0.08, well))),
                          MeshControl.uniform(0.04 / cells))
                      .boundary(Face.Z_MIN, Boundary.PrescribedTemperature.of(AMBIENT))
                      .thinResistance(ThinResistance.around(Set.of("cup"), 0.05))
                      .source("cup", TimeFunction.constant(3))
                      .build())
              .field();
      double rise = field.mean("cup") - field.mean("fill");
      // what the bodies themselves resist is about 1e-4 of the wall; ends as right as the volume
      assertEquals(3 * 0.05 / area, rise, 1e-3 * rise);
    }
  }

  @Test
  void infiniteCylinderCoolsAsTheSeries() {
    double fourier = 0.2;
    for (double biot : new double[] {0.1, 1, 10}) {
      // of a step of 10 K, for 4, 8 and 16 cells to the radius
      double[] allowed = {0.04, 0.04, 0.008};
      int grid = 0;
      for (int cells : new int[] {4, 8, 16}) {
        TransientSolution solution =
            cool(
                rod(MeshControl.uniform(RADIUS / cells), biot * BODY.conductivity() / RADIUS),
                fourier);
        double centre = AMBIENT + 10 * CYLINDER.cooling(biot, fourier, 0);
        double surface = AMBIENT + 10 * CYLINDER.cooling(biot, fourier, 1);
        assertEquals(centre, solution.last("centre"), allowed[grid]);
        assertEquals(surface, solution.last("surface"), allowed[grid]);
        assertTrue(solution.ledger().closes());
        grid++;
      }
    }
  }

  /** The product of the series of cylinder and slab; Bi of the slab is for half its length. */
  @Test
  void shortCylinderCoolsAsTheProduct() {
    double fourier = 0.2;
    double film = BODY.conductivity() / RADIUS;
    double half = 0.04;
    double slab = SLAB.cooling(half / RADIUS, fourier * RADIUS * RADIUS / (half * half), 0);
    double slabEnd = SLAB.cooling(half / RADIUS, fourier * RADIUS * RADIUS / (half * half), 1);
    // of a step of 10 K; the rim is a corner
    double[] allowed = {0.09, 0.045, 0.015};
    int grid = 0;
    for (int cells : new int[] {4, 8, 16}) {
      ConductionProblem.Builder problem =
          ConductionProblem.builder(
                  new Layout(
                      List.of(room(-0.06, 0.05), cylinder("rod", RADIUS, -half, half, BODY))),
                  MeshControl.uniform(RADIUS / cells))
              .boundary("room", Boundary.Convection.of(film, AMBIENT));
      TransientSolution solution = cool(problem, fourier);
      double centre = AMBIENT + 10 * CYLINDER.cooling(1, fourier, 0) * slab;
      double rim = AMBIENT + 10 * CYLINDER.cooling(1, fourier, 1) * slabEnd;
      assertEquals(centre, solution.last("centre"), allowed[grid]);
      assertEquals(rim, solution.last("least"), allowed[grid]);
      assertTrue(solution.ledger().closes());
      grid++;
    }
  }

  /** Cools by a step of 10 K up to a Fourier number. */
  private static TransientSolution cool(ConductionProblem.Builder problem, double fourier) {
    TransientSolution solution =
        TransientSolver.solve(
            problem.initial(AMBIENT + 10).build(),
            List.of(
                new Probe.At("centre", new Point(0, 0, 0)),
                new Probe.SurfaceMean("surface", "room"),
                new Probe.Minimum("least", "rod"),
                new Probe.Maximum("most", "rod")),
            new double[] {fourier * RADIUS * RADIUS / BODY.diffusivity()},
            IntegratorSettings.adaptive(1e-4));
    assertTrue(solution.outcome().isCompleted());
    assertTrue(solution.last("least") >= AMBIENT && solution.last("most") <= AMBIENT + 10);
    return solution;
  }
}
