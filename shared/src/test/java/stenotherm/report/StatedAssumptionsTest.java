package stenotherm.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.scenario.ScenarioReader;

class StatedAssumptionsTest {
  /** What no measurement tells is said with its value, its range and what it moves. */
  @Test
  void whatIsAssumedOfWarmersAndAirIsStated() {
    String text =
        """
        format: 1
        title: one
        animal: leopard gecko, 40 g
        cup: 16 fl oz cup
        journey: two days by road, 3 to 12 °C
        packings:
          - {name: box, box: 300 x 200 x 160 mm, foam: foam 19 mm, fill: shredded paper}
        """;
    List<String> all = StatedAssumptions.sentences(ScenarioReader.read("one.yaml", text));
    for (String each :
        List.of(
            "Preset, journey: sealed, 15:00 on a day without date, ",
            "Container 16 fl oz, round, diameter 100 mm, height 60.25 mm, wall of ",
            "Activation energy of iron powder: 40 kJ/mol, 25 to 60; ",
            "Rating bench: Warm support of 30 °C",
            "Air counts as harmful below 12 % oxygen or above 3 % carbon dioxide: ")) {
      assertEquals(1, all.stream().filter(one -> one.startsWith(each)).count(), each);
    }
    assertEquals(List.of(), all.stream().filter(one -> one.contains("2026-01-15")).toList());
  }
}
