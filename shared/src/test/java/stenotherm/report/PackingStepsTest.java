package stenotherm.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stenotherm.parcel.Parcel;
import stenotherm.scenario.Scenario;
import stenotherm.scenario.ScenarioReader;
import stenotherm.words.Figures;

class PackingStepsTest {
  private static PackingSteps steps(String packing) {
    return steps(packing, Figures.METRIC);
  }

  private static PackingSteps steps(String packing, Figures figures) {
    Scenario scenario =
        ScenarioReader.read(
            "steps.yaml",
            """
            format: 1
            title: Steps
            animal: leopard gecko, 40 g
            %sjourney: overnight by air, 28 to 45 °F
            packings:
            """
                    .formatted(
                        packing.contains("containers:")
                            ? ""
                            : "cup: {size: 100 x 80 x 60 mm, position: [10 mm, 0 mm, 30 mm]}\n")
                + packing.indent(2));
    Parcel parcel = scenario.packings().get(0);
    return new PackingSteps(parcel, scenario.carton(parcel), none -> false, figures);
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
            "Line the box, 268 x 248 x 248 mm outside and of corrugated board 4 mm, with EPS 20 30"
                + " mm on lid, left, right, front, back; XPS 50 mm on floor.",
            "Make 1 hole of 6 mm in the lid, 61 mm from front, half-way between left and right;"
                + " 3 holes of 5 mm in the left side, in a row 48 mm from front, the outer ones 71"
                + " mm from bottom and top, all equally apart; measured outside, from the edges of"
                + " the box to the middle of a hole. Nothing but fill may lie on or behind them.",
            "Tape 'pack 1' (gel pack, 195 g, 120 x 80 x 20 mm) flat to the inside of the floor, in its"
                + " middle. It goes in at 5 °C: from the refrigerator, not frozen. Wipe it dry first,"
                + " or the tape does not hold.",
            "Lay 30 mm of shredded paper on the floor.",
            "Set 'cup' (100 x 80 x 60 mm inside), with 8 holes of 2 mm in its lid, 30 mm above the"
                + " floor inside, 60 mm from left and 40 mm from right, 50 mm from front and back."
                + " In it: leopard gecko, 40 g on damp paper towel 4 mm.",
            "Tape 'warmer 2' (40 hour warmer, 128 x 82 x 12 mm) flat to the inside of the right side, in its middle."
                + " Tape its edges only: the middle of the film stays free.",
            "Fill all room around with shredded paper, up to 22 mm below the lid, so that nothing"
                + " shifts.",
            "Lay 'warmer 1' (40 hour warmer, 128 x 82 x 12 mm) 10 mm off the lid, in its middle, flat on that fill."
                + " Tape over half of its film; the other half stays free.",
            "Fill the rest above with shredded paper: that alone keeps 'warmer 1' off the lid.",
            "Between 'warmer 1' and 'cup' there must be 48 mm of shredded paper, pressed firm: the"
                + " warmer must never come to lie on it.",
            "Between 'warmer 2' and 'cup' there must be 28 mm of shredded paper, pressed firm: the"
                + " warmer must never come to lie on it.",
            "Close the lid; seams: all taped, so that air comes through foam and holes only."),
        steps.sentences());
    assertEquals(
        List.of(3, 5, 6, 8),
        List.of("pack 1", "cup", "warmer 2", "warmer 1").stream().map(steps::stepOf).toList());
  }

  @Test
  void fillIsPutInAsItsMaterialIs() {
    String box = "- {name: small, box: 8 x 8 x 7 in carton, foam: EPS 20 3/4 in, fill: %s}";
    List<String> tight = steps(box.formatted("crumpled newspaper"), Figures.US).sentences();
    assertEquals(
        List.of(
            "Line the 8 x 8 x 7 in carton, 8 3/8 x 8 3/8 x 7 3/8 in outside and of corrugated board"
                + " 3/16 in, with EPS 20 3/4 in on all sides. Cut EPS 20 for it: lid and floor 8 x 8 in,"
                + " front and back 8 x 5 1/2 in, left and right 6 1/2 x 5 1/2 in.",
            "Lay 1 1/8 in of tightly crumpled newspaper on the floor."),
        tight.subList(0, 2));
    assertEquals(
        "Fill all room around and above with tightly crumpled newspaper, so that nothing"
            + " shifts.",
        tight.get(3));
    assertEquals(
        "Fill all room around and above with loosely crumpled newspaper, so that nothing shifts.",
        steps(box.formatted("loosely crumpled newspaper")).sentences().get(3));
  }

  /** The panels of each size fill the carton: none is larger than what is left for it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "foam: EPS 20 20 mm | lid and floor 300 x 250 mm, front and back 300 x 160 mm, left and right 210 x 160 mm.",
        "foam: EPS 20 20 mm, joints: {gap: 1 mm, overlap: sides over lid and floor} | lid and floor 260 x 210 mm, front and back 300 x 200 mm, left and right 210 x 200 mm.",
        "foam: EPS 20 20 mm, lid: EPS 20 30 mm | ''",
        "foam: [EPS 20 20 mm, XPS 20 mm] | ''",
        "foam: none | ''",
      })
  void panelsAreCutSoThatSomeReachOverOthers(String walls, String sizes) {
    String step =
        steps(
                "- {name: cut, box: 30 x 25 x 20 cm carton, fill: shredded paper, %s}"
                    .formatted(walls))
            .sentences()
            .get(0);
    assertEquals(
        sizes.isEmpty() ? "" : "EPS 20 for it: " + sizes, step.replaceFirst("^.*?(?:Cut |$)", ""));
  }

  /** The model has fill in the gap, or else the air of the box. */
  @Test
  void whatIsHeldOffAFaceIsToldWhatHoldsIt() {
    String held =
        """
        - name: held
          box: 250 x 220 x 220 mm
          foam: EPS 20 20 mm
          fill: %s
          warmers: [{warmer: 40 hour warmer on left, stand-off: 15 mm}]
          packs: [{pack: gel pack on floor, size: 120 x 80 x 20 mm, start: 5 °C, stand-off: 5 mm}]
        """;
    List<String> filled = steps(held.formatted("shredded paper")).sentences();
    assertEquals(
        "Lay 'pack 1' (gel pack, 195 g, 120 x 80 x 20 mm) 5 mm off the floor, in its middle, with shredded"
            + " paper between. It goes in at 5 °C: from the refrigerator, not frozen.",
        filled.get(1));
    assertEquals(
        "Stand 'warmer 1' (40 hour warmer, 128 x 82 x 12 mm) 15 mm off the left side, in its middle, with shredded"
            + " paper between. No tape on its film: the side that breathes faces the inside.",
        filled.get(4));
    assertEquals(
        "Stand 'warmer 1' (40 hour warmer, 128 x 82 x 12 mm) 15 mm off the left side, in its middle, on spacers at its"
            + " corners: the gap stays open. No tape on its film: the side that breathes faces the"
            + " inside.",
        steps(held.formatted("none")).sentences().get(3));
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

  private static List<String> places(String containers) {
    return steps(
            """
            - name: several
              box: {inner: 300 x 250 x 200 mm}
              foam: EPS 20 20 mm
              fill: shredded paper
              containers: [%s]
            """
                .formatted(containers))
        .sentences()
        .stream()
        .filter(sentence -> sentence.startsWith("Set "))
        .map(
            sentence ->
                sentence.replaceAll("^.* in its (?:cap|lid), ", "").replaceAll(". In it.*", ""))
        .toList();
  }

  /** What stands beside another is told from that; what does not, from the same two walls. */
  @Test
  void severalContainersAreToldFromEachOther() {
    assertEquals(
        List.of(
            "on the floor inside, 20 mm from left, 85 mm from front",
            "on the floor inside, 10 mm to the right of 'container 1', middles in line",
            "on the floor inside, 10 mm to the right of 'container 2', middles in line; together they stand in the"
                + " middle"),
        places("80 x 50 mm, 80 x 50 mm, 80 x 50 mm"));
    String placed = "{size: 70 x 60 x 40 mm, name: %s, position: [%s mm, %s mm]}";
    assertEquals(
        List.of(
            "on the floor inside, 150 mm from left, 95 mm from front",
            "on the floor inside, to the left of 'a', touching it, middles in line",
            "on the floor inside, 15 mm behind 'a', middles in line",
            "on the floor inside, 0 mm from left, 0 mm from front",
            "on top of 'a', middle on middle"),
        places(
            String.join(
                ", ",
                placed.formatted("a", 35, 0),
                placed.formatted("b", -35, 0),
                placed.formatted("c", 35, 75),
                placed.formatted("d", -115, -95),
                "{size: 70 x 60 x 40 mm, name: e, on-top-of: a}")));
  }

  private static List<String> vials(String positions, String warmer) {
    return steps(
            """
            - name: vials
              box: {inner: 300 x 250 x 200 mm}
              foam: EPS 20 20 mm
              fill: shredded paper
              warmer: %s
              containers: [%s]
            """
                .formatted(
                    warmer,
                    positions.replaceAll(
                        "([^ ,/]+)/([^ ,/]+)",
                        "{size: 9 dram vial, animal: 'regal jumping spider, 0.2 g', position: [$1 mm, $2 mm]}")))
        .sentences();
  }

  /** A dozen equal steps hide the others. */
  @Test
  void manyContainersInEvenRowsAreOneStep() {
    List<String> vials =
        vials("-40/-20, -40/20, 0/-20, 0/20, 40/-20, 40/20", "40 hour warmer on lid");
    assertEquals(
        "Set 6 vials, 'container 1' to 'container 6' (each 27 mm across and 58 mm long inside), with"
            + " 8 holes of 2 mm in its cap, on the floor inside, 3 from left to right, 13 mm apart,"
            + " by 2 from front to back, 13 mm apart; the outer ones 97 mm from left and right, 92"
            + " mm from front and back. In each: regal jumping spider, 0.2 g on damp paper towel 4"
            + " mm.",
        vials.get(1));
    assertEquals(
        "Between 'warmer' and each of 'container 1' to 'container 6' there must be 130 mm of"
            + " shredded paper, pressed firm: the warmer must never come to lie on any of them.",
        vials.get(4));
    assertEquals(6, vials.size());
  }

  /** Not in even rows, or not so many: each has its step. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "-40/-20, -40/20, 0/-20, 0/20, 40/-20|5",
        "-40/0, 0/0, 35/0, 80/0|4",
        "-40/0, 0/0, 40/0|3",
        "-60/0, -20/0, 20/0, 60/0|1",
      })
  void othersHaveAStepEach(String positions, int steps) {
    List<String> vials = vials(positions, "none");
    assertEquals(
        steps, vials.stream().filter(step -> step.startsWith("Set ")).count(), vials.toString());
  }

  @Test
  void namesThatAreCountedAreNotAllTold() {
    assertEquals(
        "'a', 'vial 1' to 'vial 3', 'vial 5' and 'vial 6'",
        PackingSteps.names(List.of("a", "vial 1", "vial 2", "vial 3", "vial 5", "vial 6")));
  }

  /** Nobody measures the sides of the box around a round tub. */
  @Test
  void aRoundTubHasADiameterAndAHeight() {
    Scenario scenario =
        ScenarioReader.read(
            "round.yaml",
            """
            format: 1
            title: Round
            animal: leopard gecko, 40 g
            cup: 120 x 80 mm
            journey: overnight by air, 28 to 45 °F
            packings: [{name: box, box: 260 x 230 x 214 mm, foam: EPS 20 30 mm, fill: shredded paper}]
            """);
    Parcel parcel = scenario.packings().get(0);
    String steps =
        String.join(
            "\n",
            new PackingSteps(parcel, Optional.empty(), none -> false, Figures.METRIC).sentences());
    assertTrue(
        steps.contains(
            "Set 'cup' (120 mm across and 80 mm high inside), with 8 holes of 2 mm in its lid, on"),
        steps);
    String tape =
        String.join(
            "\n",
            new PackingSteps(parcel, Optional.empty(), none -> false, Figures.US).sentences());
    assertTrue(
        tape.contains(
            "Set 'cup' (4 3/4 in across and 3 1/8 in high inside), with 8 holes of 5/64 in in its lid, on"),
        tape);
  }

  /** All that the animal breathes passes them. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'size: 120 x 80 mm, holes: 1 x 3 mm'|inside), with 1 hole of 3 mm in its lid, on the floor",
        "'size: 90 x 60 mm, kind: vial'|inside), with 8 holes of 2 mm in its cap, on the floor",
        "'size: 120 x 80 mm, holes: none'|towel 4 mm. Its lid has no holes: all that is breathed",
        "'size: small cloth bag'|inside) on the floor",
      })
  void holesOfALidAreToldWithItsContainer(String cup, String told) {
    String steps = around("cup: {" + cup + "}", "fill: shredded paper");
    assertTrue(steps.contains(told), steps);
    assertEquals(told.contains("holes:"), steps.contains("has no holes"), steps);
  }

  @Test
  void aPackAboveAContainerMustNotDripOnIt() {
    String pack =
        "fill: shredded paper, packs: [{pack: gel pack on %s, size: 120 x 80 x 20 mm, start: %s}]";
    String above = around("cup: 120 x 80 mm", pack.formatted("lid", "5 °C"));
    assertTrue(
        above.contains(
            "It goes in at 5 °C: from the refrigerator, not frozen. Wipe it dry first, or the tape"
                + " does not hold. It must hold when the box is turned over or dropped. If its"
                + " pouch leaks, nothing may drip on a container."),
        above);
    assertTrue(
        above.contains("so that nothing shifts; leave room under the lid for 'pack 1'."), above);
    String frozen = around("cup: 120 x 80 mm", pack.formatted("lid", "-18 °C"));
    assertTrue(
        frozen.contains(
            "It goes in at -18 °C: all of it solid. Wipe it dry first, or the tape does not hold. It must hold when"
                + " the box is turned over or dropped. If its pouch leaks"),
        frozen);
    String warm = around("cup: 120 x 80 mm", pack.formatted("lid", "30 °C"));
    assertTrue(warm.contains("It goes in at 30 °C: all of it liquid. It must hold when"), warm);
  }

  /** Board that is the box itself is not put into it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "foam: EPS 20 20 mm|Line the box, 200 x 180 x 160 mm outside and of corrugated board 4 mm, with EPS 20 20 mm on all sides. Cut",
        "foam: EPS 20 20 mm, floor: none|Line the box, 200 x 180 x 160 mm outside and of corrugated board 4 mm, with EPS 20 20 mm on lid, left, right, front, back.",
        "foam: none|Take the box, 200 x 180 x 160 mm outside and of corrugated board 4 mm; it has no lining.",
        "foam: EPS 20 20 mm, board: none|Take the box, 200 x 180 x 160 mm outside, its walls from outside to inside: EPS 20 20 mm on all sides.",
      })
  void onlyWhatIsWithinTheBoardIsPutIn(String walls, String told) {
    String first =
        steps("- {name: box, box: 200 x 180 x 160 mm, fill: shredded paper, " + walls + "}")
            .sentences()
            .get(0);
    assertTrue(first.startsWith(told), first);
  }

  /** A bought pack has its pouch; water is poured into one. */
  @Test
  void waterIsPutIntoABagOrBottle() {
    String pack =
        "fill: shredded paper, packs: [{pack: %s on back, size: 80 x 60 x 20 mm, start: 20 °C}]";
    String water = around("cup: 120 x 80 mm", pack.formatted("water"));
    assertTrue(
        water.contains(
            "The water is in a flat bag or bottle of this size, closed tight, full, not wrapped. It"
                + " goes in at 20 °C."),
        water);
    assertFalse(around("cup: 120 x 80 mm", pack.formatted("gel pack")).contains("bottle"));
  }

  @Test
  void aPackOnAContainerSaysSo() {
    String on =
        around(
            "cup: 120 x 80 mm",
            "fill: shredded paper, packs: [{pack: n-octadecane on cup, size: 80 x 60 x 10 mm, start:"
                + " 50 % liquid}]");
    assertTrue(on.contains("80 x 60 x 10 mm) on 'cup', "), on);
    assertTrue(on.contains("It goes in 50 % melted."), on);
  }

  @Test
  void aWarmerThatMaySoftenItsFoamGetsCartonBetween() {
    Parcel parcel =
        scenario("cup: 120 x 80 mm", "fill: shredded paper, warmer: 40 hour warmer on lid")
            .packings()
            .get(0);
    String told =
        String.join(
            "\n",
            new PackingSteps(parcel, Optional.empty(), each -> true, Figures.METRIC).sentences());
    assertTrue(
        told.contains(
            "in its middle. Put a piece of carton between it and the foam, which may soften. No"
                + " tape on its film"),
        told);
  }

  private static String around(String cup, String packing) {
    Parcel parcel = scenario(cup, packing).packings().get(0);
    return String.join(
        "\n",
        new PackingSteps(parcel, Optional.empty(), none -> false, Figures.METRIC).sentences());
  }

  private static Scenario scenario(String cup, String packing) {
    return ScenarioReader.read(
        "around.yaml",
        """
            format: 1
            title: Around
            animal: leopard gecko, 10 g
            %s
            journey: overnight by air, 28 to 45 °F
            packings: [{name: box, box: 260 x 230 x 214 mm, foam: EPS 20 20 mm, %s}]
            """
            .formatted(cup, packing));
  }
}
