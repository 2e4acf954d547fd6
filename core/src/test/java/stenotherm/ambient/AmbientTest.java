package stenotherm.ambient;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import stenotherm.base.InvalidInputException;
import stenotherm.base.TimeFunction;

class AmbientTest {
  @Test
  void aConstantHoldsAtAllTimes() {
    assertEquals(283.15, Ambient.constant(283.15).at(-1e9));
    assertTrue(Ambient.constant(283.15).isConstant());
    assertThrows(InvalidInputException.class, () -> Ambient.constant(-10));
  }

  @Test
  void hourlyReadingsAreJoinedByLines() {
    TimeFunction series = Ambient.hourly(-3600, new double[] {280, 284, 282});
    assertEquals(280, series.at(-3600));
    assertEquals(282, series.at(-1800));
    assertEquals(284, series.at(0));
    assertEquals(282, series.at(3600));
    assertArrayEquals(new double[] {0}, series.breakpoints(-1e6, 1e6));
    assertEquals(282.5, series.mean(-3600, 3600), 1e-12);
    assertFalse(series.isConstant());
  }

  @Test
  void timesOutsideTheRecordAreRefused() {
    TimeFunction series = Ambient.hourly(0, new double[] {280, 284});
    InvalidInputException problem =
        assertThrows(InvalidInputException.class, () -> series.at(3601));
    assertTrue(problem.problem().contains("between 0 s and 3600 s"), problem.problem());
    assertThrows(InvalidInputException.class, () -> series.before(-1));
    assertThrows(InvalidInputException.class, () -> series.at(Double.NaN));
  }

  @Test
  void aSumOfStepsMayMissTheEndByRounding() {
    TimeFunction series = Ambient.hourly(0, new double[] {280, 284});
    assertEquals(284, series.at(3600 + 1e-9));
  }

  @Test
  void aSeriesMayJump() {
    TimeFunction series =
        Ambient.series(new double[] {0, 60, 60, 120}, new double[] {295, 295, 275, 275});
    assertEquals(295, series.before(60));
    assertEquals(275, series.at(60));
  }

  @Test
  void laterChangesOfTheArraysDoNotReachTheSeries() {
    double[] readings = {280, 284};
    TimeFunction series = Ambient.hourly(0, readings);
    readings[0] = 300;
    assertEquals(280, series.at(0));
  }

  @Test
  void badSeriesAreRefused() {
    assertThrows(InvalidInputException.class, () -> Ambient.hourly(0, new double[] {280}));
    assertThrows(InvalidInputException.class, () -> Ambient.hourly(0, new double[] {12, 280}));
    assertThrows(
        InvalidInputException.class, () -> Ambient.hourly(Double.NaN, new double[] {280, 281}));
    assertThrows(
        InvalidInputException.class,
        () -> Ambient.series(new double[] {0}, new double[] {280, 281}));
    assertThrows(
        InvalidInputException.class,
        () -> Ambient.series(new double[] {1, 0}, new double[] {280, 281}));
  }
}
