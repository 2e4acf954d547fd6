package stenotherm.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Manufactured histories of two animals on three grids. */
class GridCorrectionTest {
  private static final double[] WIDTHS = {2 * Math.sqrt(2), 2, Math.sqrt(2)};
  private static final double[] TWO_FINER = {2, Math.sqrt(2)};
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
    return new GridCorrection(history(coarse), history(medium), history(fine), TWO_FINER);
  }

  private static double farthest(double[][] fine, GridCorrection correction) {
    double[][] left = GridCorrection.difference(fine, LIMIT);
    double most = 0;
    for (int animal = 0; animal < left.length; animal++) {
      for (int time = 0; time < left[animal].length; time++) {
        most = Math.max(most, Math.abs(left[animal][time] + correction.added()[animal][time]));
      }
    }
    return most;
  }

  @Test
  void theOrderOfTheSchemeIsExtrapolatedToItsLimit() {
    GridCorrection correction =
        new GridCorrection(ofOrder(2, 0), ofOrder(2, 1), ofOrder(2, 2), TWO_FINER);
    assertTrue(correction.isOrdered());
    assertEquals(0, farthest(ofOrder(2, 2), correction), 1e-9);
    // all of it counts as error: 0.25 K on a grid of width 1, twice that on the fine one
    assertEquals(0.5, correction.error(), 1e-9);
  }

  /** With fine widths a root of two apart, an error as large as the correction covers 1.17 to 3. */
  @Test
  void theErrorCoversOtherOrders() {
    for (double order : new double[] {1.2, 1.5, 1.8, 2.5, 3}) {
      double[][] fine = ofOrder(order, 2);
      GridCorrection correction =
          new GridCorrection(ofOrder(order, 0), ofOrder(order, 1), fine, TWO_FINER);
      assertTrue(correction.isOrdered());
      double left = farthest(fine, correction);
      assertTrue(left > 1e-3 && left < correction.error(), order + ": " + left);
    }
  }

  @Test
  void historiesWithoutAnOrderAreBounded() {
    // to and fro
    for (double[] scales : new double[][] {{1, 0.2, 0.9}, {1, 1.3, 0.9}}) {
      GridCorrection correction = correction(scales[0], scales[1], scales[2]);
      double first = Math.abs(scales[0] - scales[1]);
      double second = Math.abs(scales[1] - scales[2]);
      assertFalse(correction.isOrdered());
      assertEquals(1.25 * 0.25 * Math.max(first, second), correction.error(), 1e-9);
      assertEquals(0, GridCorrection.largest(correction.added()));
    }
  }

  /** Changes that do not fall are no order, but their direction is known. */
  @Test
  void changesThatGrowAreCarriedOnAsFar() {
    GridCorrection growing = correction(1, 0.9, 0.1);
    assertTrue(growing.isOrdered());
    assertEquals(0.8 * 0.25, growing.error(), 1e-9);
    assertEquals(-0.8 * 0.25, growing.added()[0][3], 1e-9);
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
