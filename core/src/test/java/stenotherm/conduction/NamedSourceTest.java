package stenotherm.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static stenotherm.conduction.Bodies.assertRefused;
import static stenotherm.conduction.Bodies.slice;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.base.TimeFunction;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.FacePatch;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;

/** Sources with a name of their own, within several blocks. */
class NamedSourceTest {
  private static final MeshControl COARSE = MeshControl.uniform(0.02);

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
        () -> builder.source("xMin", Set.of("foam")));
    assertRefused("source name: must not be blank", () -> builder.source(" ", Set.of("foam")));
    assertRefused("source 'all': needs at least one block", () -> builder.source("all", Set.of()));
    builder.source("wet", Set.of("board"));
    assertRefused(
        "source 'wet': occurs twice; every source needs its own name",
        () -> builder.source("wet", Set.of("foam")));
    assertRefused(
        "block: there is no \"form\". Did you mean \"foam\"?",
        () ->
            HeatNetwork.builder(Bodies.wall(), COARSE)
                .source("lost", Set.of("foam", "form"))
                .build());
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
        "source 'any': heats 'room', which is an environment; only solid blocks can be heated",
        () -> builder.source("any", Set.of("foam", "room")).build());
  }

  @Test
  void sameBodyHasItsSourcesInTheSamePlace() {
    HeatNetwork one =
        HeatNetwork.builder(Bodies.wall(), COARSE).source("any", Set.of("foam")).build();
    HeatNetwork other =
        HeatNetwork.builder(Bodies.wall(), COARSE).source("any", Set.of("board")).build();
    FullEngine engine = new FullEngine(one, List.of(), 290, IntegratorSettings.standard());
    assertRefused("other network: has the source 'any' elsewhere", () -> engine.use(other));
  }
}
