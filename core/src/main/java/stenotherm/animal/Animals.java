package stenotherm.animal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.MessageText;
import stenotherm.base.Suggestions;

/**
 * The catalogue of animals.
 *
 * <p>Critical limits are single values of published tests, most from one compilation of thermal
 * tolerances; where a species is not in it, relatives stand in for it and the citation says so.
 * Where no near relative is in it either, the ends of the alarm band stand in, which is stricter.
 * Comfortable and alarm bands are common practice without a published source. Where an end of the
 * customary alarm band does not lie inside the critical limits, or where custom names none, it is
 * set halfway between comfortable and critical and marked as assumed; where the animal is known to
 * prefer more than custom allows, the hot end lies 3 K above what it prefers. Shapes at rest are
 * assumptions.
 *
 * <p>Limits: adult, healthy, unfed animals. No entry says that a temperature does no harm.
 *
 * <p>Stateless, thus thread-safe.
 */
public final class Animals {
  /** Leopard gecko. Its critical limits are those of two banded geckos of the same family. */
  public static final Animal LEOPARD_GECKO = Geckos.LEOPARD;

  /** Mourning gecko, with critical limits of its own. */
  public static final Animal MOURNING_GECKO = Geckos.MOURNING;

  /** House gecko, with critical limits of its own. */
  public static final Animal HOUSE_GECKO = Geckos.HOUSE;

  /** Green anole, with critical limits of its own. */
  public static final Animal GREEN_ANOLE = Lizards.GREEN_ANOLE;

  /** Bearded dragon. Its critical limits are those of other agamids. */
  public static final Animal BEARDED_DRAGON = Lizards.BEARDED_DRAGON;

  /** Jackson's chameleon, with critical limits of its own. */
  public static final Animal JACKSONS_CHAMELEON = Lizards.JACKSONS_CHAMELEON;

  /** Corn snake. Its critical limits are those of other snakes. */
  public static final Animal CORN_SNAKE = SnakesAndTortoises.CORN_SNAKE;

  /** Ball python. Its critical limits are those of other snakes. */
  public static final Animal BALL_PYTHON = SnakesAndTortoises.BALL_PYTHON;

  /** Common garter snake, with critical limits of its own. */
  public static final Animal GARTER_SNAKE = SnakesAndTortoises.GARTER_SNAKE;

  /** Green and black poison frog, with limits of its own; the lower one is a lethal one. */
  public static final Animal GREEN_AND_BLACK_POISON_FROG = Amphibians.GREEN_AND_BLACK_POISON_FROG;

  /** White's tree frog. Its upper critical limit is its own, the lower one that of another frog. */
  public static final Animal WHITES_TREE_FROG = Amphibians.WHITES_TREE_FROG;

  /** Common coqui, a frog with critical limits of its own. */
  public static final Animal COQUI = Amphibians.COQUI;

  /** Fire salamander, an animal of the cool. Its critical limits are those of a newt. */
  public static final Animal FIRE_SALAMANDER = Amphibians.FIRE_SALAMANDER;

  /** Regal jumping spider. Its critical limits are those of crab spiders. */
  public static final Animal JUMPING_SPIDER = Invertebrates.JUMPING_SPIDER;

  /**
   * Rough woodlouse, an isopod. Its lower critical limit is its own, the upper one that of another.
   */
  public static final Animal ROUGH_WOODLOUSE = Invertebrates.ROUGH_WOODLOUSE;

  /** The animals by kind, each with pieces of the words that users have for that kind. */
  private static final Map<List<String>, List<Animal>> KINDS = kinds();

  private static final List<Animal> ALL = KINDS.values().stream().flatMap(List::stream).toList();

  private static final List<Suggestions.OtherWord> OTHER_WORDS = otherWords();

  /** Earlier scientific names of the same species, from memory. */
  private static final Map<String, String> EARLIER_NAMES =
      Map.ofEntries(
          Map.entry("rhacodactylus ciliatus", "Correlophus ciliatus"),
          Map.entry("chamaeleo jacksonii", "Trioceros jacksonii"),
          Map.entry("elaphe guttata", "Pantherophis guttatus"),
          Map.entry("hyla caerulea", "Ranoidea caerulea"),
          Map.entry("litoria caerulea", "Ranoidea caerulea"),
          Map.entry("hyla cinerea", "Dryophytes cinereus"),
          Map.entry("achatina fulica", "Lissachatina fulica"),
          Map.entry("helix aspersa", "Cornu aspersum"));

