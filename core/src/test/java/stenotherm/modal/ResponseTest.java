package stenotherm.modal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

class ResponseTest {
  /** exp(-s) - exp(-3 s) / 2 is positive throughout; less 2 exp(-3 s) it turns at s = ln 2 / 2. */
  @Test
  void knownIntegrals() {
    Response response = new Response(Decays.ever(new double[] {1, 3}, 1.1));
    response.bound(new double[] {1, -0.5});
    // what is left after the last time is taken twice
    assertEquals(1 - 0.5 / 3, response.positive, 1e-6);
    assertEquals(0, response.negative, 1e-6);
    response.bound(new double[] {1, -2});
    double turn = Math.log(2) / 2;
    double after = Math.exp(-turn) - 2.0 / 3 * Math.exp(-3 * turn);
    // the one panel with the turn, by its straight line
    assertEquals(after, response.positive, 1e-3);
    assertEquals(after - (1 - 2.0 / 3), response.negative, 1e-3);
    assertTrue(response.positive >= after);
    assertEquals(1, response.lowest, 1e-2);
  }

  @Test
  void whatDoesNotDecayIsLeftOut() {
    Response response = new Response(Decays.ever(new double[] {0, 2}, 1.1));
    response.bound(new double[] {7, 1});
    assertEquals(0.5, response.positive, 1e-6);
  }

  /** Sums over fine times, which find no more than there is. */
  @Property(seed = "4302", tries = 30)
  void isNeverLess(@ForAll @LongRange(min = 0, max = 100_000) long seed) {
    Random random = new Random(seed);
    int modes = 1 + random.nextInt(12);
    double[] lambda = new double[modes];
    double[] a = new double[modes];
    double rate = 1e-5;
    for (int j = 0; j < modes; j++) {
      rate *= 1 + 3 * random.nextDouble();
      lambda[j] = rate;
      a[j] = random.nextGaussian() * rate;
    }
    Response response = new Response(Decays.ever(lambda, 1.1));
    response.bound(a);
    double positive = 0;
    double negative = 0;
    double highest = 0;
    double lowest = 0;
    double time = 1e-3 / rate;
    while (time < 30 / lambda[0]) {
      double width = 2e-3 * time;
      double value = 0;
      for (int j = 0; j < modes; j++) {
        value += a[j] * Math.exp(-lambda[j] * (time + width / 2));
      }
      positive += width * Math.max(0, value);
      negative += width * Math.max(0, -value);
      highest = Math.max(highest, value);
      lowest = Math.max(lowest, -value);
      time += width;
    }
    double scale = positive + negative;
    // the sums are off by a part of 1e-6 of the amplitudes' own integrals
    assertTrue(response.positive >= positive - 1e-4 * scale);
    assertTrue(response.negative >= negative - 1e-4 * scale);
    assertTrue(response.positive + response.negative <= 1.05 * scale, "far more than there is");
    assertTrue(response.highest >= highest && response.lowest >= lowest);
  }
}
