package stenotherm.animal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Source;

class ToleranceTest {
  private static final Source SOURCE = Source.assumed("a test");

  private static TemperatureBand band(double low, double high) {
    return TemperatureBand.celsius(low, high, SOURCE);
  }

  @Test
  void bandsAreFoundByTheirKind() {
    Tolerance tolerance = new Tolerance(band(18, 29), band(10, 32), band(8, 41));
    assertEquals(band(18, 29), tolerance.band(Limit.COMFORTABLE));
    assertEquals(band(10, 32), tolerance.band(Limit.ALARM));
    assertEquals(band(8, 41), tolerance.band(Limit.CRITICAL));
  }

  @Test
  void withoutKnownLimitsNoMomentMayLieOutsideTheAlarmBand() {
    Tolerance tolerance = new Tolerance(band(18, 26), band(16, 28));
    assertEquals(tolerance.alarm().range(), tolerance.critical().range());
    assertTrue(tolerance.critical().source().text().contains("(assumed)"));
  }

  @Test
  void comfortReachingOutOfAlarmIsRefused() {
    InvalidInputException problem =
        assertThrows(
            InvalidInputException.class,
            () -> new Tolerance(band(9, 29), band(10, 32), band(8, 41)));
    assertEquals("comfortable band", problem.field());
    assertTrue(problem.problem().contains("282.15 K"), problem.problem());
  }

  @Test
  void alarmReachingOutOfTheCriticalLimitsIsRefused() {
    assertThrows(
        InvalidInputException.class, () -> new Tolerance(band(18, 29), band(10, 42), band(8, 41)));
    assertThrows(
        InvalidInputException.class, () -> new Tolerance(band(18, 29), band(7, 32), band(8, 41)));
  }

  @Test
  void celsiusForKelvinIsRefused() {
    assertThrows(InvalidInputException.class, () -> new TemperatureBand(new Range(18, 29), SOURCE));
  }
}
