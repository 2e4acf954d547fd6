package stenotherm.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Manufactured histories of two animals on three grids. */
class GridCorrectionTest {
  private static final double[] WIDTHS = {2 * Math.sqrt(2), 2, Math.sqrt(2)};
  private static final double[][] LIMIT = {{294, 290, 287, 285}, {294, 291, 289, 288}};

  /** How far each value lies from the limit on a grid of width 1 [K]. */
  private static final double[][] SHAPE = {{0, 0.1, 0.2, 0.25}, {0, -0.05, 0.02, 0.1}};

  private static double[][] history(double scale) {
    double[][] values = new double[LIMIT.length][LIMIT[0].length];
    for (int animal = 0; animal < values.length; animal++) {
      for (int time = 0; time < values[animal].length; time++) {
        values[animal][time] = LIMIT[animal][time] + scale * SHAPE[animal][time];
      }
    }
    return values;
  }

  private static double[][] ofOrder(double order, int grid) {
    return history(Math.pow(WIDTHS[grid], order));
  }

  private static GridCorrection correction(double coarse, double medium, double fine) {
    return new GridCorrection(history(coarse), history(medium), history(fine), WIDTHS);
  }

  @Test
  void anOrderIsExtrapolatedToItsLimit() {
    for (double order : new double[] {0.7, 1, 1.5, 1.99}) {
      double[][] fine = ofOrder(order, 2);
      GridCorrection correction =
          new GridCorrection(ofOrder(order, 0), ofOrder(order, 1), fine, WIDTHS);
      assertTrue(correction.isOrdered());
      for (int animal = 0; animal < fine.length; animal++) {
        for (int time = 0; time < fine[animal].length; time++) {
          assertEquals(
              LIMIT[animal][time], fine[animal][time] + correction.added()[animal][time], 1e-9);
        }
      }
      // half of what is corrected may be wrong
      assertEquals(0.25 * Math.pow(WIDTHS[2], order) / 2, correction.error(), 1e-9);
    }
  }

  /** Faster than an order of 2 counts as 2, whose last change is what it leaves. */
  @Test
  void aHighOrderIsNotTrusted() {
    GridCorrection third = new GridCorrection(ofOrder(3, 0), ofOrder(3, 1), ofOrder(3, 2), WIDTHS);
    assertTrue(third.isOrdered());
    double last = 0.25 * (8 - Math.pow(WIDTHS[2], 3));
    assertEquals(last / 2, third.error(), 1e-9);
  }

  @Test
  void historiesWithoutAnOrderAreBounded() {
    // to and fro; ever larger changes; hardly smaller ones
    for (double[] scales :
        new double[][] {{1, 0.2, 0.9}, {1, 0.9, 0.1}, {3, 2, 1}, {1.0, 0.72, 0.45}}) {
      GridCorrection correction = correction(scales[0], scales[1], scales[2]);
      double first = Math.abs(scales[0] - scales[1]);
      double second = Math.abs(scales[1] - scales[2]);
      assertFalse(correction.isOrdered());
      assertEquals(1.25 * 0.25 * Math.max(first, second), correction.error(), 1e-9);
      assertEquals(0, GridCorrection.largest(correction.added()));
    }
  }

  @Test
  void equalHistoriesNeedNone() {
    GridCorrection equal = correction(1, 1, 1);
    assertEquals(0, equal.error());
    assertEquals(0, GridCorrection.largest(equal.added()));
    GridCorrection late = correction(1.4, 1, 1);
    assertEquals(1.25 * 0.4 * 0.25, late.error(), 1e-9);
    assertEquals(0, GridCorrection.largest(late.added()));
  }

  @Test
  void differencesAreOneLessTheOther() {
    double[][] difference = GridCorrection.difference(history(3), history(1));
    assertEquals(2 * 0.25, difference[0][3], 1e-12);
    assertEquals(-2 * 0.05, difference[1][1], 1e-12);
    assertEquals(0.5, GridCorrection.largest(difference), 1e-12);
    assertEquals(0.5, GridCorrection.largest(GridCorrection.difference(history(1), history(3))));
  }
}
