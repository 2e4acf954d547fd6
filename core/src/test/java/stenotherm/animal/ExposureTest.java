package stenotherm.animal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Source;

/** Values worked by hand: areas of triangles and trapezoids. */
class ExposureTest {
  private static final double HOUR = 3600;
  private static final Tolerance TOLERANCE =
      new Tolerance(band(290, 300), band(285, 305), band(280, 315));

  private static TemperatureBand band(double low, double high) {
    return new TemperatureBand(new Range(low, high), Source.assumed("a test"));
  }

  private static double[] hours(double... values) {
    double[] seconds = values.clone();
    for (int index = 0; index < seconds.length; index++) {
      seconds[index] *= HOUR;
    }
    return seconds;
  }

  @Test
  void aNightThatDipsBelowComfort() {
    double[] coldest = {294, 286, 294};
    double[] hottest = {295, 287, 295};
    Exposure exposure = Exposure.of(TOLERANCE, hours(0, 4, 8), coldest, hottest);

    Exposure.Excursions comfort = exposure.outside(Limit.COMFORTABLE);
    // 2 K per hour: below 290 K from hour 2 to hour 6, 4 K deep in the middle.
    assertEquals(4 * HOUR, comfort.cold().duration(), 1e-9);
    assertEquals(8 * HOUR, comfort.cold().degreeTime(), 1e-9);
    assertEquals(OptionalDouble.of(2 * HOUR), comfort.cold().firstBreach());
    assertEquals(new Exposure.Excursion(0, 0, OptionalDouble.empty()), comfort.hot());
    assertEquals(4 * HOUR, comfort.duration(), 1e-9);
    assertEquals(OptionalDouble.of(2 * HOUR), comfort.firstBreach());

    assertEquals(0, exposure.outside(Limit.ALARM).duration());
    assertEquals(OptionalDouble.empty(), exposure.outside(Limit.ALARM).firstBreach());
    assertEquals(new Exposure.Moment(286, 4 * HOUR), exposure.coldest());
    assertEquals(new Exposure.Moment(295, 0), exposure.hottest());
    assertEquals(-4, exposure.coldMargin(Limit.COMFORTABLE));
    assertEquals(1, exposure.coldMargin(Limit.ALARM));
    assertEquals(6, exposure.coldMargin(Limit.CRITICAL));
    assertEquals(5, exposure.hotMargin(Limit.COMFORTABLE));
  }

  @Test
  void beyondEveryLimitOnTheHotSide() {
    double[] coldest = {300, 310};
    double[] hottest = {300, 320};
    Exposure exposure = Exposure.of(TOLERANCE, hours(0, 2), coldest, hottest);
    // The hottest part gains 10 K per hour.
    assertEquals(2 * HOUR, exposure.comfortable().hot().duration(), 1e-9);
    assertEquals(20 * HOUR, exposure.comfortable().hot().degreeTime(), 1e-9);
    assertEquals(OptionalDouble.of(0), exposure.comfortable().firstBreach());
    assertEquals(1.5 * HOUR, exposure.alarm().hot().duration(), 1e-9);
    assertEquals(0.5 * 1.5 * 15 * HOUR, exposure.alarm().hot().degreeTime(), 1e-9);
    assertEquals(1.5 * HOUR, exposure.critical().firstBreach().orElseThrow(), 1e-9);
    assertEquals(-5, exposure.hotMargin(Limit.CRITICAL));
  }

  @Test
  void tooColdAndTooHotAtOnceCountsOnce() {
    double[] coldest = {284, 284, 292};
    double[] hottest = {292, 308, 308};
    Exposure exposure = Exposure.of(TOLERANCE, hours(0, 1, 2), coldest, hottest);
    Exposure.Excursions comfort = exposure.comfortable();
    // Cold for 1 h and 6/8 h, hot for 8/16 h and 1 h; at least one of the two all the time.
    assertEquals(1.75 * HOUR, comfort.cold().duration(), 1e-9);
    assertEquals(1.5 * HOUR, comfort.hot().duration(), 1e-9);
    assertEquals(2 * HOUR, comfort.duration(), 1e-9);
  }

  @Test
  void rightAtALimitIsNotOutside() {
    double[] steady = {290, 290, 290};
    Exposure exposure = Exposure.of(TOLERANCE, hours(0, 1, 2), steady, steady);
    assertEquals(0, exposure.comfortable().duration());
    assertEquals(OptionalDouble.empty(), exposure.comfortable().firstBreach());
    assertEquals(0, exposure.coldMargin(Limit.COMFORTABLE));
  }

  @Test
  void firstOfEquallyColdMomentsCounts() {
    double[] values = {291, 290.5, 291, 290.5};
    Exposure exposure = Exposure.of(TOLERANCE, hours(0, 1, 2, 3), values, values);
    assertEquals(HOUR, exposure.coldest().time());
  }

  @Test
  void badHistoriesAreRefused() {
    double[] two = {0, 60};
    double[] warm = {295, 295};
    refused(new double[] {0}, new double[] {295}, new double[] {295});
    refused(two, warm, new double[] {295});
    refused(new double[] {0, 0}, warm, warm);
    refused(new double[] {0, Double.NaN}, warm, warm);
    refused(two, new double[] {295, Double.NaN}, warm);
    refused(two, new double[] {295, 296}, warm);
    refused(two, new double[] {20, 20}, warm);
  }

  private static void refused(double[] times, double[] coldest, double[] hottest) {
    assertThrows(
        InvalidInputException.class, () -> Exposure.of(TOLERANCE, times, coldest, hottest));
  }
}
