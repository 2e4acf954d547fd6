package stenotherm.scenario;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stenotherm.animal.Animal;
import stenotherm.animal.Animals;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.grid.Box;
import stenotherm.grid.Point;
import stenotherm.material.Material;
import stenotherm.material.Materials;
import stenotherm.parcel.Bedding;
import stenotherm.parcel.Container;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Occupant;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Position;
import stenotherm.parcel.Vessel;
import stenotherm.parcel.WallLayer;
import stenotherm.parcel.Walls;
import stenotherm.text.MappingNode;
import stenotherm.text.Node;
import stenotherm.text.ScalarNode;
import stenotherm.text.Size;
import stenotherm.warmer.WarmerClass;
import stenotherm.warmer.Warmers;

/** Reads the packings of a scenario, with the animal and the cup that they share. */
final class PackingReader {
  private static final String NONE = "none";
  private static final String CUP = "cup";
  private static final String WARMER = "warmer";
  private static final String STAND_OFF = "stand-off";
  private static final String CONTACT = "contact";
  private static final String OPENED = "opened";

  private static final Pattern EPS = Pattern.compile("(?i)EPS(?:\\s*([0-9]+(?:\\.[0-9]+)?))?");
  private static final Pattern ON_FACE = Pattern.compile("(.+)\\s+on\\s+(\\S+)");
  private static final Pattern MOMENT = Pattern.compile("(.+)\\sbefore\\s+sealing");
  private static final Map<String, Face> FACES = faces();

  private final Assumptions assumptions;
  private final Section root;
  private final Occupant occupant;

  PackingReader(Assumptions assumptions, Section root) {
    this.assumptions = assumptions;
    this.root = root;
    this.occupant = occupant(root.require("animal").asScalar());
  }

  private static Map<String, Face> faces() {
    Map<String, Face> faces = new LinkedHashMap<>();
    faces.put("lid", Face.Z_MAX);
    faces.put("floor", Face.Z_MIN);
    faces.put("left", Face.X_MIN);
    faces.put("right", Face.X_MAX);
    faces.put("front", Face.Y_MIN);
    faces.put("back", Face.Y_MAX);
    for (Face face : Face.values()) {
      faces.put(face.label(), face);
    }
    return faces;
  }

  private static Occupant occupant(ScalarNode node) {
    NamedQuantity animal = NamedQuantity.of(node, "an animal and its mass", "leopard gecko, 40 g");
    Animal kind = node.locate(() -> Animals.named(animal.name().text()));
    double mass = animal.quantity().mass();
    return node.locate(() -> new Occupant(kind, kind.body(mass)));
  }

  List<Parcel> read(Node node) {
    List<MappingNode> nodes = node.asSequence().mappings();
    if (nodes.isEmpty()) {
      throw node.fail("must have at least one packing");
    }
    List<Parcel> parcels = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (MappingNode each : nodes) {
      parcels.add(
          Names.within(
              each, () -> packing(Section.of(each, Vocabulary.PACKING, assumptions), names)));
    }
    return parcels;
  }

  private Parcel packing(Section node, Set<String> earlier) {
    ScalarNode nameNode = node.require("name").asScalar();
    String name = nameNode.text();
    if (!earlier.add(name)) {
      throw nameNode.fail("an earlier packing has the same name, give each its own");
    }
    Size size = node.require("box").asScalar().size();
    Box outer = new Box(new Point(0, 0, 0), new Point(size.x(), size.y(), size.z()));
    List<WallLayer> board = with(List.of(), node.value("board"));
    Node foam = node.require("foam");
    List<WallLayer> sides = with(board, foam);
    Walls uniform = foam.locate(() -> Walls.uniform(sides));
    Walls lidded = replaced(uniform, node, "lid", Face.Z_MAX, board);
    Walls walls = replaced(lidded, node, "floor", Face.Z_MIN, board);
    Material fill = fill(node.require("fill").asScalar());
    Container cup = cup(node.optional(CUP).orElseGet(() -> root.require(CUP)));
    List<PlacedWarmer> warmers = warmers(node);
    return node.node().locate(() -> new Parcel(name, outer, walls, fill, List.of(cup), warmers));
  }

  private static Walls replaced(
      Walls walls, Section node, String key, Face face, List<WallLayer> board) {
    Node other = node.optional(key).orElse(null);
    if (other == null) {
      return walls;
    }
    List<WallLayer> layers = with(board, other);
    return other.locate(() -> walls.with(face, layers));
  }

  /** Layers with one more inside, unless the file says none. */
  private static List<WallLayer> with(List<WallLayer> layers, Node node) {
    ScalarNode scalar = node.asScalar();
    if (scalar.text().equals(NONE)) {
      return layers;
    }
    List<WallLayer> more = new ArrayList<>(layers);
    more.add(layer(scalar));
    return List.copyOf(more);
  }

