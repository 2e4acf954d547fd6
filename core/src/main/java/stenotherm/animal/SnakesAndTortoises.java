package stenotherm.animal;

import static stenotherm.animal.KeepersPractice.COMPILATION;
import static stenotherm.animal.KeepersPractice.RAMPED;
import static stenotherm.animal.KeepersPractice.WARM_KEPT;

import java.util.List;
import stenotherm.base.Source;
import stenotherm.material.Materials;

/** The snakes of the catalogue, and a tortoise. */
final class SnakesAndTortoises {
  /** A snake that lies coiled. */
  private static final Proportions COILED = new Proportions(3, 3, 1);

  private static final String STAND_IN =
      "How cold and how hot it may be for a moment is not known of its kind: what other snakes bear"
          + " is taken instead.";

  private static final Source OTHER_SNAKES =
      Source.derived(
          COMPILATION,
          "proxy, not this species: 7.0 °C is the highest CTmin of the 18 snakes there that have"
              + " one, 40.5 °C the CTmax of the related Pituophis catenifer (original: Brattstrom"
              + " 1965)");

  private static final TemperatureBand BOAS =
      TemperatureBand.celsius(
          7.0,
          38.0,
          Source.derived(
              COMPILATION,
              "proxy, not this species: 7.0 °C is the highest CTmin of the 18 snakes"
                  + " there that have one, 38.0 °C the CTmax of the rubber boa Charina"
                  + " bottae, the only boa or python there (original: Brattstrom 1965)"));

  static final Animal CORN_SNAKE =
      colubrid("corn snake", "Pantherophis guttatus", "Keepers offer it places of 25 °C to 32 °C.");

  static final Animal BALL_PYTHON =
      new Animal(
          "ball python",
          "Python regius",
          new Tolerance(
              TemperatureBand.celsius(20, 29, KeepersPractice.PYTHONS),
              TemperatureBand.celsius(
                  15,
                  32,
                  Source.assumed(
                      "Keepers call 18 °C bearable for short times only and warn of more than 32"
                          + " °C; 15 °C is taken between that and the critical minimum")),
              BOAS),
          Materials.ANIMAL_TISSUE,
          COILED,
          List.of(RAMPED, WARM_KEPT, STAND_IN, "Keepers offer it places of 25 °C to 34 °C."));

  static final Animal GARTER_SNAKE =
      new Animal(
          "garter snake",
          "Thamnophis sirtalis",
          new Tolerance(
              TemperatureBand.celsius(18, 29, KeepersPractice.REPTILES),
              TemperatureBand.celsius(10, 32, KeepersPractice.REPTILES),
              TemperatureBand.celsius(
                  4.2,
                  38.9,
                  Source.read(
                      COMPILATION,
                      "Thamnophis sirtalis, CTmin and CTmax, heated at 1 K per hour; original:"
                          + " Stewart 1965"))),
          Materials.ANIMAL_TISSUE,
          COILED,
          List.of(RAMPED, WARM_KEPT));

  static final List<Animal> SNAKES =
      List.of(
          CORN_SNAKE,
          BALL_PYTHON,
          GARTER_SNAKE,
          colubrid(
                  "California kingsnake",
                  "Lampropeltis californiae",
                  "Keepers offer kingsnakes places of 25 °C to 32 °C.")
              .with(Companions.NONE),
          colubrid(
                  "milk snake",
                  "Lampropeltis triangulum",
                  "Its forms come from cool mountains as well as from the tropics.")
              .with(Companions.NONE),
          colubrid(
              "western hognose snake",
              "Heterodon nasicus",
              "It basks: a warm place above 32 °C does not alarm its keepers, a box of that"
                  + " temperature does."),
          new Animal(
              "boa constrictor",
              "Boa constrictor",
              new Tolerance(
                  TemperatureBand.celsius(
                      20, 29, Source.practice("Boas travel as warm as pythons, at 20 °C to 29 °C")),
                  TemperatureBand.celsius(
                      15,
                      34,
                      Source.derived(
                          "WikiVet, Preferred optimum temperature zone",
                          "28 °C to 34 °C for this species: the hot end is that of the zone. Cold"
                              + " end: 15 °C, as for pythons (assumed)")),
                  BOAS),
              Materials.ANIMAL_TISSUE,
              COILED,
              List.of(RAMPED, WARM_KEPT, STAND_IN)));

  static final List<Animal> TORTOISES =
      List.of(
          new Animal(
              "Hermann's tortoise",
              "Testudo hermanni",
              new Tolerance(
                  TemperatureBand.celsius(18, 29, KeepersPractice.REPTILES),
                  TemperatureBand.celsius(
                      10,
                      32,
                      Source.practice(
                          "Tortoises that are awake travel as lizards do: below 10 °C or above 32"
                              + " °C is a cause for alarm")),
                  TemperatureBand.celsius(
                      6.0,
                      42.0,
                      Source.read(
                          COMPILATION,
                          "Testudo hermanni, CTmin and CTmax; original: Cherchi 1956, as quoted by"
                              + " Brattstrom 1965"))),
              Materials.ANIMAL_TISSUE,
              new Proportions(4, 3, 2),
              List.of(
                  RAMPED,
                  WARM_KEPT,
                  "The numbers are for an animal that is awake, not for one in its winter rest.")));

  private SnakesAndTortoises() {}

  private static Animal colubrid(String name, String species, String caution) {
    return new Animal(
        name,
        species,
        new Tolerance(
            TemperatureBand.celsius(18, 29, KeepersPractice.REPTILES),
            TemperatureBand.celsius(10, 32, KeepersPractice.REPTILES),
            TemperatureBand.celsius(7.0, 40.5, OTHER_SNAKES)),
        Materials.ANIMAL_TISSUE,
        COILED,
        List.of(RAMPED, WARM_KEPT, STAND_IN, caution));
  }
}
