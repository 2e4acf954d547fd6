package stenotherm.modal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import stenotherm.base.Range;
import stenotherm.base.Times;

/** What goes from one configuration to the next, against the worst that the former can do alone. */
class PassageTest {
  private final RandomBody body = new RandomBody(3, 3, 4);
  private final ReducedModel model = body.model(body.films(), body.films());
  private final Random random = new Random(4321);

  private MissBounds bounds(double shortestStay) {
    Spans spans =
        Spans.of(model.inputs(), new Range(275, 295), new Range(0, 2), shortestStay)
            .startingApart("animal", new Range(-4, 8));
    return MissBoundProperties.bounds(model, spans);
  }

  private double[] randomVector(int size) {
    return random.doubles(size, -1, 1).toArray();
  }

  private static double[] rotated(double[] row, double[][] rotation) {
    double[] sum = new double[rotation[0].length];
    for (int j = 0; j < row.length; j++) {
      for (int i = 0; i < sum.length; i++) {
        sum[i] += row[j] * rotation[j][i];
      }
    }
    return sum;
  }

  @Test
  void modesOfOneAreFoundInThoseOfTheOther() {
    MissBounds bounds = bounds(Times.HOUR);
    Causes earlier = bounds.causes.get(0);
    Causes later = bounds.causes.get(1);
    double[] state = randomVector(model.modes());
    double[] row = randomVector(later.modes());
    // the same number, read in the modes of either; round-off of some hundred terms
    assertEquals(
        Columns.product(row, later.row(state)),
        Columns.product(rotated(row, later.in(earlier)), earlier.row(state)),
        1e-11);
  }

  /** The worst that inputs can make of a sum of modes under the first configuration, from ever. */
  private static double[] worst(Causes earlier, double[] inModes) {
    Response response = new Response(earlier.ever);
    double[] worst = new double[2];
    for (Causes.Cause cause : earlier.inputs) {
      double[] amplitude = new double[inModes.length];
      for (int j = 0; j < amplitude.length; j++) {
        amplitude[j] = inModes[j] * cause.ofModes()[j];
      }
      response.bound(amplitude);
      worst[0] += cause.most(response.positive, response.negative);
      worst[1] += cause.most(response.negative, response.positive);
    }
    return worst;
  }

  @Test
  void isNeverLessThanTheWorstAndNearlyThatAfterALongStay() {
    for (double stay : new double[] {Times.MINUTE, Times.HOUR, 30 * Times.DAY}) {
      MissBounds bounds = bounds(stay);
      Causes earlier = bounds.causes.get(0);
      Causes later = bounds.causes.get(1);
      Passage passage = new Passage(earlier, later, bounds.reach());
      double[][] rotation = later.in(earlier);
      for (int round = 0; round < 20; round++) {
        double[] row = randomVector(later.modes());
        double[] worst = worst(earlier, rotated(row, rotation));
        passage.bound(row);
        // panels are wider here than where all times are looked at: only the turns of signs differ
        assertTrue(passage.above >= worst[0] * 0.995, passage.above + " for " + worst[0]);
        assertTrue(passage.below >= worst[1] * 0.995, passage.below + " for " + worst[1]);
        if (stay > Times.DAY) {
          // nothing is left of what was there before
          assertTrue(passage.above <= 1.1 * worst[0], passage.above + " for " + worst[0]);
          assertTrue(passage.below <= 1.1 * worst[1], passage.below + " for " + worst[1]);
        }
      }
      for (int mode = 0; mode < later.modes(); mode++) {
        double[] row = new double[later.modes()];
        row[mode] = 1;
        double[] worst = worst(earlier, rotated(row, rotation));
        double most = Math.max(worst[0], worst[1]);
        assertTrue(passage.ofMode(mode) >= most * 0.995);
        assertTrue(later.mostEver[mode] >= most * 0.995);
        assertTrue(later.mostEver[mode] <= bounds.reach());
      }
    }
  }
}
