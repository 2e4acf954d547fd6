package stenotherm.scenario;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stenotherm.base.Axis;
import stenotherm.base.InvalidInputException;
import stenotherm.base.MessageText;
import stenotherm.material.Absorbent;
import stenotherm.material.Material;
import stenotherm.material.Materials;
import stenotherm.parcel.Bedding;
import stenotherm.parcel.Container;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.LidHoles;
import stenotherm.parcel.Occupant;
import stenotherm.parcel.Position;
import stenotherm.parcel.Vessel;
import stenotherm.parcel.VesselSize;
import stenotherm.parcel.VesselSizes;
import stenotherm.parcel.WallLayer;
import stenotherm.text.MappingNode;
import stenotherm.text.Node;
import stenotherm.text.ScalarNode;
import stenotherm.text.Size;

/** Reads one container with its bedding and its animal; where it stands is read elsewhere. */
final class ContainerReader {
  private static final String BOX_CUP = "box cup";
  private static final String ROUND_CUP = "round cup";
  private static final String BAG = "bag";
  private static final String VIAL = "vial";
  private static final String KIND = "kind";
  private static final String ALONG = "along";
  private static final String BEDDING = "bedding";
  private static final String TOWEL = "towel";
  private static final String HOLES = "holes";
  private static final String COUNT = "count";

  /** More would take hours. */
  private static final int MOST = 50;

  /** How many of a container that is known by name, such as 12 x 9 dram vial; no two lengths. */
  private static final Pattern SEVERAL =
      Pattern.compile(
          "(?is)([0-9]{1,2})\\s*[x×]\\s*"
              + "(?!.*[x×]\\s*[0-9])(?!.*[0-9\\s](?:mm|cm|m|in|inch|inches|ft|feet|foot)\\s*$)"
              + "(.*\\p{L}.*)");

  /** Longest size that a message repeats. */
  private static final int LONGEST_SHOWN = 40;

  private static final Pattern HOLE =
      Pattern.compile(
          "(?is)([0-9]{1,6})\\s*[x×]\\s*(.+?)(?:\\s+(?:on|in)(?:\\s+(?:the|its))?\\s+(?:lid|cap))?");

  /** Holes where the container is named. */
  private static final Pattern WITH_HOLES =
      Pattern.compile("(?is)(\\S.*?)(?:,|\\s(?:with|and)\\s).*\\bholes?\\b.*");

  /** Where wall and lid are left out, by kind of container. */
  private static final Map<String, String> WALLS =
      Map.of(
          BOX_CUP, "polypropylene 0.5 mm",
          ROUND_CUP, "polypropylene 0.5 mm",
          BAG, "cotton cloth 0.5 mm",
          VIAL, "polystyrene 1.2 mm");

  private static final Map<String, Axis> AXES = axes();

  /** Water in catalogue materials that are damp [kg/kg]. */
  private static final Map<Material, Double> WATER =
      Map.of(
          Materials.WET_PAPER_TOWEL, 10.0,
          Materials.WET_SPHAGNUM, 15.0);

  private final KeyedSection section;
  private final String usualName;
  private final Optional<Node> sharedAnimal;

  /**
   * A container of a section, whose usual name is what it is if it has no other; the animal of the
   * scenario is in it unless it says otherwise.
   */
  ContainerReader(KeyedSection section, String usualName, Optional<Node> sharedAnimal) {
    this.section = section;
    this.usualName = usualName;
    this.sharedAnimal = sharedAnimal;
  }

  private static Map<String, Axis> axes() {
    Map<String, Axis> axes = new LinkedHashMap<>();
    axes.put("height", Axis.Z);
    axes.put("length", Axis.X);
    axes.put("width", Axis.Y);
    return Collections.unmodifiableMap(axes);
  }

  static List<String> axisNames() {
    return List.copyOf(AXES.keySet());
  }

  static Map<String, Axis> axesByName() {
    return AXES;
  }

