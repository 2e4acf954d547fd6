package stenotherm.modal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stenotherm.base.InvalidInputException;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.InitialState;
import stenotherm.conduction.Port;
import stenotherm.conduction.Probe;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.material.Material;
import stenotherm.material.Materials;

class ReducedModelTest {
  private static final double[] NONE = {};

  private static HeatNetwork cube(Material material) {
    Box box = new Box(new Point(0, 0, 0), new Point(0.1, 0.1, 0.1));
    return HeatNetwork.builder(
            new Layout(List.of(new Block.Solid("pack", box, material))), MeshControl.uniform(0.02))
        .source("pack")
        .build();
  }

  /** Nothing fixes the level: the heat put in stays, and the slowest rate is none. */
  @Test
  void closedBodyKeepsItsHeat() {
    Material material = Material.of("any", 0.5, 1000, 4000);
    ReducedModel model =
        ReducedModel.builder(cube(material), List.of(new Probe.Mean("mean", "pack")))
            .spanning(NONE, NONE)
            .build();
    assertEquals(0, Arrays.stream(model.spanned().get(0).rates()).min().orElseThrow());
    ModalEngine engine = model.engine(InitialState.uniform(300));
    engine.advance(1000, new double[] {0}, new double[] {8});
    double[] mean = new double[1];
    engine.read(mean);
    assertEquals(301, mean[0], 1e-9);
    assertEquals(4000, engine.ledger().sources().get("pack"), 1e-9);
    assertTrue(engine.ledger().closes());
  }

  @Test
  void whatMeltsIsRefused() {
    assertRefused(
        "network: is not linear, since 'pack' can melt; step every cell instead",
        () ->
            ReducedModel.builder(cube(Materials.ICE_PACK), List.of()).spanning(NONE, NONE).build());
  }

  private static void assertRefused(String message, Runnable call) {
    assertEquals(message, assertThrows(InvalidInputException.class, call::run).getMessage());
  }

  @Test
  void whatDoesNotFitIsRefused() {
    RandomBody body = new RandomBody(1, 4);
    assertRefused(
        "configurations: there is none; a model needs coefficients that its basis spans",
        () -> body.builder().build());
    double[] films = body.films();
    assertRefused(
        "coefficients: 2 values given, 6 needed",
        () -> body.builder().spanning(new double[2], RandomBody.GIVEN));
    assertRefused(
        "factors: 1 values given, 2 needed",
        () -> body.builder().spanning(films, new double[] {1}));
    assertRefused(
        "varying blocks: must be named before the first configuration is given",
        () -> body.builder().spanning(films, RandomBody.GIVEN).varying(List.of()));
    for (List<String> blocks : List.of(List.of("fill", "fill"), List.of("nothing"))) {
      assertThrows(InvalidInputException.class, () -> body.builder().varying(blocks));
    }
    ReducedModel model = body.model(body.films());
    assertRefused(
        "initial temperature of warmer: differs from that of the rest, but the model was built for"
            + " [animal] alone",
        () -> model.engine(InitialState.uniform(290).with("warmer", 300)));
    ModalEngine engine = model.engine(InitialState.uniform(290));
    double[] inputs = RandomBody.inputs(new Random(1));
    assertRefused(
        "duration: 0 s must be a finite number above 0", () -> engine.advance(0, inputs, inputs));
    assertRefused(
        "inputs at end: 2 values given, 8 needed", () -> engine.advance(1, inputs, new double[2]));
    double[] wrong = inputs.clone();
    wrong[wrong.length - 1] = Double.NaN;
    Port last = engine.inputs().get(wrong.length - 1);
    assertRefused(
        "input '" + last.name() + "': NaN " + last.unit() + " is not a finite number",
        () -> engine.advance(1, inputs, wrong));
    assertEquals(0, engine.time());
  }

