package stenotherm.modal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import stenotherm.conduction.FullEngine;
import stenotherm.conduction.HeatEngine;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.InitialState;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.Probe;

/** What a reduced model must keep, whatever the body. */
class ReducedModelProperties {
  private static final int OUTPUTS = RandomBody.PROBES.size();
  private static final double CELLS_ACROSS = 5;

  /** An hour's steps over one leg each; the last value of one interval starts the next. */
  private static void run(HeatEngine engine, long seed, double[][] films, Reading to) {
    Random random = new Random(seed);
    double[] values = new double[OUTPUTS];
    for (int leg = 0; leg < films.length; leg++) {
      engine.useCoefficients(films[leg]);
      double[] from = RandomBody.inputs(random);
      for (int step = 0; step < 12; step++) {
        double[] until = from.clone();
        for (int face = 0; face < 6; face++) {
          until[face] += random.nextDouble() - 0.5;
        }
        engine.advance(900, from, until);
        if (engine instanceof ModalEngine modal) {
          // estimates are of the reduction, not of what chosen nodes miss of an extreme
          modal.readEverywhere(values);
        } else {
          engine.read(values);
        }
        to.take(12 * leg + step, values);
        from = until;
      }
    }
  }

  private interface Reading {
    void take(int step, double[] values);
  }

  /**
   * Three legs with jumps of the ambient by tens of kelvins and of the power by watts. The full
   * engine's own error at its tolerance is below 1 mK.
   */
  @Property(seed = "4101", tries = 5)
  void followsTheFullEngineAndKnowsItsError(@ForAll @LongRange(min = 0, max = 1000) long seed) {
    RandomBody body = new RandomBody(seed, CELLS_ACROSS);
    double[][] films = {body.films(), body.films(), body.films()};
    ReducedModel model = body.model(films);
    InitialState start = InitialState.uniform(290).with("animal", 294);
    FullEngine full =
        new FullEngine(body.network, RandomBody.PROBES, start, IntegratorSettings.adaptive(1e-4));
    ModalEngine modal = model.engine(start);
    double[][] expected = new double[36][];
    run(full, seed, films, (step, values) -> expected[step] = values.clone());
    double[] error = new double[OUTPUTS];
    run(
        modal,
        seed,
        films,
        (step, values) -> {
          for (int output = 0; output < OUTPUTS; output++) {
            double off = Math.abs(values[output] - expected[step][output]);
            error[output] = Math.max(error[output], off);
          }
        });
    double[] estimates = modal.errorEstimates();
    for (int output = 0; output < OUTPUTS; output++) {
      Probe probe = RandomBody.PROBES.get(output);
      boolean isExtreme = probe instanceof Probe.Minimum || probe instanceof Probe.Maximum;
      assertTrue(error[output] < (isExtreme ? 0.05 : 0.02), probe + ": " + error[output]);
      assertTrue(
          estimates[output] > (error[output] - 1e-3) / 3,
          probe + ": error " + error[output] + ", estimate " + estimates[output]);
    }
    assertTrue(modal.ledger().closes());
    Map<String, Double> stored = full.ledger().storedIn();
    for (Map.Entry<String, Double> block : modal.ledger().storedIn().entrySet()) {
      // of some kJ that a block takes up
      assertEquals(stored.get(block.getKey()), block.getValue(), 30, block.getKey());
    }
  }

  @Property(seed = "4102", tries = 4)
  void steadyStateIsExact(@ForAll @LongRange(min = 0, max = 1000) long seed) {
    RandomBody body = new RandomBody(seed, CELLS_ACROSS);
    double[] films = body.films();
    ModalEngine modal = body.model(films).engine(InitialState.uniform(290));
    double[] inputs = RandomBody.inputs(new Random(seed));
    modal.advance(1e9, inputs, inputs);
    double[] values = new double[OUTPUTS];
    // an extreme over the chosen nodes may be 2 mK off, over all nodes by their single precision
    modal.readEverywhere(values);
    double[] expected = body.steady(films, inputs);
    for (int output = 0; output < OUTPUTS; output++) {
      Probe probe = RandomBody.PROBES.get(output);
      boolean isExtreme = probe instanceof Probe.Minimum || probe instanceof Probe.Maximum;
      // the linear solvers' tolerances, of some ten kelvins
      assertEquals(expected[output], values[output], isExtreme ? 1e-4 : 1e-6, probe.name());
    }
  }

