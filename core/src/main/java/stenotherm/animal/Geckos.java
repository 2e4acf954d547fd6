package stenotherm.animal;

import static stenotherm.animal.KeepersPractice.COMPILATION;
import static stenotherm.animal.KeepersPractice.RAMPED;
import static stenotherm.animal.KeepersPractice.WARM_KEPT;

import java.util.List;
import stenotherm.base.Source;
import stenotherm.material.Materials;

/** The geckos of the catalogue. */
final class Geckos {
  private static final Proportions SHAPE = new Proportions(4, 2, 1);

  private static final String OWN_MINIMUM =
      "32 °C is common practice; the customary 10 °C lies below this animal's own critical minimum,"
          + " so 15 °C, about halfway between that and 18 °C";

  private static final TemperatureBand BANDED_GECKOS =
      TemperatureBand.celsius(
          8.5,
          41.6,
          Source.read(
              COMPILATION,
              "proxy, not this species: Coleonyx brevis 8.5 °C and 41.6 °C, the narrower of the two"
                  + " banded geckos there (C. variegatus 7.6 °C and 43.0 °C); original: Huey et al."
                  + " 1989"));

  private static final TemperatureBand TREE_GECKOS =
      TemperatureBand.celsius(
          11.9,
          40.2,
          Source.read(
              COMPILATION,
              "proxy, not this species: the narrower ends of the tropical tree geckos Hemidactylus"
                  + " frenatus (11.9 °C, 42.4 °C) and Lepidodactylus lugubris (11.5 °C, 40.2 °C);"
                  + " original: Huey et al. 1989"));

  private static final String BANDED_STAND_IN =
      "How cold and how hot it may be for a moment is not known of its kind: what banded geckos"
          + " bear is taken instead.";

  private static final String TREE_STAND_IN =
      "How cold and how hot it may be for a moment is not known of its kind: what two tree geckos"
          + " bear is taken instead.";

  static final Animal LEOPARD =
      new Animal(
          "leopard gecko",
          "Eublepharis macularius",
          new Tolerance(
              TemperatureBand.celsius(18, 29, KeepersPractice.REPTILES),
              TemperatureBand.celsius(
                  15,
                  33,
                  KeepersPractice.abovePreferred(
                      "Autumn and DeNardo 1995, J. Herpetol. 29:157",
                      "it prefers about 30 °C, and keepers offer it a warm place of 32 °C to 35 °C"
                          + " (common practice)",
                      "15 °C, as for other geckos, because 10 °C is but 1.5 K above the limit of a"
                          + " relative")),
              BANDED_GECKOS),
          Materials.ANIMAL_TISSUE,
          SHAPE,
          List.of(
              RAMPED, WARM_KEPT, BANDED_STAND_IN, "It prefers about 30 °C when it can choose."));

  static final Animal MOURNING =
      new Animal(
          "mourning gecko",
          "Lepidodactylus lugubris",
          new Tolerance(
              TemperatureBand.celsius(18, 29, KeepersPractice.REPTILES),
              TemperatureBand.celsius(15, 32, Source.assumed(OWN_MINIMUM)),
              TemperatureBand.celsius(
                  11.5,
                  40.2,
                  Source.read(
                      COMPILATION,
                      "Lepidodactylus lugubris, CTmin and CTmax; original: Huey et al. 1989"))),
          Materials.ANIMAL_TISSUE,
          SHAPE,
          List.of(
              RAMPED,
              WARM_KEPT,
              "It fails within minutes at 11.5 °C: the 10 °C at which keepers of other reptiles"
                  + " raise the alarm are too cold for it."));

  static final Animal HOUSE =
      new Animal(
          "house gecko",
          "Hemidactylus frenatus",
          new Tolerance(
              TemperatureBand.celsius(18, 29, KeepersPractice.REPTILES),
              TemperatureBand.celsius(15, 32, Source.assumed(OWN_MINIMUM)),
              TemperatureBand.celsius(
                  11.9,
                  42.4,
                  Source.read(
                      COMPILATION,
                      "Hemidactylus frenatus, CTmin and CTmax; original: Huey et al. 1989"))),
          Materials.ANIMAL_TISSUE,
          SHAPE,
          List.of(
              RAMPED,
              WARM_KEPT,
              "It fails within minutes at 11.9 °C: the 10 °C at which keepers of other reptiles"
                  + " raise the alarm are too cold for it."));

  static final List<Animal> ALL =
      List.of(
          LEOPARD,
          coolForest("crested gecko", "Correlophus ciliatus"),
          coolForest("gargoyle gecko", "Rhacodactylus auriculatus"),
          new Animal(
              "African fat-tailed gecko",
              "Hemitheconyx caudicinctus",
              new Tolerance(
                  TemperatureBand.celsius(18, 29, KeepersPractice.REPTILES),
                  TemperatureBand.celsius(15, 32, KeepersPractice.TROPICAL_REPTILES),
                  BANDED_GECKOS),
              Materials.ANIMAL_TISSUE,
              SHAPE,
              List.of(RAMPED, WARM_KEPT, BANDED_STAND_IN)),
          MOURNING,
          HOUSE,
          treeGecko("giant day gecko", "Phelsuma grandis"),
          treeGecko("tokay gecko", "Gekko gecko"));

  private Geckos() {}

  private static Animal coolForest(String name, String species) {
    return new Animal(
        name,
        species,
        new Tolerance(
            TemperatureBand.celsius(18, 26, KeepersPractice.COOL_FOREST_GECKOS),
            TemperatureBand.celsius(16, 28, KeepersPractice.COOL_FOREST_GECKOS)),
        Materials.ANIMAL_TISSUE,
        SHAPE,
        List.of(
            KeepersPractice.NO_LIMITS,
            WARM_KEPT,
            "Heat is its danger: a warm room in summer is already too warm for it."));
  }

  private static Animal treeGecko(String name, String species) {
    return new Animal(
        name,
        species,
        new Tolerance(
            TemperatureBand.celsius(18, 29, KeepersPractice.REPTILES),
            TemperatureBand.celsius(15, 32, KeepersPractice.TROPICAL_REPTILES),
            TREE_GECKOS),
        Materials.ANIMAL_TISSUE,
        SHAPE,
        List.of(RAMPED, WARM_KEPT, TREE_STAND_IN));
  }
}
