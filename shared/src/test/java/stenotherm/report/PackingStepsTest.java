package stenotherm.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.scenario.ScenarioReader;
import stenotherm.words.Figures;

class PackingStepsTest {
  private static PackingSteps steps(String packing) {
    return new PackingSteps(
        ScenarioReader.read(
                "steps.yaml",
                """
                format: 1
                title: Steps
                animal: leopard gecko, 40 g
                cup: {size: 100 x 80 x 60 mm, position: [10 mm, 0 mm, 30 mm]}
                journey: overnight by air, 28 to 45 °F
                packings:
                """
                    + packing.indent(2))
            .packings()
            .get(0),
        Figures.METRIC);
  }

  @Test
  void everythingHasItsStepItsPlaceAndItsTape() {
    PackingSteps steps =
        steps(
            """
            - name: full
              box: {inner: 200 x 180 x 160 mm}
              foam: EPS 20 30 mm
              floor: XPS 50 mm
              fill: shredded paper
              warmers:
                - {warmer: 40 hour warmer on lid, stand-off: 10 mm, film: half taped over}
                - {warmer: 40 hour warmer on right, film: edges taped}
              packs: [{pack: gel pack on floor, size: 120 x 80 x 20 mm, start: 5 °C}]
              holes: [1 x 6 mm on lid, 3 x 5 mm on left]
              seams: taped
            """);
    assertEquals(
        List.of(
            "Line the box, 268 x 248 x 248 mm outside: corrugated board 4 mm, then EPS 20 30 mm on"
                + " lid, left, right, front, back; corrugated board 4 mm, then XPS 50 mm on floor.",
            "Make 1 hole of 6 mm in the lid and 3 holes of 5 mm in the left side, spread over the"
                + " face.",
            "Tape 'pack 1' (gel pack, 120 x 80 x 20 mm) flat to the inside of the floor, in its"
                + " middle. It goes in at 5 °C.",
            "Lay 30 mm of shredded paper on the floor.",
            "Set 'cup' (100 x 80 x 60 mm inside) 30 mm above the floor inside, 60 mm from left and"
                + " 40 mm from right, 50 mm from front and back. In it: leopard gecko, 40 g on"
                + " towel 4 mm.",
            "Tape 'warmer 2' (40 hour warmer) flat to the inside of the right side, in its middle."
                + " Tape its edges only: the middle of the film stays free.",
            "Fill all room around and above with shredded paper, loosely, so that nothing shifts.",
            "Hold 'warmer 1' (40 hour warmer) 10 mm off the lid, in its middle. Tape over half of"
                + " its film; the other half stays free.",
            "Close the lid; seams: all taped, so that air comes through foam and holes only."),
        steps.sentences());
    assertEquals(
        List.of(3, 5, 6, 8),
        List.of("pack 1", "cup", "warmer 2", "warmer 1").stream().map(steps::stepOf).toList());
  }

  @Test
  void whatIsEmptyStaysEmpty() {
    List<String> sentences =
        steps("- {name: bare, box: 220 x 200 x 180 mm, foam: EPS 20 20 mm, fill: none}")
            .sentences();
    assertEquals(4, sentences.size());
    assertEquals("Leave the room around empty, as computed; nothing may shift.", sentences.get(2));
    assertEquals("Close the lid; seams: closed as they fit, not taped over.", sentences.get(3));
  }
}
