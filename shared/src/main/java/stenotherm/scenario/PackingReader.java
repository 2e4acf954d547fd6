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
import stenotherm.base.Times;
import stenotherm.grid.Box;
import stenotherm.grid.Point;
import stenotherm.material.Material;
import stenotherm.material.Materials;
import stenotherm.parcel.Cup;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.WallLayer;
import stenotherm.parcel.Walls;
import stenotherm.text.Keys;
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

  /** How long before sealing a warmer is opened if the file does not say [s]. */
  private static final double OPENED_BEFORE = Times.fromMinutes(30);

  private static final WallLayer BOARD = new WallLayer(Materials.CORRUGATED_BOARD, 0.004);
  private static final WallLayer CUP_WALL = new WallLayer(Materials.POLYPROPYLENE, 0.0005);
  private static final WallLayer TOWEL = new WallLayer(Materials.DAMP_PAPER_TOWEL, 0.004);

  private static final Keys KEYS =
      Keys.of(
              "name", "box", "board", "foam", "lid", "floor", "fill", CUP, WARMER, STAND_OFF,
              CONTACT, OPENED)
          .refuse("vent", "air that passes through holes is not computed")
          .refuse("coldPack", "cold packs are not computed")
          .refuse("orientation", "parcels stand upright");
  private static final Keys CUP_KEYS = Keys.of("size", "wall", "towel", "position");

  private static final Pattern EPS = Pattern.compile("(?i)EPS(?:\\s*([0-9]+(?:\\.[0-9]+)?))?");
  private static final Pattern ON_FACE = Pattern.compile("(.+)\\s+on\\s+(\\S+)");
  private static final Pattern MOMENT = Pattern.compile("(.+)\\sbefore\\s+sealing");
  private static final Map<String, Face> FACES = faces();

  private final Assumptions assumptions;
  private final MappingNode root;
  private final Cup.Occupant occupant;

  PackingReader(Assumptions assumptions, ScalarNode animal, MappingNode root) {
    this.assumptions = assumptions;
    this.root = root;
    this.occupant = occupant(animal);
  }

  private static Map<String, Face> faces() {
    Map<String, Face> faces = new LinkedHashMap<>();
    faces.put("lid", Face.Z_MAX);
    faces.put("floor", Face.Z_MIN);
    for (Face face : Face.values()) {
      faces.put(face.label(), face);
    }
    return faces;
  }

  private Cup.Occupant occupant(ScalarNode node) {
    NamedQuantity animal = NamedQuantity.of(node, "an animal and its mass", "leopard gecko, 40 g");
    Animal kind = node.locate(() -> Animals.named(animal.name().text()));
    double mass = animal.quantity().mass();
    Cup.Occupant inside = node.locate(() -> new Cup.Occupant(kind, kind.body(mass)));
    assumptions.animal(kind);
    return inside;
  }

  List<Parcel> read(Node node) {
    List<MappingNode> nodes = node.asSequence().mappings();
    if (nodes.isEmpty()) {
      throw node.fail("must have at least one packing");
    }
    List<Parcel> parcels = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (MappingNode each : nodes) {
      MappingNode packing = each.withKeys(KEYS);
      ScalarNode name = packing.require("name").asScalar();
      if (!names.add(name.text())) {
        throw name.fail("an earlier packing has the same name, give each its own");
      }
      parcels.add(packing(packing, name.text()));
    }
    return parcels;
  }

  private Parcel packing(MappingNode node, String name) {
    Size size = node.require("box").asScalar().size();
    Box outer = new Box(new Point(0, 0, 0), new Point(size.x(), size.y(), size.z()));
    List<WallLayer> board = board(node);
    Node foam = node.require("foam");
    List<WallLayer> sides = with(board, foam);
    Walls uniform = node.locate(() -> Walls.uniform(sides));
    Walls lidded = replaced(uniform, node, "lid", Face.Z_MAX, board);
    Walls walls = replaced(lidded, node, "floor", Face.Z_MIN, board);
    Material fill = fill(node.require("fill").asScalar());
    Cup cup = cup(node.optional(CUP).orElseGet(() -> root.require(CUP)));
    List<PlacedWarmer> warmers = warmers(node);
    return node.locate(() -> new Parcel(name, outer, walls, fill, List.of(cup), warmers));
  }

  private List<WallLayer> board(MappingNode node) {
    Node board = node.optional("board").orElse(null);
    if (board == null) {
      assumptions.add(
          "Board where the file gives none, "
              + BOARD.material().name()
              + " of "
              + Assumptions.millimetres(BOARD.thickness())
              + " (assumed).");
      assumptions.material(BOARD.material());
      return List.of(BOARD);
    }
    return with(List.of(), board);
  }

  private Walls replaced(
      Walls walls, MappingNode node, String key, Face face, List<WallLayer> board) {
    Node other = node.optional(key).orElse(null);
    if (other == null) {
      return walls;
    }
    List<WallLayer> layers = with(board, other);
    return other.locate(() -> walls.with(face, layers));
  }

  /** Layers with one more inside, unless the file says none. */
  private List<WallLayer> with(List<WallLayer> layers, Node node) {
    ScalarNode scalar = node.asScalar();
    if (scalar.text().equals(NONE)) {
      return layers;
    }
    List<WallLayer> more = new ArrayList<>(layers);
    more.add(layer(scalar));
    return List.copyOf(more);
  }

  private WallLayer layer(ScalarNode node) {
    NamedQuantity layer = NamedQuantity.of(node, "a material and a thickness", "EPS 20, 19 mm");
    Material material = material(layer.name());
    double thickness = layer.quantity().length();
    return node.locate(() -> new WallLayer(material, thickness));
  }

  private Material material(ScalarNode node) {
    Material material = node.locate(() -> named(node));
    assumptions.material(material);
    return material;
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

  private Material fill(ScalarNode node) {
    if (node.text().equals(NONE) || node.text().equals(Materials.STILL_AIR.name())) {
      throw node.fail("a packing without fill cannot be computed yet, because the air in it moves");
    }
    return material(node);
  }

  private Cup cup(Node node) {
    if (node instanceof ScalarNode scalar) {
      return cup(node, scalar.size(), presetWall(), presetTowel(), Cup.Position.MIDDLE_OF_FLOOR);
    }
    MappingNode cup = node.asMapping().withKeys(CUP_KEYS);
    Size size = cup.require("size").asScalar().size();
    Node wall = cup.optional("wall").orElse(null);
    Node towel = cup.optional("towel").orElse(null);
    return cup(
        node,
        size,
        wall == null ? presetWall() : layer(wall.asScalar()),
        towel == null ? presetTowel() : towel(towel.asScalar()),
        cup.optional("position").map(PackingReader::position).orElse(Cup.Position.MIDDLE_OF_FLOOR));
  }

  private Cup cup(Node node, Size size, WallLayer wall, WallLayer towel, Cup.Position position) {
    return node.locate(
        () ->
            new Cup(
                CUP, new Cup.Size(size.x(), size.y(), size.z()), position, wall, towel, occupant));
  }

  private WallLayer presetWall() {
    assumptions.add(
        "Wall of the cup, polypropylene of "
            + Assumptions.millimetres(CUP_WALL.thickness())
            + " (assumed).");
    assumptions.material(CUP_WALL.material());
    return CUP_WALL;
  }

  private WallLayer presetTowel() {
    assumptions.add(
        "On the floor of the cup, damp paper towel of "
            + Assumptions.millimetres(TOWEL.thickness())
            + " (assumed).");
    assumptions.material(TOWEL.material());
    return TOWEL;
  }

  private WallLayer towel(ScalarNode node) {
    assumptions.material(TOWEL.material());
    double thickness = node.length();
    return node.locate(() -> new WallLayer(TOWEL.material(), thickness));
  }

  private static Cup.Position position(Node node) {
    List<ScalarNode> offsets = node.asSequence().scalars();
    if (offsets.size() != 2 && offsets.size() != 3) {
      throw node.fail(
          "must be the cup's distances from the middle along length and width, and if wanted its"
              + " height above the floor, write for example [10 mm, 0 mm]");
    }
    double x = offsets.get(0).length();
    double y = offsets.get(1).length();
    double z = offsets.size() == 3 ? offsets.get(2).length() : 0;
    return node.locate(() -> new Cup.Position(x, y, z));
  }

  private List<PlacedWarmer> warmers(MappingNode node) {
    ScalarNode text = node.optional(WARMER).map(Node::asScalar).orElse(null);
    if (text == null || text.text().equals(NONE)) {
      for (String key : List.of(STAND_OFF, CONTACT, OPENED)) {
        if (node.optional(key).isPresent()) {
          throw node.failAt(key, "means nothing without a warmer");
        }
      }
      return List.of();
    }
    Matcher parts = ON_FACE.matcher(text.text());
    if (!parts.matches()) {
      throw text.fail("must say where the warmer is, write for example 40 hour warmer on lid");
    }
    WarmerClass warmer = text.locate(() -> Warmers.named(parts.group(1)));
    Face face = text.piece(parts.group(2)).choice(FACES);
    assumptions.warmer(warmer);
    assumptions.material(Materials.WARMER_MIX_FRESH);
    PlacedWarmer.Mounting mounting = mounting(node);
    double opened = opened(node);
    return List.of(text.locate(() -> new PlacedWarmer(WARMER, warmer, face, mounting, opened)));
  }

  private PlacedWarmer.Mounting mounting(MappingNode node) {
    Node standOff = node.optional(STAND_OFF).orElse(null);
    Node contact = node.optional(CONTACT).orElse(null);
    if (standOff != null && contact != null) {
      throw node.failAt(CONTACT, "means nothing for a warmer with a stand-off");
    }
    if (standOff != null) {
      double gap = standOff.asScalar().length();
      return standOff.locate(() -> PlacedWarmer.Mounting.standingOff(gap));
    }
    if (contact != null) {
      double resistance = contact.asScalar().thermalResistance();
      return contact.locate(() -> new PlacedWarmer.Mounting(0, resistance));
    }
    PlacedWarmer.Mounting taped = PlacedWarmer.Mounting.taped();
    assumptions.add(
        "A warmer is taped flat to the wall where the file says nothing else, "
            + taped.contactResistance()
            + " m2 K/W between the two (assumed).");
    return taped;
  }

  private double opened(MappingNode node) {
    ScalarNode given = node.optional(OPENED).map(Node::asScalar).orElse(null);
    if (given == null) {
      assumptions.add(
          "A warmer is opened 30 min before sealing where the file does not say when (assumed).");
      return -OPENED_BEFORE;
    }
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
    return -away;
  }
}
