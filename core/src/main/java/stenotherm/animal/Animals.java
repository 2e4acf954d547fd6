package stenotherm.animal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Source;
import stenotherm.base.Suggestions;
import stenotherm.material.Materials;

/**
 * The catalogue of animals.
 *
 * <p>Critical limits are single values of published tests, most from one compilation of thermal
 * tolerances; where a species is not in it, relatives stand in for it and the citation says so.
 * Comfortable and alarm bands are common practice without a published source. Where an end of the
 * customary alarm band does not lie inside the critical limits, or where custom names none, it is
 * set halfway between comfortable and critical and marked as assumed. Shapes at rest are
 * assumptions.
 *
 * <p>Left out for want of a published limit on either side: tarantulas, land hermit crabs,
 * axolotls.
 *
 * <p>Limits: adult, healthy, unfed animals. No entry says that a temperature does no harm.
 *
 * <p>Stateless, thus thread-safe.
 */
public final class Animals {
  private static final String COMPILATION =
      "Bennett et al. 2018, GlobTherm, Scientific Data 5:180022";

  private static final Source REPTILE_PRACTICE =
      Source.practice(
          "Lizards and snakes of temperate and tropical origin travel at 18 °C to 29 °C; below 10"
              + " °C or above 32 °C is a cause for alarm");

  private static final Source FROG_PRACTICE =
      Source.practice("Frogs travel at 15 °C to 24 °C; above 27 °C is a cause for alarm");

  private static final Source PYTHON_PRACTICE =
      Source.practice(
          "Ball pythons are kept at 25 °C to 34 °C and travel at 20 °C to 29 °C, warmer than other"
              + " snakes");

  private static final Source COOL_PRACTICE =
      Source.practice("Salamanders of cool woods travel at 8 °C to 18 °C");

  private static final Source SPIDER_PRACTICE =
      Source.practice("Keepers hold jumping spiders at 21 °C to 27 °C");

  private static final Source ISOPOD_PRACTICE =
      Source.practice("Keepers hold woodlice of temperate origin at 15 °C to 24 °C");

  private static final String DRIES_OUT =
      "It dries out quickly: heat without moisture harms it sooner than these bands say.";

  private static final String RAMPED =
      "The critical limits come from ramped tests that last minutes; nothing says that they are"
          + " borne for hours.";

  private static final String WARM_KEPT =
      "Warm-kept or freshly fed captives stand cold worse than these numbers say.";

  /** Leopard gecko. Its critical limits are those of two banded geckos of the same family. */
  public static final Animal LEOPARD_GECKO =
      new Animal(
          "leopard gecko",
          "Eublepharis macularius",
          new Tolerance(
              TemperatureBand.celsius(18, 29, REPTILE_PRACTICE),
              TemperatureBand.celsius(10, 32, REPTILE_PRACTICE),
              TemperatureBand.celsius(
                  8.5,
                  41.6,
                  Source.read(
                      COMPILATION,
                      "proxy, not this species: Coleonyx brevis 8.5 °C and 41.6 °C, the narrower"
                          + " of the two banded geckos there (C. variegatus 7.6 °C and 43.0 °C);"
                          + " original: Huey et al. 1989"))),
          Materials.ANIMAL_TISSUE,
          new Proportions(4, 2, 1),
          List.of(
              RAMPED,
              WARM_KEPT,
              "No critical limits of this species were found: those of banded geckos stand in.",
              "It prefers about 30 °C when it can choose (Autumn and DeNardo 1995, J. Herpetol."
                  + " 29:157)."));

