package stenotherm.animal;

import static stenotherm.animal.KeepersPractice.COMPILATION;
import static stenotherm.animal.KeepersPractice.DRIES_OUT;
import static stenotherm.animal.KeepersPractice.NO_LIMITS;
import static stenotherm.animal.KeepersPractice.RAMPED;

import java.util.List;
import stenotherm.base.Source;
import stenotherm.material.Materials;

/** The frogs, toads and salamanders of the catalogue. */
final class Amphibians {
  private static final Proportions FROG = new Proportions(3, 2, 2);
  private static final Proportions SALAMANDER = new Proportions(5, 1, 1);

  private static final String HALF_DIED =
      "The cold that it is taken to bear for a moment killed half of the animals tested; harm"
          + " begins above it.";

  static final Animal GREEN_AND_BLACK_POISON_FROG =
      new Animal(
          "green and black poison frog",
          "Dendrobates auratus",
          new Tolerance(
              TemperatureBand.celsius(18, 24, KeepersPractice.POISON_FROGS),
              TemperatureBand.celsius(16, 27, KeepersPractice.POISON_FROGS),
              TemperatureBand.celsius(
                  9.5,
                  34.8,
                  Source.read(
                      COMPILATION,
                      "Dendrobates auratus: half died (LT50) at 9.5 °C, kept at 23 °C before; CTmax"
                          + " 34.8 °C, kept at 26 °C before; original: Brattstrom 1968"))),
          Materials.ANIMAL_TISSUE,
          FROG,
          List.of(RAMPED, HALF_DIED, DRIES_OUT));

