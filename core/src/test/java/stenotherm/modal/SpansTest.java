package stenotherm.modal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.conduction.Probe;

class SpansTest {
  private static final Range AMBIENT = new Range(280, 290);
  private static final Range POWER = new Range(0, 2);

  private final RandomBody body = new RandomBody(1, 3);
  private final ReducedModel model = body.model(body.films());

  private static void assertRefused(String message, Runnable call) {
    assertEquals(message, assertThrows(InvalidInputException.class, call::run).getMessage());
  }

  @Test
  void whatCannotBeIsRefused() {
    assertRefused(
        "shortest stay: 0 s must be a finite number above 0",
        () -> new Spans(Map.of(), Map.of(), 0));
    assertRefused(
        "start apart of animal: from 1.0 to 2.0 K must hold 0 K",
        () -> new Spans(Map.of(), Map.of("animal", new Range(1, 2)), 1));
    Map<String, Range> inputs =
        new LinkedHashMap<>(Spans.of(model.inputs(), AMBIENT, POWER, 3600).inputs());
    inputs.put("warmer", new Range(1, 2));
    assertRefused(
        "span of warmer: from 1.0 to 2.0 W must hold 0 W",
        () -> model.missedAtMost(new Spans(inputs, Map.of(), 3600)));
    inputs.put("warmer", POWER);
    inputs.put("zMax", new Range(270, 275));
    assertRefused(
        "spans: there is no temperature at which a run could begin, as all ambients may have it: one"
            + " is at least 280.0 K, another at most 275.0 K",
        () -> model.missedAtMost(new Spans(inputs, Map.of(), 3600)));
    inputs.remove("zMax");
    assertTrue(
        assertThrows(
                InvalidInputException.class,
                () -> model.missedAtMost(new Spans(inputs, Map.of(), 3600)))
            .getMessage()
            .startsWith("spans: there is none of 'zMax'; there are those of ["));
  }

  @Test
  void namesAndTemperaturesOfAnotherKindAreRefused() {
    assertRefused(
        "span of animal: Infinity is not a finite number",
        () -> Spans.of(model.inputs(), AMBIENT, new Range(0, Double.POSITIVE_INFINITY), 3600));
    Spans spans = Spans.of(model.inputs(), AMBIENT, POWER, 3600);
    assertRefused(
        "spans: 'anmal' is no block announced to start apart; there are [animal]",
        () -> model.missedAtMost(spans.startingApart("anmal", new Range(0, 1))));
    Map<String, Range> more = new LinkedHashMap<>(spans.inputs());
    more.put("heater", POWER);
    assertRefused(
        "spans: 'heater' is no input; there are "
            + "[animal, warmer, xMax, xMin, yMax, yMin, zMax, zMin]",
        () -> model.missedAtMost(new Spans(more, Map.of(), 3600)));
    Spans celsius = Spans.of(model.inputs(), new Range(-5, 25), POWER, 3600);
    assertRefused(
        "span of xMin: -5 K must lie between 1 K and 5000 K. Temperatures are absolute, in kelvin:"
            + " 20 °C is 293.15 K.",
        () -> model.missedAtMost(celsius));
  }

  @Test
  void someHoldOthers() {
    Spans spans = Spans.of(model.inputs(), AMBIENT, POWER, 3600);
    Spans apart = spans.startingApart("animal", new Range(-1, 1));
    assertTrue(spans.hold(spans));
    assertTrue(apart.hold(spans));
    assertFalse(spans.hold(apart));
    assertTrue(spans.hold(Spans.of(model.inputs(), new Range(281, 289), POWER, 7200)));
    assertFalse(spans.hold(Spans.of(model.inputs(), new Range(279, 289), POWER, 7200)));
    assertFalse(spans.hold(Spans.of(model.inputs(), AMBIENT, POWER, 3599)));
  }

  @Test
  void onlyExtremesMiss() {
    double[] most = model.missedAtMost(Spans.of(model.inputs(), AMBIENT, POWER, 3600));
    int[] nodes = model.nodesOfExtremes();
    for (int output = 0; output < most.length; output++) {
      Probe probe = RandomBody.PROBES.get(output);
      boolean isExtreme = probe instanceof Probe.Minimum || probe instanceof Probe.Maximum;
      assertEquals(isExtreme, most[output] > 0);
      assertEquals(isExtreme, nodes[output] > 0);
    }
  }

  /** Without films the level has no bound, once configurations take turns. */
  @Test
  void whatKeepsItsHeatHasNoBound() {
    ReducedModel.Builder builder =
        ReducedModel.builder(List.of(new Probe.Maximum("hottest", "animal")))
            .configuration(body.network, body.films())
            .configuration(body.network, new double[6]);
    ReducedModel closed = builder.build();
    Spans spans = Spans.of(closed.inputs(), AMBIENT, POWER, 3600);
    assertArrayEquals(new double[] {Double.POSITIVE_INFINITY}, closed.missedAtMost(spans));
    builder.extremesWithin(0.1, spans);
    assertRefused(
        "extremes within: 0.1 K: several configurations take turns and under one of them no film and"
            + " no held surface fixes the temperature level, so that extremes can miss any amount",
        builder::build);
  }
}
