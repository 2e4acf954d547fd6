package stenotherm.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stenotherm.conduction.Bodies.assertRefused;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** Grid estimates of made-up series, and ledgers of made-up heats. */
class DiscretisationEstimateTest {
  @Test
  void findsOrderAndErrorOfAPowerSeries() {
    for (double order : new double[] {0.5, 1, 1.5, 2}) {
      double[] values = {10 + Math.pow(4, order), 10 + Math.pow(2, order), 10 + 1};
      DiscretisationEstimate estimate = DiscretisationEstimate.of(values, 2);
      assertEquals(order, estimate.order(), 1e-9);
      // the error of the finest is 1; the safety factor is 1.25
      assertEquals(1.25, estimate.error(), 1e-9);
      assertEquals(11, estimate.fine());
    }
  }

  @Test
  void ordersOutOfTrustAreLimited() {
    DiscretisationEstimate fast = DiscretisationEstimate.of(new double[] {18, 11, 10.125}, 2);
    assertEquals(2, fast.order());
    assertEquals(1.25 * 0.875 / 3, fast.error(), 1e-12);
    DiscretisationEstimate slow = DiscretisationEstimate.of(new double[] {3.1, 2, 1}, 2);
    assertEquals(0.5, slow.order());
    assertEquals(1.25 / (Math.sqrt(2) - 1), slow.error(), 1e-12);
  }

  @Test
  void noOrderWithoutALimit() {
    DiscretisationEstimate swing = DiscretisationEstimate.of(new double[] {1, 3, 2}, 2);
    assertTrue(Double.isNaN(swing.order()));
    assertEquals(2.5, swing.error(), 1e-12);
    assertEquals(0, DiscretisationEstimate.of(new double[] {3, 2, 2}, 2).error());
  }

  @Test
  void inputsAreChecked() {
    assertRefused(
        "values: 2 given, three grids needed",
        () -> DiscretisationEstimate.of(new double[] {1, 2}, 2));
    assertRefused(
        "value: NaN is not a finite number",
        () -> DiscretisationEstimate.of(new double[] {1, 2, Double.NaN}, 2));
    assertRefused(
        "ratio of cell widths: 1.0 must be above 1",
        () -> DiscretisationEstimate.of(new double[] {3, 2, 1.5}, 1));
  }

  @Test
  void ledgerAddsUp() {
    HeatLedger ledger = new HeatLedger(Map.of("a", 5.0, "b", -2.0), Map.of("lamp", 1.0), 4, 8);
    assertEquals(0, ledger.residual(), 1e-15);
    assertTrue(ledger.closes());
    HeatLedger leaky = new HeatLedger(Map.of("a", 5.0), Map.of(), 5 + 9e-6, 8);
    assertFalse(leaky.closes());
    assertTrue(new HeatLedger(Map.of("a", 5.0), Map.of(), 5 + 7e-6, 8).closes());
  }
}
