package stenotherm.modal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import stenotherm.base.InvalidInputException;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.InitialState;
import stenotherm.conduction.IntegratorSettings.Conductivities;
import stenotherm.conduction.Probe;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.material.Material;
import stenotherm.material.Materials;

class ReducedModelTest {
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
        ReducedModel.builder(List.of(new Probe.Mean("mean", "pack")))
            .configuration(cube(material), new double[0])
            .build();
    assertEquals(0, model.rates(0)[0]);
    ModalEngine engine = model.engine(InitialState.uniform(300));
    engine.advance(1000, new double[] {0}, new double[] {8});
    double[] mean = new double[1];
    engine.read(mean);
    assertEquals(301, mean[0], 1e-9);
    assertEquals(4000, engine.ledger().sources().get("pack"), 1e-9);
    assertTrue(engine.ledger().closes());
  }

  @Test
  void meltingAndLiveConductivitiesAreRefused() {
    Material ice = Materials.ICE_PACK;
    HeatNetwork pack = cube(ice);
    String reason = "is not linear, since 'pack' can melt; step every cell instead";
    assertEquals(Optional.of(reason), ReducedModel.reasonAgainst(pack, Conductivities.FROZEN));
    assertRefused(
        "network: " + reason,
        () -> ReducedModel.builder(List.of()).configuration(pack, new double[0]));
    HeatNetwork foam = cube(Materials.EPS_20);
    assertEquals(Optional.empty(), ReducedModel.reasonAgainst(foam, Conductivities.FROZEN));
    assertTrue(
        ReducedModel.reasonAgainst(foam, Conductivities.LIVE)
            .orElseThrow()
            .startsWith("is not linear while the conductivity of 'pack' follows temperature"));
  }

  private static void assertRefused(String message, Runnable call) {
    assertEquals(message, assertThrows(InvalidInputException.class, call::run).getMessage());
  }

  @Test
  void whatDoesNotFitIsRefused() {
    RandomBody body = new RandomBody(1, 4);
    assertRefused(
        "configurations: there is none; a model needs the network and its coefficients",
        () -> ReducedModel.builder(List.of()).build());
    assertRefused(
        "coefficients: 2 values given, 6 needed",
        () -> ReducedModel.builder(List.of()).configuration(body.network, new double[2]));
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
    assertEquals(0, engine.time());
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
    assertSame(model, model.with(body.network, films));
    ModalEngine engine = model.engine(InitialState.uniform(290).with("animal", 295));
    double[] inputs = RandomBody.inputs(new Random(3));
    engine.advance(2000, inputs, inputs);
    double[] values = new double[RandomBody.PROBES.size()];
    engine.read(values);
    assertEquals(engine.field().mean("animal"), values[0], 1e-9);
    assertEquals(engine.field().surfaceMean("zMax"), values[5], 1e-9);
    double[] missed = new double[values.length];
    engine.missedNow(missed);
    // single precision of some 300 K
    assertEquals(values[2] - engine.field().minimum("animal"), missed[2], 1e-4);
    assertEquals(engine.field().maximum("animal") - values[3], missed[3], 1e-4);
    assertEquals(engine.field().maximum("warmer") - values[4], missed[4], 1e-4);
    assertEquals(0, missed[0]);
  }

  /** What the nodes chosen miss on the way, where everything has just jumped. */
  @Test
  void extremesMissLittle() {
    for (int seed = 1; seed < 5; seed++) {
      RandomBody body = new RandomBody(seed, 4);
      ModalEngine engine =
          body.model(body.films()).engine(InitialState.uniform(290).with("animal", 294));
      double[] missed = new double[RandomBody.PROBES.size()];
      Random random = new Random(seed);
      double[] from = RandomBody.inputs(random);
      for (int step = 0; step < 40; step++) {
        if (step % 10 == 0) {
          from = RandomBody.inputs(random);
        }
        engine.advance(step % 10 < 5 ? 120 : 1800, from, from);
        engine.missedNow(missed);
        for (double each : missed) {
          // half of what extremes may be off by
          assertTrue(each < 0.025, () -> each + " K");
        }
      }
    }
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
      engine.missedNow(values);
    }
    // what the measurement itself takes
    assertTrue(threads.getCurrentThreadAllocatedBytes() - before < 1000);
  }
}
