package stenotherm.animal;

import java.util.List;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Source;
import stenotherm.base.Suggestions;
import stenotherm.material.Materials;

/**
 * The catalogue of animals.
 *
 * <p>Critical limits are single values of a published compilation of thermal tolerances; where a
 * species is not in it, relatives stand in for it and the citation says so. Comfortable and alarm
 * bands are common practice without a published source. Where an end of the customary alarm band
 * does not lie inside the critical limits, or where custom names none, it is set halfway between
 * comfortable and critical and marked as assumed. Shapes at rest are assumptions.
 *
 * <p>Limits: adult, healthy, unfed animals. No entry says that a temperature does no harm.
 *
 * <p>Stable. Stateless, thus thread-safe.
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

  private static final String RAMPED =
      "The critical limits are ramped tests of minutes, not hours that can be borne.";

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
              "It dries out quickly: heat without moisture harms it sooner than these bands say."));

  private static final List<Animal> ALL =
      List.of(LEOPARD_GECKO, MOURNING_GECKO, CORN_SNAKE, GREEN_AND_BLACK_POISON_FROG);

  private Animals() {}

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
   * @throws InvalidInputException if there is none of that name; it offers the closest name
   */
  public static Animal named(String name) {
    return Suggestions.find("animal", name, ALL, Animal::name);
  }
}