  private static WallLayer layer(ScalarNode node) {
    NamedQuantity layer = NamedQuantity.of(node, "a material and a thickness", "EPS 20, 19 mm");
    Material material = material(layer.name());
    double thickness = layer.quantity().length();
    return node.locate(() -> new WallLayer(material, thickness));
  }

  private static Material material(ScalarNode node) {
    return node.locate(() -> named(node));
  }

  private static Material named(ScalarNode node) {
    Matcher eps = EPS.matcher(node.text());
    if (!eps.matches()) {
      return Materials.named(node.text());
    }
    String density = eps.group(1);
    if (density == null) {
      throw node.fail("EPS needs its density in kg/m3, write for example EPS 20, 19 mm");
    }
    return Materials.expandedPolystyrene(node.piece(density).number());
  }

  private static Material fill(ScalarNode node) {
    if (node.text().equals(NONE) || node.text().equals(Materials.STILL_AIR.name())) {
      throw node.fail("a packing without fill cannot be computed yet, because the air in it moves");
    }
    return material(node);
  }

  private Container cup(Node node) {
    // A size alone is a cup of which everything else is left out.
    Section cup =
        node instanceof ScalarNode scalar
            ? Section.of(scalar.asOnlyKey("size"), Vocabulary.CUP, assumptions)
            : Section.of(node, Vocabulary.CUP, assumptions);
    Size size = cup.require("size").asScalar().size();
    WallLayer wall = layer(cup.value("wall").asScalar());
    Bedding towel = towel(cup.value("towel").asScalar());
    Position position =
        cup.optional("position").map(PackingReader::position).orElseGet(() -> middle(cup));
    return node.locate(
        () ->
            new Container(
                CUP,
                new Vessel.BoxCup(new Dimensions(size.x(), size.y(), size.z()), wall),
                position,
                towel,
                occupant));
  }

  private static Position middle(Section cup) {
    cup.tell("position", "in the middle, on the floor", "assumed");
    return Position.MIDDLE_OF_FLOOR;
  }

  private static Bedding towel(ScalarNode node) {
    double thickness = node.length();
    return node.locate(() -> Bedding.dampTowel(thickness));
  }

  private static Position position(Node node) {
    List<ScalarNode> offsets = node.asSequence().scalars();
    if (offsets.size() != 2 && offsets.size() != 3) {
      throw node.fail(
          "must be the cup's distances from the middle along length and width, and if wanted its"
              + " height above the floor, write for example [10 mm, 0 mm]");
    }
    double x = offsets.get(0).length();
    double y = offsets.get(1).length();
    double z = offsets.size() == 3 ? offsets.get(2).length() : 0;
    return node.locate(() -> new Position(x, y, z));
  }

  private static List<PlacedWarmer> warmers(Section node) {
    ScalarNode text = node.optional(WARMER).map(Node::asScalar).orElse(null);
    if (text == null || text.text().equals(NONE)) {
      for (String key : List.of(STAND_OFF, CONTACT, OPENED)) {
        if (node.has(key)) {
          throw node.node().failAt(key, "means nothing without a warmer");
        }
      }
      return List.of();
    }
    Matcher parts = ON_FACE.matcher(text.text());
    if (!parts.matches()) {
      throw text.fail("must say where the warmer is, write for example 40 hour warmer on lid");
    }
    WarmerClass warmer = text.locate(() -> Warmers.named(parts.group(1)));
    Face face = face(text.piece(parts.group(2)));
    Mounting mounting = mounting(node);
    double opened = opened(node.value(OPENED).asScalar());
    return List.of(text.locate(() -> new PlacedWarmer(WARMER, warmer, face, mounting, opened)));
  }

  private static Face face(ScalarNode node) {
    if (node.text().equals("side")) {
      throw node.fail(
          "'on side' leaves open which of the four, write on left or on right (the ends of the"
              + " box's first length), on front or on back (the ends of its second)");
    }
    return node.choice(FACES);
  }

  private static Mounting mounting(Section node) {
    Node standOff = node.optional(STAND_OFF).orElse(null);
    if (standOff == null) {
      ScalarNode contact = node.value(CONTACT).asScalar();
      double resistance = contact.thermalResistance();
      return contact.locate(() -> new Mounting(0, resistance));
    }
    if (node.has(CONTACT)) {
      throw node.node().failAt(CONTACT, "means nothing for a warmer with a stand-off");
    }
    double gap = standOff.asScalar().length();
    return standOff.locate(() -> Mounting.standingOff(gap));
  }

  private static double opened(ScalarNode given) {
    if (given.text().equals("at sealing")) {
      return 0;
    }
    Matcher moment = MOMENT.matcher(given.text());
    if (!moment.matches()) {
      throw given.fail(
          "must be a time before sealing, as nobody reaches into a sealed box, write for example 30"
              + " min before sealing, or at sealing");
    }
    double away = given.piece(moment.group(1)).duration();
    given.locate(() -> Checks.notNegative("time from sealing", away, "s"));
    return away == 0 ? 0 : -away;
  }
}