  static List<String> kinds() {
    return List.of(BOX_CUP, ROUND_CUP, BAG, VIAL);
  }

  /**
   * A size alone is short for a container of which everything else is left out, a number before a
   * name for so many.
   */
  static KeyedSection section(Node node, Assumptions assumptions) {
    return KeyedSection.of(
        node instanceof ScalarNode scalar ? shortFor(scalar) : node.asMapping(),
        Vocabulary.CONTAINER,
        assumptions);
  }

  private static MappingNode shortFor(ScalarNode scalar) {
    Matcher several = SEVERAL.matcher(scalar.text());
    return scalar.shortFor(
        several.matches()
            ? Map.of(COUNT, several.group(1), "size", several.group(2))
            : Map.of("size", scalar.text()));
  }

  /** How many alike a section stands for; one that has a name or a place stands for itself. */
  static int count(KeyedSection section) {
    if (!section.has(COUNT)) {
      return 1;
    }
    ScalarNode node = section.require(COUNT).asScalar();
    int count = node.text().matches("[0-9]{1,2}") ? Integer.parseInt(node.text()) : 0;
    if (count < 1 || count > MOST) {
      throw node.fail("must be a whole number from 1 to " + MOST);
    }
    for (String own : List.of("name", "position", "on-top-of")) {
      if (section.has(own)) {
        throw section.node().failAt(own, "cannot be given together with " + COUNT);
      }
    }
    return count;
  }

  /** The container, in the middle of the floor. */
  Container read() {
    Vessel vessel = vessel();
    String usual = usualName.isEmpty() ? noun(vessel) : usualName;
    String name = section.optional("name").map(node -> node.asScalar().text()).orElse(usual);
    Optional<Occupant> occupant = occupant();
    boolean damp = occupant.isPresent() && !(vessel instanceof Vessel.Bag);
    List<Bedding> bedding = bedding(damp);
    return section
        .node()
        .locate("container '" + name + "'", () -> filled(name, vessel, bedding, occupant));
  }

  private Container filled(
      String name, Vessel vessel, List<Bedding> bedding, Optional<Occupant> occupant) {
    Container filled = new Container(name, vessel, Position.MIDDLE_OF_FLOOR, bedding, occupant);
    occupant
        .filter(who -> who.count() > 1)
        .ifPresent(who -> section.assumptions().add(crowd(name, who)));
    return filled;
  }

  private static String crowd(String name, Occupant who) {
    return "In "
        + name
        + " are "
        + who.count()
        + " animals, "
        + who.animal().name()
        + ": all of them breathe and weigh; the temperature of one is computed, and the heat that"
        + " the others store is left out, so that it comes out no milder for it than it is"
        + " (assumed).";
  }

  private static String noun(Vessel vessel) {
    if (vessel instanceof Vessel.Bag) {
      return BAG;
    }
    return vessel instanceof Vessel.Vial ? VIAL : "cup";
  }

  private Vessel vessel() {
    ScalarNode size = section.require("size").asScalar();
    String text = size.text();
    Matcher holed = WITH_HOLES.matcher(text);
    if (holed.matches()) {
      throw size.fail(
          "holes have a key of their own, in a file for example {size: "
              + MessageText.of(holed.group(1), LONGEST_SHOWN)
              + ", holes: 8 x 2 mm}; without it so many count");
    }
    int lengths = size.factors();
    if (lengths == 1) {
      return named(size.locate(() -> known(text)));
    }
    return lengths == 2 ? round(size) : boxed(size);
  }

  /** A container by its name; if there is none, the message tells how to give a size instead. */
  private static VesselSize known(String name) {
    try {
      return VesselSizes.named(name);
    } catch (InvalidInputException unknown) {
      if (!unknown.problem().contains("Known: ")) {
        throw unknown;
      }
      throw new InvalidInputException(
          unknown.field(), unknown.problem() + " Or write its inner size, " + sizeLike(name));
    }
  }