  /** By the builder, and by a model that is there. */
  @Test
  void coefficientsThatCannotBeAreRefused() {
    RandomBody body = new RandomBody(1, 4);
    ReducedModel model = body.model(body.films());
    for (double wrong : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
      double[] films = body.films();
      films[3] = wrong;
      assertRefusedAs(
          "surface coefficient", () -> body.builder().spanning(films, RandomBody.GIVEN));
      assertRefusedAs("surface coefficient", () -> model.configuration(films, RandomBody.GIVEN));
      assertRefusedAs(
          "surface coefficient",
          () -> model.engine(InitialState.uniform(290)).useCoefficients(films));
    }
    double[] films = body.films();
    for (double wrong : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
      double[] factors = {1, wrong};
      assertRefusedAs("factor", () -> body.builder().spanning(films, factors));
      assertRefusedAs("factor", () -> model.configuration(films, factors));
    }
    assertRefused(
        "coefficients: 2 values given, 6 needed",
        () -> model.configuration(new double[2], RandomBody.GIVEN));
    assertRefused(
        "factors: 3 values given, 2 needed", () -> model.configuration(films, new double[3]));
    ReducedModel other = body.model(films);
    assertRefused(
        "configuration: belongs to another model",
        () -> model.engine(InitialState.uniform(290)).use(other.spanned().get(0)));
  }

  private static void assertRefusedAs(String field, Runnable call) {
    String message = assertThrows(InvalidInputException.class, call::run).getMessage();
    assertTrue(message.startsWith(field), message);
  }

  /** They follow the film at once, which a basis of the network as it was given does not know. */
  @Test
  void outputsOnAnOuterSurfaceAreRefused() {
    RandomBody body = new RandomBody(1, 4);
    for (Probe probe :
        List.of(new Probe.At("corner", new Point(0, 0, 0)), new Probe.Minimum("coldest", "foam"))) {
      String message =
          assertThrows(
                  InvalidInputException.class,
                  () ->
                      ReducedModel.builder(body.network, List.of(probe))
                          .spanning(body.films(), NONE)
                          .build())
              .getMessage();
      assertTrue(message.contains("lies on the outer surface at 'xMin'"), message);
      assertTrue(
          message.contains(probe instanceof Probe.At ? "'corner'" : "extreme of a block"), message);
    }
  }

  @Test
  void nothingFlowsBeforeTheFirstInterval() {
    RandomBody body = new RandomBody(2, 4);
    ModalEngine engine = body.model(body.films()).engine(InitialState.uniform(290));
    double[] values = new double[RandomBody.PROBES.size()];
    engine.read(values);
    assertArrayEquals(new double[] {290, 290, 290, 290, 290, 290, 0}, values, 1e-9);
    assertTrue(engine.ledger().closes());
  }

  @Test
  void wholeFieldAgreesWithTheOutputs() {
    RandomBody body = new RandomBody(3, 4);
    double[] films = body.films();
    ReducedModel model = body.model(films);
    ModalEngine engine = model.engine(InitialState.uniform(290).with("animal", 295));
    double[] inputs = RandomBody.inputs(new Random(3));
    engine.advance(2000, inputs, inputs);
    double[] values = new double[RandomBody.PROBES.size()];
    engine.read(values);
    assertEquals(engine.field().mean("animal"), values[0], 1e-9);
    assertEquals(engine.field().surfaceMean("zMax"), values[5], 1e-9);
    assertExtremes(engine, values);
  }

  /** What the chosen nodes may miss of the extremes of the field [K]. */
  private static void assertExtremes(ModalEngine engine, double[] values) {
    // half of what extremes may be off by
    assertEquals(engine.field().minimum("animal"), values[2], 0.025);
    assertEquals(engine.field().maximum("animal"), values[3], 0.025);
    assertEquals(engine.field().maximum("warmer"), values[4], 0.025);
  }

  /** On the way, where everything has just jumped. */
  @Test
  void extremesMissLittle() {
    for (int seed = 1; seed < 5; seed++) {
      RandomBody body = new RandomBody(seed, 4);
      ModalEngine engine =
          body.model(body.films()).engine(InitialState.uniform(290).with("animal", 294));
      double[] values = new double[RandomBody.PROBES.size()];
      Random random = new Random(seed);
      double[] from = RandomBody.inputs(random);
      for (int step = 0; step < 40; step++) {
        if (step % 10 == 0) {
          from = RandomBody.inputs(random);
        }
        engine.advance(step % 10 < 5 ? 120 : 1800, from, from);
        engine.read(values);
        assertExtremes(engine, values);
      }
    }
  }

