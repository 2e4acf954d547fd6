package stenotherm.scenario;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.MessageText;
import stenotherm.grid.Box;
import stenotherm.parcel.BoxSize;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Joints;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.WallLayer;
import stenotherm.parcel.Walls;
import stenotherm.text.Faults;
import stenotherm.text.MappingNode;
import stenotherm.text.Node;
import stenotherm.text.ScalarNode;
import stenotherm.text.Size;
import stenotherm.words.FaceNames;

/** Reads the walls of a packing and the box that they make. */
final class BoxReader {
  private static final List<Face> SIDES = List.of(Face.X_MIN, Face.X_MAX, Face.Y_MIN, Face.Y_MAX);

  private static final Map<String, List<Axis>> OVERLAPS = overlaps();

  /** Longest size that a message repeats. */
  private static final int LONGEST_SHOWN = 40;

  private static final Pattern CARTON = Pattern.compile("(?is)(.+?)(\\s+cube)?\\s+carton");

  /** A size with a word after it that does not tell what it is the size of. */
  private static final Pattern SOME_BOX =
      Pattern.compile(
          "(?is)(.*?)(\\s+cube)?"
              + "(?:\\s+(?:box|carton|cardboard|shipping|inside|outside|inner|outer))+");

  private final KeyedSection packing;
  private final List<WallLayer> board;
  private final Walls walls;

  BoxReader(KeyedSection packing) {
    this.packing = packing;
    this.board = Layers.read(packing.value("board"), packing.assumptions());
    this.walls = walls();
  }

  private static Map<String, List<Axis>> overlaps() {
    Map<String, List<Axis>> overlaps = new LinkedHashMap<>();
    overlaps.put("lid and floor over the sides", List.of(Axis.Z, Axis.Y, Axis.X));
    overlaps.put("sides over lid and floor", List.of(Axis.Y, Axis.X, Axis.Z));
    return Collections.unmodifiableMap(overlaps);
  }

  static List<String> overlapNames() {
    return List.copyOf(OVERLAPS.keySet());
  }

  Walls read() {
    return walls;
  }

  private Walls walls() {
    Faults faults = new Faults();
    Optional<Walls> all = faults.attempt(this::ofFoam);
    all = replaced(all, "sides", SIDES, faults);
    for (Map.Entry<String, Face> each : FaceNames.all().entrySet()) {
      all = replaced(all, each.getKey(), List.of(each.getValue()), faults);
    }
    Node node = packing.optional("joints").orElse(null);
    Optional<Joints> joints = node == null ? Optional.empty() : faults.attempt(() -> joints(node));
    Walls walls = faults.get(all);
    return joints.isPresent() ? walls.with(joints.get()) : withoutJoints(walls);
  }

  private Walls ofFoam() {
    Node foam = packing.require("foam");
    return foam.locate(() -> Walls.uniform(inside(foam)));
  }

  private Walls withoutJoints(Walls all) {
    packing.tell("joints", "none, walls of one piece", "assumed");
    return all;
  }

  private List<WallLayer> inside(Node node) {
    List<WallLayer> layers = new ArrayList<>(board);
    layers.addAll(Layers.read(node, packing.assumptions()));
    return layers;
  }

  /** Walls with other layers on some faces; the layers are read even if the walls have faults. */
  private Optional<Walls> replaced(
      Optional<Walls> all, String key, List<Face> faces, Faults faults) {
    Node node = packing.optional(key).orElse(null);
    if (node == null) {
      return all;
    }
    List<WallLayer> layers = faults.attempt(() -> inside(node)).orElse(List.of());
    return layers.isEmpty() || all.isEmpty() ? all : Optional.of(with(all.get(), faces, layers));
  }

  private static Walls with(Walls all, List<Face> faces, List<WallLayer> layers) {
    Walls changed = all;
    for (Face face : faces) {
      changed = changed.with(face, layers);
    }
    return changed;
  }

  /** A gap alone is short for joints of which everything else is left out. */
  private Joints joints(Node node) {
    MappingNode mapping =
        node instanceof ScalarNode scalar
            ? scalar.shortFor(Map.of("gap", scalar.text()))
            : node.asMapping();
    KeyedSection joints = KeyedSection.of(mapping, Vocabulary.JOINTS, packing.assumptions());
    ScalarNode gapNode = joints.require("gap").asScalar();
    double gap = gapNode.length();
    List<Axis> overlap = joints.value("overlap").asScalar().choice(OVERLAPS);
    // A carton is folded from one piece; what lies inside it is cut into panels.
    return gapNode.locate(() -> new Joints(overlap, board.size(), gap));
  }

  /** The outer box, into which the walls may not yet fit. */
  Box box() {
    return outer(packing.require("box"));
  }

  /** The outer box, into which the walls fit. */
  Box fitting(Box outer) {
    return packing
        .require("box")
        .locate(
            () -> {
              Parcel.requireFits(outer, walls);
              return outer;
            });
  }

  /** What the file calls the carton; empty if it gives the size of the box. */
  Optional<String> carton() {
    return packing.require("box") instanceof ScalarNode scalar
            && CARTON.matcher(scalar.text()).matches()
        ? Optional.of(scalar.text())
        : Optional.empty();
  }

  private Box outer(Node node) {
    if (node instanceof ScalarNode scalar) {
      Matcher carton = CARTON.matcher(scalar.text());
      return carton.matches() ? carton(scalar, carton) : ofSize(scalar);
    }
    KeyedSection box = KeyedSection.of(node, Vocabulary.BOX, packing.assumptions());
    if (box.has("outer") == box.has("inner")) {
      throw node.fail("must have either outer or inner dimensions");
    }
    if (box.has("outer")) {
      return ofSize(box.require("outer").asScalar());
    }
    Size size = box.require("inner").asScalar().size();
    return node.locate(() -> walls.around(new Dimensions(size.x(), size.y(), size.z())));
  }

  private static Box ofSize(ScalarNode node) {
    Matcher some = SOME_BOX.matcher(node.text());
    if (some.matches() && some.group(1).matches("(?s)[0-9].*")) {
      String size = MessageText.of(some.group(1), LONGEST_SHOWN);
      String cube = some.group(2) == null ? "" : " cube";
      throw node.fail(
          "may be its size inside or outside, write "
              + size
              + cube
              + " carton for a carton of"
              + " this size inside"
              + (cube.isEmpty() ? ", or " + size + " for its outer size" : ""));
    }
    Size size = node.size();
    return node.locate(() -> Box.ofSize(size.x(), size.y(), size.z()));
  }

  private static Dimensions inside(ScalarNode node, Matcher parts) {
    ScalarNode size = node.piece(parts.group(1));
    if (parts.group(2) != null) {
      double edge = size.length();
      return new Dimensions(edge, edge, edge);
    }
    Size lengths = size.size();
    return new Dimensions(lengths.x(), lengths.y(), lengths.z());
  }

  /** A carton named by its inner size, which the board surrounds. */
  private Box carton(ScalarNode node, Matcher parts) {
    if (board.isEmpty()) {
      throw node.fail(
          "is a carton named by its inner size, which needs board; without board leave out"
              + " 'carton' and give the outer size");
    }
    BoxSize size = BoxSize.carton(node.text(), node.locate(() -> inside(node, parts)));
    packing.assumptions().add("Box " + size.name() + ", named by its inner size", size.source());
    return node.locate(() -> size.outer(walls));
  }
}