  /** A size as the file may have it in place of a name. */
  private static String sizeLike(String name) {
    String word = name.toLowerCase(Locale.ROOT);
    if (word.contains(VIAL)) {
      return "as in {size: 15 x 45 mm, kind: vial}";
    }
    return word.contains(BAG)
        ? "as in {size: 120 x 90 x 50 mm, kind: bag}"
        : "100 x 60 mm if it is round or 110 x 80 x 60 mm";
  }

  private Vessel named(VesselSize size) {
    if (section.has(KIND)) {
      throw section.node().failAt(KIND, "has no effect for a container known by name");
    }
    section
        .assumptions()
        .add("Container " + size.name() + ", " + Assumptions.vessel(size.vessel()), size.source());
    Vessel vessel = size.vessel();
    WallLayer wall =
        section.optional("wall").map(node -> wallLayer(node.asScalar())).orElse(vessel.wall());
    if (vessel instanceof Vessel.Vial vial) {
      return new Vessel.Vial(vial.diameter(), vial.length(), along(), wall, holes());
    }
    refuseAlong();
    if (vessel instanceof Vessel.RoundCup cup) {
      return new Vessel.RoundCup(cup.diameter(), cup.height(), wall, holes());
    }
    return boxed(vessel.inner(), wall, vessel instanceof Vessel.Bag);
  }

  private Vessel boxed(ScalarNode node) {
    Size size = node.size();
    String kind = kind(BOX_CUP);
    if (!kind.equals(BOX_CUP) && !kind.equals(BAG)) {
      throw node.fail(
          "must be the diameter and the height of a " + kind + ", write for example 100 x 60 mm");
    }
    refuseAlong();
    Dimensions inner = node.locate(() -> new Dimensions(size.x(), size.y(), size.z()));
    WallLayer wall = wall(kind);
    return boxed(inner, wall, kind.equals(BAG));
  }

  private Vessel boxed(Dimensions inner, WallLayer wall, boolean isBag) {
    if (!isBag) {
      return new Vessel.BoxCup(inner, wall, holes());
    }
    if (section.has(HOLES)) {
      throw section.node().failAt(HOLES, "has no effect for a bag: cloth lets air through");
    }
    return new Vessel.Bag(inner, wall);
  }

  private LidHoles holes() {
    ScalarNode node = section.value(HOLES).asScalar();
    if (node.text().equals("0") || PackingReader.isNothing(node)) {
      return LidHoles.NONE;
    }
    Matcher parts = HOLE.matcher(node.text());
    if (!parts.matches()) {
      throw node.fail("must be how many holes and how wide, write for example 8 x 2 mm, or none");
    }
    int count = Integer.parseInt(parts.group(1));
    double diameter = node.piece(parts.group(2)).length();
    return node.locate(() -> new LidHoles(count, diameter));
  }

  private Vessel round(ScalarNode node) {
    List<Double> size = node.twoLengths();
    String kind = kind(ROUND_CUP);
    if (!kind.equals(ROUND_CUP) && !kind.equals(VIAL)) {
      throw node.fail(
          "must be the length, width and height of a "
              + kind
              + ", write for example 110 x 80 x 60 mm");
    }
    WallLayer wall = wall(kind);
    LidHoles holes = holes();
    if (kind.equals(VIAL)) {
      Axis along = along();
      return node.locate(() -> new Vessel.Vial(size.get(0), size.get(1), along, wall, holes));
    }
    refuseAlong();
    return node.locate(() -> new Vessel.RoundCup(size.get(0), size.get(1), wall, holes));
  }

  private String kind(String usual) {
    Map<String, String> kinds = new LinkedHashMap<>();
    kinds().forEach(kind -> kinds.put(kind, kind));
    return section
        .value(KIND, usual, "by its size")
        .asScalar()
        .choice(Collections.unmodifiableMap(kinds));
  }

