package stenotherm.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stenotherm.material.Material;
import stenotherm.material.Materials;
import stenotherm.text.ScalarNode;
import stenotherm.warmer.Warmers;

/**
 * Words that people use for things that have other names in the catalogues. What a word leaves open
 * is assumed, and told; what it cannot mean is refused.
 */
enum EverydayWords {
  /** Layers of walls. */
  WALL("in a wall", Map.of("foam", new Meant(Materials.EPS, "EPS of unknown density"))),
  /** What fills a box. */
  FILL(
      "as fill",
      Map.of(
          "packing peanuts", new Meant(Materials.LOOSE_FILL_EPS, "loose-fill EPS, not starch"),
          "peanuts", new Meant(Materials.LOOSE_FILL_EPS, "loose-fill EPS, not starch"),
          "crumpled paper", new Meant(Materials.CRUMPLED_NEWSPAPER, "crumpled newspaper, tight"),
          "moss", new Meant(Materials.SPHAGNUM_DRY, "dry sphagnum"))),
  /** What lies in a container. */
  BEDDING("as bedding", Map.of("moss", new Meant(Materials.DAMP_SPHAGNUM, "damp sphagnum"))),
  /** What is in a pack. */
  PACK("in a pack", Map.of());

  private static final Pattern WARMER =
      Pattern.compile("(?i)([0-9]+)[\\s-]*(?:h|hr|hrs|hour|hours)(?:\\s+(?:warmer|heat\\s?pack))?");

  private static final String SOLID_PAPER =
      "is solid paper, which fills no box, write shredded paper, crumpled newspaper (packed tight)"
          + " or loosely crumpled newspaper";

  private final String where;
  private final Map<String, Meant> words;

  EverydayWords(String where, Map<String, Meant> words) {
    this.where = where;
    this.words = words;
  }

  /** Every word with what it is taken for, for the reference page. */
  static List<String> all() {
    List<String> all = new ArrayList<>();
    for (EverydayWords each : values()) {
      new TreeMap<>(each.words)
          .forEach((word, meant) -> all.add("`" + word + "` " + each.where + ": " + meant.said()));
    }
    return all;
  }

  /**
   * What a word is taken for.
   *
   * @param material the material
   * @param said how the report names it, with what the word left open
   */
  private record Meant(Material material, String said) {}

  /** The material that an everyday word stands for; what it is taken for is told. */
  Optional<Material> material(ScalarNode node, Assumptions assumptions) {
    String word = node.text().toLowerCase(Locale.ROOT);
    if (this == FILL && (word.equals("paper") || word.equals("newspaper"))) {
      throw node.fail(SOLID_PAPER);
    }
    Meant meant = words.get(word);
    if (meant == null) {
      return Optional.empty();
    }
    assumptions.add("The file's word '" + word + "' is taken as " + meant.said() + " (assumed).");
    return Optional.of(meant.material());
  }

  /** The name in the catalogue of what a file calls a warmer, or what it says. */
  static String warmer(String text) {
    Matcher hours = WARMER.matcher(text);
    String name = hours.matches() ? hours.group(1) + " hour warmer" : text;
    return Warmers.all().stream().anyMatch(each -> each.name().equals(name)) ? name : text;
  }
}
