package stenotherm.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class MarginsTest {
  private static final int QUANTITIES = 20;

  private static Margins of(int quantities, int runs) {
    Margins margins = new Margins(quantities, runs);
    Random random = new Random(3);
    for (int run = 0; run < runs; run++) {
      double[] point = random.doubles(quantities, 0.01, 0.99).toArray();
      double cold = Arrays.stream(point).sum();
      margins.add(
          point,
          new Fate(
              new Fate.Approach(cold, Double.POSITIVE_INFINITY),
              new Fate.Approach(-cold, Double.POSITIVE_INFINITY),
              0,
              Double.POSITIVE_INFINITY,
              Double.POSITIVE_INFINITY));
    }
    return margins;
  }

  /** A packing that melts has 32 runs; its quantities and their squares may be more. */
  @Test
  void tooFewRunsAreNotFitted() {
    int coefficients = 1 + 2 * QUANTITIES;
    for (boolean cold : new boolean[] {true, false}) {
      assertTrue(of(QUANTITIES, 32).fit(cold).isEmpty());
      assertTrue(of(QUANTITIES, coefficients).fit(cold).isEmpty());
      assertTrue(of(QUANTITIES, coefficients + 1).fit(cold).isPresent());
      assertTrue(of(QuadraticResponse.MOST_QUANTITIES + 1, 200).fit(cold).isEmpty());
    }
    // what a quadratic function of normal scores misses of a sum of shares
    assertEquals(0, of(2, 200).fit(true).orElseThrow().unexplained(), 0.05);
  }
}