  /** Water that evaporates begins within minutes, so that steady states alone do not do. */
  @Test
  void aWeakSourceIsFollowedFromMinutesOn() {
    for (int seed = 1; seed < 7; seed++) {
      RandomBody body = new RandomBody(seed, 5);
      double[] films = body.films();
      ModalEngine weak = inOneAir(body, films, List.of("animal"));
      ModalEngine strong = inOneAir(body, films, List.of());
      double[] inputs = {290, 290, 290, 290, 290, 290, 0, -0.1};
      double[] values = new double[RandomBody.PROBES.size()];
      double[] expected = values.clone();
      for (int step = 0; step < 40; step++) {
        weak.advance(300, inputs, inputs);
        strong.advance(300, inputs, inputs);
        weak.read(values);
        strong.read(expected);
        assertEquals(expected[2], values[2], 1e-3);
        assertEquals(expected[3], values[3], 1e-3);
      }
      assertTrue(expected[0] < 289, expected[0] + " K");
    }
  }

  private static ModalEngine inOneAir(RandomBody body, double[] films, List<String> weak) {
    return ReducedModel.builder(body.network, RandomBody.PROBES)
        .varying(RandomBody.VARYING)
        .together(Set.of("xMin", "xMax", "yMin", "yMax", "zMin", "zMax"))
        .weak(weak)
        .spanning(films, RandomBody.GIVEN)
        .build()
        .engine(InitialState.uniform(290));
  }

  /** The extreme moves when a film goes: one configuration's nodes do not do for all. */
  @Test
  void extremesMissLittleUnderEveryConfiguration() {
    double[] still = {8, 8, 8, 8, 8, 8};
    double[] insulatedFloor = {30, 30, 30, 30, 0, 30};
    RandomBody body = new RandomBody(6, 4);
    Set<String> faces =
        body.network.boundaryPorts().stream()
            .map(Port.BoundaryPort::name)
            .collect(Collectors.toSet());
    ReducedModel model =
        body.builder()
            .together(faces)
            .spanning(still, RandomBody.GIVEN)
            .spanning(insulatedFloor, RandomBody.GIVEN)
            .build();
    ModalEngine engine = model.engine(InitialState.uniform(290));
    engine.use(model.spanned().get(1));
    double[] inputs = {310, 310, 310, 310, 310, 310, 1, 0};
    double[] values = new double[RandomBody.PROBES.size()];
    for (int step = 0; step < 30; step++) {
      engine.advance(600, inputs, inputs);
      engine.read(values);
      assertExtremes(engine, values);
    }
  }

  /** A configuration reads the same whether its outputs are put into its modes or not. */
  @Test
  void manyReadingsAreTheSameAsFew() {
    RandomBody body = new RandomBody(3, 4);
    ReducedModel model = body.model(body.films());
    ModalConfiguration few = model.configuration(body.films(), new double[] {1.1, 0.8});
    double[] inputs = RandomBody.inputs(new Random(3));
    double[][] values = new double[2][RandomBody.PROBES.size()];
    for (int run = 0; run < 2; run++) {
      ModalEngine engine = model.engine(InitialState.uniform(290));
      engine.use(run == 0 ? few : few.forManyReadings());
      engine.advance(2000, inputs, inputs);
      engine.read(values[run]);
    }
    assertArrayEquals(values[0], values[1], 1e-9);
  }

  @Test
  void anEngineWithoutEstimatesReadsTheSame() {
    RandomBody body = new RandomBody(3, 4);
    ReducedModel model = body.model(body.films());
    ModalEngine engine = model.engine(InitialState.uniform(290));
    ModalEngine swift = model.engineWithoutEstimates(InitialState.uniform(290));
    double[] inputs = RandomBody.inputs(new Random(3));
    double[] expected = new double[RandomBody.PROBES.size()];
    double[] values = new double[RandomBody.PROBES.size()];
    engine.advance(900, inputs, inputs);
    swift.advance(900, inputs, inputs);
    engine.read(expected);
    swift.read(values);
    assertArrayEquals(expected, values);
    assertEquals(
        "the engine was made without error estimates",
        assertThrows(IllegalStateException.class, swift::errorEstimates).getMessage());
  }

  @Test
  void steppingMakesNoObjects() {
    RandomBody body = new RandomBody(4, 4);
    ModalEngine engine = body.model(body.films()).engine(InitialState.uniform(290));
    double[] inputs = RandomBody.inputs(new Random(4));
    double[] values = new double[RandomBody.PROBES.size()];
    var threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
    long before = 0;
    for (int step = 0; step < 200; step++) {
      if (step == 100) {
        before = threads.getCurrentThreadAllocatedBytes();
      }
      engine.advance(step % 2 == 0 ? 900 : 600, inputs, inputs);
      engine.read(values);
    }
    // what the measurement itself takes
    assertTrue(threads.getCurrentThreadAllocatedBytes() - before < 1000);
  }
}
