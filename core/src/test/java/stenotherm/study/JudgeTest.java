package stenotherm.study;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import stenotherm.animal.TemperatureBand;
import stenotherm.animal.Tolerance;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.Times;

class JudgeTest {
  private static final double HOUR = Times.HOUR;
  private static final double NEVER = Double.POSITIVE_INFINITY;

  /** Alarm from 283 K to 305 K by a mean over an hour, critical from 276 K to 312 K. */
  private static final Tolerance HOURLY = tolerance(HOUR);

  static Tolerance tolerance(double averaging) {
    return new Tolerance(band(288, 300), band(283, 305), band(276, 312), averaging);
  }

  private static TemperatureBand band(double low, double high) {
    return new TemperatureBand(new Range(low, high), Source.assumed("made up"));
  }

  private static Fate fate(double opening, double[] times, double... temperatures) {
    return new Judge(List.of(HOURLY), times, opening, none(1, times))
        .fate(new double[][] {temperatures}, NEVER);
  }

  /** No place in reach is hotter than the animals. */
  static double[][] none(int animals, double[] times) {
    return new double[animals][times.length];
  }

  private static double[] quarters(int count) {
    double[] times = new double[count];
    for (int row = 0; row < count; row++) {
      times[row] = row * HOUR / 4;
    }
    return times;
  }

  /** On a line the mean over a span is the value half a span ago. */
  @Test
  void theMeanOfALineIsItsMiddle() {
    double[] times = {0, 600, 1700, 3600, 5000, 9000};
    double[] line = new double[times.length];
    for (int row = 0; row < times.length; row++) {
      line[row] = 290 - times[row] / 500;
    }
    double[] means = Judge.runningMeans(times, line, HOUR);
    // less than an hour has passed: the mean since sealing
    double[] ago = {0, 300, 850, 1800, 3200, 7200};
    for (int row = 0; row < times.length; row++) {
      assertEquals(290 - ago[row] / 500, means[row], 1e-9);
    }
  }

  @Test
  void runningMeansNeedAValueForEachTime() {
    double[] times = {0, 600, 1200};
    double[] values = {290, 291, 292};
    assertArrayEquals(
        Judge.runningMeans(times, values, 600), JourneyStudy.runningMeans(times, values, 600));
    for (Executable wrong :
        List.<Executable>of(
            () -> JourneyStudy.runningMeans(times, new double[2], 600),
            () -> JourneyStudy.runningMeans(times, new double[4], 600),
            () -> JourneyStudy.runningMeans(new double[0], new double[0], 600),
            () -> JourneyStudy.runningMeans(new double[] {0, 600, 600}, values, 600),
            () -> JourneyStudy.runningMeans(times, values, 0))) {
      assertThrows(InvalidInputException.class, wrong);
    }
  }

  /** By hand: a triangle of 8 K over four hours, and a span that begins between two times. */
  @Test
  void theMeanOfATriangleIsItsAreaOverTheSpan() {
    double[] times = {0, 2 * HOUR, 4 * HOUR};
    double[] triangle = {280, 288, 280};
    assertArrayEquals(
        new double[] {280, 284, 284}, Judge.runningMeans(times, triangle, 4 * HOUR), 1e-9);
    // of the last hour, 4 K to 0 K; of the last three, (4 + 8) / 2 over one and 4 over two
    assertEquals(282, Judge.runningMeans(times, triangle, HOUR)[2], 1e-9);
    assertEquals(280 + (6 + 8) / 3.0, Judge.runningMeans(times, triangle, 3 * HOUR)[2], 1e-9);
  }

  @Test
  void aShortDipBelowTheAlarmBandIsNone() {
    // 1 K below the band for one stored time, 284 K on the mean of the hour
    Fate fate = fate(2 * HOUR, quarters(9), 286, 286, 286, 282, 286, 286, 286, 286, 286);
    assertEquals(2, fate.cold().margin(), 1e-9);
    assertEquals(NEVER, fate.breach());
    assertEquals(0, fate.outside());
  }

  @Test
  void aCriticalLimitCountsAtAnyMoment() {
    Fate cold = fate(2 * HOUR, quarters(9), 288, 288, 288, 275.9, 288, 288, 288, 288, 288);
    assertEquals(0.75 * HOUR, cold.cold().breach());
    assertEquals(NEVER, cold.hot().breach());
    assertEquals(288 - 12.1 / 4 - 283, cold.cold().margin(), 1e-9);
    Fate hot = fate(2 * HOUR, quarters(9), 300, 300, 300, 300, 300, 300, 312.1, 300, 300);
    assertEquals(1.5 * HOUR, hot.hot().breach());
    assertEquals(1.5 * HOUR, hot.breach());
    assertEquals(NEVER, hot.cold().breach());
  }

