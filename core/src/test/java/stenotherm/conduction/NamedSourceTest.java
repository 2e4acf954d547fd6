package stenotherm.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static stenotherm.conduction.Bodies.assertRefused;
import static stenotherm.conduction.Bodies.slice;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.TimeFunction;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.FacePatch;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.grid.Shape;

/** Sources with a name of their own: within several blocks, or on a surface between blocks. */
class NamedSourceTest {
  private static final MeshControl COARSE = MeshControl.uniform(0.02);

  /** Relative; the steady solver's tolerance is 1e-9 K. */
  private static final double SOLVED = 1e-9;

  private static final InnerSurface FOAM_TO_BOARD = InnerSurface.of("foam", Face.X_MAX, "board");

  /** Foam under a film at 290 K, a resistance, board under a film at 280 K. */
  private static ConductionProblem.Builder wall(double thinResistance) {
    return ConductionProblem.builder(Bodies.wall(), COARSE)
        .boundary(Face.X_MIN, Boundary.Convection.of(10, 290))
        .boundary(Face.X_MAX, Boundary.Convection.of(20, 280))
        .thinResistance(ThinResistance.between("foam", "board", thinResistance));
  }

  /** Temperature at which what leaves the surface to both sides is the power. */
  private static double surface(double power, double towardFoam, double towardBoard) {
    return (power + 290 / towardFoam + 280 / towardBoard) / (1 / towardFoam + 1 / towardBoard);
  }

  @Test
  void heatOnASurfaceIsExactWithinLayers() {
    for (double thin : new double[] {0, 0.25}) {
      SteadySolution solution =
          SteadySolver.solve(
              wall(thin).source("wet", FOAM_TO_BOARD, TimeFunction.constant(300)).build());
      double towardFoam = 0.03 / 0.036 + 1.0 / 10;
      double towardBoard = thin + 0.01 / 0.06 + 1.0 / 20;
      double surface = surface(300, towardFoam, towardBoard);
      TemperatureField field = solution.field();
      double fluxToBoard = (surface - 280) / towardBoard;
      assertEquals(surface, field.maximum("foam"), SOLVED * surface);
      double ofBoard = surface - thin * fluxToBoard;
      assertEquals(ofBoard, field.maximum("board"), SOLVED * surface);
      assertEquals(surface, field.innerSurfaceMean(FOAM_TO_BOARD), SOLVED * surface);
      assertEquals(
          ofBoard,
          field.innerSurfaceMean(InnerSurface.of("board", Face.X_MIN, "foam")),
          SOLVED * surface);
      assertEquals((surface + ofBoard) / 2, field.at(Bodies.point(0.03)), SOLVED * surface);
      double outer = 290 + (surface - 290) / towardFoam / 10;
      assertEquals((surface + outer) / 2, field.mean("foam"), SOLVED * surface);
      assertEquals(-fluxToBoard, solution.heatFlows().getOrDefault("xMax", 0.0), 1e-7);
    }
  }

  /** Where the resistance lies beyond the surface, the heat stays on this side of it. */
  @Test
  void surfaceBelongsToItsBlocks() {
    double thin = 1000;
    SteadySolution solution =
        SteadySolver.solve(
            wall(thin)
                .source(
                    "wet",
                    new InnerSurface(Set.of("board"), Face.X_MIN, Set.of()),
                    TimeFunction.constant(300))
                .build());
    double towardFoam = thin + 0.03 / 0.036 + 1.0 / 10;
    double surface = surface(300, towardFoam, 0.01 / 0.06 + 1.0 / 20);
    assertEquals(surface, solution.field().maximum("board"), SOLVED * surface);
  }

  @Test
  void sharesFollowTheConductivities() {
    HeatNetwork network =
        HeatNetwork.builder(Bodies.wall(), COARSE)
            .boundary(Face.X_MIN, BoundaryKind.CONVECTION)
            .boundary(Face.X_MAX, BoundaryKind.CONVECTION)
            .source("wet", FOAM_TO_BOARD)
            .build();
    HeatNetwork changed = network.withConductivities(Map.of("foam", 0.9));
    assertShares(network, 0.036);
    assertShares(changed, 0.9);
    FullEngine engine =
        new FullEngine(
            network,
            List.of(new Probe.InnerSurfaceMean("surface", FOAM_TO_BOARD)),
            285,
            IntegratorSettings.standard());
    engine.useCoefficients(new double[] {10, 20});
    double[] inputs = {290, 280, 300};
    double[] value = new double[1];
    // a day is many time constants of an hour
    engine.advance(86_400, inputs, inputs);
    engine.read(value);
    double towardBoard = 0.01 / 0.06 + 1.0 / 20;
    assertEquals(surface(300, 0.03 / 0.036 + 0.1, towardBoard), value[0], 1e-3);
    engine.use(changed);
    engine.advance(86_400, inputs, inputs);
    engine.read(value);
    assertEquals(surface(300, 0.03 / 0.9 + 0.1, towardBoard), value[0], 1e-3);
    HeatLedger ledger = engine.ledger();
    assertEquals(300.0 * 2 * 86_400, ledger.sources().getOrDefault("wet", 0.0), 1e-6);
    assertEquals(true, ledger.closes());
  }

