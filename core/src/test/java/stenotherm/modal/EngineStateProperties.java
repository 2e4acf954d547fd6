package stenotherm.modal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.ObjIntConsumer;
import java.util.function.Supplier;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.conduction.BoundaryKind;
import stenotherm.conduction.FullEngine;
import stenotherm.conduction.HeatEngine;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.HeatNetworkBuilder;
import stenotherm.conduction.InitialState;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.IntegratorSettings.Conductivities;
import stenotherm.conduction.Probe;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.material.Materials;

/** An engine that has gone back goes on to the same bits as one that never left. */
class EngineStateProperties {
  /** Engines of a body, and how one goes on with one of two sets of conductivities. */
  private record Subject(ObjIntConsumer<HeatEngine> goesOver, Supplier<HeatEngine> engines) {}

  /** Goes on with one of two networks by the full engine. */
  private static ObjIntConsumer<HeatEngine> between(HeatNetwork one, HeatNetwork other) {
    return (engine, which) -> ((FullEngine) engine).use(which == 0 ? one : other);
  }

  private static Box cube(double from, double to) {
    return new Box(new Point(from, from, from), new Point(to, to, to));
  }

  /** A gel that melts at 0 °C, in foam. */
  private static HeatNetwork pack() {
    HeatNetworkBuilder builder =
        HeatNetwork.builder(
                new Layout(
                    List.of(
                        new Block.Solid("foam", cube(0, 0.1), Materials.EPS_20),
                        new Block.Solid("pack", cube(0.02, 0.06), Materials.ICE_PACK))),
                MeshControl.uniform(0.02))
            .source("pack");
    for (Face face : Face.values()) {
      builder.boundary(face, BoundaryKind.CONVECTION);
    }
    return builder.build();
  }

  private static final List<Probe> OF_PACK =
      List.of(
          new Probe.Mean("mean", "pack"),
          new Probe.LiquidFraction("liquid", "pack"),
          new Probe.Minimum("coldest", "pack"),
          new Probe.HeatFlow("in", "zMax"));

  private static Subject melting(Conductivities kind) {
    HeatNetwork network = pack();
    IntegratorSettings frozen = IntegratorSettings.adaptive(0.01);
    IntegratorSettings settings = kind == Conductivities.LIVE ? frozen.live() : frozen;
    return new Subject(
        between(network, network.withConductivities(Map.of("foam", 0.05))),
        () -> {
          InitialState start = InitialState.uniform(280).partlyMelted("pack", 0.4);
          return new FullEngine(network, OF_PACK, start, settings);
        });
  }

  private static Subject full(long seed) {
    RandomBody body = new RandomBody(seed, 4);
    return new Subject(
        between(body.network, body.network.withConductivities(Map.of("fill", 0.1))),
        () ->
            new FullEngine(
                body.network, RandomBody.PROBES, 290, IntegratorSettings.adaptive(0.01)));
  }

  /** Its run meets films and conductivities that the model was not built for. */
  private static Subject modal(long seed) {
    RandomBody body = new RandomBody(seed, 4);
    double[] films = films(new Random(seed));
    ReducedModel model = body.model(films);
    List<ModalConfiguration> two =
        List.of(model.spanned().get(0), model.configuration(films, new double[] {0.9, 1.4}));
    return new Subject(
        (engine, which) -> ((ModalEngine) engine).use(two.get(which)),
        () -> model.engine(InitialState.uniform(290)));
  }

  /** One of three sets of films. */
  private static double[] films(Random random) {
    double[] films = new double[6];
    Arrays.fill(films, 5 + 4 * random.nextInt(3));
    return films;
  }

  private static double[] inputs(HeatEngine engine, Random random) {
    double[] inputs = new double[engine.inputs().size()];
    for (int index = 0; index < inputs.length; index++) {
      inputs[index] = index < 6 ? 255 + 40 * random.nextDouble() : 3 * random.nextDouble();
    }
    return inputs;
  }

