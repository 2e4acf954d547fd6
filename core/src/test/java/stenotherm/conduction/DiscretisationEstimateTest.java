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
  void findsOrderAndErrorOfAPowerSeries() {
    for (double order : new double[] {0.5, 1, 1.5, 2}) {
      double[] values = {10 + Math.pow(4, order), 10 + Math.pow(2, order), 10 + 1};
      DiscretisationEstimate estimate = DiscretisationEstimate.of(values, HALVED);
      assertEquals(order, estimate.order(), 1e-9);
      // the error of the finest is 1; the safety factor is 1.25
      assertEquals(1.25, estimate.error(), 1e-9);
      assertEquals(11, estimate.fine());
    }
  }

  @Test
  void ordersOutOfTrustAreLimited() {
    DiscretisationEstimate fast = DiscretisationEstimate.of(new double[] {18, 11, 10.125}, HALVED);
    assertEquals(2, fast.order());
    assertEquals(1.25 * 0.875 / 3, fast.error(), 1e-12);
    DiscretisationEstimate slow = DiscretisationEstimate.of(new double[] {3.1, 2, 1}, HALVED);
    assertEquals(0.5, slow.order());
    assertEquals(1.25 / (Math.sqrt(2) - 1), slow.error(), 1e-12);
  }

  @Test
  void noOrderWithoutALimit() {
    DiscretisationEstimate swing = DiscretisationEstimate.of(new double[] {1, 3, 2}, HALVED);
    assertTrue(Double.isNaN(swing.order()));
    assertEquals(2.5, swing.error(), 1e-12);
    DiscretisationEstimate same = DiscretisationEstimate.of(new double[] {3, 2, 2}, HALVED);
    assertTrue(Double.isNaN(same.order()));
    assertEquals(1.25, same.error(), 1e-12);
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
