package stenotherm.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import stenotherm.animal.Animal;
import stenotherm.animal.Animals;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.Temperatures;
import stenotherm.material.Materials;
import stenotherm.parcel.Container;
import stenotherm.parcel.Filling;
import stenotherm.parcel.PackStart;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.Placement;
import stenotherm.text.TextFormatException;
import stenotherm.words.Units;

/** Files as keepers write them, in their words, are read; what a word was taken for is told. */
class KeepersFilesTest {
  private static final Path FOLDER = Path.of("src/test/resources/stenotherm/scenario/keepers");

  private static Scenario read(String text) {
    return ScenarioReader.read("s.yaml", text);
  }

  private static Scenario own(String old, String other) {
    return read(ScenarioFiles.with(ScenarioFiles.OWN_ANIMALS, old, other));
  }

  private static String faultOf(String old, String other) {
    return assertThrows(TextFormatException.class, () -> own(old, other)).getMessage();
  }

  static List<Path> files() {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.sorted().toList();
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void isRead(Path file) throws IOException {
    Scenario scenario = ScenarioReader.read(file);
    assertTrue(scenario.journey().legs().size() > 1);
    assertEquals(List.of(), Schemas.complaints(Files.readString(file)));
  }

  @Test
  void metricFilesMayNameTheSpeciesAndNoWarmer() {
    Scenario scenario = ScenarioReader.read("s.yaml", ScenarioFiles.METRIC);
    Parcel parcel = scenario.packings().get(0);
    assertEquals(Animals.CORN_SNAKE, parcel.containers().get(0).occupant().orElseThrow().animal());
    assertEquals(0.0005, parcel.containers().get(0).vessel().volume(), 1e-9);
    assertEquals(List.of(), parcel.packs());
    scenario.packings().forEach(each -> assertEquals(List.of(), each.warmers()));
    assertEquals(0.208, parcel.outer().size(Axis.X), 1e-12);
    assertEquals(List.of(), Schemas.complaints(ScenarioFiles.METRIC));
  }

  private static String vials(String containers) {
    return """
        format: 1
        title: Vials
        animal: Mexican red-knee tarantula, 0.2 g
        containers: %s
        journey: overnight by air, 45 to 60 °F
        packings:
          - {name: cube, box: 10 x 10 x 8 in carton, foam: foam 3/4 in, fill: shredded paper}
        """
        .formatted(containers);
  }

  /** A breeder sends a dozen alike. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "12 x 9 dram vial",
        "[12 x 9 dram vial]",
        "{size: 9 dram vial, count: 12}",
        "[6 x 9 dram vial, {size: 9 dram vial, count: 6}]"
      })
  void severalAlikeNeedOneLine(String containers) {
    String file = vials(containers);
    Parcel parcel = read(file).packings().get(0);
    assertEquals(12, parcel.occupied().size());
    assertEquals("container 12", parcel.containers().get(11).name());
    assertEquals(
        2,
        parcel.containers().stream()
            .mapToDouble(each -> each.position().alongY())
            .distinct()
            .count());
    assertEquals(List.of(), Schemas.complaints(file));
  }

  @Test
  void aNumberBeforeALengthIsNotHowMany() {
    Parcel one = read(vials("[60 x 30 mm]")).packings().get(0);
    assertEquals(0.06, one.containers().get(0).vessel().inner().length(), 1e-12);
    assertTrue(
        assertThrows(TextFormatException.class, () -> read(vials("{size: 9 dram vial, count: 0}")))
            .getMessage()
            .contains("count: must be a whole number from 1 to 50"));
    assertTrue(
        assertThrows(
                TextFormatException.class,
                () -> read(vials("[{size: 9 dram vial, count: 3, position: [0 mm, 0 mm]}]")))
            .getMessage()
            .contains("position: cannot be given together with count"));
    assertTrue(
        assertThrows(
                TextFormatException.class,
                () -> read(vials("x").replace("containers: x", "cup: 12 x 9 dram vial")))
            .getMessage()
            .contains("is a single one; write several under containers"));
  }

  /** Clocks of twelve hours and months by their names tell the same as those of 24 and numbers. */
  @Test
  void timesAndDatesMayBeWrittenAsInTheUnitedStates() {
    String file =
        """
        format: 1
        title: Dates
        animal: corn snake, 20 g
        cup: 500 ml
        journey:
          sealed: %s
          legs:
            - {name: van, at: origin, until: %s, ambient: [%s 54 °F, %s 40 °F]}
            - {name: porch, at: origin, until: '%s', ambient: 5 °C}
        packings: [{name: box, box: 8 x 8 x 7 in carton, foam: EPS 20 1 in, fill: shredded paper}]
        """;
    Scenario numbers =
        read(
            file.formatted(
                "2026-01-15 15:30", "18:05", "12:30", "2026-01-15 17:00", "2026-01-16 09:00"));
    Scenario names =
        read(
            file.formatted(
                "January 15, 2026, 3:30 PM",
                "6:05 pm",
                "12:30 pm",
                "15 January 2026 5 p.m.",
                "Jan 16, 2026 at 9 am"));
    assertEquals(numbers.journey(), names.journey());
    assertEquals(17.5 * 3600, names.journey().duration());
  }

  /** Several in one container are told of where they eat each other, and where sizes matter. */
  @ParameterizedTest
  @CsvSource({
    "'regal jumping spider, 2 x 1 g', eat each other: each needs a container of its own",
    "'axolotl, 2 x 9 g', must be of one size: a larger one eats a smaller one",
    "'corn snake, 2 x 7 g', ''",
    "'Phidippus regius, 1 g', ''"
  })
  void whoEatsItsOwnKindIsToldOf(String animal, String told) {
    Parcel parcel =
        read(ScenarioFiles.METRIC.replace("pantherophis GUTTATUS, 20 g", animal)).packings().get(0);
    assertEquals(
        !told.isEmpty(),
        parcel.cautions().stream()
            .anyMatch(
                each ->
                    each.startsWith("Container 'cup': 2 animals, ")
                        && each.contains(told)
                        && each.endsWith("(common practice, no source).")));
  }

  @Test
  void anAnimalOfOnesOwnHasItsBands() {
    Scenario scenario = read(ScenarioFiles.OWN_ANIMALS);
    Container cup = scenario.packings().get(0).containers().get(0);
    Animal animal = cup.occupant().orElseThrow().animal();
    assertEquals("my gecko", animal.name());
    assertEquals(4, animal.restingShape().length());
    assertEquals(20, Temperatures.toCelsius(animal.tolerance().comfortable().range().low()), 1e-9);
    assertEquals(28, Temperatures.toCelsius(animal.tolerance().alarm().range().high()), 1e-9);
    assertEquals(35, Temperatures.toCelsius(animal.tolerance().critical().range().high()), 1e-9);
    assertTrue(
        scenario.assumptions().stream()
            .anyMatch(
                each ->
                    each.startsWith("Alarm band of my gecko, 16 °C to 28 °C")
                        && each.contains("given by the user")));
  }

  @Test
  void withoutLimitsOfItsOwnTheAlarmBandStandsIn() {
    Scenario scenario = read(ScenarioFiles.OWN_ANIMALS);
    Container bag = scenario.packings().get(1).containers().get(0);
    Animal animal = bag.occupant().orElseThrow().animal();
    assertEquals(animal.tolerance().alarm().range(), animal.tolerance().critical().range());
    assertTrue(
        scenario
            .assumptions()
            .contains("Preset, own animal: critical, the alarm band, at each moment (assumed)."));
    assertTrue(scenario.assumptions().contains("Preset, own animal: shape, 3 x 2 x 1 (assumed)."));
  }

  static Stream<Arguments> ownAnimalFaults() {
    return Stream.of(
        arguments(
            "alarm: 16 to 28",
            "alarm: 21 to 28",
            "animal.alarm: must hold all of the comfortable band, 20 °C to 26 °C (68 °F to 78.8"
                + " °F)"),
        arguments(
            "critical: 10 to 35",
            "critical: 10 to 27",
            "animal.critical: must hold all of the alarm band, 16 °C to 28 °C (60.8 °F to 82.4"
                + " °F)"),
        arguments(
            "alarm: 16 to 28 °C",
            "alarm: 16 to 128 °C",
            "animal.alarm: must lie between -5 °C and 50 °C (23 °F and 122 °F)"),
        arguments(
            "alarm: 16 to 28 °C",
            "alarm: 16 °C",
            "animal.alarm: must be two temperatures, write 28 to 45 °F or [28 °F, 45 °F], not '16"
                + " °C'"),
        arguments("mass: 2 x 4 g", "mass: 200 x 4 g", "must be 1 to 100 animals, not 200"),
        arguments("mass: 2 x 4 g", "mass: 2 x 4", "'4' has no unit, write for example 4 g or 4 kg"),
        arguments("mass: 2 x 4 g", "mass: 40 kg", "animal mass: 40 kg must lie between"),
        arguments("mass: 2 x 4 g, ", "", "animal.mass: is missing and must be given"),
        arguments("shape: 4 x 2 x 1", "shape: 4 x 2", "animal.shape: must be length x width"),
        arguments("shape: 4 x 2 x 1", "shape: 4 x 0 x 1", "body width proportion"),
        arguments("shape: 4 x 2 x 1", "habit: 4 x 2 x 1", "animal.habit: unknown key"),
        arguments(
            "comfortable: 20-26 °C",
            "comfortable: 26-20 °C",
            "must have the lower temperature first"),
        arguments(
            "comfortable: 20-26 °C",
            "comfortable: -2-26 °C",
            "'-2-26 °C' has a minus sign and a hyphen, write for example -2 to 6 °C"));
  }

  @ParameterizedTest
  @MethodSource("ownAnimalFaults")
  void faultsOfAnAnimalOfOnesOwnAreNamed(String good, String bad, String message) {
    String fault = faultOf(good, bad);
    assertTrue(fault.contains(message), fault);
  }

  @Test
  void severalAnimalsMustFitAndOneIsComputed() {
    Scenario scenario = read(ScenarioFiles.OWN_ANIMALS);
    Container cup = scenario.packings().get(0).containers().get(0);
    assertEquals(0.004, cup.occupant().orElseThrow().body().mass());
    assertEquals(2, cup.occupant().orElseThrow().count());
    assertTrue(
        scenario.assumptions().stream()
            .anyMatch(
                each -> each.startsWith("In cup are 2 animals, my gecko: all of them breathe")));
    String fault = faultOf("mass: 2 x 4 g", "mass: 90 x 4 g");
    assertTrue(fault.contains("the heap of 90 animals takes "), fault);
    assertTrue(fault.contains("too little"), fault);
  }

  @Test
  void wordsAreTakenForWhatIsLikeliestAndTold() {
    Scenario scenario = read(ScenarioFiles.OWN_ANIMALS);
    assertEquals(Units.US, scenario.units());
    Parcel words = scenario.packings().get(0);
    assertEquals(Materials.EPS, words.walls().layers().get(Face.Z_MAX).get(1).material());
    assertEquals(0.01905, words.walls().layers().get(Face.Z_MAX).get(1).thickness(), 1e-12);
    assertEquals(new Filling.Loose(Materials.LOOSE_FILL_EPS), words.filling());
    assertEquals(Materials.DAMP_SPHAGNUM, words.containers().get(0).bedding().get(0).material());
    assertEquals("72 hour warmer", words.warmers().get(0).warmer().name());
    assertEquals(Face.Z_MAX, ((Placement.OnFace) words.warmers().get(0).placement()).face());
    assertEquals(new Filling.Loose(Materials.SPHAGNUM_DRY), scenario.packings().get(1).filling());
    for (String told :
        List.of(
            "The file's word 'foam' is taken as EPS of unknown density (assumed).",
            "The file's word 'packing peanuts' is taken as loose-fill EPS, not starch (assumed).",
            "The file's word 'moss' is taken as damp sphagnum (assumed).",
            "The file's word 'moss' is taken as dry sphagnum (assumed).")) {
      assertTrue(scenario.assumptions().contains(told), told);
    }
  }

  @Test
  void solidPaperFillsNoBox() {
    assertTrue(
        faultOf("fill: packing peanuts", "fill: paper")
            .endsWith(
                "packings[0].fill (words): is solid paper, which fills no box, write shredded"
                    + " paper, crumpled newspaper (packed tight) or loosely crumpled newspaper"));
  }

  static Stream<Arguments> wordsThatLeaveOpenWhatIsMeant() {
    return Stream.of(
        arguments("fill: moss", "fill: packing paper", "is no fill that is known, write shredded"),
        arguments("fill: moss", "fill: air", "is written none"),
        arguments("foam: foam 3/4 in", "foam: rigid foam 19 mm", "write foam (white, of beads)"),
        arguments("foam: foam 3/4 in", "foam: polyethylene form 19 mm", "Did you mean"),
        // solid plastic would insulate five times worse
        arguments("foam: foam 3/4 in", "foam: polystyrene 19 mm", "is solid plastic; foam of it"),
        arguments("foam: foam 3/4 in", "insulation: foam 3/4 in", "Did you mean 'foam'?"),
        arguments("fill: moss", "fill: moss\n    Bottom: foam 10 mm", "Did you mean 'floor'?"),
        arguments("    warmer: 72 hour on top", "    heat pack: 72 hour on top", "'warmer'?"),
        arguments("fill: moss", "fill: straw", "such as shredded paper, foam peanuts"),
        arguments("fill: moss", "fill: styrofoam peanuts", "is written foam peanuts or starch"),
        // a name like it is not the same foam
        arguments("foam: foam 3/4 in", "foam: polystyrene foam 1 in", "may be one of several"),
        arguments("foam: foam 3/4 in", "foam: ¾ in", "write for example foam 3/4 in (white"),
        arguments("foam: foam 3/4 in", "foam: no foam", "is written none"),
        arguments("foam: foam 3/4 in", "foam: foam 0,75 in", "write a point as the decimal mark"),
        arguments("72 hour on top", "72 hour heat pack", "example 72 hour heat pack on lid"),
        arguments("72 hour on top", "2 x 40 hour heat packs on lid", "[40 hour heat pack on left,"),
        arguments("72 hour on top", "ice pack on lid", "what cools has a key of its own, packs"),
        arguments("72 hour on top", "72 hour on sides", "'sides' does not say which of the four"),
        arguments("box: 12 x 9 x 6 in", "box: 12 x 9 x 6 in box", "write 12 x 9 x 6 in carton for"),
        arguments("cup: {size: 16 oz deli cup", "cups: {size: 16 oz", "mean 'containers'?"),
        arguments("title: Animals", "Title: Animals", "Did you mean 'title'?"));
  }

  @ParameterizedTest
  @MethodSource("wordsThatLeaveOpenWhatIsMeant")
  void whatIsMeantIsAsked(String good, String bad, String message) {
    String fault = faultOf(good, bad);
    assertTrue(fault.contains(message), fault);
  }

  @Test
  void moreWaysToSayTheSame() {
    Parcel plain = read(ScenarioFiles.OWN_ANIMALS).packings().get(0);
    for (String on :
        List.of(
            "on the lid", "taped to the lid", "taped to top", ", under the lid", "at the top")) {
      assertEquals(plain.warmers(), own("on top", on).packings().get(0).warmers(), on);
    }
    for (String cup : List.of("16 ounce deli cup", "16 oz deli container", "16 oz tub")) {
      assertEquals(
          plain.containers(), own("16 oz deli cup", cup).packings().get(0).containers(), cup);
    }
    for (String foam : List.of("white foam", "EPS foam", "expanded polystyrene")) {
      Parcel other = own("foam: foam 3/4 in", "foam: " + foam + " 3/4 in").packings().get(0);
      assertEquals(plain.walls(), other.walls(), foam);
    }
  }

  static Stream<Arguments> animals() {
    String number = "how many there are stands before the mass of each, write for example";
    return Stream.of(
        arguments("2 leopard geckos, 20 g", number),
        arguments("two leopard geckos, 20 g each", number),
        arguments("leopard gecko, 20 g and corn snake, 35 g", "animal: 'leopard gecko, 20 g'}, {"),
        arguments("{name: leopard gecko, mass: 40 g}", "write animal: leopard gecko, 40 g for"));
  }

  @ParameterizedTest
  @MethodSource("animals")
  void animalsAreWrittenInOneWay(String animal, String message) {
    String text = ScenarioFiles.METRIC.replace("pantherophis GUTTATUS, 20 g", animal);
    String fault = assertThrows(TextFormatException.class, () -> read(text)).getMessage();
    assertTrue(fault.contains(message), fault);
  }

  static Stream<Arguments> journeys() {
    return Stream.of(
        arguments(
            "{template: 'overnight by air, 38 to 52 °F'}",
            "write template: overnight by air and on another line lows/highs: 38 to 52 °F"),
        arguments(
            "overnight by air, 38 to 52 °F, March 9, 2027, 4 pm",
            "write journey: {template: overnight by air, lows/highs: 38 to 52 °F, sealed: 'March"
                + " 9, 2027, 4 pm'}"),
        arguments("{template: overnight by air, low: 38 °F}", "Did you mean 'lows/highs'?"));
  }

  @ParameterizedTest
  @MethodSource("journeys")
  void shortAndLongFormsOfAJourneyAreToldApart(String journey, String message) {
    String text = ScenarioFiles.with(ScenarioFiles.SHORT, "overnight by air, 28 to 45 °F", journey);
    String fault = assertThrows(TextFormatException.class, () -> read(text)).getMessage();
    assertTrue(fault.contains(message), fault);
  }

  @Test
  void twoTemperaturesInAListAreOneDay() {
    Scenario listed =
        read(
            ScenarioFiles.with(
                ScenarioFiles.SHORT,
                "overnight by air, 28 to 45 °F",
                "{template: overnight by air, lows/highs: [28 °F, 45 °F]}"));
    assertEquals(read(ScenarioFiles.SHORT).plan().weather(), listed.plan().weather());
  }

  @Test
  void aClothBagIsNoCupAndHasNoDampTowel() {
    Container bag = read(ScenarioFiles.OWN_ANIMALS).packings().get(1).containers().get(0);
    assertEquals("bag", bag.name());
    assertEquals(List.of(), bag.bedding());
    Container cup = own(", bedding: moss 10 mm", "").packings().get(0).containers().get(0);
    assertEquals("cup", cup.name());
    assertEquals("towel", cup.bedding().get(0).name());
    // the key is called cup, whatever it holds
    assertEquals(1, own("40 h on bag", "40 h on cup").packings().get(1).warmers().size());
  }

  @Test
  void aTopMayBeAContainerToo() {
    Parcel parcel =
        own("cup: {size: 16 oz deli cup", "cup: {name: top, size: 16 oz deli cup")
            .packings()
            .get(0);
    assertTrue(parcel.warmers().get(0).placement() instanceof Placement.InCavity);
  }

  /** Nobody writes the same cups twice to compare two boxes. */
  @Test
  void aPackingMayHaveTheContainersOfAnEarlierOne() {
    String file =
        """
        format: 1
        title: Two boxes
        journey: {template: overnight by air, lows/highs: 10 to 20 °C}
        packings:
          - name: small
            box: 12 x 9 x 6 in carton
            foam: EPS 20 19 mm
            fill: shredded paper
            containers:
              - {name: a, size: 4 oz deli cup, animal: "regal jumping spider, 0.2 g"}
              - {name: b, size: 4 oz deli cup, animal: "regal jumping spider, 0.2 g"}
          - {name: large, box: 14 x 11 x 8 in carton, foam: EPS 20 38 mm, fill: shredded paper%s}
          - {name: third, box: 14 x 11 x 8 in carton, foam: EPS 20 38 mm, fill: none%s}
        """;
    List<Parcel> packings =
        read(file.formatted(", containers: as in small", ", containers: as in large")).packings();
    assertEquals(packings.get(0).containers(), packings.get(1).containers());
    assertEquals(packings.get(0).containers(), packings.get(2).containers());
    String none =
        assertThrows(TextFormatException.class, () -> read(file.formatted("", "")))
            .faults()
            .get(0)
            .getMessage();
    assertTrue(
        none.endsWith(
            "packings[1] (large): has neither cup nor containers, and the file has none for all"
                + " packings; write for example containers: as in small"),
        none);
    String unknown =
        assertThrows(
                TextFormatException.class,
                () -> read(file.formatted(", containers: as in smal", ", containers: as in small")))
            .getMessage();
    assertTrue(unknown.contains("Did you mean 'small'"), unknown);
    String twice =
        assertThrows(
                TextFormatException.class,
                () ->
                    read(
                        file.formatted(
                            ", cup: 16 fl oz, containers: as in small",
                            ", containers: as in small")))
            .getMessage();
    assertTrue(twice.endsWith("cannot be given together with cup"), twice);
  }

  /** Who packs knows the door it came out of rather than a temperature: common practice. */
  @ParameterizedTest
  @CsvSource({
    "from the freezer, -18",
    "frozen, -18",
    "from the refrigerator, 4",
    "from a fridge, 4",
    "chilled, 4"
  })
  void aPackComesFromTheFreezerOrTheRefrigerator(String start, double celsius) {
    String packs =
        "packs: [{pack: gel pack on lid, size: 60 x 40 x 10 mm, start: %s}]".formatted(start);
    Scenario scenario = read(ScenarioFiles.with(ScenarioFiles.METRIC, "packs: none", packs));
    PackStart there = scenario.packings().get(0).packs().get(0).start();
    assertEquals(new PackStart.AtTemperature(Temperatures.fromCelsius(celsius)), there);
    String single = packs.replace("[", "").replace("]", "");
    Scenario one = read(ScenarioFiles.with(ScenarioFiles.METRIC, "packs: none", single));
    assertEquals(scenario.packings(), one.packings(), "a list of one");
    assertTrue(
        scenario.assumptions().stream()
            .anyMatch(each -> each.startsWith("A pack '" + start + "' has ")));
  }

  /** Words that say what is meant, but not all of it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "cup: 16 fl oz|cup: deli cup|write its volume before it, as in 16 oz deli cup",
        "40 hour warmer on lid|some pad 40 on lid|If it is sold for 40 hours, write for example warmer: 40",
        "40 hour warmer on lid|some pad 41 on lid|there is no",
        "40 hour warmer on lid|40 hour warmr on lid|Did you mean",
        "warmer: 40 hour warmer on lid|packs: [{pack: ice on lid, size: 3 x 2 x 1/2 in, start: 0 °F}]|what melts is called ice pack",
        "warmer: 40 hour warmer on lid|packs: [{pack: water on lid, size: 3 x 2 x 1/2 in, start: 0 °F}]|frozen water is called ice pack",
        "warmer: 40 hour warmer on lid|packs: gel pack 8 oz frozen on lid|write for example packs: [{pack: gel pack on lid",
        "cup: 16 fl oz|cup: {size: 16 fl oz, bedding: damp sphagnum}|write for example damp sphagnum 20 mm",
        "warmer: 40 hour warmer on lid|packs: [{pack: ice pack on lid, size: 3 x 2 x 1/2 in, start: 32 °F}]|such as 0 % liquid"
      })
  void whatIsMissingIsToldInItsPlace(String old, String other, String told) {
    String file =
        """
        format: 1
        title: Held
        animal: leopard gecko, 40 g
        cup: 16 fl oz
        journey: {template: overnight by air, lows/highs: 40 to 60 °F}
        packings: [{name: a, box: 9 in cube carton, foam: EPS 20 1 in, fill: shredded paper, warmer: 40 hour warmer on lid}]
        """;
    String message =
        assertThrows(TextFormatException.class, () -> read(file.replace(old, other))).getMessage();
    assertTrue(message.contains(told), message);
  }

  /**
   * Legs at the end and in between: what comes after them comes earlier, in the weather of then.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "overnight by air, lows/highs: 40 to 60 °F|[delivery van, porch]|2",
        "overnight by air, lows/highs: 40 to 60 °F|[porch, delivery van]|2",
        "overnight by air, lows/highs: 40 to 60 °F|delivery van|1",
        "overnight by air, lows/highs: 40 to 60 °F|waiting for collection|1",
        "'two days by road, lows/highs: 40 to 60 °F, sealed: 2027-03-01 15:00'|[delivery van, porch]|2"
      })
  void legsMayBeLeftOut(String journey, String legs, int fewer) {
    String file =
        """
        format: 1
        title: Held
        animal: leopard gecko, 40 g
        cup: 16 fl oz
        journey: {template: %s%s}
        packings: [{name: a, box: 9 in cube carton, foam: EPS 20 1 in, fill: shredded paper}]
        """;
    Scenario whole = read(file.formatted(journey, ""));
    Scenario some = read(file.formatted(journey, ", without: " + legs));
    assertEquals(whole.journey().legs().size() - fewer, some.journey().legs().size());
    assertTrue(some.journey().duration() <= whole.journey().duration());
    double end = some.journey().duration() + some.longestHold();
    assertTrue(some.journey().ambientAt(end - 60) > 250, "known as long as delays may last");
  }

  @Test
  void whoGivesTheAmbientOfEveryLegNeedsNoWeather() {
    Scenario scenario = read(ScenarioFiles.OWN_ANIMALS);
    assertEquals(2, scenario.journey().legs().size());
    assertFalse(
        scenario.assumptions().stream().anyMatch(each -> each.contains("recorded weather")));
    String fault = faultOf("ambient: 18-22 °C", "ambient: outdoors");
    assertTrue(fault.contains("needs lows/highs"), fault);
    // the other end may follow weather of its own
    assertEquals(
        2,
        own("journey:\n", "journey:\n  to: {name: a valley, utc: UTC, lows/highs: 2-12 °C}\n")
            .journey()
            .legs()
            .size());
  }

  /** In a list a comma between digits is more likely a decimal mark than the end of an item. */
  @Test
  void decimalCommasInListsAreToldApart() {
    String offset =
        ScenarioFiles.METRIC.replaceFirst(
            "warmer: no", "warmers: [{warmer: 40 hour warmer on lid, offset: [%s]}]");
    String three =
        assertThrows(TextFormatException.class, () -> read(offset.formatted("0,5 in, 0 in")))
            .getMessage();
    String hint = ". Inside [ ] a comma ends an item: if '0,5 in' is one number, write 0.5 in";
    assertTrue(three.endsWith("must have 2 items, not 3" + hint), three);
    String two =
        assertThrows(TextFormatException.class, () -> read(offset.formatted("0,5 in")))
            .getMessage();
    assertTrue(two.endsWith("write for example 0 mm or 0 cm" + hint), two);
    String apart =
        assertThrows(TextFormatException.class, () -> read(offset.formatted("0, 5 in")))
            .getMessage();
    assertTrue(apart.endsWith("write for example 0 mm or 0 cm"), apart);
  }

  @Test
  void whoseAnimalIsUnknownIsToldOfItsKindAndOfDescribingIt() {
    String text = ScenarioFiles.with("leopard gecko, 40 g", "flying gekko, 40 g");
    String fault = assertThrows(TextFormatException.class, () -> read(text)).getMessage();
    assertTrue(fault.contains("crested gecko, gargoyle gecko"), fault);
    assertTrue(
        fault.endsWith(
            " and others. All stand in reference.md under Animals; or describe your own, see own"
                + " animal there"),
        fault);
  }
}
