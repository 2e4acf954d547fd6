package stenotherm.ambient;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Times;

class StowageTest {
  @Test
  void aParcelAloneMeetsTheAir() {
    assertEquals(0, Stowage.ALONE.lag(0));
    assertEquals(0, Stowage.ALONE.lag(1));
    assertEquals(0, Stowage.AMONG_OTHERS.lag(0));
  }

  /** By hand: 4 x 0.4² / (9.8696 x 0.08 / (150 x 1400)) = 0.64 / 3.7598e-6 = 170 220 s. */
  @Test
  void theLagGrowsWithTheSquareOfTheDepth() {
    assertEquals(170_220, Stowage.AMONG_OTHERS.lag(1), 10);
    assertEquals(170_220 / 4.0, Stowage.AMONG_OTHERS.lag(0.5), 3);
    assertEquals(170_220 / 16.0, Stowage.AMONG_OTHERS.lag(0.25), 1);
    for (double[] said : new double[][] {{0.1, 3}, {0.2, 12}, {0.4, 47}}) {
      assertEquals(said[1], Times.toHours(Stowage.AMONG_OTHERS.lag(said[0] / 0.4)), 0.5);
      assertTrue(Stowage.SOURCE.text().contains((int) said[1] + " h at " + said[0] + " m"));
    }
  }

  /** The slab whose slowest part is meant, in 200 explicit layers: its tail decays with the lag. */
  @Test
  void aLayerWithNothingBehindItDecaysWithTheLag() {
    int layers = 200;
    double depth = 0.4;
    double width = depth / layers;
    double diffusivity = 0.08 / (150 * 1400.0);
    double step = 0.4 * width * width / diffusivity;
    double[] excess = new double[layers];
    Arrays.fill(excess, 1);
    double early = 0;
    int first = (int) (0.5 * Stowage.AMONG_OTHERS.lag(1) / step);
    int last = 3 * first;
    for (int n = 0; n < last; n++) {
      if (n == first) {
        early = excess[layers - 1];
      }
      double[] next = new double[layers];
      for (int i = 0; i < layers; i++) {
        double outer = i == 0 ? -2 * excess[0] : excess[i - 1] - excess[i];
        double inner = i == layers - 1 ? 0 : excess[i + 1] - excess[i];
        next[i] = excess[i] + 0.4 * (outer + inner);
      }
      excess = next;
    }
    double lag = (last - first) * step / Math.log(early / excess[layers - 1]);
    assertEquals(1, lag / Stowage.AMONG_OTHERS.lag(1), 0.01);
  }

  @Test
  void depthsAreRelative() {
    assertEquals(
        "depth in the pile: 1.5 must lie between 0 and 1. 1 is as deep as parcels come.",
        assertThrows(InvalidInputException.class, () -> Stowage.AMONG_OTHERS.lag(1.5))
            .getMessage());
    assertThrows(InvalidInputException.class, () -> Stowage.ALONE.lag(Double.NaN));
    assertEquals("among others", Stowage.AMONG_OTHERS.words());
  }
}