  static final Animal WHITES_TREE_FROG =
      new Animal(
              "White's tree frog",
              "Ranoidea caerulea",
              new Tolerance(
                  TemperatureBand.celsius(
                      15,
                      29,
                      Source.practice(
                          "Keepers hold it at 29 °C by day and 20 °C to 24 °C by night (Frog Forum,"
                              + " White's treefrog care); frogs at large travel from 15 °C on")),
                  TemperatureBand.celsius(
                      11,
                      31,
                      Source.practice(
                          "Care sheets name 27 °C to 31 °C by day; 11 °C is about halfway between 15 °C"
                              + " and the critical minimum (assumed)")),
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
              FROG,
              List.of(
                  RAMPED,
                  "How cold it may be for a moment is not known of its kind: what another frog bears"
                      + " is taken instead.",
                  "How hot it may be for a moment was measured on animals used to 30 °C; others bear"
                      + " less.",
                  DRIES_OUT))
          .with(Companions.OF_ONE_SIZE);

  static final Animal COQUI =
      new Animal(
              "common coqui",
              "Eleutherodactylus coqui",
              new Tolerance(
                  TemperatureBand.celsius(15, 24, KeepersPractice.FROGS),
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
              FROG,
              List.of(RAMPED, DRIES_OUT))
          .with(Companions.OF_ONE_SIZE);

  static final Animal FIRE_SALAMANDER =
      new Animal(
          "fire salamander",
          "Salamandra salamandra",
          new Tolerance(
              TemperatureBand.celsius(8, 18, KeepersPractice.COOL_SALAMANDERS),
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
          SALAMANDER,
          List.of(
              RAMPED,
              "How cold and how hot it may be for a moment is not known of its kind: what a newt"
                  + " bears is taken instead.",
              "Heat is its danger: a room at 25 °C is already too warm for it.",
              DRIES_OUT));

  static final List<Animal> FROGS =
      List.of(
          GREEN_AND_BLACK_POISON_FROG,
          new Animal(
              "dyeing poison frog",
              "Dendrobates tinctorius",
              new Tolerance(
                  TemperatureBand.celsius(18, 24, KeepersPractice.POISON_FROGS),
                  TemperatureBand.celsius(16, 27, KeepersPractice.POISON_FROGS),
                  TemperatureBand.celsius(
                      9.5,
                      34.8,
                      Source.read(
                          COMPILATION,
                          "proxy, not this species: Dendrobates auratus, LT50 9.5 °C and CTmax 34.8"
                              + " °C; original: Brattstrom 1968"))),
              Materials.ANIMAL_TISSUE,
              FROG,
              List.of(
                  RAMPED,
                  HALF_DIED,
                  "How cold and how hot it may be for a moment is not known of its kind: what"
                      + " another poison frog bears is taken instead.",
                  DRIES_OUT)),
          WHITES_TREE_FROG,
          new Animal(
                  "American green tree frog",
                  "Dryophytes cinereus",
                  new Tolerance(
                      TemperatureBand.celsius(15, 24, KeepersPractice.FROGS),
                      TemperatureBand.celsius(
                          10,
                          27,
                          Source.assumed(
                              "27 °C is common practice, which names no lower end; 10 °C is about"
                                  + " halfway between 15 °C and the critical minimum")),
                      TemperatureBand.celsius(
                          4.7,
                          36.6,
                          Source.read(
                              COMPILATION,
                              "proxy, not this species, at the hot end: the tree frog Pseudacris"
                                  + " regilla 36.6 °C, original: Brattstrom 1968; CTmin of"
                                  + " Dryophytes cinereus, there as Hyla cinerea, kept at 25 °C"
                                  + " before, original: Layne and Romano 1985"))),
                  Materials.ANIMAL_TISSUE,
                  FROG,
                  List.of(
                      RAMPED,
                      "How hot it may be for a moment is not known of its kind: what another frog"
                          + " bears is taken instead.",
                      DRIES_OUT))
              .with(Companions.OF_ONE_SIZE),
          new Animal(
                  "red-eyed tree frog",
                  "Agalychnis callidryas",
                  new Tolerance(
                      TemperatureBand.celsius(20, 27, KeepersPractice.TROPICAL_FROGS),
                      TemperatureBand.celsius(16, 29, KeepersPractice.TROPICAL_FROGS),
                      TemperatureBand.celsius(
                          7.5,
                          37.2,
                          Source.read(
                              COMPILATION,
                              "proxy, not this species: the tree-living tropical frog Eleutherodactylus"
                                  + " coqui, CTmin and CTmax; original: Christian et al. 1988"))),
                  Materials.ANIMAL_TISSUE,
                  FROG,
                  List.of(
                      RAMPED,
                      "How cold and how hot it may be for a moment is not known of its kind: what a"
                          + " coqui, another frog, bears is taken instead.",
                      DRIES_OUT))
              .with(Companions.OF_ONE_SIZE),
          COQUI,
          new Animal(
                  "ornate horned frog",
                  "Ceratophrys ornata",
                  new Tolerance(
                      TemperatureBand.celsius(20, 27, KeepersPractice.TROPICAL_FROGS),
                      TemperatureBand.celsius(16, 29, KeepersPractice.TROPICAL_FROGS)),
                  Materials.ANIMAL_TISSUE,
                  FROG,
                  List.of(NO_LIMITS, DRIES_OUT))
              .with(Companions.NONE),
          new Animal(
                  "oriental fire-bellied toad",
                  "Bombina orientalis",
                  new Tolerance(
                      TemperatureBand.celsius(12, 22, KeepersPractice.COOL_FROGS),
                      TemperatureBand.celsius(6, 26, KeepersPractice.COOL_FROGS)),
                  Materials.ANIMAL_TISSUE,
                  FROG,
                  List.of(NO_LIMITS, DRIES_OUT))
              .with(Companions.OF_ONE_SIZE));

  static final List<Animal> SALAMANDERS =
      List.of(
          FIRE_SALAMANDER,
          new Animal(
                  "axolotl",
                  "Ambystoma mexicanum",
                  new Tolerance(
                      TemperatureBand.celsius(10, 20, KeepersPractice.AQUATIC_SALAMANDERS),
                      TemperatureBand.celsius(5, 23, KeepersPractice.AQUATIC_SALAMANDERS),
                      TemperatureBand.celsius(
                          0,
                          34,
                          Source.derived(
                              COMPILATION,
                              "proxy, not this species: Ambystoma jeffersonianum 34.0 °C, kept at 10 °C"
                                  + " before, the lowest CTmax of three relatives (original: Gatz 1971);"
                                  + " at 0 °C its water freezes"))),
                  Materials.ANIMAL_TISSUE,
                  SALAMANDER,
                  List.of(
                      RAMPED,
                      "How cold and how hot it may be for a moment is not known of its kind: the"
                          + " freezing of its water and what a relative bears are taken instead.",
                      "It travels in water: give the water as bedding, for it evens out the"
                          + " temperature."))
              .with(Companions.OF_ONE_SIZE),
          new Animal(
                  "tiger salamander",
                  "Ambystoma tigrinum",
                  new Tolerance(
                      TemperatureBand.celsius(8, 18, KeepersPractice.COOL_SALAMANDERS),
                      TemperatureBand.celsius(
                          4,
                          24,
                          Source.assumed(
                              "No custom of its own is known; the alarm band of the fire salamander is"
                                  + " taken")),
                      TemperatureBand.celsius(
                          -2,
                          34,
                          Source.read(
                              COMPILATION,
                              "proxy, not this species: Ambystoma jeffersonianum 34.0 °C, kept at 10 °C"
                                  + " before, the lowest CTmax of three relatives (original: Gatz 1971);"
                                  + " Eurycea bislineata -2 °C, the higher CTmin of two salamanders"
                                  + " (original: Layne and Claussen 1982)"))),
                  Materials.ANIMAL_TISSUE,
                  SALAMANDER,
                  List.of(
                      RAMPED,
                      "How cold and how hot it may be for a moment is not known of its kind: what other"
                          + " salamanders bear is taken instead.",
                      DRIES_OUT))
              .with(Companions.OF_ONE_SIZE));

  private Amphibians() {}
}
