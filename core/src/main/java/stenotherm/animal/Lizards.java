package stenotherm.animal;

import static stenotherm.animal.KeepersPractice.COMPILATION;
import static stenotherm.animal.KeepersPractice.RAMPED;
import static stenotherm.animal.KeepersPractice.WARM_KEPT;

import java.util.List;
import stenotherm.base.Source;
import stenotherm.material.Materials;

/** The lizards of the catalogue that are no geckos. */
final class Lizards {
  /** Source of mean body temperatures in the field. */
  private static final String FIELD =
      "Mean body temperatures of lizards in the field, as compiled in a public table";

  private static final String PRACTICE_COLD = "10 °C (common practice)";

  private static final Proportions CHAMELEON = new Proportions(5, 1, 2);

  private static final TemperatureBand CHAMELEONS =
      TemperatureBand.celsius(
          7.6,
          40.8,
          Source.read(
              COMPILATION,
              "proxy, not this species: the narrower ends of five chameleons, Chamaeleo dilepis 7.6"
                  + " °C and C. hoehnelii 40.8 °C, animals from the field; original: Bennett 2004"));

  private static final String CHAMELEONS_STAND_IN =
      "How cold and how hot it may be for a moment is not known of its kind: what other chameleons"
          + " bear is taken instead.";

  static final Animal GREEN_ANOLE =
      new Animal(
          "green anole",
          "Anolis carolinensis",
          new Tolerance(
              TemperatureBand.celsius(18, 29, KeepersPractice.REPTILES),
              TemperatureBand.celsius(
                  17,
                  32,
                  Source.assumed(
                      "32 °C is common practice; the customary 10 °C lies below the 16.5 °C that"
                          + " stopped animals kept warm, so 17 °C")),
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
              "Animals kept at 35 °C before failed within minutes at 16.5 °C, 12 K above what is"
                  + " taken here."));

  static final Animal BEARDED_DRAGON =
      new Animal(
          "bearded dragon",
          "Pogona vitticeps",
          new Tolerance(
              TemperatureBand.celsius(18, 29, KeepersPractice.REPTILES),
              TemperatureBand.celsius(
                  10,
                  37,
                  KeepersPractice.abovePreferred(
                      FIELD,
                      "its mean when active is 34.6 °C, and it begins to gape near 37 °C"
                          + " (Tattersall and Gerlach 2005, from memory)",
                      PRACTICE_COLD)),
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
              "How cold and how hot it may be for a moment is not known of its kind: what two of"
                  + " its relatives bear is taken instead.",
              "In the wild its body is at 34.6 °C on average while it is active."));

  static final Animal JACKSONS_CHAMELEON =
      new Animal(
          "Jackson's chameleon",
          "Trioceros jacksonii",
          new Tolerance(
              TemperatureBand.celsius(16, 26, KeepersPractice.MOUNTAIN_CHAMELEONS),
              TemperatureBand.celsius(
                  10,
                  29,
                  Source.practice(
                      "Keepers hold chameleons of cool mountains not above 29 °C for long; below 10"
                          + " °C is a cause for alarm, as for other reptiles")),
              TemperatureBand.celsius(
                  5.3,
                  41.0,
                  Source.read(
                      COMPILATION,
                      "Trioceros jacksonii, there as Chamaeleo jacksonii, CTmin and CTmax of"
                          + " animals from the field; original: Bennett 2004"))),
          Materials.ANIMAL_TISSUE,
          CHAMELEON,
          List.of(
              RAMPED,
              WARM_KEPT,
              "It comes from cool mountains: keepers hold it cooler than other lizards."));

  static final List<Animal> ALL =
      List.of(
          GREEN_ANOLE,
          BEARDED_DRAGON,
          new Animal(
              "blue-tongued skink",
              "Tiliqua scincoides",
              new Tolerance(
                  TemperatureBand.celsius(18, 29, KeepersPractice.REPTILES),
                  TemperatureBand.celsius(
                      10,
                      36,
                      KeepersPractice.abovePreferred(
                          FIELD, "its mean when active is 33.2 °C", PRACTICE_COLD)),
                  TemperatureBand.celsius(
                      5.2,
                      43.9,
                      Source.read(
                          COMPILATION,
                          "proxy, not this species, at the cold end: Tiliqua nigrolutea 5.2 °C, the"
                              + " higher of two relatives (T. rugosa 3.5 °C), originals:"
                              + " Spellerberg 1972, Bennett and John-Alder 1986; CTmax of Tiliqua"
                              + " scincoides, original: Heatwole et al. 1973"))),
              Materials.ANIMAL_TISSUE,
              new Proportions(4, 1, 1),
              List.of(
                  RAMPED,
                  WARM_KEPT,
                  "How cold it may be for a moment is not known of its kind: what a relative"
                      + " bears is taken instead.")),
          new Animal(
              "long-tailed grass lizard",
              "Takydromus sexlineatus",
              new Tolerance(
                  TemperatureBand.celsius(18, 29, KeepersPractice.REPTILES),
                  TemperatureBand.celsius(
                      12,
                      34,
                      KeepersPractice.abovePreferred(
                          FIELD,
                          "its mean when active is 31.5 °C",
                          "12 °C, about halfway between 18 °C and its own critical minimum"
                              + " (assumed)")),
                  TemperatureBand.celsius(
                      6.4,
                      42.2,
                      Source.read(
                          COMPILATION,
                          "Takydromus sexlineatus, CTmin and CTmax, kept at 28 °C before; original:"
                              + " Zhang and Ji 2004"))),
              Materials.ANIMAL_TISSUE,
              new Proportions(6, 1, 1),
              List.of(RAMPED, WARM_KEPT)),
          JACKSONS_CHAMELEON,
          lowlandChameleon("veiled chameleon", "Chamaeleo calyptratus"),
          lowlandChameleon("panther chameleon", "Furcifer pardalis"));

  private Lizards() {}

  private static Animal lowlandChameleon(String name, String species) {
    return new Animal(
        name,
        species,
        new Tolerance(
            TemperatureBand.celsius(18, 29, KeepersPractice.REPTILES),
            TemperatureBand.celsius(15, 32, KeepersPractice.TROPICAL_REPTILES),
            CHAMELEONS),
        Materials.ANIMAL_TISSUE,
        CHAMELEON,
        List.of(RAMPED, WARM_KEPT, CHAMELEONS_STAND_IN));
  }
}
