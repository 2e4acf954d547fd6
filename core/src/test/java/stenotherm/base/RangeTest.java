package stenotherm.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class RangeTest {
  @Test
  void positionsLeadFromEndToEnd() {
    Range range = new Range(1.1, 4.7);
    assertEquals(1.1, range.at(-1, 2.3));
    assertEquals(2.3, range.at(0, 2.3));
    assertEquals(4.7, range.at(1, 2.3));
    for (End end : End.values()) {
      assertEquals(end.ordinal() - 1, end.position());
    }
  }

  /** From 2 down to 1 by the factor 1/2, up to 8 by the factor 4. */
  @Test
  void equalStepsMultiplyByEqualRatios() {
    Range range = new Range(1, 8);
    assertEquals(Math.sqrt(2), range.at(-0.5, 2), 1e-12);
    assertEquals(4, range.at(0.5, 2), 1e-12);
    assertEquals(0.5, range.at(-2, 2), 1e-12);
    assertEquals(32, range.at(2, 2), 1e-12);
  }

  @Test
  void whereNoRatioExistsTheyAddEqualAmounts() {
    assertEquals(-1.5, new Range(-3, 6).at(-0.5, 0), 1e-12);
    assertEquals(12, new Range(-3, 6).at(2, 0), 1e-12);
    assertEquals(1.5, new Range(0, 4).at(-0.25, 2), 1e-12);
    // the other side of the same range has a ratio
    assertEquals(Math.sqrt(8), new Range(0, 4).at(0.5, 2), 1e-12);
  }

  @Test
  void endsAreInOrder() {
    assertThrows(InvalidInputException.class, () -> new Range(2, 1));
    assertThrows(InvalidInputException.class, () -> new Range(Double.NaN, 1));
  }
}
