package stenotherm.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.FacePatch;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.material.Material;

class FacePatchesTest {
  private static final Box BOX = Box.ofSize(0.2, 0.1, 0.05);
  private static final Material MATERIAL = Material.of("slab", 0.5, 100, 1000);

  /** The half puts a grid line in the middle, as two half patches do. */
  private static final Layout LAYOUT =
      new Layout(
          List.of(
              new Block.Solid("slab", BOX, MATERIAL),
              new Block.Solid("half", Box.ofSize(0.1, 0.1, 0.05), MATERIAL)));

  private static final MeshControl MESH = MeshControl.uniform(0.01);

  private static final Boundary WARM = Boundary.Convection.of(12, 310);
  private static final Boundary COLD = Boundary.Convection.of(8, 280);

  private static FacePatch part(String name, Face face, double from, double to) {
    return FacePatch.part(name, face, BOX, new Range(from, to), new Range(0, 1));
  }

  private static ConductionProblem.Builder slab() {
    return ConductionProblem.builder(LAYOUT, MESH).boundary(Face.Z_MIN, COLD);
  }

  /** The same grid, so that only sums are in another order. */
  @Test
  void twoHalvesOfAFaceAreTheFace() {
    SteadySolution whole =
        SteadySolver.solve(slab().boundary(Face.Z_MAX, WARM).boundary(Face.X_MIN, COLD).build());
    SteadySolution halves =
        SteadySolver.solve(
            slab()
                .boundary(part("left", Face.Z_MAX, 0, 0.5), WARM)
                .boundary(part("right", Face.Z_MAX, 0.5, 1), WARM)
                .boundary(Face.X_MIN, COLD)
                .build());
    assertEquals(
        whole.heatFlows().get("zMax"),
        halves.heatFlows().get("left") + halves.heatFlows().get("right"),
        1e-9 * whole.heatFlows().get("zMax"));
    for (Point point : List.of(new Point(0, 0, 0), new Point(0.1, 0.05, 0.05), BOX.centre())) {
      assertEquals(whole.field().at(point), halves.field().at(point), 1e-7);
    }
  }

  /** A face that patches cover altogether has no port left, whatever it was set to. */
  @Test
  void aCoveredFaceCarriesNoHeat() {
    ConductionProblem problem =
        slab()
            .boundary(Face.Z_MAX, COLD)
            .boundary(part("left", Face.Z_MAX, 0, 0.5), WARM)
            .boundary(part("right", Face.Z_MAX, 0.5, 1), WARM)
            .build();
    assertEquals(
        List.of("zMin", "left", "right"),
        problem.network().boundaryPorts().stream().map(Port::name).toList());
    assertTrue(
        assertThrows(InvalidInputException.class, () -> problem.network().boundaryIndex("zMax"))
            .getMessage()
            .contains("'zMax' is covered by patches"));
    assertTrue(SteadySolver.solve(problem).heatFlows().get("left") > 0);
  }

  @Test
  void laterPatchesOverrideEarlierOnes() {
    HeatNetwork network =
        HeatNetwork.builder(LAYOUT, MESH)
            .boundary(Face.Z_MAX, BoundaryKind.CONVECTION)
            .patch(part("wide", Face.Z_MAX, 0.1, 0.8), BoundaryKind.CONVECTION)
            .patch(part("over", Face.Z_MAX, 0.6, 0.95), BoundaryKind.TEMPERATURE)
            .patch(part("insulated", Face.Z_MAX, 0.2, 0.3), BoundaryKind.ADIABATIC)
            .build();
    List<Port.BoundaryPort> ports = network.boundaryPorts();
    assertEquals(List.of("zMax", "wide", "over"), ports.stream().map(Port::name).toList());
    assertEquals(BoundaryKind.TEMPERATURE, ports.get(2).kind());
    double area = BOX.area(Face.Z_MAX);
    assertEquals(0.15 * area, ports.get(0).area(), 1e-12);
    assertEquals(0.4 * area, ports.get(1).area(), 1e-12);
    assertEquals(0.35 * area, ports.get(2).area(), 1e-12);
  }

