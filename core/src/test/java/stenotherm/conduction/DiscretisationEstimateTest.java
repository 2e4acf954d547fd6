package stenotherm.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stenotherm.conduction.Bodies.assertRefused;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** Grid estimates of made-up series, and ledgers of made-up heats. */
class DiscretisationEstimateTest {
  private static final double[] HALVED = {4, 2, 1};

  @Test
  void findsOrderErrorAndLimitOfAPowerSeries() {
    for (double order : new double[] {0.5, 1, 1.5, 2}) {
      double[] values = {10 + Math.pow(4, order), 10 + Math.pow(2, order), 10 + 1};
      DiscretisationEstimate estimate = DiscretisationEstimate.of(values, HALVED);
      assertEquals(order, estimate.order(), 1e-9);
      assertFalse(estimate.isBound());
      // the error of the finest is 1; the safety factor is 1.25
      assertEquals(1.25, estimate.error(), 1e-9);
      assertEquals(11, estimate.fine());
      assertEquals(10, estimate.value(), 1e-9);
      // second order would have corrected a third of the last change
      double change = Math.pow(2, order) - 1;
      assertEquals(Math.max(0.5, 1 - change / 3), estimate.valueError(), 1e-9);
    }
  }

  @Test
  void unequalRatiosAgree() {
    double[] widths = {3, 2, 1.6};
    double[] values = new double[3];
    for (int grid = 0; grid < 3; grid++) {
      values[grid] = 7 - 0.2 * widths[grid] * widths[grid];
    }
    DiscretisationEstimate estimate = DiscretisationEstimate.of(values, widths);
    assertEquals(7, estimate.value(), 1e-9);
    assertEquals(0.5 * 0.2 * 1.6 * 1.6, estimate.valueError(), 1e-9);
  }

  @Test
  void luckIsNotTrusted() {
    // the fine change is tiny, but the coarse one says what second order would leave: 1.2 / 12
    DiscretisationEstimate luck = DiscretisationEstimate.of(new double[] {6.6, 5.4, 5.399}, HALVED);
    assertEquals(2, luck.order());
    assertEquals(5.399 - 0.001 / 3, luck.value(), 1e-9);
    assertEquals(1.25 * 0.1, luck.error(), 1e-9);
    assertEquals(1.25 * (0.1 - 0.001 / 3), luck.valueError(), 1e-9);
  }

  @Test
  void slowConvergenceIsABound() {
    DiscretisationEstimate slow = DiscretisationEstimate.of(new double[] {3.1, 2, 1}, HALVED);
    assertTrue(slow.isBound());
    assertEquals(1, slow.value());
    assertEquals(1.25 / (Math.sqrt(2) - 1), slow.valueError(), 1e-12);
  }

  @Test
  void noOrderWithoutALimit() {
    for (double[] values : new double[][] {{1, 3, 2}, {4, 2, 2}, {4, 3, 5}, {2, 3, 5}}) {
      DiscretisationEstimate swing = DiscretisationEstimate.of(values, HALVED);
      assertTrue(swing.isBound());
      assertTrue(Double.isNaN(swing.order()));
      assertEquals(values[2], swing.value());
      assertEquals(2.5, swing.error(), 1e-12);
      assertEquals(2.5, swing.valueError(), 1e-12);
    }
    // grids that are not refined agree without having converged
    DiscretisationEstimate equal =
        DiscretisationEstimate.of(new double[] {5, 3, 2.5}, new double[] {2, 1, 1});
    assertTrue(equal.isBound());
    assertEquals(2.5, equal.valueError(), 1e-12);
  }

  @Test
  void inputsAreChecked() {
    assertRefused(
        "grids: 2 values and 3 widths, three of each needed",
        () -> DiscretisationEstimate.of(new double[] {1, 2}, HALVED));
    assertRefused(
        "value: NaN is not a finite number",
        () -> DiscretisationEstimate.of(new double[] {1, 2, Double.NaN}, HALVED));
    assertRefused(
        "cell width: 0 must be a finite number above 0",
        () -> DiscretisationEstimate.of(new double[] {3, 2, 1.5}, new double[] {2, 1, 0}));
  }

  @Test
  void ledgerAddsUp() {
    HeatLedger ledger =
        new HeatLedger(
            Map.of("a", 5.0, "b", -2.0), Map.of("lamp", 1.0), Map.of("bar", 3.0, "rod", 1.0), 8);
    assertEquals(4, ledger.stored(), 1e-15);
    assertEquals(0, ledger.residual(), 1e-15);
    assertTrue(ledger.closes());
    assertFalse(leaky(9e-6).closes());
    assertTrue(leaky(7e-6).closes());
  }

  private static HeatLedger leaky(double heat) {
    return new HeatLedger(Map.of("a", 5.0), Map.of(), Map.of("bar", 5 + heat), 8);
  }
}
