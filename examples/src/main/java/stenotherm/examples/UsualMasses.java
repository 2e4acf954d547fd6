package stenotherm.examples;

import java.util.Map;
import stenotherm.animal.Animal;

/**
 * Rough masses of adult animals, which a question offers as its usual answer. Assumed: whoever
 * sends an animal weighs it.
 */
final class UsualMasses {
  private static final Map<String, String> BY_NAME =
      Map.ofEntries(
          Map.entry("leopard gecko", "40 g"),
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
          Map.entry("corn snake", "500 g"),
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
          Map.entry("axolotl", "150 g"),
          Map.entry("tiger salamander", "80 g"),
          Map.entry("regal jumping spider", "1 g"),
          Map.entry("Chilean rose tarantula", "20 g"),
          Map.entry("Mexican red-knee tarantula", "20 g"),
          Map.entry("giant African snail", "150 g"),
          Map.entry("garden snail", "10 g"),
          Map.entry("rough woodlouse", "0.1 g"),
          Map.entry("Caribbean hermit crab", "50 g"));

  private UsualMasses() {}

  /** The mass as a file could have it. */
  static String of(Animal animal) {
    return BY_NAME.getOrDefault(animal.name(), "40 g");
  }

  /** Tells whether the table has an animal. */
  static boolean has(Animal animal) {
    return BY_NAME.containsKey(animal.name());
  }
}