  private static void assertShares(HeatNetwork network, double ofFoam) {
    int before = network.sources().list().get(0).cell()[0];
    double toFoam = network.grid().width(Axis.X, before) / 2 / ofFoam;
    double toBoard = network.grid().width(Axis.X, before + 1) / 2 / 0.06;
    double[] share = network.sources().list().get(0).share();
    assertEquals(toBoard / (toFoam + toBoard), share[0], 1e-12);
    assertEquals(1, share[0] + share[1], 1e-15);
  }

  /** A brick on a plate: what it covers counts by area, on every grid. */
  @Test
  void surfaceIsWhereBlocksTouch() {
    Box brick = new Box(new Point(0.1, 0.2, 0.1), new Point(0.4, 0.4, 0.3));
    Layout layout =
        new Layout(
            List.of(
                new Block.Solid("plate", Box.ofSize(1, 1, 0.5), Bodies.FOAM),
                new Block.Environment("air", new Box(new Point(0, 0, 0.1), new Point(1, 1, 0.5))),
                new Block.Solid("brick", brick, Bodies.BOARD)));
    HeatNetwork network =
        HeatNetwork.builder(layout, MeshControl.graded(0.1, 0.02))
            .boundary("air", BoundaryKind.CONVECTION)
            .source("under", InnerSurface.of("plate", Face.Z_MAX, "brick"))
            .build();
    Port.SourcePort port = network.sourcePorts().get(0);
    assertEquals(0.06, port.area(), 1e-12);
    assertEquals(0, port.volume());
    assertEquals("W", port.unit());
    assertEquals(1, Arrays.stream(network.sources().list().get(0).share()).sum(), 1e-12);
  }

  /** The end of a rod has a true area that cells cut by its rim do not have. */
  @Test
  void roundEndsHaveTheirFaces() {
    Layout layout =
        new Layout(
            List.of(
                new Block.Solid("plate", Box.ofSize(0.2, 0.2, 0.3), Bodies.FOAM),
                new Block.Solid(
                    "rod",
                    new Box(new Point(0, 0, 0.1), new Point(0.2, 0.2, 0.3)),
                    Bodies.BOARD,
                    Shape.CYLINDER_Z)));
    HeatNetwork network =
        HeatNetwork.builder(layout, MeshControl.uniform(0.01))
            .source("end", InnerSurface.of("rod", Face.Z_MIN, "plate"))
            .source("rod")
            .build();
    double exact = Math.PI * 0.01;
    // cells belong to the rod by their centres: 20 across leave some per cent
    assertEquals(exact, network.sourcePorts().get(0).area(), 0.02 * exact);
    assertEquals(0, network.sourcePorts().get(1).area());
  }

  @Test
  void blocksShareByVolumeAndMayBeHeatedTwice() {
    Layout layout =
        new Layout(
            List.of(
                new Block.Solid("rest", slice(0, 0.1), Bodies.FOAM),
                new Block.Solid("one", slice(0, 0.02), Bodies.BOARD),
                new Block.Solid("two", slice(0.04, 0.1), Bodies.BOARD)));
    ConductionProblem.Builder builder =
        ConductionProblem.builder(layout, COARSE)
            .boundary(Face.X_MIN, Boundary.Convection.of(10, 290))
            .source("both", Set.of("one", "two"), TimeFunction.constant(8))
            .source("two", TimeFunction.constant(5));
    HeatNetwork network = builder.build().network();
    assertEquals(0.08, network.sourcePorts().get(0).volume(), 1e-12);
    assertEquals(List.of("both", "two"), network.sourcePorts().stream().map(Port::name).toList());
    SteadySolution together = SteadySolver.solve(builder.build());
    SteadySolution apart =
        SteadySolver.solve(
            ConductionProblem.builder(layout, COARSE)
                .boundary(Face.X_MIN, Boundary.Convection.of(10, 290))
                .source("one", TimeFunction.constant(2))
                .source("two", TimeFunction.constant(11))
                .build());
    assertEquals(apart.field().mean("two"), together.field().mean("two"), 1e-7);
    assertEquals(apart.field().mean("one"), together.field().mean("one"), 1e-7);
  }

