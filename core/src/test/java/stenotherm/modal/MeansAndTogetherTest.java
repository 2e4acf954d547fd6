package stenotherm.modal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stenotherm.base.InvalidInputException;
import stenotherm.conduction.InitialState;
import stenotherm.conduction.Port;

class MeansAndTogetherTest {
  private static final InitialState START = InitialState.uniform(290);

  /** The sum over short steps by the trapezoidal rule, whose error is of their square. */
  @Test
  void meanFieldIsTheTimeMean() {
    RandomBody body = new RandomBody(5, 4);
    ModalEngine engine = body.model(body.films()).engine(START);
    assertThrows(IllegalStateException.class, engine::meanField);
    double[] from = RandomBody.inputs(new Random(5));
    double[] to = RandomBody.inputs(new Random(6));
    engine.advance(3000, from, from);
    engine.startMean();
    double[] sums = new double[2];
    int steps = 1000;
    double[] inputs = from;
    for (int step = 1; step <= steps; step++) {
      double[] before = outputs(engine);
      double[] next = mixed(from, to, (double) step / steps);
      engine.advance(3.6, inputs, next);
      double[] after = outputs(engine);
      sums[0] += (before[0] + after[0]) / 2 / steps;
      sums[1] += (before[5] + after[5]) / 2 / steps;
      inputs = next;
    }
    assertEquals(sums[0], engine.meanField().mean("animal"), 1e-4);
    assertEquals(sums[1], engine.meanField().surfaceMean("zMax"), 1e-4);
    // without the field the same
    assertEquals(engine.meanField().mean("animal"), engine.meanOf(List.of("animal"))[0], 1e-9);
    int top = faces(engine.inputs()).indexOf("zMax");
    assertEquals(engine.meanField().surfaceMean("zMax"), engine.meanSurfaces()[top], 1e-9);
  }

  /** One step of any length has the exact mean. */
  @Test
  void meanFieldDoesNotDependOnTheSteps() {
    RandomBody body = new RandomBody(5, 4);
    ReducedModel model = body.model(body.films());
    double[] from = RandomBody.inputs(new Random(5));
    double[] to = RandomBody.inputs(new Random(6));
    ModalEngine one = model.engine(START);
    one.advance(4000, from, to);
    ModalEngine two = model.engine(START);
    double[] middle = mixed(from, to, 0.25);
    two.advance(1000, from, middle);
    two.advance(3000, middle, to);
    assertEquals(one.meanField().mean("animal"), two.meanField().mean("animal"), 1e-9);
    assertEquals(one.meanField().maximum("warmer"), two.meanField().maximum("warmer"), 1e-9);
  }

  private static double[] outputs(ModalEngine engine) {
    double[] values = new double[RandomBody.PROBES.size()];
    engine.read(values);
    return values;
  }

  private static double[] mixed(double[] from, double[] to, double part) {
    double[] mixed = new double[from.length];
    for (int u = 0; u < mixed.length; u++) {
      mixed[u] = from[u] + part * (to[u] - from[u]);
    }
    return mixed;
  }

  /** Six faces in the same air: the basis needs one load. */
  @Test
  void inputsThatGoTogetherAreOneLoad() {
    RandomBody body = new RandomBody(6, 4);
    double[] films = body.films();
    ReducedModel each = body.model(films);
    ReducedModel one =
        body.builder()
            .together(Set.copyOf(faces(each.inputs())))
            .spanning(films, RandomBody.GIVEN)
            .build();
    assertTrue(one.modes() < each.modes() / 2, () -> one.modes() + " of " + each.modes());
    double[] inputs = RandomBody.inputs(new Random(6));
    Arrays.fill(inputs, 0, 6, 280);
    ModalEngine first = each.engine(START);
    ModalEngine second = one.engine(START);
    for (int step = 0; step < 20; step++) {
      first.advance(900, inputs, inputs);
      second.advance(900, inputs, inputs);
      double[] expected = outputs(first);
      double[] actual = outputs(second);
      for (int index = 0; index < expected.length; index++) {
        // the reduction's own error in extremes minutes after the start
        assertEquals(expected[index], actual[index], 0.02);
      }
    }
    inputs[2] = 281;
    assertThrows(InvalidInputException.class, () -> second.advance(900, inputs, inputs));
  }

  private static List<String> faces(List<Port> inputs) {
    return inputs.stream().filter(port -> port.unit().equals("K")).map(Port::name).toList();
  }

  @Test
  void onlyWhatIsAlikeGoesTogether() {
    RandomBody body = new RandomBody(6, 4);
    for (Set<String> wrong : List.of(Set.of("zMax", "nothing"), Set.of("zMax", "warmer"))) {
      ReducedModel.Builder builder =
          body.builder().together(wrong).spanning(body.films(), RandomBody.GIVEN);
      assertThrows(InvalidInputException.class, builder::build);
    }
  }

  @Test
  void scoutingModelHasTheMeans() {
    RandomBody body = new RandomBody(7, 4);
    double[] films = body.films();
    ReducedModel whole = body.model(films);
    ReducedModel scout = body.builder().scouting().spanning(films, RandomBody.GIVEN).build();
    assertTrue(scout.modes() < whole.modes(), () -> scout.modes() + " of " + whole.modes());
    double[] inputs = RandomBody.inputs(new Random(7));
    ModalEngine first = whole.engine(START);
    ModalEngine second = scout.engine(START);
    first.advance(3600, inputs, inputs);
    second.advance(3600, inputs, inputs);
    assertEquals(first.meanField().mean("animal"), second.meanField().mean("animal"), 0.1);
    assertEquals(
        first.meanField().surfaceMean("zMax"), second.meanField().surfaceMean("zMax"), 0.1);
  }
}
