package stenotherm.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import stenotherm.text.TextFormatException;

/** What reading a scenario may cost, however long its journey. */
class ReadingCostTest {
  private static final String HEAD =
      """
      format: 1
      title: many legs
      animal: corn snake, 20 g
      cup: 100 x 60 mm
      hold: 12 h
      journey:
        sealed: 2014-07-10 15:00
        lows/highs: 60 to 80 °F
        from: {name: Seattle, utc: UTC-7, latitude: 47.6 °, longitude: -122.3 °}
        legs:
      """;
  private static final String TAIL =
      """
      packings:
        - {name: box, box: 203 x 180 x 150 mm, foam: EPS 20 19 mm, fill: shredded paper}
      """;

  private static String withLegs(int number, String lasting) {
    return HEAD
        + IntStream.range(0, number)
            .mapToObj(
                leg ->
                    "    - {name: leg "
                        + leg
                        + ", at: origin, for: "
                        + lasting
                        + ", ambient: airport ramp, heading: "
                        + leg
                        + " °}\n")
            .collect(Collectors.joining())
        + TAIL;
  }

  @Test
  void everyLegBuildsItsOwnHoursOnly() {
    String month = withLegs(29, "1 d");
    assertEquals(29, ScenarioReader.read("s.yaml", month).journey().legs().size());
    long held = HeldMemory.after(() -> ScenarioReader.read("s.yaml", month));
    assertTrue(held < 8_000_000, held + " bytes");
  }

  @Test
  void longJourneysAreRefusedWhereTheyAreWritten() {
    TextFormatException longer =
        assertThrows(
            TextFormatException.class, () -> ScenarioReader.read("s.yaml", withLegs(360, "1 d")));
    assertEquals("s.yaml:11:5: journey.legs: must have at most 100 legs", longer.getMessage());
    TextFormatException days =
        assertThrows(
            TextFormatException.class, () -> ScenarioReader.read("s.yaml", withLegs(30, "1 d")));
    assertTrue(
        days.getMessage().endsWith("(leg 29): makes the journey longer than 30 d, with its hold"),
        days.getMessage());
  }
}
