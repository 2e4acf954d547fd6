package stenotherm.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.decision.PackingChoice;
import stenotherm.decision.Remedy;
import stenotherm.decision.SearchSpace;
import stenotherm.parcel.Parcel;
import stenotherm.scenario.Scenario;
import stenotherm.scenario.ScenarioReader;
import stenotherm.warmer.WarmerClass;
import stenotherm.words.Units;

class PackingBlockTest {
  private static final Pattern NUMBER = Pattern.compile("-?\\d+\\.\\d+(E-?\\d+)?");

  private static final String SCENARIO =
      """
      format: 1
      title: A night in a cold room
      animal: leopard gecko, 40 g
      cup: 16 oz deli cup
      journey:
        sealed: 2026-12-01 18:00
        start: 24 °C
        legs:
          - {name: room, at: origin, for: 8 h, ambient: 8 °C}
          - {name: porch, at: origin, for: 2 h, ambient: 5 °C}
      packings:
        - name: cube
          box: 9 in cube carton
          foam: EPS 20 1 in
          fill: shredded paper
          warmer: 40 hour warmer on lid
          opened: 20 min before sealing
        - name: layered
          box: 9 in cube carton
          board: double-wall corrugated board 7 mm
          foam: XPS 20 mm
          lid: [PIR 25 mm]
          joints: {gap: 1 mm, overlap: sides over lid and floor}
          seams: taped
          holes: [1 x 5 mm on left, 2 x 6 mm on floor]
          fill: crumpled newspaper
        - name: cooled
          box: 9 in cube carton
          foam: EPS 20 1 in
          fill: shredded paper
          packs:
            - {name: frozen, pack: gel pack on right, size: 90 x 70 x 15 mm, mass: 90 g, wrap: 0.05 m2 K/W, start: -10 °C, offset: [5 mm, 0 mm]}
            - {pack: n-hexadecane, position: [-70 mm, 0 mm, 5 mm], thin: length, size: 90 x 70 x 10 mm, start: 25 % liquid}
      """;

  /** Whatever the search can find is read back as the same packing. */
  @Test
  void whatIsPastedIsWhatWasFound() {
    Scenario scenario = ScenarioReader.read("s.yaml", SCENARIO);
    int tried = 0;
    Set<String> kinds = new TreeSet<>();
    for (Parcel parcel : scenario.packings()) {
      SearchSpace space = SearchSpace.usual(parcel, scenario.journey());
      List<Remedy> changes = new ArrayList<>(space.changes());
      changes.add(new Remedy.WarmerOn(Face.X_MIN));
      changes.add(new Remedy.WarmerOffWall(0.01));
      changes.add(new Remedy.MoreAir());
      changes.add(new Remedy.OpenedEarlier());
      for (Optional<WarmerClass> warmer : space.warmers().subList(0, 2)) {
        for (int count : warmer.isPresent() ? List.of(1, 2) : List.of(0)) {
          for (Remedy change : count == 2 ? changes.subList(0, 1) : changes) {
            PackingChoice choice =
                new PackingChoice(
                    space.boxes().get(space.boxes().size() - 3),
                    space.foams().get(count),
                    parcel.filling(),
                    warmer,
                    count,
                    List.of(change));
            try {
              Parcel found = choice.applyTo(parcel, scenario.journey()).parcel();
              String block = PackingBlock.of("found", choice.box().name(), found, units(tried));
              Parcel read = ScenarioReader.read("pasted", SCENARIO + block).packings().get(3);
              assertEquals(rounded(found, parcel.name()), rounded(read, "found"), block);
              tried++;
              kinds.add(change.getClass().getSimpleName());
            } catch (InvalidInputException doesNotFit) {
              // nothing to paste
            }
          }
        }
      }
    }
    assertTrue(tried > 10, tried + " were tried");
    assertTrue(
        kinds.containsAll(
            List.of("ChilledPack", "MoreAir", "OpenedEarlier", "WarmerOffWall", "WarmerOn")),
        kinds.toString());
  }

  /** One after the other. */
  private static Units units(int tried) {
    return tried % 2 == 0 ? Units.METRIC : Units.US;
  }

  /** People buy by these: a unit in which a length is whole, of the other system if need be. */
  @Test
  void lengthsAreWrittenInUnitsInWhichTheyAreWhole() {
    assertEquals("6 mm", PackingBlock.size(Units.US, 0.006));
    assertEquals("1 1/2 in", PackingBlock.size(Units.US, 0.0381));
    assertEquals("1 1/2 in", PackingBlock.size(Units.METRIC, 0.0381));
    assertEquals("8 1/2 x 8 1/2 x 7 in", PackingBlock.size(Units.US, 0.2159, 0.2159, 0.1778));
    assertEquals("5 in", PackingBlock.size(Units.US, 0.127));
    assertEquals("127 mm", PackingBlock.size(Units.METRIC, 0.127));
    assertEquals("223.9 x 200 x 100 mm", PackingBlock.size(Units.US, 0.2239, 0.2, 0.1));
    assertEquals("-1 1/4 in", PackingBlock.size(Units.US, -0.03175));
    assertEquals("0 in", PackingBlock.size(Units.US, 0));
    assertEquals("39.05 mm", PackingBlock.size(Units.METRIC, 0.02 + 0.01905));
  }

