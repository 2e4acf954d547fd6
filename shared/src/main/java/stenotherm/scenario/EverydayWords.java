package stenotherm.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import stenotherm.base.MessageText;
import stenotherm.base.Suggestions;
import stenotherm.material.Material;
import stenotherm.material.Materials;
import stenotherm.text.ScalarNode;
import stenotherm.warmer.WarmerClass;
import stenotherm.warmer.Warmers;

/**
 * Words that people use for things that have other names in the catalogues. What a word leaves open
 * is assumed, and told; what it cannot mean is refused.
 */
enum EverydayWords {
  /** Layers of walls. */
  WALL(
      "in a wall",
      Map.of(
          "foam", new Meant(Materials.EPS, "EPS of unknown density"),
          "white foam", new Meant(Materials.EPS, "EPS of unknown density"),
          "eps foam", new Meant(Materials.EPS, "EPS of unknown density"),
          "expanded polystyrene", new Meant(Materials.EPS, "EPS of unknown density"),
          "bubble wrap", new Meant(Materials.BUBBLE_FILM, "bubble film"))),
  /** What fills a box. */
  FILL(
      "as fill",
      Map.of(
          "packing peanuts", new Meant(Materials.LOOSE_FILL_EPS, "loose-fill EPS, not starch"),
          "peanuts", new Meant(Materials.LOOSE_FILL_EPS, "loose-fill EPS, not starch"),
          "foam peanuts", new Meant(Materials.LOOSE_FILL_EPS, "loose-fill EPS"),
          "starch peanuts", new Meant(Materials.LOOSE_FILL_STARCH, "loose-fill starch"),
          "bubble wrap", new Meant(Materials.BUBBLE_FILM, "bubble film"),
          "sphagnum moss", new Meant(Materials.SPHAGNUM_DRY, "dry sphagnum"),
          "crumpled paper", new Meant(Materials.CRUMPLED_NEWSPAPER, "crumpled newspaper, tight"),
          "moss", new Meant(Materials.SPHAGNUM_DRY, "dry sphagnum"))),
  /** What lies in a container. */
  BEDDING(
      "as bedding",
      Map.of(
          "moss", new Meant(Materials.DAMP_SPHAGNUM, "damp sphagnum"),
          "damp moss", new Meant(Materials.DAMP_SPHAGNUM, "damp sphagnum"),
          "sphagnum moss", new Meant(Materials.DAMP_SPHAGNUM, "damp sphagnum"))),
  /** What is in a pack. */
  PACK("in a pack", Map.of());

  private static final Pattern WARMER =
      Pattern.compile(
          "(?i)([0-9]+)[\\s-]*(?:h|hr|hrs|hour|hours)\\.?"
              + "(?:(?:\\s+(?:shipping|air[\\s-]activated))*\\s+(?:warmer|heat\\s?pack))?");

  private static final Pattern HOURS = Pattern.compile("\\b[0-9]{2}\\b");

  /** Several warmers in one text. */
  private static final Pattern SEVERAL =
      Pattern.compile(
          "(?i)(?:[0-9]\\s*[x×]\\s*|[0-9]\\s+|two\\s+|three\\s+)([0-9]+\\D+?)s?"
              + "(?:\\s+(?:on|at|taped)\\b.*)?");

  private static final Pattern COLD = Pattern.compile("(?i).*\\b(?:cold|ice|cool|gel|phase).*");

  /** Longest name that a message repeats. */
  private static final int LONGEST_SHOWN = 40;

  private static final String PAPERS =
      "write shredded paper, crumpled newspaper (packed tight) or loosely crumpled newspaper";

  /** What is put into boxes and has no values in the catalogue. */
  private static final Pattern UNKNOWN_FILLS =
      Pattern.compile(
          "\\b(?:hay|straw|aspen|shavings?|sawdust|poly-?fill|pillows?|cotton|fill)\\b");

  private static final String FILLS =
      "write one that is, such as shredded paper, foam peanuts, bubble wrap, moss or wood wool, or"
          + " none";

  private static final Set<String> NOTHING = Set.of("nothing", "empty", "air", "no");

  private static final Pattern SOME_FOAM = Pattern.compile("foam|styro|polystyrene|insulation");

  /** Foam of it is not that of another plastic with a name like it. */
  private static final Pattern POLYSTYRENE = Pattern.compile("styro|polystyrene");

  private static final String FOAMS =
      "write foam (white, of beads), XPS (smooth, of one colour), PUR, foil-faced PIR or"
          + " polyethylene foam (soft)";

