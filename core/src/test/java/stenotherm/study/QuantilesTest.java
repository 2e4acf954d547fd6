package stenotherm.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import stenotherm.base.InvalidInputException;

class QuantilesTest {
  @Test
  void valuesOfABinAreSpreadEvenlyInIt() {
    Quantiles quantiles = new Quantiles(0, 10, 1);
    for (double value : new double[] {2.1, 2.2, 2.3, 2.4, 7.9, 7.9}) {
      quantiles.add(value);
    }
    assertEquals(2, quantiles.quantile(0), 1e-12);
    assertEquals(2.75, quantiles.quantile(0.5), 1e-12);
    assertEquals(3, quantiles.quantile(4.0 / 6), 1e-12);
    assertEquals(7.5, quantiles.quantile(5.0 / 6), 1e-12);
    assertEquals(8, quantiles.quantile(1), 1e-12);
  }

  /** Half of the journeys that are outside at all are so for less, however many never are. */
  @Test
  void theMedianAboveTheLowerEndLeavesOutWhatIsThere() {
    Quantiles quantiles = new Quantiles(0, 10, 1);
    quantiles.add(0);
    assertTrue(quantiles.medianAboveLow().isEmpty());
    quantiles.add(0);
    quantiles.add(3.2);
    assertEquals(3.5, quantiles.medianAboveLow().orElseThrow(), 1e-12);
    quantiles.add(7.9);
    assertEquals(4, quantiles.medianAboveLow().orElseThrow(), 1e-12);
  }

  @Test
  void theMedianBelowAnEdgeLeavesOutWhatIsBeyond() {
    Quantiles quantiles = new Quantiles(-100, 100, 0.01);
    quantiles.add(0.004);
    quantiles.add(7);
    assertTrue(quantiles.medianBelow(0).isEmpty());
    quantiles.add(-2.001);
    assertEquals(-2.005, quantiles.medianBelow(0).orElseThrow(), 1e-9);
    quantiles.add(-5);
    quantiles.add(-0.001);
    assertEquals(-2.005, quantiles.medianBelow(0).orElseThrow(), 1e-9);
  }

  /** A journey that is never outside has no 2 s outside, either. */
  @Test
  void whatIsTheLowerEndItselfStaysSo() {
    Quantiles quantiles = new Quantiles(0, 10, 1);
    Quantiles more = new Quantiles(0, 10, 1);
    for (double value : new double[] {0, 0, 0.3}) {
      quantiles.add(value);
      more.add(value);
    }
    more.add(-1);
    more.add(5.5);
    quantiles.addAll(more);
    assertEquals(8, quantiles.count());
    assertEquals(1, quantiles.outside());
    assertEquals(Double.NEGATIVE_INFINITY, quantiles.quantile(0.1));
    assertEquals(0, quantiles.quantile(0.2));
    assertEquals(0, quantiles.quantile(5.0 / 8));
    assertEquals(0.5, quantiles.quantile(6.0 / 8), 1e-12);
  }

  @Test
  void whatNoBinHoldsIsCountedAndNotInvented() {
    Quantiles quantiles = new Quantiles(0, 10, 1);
    for (double value : new double[] {-5, 4.5, 10, Double.POSITIVE_INFINITY}) {
      quantiles.add(value);
    }
    assertEquals(4, quantiles.count());
    assertEquals(3, quantiles.outside());
    assertEquals(Double.NEGATIVE_INFINITY, quantiles.quantile(0));
    assertEquals(Double.NEGATIVE_INFINITY, quantiles.quantile(0.25));
    assertEquals(4.5, quantiles.quantile(0.375), 1e-12);
    assertEquals(5, quantiles.quantile(0.5), 1e-12);
    assertEquals(Double.POSITIVE_INFINITY, quantiles.quantile(0.51));
  }

  @Test
  void theLastBinReachesBeyondTheRangeWhereWidthsDoNotFit() {
    Quantiles quantiles = new Quantiles(0, 1, 0.4);
    quantiles.add(1.1);
    assertEquals(0, quantiles.outside());
    assertEquals(1.0, quantiles.quantile(0.5), 1e-12);
  }

  @Test
  void refusesWhatItCannotCount() {
    Quantiles quantiles = new Quantiles(0, 10, 1);
    assertThrows(IllegalStateException.class, () -> quantiles.quantile(0.5));
    assertThrows(InvalidInputException.class, () -> quantiles.add(Double.NaN));
    quantiles.add(1);
    assertThrows(InvalidInputException.class, () -> quantiles.quantile(1.1));
    assertThrows(InvalidInputException.class, () -> quantiles.quantile(Double.NaN));
    assertThrows(InvalidInputException.class, () -> new Quantiles(1, 1, 0.1));
    assertThrows(InvalidInputException.class, () -> new Quantiles(0, 1, 0));
    assertThrows(InvalidInputException.class, () -> quantiles.addAll(new Quantiles(0, 10, 0.5)));
    assertThrows(InvalidInputException.class, () -> quantiles.addAll(new Quantiles(0, 9, 1)));
    assertThrows(InvalidInputException.class, () -> quantiles.addAll(new Quantiles(1, 11, 1)));
  }
}
