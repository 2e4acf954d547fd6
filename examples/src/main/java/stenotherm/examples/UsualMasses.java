package stenotherm.examples;

import java.util.Map;
import stenotherm.animal.Animal;
import stenotherm.base.Source;

/**
 * Rough masses of adult animals, which a question offers as its usual answer. Whoever sends an
 * animal weighs it.
 */
final class UsualMasses {
  private static final Map<String, String> BY_NAME =
      Map.ofEntries(
          Map.entry("leopard gecko", "60 g"),
          Map.entry("crested gecko", "40 g"),
          Map.entry("gargoyle gecko", "50 g"),
          Map.entry("African fat-tailed gecko", "50 g"),
          Map.entry("mourning gecko", "3 g"),
          Map.entry("house gecko", "4 g"),
          Map.entry("giant day gecko", "60 g"),
          Map.entry("tokay gecko", "150 g"),
          Map.entry("green anole", "5 g"),
          Map.entry("bearded dragon", "400 g"),
          Map.entry("blue-tongued skink", "400 g"),
          Map.entry("long-tailed grass lizard", "5 g"),
          Map.entry("Jackson's chameleon", "80 g"),
          Map.entry("veiled chameleon", "150 g"),
          Map.entry("panther chameleon", "150 g"),
          Map.entry("corn snake", "600 g"),
          Map.entry("ball python", "1.5 kg"),
          Map.entry("garter snake", "150 g"),
          Map.entry("California kingsnake", "600 g"),
          Map.entry("milk snake", "400 g"),
          Map.entry("western hognose snake", "200 g"),
          Map.entry("boa constrictor", "5 kg"),
          Map.entry("Hermann's tortoise", "1 kg"),
          Map.entry("green and black poison frog", "3 g"),
          Map.entry("dyeing poison frog", "5 g"),
          Map.entry("White's tree frog", "60 g"),
          Map.entry("American green tree frog", "8 g"),
          Map.entry("red-eyed tree frog", "10 g"),
          Map.entry("common coqui", "5 g"),
          Map.entry("ornate horned frog", "200 g"),
          Map.entry("oriental fire-bellied toad", "10 g"),
          Map.entry("fire salamander", "25 g"),
          Map.entry("axolotl", "110 g"),
          Map.entry("tiger salamander", "80 g"),
          Map.entry("regal jumping spider", "1 g"),
          Map.entry("Chilean rose tarantula", "20 g"),
          Map.entry("Mexican red-knee tarantula", "20 g"),
          Map.entry("giant African snail", "150 g"),
          Map.entry("garden snail", "10 g"),
          Map.entry("rough woodlouse", "0.1 g"),
          Map.entry("Caribbean hermit crab", "50 g"));

  private static final Source ASSUMED = Source.assumed("a rough mass of adults");

  /** Where a mass was read; all others are assumed. */
  private static final Map<String, Source> SOURCES =
      Map.ofEntries(
          Map.entry(
              "leopard gecko",
              entry(
                  "Eublepharis macularius",
                  "females 50 to 70 g, males 60 to 80 g, from an encyclopedia")),
          Map.entry(
              "green anole",
              entry(
                  "Anolis carolinensis",
                  "females 4.4 g, males 6.3 g, there by size from a relative")),
          Map.entry(
              "corn snake",
              entry(
                  "Pantherophis guttatus",
                  "two years old, females 650 g, males 560 g, from Barnard et al. 1979")),
          Map.entry(
              "ball python",
              entry("Python regius", "three at four years 1.3 to 1.9 kg, from Laarhoven 2010")),
          Map.entry(
              "garter snake",
              entry("Thamnophis sirtalis", "150 g at a length of 55 cm, from an encyclopedia")),
          Map.entry(
              "boa constrictor", entry("Boa constrictor", "5.4 kg at 2.1 m, from Abuys 2003")),
          Map.entry(
              "Hermann's tortoise",
              entry(
                  "Testudo hermanni",
                  "0.6 to 1.4 kg at twelve to fourteen years, from Ritz et al. 2012")),
          Map.entry(
              "fire salamander",
              entry("Salamandra salamandra", "mothers 25 g, from Kopp and Baur 2000")),
          Map.entry(
              "axolotl",
              entry("Ambystoma mexicanum", "fully grown females 110 g, from an encyclopedia")));

  private UsualMasses() {}

  /** An entry of a public collection of data on single species. */
  private static Source entry(String species, String said) {
    return Source.read("Add-my-Pet, entry " + species, said);
  }

  /** The mass as a file could have it. */
  static String of(Animal animal) {
    return BY_NAME.getOrDefault(animal.name(), "40 g");
  }

  /** Where the mass comes from. */
  static Source source(Animal animal) {
    return SOURCES.getOrDefault(animal.name(), ASSUMED);
  }

  /** Tells whether the table has an animal. */
  static boolean has(Animal animal) {
    return BY_NAME.containsKey(animal.name());
  }
}