  /**
   * Some intervals, in which inputs, films and conductivities jump now and then.
   *
   * @param from inputs that the first starts with
   * @return inputs at the end
   */
  private static double[] wander(
      Subject subject, HeatEngine engine, long seed, int intervals, double[] from) {
    Random random = new Random(seed);
    double[] now = from;
    for (int interval = 0; interval < intervals; interval++) {
      if (random.nextInt(4) == 0) {
        now = inputs(engine, random);
      }
      if (random.nextInt(4) == 0) {
        engine.useCoefficients(films(random));
      }
      if (random.nextInt(4) == 0) {
        subject.goesOver.accept(engine, random.nextInt(2));
      }
      double[] until = inputs(engine, random);
      engine.advance(300 + 600 * random.nextInt(3), now, until);
      if (random.nextBoolean()) {
        read(engine);
      }
      now = until;
    }
    return now;
  }

  private static double[] read(HeatEngine engine) {
    double[] values = new double[engine.outputs().size()];
    engine.read(values);
    return values;
  }

  private static void assertSame(HeatEngine expected, HeatEngine engine) {
    assertEquals(expected.time(), engine.time());
    assertArrayEquals(read(expected), read(engine));
    assertEquals(expected.ledger(), engine.ledger());
    Point corner = new Point(0.005, 0.005, 0.005);
    assertEquals(expected.field().at(corner), engine.field().at(corner));
    if (engine instanceof ModalEngine modal) {
      assertArrayEquals(((ModalEngine) expected).errorEstimates(), modal.errorEstimates());
    }
  }

  private static void check(Subject subject, long seed) {
    HeatEngine straight = subject.engines.get();
    HeatEngine wandering = subject.engines.get();
    Random random = new Random(seed);
    straight.useCoefficients(films(random));
    wandering.useCoefficients(films(new Random(seed)));
    int before = random.nextInt(5);
    double[] start = inputs(straight, random);
    double[] then = wander(subject, straight, seed, before, start);
    wander(subject, wandering, seed, before, start);
    // readings count in the estimates of the error
    read(straight);
    read(wandering);
    HeatEngine.State early = wandering.save();
    HeatEngine.State state = wandering.save();
    for (int time = 0; time < 2; time++) {
      wander(subject, wandering, seed + 1 + time, 1 + random.nextInt(3), then);
      HeatEngine.State late = wandering.save();
      wandering.restore(early);
      assertSame(straight, wandering);
      // a state may be written over and used again
      wandering.restore(late);
      wandering.save(state);
      wandering.restore(early);
    }
    wander(subject, straight, seed + 9, 3, then);
    wander(subject, wandering, seed + 9, 3, then);
    assertSame(straight, wandering);
    assertTrue(wandering.work().steps() > straight.work().steps());
    assertTrue(wandering.ledger().closes());
  }

  @Property(seed = "4301", tries = 5)
  void fullEngineGoesBack(@ForAll @LongRange(min = 0, max = 1000) long seed) {
    check(full(seed), seed);
  }

  @Property(seed = "4302", tries = 20)
  void meltingGoesBack(
      @ForAll @LongRange(min = 0, max = 1000) long seed, @ForAll Conductivities kind) {
    check(melting(kind), seed);
  }

  @Property(seed = "4303", tries = 3)
  void modalEngineGoesBack(@ForAll @LongRange(min = 0, max = 1000) long seed) {
    check(modal(seed), seed);
  }

  @Example
  void stateOfAnotherEngineIsRefused() {
    for (Subject subject : List.of(full(1), modal(1))) {
      HeatEngine engine = subject.engines.get();
      HeatEngine.State foreign = subject.engines.get().save();
      for (Runnable call :
          List.<Runnable>of(() -> engine.restore(foreign), () -> engine.save(foreign))) {
        assertEquals(
            "state: was made by another engine",
            assertThrows(InvalidInputException.class, call::run).getMessage());
      }
    }
  }
}