  @Property(seed = "4103", tries = 4)
  void isStableAndLinear(@ForAll @LongRange(min = 0, max = 1000) long seed) {
    RandomBody body = new RandomBody(seed, CELLS_ACROSS);
    ReducedModel model = body.model(body.films(), body.films());
    for (int configuration = 0; configuration < 2; configuration++) {
      assertTrue(model.rates(configuration)[0] > 0);
    }
    Random random = new Random(seed);
    double[] one = RandomBody.inputs(random);
    double[] other = RandomBody.inputs(random);
    double[] mixed = new double[one.length];
    for (int input = 0; input < mixed.length; input++) {
      mixed[input] = 0.25 * one[input] + 0.75 * other[input];
    }
    double[] ofOne = means(model, 280, one);
    double[] ofOther = means(model, 300, other);
    double[] ofMixed = means(model, 295, mixed);
    for (int output = 0; output < ofMixed.length; output++) {
      assertEquals(0.25 * ofOne[output] + 0.75 * ofOther[output], ofMixed[output], 1e-9);
    }
  }

  private static double[] means(ReducedModel model, double start, double[] inputs) {
    ModalEngine engine = model.engine(InitialState.uniform(start));
    engine.advance(5000, inputs, inputs);
    double[] values = new double[OUTPUTS];
    engine.read(values);
    return new double[] {values[0], values[1], values[5], values[6]};
  }

  /** Going over to other films and back at once changes nothing: the rotation is exact. */
  @Property(seed = "4104", tries = 4)
  void rotationKeepsTheState(@ForAll @LongRange(min = 0, max = 1000) long seed) {
    RandomBody body = new RandomBody(seed, CELLS_ACROSS);
    double[] films = body.films();
    double[] others = body.films();
    ModalEngine engine = body.model(films, others).engine(InitialState.uniform(290));
    double[] inputs = RandomBody.inputs(new Random(seed));
    engine.advance(4000, inputs, inputs);
    double[] before = new double[OUTPUTS];
    engine.read(before);
    double[] after = new double[OUTPUTS];
    engine.useCoefficients(others);
    engine.read(after);
    assertEquals(before[0], after[0], 1e-9);
    engine.useCoefficients(films);
    engine.read(after);
    for (int output = 0; output < OUTPUTS; output++) {
      assertEquals(before[output], after[output], 1e-9);
    }
  }

  /** Half the steps, each twice as long, through the same lines: the same state. */
  @Property(seed = "4105", tries = 4)
  void stepsAreExact(@ForAll @LongRange(min = 0, max = 1000) long seed) {
    RandomBody body = new RandomBody(seed, CELLS_ACROSS);
    ReducedModel model = body.model(body.films());
    Random random = new Random(seed);
    double[] from = RandomBody.inputs(random);
    double[] until = RandomBody.inputs(random);
    ModalEngine whole = model.engine(InitialState.uniform(290));
    whole.advance(7200, from, until);
    ModalEngine parts = model.engine(InitialState.uniform(290));
    double[] last = from;
    for (int part = 1; part <= 60; part++) {
      double[] next = new double[from.length];
      for (int input = 0; input < next.length; input++) {
        next[input] = from[input] + part / 60.0 * (until[input] - from[input]);
      }
      parts.advance(120, last, next);
      last = next;
    }
    double[] expected = new double[OUTPUTS];
    double[] values = new double[OUTPUTS];
    whole.read(expected);
    parts.read(values);
    for (int output = 0; output < OUTPUTS; output++) {
      assertEquals(expected[output], values[output], 1e-8);
    }
    for (String boundary : whole.ledger().boundaries().keySet()) {
      double heat = whole.ledger().boundaries().get(boundary);
      assertEquals(heat, parts.ledger().boundaries().get(boundary), 1e-7 * Math.abs(heat) + 1e-6);
    }
  }

  /** A fill that conducts better, met during a run, is projected on the basis there is. */
  @Property(seed = "4106", tries = 4)
  void takesUpANetworkThatItWasNotBuiltFor(@ForAll @LongRange(min = 0, max = 1000) long seed) {
    RandomBody body = new RandomBody(seed, CELLS_ACROSS);
    double[] films = body.films();
    HeatNetwork other = body.network.withConductivities(Map.of("fill", 0.1));
    InitialState start = InitialState.uniform(290);
    ModalEngine modal = body.model(films).engine(start);
    FullEngine full =
        new FullEngine(body.network, RandomBody.PROBES, start, IntegratorSettings.adaptive(1e-4));
    double[] inputs = RandomBody.inputs(new Random(seed));
    double[] expected = new double[OUTPUTS];
    double[] values = new double[OUTPUTS];
    for (HeatEngine engine : List.of(full, modal)) {
      engine.useCoefficients(films);
      engine.advance(7200, inputs, inputs);
      engine.use(other);
      engine.advance(7200, inputs, inputs);
      engine.advance(1e7, inputs, inputs);
    }
    full.read(expected);
    modal.read(values);
    for (int output = 0; output < OUTPUTS; output++) {
      assertEquals(expected[output], values[output], 2e-3, RandomBody.PROBES.get(output).name());
    }
    assertTrue(modal.ledger().closes());
  }
}