  @Test
  void limitsThemselvesAreTolerated() {
    assertEquals(NEVER, fate(HOUR, new double[] {0, HOUR, 2 * HOUR}, 283, 283, 283).breach());
    assertEquals(NEVER, fate(HOUR, new double[] {0, HOUR, 2 * HOUR}, 305, 305, 305).breach());
  }

  /** Margins end with the planned opening; a breach is told whenever it comes. */
  @Test
  void whatComesAfterTheOpeningIsABreachAndNoMargin() {
    double[] times = {0, HOUR, 2 * HOUR, 3 * HOUR, 4 * HOUR};
    Fate fate = fate(2 * HOUR, times, 290, 290, 290, 280, 280);
    assertEquals(7, fate.cold().margin(), 1e-9);
    assertEquals(15, fate.hot().margin(), 1e-9);
    // the mean of the third hour is 285 K, of the fourth 280 K
    assertEquals(4 * HOUR, fate.cold().breach());
    assertEquals(0, fate.outside());
    Fate longer = fate(4 * HOUR, times, 290, 290, 290, 280, 280);
    assertEquals(-3, longer.cold().margin(), 1e-9);
    // from 285 K down to 280 K, below 283 K for the last three fifths
    assertEquals(0.6 * HOUR, longer.outside(), 1e-9);
  }

  @Test
  void theTightestOfAllAnimalsCounts() {
    double[] times = {0, HOUR, 2 * HOUR};
    Judge judge = new Judge(List.of(HOURLY, HOURLY), times, 2 * HOUR, none(2, times));
    Fate fate = judge.fate(new double[][] {{284, 284, 280}, {300, 306, 306}}, NEVER);
    // 282 K on the mean of the second hour; 303 K on that of the first, 306 K then
    assertEquals(-1, fate.cold().margin(), 1e-9);
    assertEquals(-1, fate.hot().margin(), 1e-9);
    assertEquals(2 * HOUR, fate.cold().breach());
    assertEquals(2 * HOUR, fate.hot().breach());
    // from 284 K to 282 K half of the hour, from 303 K to 306 K a third
    assertEquals(HOUR / 2, fate.outside(), 1e-9, "of one animal, not the sum");
  }

  @Test
  void timeOutsideBothEndsIsCounted() {
    double[] times = {0, HOUR, 2 * HOUR, 3 * HOUR};
    Fate fate = fate(3 * HOUR, times, 282, 282, 330, 306);
    // means of 282, 282, 306 and 318 K: an hour below, 1/24 below, 1/24 above, an hour above
    assertEquals(HOUR * (2 + 2 / 24.0), fate.outside(), 1e-6);
  }

  /** Air and hot places in reach end a journey as well, each at its own time. */
  @Test
  void airAndHotPlacesAreBreaches() {
    double[] times = {0, HOUR, 2 * HOUR};
    double[][] hotter = {{0, 22.9, 23.3}};
    Judge judge = new Judge(List.of(HOURLY), times, 2 * HOUR, hotter);
    double[][] even = {{290, 290, 290}};
    // 40 °C are 313.15 K: 23.15 K more
    assertEquals(2 * HOUR, judge.fate(even, NEVER).burnt());
    assertEquals(2 * HOUR, judge.fate(even, NEVER).breach());
    Fate airless = judge.fate(even, HOUR / 2);
    assertEquals(HOUR / 2, airless.airless());
    assertEquals(HOUR / 2, airless.breach());
    assertEquals(7, airless.cold().margin(), 1e-9, "the margins of temperature are as they were");
    assertEquals(NEVER, fate(2 * HOUR, times, 290, 290, 290).burnt());
  }

  @Test
  void anAnimalMayAverageOverAnotherTime() {
    double[] times = quarters(17);
    double[] dip = new double[17];
    for (int row = 0; row < dip.length; row++) {
      dip[row] = row >= 5 && row <= 9 ? 282 : 290;
    }
    assertEquals(2.25 * HOUR, fate(4 * HOUR, times, dip).cold().breach());
    Fate patient =
        new Judge(List.of(tolerance(3 * HOUR)), times, 4 * HOUR, none(1, times))
            .fate(new double[][] {dip}, NEVER);
    assertEquals(NEVER, patient.breach());
  }
}