  private WallLayer wall(String kind) {
    return wallLayer(section.value("wall", WALLS.getOrDefault(kind, ""), "assumed").asScalar());
  }

  private WallLayer wallLayer(ScalarNode node) {
    WallLayer layer = Layers.layer(node, EverydayWords.WALL, section.assumptions());
    return node.locate(() -> Vessel.thin(layer));
  }

  private Axis along() {
    return section.value(ALONG, "height", "assumed").asScalar().choice(AXES);
  }

  private void refuseAlong() {
    if (section.has(ALONG)) {
      throw section.node().failAt(ALONG, "is for vials only");
    }
  }

  private Optional<Occupant> occupant() {
    Optional<Node> own = section.optional("animal");
    if (own.isPresent()
        && own.get() instanceof ScalarNode scalar
        && scalar.text().equals(Layers.NONE)) {
      return Optional.empty();
    }
    Node node = own.or(() -> sharedAnimal).orElseGet(() -> section.require("animal"));
    return Optional.of(OccupantReader.read(node, section.assumptions()));
  }

  private List<Bedding> bedding(boolean damp) {
    Node towel = section.optional(TOWEL).orElse(null);
    if (towel != null) {
      if (section.has(BEDDING)) {
        throw section.node().failAt(TOWEL, "cannot be given together with bedding");
      }
      double thickness = towel.asScalar().length();
      return List.of(towel.locate(() -> Bedding.dampTowel(thickness)));
    }
    String usual = damp ? "damp paper towel 4 mm" : Layers.NONE;
    Node node = section.value(BEDDING, usual, "assumed");
    if (node instanceof ScalarNode scalar && scalar.text().equals(Layers.NONE)) {
      return List.of();
    }
    List<Node> layers =
        node instanceof ScalarNode || node instanceof MappingNode
            ? List.of(node)
            : node.asSequence().items();
    List<Bedding> bedding = new ArrayList<>();
    for (Node each : layers) {
      bedding.add(layer(each));
    }
    return bedding;
  }

  private Bedding layer(Node node) {
    if (node instanceof ScalarNode scalar) {
      WallLayer layer = Layers.layer(scalar, EverydayWords.BEDDING, section.assumptions());
      return scalar.locate(() -> bedding(layer));
    }
    KeyedSection bedding = KeyedSection.of(node, Vocabulary.BEDDING, section.assumptions());
    ScalarNode materialNode = bedding.require("material").asScalar();
    Material material = Layers.material(materialNode, EverydayWords.BEDDING, section.assumptions());
    double thickness = bedding.require("thickness").asScalar().length();
    ScalarNode water = bedding.optional("water").map(Node::asScalar).orElse(null);
    if (water == null) {
      return node.locate(() -> bedding(new WallLayer(material, thickness)));
    }
    if (!Vocabulary.PADS.contains(material)) {
      throw materialNode.fail(
          "does not take up a stated mass of water, only "
              + String.join(", ", Vocabulary.PADS.stream().map(Material::name).toList())
              + " do");
    }
    double perDryMass = water.percentage();
    return water.locate(
        () ->
            Bedding.moist(
                material.name(), new Absorbent(material, Materials.PAPER), thickness, perDryMass));
  }

  /** A layer of the catalogue with the water that it is stated with. */
  private static Bedding bedding(WallLayer layer) {
    Material material = layer.material();
    double thickness = layer.thickness();
    if (material.equals(Materials.DAMP_PAPER_TOWEL)) {
      return Bedding.dampTowel(thickness);
    }
    if (material.equals(Materials.DAMP_SPHAGNUM)) {
      return Bedding.dampMoss(thickness);
    }
    if (material.equals(Materials.DAMP_COIR)) {
      return Bedding.dampCoir(thickness);
    }
    double water = WATER.getOrDefault(material, 0.0);
    return new Bedding(material.name().toLowerCase(Locale.ROOT), material, thickness, water);
  }
}
