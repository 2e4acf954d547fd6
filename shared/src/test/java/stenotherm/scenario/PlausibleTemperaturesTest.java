package stenotherm.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stenotherm.text.TextFormatException;

/** A temperature in the wrong unit is refused where it stands, before anything is computed. */
class PlausibleTemperaturesTest {
  private static final String FILE =
      """
      format: 1
      title: a frog
      animal: dyeing poison frog, 5 g
      cup: 8 oz deli cup
      journey:
        start: START
        lows/highs: OUTDOORS
        legs:
          - {name: van, at: origin, for: 2 h, ambient: AIR}
          - {name: porch, at: destination, for: 2 h, ambient: outdoors}
      packings:
        - {name: one, box: 8 x 8 x 7 in carton, foam: EPS 20 19 mm, fill: none}
      """;

  private static void read(String start, String outdoors, String air) {
    ScenarioReader.read(
        "s.yaml", FILE.replace("START", start).replace("OUTDOORS", outdoors).replace("AIR", air));
  }

  private static String fault(String start, String outdoors, String air) {
    return assertThrows(TextFormatException.class, () -> read(start, outdoors, air)).getMessage();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "48 to 66 °C|66 °C is too hot for a daily high, which is at most 56.7 °C. Did you mean °F?",
        "48 to 55 °C|48 °C is too hot for a daily low, which is at most 42.6 °C. Did you mean °F?",
        "280 to 290 °C|290 °C is too hot for a daily high, which is at most 56.7 °C. Did you mean K?",
        "120 to 150 °F|150 °F is too hot for a daily high, which is at most 134.06 °F",
        "-90 to -10 °C|-90 °C is too cold for a daily low, which is at least -73 °C. Did you mean °F?",
        "5 to 20 K|20 K is too cold for a daily high, which is at least 200.15 K. Did you mean °C or °F?"
      })
  void lowsAndHighs(String outdoors, String problem) {
    assertEquals("s.yaml:7:15: journey.lows/highs: " + problem, fault("21 °C", outdoors, "van"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "66 °C|:50: journey.legs[0].ambient (van)",
        "48 to 66 °C|:50: journey.legs[0].ambient (van)",
        "'[14:00 12 °C, 16:00 66 °C]'|:64: journey.legs[0].ambient[1] (van)"
      })
  void airOfALeg(String air, String place) {
    assertEquals(
        "s.yaml:9"
            + place
            + ": 66 °C is too hot for the air of a leg, which is at most 60 °C. Did you mean °F?",
        fault("21 °C", "5 to 20 °C", air));
  }

  @Test
  void start() {
    assertEquals(
        "s.yaml:6:10: journey.start: 70 °C is too hot for a parcel with an animal, which is at most"
            + " 50 °C. Did you mean °F?",
        fault("70 °C", "5 to 20 °C", "van"));
  }

  @Test
  void theRecordsThemselvesAreRead() {
    read("-5 °C", "-73 to 56.7 °C", "60 °C");
    read("122 °F", "28 to 134.06 °F", "140 °F");
    read("21 °C", "42.6 to 56 °C", "[14:00 12 °C, 16:00 60 °C]");
  }
}
