package stenotherm.animal;

import static stenotherm.animal.KeepersPractice.COMPILATION;
import static stenotherm.animal.KeepersPractice.DRIES_OUT;
import static stenotherm.animal.KeepersPractice.NO_LIMITS;
import static stenotherm.animal.KeepersPractice.RAMPED;

import java.util.List;
import stenotherm.base.Source;
import stenotherm.material.Materials;

/** The spiders, woodlice, snails and crabs of the catalogue. */
final class Invertebrates {
  static final Animal JUMPING_SPIDER =
      new Animal(
              "regal jumping spider",
              "Phidippus regius",
              new Tolerance(
                  TemperatureBand.celsius(21, 27, KeepersPractice.JUMPING_SPIDERS),
                  TemperatureBand.celsius(
                      10,
                      32,
                      Source.assumed(
                          "No custom is known; the alarm band of lizards is taken. Phidippus audax"
                              + " freezes at -4.7 °C to -12.9 °C by season (J. Arachnology 52(2))")),
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
                  "How cold and how hot it may be for a moment is not known of its kind: what crab"
                      + " spiders bear is taken instead.",
                  "A relative of it freezes, and dies of it, at -4.7 °C to -12.9 °C by season; that is"
                      + " nothing to plan with."))
          .with(Companions.NONE);

  static final Animal ROUGH_WOODLOUSE =
      new Animal(
          "rough woodlouse",
          "Porcellio scaber",
          new Tolerance(
              TemperatureBand.celsius(15, 24, KeepersPractice.WOODLICE),
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
              "How hot it may be for a moment is not known of its kind: what another woodlouse"
                  + " bears is taken instead, which lives drier and probably bears more.",
              "It breathes through damp gills: dry air kills it sooner than these temperatures."));

  static final List<Animal> SPIDERS =
      List.of(
          JUMPING_SPIDER,
          tarantula("Chilean rose tarantula", "Grammostola rosea").with(Companions.NONE),
          tarantula("Mexican red-knee tarantula", "Brachypelma hamorii").with(Companions.NONE));

  static final List<Animal> SNAILS =
      List.of(
          new Animal(
              "giant African snail",
              "Lissachatina fulica",
              new Tolerance(
                  TemperatureBand.celsius(20, 27, KeepersPractice.TROPICAL_SNAILS),
                  TemperatureBand.celsius(16, 30, KeepersPractice.TROPICAL_SNAILS)),
              Materials.ANIMAL_TISSUE,
              new Proportions(3, 2, 2),
              List.of(
                  NO_LIMITS, DRIES_OUT, "Many countries forbid to keep or to send it: ask first.")),
          new Animal(
              "garden snail",
              "Cornu aspersum",
              new Tolerance(
                  TemperatureBand.celsius(8, 20, KeepersPractice.COOL_SNAILS),
                  TemperatureBand.celsius(4, 26, KeepersPractice.COOL_SNAILS)),
              Materials.ANIMAL_TISSUE,
              new Proportions(3, 3, 2),
              List.of(
                  NO_LIMITS,
                  DRIES_OUT,
                  "Some countries forbid to keep or to send it: ask first.")));

  static final List<Animal> CRUSTACEANS =
      List.of(
          ROUGH_WOODLOUSE,
          new Animal(
              "Caribbean hermit crab",
              "Coenobita clypeatus",
              new Tolerance(
                  TemperatureBand.celsius(22, 29, KeepersPractice.LAND_HERMIT_CRABS),
                  TemperatureBand.celsius(18, 32, KeepersPractice.LAND_HERMIT_CRABS)),
              Materials.ANIMAL_TISSUE,
              new Proportions(3, 2, 2),
              List.of(NO_LIMITS, "It breathes through damp gills: dry air kills it.")));

  private Invertebrates() {}

  private static Animal tarantula(String name, String species) {
    return new Animal(
        name,
        species,
        new Tolerance(
            TemperatureBand.celsius(20, 28, KeepersPractice.BURROWING_SPIDERS),
            TemperatureBand.celsius(15, 32, KeepersPractice.BURROWING_SPIDERS)),
        Materials.ANIMAL_TISSUE,
        new Proportions(3, 2, 1),
        List.of(
            NO_LIMITS,
            "A relative of it sought 25 °C to 29 °C when it could choose.",
            "A fall kills it sooner than a temperature: it must not rattle about in its"
                + " container."));
  }
}
