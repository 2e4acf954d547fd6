package stenotherm.ambient;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Temperatures;
import stenotherm.base.Times;

class DailyExtremesTest {
  /**
   * ASHRAE Fundamentals 2021, ch. 14, Table 8 (Example 9): Atlanta in July, high 33.1 °C, daily
   * range 11.2 K, at hours 1 to 24 of local daylight time.
   */
  private static final double[] ATLANTA = {
    24.7, 23.9, 23.2, 22.8, 22.5, 22.1, 21.9, 22.1, 22.9, 24.8, 26.9, 28.8, 30.5, 31.6, 32.5, 33.1,
    33.1, 32.4, 31.5, 30.4, 28.7, 27.5, 26.5, 25.5
  };

  private static final Range ATLANTA_DAY =
      new Range(Temperatures.fromCelsius(33.1 - 11.2), Temperatures.fromCelsius(33.1));

  private static DailyExtremes atlanta(double clockAhead) {
    return new DailyExtremes(0, List.of(ATLANTA_DAY), DiurnalShape.onClock(clockAhead));
  }

  /**
   * The example computes hour 1 as hour -0.73 of solar time and takes the fraction of the nearest
   * whole hour, 23: a clock two hours ahead. All values come out to the printed digit.
   */
  @Test
  void atlantaToThePrintedDigit() {
    DailyExtremes extremes = atlanta(2);
    for (int hour = 1; hour <= 24; hour++) {
      double celsius = Temperatures.toCelsius(extremes.at(hour * Times.HOUR));
      assertEquals(ATLANTA[hour - 1], celsius, 0.05 + 1e-9, "hour " + hour);
    }
  }

  /**
   * With the true 1.73 h, linear between the hours, the example's own rounding shows: 0.27 h on the
   * steepest hour of 0.19 times 11.2 K make 0.57 K, and 0.05 K of printing.
   */
  @Test
  void atlantaWithTheTrueSolarTime() {
    DailyExtremes extremes = atlanta(1.73);
    for (int hour = 1; hour <= 24; hour++) {
      double celsius = Temperatures.toCelsius(extremes.at(hour * Times.HOUR));
      assertEquals(ATLANTA[hour - 1], celsius, 0.27 * 0.19 * 11.2 + 0.05, "hour " + hour);
    }
  }

  private static DailyExtremes threeDays() {
    return new DailyExtremes(
        -15 * Times.HOUR,
        List.of(new Range(270, 280), new Range(272, 275), new Range(260, 285)),
        DiurnalShape.SOLAR_TIME);
  }

  private static double at(DailyExtremes extremes, int day, double hour) {
    return extremes.at((day * 24 - 15 + hour) * Times.HOUR);
  }

  @Test
  void everyLowAndHighIsMetToTheBit() {
    DailyExtremes extremes = threeDays();
    for (int day = 0; day < 3; day++) {
      Range given = extremes.days().get(day);
      assertEquals(given.low(), at(extremes, day, 5), "low of day " + day);
      assertEquals(given.high(), at(extremes, day, 14), "high of day " + day);
      assertEquals(given.high(), at(extremes, day, 15), "end of high of day " + day);
    }
  }

  @Test
  void anEveningFallsToTheLowOfTheNextDay() {
    // 20 h: half of the way from 280 K to the next day's 272 K.
    assertEquals(276, at(threeDays(), 0, 20), 1e-9);
    // 8 h: 0.74 of the range below the same day's high.
    assertEquals(285 - 0.74 * 25, at(threeDays(), 2, 8), 1e-9);
  }

  @Test
  void theDaysOutsideAreTakenLikeTheirNeighbours() {
    // 1 h of the first day and 22 h of the last, each within a run of equal days.
    assertEquals(280 - 0.88 * 10, at(threeDays(), 0, 1), 1e-9);
    assertEquals(285 - 0.68 * 25, at(threeDays(), 2, 22), 1e-9);
  }

  @Test
  void thereIsNoJumpAnywhere() {
    DailyExtremes extremes = threeDays();
    double step = 10;
    // The steepest hour takes 0.19 of the largest range.
    double most = 0.19 * 25 * step / Times.HOUR + 1e-9;
    Range covered = extremes.covered();
    for (double time = covered.low(); time + step <= covered.high(); time += step) {
      assertEquals(extremes.at(time), extremes.at(time + step), most, "at " + time + " s");
      assertEquals(extremes.at(time), extremes.before(time));
    }
  }

  @Test
  void theMeanIsThatOfManyTimes() {
    DailyExtremes extremes = threeDays();
    double from = -7.3 * Times.HOUR;
    double to = 22.8 * Times.HOUR;
    int parts = 100_000;
    double sum = 0;
    for (int part = 0; part < parts; part++) {
      sum += extremes.at(from + (part + 0.5) * (to - from) / parts);
    }
    assertEquals(sum / parts, extremes.mean(from, to), 1e-6);
  }

  @Test
  void equalDaysRepeatEveryDay() {
    DailyExtremes extremes =
        new DailyExtremes(
            0, List.of(ATLANTA_DAY, ATLANTA_DAY, ATLANTA_DAY), DiurnalShape.SOLAR_TIME);
    for (double time = 0; time <= Times.DAY; time += 617) {
      assertEquals(extremes.at(time), extremes.at(time + Times.DAY), 1e-9);
      assertEquals(extremes.at(time), extremes.at(time + 2 * Times.DAY), 1e-9);
    }
  }

  @Test
  void breaksAtTheHoursOfTheTableOnly() {
    DailyExtremes extremes = atlanta(0);
    double[] hours = new double[23];
    for (int hour = 1; hour <= 23; hour++) {
      hours[hour - 1] = hour * Times.HOUR;
    }
    assertArrayEquals(hours, extremes.breakpoints(0, Times.DAY), 1e-6);
    assertArrayEquals(hours, extremes.breakpoints(-1e9, 1e9), 1e-6);
  }

  @Test
  void timesOutsideTheDaysAreRefusedWithTheCoveredRange() {
    DailyExtremes extremes = atlanta(0);
    InvalidInputException problem =
        assertThrows(InvalidInputException.class, () -> extremes.at(Times.DAY + 1));
    assertTrue(problem.problem().contains("between 0 s and 86400 s"), problem.problem());
    assertThrows(InvalidInputException.class, () -> extremes.at(-1));
    assertThrows(InvalidInputException.class, () -> extremes.at(Double.NaN));
  }

  @Test
  void aDayWithoutARangeIsConstant() {
    Range flat = new Range(283.15, 283.15);
    DailyExtremes extremes = new DailyExtremes(0, List.of(flat, flat), DiurnalShape.SOLAR_TIME);
    assertTrue(extremes.isConstant());
    assertEquals(283.15, extremes.at(12_345));
  }

  @Test
  void equalInputsMakeEqualFunctions() {
    assertEquals(atlanta(1), atlanta(1));
    assertEquals(atlanta(1).hashCode(), atlanta(1).hashCode());
    assertNotEquals(atlanta(1), atlanta(1.5));
  }

  @Test
  void badDaysAreRefused() {
    DiurnalShape shape = DiurnalShape.SOLAR_TIME;
    assertThrows(InvalidInputException.class, () -> new DailyExtremes(0, List.of(), shape));
    assertThrows(
        InvalidInputException.class,
        () -> new DailyExtremes(0, List.of(new Range(-5, 280)), shape));
    assertThrows(
        InvalidInputException.class,
        () -> new DailyExtremes(Double.NaN, List.of(ATLANTA_DAY), shape));
  }
}
