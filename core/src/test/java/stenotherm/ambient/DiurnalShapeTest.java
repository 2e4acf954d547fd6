package stenotherm.ambient;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stenotherm.base.InvalidInputException;

class DiurnalShapeTest {
  /** ASHRAE Fundamentals 2021, ch. 14, Table 6, hours 1 to 24. */
  private static final double[] PRINTED = {
    0.88, 0.92, 0.95, 0.98, 1.00, 0.98, 0.91, 0.74, 0.55, 0.38, 0.23, 0.13, 0.05, 0.00, 0.00, 0.06,
    0.14, 0.24, 0.39, 0.50, 0.59, 0.68, 0.75, 0.82
  };

  @Test
  void tableOfAshrae() {
    for (int hour = 1; hour <= 24; hour++) {
      double fraction = DiurnalShape.SOLAR_TIME.fractionBelowHigh(hour);
      assertEquals(PRINTED[hour - 1], fraction, 1e-12, "hour " + hour);
    }
  }

  @Test
  void isLinearBetweenTheHoursAndRepeats() {
    DiurnalShape shape = DiurnalShape.SOLAR_TIME;
    assertEquals((0.74 + 0.55) / 2, shape.fractionBelowHigh(8.5), 1e-12);
    assertEquals((0.82 + 0.88) / 2, shape.fractionBelowHigh(0.5), 1e-12);
    assertEquals(0, shape.fractionBelowHigh(14.7));
    assertEquals(shape.fractionBelowHigh(7.3), shape.fractionBelowHigh(7.3 - 48), 1e-12);
  }

  @Test
  void aShiftedClockShiftsTheTable() {
    DiurnalShape daylightSaving = DiurnalShape.onClock(2);
    assertEquals(7, daylightSaving.hourOfLow());
    for (int hour = 1; hour <= 24; hour++) {
      assertEquals(PRINTED[hour - 1], daylightSaving.fractionBelowHigh(hour + 2), 1e-12);
    }
  }

  @ParameterizedTest
  @CsvSource({"3, 12", "7, 16.5", "0, 2", "1, 23", "21, 23.9"})
  void statedHoursAreMet(double low, double high) {
    DiurnalShape shape = new DiurnalShape(low, high);
    assertEquals(1, shape.fractionBelowHigh(low));
    assertEquals(0, shape.fractionBelowHigh(high));
    assertEquals(0, shape.fractionBelowHigh(high - 0.499));
    assertEquals(0, shape.fractionBelowHigh(high + 0.499));
  }

  @ParameterizedTest
  @CsvSource({"-1, 14", "14, 5", "5, 6.9", "0.5, 22.6", "22, 24", "NaN, 14", "5, NaN"})
  void badHoursAreRefused(double low, double high) {
    assertThrows(InvalidInputException.class, () -> new DiurnalShape(low, high));
  }
}