  /** Mourning gecko, with critical limits of its own. */
  public static final Animal MOURNING_GECKO =
      new Animal(
          "mourning gecko",
          "Lepidodactylus lugubris",
          new Tolerance(
              TemperatureBand.celsius(18, 29, REPTILE_PRACTICE),
              TemperatureBand.celsius(
                  15,
                  32,
                  Source.assumed(
                      "32 °C is common practice; the customary 10 °C lies below this animal's own"
                          + " critical minimum, so 15 °C, about halfway between that and 18 °C")),
              TemperatureBand.celsius(
                  11.5,
                  40.2,
                  Source.read(
                      COMPILATION,
                      "Lepidodactylus lugubris, CTmin and CTmax; original: Huey et al. 1989"))),
          Materials.ANIMAL_TISSUE,
          new Proportions(4, 2, 1),
          List.of(
              RAMPED,
              WARM_KEPT,
              "Its critical minimum of 11.5 °C is above the 10 °C at which keepers of other"
                  + " reptiles raise the alarm."));

  /** Corn snake. Its critical limits are those of other snakes. */
  public static final Animal CORN_SNAKE =
      new Animal(
          "corn snake",
          "Pantherophis guttatus",
          new Tolerance(
              TemperatureBand.celsius(18, 29, REPTILE_PRACTICE),
              TemperatureBand.celsius(10, 32, REPTILE_PRACTICE),
              TemperatureBand.celsius(
                  7.0,
                  40.5,
                  Source.derived(
                      COMPILATION,
                      "proxy, not this species: 7.0 °C is the highest CTmin of the 18 snakes there"
                          + " that have one, 40.5 °C the CTmax of the related Pituophis catenifer"
                          + " (original: Brattstrom 1965)"))),
          Materials.ANIMAL_TISSUE,
          new Proportions(3, 3, 1),
          List.of(
              RAMPED,
              WARM_KEPT,
              "No critical limits of this species were found: those of other snakes stand in.",
              "Keepers offer it a zone of 25 °C to 32 °C."));

  /** Green and black poison frog, with limits of its own; the lower one is a lethal one. */
  public static final Animal GREEN_AND_BLACK_POISON_FROG =
      new Animal(
          "green and black poison frog",
          "Dendrobates auratus",
          new Tolerance(
              TemperatureBand.celsius(15, 24, FROG_PRACTICE),
              TemperatureBand.celsius(
                  12.5,
                  27,
                  Source.assumed(
                      "27 °C is common practice, which names no lower end; 12.5 °C is about halfway"
                          + " between 15 °C and the temperature that kills half of them")),
              TemperatureBand.celsius(
                  9.5,
                  34.8,
                  Source.read(
                      COMPILATION,
                      "Dendrobates auratus: half died (LT50) at 9.5 °C, kept at 23 °C before; CTmax"
                          + " 34.8 °C, kept at 26 °C before; original: Brattstrom 1968"))),
          Materials.ANIMAL_TISSUE,
          new Proportions(3, 2, 2),
          List.of(
              RAMPED,
              "The lower limit is the temperature that killed half of the animals, not the onset"
                  + " of harm.",
              DRIES_OUT));

  /** House gecko, with critical limits of its own. */
  public static final Animal HOUSE_GECKO =
      new Animal(
          "house gecko",
          "Hemidactylus frenatus",
          new Tolerance(
              TemperatureBand.celsius(18, 29, REPTILE_PRACTICE),
              TemperatureBand.celsius(
                  15,
                  32,
                  Source.assumed(
                      "32 °C is common practice; the customary 10 °C lies below this animal's own"
                          + " critical minimum, so 15 °C, about halfway between that and 18 °C")),
              TemperatureBand.celsius(
                  11.9,
                  42.4,
                  Source.read(
                      COMPILATION,
                      "Hemidactylus frenatus, CTmin and CTmax; original: Huey et al. 1989"))),
          Materials.ANIMAL_TISSUE,
          new Proportions(4, 2, 1),
          List.of(
              RAMPED,
              WARM_KEPT,
              "Its critical minimum of 11.9 °C is above the 10 °C at which keepers of other"
                  + " reptiles raise the alarm."));