  private static final int LONGEST_SHOWN = 60;

  private Animals() {}

  private static Map<List<String>, List<Animal>> kinds() {
    Map<List<String>, List<Animal>> kinds = new LinkedHashMap<>();
    kinds.put(List.of("geck", "gekk"), Geckos.ALL);
    kinds.put(
        List.of(
            "lizard",
            "dragon",
            "anole",
            "chamele",
            "skink",
            "monitor",
            "iguana",
            "agama",
            "uromastyx",
            "tegu"),
        Lizards.ALL);
    kinds.put(List.of("snake", "python", "boa", "viper"), SnakesAndTortoises.SNAKES);
    kinds.put(List.of("tortoise", "turtle", "terrapin"), SnakesAndTortoises.TORTOISES);
    kinds.put(List.of("frog", "toad"), Amphibians.FROGS);
    kinds.put(List.of("salamander", "newt", "axolot"), Amphibians.SALAMANDERS);
    kinds.put(List.of("spider", "tarant", "scorpion"), Invertebrates.SPIDERS);
    kinds.put(List.of("snail", "slug"), Invertebrates.SNAILS);
    kinds.put(
        List.of("isopod", "pill bug", "pillbug", "woodlouse", "woodlice", "crab", "crayfish"),
        Invertebrates.CRUSTACEANS);
    return kinds;
  }

  /** Genera, words of keepers that the common names lack, and words for whole kinds. */
  private static List<Suggestions.OtherWord> otherWords() {
    List<Suggestions.OtherWord> words = new ArrayList<>();
    Map<String, List<String>> genera = new LinkedHashMap<>();
    for (Animal animal : ALL) {
      String genus = normal(animal.species()).split(" ", -1)[0];
      genera.computeIfAbsent(genus, each -> new ArrayList<>()).add(animal.name());
    }
    genera.forEach((genus, names) -> words.add(new Suggestions.OtherWord(genus, names)));
    words.add(
        new Suggestions.OtherWord(
            "dart frog", List.of(GREEN_AND_BLACK_POISON_FROG.name(), "dyeing poison frog")));
    words.add(new Suggestions.OtherWord("dumpy", List.of(WHITES_TREE_FROG.name())));
    // keepers of two continents mean another each
    words.add(
        new Suggestions.OtherWord(
            "green tree frog", List.of(WHITES_TREE_FROG.name(), "American green tree frog")));
    words.add(
        new Suggestions.OtherWord(
            "tarantula", List.of("Chilean rose tarantula", "Mexican red-knee tarantula")));
    words.add(new Suggestions.OtherWord("crestie", List.of("crested gecko")));
    words.add(new Suggestions.OtherWord("cresty", List.of("crested gecko")));
    words.add(new Suggestions.OtherWord("beardie", List.of(BEARDED_DRAGON.name())));
    words.add(new Suggestions.OtherWord("pacman", List.of("ornate horned frog")));
    KINDS.forEach(
        (pieces, animals) -> {
          List<String> names = animals.stream().map(Animal::name).toList();
          pieces.forEach(piece -> words.add(new Suggestions.OtherWord(piece, names)));
        });
    return List.copyOf(words);
  }

  /**
   * Returns the whole catalogue.
   *
   * @return all animals, those of a kind together; unmodifiable
   */
  public static List<Animal> all() {
    return ALL;
  }

  /**
   * Tells to which group an animal of the catalogue belongs.
   *
   * @param animal the animal
   * @return its group; empty if the catalogue lacks it, as one with limits of a user's own
   */
  public static Optional<AnimalGroup> group(Animal animal) {
    Checks.given("animal", animal);
    if (Amphibians.FROGS.contains(animal) || Amphibians.SALAMANDERS.contains(animal)) {
      return Optional.of(AnimalGroup.AMPHIBIAN);
    }
    if (Invertebrates.SPIDERS.contains(animal)
        || Invertebrates.SNAILS.contains(animal)
        || Invertebrates.CRUSTACEANS.contains(animal)) {
      return Optional.of(AnimalGroup.INVERTEBRATE);
    }
    return ALL.contains(animal) ? Optional.of(AnimalGroup.REPTILE) : Optional.empty();
  }