  /** What a reader of the block need not do is not in it. */
  @Test
  void whatIsFilledInJustSoIsLeftOut() {
    Parcel cube = ScenarioReader.read("s.yaml", SCENARIO).packings().get(0);
    assertEquals(
        """
          - name: 'cube, changed'
            box: 9 in cube carton
            foam: EPS 20 1 in
            fill: shredded paper
            warmer: 40 hour warmer on lid
            opened: 20 min before sealing
        """,
        PackingBlock.of("cube, changed", "9 in cube carton", cube, Units.US));
    assertEquals(
        """
          - name: 'cube, changed'
            box: 9 in cube carton
            foam: EPS 20 1 in
            fill: shredded paper
            warmer: 40 hour warmer on lid
            stand-off: 10 mm
            opened: 45 min before sealing
        """,
        PackingBlock.of(
            "cube, changed",
            "9 in cube carton",
            new Remedy.Both(new Remedy.WarmerOffWall(0.01), new Remedy.OpenedEarlier())
                .applyTo(cube, ScenarioReader.read("s.yaml", SCENARIO).journey())
                .parcel(),
            Units.US));
  }

  /** Foam boxes without board, their lids thicker, and names that a file must not take apart. */
  @Test
  void boxesWithoutBoardAndOddNamesArePasted() {
    String odd =
        """
          - name: 'mine, #2: lid'
            box: 300 x 240 x 220 mm
            board: none
            foam: EPS 20 1 in
            lid: EPS 20 2 in
            fill: shredded paper
            warmers: [{name: 'pad, upper', warmer: 40 hour warmer on lid, contact: 0.05 m2 K/W}]
          - name: two warmers
            box: 300 x 240 x 220 mm
            foam: EPS 20 1 in
            fill: shredded paper
            warmers:
              - {warmer: 20 hour warmer, position: [-80 mm, 0 mm, 5 mm], thin: length}
              - {warmer: 10 hour warmer on lid, offset: [1/2 in, -1 1/4 in], opened: at sealing, film: taped over}
          - name: jointed
            box: 300 x 240 x 220 mm
            board: none
            foam: EPS 20 30 mm
            joints: {gap: 1 mm, overlap: sides over lid and floor}
            fill: shredded paper
        """;
    Scenario scenario = ScenarioReader.read("s.yaml", SCENARIO + odd);
    for (Parcel parcel : scenario.packings().subList(3, 6)) {
      String name = parcel.name() + ", changed";
      String block = PackingBlock.of(name, "300 x 240 x 220 mm", parcel, Units.METRIC);
      Parcel read = ScenarioReader.read("pasted", SCENARIO + block).packings().get(3);
      assertEquals(rounded(parcel, parcel.name()), rounded(read, name), block);
    }
  }

  /**
   * All of a packing; lengths as far as a file writes them, and no words on where a pack is from.
   */
  private static String rounded(Parcel parcel, String name) {
    return NUMBER
        .matcher(
            all(parcel)
                .replace("Parcel[name=" + name + ",", "Parcel[")
                .replaceAll(
                    "work=(a quarter of a litre|half a litre|size and mass as the scenario)[^\\]]*",
                    ""))
        .replaceAll(
            number -> String.format(Locale.ROOT, "%.8f", Double.parseDouble(number.group()) + 0.0));
  }

  /** A record with all that it holds, however short the text is that it has of itself. */
  private static String all(Object value) {
    if (value instanceof Optional<?> optional) {
      return optional.map(PackingBlockTest::all).orElse("none");
    }
    if (value instanceof List<?> list) {
      return list.stream().map(PackingBlockTest::all).toList().toString();
    }
    if (value instanceof Map<?, ?> map) {
      return map.entrySet().stream()
          .map(entry -> entry.getKey() + "=" + all(entry.getValue()))
          .toList()
          .toString();
    }
    if (!(value instanceof Record)) {
      return String.valueOf(value);
    }
    List<String> parts = new ArrayList<>();
    for (RecordComponent part : value.getClass().getRecordComponents()) {
      try {
        part.getAccessor().setAccessible(true);
        parts.add(part.getName() + "=" + all(part.getAccessor().invoke(value)));
      } catch (ReflectiveOperationException fault) {
        throw new AssertionError(part.getName(), fault);
      }
    }
    return value.getClass().getSimpleName() + "[" + String.join(", ", parts) + "]";
  }

  @Test
  void temperaturesAreWrittenAsFilesHaveThem() {
    assertEquals("25 °C", PackingBlock.temperature(298.15, Units.METRIC));
    assertEquals("77 °F", PackingBlock.temperature(298.15, Units.US));
  }
}