  @Test
  void gridLinesFollowTheEdges() {
    HeatNetwork network =
        HeatNetwork.builder(LAYOUT, MESH)
            .boundary(Face.Z_MIN, BoundaryKind.CONVECTION)
            .patch(part("odd", Face.Z_MAX, 1 / 3.0, 0.777), BoundaryKind.FLUX)
            .build();
    for (double edge : new double[] {0.2 / 3, 0.2 * 0.777}) {
      assertEquals(2, network.grid().positionsAt(Axis.X, edge).length, "at " + edge);
    }
    assertEquals(1, network.grid().count(Axis.Y), "nothing varies along y");
  }

  /** Heat that a flux patch brings leaves through the other face. */
  @Test
  void fluxesCountByTheAreaOfThePatch() {
    SteadySolution solution =
        SteadySolver.solve(
            slab()
                .boundary(
                    FacePatch.part(
                        "lamp", Face.Z_MAX, BOX, new Range(0.1, 0.35), new Range(0.2, 0.8)),
                    Boundary.PrescribedFlux.of(400))
                .build());
    double power = 400 * 0.05 * 0.06;
    assertEquals(power, solution.heatFlows().get("lamp"), 1e-9);
    assertEquals(-power, solution.heatFlows().get("zMin"), 1e-6);
  }

  @Test
  void aMirroredPatchHasTheMirroredField() {
    TemperatureField left =
        SteadySolver.solve(slab().boundary(part("sun", Face.Z_MAX, 0.1, 0.4), WARM).build())
            .field();
    TemperatureField right =
        SteadySolver.solve(slab().boundary(part("sun", Face.Z_MAX, 0.6, 0.9), WARM).build())
            .field();
    for (double x : new double[] {0, 0.031, 0.08, 0.1, 0.15}) {
      assertEquals(
          left.at(new Point(x, 0.05, 0.05)), right.at(new Point(0.2 - x, 0.05, 0.05)), 1e-7);
    }
    assertEquals(left.surfaceMean("sun"), right.surfaceMean("sun"), 1e-7);
  }

  @Test
  void patchesThatDoNotFitAreRefused() {
    HeatNetworkBuilder builder = HeatNetwork.builder(LAYOUT, MESH);
    assertRefused(
        "sticks out of its face at xMax by 20.00 mm",
        builder,
        new FacePatch("a", Face.Z_MAX, new Box(new Point(0, 0, 0), new Point(0.22, 0.1, 0.05))));
    Box inside = new Box(new Point(0, 0, 0), new Point(0.1, 0.1, 0.04));
    assertRefused(
        "ends before the face zMax by 10.00 mm", builder, new FacePatch("a", Face.Z_MAX, inside));
    Box above = new Box(new Point(0, 0, 0.06), new Point(0.1, 0.1, 0.07));
    assertRefused(
        "lies beyond the face zMax by 10.00 mm", builder, new FacePatch("a", Face.Z_MAX, above));
    assertRefused("is also the name of a block", builder, part("slab", Face.Z_MAX, 0, 1));
    builder.patch(part("a", Face.Z_MAX, 0, 0.5), BoundaryKind.FLUX);
    assertRefused("occurs twice", builder, part("a", Face.X_MAX, 0, 1));
    builder.patch(part("b", Face.Z_MAX, 0, 0.6), BoundaryKind.FLUX);
    String message = assertThrows(InvalidInputException.class, builder::build).getMessage();
    assertTrue(message.startsWith("patch 'a': covers no solid cell"), message);
  }

  private static void assertRefused(String expected, HeatNetworkBuilder builder, FacePatch patch) {
    String message =
        assertThrows(
                InvalidInputException.class, () -> builder.patch(patch, BoundaryKind.CONVECTION))
            .getMessage();
    assertTrue(message.contains(expected), message);
  }
}