  /**
   * Finds an animal by its common or its scientific name, without regard to case; a blank may stand
   * for a hyphen, and a hyphen for a blank.
   *
   * @param name common name, for example {@code "leopard gecko"}, or scientific name, for example
   *     {@code "Eublepharis macularius"}; of some animals an earlier one, too
   * @return the animal
   * @throws InvalidInputException if there is none of that name; it offers the closest name, or
   *     what a genus stands for, or all of the kind that the name speaks of
   */
  public static Animal named(String name) {
    String wanted = normal(Checks.given("animal", name));
    String spaced = spaced(wanted);
    String species = normal(EARLIER_NAMES.getOrDefault(wanted, wanted));
    for (Animal animal : ALL) {
      if (spaced(normal(animal.name())).equals(spaced)
          || normal(animal.species()).equals(species)) {
        return animal;
      }
    }
    Optional<Animal> within = within(wanted);
    if (within.isPresent()) {
      throw new InvalidInputException(
          "animal",
          "there is no \""
              + MessageText.of(name, LONGEST_SHOWN)
              + "\". Did you mean \""
              + within.get().name()
              + "\"?");
    }
    if (Suggestions.closest(name, ALL.stream().map(Animal::name).toList()).isEmpty()) {
      meant(wanted)
          .ifPresent(
              animal -> {
                throw new InvalidInputException(
                    "animal",
                    "there is no \""
                        + MessageText.of(name, LONGEST_SHOWN)
                        + "\". Did you mean \""
                        + animal.species()
                        + "\", the "
                        + animal.name()
                        + "?");
              });
    }
    return Suggestions.find("animal", name, ALL, Animal::name, OTHER_WORDS);
  }

  /**
   * The only animal whose scientific name is close: it has a typing error, an abbreviated genus, or
   * a subspecies after it.
   */
  private static Optional<Animal> meant(String wanted) {
    List<Animal> like =
        ALL.stream()
            .filter(
                animal -> {
                  String species = normal(animal.species());
                  String abbreviated = species.replaceFirst("^(.)\\S+", "$1.");
                  return wanted.startsWith(species + " ")
                      || wanted.equals(abbreviated)
                      || wanted.equals(abbreviated.replace(".", ""));
                })
            .toList();
    if (!like.isEmpty()) {
      return like.size() == 1 ? Optional.of(like.get(0)) : Optional.empty();
    }
    // a single word is a genus, or no scientific name at all
    return wanted.indexOf(' ') < 0
        ? Optional.empty()
        : Suggestions.closest(wanted, ALL.stream().map(Animal::species).toList())
            .flatMap(
                close -> ALL.stream().filter(each -> each.species().equals(close)).findFirst());
  }

  /**
   * The only animal whose name is a part of what is wanted, as of an adult leopard gecko, or ends
   * with it, as that of the regal jumping spider. A word alone may be a whole kind.
   */
  private static Optional<Animal> within(String wanted) {
    String joined = joined(wanted);
    boolean hasSeveralWords = spaced(wanted).indexOf(' ') > 0;
    List<Animal> like =
        ALL.stream()
            .filter(
                animal -> {
                  String name = joined(normal(animal.name()));
                  return joined.contains(name) || (hasSeveralWords && name.endsWith(joined));
                })
            .toList();
    boolean isManyThings =
        OTHER_WORDS.stream().anyMatch(word -> word.piece().equals(spaced(wanted)));
    return like.size() == 1 && !isManyThings ? Optional.of(like.get(0)) : Optional.empty();
  }

  /** A name without what people leave out or put in. */
  private static String joined(String name) {
    return name.replaceAll("[\\s'’-]", "");
  }

  /** Keepers write red eyed as well as red-eyed. */
  private static String spaced(String name) {
    return name.replace('-', ' ');
  }

  private static String normal(String name) {
    return name.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
  }
}
