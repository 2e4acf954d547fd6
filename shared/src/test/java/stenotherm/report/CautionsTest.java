package stenotherm.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.scenario.Scenario;
import stenotherm.scenario.ScenarioReader;

class CautionsTest {
  private static final Scenario SCENARIO =
      ScenarioReader.read(
          "test.yaml",
          """
          format: 1
          title: test
          animal: leopard gecko, 40 g
          cup: 110 x 80 x 60 mm
          journey: overnight by air, 2 to 9 °C
          packings:
            - {name: box, box: 12 x 9 x 8 in, foam: EPS 20 19 mm, fill: shredded paper}
          """);

  private static List<String> ofRuns(String... cautions) {
    List<String> without = Cautions.of(SCENARIO, SCENARIO.packings().get(0), List.of());
    return Cautions.of(SCENARIO, SCENARIO.packings().get(0), List.of(cautions)).stream()
        .filter(caution -> !without.contains(caution))
        .toList();
  }

  @Test
  void whatHappensOnSeveralDaysIsSaidOnce() {
    String seeps = "The fill is warmer below than above: air may seep.";
    assertEquals(
        List.of("In parts of some of these journeys: " + seeps, "In 'van': Another one."),
        ofRuns(
            "In 'van', and less in 4 other parts of the journey: " + seeps,
            "In 'van': Another one.",
            "In 'van', and less in 1 other part: " + seeps.replace(":", " (1.5 K over 20 mm):"),
            "In 'porch': " + seeps));
  }

  @Test
  void whatHappensInOneWayKeepsItsLeg() {
    String seeps = "In 'van', and less in 4 other parts of the journey: Air may seep.";
    assertEquals(List.of(seeps), ofRuns(seeps, seeps));
  }
}
