package stenotherm.animal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Mass;
import stenotherm.base.Provenance;
import stenotherm.base.Temperatures;

class AnimalsTest {
  static Iterable<Animal> catalogue() {
    return Animals.all();
  }

  @ParameterizedTest
  @MethodSource("catalogue")
  void isFoundByItsName(Animal animal) {
    assertSame(animal, Animals.named(animal.name().toUpperCase(Locale.ROOT)));
    assertSame(
        animal, Animals.named(" " + animal.species().toLowerCase(Locale.ROOT).replace(" ", "  ")));
  }

  @Test
  void coversReptilesAmphibiansAndInvertebrates() {
    assertTrue(Animals.all().size() >= 40);
    assertEquals(
        Animals.all().size(), Animals.all().stream().map(Animal::species).distinct().count());
    assertTrue(
        Animals.all()
            .containsAll(
                List.of(
                    Animals.GARTER_SNAKE,
                    Animals.FIRE_SALAMANDER,
                    Animals.JUMPING_SPIDER,
                    Animals.ROUGH_WOODLOUSE)));
  }

  @Test
  void offersTheClosestName() {
    InvalidInputException problem =
        assertThrows(InvalidInputException.class, () -> Animals.named("lepard geko"));
    assertEquals(
        "animal: there is no \"lepard geko\". Did you mean \"leopard gecko\"?",
        problem.getMessage());
  }

  @ParameterizedTest
  @CsvSource({
    "Dendrobates, 'green and black poison frog, dyeing poison frog.'",
    "Brachypelma smithi, Mexican red-knee tarantula.",
    "isopods, rough woodlouse",
    "blue dart frog, 'green and black poison frog, dyeing poison frog'",
    "gecko, leopard gecko",
    "pacman frog, ornate horned frog",
    "tree frog, 'White''s tree frog, American green tree frog, red-eyed tree frog, '",
    // not the only one that keepers mean, though the only one whose name ends so
    "green tree frog, 'American green tree frog, White''s tree frog'",
    "tarantula sling, 'Chilean rose tarantula, Mexican red-knee tarantula'",
    "cresty, crested gecko."
  })
  void hintsAtWhatUsersCallOtherwise(String given, String first) {
    String problem =
        assertThrows(InvalidInputException.class, () -> Animals.named(given)).problem();
    String start = "Closest of the " + Animals.all().size() + " known: " + first;
    assertTrue(problem.contains(start), problem);
  }

  @ParameterizedTest
  @CsvSource({
    "adult leopard gecko, leopard gecko",
    "'leopard gecko, male', leopard gecko",
    "baby ball pythons, ball python",
    "jumping spider, regal jumping spider",
    "king snake, California kingsnake",
    "day gecko, giant day gecko",
    "hermit crab, Caribbean hermit crab",
    "whites tree frog, White's tree frog"
  })
  void offersTheOnlyOneWhoseNameIsAPart(String given, String name) {
    String problem =
        assertThrows(InvalidInputException.class, () -> Animals.named(given)).problem();
    assertTrue(problem.endsWith("Did you mean \"" + name + "\"?"), problem);
  }

  @ParameterizedTest
  @CsvSource({
    "red eyed tree frog, red-eyed tree frog",
    "Mexican red knee tarantula, Mexican red-knee tarantula",
    "Leopard-Gecko, leopard gecko",
    "african fat  tailed gecko, African fat-tailed gecko"
  })
  void hyphensAndBlanksAreTheSame(String written, String name) {
    assertEquals(name, Animals.named(written).name());
  }

  @ParameterizedTest
  @CsvSource({
    "Litoria caerulea, Ranoidea caerulea",
    "Hyla caerulea, Ranoidea caerulea",
    "HELIX ASPERSA, Cornu aspersum",
    "Elaphe guttata, Pantherophis guttatus",
    "Rhacodactylus ciliatus, Correlophus ciliatus",
    "Chamaeleo jacksonii, Trioceros jacksonii",
    "Hyla cinerea, Dryophytes cinereus",
    "Achatina fulica, Lissachatina fulica"
  })
  void isFoundByAnEarlierScientificName(String earlier, String species) {
    assertEquals(species, Animals.named(earlier).species());
  }

  @ParameterizedTest
  @CsvSource({
    "Eublepharis macularis, Eublepharis macularius, leopard gecko",
    "E. macularius, Eublepharis macularius, leopard gecko",
    "P regius, Python regius, ball python",
    "Testudo hermanni boettgeri, Testudo hermanni, Hermann's tortoise"
  })
  void offersTheClosestScientificName(String given, String species, String name) {
    InvalidInputException problem =
        assertThrows(InvalidInputException.class, () -> Animals.named(given));
    String offered = "Did you mean \"" + species + "\", the " + name + "?";
    // both the python and a spider are P. regius
    assertEquals(!given.startsWith("P "), problem.problem().contains(offered), problem::problem);
  }