  /** Green anole, with critical limits of its own. */
  public static final Animal GREEN_ANOLE =
      new Animal(
          "green anole",
          "Anolis carolinensis",
          new Tolerance(
              TemperatureBand.celsius(18, 29, REPTILE_PRACTICE),
              TemperatureBand.celsius(10, 32, REPTILE_PRACTICE),
              TemperatureBand.celsius(
                  4.7,
                  41.7,
                  Source.read(
                      COMPILATION,
                      "Anolis carolinensis, CTmin and CTmax; original: van Berkum 1988"))),
          Materials.ANIMAL_TISSUE,
          new Proportions(5, 2, 1),
          List.of(
              RAMPED,
              WARM_KEPT,
              "Animals kept at 35 °C before had a critical minimum of 16.5 °C, 12 K above the"
                  + " value used here."));

  /** Bearded dragon. Its critical limits are those of other agamids. */
  public static final Animal BEARDED_DRAGON =
      new Animal(
          "bearded dragon",
          "Pogona vitticeps",
          new Tolerance(
              TemperatureBand.celsius(18, 29, REPTILE_PRACTICE),
              TemperatureBand.celsius(10, 32, REPTILE_PRACTICE),
              TemperatureBand.celsius(
                  7.0,
                  42.3,
                  Source.read(
                      COMPILATION,
                      "proxy, not this species: the narrower ends of the agamids Ctenophorus"
                          + " decresii (7 °C, 43.8 °C) and Amphibolurus muricatus (3 °C, 42.3"
                          + " °C); original: Spellerberg 1972"))),
          Materials.ANIMAL_TISSUE,
          new Proportions(5, 3, 1),
          List.of(
              RAMPED,
              WARM_KEPT,
              "No critical limits of this species were found: those of other agamids stand in.",
              "Its mean body temperature when active in the field is 34.6 °C."));

  /** Jackson's chameleon, with critical limits of its own. */
  public static final Animal JACKSONS_CHAMELEON =
      new Animal(
          "Jackson's chameleon",
          "Trioceros jacksonii",
          new Tolerance(
              TemperatureBand.celsius(18, 29, REPTILE_PRACTICE),
              TemperatureBand.celsius(10, 32, REPTILE_PRACTICE),
              TemperatureBand.celsius(
                  5.3,
                  41.0,
                  Source.read(
                      COMPILATION,
                      "Trioceros jacksonii, there as Chamaeleo jacksonii, CTmin and CTmax of"
                          + " animals from the field; original: Bennett 2004"))),
          Materials.ANIMAL_TISSUE,
          new Proportions(5, 1, 2),
          List.of(
              RAMPED,
              WARM_KEPT,
              "It comes from cool mountains: keepers hold it cooler than other lizards (common"
                  + " practice)."));

  /** Ball python. Its critical limits are those of other snakes. */
  public static final Animal BALL_PYTHON =
      new Animal(
          "ball python",
          "Python regius",
          new Tolerance(
              TemperatureBand.celsius(20, 29, PYTHON_PRACTICE),
              TemperatureBand.celsius(
                  15,
                  32,
                  Source.assumed(
                      "Keepers call 18 °C bearable for short times only and warn of more than 32"
                          + " °C; 15 °C is taken between that and the critical minimum")),
              TemperatureBand.celsius(
                  7.0,
                  38.0,
                  Source.derived(
                      COMPILATION,
                      "proxy, not this species: 7.0 °C is the highest CTmin of the 18 snakes"
                          + " there that have one, 38.0 °C the CTmax of the rubber boa Charina"
                          + " bottae, the only boa or python there (original: Brattstrom 1965)"))),
          Materials.ANIMAL_TISSUE,
          new Proportions(3, 3, 1),
          List.of(
              RAMPED,
              WARM_KEPT,
              "No critical limits of this species were found: those of other snakes stand in.",
              "Keepers offer it a zone of 25 °C to 34 °C."));

  /** Common garter snake, with critical limits of its own. */
  public static final Animal GARTER_SNAKE =
      new Animal(
          "garter snake",
          "Thamnophis sirtalis",
          new Tolerance(
              TemperatureBand.celsius(18, 29, REPTILE_PRACTICE),
              TemperatureBand.celsius(10, 32, REPTILE_PRACTICE),
              TemperatureBand.celsius(
                  4.2,
                  38.9,
                  Source.read(
                      COMPILATION,
                      "Thamnophis sirtalis, CTmin and CTmax, heated at 1 K per hour; original:"
                          + " Stewart 1965"))),
          Materials.ANIMAL_TISSUE,
          new Proportions(3, 3, 1),
          List.of(RAMPED, WARM_KEPT));

