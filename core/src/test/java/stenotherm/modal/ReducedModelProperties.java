package stenotherm.modal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import stenotherm.conduction.FullEngine;
import stenotherm.conduction.HeatEngine;
import stenotherm.conduction.InitialState;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.Probe;
import stenotherm.conduction.TemperatureField;

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
        engine.read(values);
        if (engine instanceof ModalEngine modal) {
          // estimates are of the reduction, not of what chosen nodes miss of an extreme
          TemperatureField field = modal.field();
          values[2] = field.minimum("animal");
          values[3] = field.maximum("animal");
          values[4] = field.maximum("warmer");
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
  @Property(seed = "4101", tries = 3)
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

  @Property(seed = "4102", tries = 3)
  void steadyStateIsExact(@ForAll @LongRange(min = 0, max = 1000) long seed) {
    RandomBody body = new RandomBody(seed, CELLS_ACROSS);
    double[] films = body.films();
    ModalEngine modal = body.model(films).engine(InitialState.uniform(290));
    double[] inputs = RandomBody.inputs(new Random(seed));
    modal.advance(1e9, inputs, inputs);
    double[] values = new double[OUTPUTS];
    modal.read(values);
    double[] expected = body.steady(films, inputs);
    for (int output = 0; output < OUTPUTS; output++) {
      Probe probe = RandomBody.PROBES.get(output);
      boolean isExtreme = probe instanceof Probe.Minimum || probe instanceof Probe.Maximum;
      // the linear solvers' tolerances, of some ten kelvins; chosen nodes may miss 2 mK
      assertEquals(expected[output], values[output], isExtreme ? 2e-3 : 1e-6, probe.name());
    }
  }

  @Property(seed = "4103", tries = 3)
  void isStableAndLinear(@ForAll @LongRange(min = 0, max = 1000) long seed) {
    RandomBody body = new RandomBody(seed, CELLS_ACROSS);
    ReducedModel model = body.model(body.films(), body.films());
    for (ModalConfiguration each : model.spanned()) {
      assertTrue(Arrays.stream(each.rates()).allMatch(rate -> rate > 0));
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
  @Property(seed = "4104", tries = 3)
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
  @Property(seed = "4105", tries = 3)
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

  /**
   * A fill that conducts a third more and a wall that conducts a tenth less, met during a run by a
   * model whose basis spans them. Extremes are of the engine's own field.
   */
  @Property(seed = "4106", tries = 3)
  void goesOverToOtherConductivities(@ForAll @LongRange(min = 0, max = 1000) long seed) {
    RandomBody body = new RandomBody(seed, CELLS_ACROSS);
    double[] films = body.films();
    double[] others = body.films();
    double[] factors = {0.9, 1.33};
    InitialState start = InitialState.uniform(290);
    FullEngine full =
        new FullEngine(body.network, RandomBody.PROBES, start, IntegratorSettings.adaptive(1e-4));
    ReducedModel model =
        body.builder().spanning(films, RandomBody.GIVEN).spanning(others, factors).build();
    ModalEngine modal = model.engine(start);
    double[] inputs = RandomBody.inputs(new Random(seed));
    full.useCoefficients(films);
    full.advance(7200, inputs, inputs);
    modal.advance(7200, inputs, inputs);
    full.use(body.withFactors(factors));
    full.useCoefficients(others);
    modal.use(model.configuration(others, factors));
    double[] expected = new double[OUTPUTS];
    double[] values = new double[OUTPUTS];
    for (double duration : new double[] {1800, 7200, 1e7}) {
      full.advance(duration, inputs, inputs);
      modal.advance(duration, inputs, inputs);
      full.read(expected);
      modal.read(values);
      for (int output : new int[] {0, 1, 5, 6}) {
        assertEquals(expected[output], values[output], 2e-3, RandomBody.PROBES.get(output).name());
      }
      TemperatureField field = modal.field();
      assertEquals(expected[2], field.minimum("animal"), 5e-3);
      assertEquals(expected[3], field.maximum("animal"), 5e-3);
      assertEquals(expected[4], field.maximum("warmer"), 5e-3);
    }
    assertTrue(modal.ledger().closes());
  }
}