  /** Who mistypes a gecko wants to know which geckos there are, all of them and nothing else. */
  @ParameterizedTest
  @CsvSource({
    "flying gekko, 8, gecko",
    "barking tree frog, 8, frog|toad|coqui",
    "rat snake of sorts, 7, snake|python|boa",
    "sand boa, 7, snake|python|boa",
    "alpine newt, 3, salamander|axolotl",
    "goliath tarantula, 3, spider|tarantula",
    "roman snail, 2, snail",
    "water turtle, 1, tortoise"
  })
  void listsAllOfTheKindThatANameSpeaksOf(String given, int count, String kind) {
    String problem =
        assertThrows(InvalidInputException.class, () -> Animals.named(given)).problem();
    String start = "Closest of the " + Animals.all().size() + " known: ";
    String list = problem.substring(problem.indexOf(start) + start.length());
    List<String> names = List.of(list.replaceFirst("\\.$", "").split(", ", -1));
    assertEquals(count, names.size(), problem);
    names.forEach(name -> assertTrue(name.matches(".*(" + kind + ").*"), name));
  }

  /**
   * Single values of Bennett et al. 2018 (Scientific Data 5:180022) and of the abstracts that the
   * sources name, in °C: the animal's own, or those of the relatives that the sources name.
   */
  @ParameterizedTest
  @CsvSource({
    "leopard gecko, 8.5, 41.6",
    "mourning gecko, 11.5, 40.2",
    "corn snake, 7.0, 40.5",
    "house gecko, 11.9, 42.4",
    "green anole, 4.7, 41.7",
    "bearded dragon, 7.0, 42.3",
    "Jackson's chameleon, 5.3, 41.0",
    "ball python, 7.0, 38.0",
    "garter snake, 4.2, 38.9",
    "White's tree frog, 7.5, 39.3",
    "common coqui, 7.5, 37.2",
    "fire salamander, 1.0, 31.0",
    "regal jumping spider, 2.2, 45.1",
    "rough woodlouse, -1.4, 45.9",
    "green and black poison frog, 9.5, 34.8",
    "African fat-tailed gecko, 8.5, 41.6",
    "giant day gecko, 11.9, 40.2",
    "blue-tongued skink, 5.2, 43.9",
    "long-tailed grass lizard, 6.4, 42.2",
    "veiled chameleon, 7.6, 40.8",
    "milk snake, 7.0, 40.5",
    "boa constrictor, 7.0, 38.0",
    "Hermann's tortoise, 6.0, 42.0",
    "American green tree frog, 4.7, 36.6",
    "axolotl, 0.0, 34.0",
    "tiger salamander, -2.0, 34.0"
  })
  void criticalLimitsAreThePublishedOnes(String name, double low, double high) {
    TemperatureBand critical = Animals.named(name).tolerance().critical();
    assertEquals(low, Temperatures.toCelsius(critical.range().low()), 1e-9);
    assertEquals(high, Temperatures.toCelsius(critical.range().high()), 1e-9);
  }

  @ParameterizedTest
  @MethodSource("catalogue")
  void limitsArePublishedAndBandsAreNot(Animal animal) {
    Tolerance tolerance = animal.tolerance();
    assertTrue(
        isUnlimited(animal)
            || List.of(Provenance.READ, Provenance.DERIVED)
                .contains(tolerance.critical().source().provenance()));
    assertEquals(Provenance.PRACTICE, tolerance.comfortable().source().provenance());
    assertNotEquals(Provenance.READ, tolerance.alarm().source().provenance());
  }

  /** Nobody knows critical limits of it: the alarm band stands in for them. */
  private static boolean isUnlimited(Animal animal) {
    Tolerance tolerance = animal.tolerance();
    return tolerance.critical().range().equals(tolerance.alarm().range())
        && tolerance.critical().source().provenance() == Provenance.ASSUMED;
  }

  @ParameterizedTest
  @MethodSource("catalogue")
  void whoseLimitsAreUnknownIsSaid(Animal animal) {
    boolean said =
        animal.cautions().stream().anyMatch(text -> text.contains("nor of a near relative: "));
    assertEquals(isUnlimited(animal), said);
  }