  /** White's tree frog. Its upper critical limit is its own, the lower one that of another frog. */
  public static final Animal WHITES_TREE_FROG =
      new Animal(
          "White's tree frog",
          "Ranoidea caerulea",
          new Tolerance(
              TemperatureBand.celsius(15, 24, FROG_PRACTICE),
              TemperatureBand.celsius(
                  11,
                  27,
                  Source.assumed(
                      "27 °C is common practice, which names no lower end; 11 °C is about halfway"
                          + " between 15 °C and the critical minimum")),
              TemperatureBand.celsius(
                  7.5,
                  39.3,
                  Source.read(
                      COMPILATION,
                      "proxy, not this species, at the cold end: Eleutherodactylus coqui 7.5 °C,"
                          + " the higher of two tree-living frogs (Hyla cinerea 4.7 °C),"
                          + " originals: Christian et al. 1988, Layne and Romano 1985; CTmax of"
                          + " Ranoidea caerulea, there as Hyla caerulea, kept at 30 °C before;"
                          + " original: Brattstrom 1970"))),
          Materials.ANIMAL_TISSUE,
          new Proportions(3, 2, 2),
          List.of(
              RAMPED,
              "No lower critical limit of this species was found: that of another frog stands in.",
              "Its upper limit was measured on animals used to 30 °C; others bear less.",
              DRIES_OUT));

  /** Common coqui, a frog with critical limits of its own. */
  public static final Animal COQUI =
      new Animal(
          "common coqui",
          "Eleutherodactylus coqui",
          new Tolerance(
              TemperatureBand.celsius(15, 24, FROG_PRACTICE),
              TemperatureBand.celsius(
                  11,
                  27,
                  Source.assumed(
                      "27 °C is common practice, which names no lower end; 11 °C is about halfway"
                          + " between 15 °C and the critical minimum")),
              TemperatureBand.celsius(
                  7.5,
                  37.2,
                  Source.read(
                      COMPILATION,
                      "Eleutherodactylus coqui, CTmin (kept at 20 °C before) and CTmax; original:"
                          + " Christian et al. 1988"))),
          Materials.ANIMAL_TISSUE,
          new Proportions(3, 2, 2),
          List.of(RAMPED, DRIES_OUT));

  /** Fire salamander, an animal of the cool. Its critical limits are those of a newt. */
  public static final Animal FIRE_SALAMANDER =
      new Animal(
          "fire salamander",
          "Salamandra salamandra",
          new Tolerance(
              TemperatureBand.celsius(8, 18, COOL_PRACTICE),
              TemperatureBand.celsius(
                  4,
                  24,
                  Source.assumed(
                      "Keepers call more than 24 °C harmful; below 4 °C no animal is sent (common"
                          + " practice)")),
              TemperatureBand.celsius(
                  1.0,
                  31.0,
                  Source.derived(
                      "Contreras et al. 2024, Animals 14:1963",
                      "proxy, not this species: the newt Calotriton arnoldi bears less than 1 °C"
                          + " and has a CTmax of more than 31 °C (abstract); both rounded to the"
                          + " cautious side"))),
          Materials.ANIMAL_TISSUE,
          new Proportions(5, 1, 1),
          List.of(
              RAMPED,
              "No critical limits of this species were found: those of a newt stand in.",
              "Heat is its danger: a room at 25 °C is already too warm for it.",
              DRIES_OUT));

