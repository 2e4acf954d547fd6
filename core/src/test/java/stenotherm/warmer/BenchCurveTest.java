package stenotherm.warmer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Temperatures;
import stenotherm.base.Times;

class BenchCurveTest {
  /** From hours and degrees Celsius. */
  private static BenchCurve curve(double[] hours, double[] celsius) {
    return new BenchCurve(
        Arrays.stream(hours).map(Times::fromHours).toArray(),
        Arrays.stream(celsius).map(Temperatures::fromCelsius).toArray());
  }

  /** The rule of JIS S 4100 by hand: 20 °C/h up to 60 °C, then 10 °C/h down. */
  @Test
  void durationRuleOnATriangle() {
    BenchCurve triangle = curve(new double[] {0, 2, 6}, new double[] {20, 60, 20});
    assertEquals(1, Times.toHours(triangle.rise()), 1e-9);
    assertEquals(0.75, Times.toHours(triangle.reaches(BenchCurve.WARM)), 1e-9);
    assertEquals(60, Temperatures.toCelsius(triangle.peak()), 1e-9);
    assertEquals(2, Times.toHours(triangle.peakTime()), 1e-9);
    assertEquals(3, Times.toHours(triangle.duration()), 1e-9);
    // above 50 °C, halfway between 40 and 60
    assertEquals(1.5, Times.toHours(triangle.guaranteed()), 1e-9);
    assertEquals(50, Temperatures.toCelsius(triangle.mean()), 1e-9);
    // 58 °C
    assertEquals(1.9, Times.toHours(triangle.plateau()), 1e-9);
    assertEquals(25, Temperatures.toCelsius(triangle.at(Times.fromHours(5.5))), 1e-9);
    assertEquals(20, Temperatures.toCelsius(triangle.at(Times.fromHours(9))), 1e-9);
    assertEquals(4, Times.toHours(triangle.falls()), 1e-9);
  }

  /** A dip does not count, and what comes after it does. */
  @Test
  void timesAtOrAboveFortyAddUp() {
    BenchCurve humps = curve(new double[] {0, 1, 2, 3, 4}, new double[] {30, 50, 30, 50, 30});
    assertEquals(2, Times.toHours(humps.duration()), 1e-9);
    assertEquals(45, Temperatures.toCelsius(humps.mean()), 1e-9);
    assertEquals(0.5, Times.toHours(humps.rise()), 1e-9);
    assertEquals(3.5, Times.toHours(humps.falls()), 1e-9);
    assertEquals(1, Times.toHours(humps.peakTime()), 1e-9);
  }

  @Test
  void aCurveThatStaysLukewarmHasNoHours() {
    BenchCurve lukewarm = curve(new double[] {0, 1, 2}, new double[] {20, 34, 30});
    assertEquals(Double.POSITIVE_INFINITY, lukewarm.rise());
    assertEquals(Double.POSITIVE_INFINITY, lukewarm.reaches(BenchCurve.WARM));
    assertEquals(0, lukewarm.duration());
    assertEquals(0, lukewarm.guaranteed());
    assertEquals(0, lukewarm.falls());
    assertTrue(Double.isNaN(lukewarm.mean()));
    // one that is hot when it ends has no end of its hours
    assertEquals(2, Times.toHours(curve(new double[] {0, 2}, new double[] {45, 50}).falls()), 1e-9);
  }

  @Test
  void badCurvesAreRefused() {
    double[] hours = {0, 1, 2};
    double[] celsius = {20, 50, 40};
    assertRefused("times of a curve", () -> curve(new double[] {0, 2, 2}, celsius));
    assertRefused("times of a curve", () -> curve(new double[] {1, 2, 3}, celsius));
    assertRefused(
        "times of a curve", () -> curve(new double[] {0, 1, Double.POSITIVE_INFINITY}, celsius));
    assertRefused("curve", () -> curve(hours, new double[] {20, 50}));
    assertRefused("curve", () -> curve(new double[] {0}, new double[] {20}));
    // degrees Celsius for kelvin
    assertRefused("temperatures of a curve", () -> new BenchCurve(hours, celsius));
  }

  private static void assertRefused(String field, org.junit.jupiter.api.function.Executable bad) {
    assertEquals(field, assertThrows(InvalidInputException.class, bad).field());
  }
}