  @Test
  void whatDoesNotFitIsRefused() {
    HeatNetworkBuilder builder = HeatNetwork.builder(Bodies.wall(), COARSE);
    assertRefused(
        "source 'foam': is the name of a block; a source of that name heats that block alone",
        () -> builder.source("foam", Set.of("board")));
    assertRefused(
        "source 'xMin': is the name of a face of the domain",
        () -> builder.source("xMin", FOAM_TO_BOARD));
    assertRefused("source name: must not be blank", () -> builder.source(" ", Set.of("foam")));
    assertRefused("source 'all': needs at least one block", () -> builder.source("all", Set.of()));
    builder.source("wet", FOAM_TO_BOARD);
    assertRefused(
        "source 'wet': occurs twice; every source needs its own name",
        () -> builder.source("wet", Set.of("foam")));
    assertRefused(
        "inner surface: 'foam' is on both sides",
        () -> InnerSurface.of("foam", Face.X_MAX, "foam"));
    assertRefused(
        "inner surface: needs at least one block",
        () -> new InnerSurface(Set.of(), Face.X_MAX, Set.of("foam")));
    assertRefused(
        "source 'lost': has no surface: nowhere does [foam] touch any of [board] across its xMin",
        () ->
            HeatNetwork.builder(Bodies.wall(), COARSE)
                .source("lost", InnerSurface.of("foam", Face.X_MIN, "board"))
                .build());
    assertRefused(
        "source 'lost': has no surface: nowhere does [board, foam] touch another solid block across"
            + " its xMin",
        () ->
            HeatNetwork.builder(Bodies.wall(), COARSE)
                .source("lost", new InnerSurface(Set.of("foam", "board"), Face.X_MIN, Set.of()))
                .build());
    assertRefused(
        "block: there is no block 'form'; there are foam, board",
        () ->
            HeatNetwork.builder(Bodies.wall(), COARSE)
                .source("lost", Set.of("foam", "form"))
                .build());
    assertRefused(
        "probe 'dew': has no surface: nowhere does [foam] touch any of [board] across its yMin",
        () ->
            new FullEngine(
                HeatNetwork.builder(Bodies.wall(), COARSE).build(),
                List.of(
                    new Probe.InnerSurfaceMean(
                        "dew", InnerSurface.of("foam", Face.Y_MIN, "board"))),
                290,
                IntegratorSettings.standard()));
    FacePatch patch =
        new FacePatch("wet", Face.X_MIN, new Box(new Point(0, 0, 0), new Point(0.01, 1, 1)));
    assertRefused(
        "source 'wet': is the name of a patch; every port needs its own",
        () -> builder.patch(patch, BoundaryKind.FLUX).build());
  }

  @Test
  void environmentsAreNotHeated() {
    Layout layout =
        new Layout(
            List.of(
                new Block.Solid("foam", slice(0, 0.1), Bodies.FOAM),
                new Block.Environment("room", slice(0.06, 0.1))));
    HeatNetworkBuilder builder =
        HeatNetwork.builder(layout, COARSE).boundary("room", BoundaryKind.CONVECTION);
    assertRefused(
        "source 'any': lies at 'room', an environment; an inner surface has solids on both sides",
        () ->
            HeatNetwork.builder(layout, COARSE)
                .boundary("room", BoundaryKind.CONVECTION)
                .source("any", InnerSurface.of("foam", Face.X_MAX, "room"))
                .build());
    assertRefused(
        "source 'any': heats 'room', which is an environment; only solid blocks can be heated",
        () -> builder.source("any", Set.of("foam", "room")).build());
  }

  @Test
  void sameBodyHasItsSourcesInTheSamePlace() {
    HeatNetwork one =
        HeatNetwork.builder(Bodies.wall(), COARSE).source("any", Set.of("foam")).build();
    HeatNetwork other =
        HeatNetwork.builder(Bodies.wall(), COARSE).source("any", FOAM_TO_BOARD).build();
    assertRefused(
        "other network: has the source 'any' elsewhere",
        () -> ReducibleNetwork.requireSameBody(one, other));
  }
}