  /** Alarm bands in °C that had been looser or stricter than what is known of the animal. */
  @ParameterizedTest
  @CsvSource({
    // as other geckos; 3 K above what it prefers
    "leopard gecko, 15, 33",
    // above the 16.5 °C at which warm-kept animals were stopped
    "green anole, 17, 32",
    // 3 K above its mean in the field
    "bearded dragon, 10, 37",
    "blue-tongued skink, 10, 36",
    "Jackson's chameleon, 10, 29",
    "green and black poison frog, 16, 27",
    "White's tree frog, 11, 31",
    "crested gecko, 16, 28",
    "axolotl, 5, 23"
  })
  void alarmBandsAreThoseOfWhatIsKnown(String name, double low, double high) {
    TemperatureBand alarm = Animals.named(name).tolerance().alarm();
    assertEquals(low, Temperatures.toCelsius(alarm.range().low()), 1e-9);
    assertEquals(high, Temperatures.toCelsius(alarm.range().high()), 1e-9);
  }

  /** Bands are for hours, limits for minutes: at least 1.5 K lie between them. */
  @ParameterizedTest
  @MethodSource("catalogue")
  void bandsKeepAwayFromTheLimits(Animal animal) {
    assumeFalse(isUnlimited(animal));
    Tolerance tolerance = animal.tolerance();
    assertTrue(tolerance.alarm().range().low() >= tolerance.critical().range().low() + 1.5 - 1e-9);
    assertTrue(
        tolerance.alarm().range().high() <= tolerance.critical().range().high() - 1.5 + 1e-9);
  }

  @ParameterizedTest
  @MethodSource("catalogue")
  void proxiesAreCalledProxies(Animal animal) {
    assumeFalse(isUnlimited(animal));
    String locator = animal.tolerance().critical().source().locator();
    boolean proxy = locator.startsWith("proxy, not this species");
    assertTrue(proxy || locator.contains(animal.species()), locator);
    assertEquals(
        proxy,
        animal.cautions().stream()
            .anyMatch(
                caution ->
                    caution.matches(
                        "How .* for a moment is not known of its kind: .* taken instead\\b.*")));
  }

  /** Cautions are read by keepers; the words of laboratories and the citations stay with bands. */
  @ParameterizedTest
  @MethodSource("catalogue")
  void cautionsHaveAKeepersWords(Animal animal) {
    for (String caution : animal.cautions()) {
      assertFalse(
          caution.matches(".*(critical|limit|\\bband\\b|ramped|species|onset|et al|\\(|\\d:\\d).*"),
          caution);
    }
  }

  /**
   * Spiders, a frog and snakes that eat their own kind; each says so once, however often copied.
   */
  @Test
  void whoEatsItsOwnKindIsKeptSingly() {
    List<Animal> single =
        Animals.all().stream().filter(each -> each.companions() == Companions.NONE).toList();
    assertEquals(
        List.of(
            "California kingsnake",
            "milk snake",
            "ornate horned frog",
            "regal jumping spider",
            "Chilean rose tarantula",
            "Mexican red-knee tarantula"),
        single.stream().map(Animal::name).toList());
    for (Animal animal : Animals.all()) {
      long told =
          animal.with(animal.companions()).cautions().stream()
              .filter(each -> each.startsWith("Keep it singly, one animal to a container"))
              .count();
      assertEquals(animal.companions() == Companions.NONE ? 1 : 0, told, animal.name());
    }
    assertEquals(Companions.OF_ONE_SIZE, Animals.WHITES_TREE_FROG.companions());
  }

  /** Animals can be hurt: no text may promise anything. */
  @ParameterizedTest
  @MethodSource("catalogue")
  void nothingPromisesSafety(Animal animal) {
    List<String> texts = new ArrayList<>(animal.cautions());
    for (Limit limit : Limit.values()) {
      texts.add(animal.tolerance().band(limit).source().text());
    }
    texts.forEach(
        text -> assertFalse(text.toLowerCase(Locale.ROOT).matches(".*\\bsafe\\b.*"), text));
    assertFalse(animal.cautions().isEmpty());
  }

  @Test
  void bodyTakesTheRestingShape() {
    AnimalBody body = Animals.CORN_SNAKE.body(Mass.grams(50));
    assertEquals(0.05, body.mass());
    assertEquals(Animals.CORN_SNAKE.restingShape(), body.proportions());
  }

  @Test
  void blankNamesAreRefused() {
    Animal gecko = Animals.LEOPARD_GECKO;
    assertThrows(
        InvalidInputException.class,
        () ->
            new Animal(
                " ",
                gecko.species(),
                gecko.tolerance(),
                gecko.tissue(),
                gecko.restingShape(),
                List.of()));
    assertThrows(
        InvalidInputException.class,
        () ->
            new Animal(
                "gecko",
                gecko.species(),
                gecko.tolerance(),
                gecko.tissue(),
                gecko.restingShape(),
                List.of("")));
  }
}
