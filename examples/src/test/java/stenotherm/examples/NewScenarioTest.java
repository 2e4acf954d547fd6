package stenotherm.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import stenotherm.animal.Animal;
import stenotherm.animal.Animals;
import stenotherm.base.Temperatures;
import stenotherm.scenario.JourneyPlan;
import stenotherm.scenario.Scenario;
import stenotherm.scenario.ScenarioReader;
import stenotherm.words.Units;

class NewScenarioTest {
  @TempDir private Path folder;

  private Path file = Path.of("");
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeEach
  void name() {
    file = folder.resolve("my.yaml");
  }

  /** Answers in US measures, of a flight overnight. */
  private int answer(String answers) {
    return answerAll("us\novernight by air\n" + answers);
  }

  private int answerAll(String answers) {
    return new CommandLine(new NewScenario(new StringReader(answers), LocalDate.of(2026, 3, 11)))
        .setOut(new PrintWriter(out, true))
        .setErr(new PrintWriter(err, true))
        .execute(file.toString());
  }

  @Test
  void emptyAnswersGiveAShortCommentedScenario() throws IOException {
    assertEquals(0, answerAll("\n\n\n\n\n\n\n\n\n\n"), err::toString);
    String text = Files.readString(file);
    assertTrue(text.lines().count() <= 16, text);
    assertTrue(text.contains("  # "), text);
    Scenario scenario = ScenarioReader.read(file);
    assertEquals(LocalDateTime.of(2026, 3, 12, 15, 0), scenario.journey().sealing());
    assertEquals(1, scenario.packings().get(0).warmers().size());
    assertTrue(out.toString().contains("compare " + file), out::toString);
  }