  /** Words that people have for keys, in lower case. */
  static final Map<String, String> KEYS =
      Map.ofEntries(
          Map.entry("cup", "size"),
          Map.entry("top", "lid"),
          Map.entry("bottom", "floor"),
          Map.entry("walls", "foam"),
          Map.entry("insulation", "foam"),
          Map.entry("liner", "foam"),
          Map.entry("lining", "foam"),
          Map.entry("heat pack", "warmer"),
          Map.entry("heatpack", "warmer"),
          Map.entry("heater", "warmer"),
          Map.entry("heat packs", "warmers"),
          Map.entry("pack", "packs"),
          Map.entry("cold pack", "packs"),
          Map.entry("cold packs", "packs"),
          Map.entry("ice pack", "packs"),
          Map.entry("ice packs", "packs"),
          Map.entry("gel pack", "packs"),
          Map.entry("gel packs", "packs"),
          Map.entry("vent", "holes"),
          Map.entry("vents", "holes"),
          Map.entry("vent holes", "holes"),
          Map.entry("air holes", "holes"),
          Map.entry("flaps", "seams"),
          Map.entry("tape", "seams"),
          Map.entry("filling", "fill"),
          Map.entry("padding", "fill"),
          Map.entry("packing", "packings"),
          Map.entry("boxes", "packings"),
          Map.entry("carton", "box"),
          Map.entry("bag", "cup"),
          Map.entry("vial", "cup"),
          Map.entry("container", "cup"),
          Map.entry("weight", "mass"),
          Map.entry("substrate", "bedding"),
          Map.entry("moss", "bedding"),
          Map.entry("species", "animal"),
          Map.entry("trip", "journey"),
          Map.entry("route", "journey"),
          Map.entry("date", "sealed"),
          Map.entry("packed", "sealed"),
          Map.entry("duration", "for"),
          Map.entry("temperature", "ambient"),
          Map.entry("cups", "containers"),
          Map.entry("low", "lows/highs"),
          Map.entry("high", "lows/highs"),
          Map.entry("temperatures", "lows/highs"),
          Map.entry("weather", "lows/highs"));

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
    Meant meant = words.get(word);
    if (meant == null) {
      refuse(node, word);
      return Optional.empty();
    }
    assumptions.add("The file's word '" + word + "' is taken as " + meant.said() + " (assumed).");
    return Optional.of(meant.material());
  }

  /** Refuses what may mean several things, and names them. */
  private void refuse(ScalarNode node, String word) {
    Optional<String> near =
        Suggestions.closest(word, Materials.all().stream().map(Material::name).toList());
    if (this == FILL && (word.equals("paper") || word.equals("newspaper"))) {
      throw node.fail("is solid paper, which fills no box, " + PAPERS);
    }
    if (this == FILL
        && word.contains("paper")
        && near.filter(name -> name.contains("paper")).isEmpty()) {
      throw node.fail("is no fill that is known, " + PAPERS);
    }
    if (this == FILL && NOTHING.contains(word)) {
      throw node.fail("is written none, for a box with nothing but air in it");
    }
    if (this == FILL && near.isEmpty() && word.contains("peanut")) {
      throw node.fail("is written foam peanuts or starch peanuts");
    }
    if (this == FILL && near.isEmpty() && UNKNOWN_FILLS.matcher(word).find()) {
      throw node.fail("is no fill that is known, " + FILLS);
    }
    boolean isPolystyrene =
        POLYSTYRENE.matcher(word).find()
            && near.filter(name -> POLYSTYRENE.matcher(name.toLowerCase(Locale.ROOT)).find())
                .isEmpty();
    if (this == WALL && SOME_FOAM.matcher(word).find() && (near.isEmpty() || isPolystyrene)) {
      throw node.fail("may be one of several foams, " + FOAMS);
    }
  }

  /** Refuses what is no single warmer, and says where it is written. */
  static void refuseOtherThanWarmer(ScalarNode node) {
    Matcher several = SEVERAL.matcher(node.text());
    if (several.matches()) {
      String one = MessageText.of(several.group(1), LONGEST_SHOWN);
      throw node.fail(
          "is more than one, each of which is written under warmers with its place, for example"
              + " warmers: ["
              + one
              + " on left, "
              + one
              + " on right]");
    }
    if (COLD.matcher(node.text()).matches()) {
      throw node.fail(
          "is no warmer; what cools has a key of its own, packs, as in packs: [{pack: gel pack on"
              + " lid, size: 150 x 100 x 20 mm, start: 4 °C}]");
    }
  }

  /** Tells by what a class is chosen whose name the catalogue lacks: by its hours. */
  static void requireKnownWarmer(ScalarNode name) {
    String known = warmer(name.text());
    Matcher hours = HOURS.matcher(name.text());
    boolean isTypedWrong =
        Suggestions.closest(known, Warmers.all().stream().map(WarmerClass::name).toList())
            .isPresent();
    if (!isTypedWrong && hours.find() && isKnown(warmer(hours.group() + " h"))) {
      throw name.fail(
          "is not in the catalogue. If it is sold for "
              + hours.group()
              + " hours, write for example warmer: "
              + hours.group()
              + " hour warmer on lid");
    }
    if (!isTypedWrong && !hours.reset().find()) {
      throw name.fail(
          "is not in the catalogue. The hours on its wrapper tell which one to take, write for"
              + " example 40 hour warmer; known are "
              + Warmers.all().stream().map(WarmerClass::name).collect(Collectors.joining(", ")));
    }
  }

  /** By what a warmer is chosen that is named without a number, as a clause; else nothing. */
  static String hoursTell(String noun, ScalarNode name) {
    boolean isNumbered = name.text().chars().anyMatch(Character::isDigit);
    return noun.equals("warmer") && !isNumbered
        ? "; the hours on its wrapper tell which one to take"
        : "";
  }

  /** The name in the catalogue of what a file calls a warmer, or what it says. */
  static String warmer(String text) {
    Matcher hours = WARMER.matcher(text);
    String name = hours.matches() ? hours.group(1) + " hour warmer" : text;
    return isKnown(name) ? name : text;
  }

  /** Tells whether a text names a warmer of the catalogue. */
  static boolean isWarmer(String text) {
    return isKnown(warmer(text));
  }

  private static boolean isKnown(String name) {
    return Warmers.all().stream().anyMatch(each -> each.name().equals(name));
  }
}