  /** Regal jumping spider. Its critical limits are those of crab spiders. */
  public static final Animal JUMPING_SPIDER =
      new Animal(
          "regal jumping spider",
          "Phidippus regius",
          new Tolerance(
              TemperatureBand.celsius(21, 27, SPIDER_PRACTICE),
              TemperatureBand.celsius(
                  10, 32, Source.assumed("No custom is known; the alarm band of lizards is taken")),
              TemperatureBand.celsius(
                  2.2,
                  45.1,
                  Source.read(
                      "Schmalhofer 1999, J. Arachnology 27:470-480",
                      "proxy, not this species: the narrower ends of the crab spiders"
                          + " Misumenoides formosipes (2.2 °C, 48.2 °C) and Misumenops asperatus"
                          + " (-1.4 °C, 45.1 °C)"))),
          Materials.ANIMAL_TISSUE,
          new Proportions(2, 1, 1),
          List.of(
              RAMPED,
              "No critical limits of this species were found: those of crab spiders stand in.",
              "Its relative Phidippus audax freezes, and dies of it, at -4.7 °C to -12.9 °C by"
                  + " season (J. Arachnology 52(2)); that is no limit to plan with."));

  /**
   * Rough woodlouse, an isopod. Its lower critical limit is its own, the upper one that of another.
   */
  public static final Animal ROUGH_WOODLOUSE =
      new Animal(
          "rough woodlouse",
          "Porcellio scaber",
          new Tolerance(
              TemperatureBand.celsius(15, 24, ISOPOD_PRACTICE),
              TemperatureBand.celsius(
                  5,
                  29,
                  Source.assumed(
                      "No custom is known; a hardy animal at the cold end, 5 K above the"
                          + " comfortable band at the hot end")),
              TemperatureBand.celsius(
                  -1.4,
                  45.9,
                  Source.read(
                      "Tanaka and Udagawa 1993 (abstract) and " + COMPILATION,
                      "proxy, not this species, at the hot end: Armadillidium vulgare, CTmax 45.9"
                          + " °C, kept at 25 °C before, original: Klok et al. 2004; half of"
                          + " Porcellio scaber died (LT50) at -1.4 °C in August"))),
          Materials.ANIMAL_TISSUE,
          new Proportions(3, 2, 1),
          List.of(
              RAMPED,
              "No upper critical limit of this species was found: that of another woodlouse"
                  + " stands in, which lives drier and probably bears more.",
              "It breathes through damp gills: dry air kills it sooner than these temperatures."));

  private static final List<Animal> ALL =
      List.of(
          LEOPARD_GECKO,
          MOURNING_GECKO,
          HOUSE_GECKO,
          GREEN_ANOLE,
          BEARDED_DRAGON,
          JACKSONS_CHAMELEON,
          CORN_SNAKE,
          BALL_PYTHON,
          GARTER_SNAKE,
          GREEN_AND_BLACK_POISON_FROG,
          WHITES_TREE_FROG,
          COQUI,
          FIRE_SALAMANDER,
          JUMPING_SPIDER,
          ROUGH_WOODLOUSE);

  private static final List<Suggestions.OtherWord> OTHER_WORDS = otherWords();

  private Animals() {}

  /** Scientific names, and words of keepers that the common names lack. */
  private static List<Suggestions.OtherWord> otherWords() {
    List<Suggestions.OtherWord> words = new ArrayList<>();
    for (Animal animal : ALL) {
      words.add(
          new Suggestions.OtherWord(
              animal.species().toLowerCase(Locale.ROOT), List.of(animal.name())));
    }
    for (String word : List.of("isopod", "pill bug", "pillbug")) {
      words.add(new Suggestions.OtherWord(word, List.of(ROUGH_WOODLOUSE.name())));
    }
    words.add(new Suggestions.OtherWord("dart frog", List.of(GREEN_AND_BLACK_POISON_FROG.name())));
    return List.copyOf(words);
  }

  /**
   * Returns the whole catalogue.
   *
   * @return all animals; unmodifiable
   */
  public static List<Animal> all() {
    return ALL;
  }

  /**
   * Finds an animal by its common name, without regard to case.
   *
   * @param name common name, for example {@code "leopard gecko"}
   * @return the animal
   * @throws InvalidInputException if there is none of that name; it offers the closest names, and
   *     what a scientific name stands for
   */
  public static Animal named(String name) {
    return Suggestions.find("animal", name, ALL, Animal::name, OTHER_WORDS);
  }
}