  @Test
  void wrongAnswersAreToldAndAskedAgain() throws IOException {
    String answers =
        "lepard gecko\n?\nboa constrictor\n40\n2 kg\n8 fl oz\n\n3/4\nfoam\n\n"
            + "8 x 8 x 7 in carton\n800 x 600 x 400 mm\n"
            + "New York, UTC-5 to Nowhere, UTC-8\nNew York, UTC-5 to Seattle, UTC-8\n"
            + "none\n2026-01-15 18:00\n\n";
    assertEquals(0, answer(answers), () -> out + "" + err);
    String asked = out.toString();
    assertTrue(
        asked.contains("neither a unit nor a material, write for example foam 3/4 in"), asked);
    assertTrue(asked.contains("Did you mean"), asked);
    assertTrue(asked.contains("  axolotl"), asked);
    assertTrue(asked.contains("too little. "), asked);
    assertTrue(
        asked.contains("sticks out") && asked.contains(" inside, such as a carton of 1"), asked);
    Scenario scenario = ScenarioReader.read(file);
    assertEquals(2014, scenario.journey().sealing().getYear());
    assertTrue(scenario.packings().get(0).warmers().isEmpty());
    assertEquals(
        2,
        scenario.packings().get(0).occupied().get(0).occupant().orElseThrow().body().mass(),
        1e-9);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "us | 42 to 60 | 42 to 60 °F",
        "us | 42-60° | 42-60 °F",
        "us | 42° to 60 | 42° to 60 °F",
        "metric | -2 to 7.5 | -2 to 7.5 °C",
        "us | '' | 28 to 45 °F",
      })
  void weatherIsTakenInTheMeasuresChosenAndTold(String units, String given, String taken)
      throws IOException {
    assertEquals(0, answerAll(units + "\n\n\n\n\n\n\n" + given + "\n\n\n"), () -> out + "" + err);
    assertTrue(
        out.toString().contains("Taken as " + taken + ", overnight low and daily high outdoors"),
        out::toString);
    assertTrue(Files.readString(file).contains("lows/highs: '" + taken + "'"));
  }

  /** From a warm place to a cold one: each end has lows, highs and a clock of its own. */
  @Test
  void theEndsMayHaveWeatherOfTheirOwn() throws IOException {
    String answers = "us\n\n\n\n\n\n\n42-62; 36 to 46\nUTC-6\nUTC-8\n\n\n";
    assertEquals(0, answerAll(answers), () -> out + "" + err);
    assertTrue(
        out.toString()
            .contains(
                "Taken as 42-62 °F; 36 to 46 °F, overnight low and daily high outdoors, at the origin"
                    + " and at the destination."),
        out::toString);
    List<JourneyPlan.StatedWeather> ends = ScenarioReader.read(file).plan().weather();
    assertEquals(2, ends.size());
    assertEquals(Temperatures.fromFahrenheit(42), ends.get(0).days().get(0).low(), 1e-9);
    assertEquals(Temperatures.fromFahrenheit(46), ends.get(1).days().get(0).high(), 1e-9);
    assertTrue(Files.readString(file).contains("utc: 'UTC-8'"));
  }

  @Test
  void weatherWithItsUnitIsNotRepeated() {
    assertEquals(0, answer("\n\n\n\n\n5 to 15 °C\n\n\n"), () -> out + "" + err);
    assertFalse(out.toString().contains("Taken as"), out::toString);
    assertTrue(out.toString().contains("fill, holes or seams under packings"), out::toString);
  }

  /** Whoever has a box that is too small for the usual warmer goes on without one. */
  @Test
  void aWarmerThatDoesNotFitIsNotOffered() {
    assertEquals(0, answer("\n\n\n1 1/2 in\n8 x 8 x 7 in carton\n\n\n\n"), err::toString);
    assertTrue(
        out.toString().contains("on lid is not offered. It does not fit: 'warmer' sticks out"),
        out::toString);
    assertTrue(out.toString().contains("Which warmer? [none] "), out::toString);
  }

  @Test
  void answersAreNoPartOfTheStructure() {
    assertEquals(ConsoleCommand.FAILED, answer("x' \npackings: []\n"));
    assertFalse(Files.exists(file));
  }

  @Test
  void theEndOfTheAnswersIsTold() {
    assertEquals(ConsoleCommand.FAILED, answer("\n\n"));
    assertTrue(err.toString().startsWith("no more answers: nothing was written"), err::toString);
    assertFalse(Files.exists(file));
  }

  @Test
  void nothingIsReplaced() throws IOException {
    Files.writeString(file, "mine");
    assertEquals(ConsoleCommand.CANNOT_WRITE, answer("\n\n\n\n\n\n\n\n"));
    assertEquals("mine", Files.readString(file));
    assertTrue(out.toString().isEmpty(), "no question is asked in vain");
  }

  static Stream<String> animals() {
    return Animals.all().stream().map(Animal::name);
  }

  /** What stands in brackets is good for every animal at its usual mass. */
  @ParameterizedTest
  @MethodSource("animals")
  void everyAnimalGetsThrough(String name) throws IOException {
    getsThrough("us\n\n", name);
  }

  @ParameterizedTest
  @MethodSource("animals")
  void everyAnimalGetsThroughByRoadInMetricMeasures(String name) throws IOException {
    getsThrough("metric\nroad\n", name);
  }

  private void getsThrough(String first, String name) throws IOException {
    Animal animal = Animals.named(name);
    assertTrue(UsualMasses.has(animal), name);
    assertEquals(0, answerAll(first + name + "\n\n\n\n\n\n\n\n"), () -> out + "" + err);
    assertFalse(out.toString().contains("too little"), out::toString);
    // ten questions, none of them twice
    assertEquals(11, out.toString().split("\\? \\[", -1).length, out::toString);
    Scenario scenario = ScenarioReader.read(file);
    assertEquals(1, scenario.packings().get(0).warmers().size());
  }

  @Test
  void metricAnswersGiveAMetricScenario() throws IOException {
    assertEquals(0, answerAll("cm\nroad\n\n\n?\n\n?\n30 mm\n?\n\n\n\n\n"), () -> out + "" + err);
    String text = Files.readString(file);
    for (String piece :
        List.of(
            "units: metric",
            "template: two days by road",
            "cup: '750 ml cup'",
            "box: '20 x 20 x 20 cm carton'",
            "foam: 'foam 30 mm'",
            "warmer: '72 hour warmer on lid'",
            "'-2 to 7 °C'")) {
      assertTrue(text.contains(piece), () -> piece + " in " + text);
    }
    String asked = out.toString();
    assertTrue(asked.contains("  250 ml cup") && !asked.contains("fl oz"), asked);
    assertTrue(asked.contains("  30 x 20 x 20 cm carton"), asked);
    Scenario scenario = ScenarioReader.read(file);
    assertEquals(Units.METRIC, scenario.units());
    assertEquals(9, scenario.journey().legs().size());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "furlongs|\"furlongs\" is neither metric nor us",
        "us\\nby sea|there is no \"by sea\"",
        // two journeys are by air
        "us\\nby air|Known: overnight by air, two days by road"
      })
  void unknownMeasuresAndWaysAreTold(String typed, String told) {
    assertEquals(ConsoleCommand.FAILED, answerAll(typed.replace("\\n", "\n") + "\n"));
    assertTrue(out.toString().contains(told), out::toString);
  }

  @Test
  void aUsualMassHasItsSourceAndCrowdsAreToldOf() {
    answer("\n");
    assertTrue(
        out.toString().contains("60 g is usual for an adult leopard gecko: "), out::toString);
    assertTrue(out.toString().contains("Add-my-Pet, entry Eublepharis macularius"), out::toString);
    answer("house gecko\n");
    assertTrue(
        out.toString().contains("adult house gecko: a rough mass of adults (assumed)"),
        out::toString);
    answer("phidippus regius\n2 x 1 g\n");
    assertTrue(out.toString().contains("Take care: 2 animals, regal jumping"), out::toString);
  }

  @Test
  void aMassBesideTheNameIsTaken() throws IOException {
    assertEquals(0, answer("dyeing poison frog, 5 g\n\n\n\n\n\n\n"), () -> out + "" + err);
    assertFalse(out.toString().contains("How heavy"), out::toString);
    assertTrue(Files.readString(file).contains("animal: 'dyeing poison frog, 5 g'"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "axolotl, 5|'5' has no unit, write for example 5 g or 5 kg",
        "axolotl 60 kg|animal mass: 60 kg must lie between 0.1 g and 20 kg",
        "axolottle, 5 g|Did you mean \"axolotl\"?"
      })
  void aWrongAnimalOrMassIsToldAtOnce(String typed, String told) {
    assertEquals(ConsoleCommand.FAILED, answer(typed + "\n"));
    assertTrue(out.toString().contains(told), out::toString);
    assertTrue(out.toString().endsWith("Which animal? [leopard gecko] \n"), out::toString);
  }

  /** Ten times the body, of 1 g/cm3; bags give way. */
  @ParameterizedTest
  @CsvSource({
    "'dyeing poison frog, 5 g', 4 fl oz cup",
    "'leopard gecko, 40 g', 16 fl oz cup",
    "'axolotl, 140 g', large lidded box",
    "'axolotl, 150 g', 10 x 8 x 5 in",
    "'corn snake, 500 g', large cloth bag"
  })
  void aContainerWithRoomToTurnIsOffered(String animal, String offered) {
    answer(animal + "\n");
    assertTrue(
        out.toString().contains("Which container? [" + offered + "] "), () -> out.toString());
  }

  /** Why a snake is not offered a cup. */
  @Test
  void aBagIsOfferedWithItsReason() {
    answer("corn snake, 500 g\n");
    assertTrue(
        out.toString().contains("cloth gives way, so large cloth bag is offered."), out::toString);
  }

  @Test
  void examplesAreInTheMeasuresChosen() {
    String help = "?\n\n?\n\n?\n\n?\n\n?\n\n?\n\n";
    answer("\n" + help);
    String us = out.toString();
    for (String example : List.of("1.5 oz", "4 x 2 1/2 in", "lb/ft3", "8 x 7 x 6 in", "28 to 45")) {
      assertTrue(us.contains("such as " + example) || us.contains(example + ";"), example);
    }
    assertFalse(us.matches("(?s).*[0-9] (?:mm|cm|ml|kg/m3|°C)\\b.*"), us);
    answerAll("metric\n\n\n" + help);
    String metric = out.toString().substring(us.length());
    assertTrue(metric.contains("such as 22 x 18 x 16 cm carton"), metric);
    assertFalse(metric.matches("(?s).*[0-9] (?:in|oz|fl oz|lb/ft3|°F)\\b.*"), metric);
  }

  @ParameterizedTest
  @CsvSource({
    "40 hour heat pack, 40 hour heat pack on lid",
    "40 hr warmer, 40 hr warmer on lid",
    "72 hour heat pack on left, 72 hour heat pack on left",
    "no heat, none",
    "n, none"
  })
  void wordsForWarmersAreUnderstood(String typed, String written) throws IOException {
    assertEquals(
        0, answer("\n\n\n\n10 x 10 x 8 in carton\n\n" + typed + "\n\n"), () -> out + "" + err);
    assertTrue(Files.readString(file).contains("warmer: '" + written + "'"));
    assertEquals(
        written.equals(typed + " on lid"),
        out.toString().contains("Taken as " + written + "."),
        out::toString);
    assertTrue(out.toString().contains("such as 40 hour heat pack on lid."), out::toString);
  }

  @Test
  void weatherInTheWrongUnitIsTold() {
    answer("\n\n\n\n\n48 to 66 °C\n");
    assertTrue(out.toString().contains("Did you mean °F?"), out::toString);
  }

  @ParameterizedTest
  @CsvSource({
    "us, 60 to 80 °F, none",
    "us, 60 to 79 °F, 40 hour warmer on lid",
    "metric, 18 to 27 °C, none",
    "metric, 18 to 26 °C, 40 hour warmer on lid",
    "us, 'New York, UTC-5 to Seattle, UTC-8', 40 hour warmer on lid"
  })
  void inHotWeatherNoWarmerIsOffered(String units, String weather, String offered) {
    assertEquals(0, answerAll(units + "\n\n\n\n\n\n\n" + weather + "\n\n\n"), err::toString);
    String asked = out.toString();
    assertTrue(asked.contains("Which warmer? [" + offered + "] "), asked);
    assertEquals(
        offered.equals("none"), asked.contains("or more (assumed) it may overheat."), asked);
  }

  @Test
  void aSizeThatIsNoCartonIsTakenAsTheOuterOne() {
    String told = "For a carton of this size inside, write 10x10x9 in carton.";
    answer("\n\n\n\n10x10x9 in\n");
    assertTrue(out.toString().contains("Taken as the outer size. " + told), out::toString);
    int before = out.toString().length();
    answer("\n\n\n\n10x10x9 in carton\n");
    answer("\n\n\n\n10x10x9\n");
    answer("\n\n\n\n10x10x9 in box\n");
    String later = out.toString().substring(before);
    assertFalse(later.contains("Taken as"), later);
    assertTrue(later.contains("write for example 10x10x9 mm or 10x10x9 in"), later);
    assertTrue(later.contains("write 10x10x9 in carton for a carton of this size"), later);
    answer("\n\n\n\n5x5x5 in\n");
    assertTrue(out.toString().contains("5x5x5 in carton. As it is, 'cup' sticks"), out::toString);
  }
}
