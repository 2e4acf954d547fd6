package stenotherm.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static stenotherm.conduction.Bodies.assertRefused;
import static stenotherm.conduction.Bodies.slice;

import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.base.TimeFunction;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;

class HeatNetworkTest {
  private static final MeshControl MESH = MeshControl.uniform(0.01);

  private static Layout roomBesideWall() {
    return new Layout(
        List.of(
            new Block.Solid("foam", slice(0, 0.1), Bodies.FOAM),
            new Block.Environment("room", slice(0.06, 0.1))));
  }

  @Test
  void environmentNeedsABoundary() {
    assertRefused(
        "environment 'room': has no boundary; say how heat passes its surface",
        () -> HeatNetwork.builder(roomBesideWall(), MESH).build());
  }

  @Test
  void solidBlockIsNoEnvironment() {
    assertRefused(
        "boundary 'foam': is a solid block, not an environment",
        () -> HeatNetwork.builder(roomBesideWall(), MESH).boundary("foam", BoundaryKind.FLUX));
  }

  @Test
  void unknownBlocksAreNamed() {
    String message = "block: there is no \"rom\". Did you mean \"room\"?";
    HeatNetworkBuilder builder = HeatNetwork.builder(roomBesideWall(), MESH);
    assertRefused(message, () -> builder.boundary("rom", BoundaryKind.CONVECTION));
    assertRefused(
        message, () -> builder.thinResistance(ThinResistance.between("foam", "rom", 0.1)));
    builder.boundary("room", BoundaryKind.CONVECTION).source("rom");
    assertRefused(message, builder::build);
  }

  @Test
  void sourceNeedsSolidCells() {
    Layout covered =
        new Layout(
            List.of(
                new Block.Solid("foam", slice(0, 0.1), Bodies.FOAM),
                new Block.Solid("hidden", slice(0, 0.02), Bodies.WATER),
                new Block.Solid("cover", slice(0, 0.04), Bodies.BOARD)));
    assertRefused(
        "source 'hidden': has no cells left; later blocks override all of it",
        () -> HeatNetwork.builder(covered, MESH).source("hidden").build());
    assertRefused(
        "source 'room': is an environment; only solid blocks can be heated",
        () ->
            HeatNetwork.builder(roomBesideWall(), MESH)
                .boundary("room", BoundaryKind.CONVECTION)
                .source("room")
                .build());
  }

  @Test
  void boundaryNeedsASolidCell() {
    assertRefused(
        "boundary 'xMax': touches no solid cell, so that no heat could pass it",
        () ->
            HeatNetwork.builder(roomBesideWall(), MESH)
                .boundary("room", BoundaryKind.CONVECTION)
                .boundary(Face.X_MAX, BoundaryKind.CONVECTION)
                .build());
  }

  @Test
  void portsComeInOrderWithTheirSizes() {
    HeatNetwork network =
        HeatNetwork.builder(roomBesideWall(), MESH)
            .boundary("room", BoundaryKind.TEMPERATURE)
            .boundary(Face.Y_MAX, BoundaryKind.FLUX)
            .boundary(Face.X_MIN, BoundaryKind.CONVECTION)
            .boundary(Face.Z_MIN, BoundaryKind.FLUX)
            .boundary(Face.Z_MIN, BoundaryKind.ADIABATIC)
            .source("foam")
            .build();
    List<Port.BoundaryPort> ports = network.boundaryPorts();
    assertEquals(List.of("xMin", "yMax", "room"), ports.stream().map(Port::name).toList());
    assertEquals(List.of("K", "W/m2", "K"), ports.stream().map(Port::unit).toList());
    assertEquals(1, ports.get(0).area(), 1e-12);
    assertEquals(0.06, ports.get(1).area(), 1e-12);
    assertEquals(1, ports.get(2).area(), 1e-12);
    assertEquals(0.06, network.sourcePorts().get(0).volume(), 1e-12);
    assertEquals("W", network.sourcePorts().get(0).unit());
    assertEquals(2, network.boundaryIndex("room"));
    assertEquals(0, network.sourceIndex("foam"));
    assertRefused(
        "boundary: 'zMin' is adiabatic: no heat passes it, so it has no port",
        () -> network.boundaryIndex("zMin"));
    assertRefused("source: there is no \"lamp\". Known: foam.", () -> network.sourceIndex("lamp"));
  }

  @Test
  void capacityIsThatOfTheSolids() {
    HeatNetwork network =
        HeatNetwork.builder(roomBesideWall(), MESH)
            .boundary("room", BoundaryKind.ADIABATIC)
            .build();
    assertEquals(0.06 * 20 * 1450, network.totalCapacity(), 1e-9);
    assertEquals(List.of(), network.boundaryPorts());
  }

  /**
   * A box all of whose outside is air: the surface of the environment is the surface of the box.
   */
  @Test
  void environmentSurroundsABlock() {
    Box inner = new Box(new Point(0.1, 0.1, 0.1), new Point(0.3, 0.2, 0.4));
    Layout layout =
        new Layout(
            List.of(
                new Block.Solid("domain", Box.ofSize(0.5, 0.5, 0.5), Bodies.FOAM),
                new Block.Environment("air", Box.ofSize(0.5, 0.5, 0.5)),
                new Block.Solid("box", inner, Bodies.WATER)));
    ConductionProblem problem =
        ConductionProblem.builder(layout, MeshControl.uniform(0.05))
            .boundary("air", Boundary.Convection.of(8, 300))
            .source("box", TimeFunction.constant(4))
            .build();
    double area = 2 * (0.2 * 0.1 + 0.1 * 0.3 + 0.2 * 0.3);
    HeatNetwork network = problem.network();
    assertEquals(area, network.boundaryPorts().get(0).area(), 1e-12);
    assertEquals(network.grid().cellsOf(2).length, network.solidCellCount());
    SteadySolution solution = SteadySolver.solve(problem);
    // all that the box gives off passes its film
    assertEquals(300 + 4 / (8 * area), solution.field().surfaceMean("air"), 1e-6);
  }

  @Test
  void radiusZeroAndAnglesAreNoSurfaces() {
    Block rod = new Block.Solid("rod", Box.ofSize(1, Math.PI, 1), Bodies.FOAM);
    HeatNetworkBuilder cylinder =
        HeatNetwork.builder(Layout.cylindrical(List.of(rod)), MeshControl.uniform(0.5));
    assertRefused(
        "boundary 'xMin': lies at radius 0, where there is no surface",
        () -> cylinder.boundary(Face.X_MIN, BoundaryKind.CONVECTION).build());
    cylinder.boundary(Face.X_MIN, BoundaryKind.ADIABATIC);
    assertRefused(
        "boundary 'yMax': is no surface in CYLINDRICAL coordinates: nothing passes it",
        () -> cylinder.boundary(Face.Y_MAX, BoundaryKind.CONVECTION).build());
    HeatNetworkBuilder ball =
        HeatNetwork.builder(Layout.spherical(List.of(rod)), MeshControl.uniform(0.5));
    assertRefused(
        "boundary 'zMin': is no surface in SPHERICAL coordinates: nothing passes it",
        () -> ball.boundary(Face.Z_MIN, BoundaryKind.TEMPERATURE).build());
  }
}
