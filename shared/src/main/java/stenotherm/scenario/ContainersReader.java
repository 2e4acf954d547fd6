package stenotherm.scenario;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.grid.Box;
import stenotherm.parcel.Arrangement;
import stenotherm.parcel.Container;
import stenotherm.parcel.Position;
import stenotherm.parcel.Walls;
import stenotherm.text.Faults;
import stenotherm.text.MappingNode;
import stenotherm.text.Node;
import stenotherm.text.ScalarNode;

/** Reads the containers of a packing and sets them where they stand. */
final class ContainersReader {
  private static final String CUP = "cup";
  private static final String CONTAINERS = "containers";
  private static final String POSITION = "position";
  private static final String ON = "on-top-of";
  private static final String GAP = "gap";

  /** Before the name of an earlier packing whose containers are meant. */
  private static final String AS_IN = "as in ";

  private final KeyedSection packing;
  private final KeyedSection owner;
  private final Assumptions assumptions;
  private final Optional<Node> animal;

  /**
   * Reads the containers of a packing.
   *
   * @param root the file
   * @param packing the packing
   * @param owner what has them, see {@link #owner}
   */
  ContainersReader(KeyedSection root, KeyedSection packing, KeyedSection owner) {
    this.packing = packing;
    this.owner = owner;
    this.assumptions = packing.assumptions();
    this.animal = root.optional("animal");
  }

  /**
   * Finds what has the containers of a packing: itself, an earlier one that it names, or the file.
   *
   * @param earlier what has those of earlier packings, by their names
   */
  static KeyedSection owner(
      KeyedSection root, KeyedSection packing, Map<String, KeyedSection> earlier) {
    if (packing.has(CONTAINERS)
        && packing.require(CONTAINERS) instanceof ScalarNode named
        && named.text().startsWith(AS_IN)) {
      if (packing.has(CUP)) {
        throw packing.node().failAt(CONTAINERS, "cannot be given together with cup");
      }
      return named.piece(named.text().substring(AS_IN.length())).choice(earlier);
    }
    if (packing.has(CUP) || packing.has(CONTAINERS)) {
      return packing;
    }
    if (root.has(CUP) || root.has(CONTAINERS)) {
      return root;
    }
    if (earlier.isEmpty()) {
      // told of the file, once for all packings
      root.require(CUP);
    }
    throw packing
        .node()
        .fail(
            "has neither cup nor containers, and the file has none for all packings; write for"
                + " example "
                + CONTAINERS
                + ": "
                + AS_IN
                + earlier.keySet().iterator().next());
  }

  /** Containers in a box with walls. */
  List<Container> read(Box outer, Walls walls) {
    if (owner.has(CUP) && owner.has(CONTAINERS)) {
      throw owner.node().failAt(CONTAINERS, "cannot be given together with cup");
    }
    if (!owner.has(CONTAINERS)) {
      KeyedSection cup = ContainerReader.section(owner.require(CUP), assumptions);
      if (ContainerReader.count(cup) > 1) {
        throw cup.node().fail("is a single one; write several under " + CONTAINERS);
      }
      if (packing.has(GAP)) {
        throw packing.node().failAt(GAP, "has no effect for a single container");
      }
      List<Container> containers = List.of(new ContainerReader(cup, "", animal).read());
      requireAnimal(owner.require(CUP), containers);
      return placed(List.of(cup), containers, false);
    }
    Node listed = owner.require(CONTAINERS);
    // several alike need no list
    List<Node> nodes =
        listed instanceof ScalarNode || listed instanceof MappingNode
            ? List.of(listed)
            : listed.asSequence().items();
    List<KeyedSection> sections = new ArrayList<>();
    List<Container> containers = new ArrayList<>();
    Faults faults = new Faults();
    for (Node each : nodes) {
      faults.attempt(() -> within(each, () -> read(each, sections, containers)));
    }
    faults.throwIfAny();
    requireAnimal(owner.require(CONTAINERS), containers);
    return arranged(sections, containers, outer, walls);
  }

  private static void requireAnimal(Node node, List<Container> containers) {
    if (containers.stream().allMatch(each -> each.occupant().isEmpty())) {
      throw node.fail("must have an animal in at least one container");
    }
  }

  /** Reads one, or as many alike as it says. */
  private List<Container> read(Node node, List<KeyedSection> sections, List<Container> all) {
    KeyedSection section = ContainerReader.section(node, assumptions);
    int count = ContainerReader.count(section);
    for (int number = 1; number <= count; number++) {
      String usual = "container " + (all.size() + 1);
      all.add(new ContainerReader(section, usual, animal).read());
      sections.add(section);
    }
    return all;
  }

  private static <T> T within(Node node, Supplier<T> action) {
    return node instanceof MappingNode mapping ? Names.within(mapping, action) : action.get();
  }

  /** Those that the file does not place stand in rows along the longer side of the cavity. */
  private List<Container> arranged(
      List<KeyedSection> sections, List<Container> containers, Box outer, Walls walls) {
    List<Container> free = new ArrayList<>();
    for (int index = 0; index < containers.size(); index++) {
      if (!sections.get(index).has(POSITION) && !sections.get(index).has(ON)) {
        free.add(containers.get(index));
      }
    }
    if (free.size() < 2) {
      if (packing.has(GAP)) {
        throw packing.node().failAt(GAP, "has no effect without containers side by side");
      }
      return placed(sections, containers, false);
    }
    double length = outer.size(Axis.X) - walls.thickness(Face.X_MIN) - walls.thickness(Face.X_MAX);
    double width = outer.size(Axis.Y) - walls.thickness(Face.Y_MIN) - walls.thickness(Face.Y_MAX);
    ScalarNode gapNode = packing.value(GAP).asScalar();
    double gap = gapNode.length();
    packing.tell(
        CONTAINERS,
        "side by side along the "
            + (length >= width ? "length" : "width")
            + " of the box, in as few rows as have room; what is of one size in layers, if the"
            + " floor has no room for all",
        "assumed");
    List<Container> row = gapNode.locate(() -> Arrangement.inRows(length, width, gap, free));
    Map<Container, Container> inRow = new HashMap<>();
    for (int index = 0; index < free.size(); index++) {
      inRow.put(free.get(index), row.get(index));
    }
    List<Container> all = containers.stream().map(each -> inRow.getOrDefault(each, each)).toList();
    return placed(sections, all, true);
  }

  /** Places those for which the file says where, and tells where a single one stands. */
  private static List<Container> placed(
      List<KeyedSection> sections, List<Container> containers, boolean inRow) {
    Map<String, Container> done = new LinkedHashMap<>();
    List<Container> all = new ArrayList<>();
    for (int index = 0; index < containers.size(); index++) {
      KeyedSection section = sections.get(index);
      Container container = containers.get(index);
      Container there = within(section.node(), () -> placed(section, container, done, inRow));
      done.put(there.name(), there);
      all.add(there);
    }
    return all;
  }

  private static Container placed(
      KeyedSection section, Container container, Map<String, Container> below, boolean inRow) {
    Optional<Node> position = section.optional(POSITION);
    Optional<Node> on = section.optional(ON);
    if (on.isPresent()) {
      Container carrier = on.get().asScalar().choice(below);
      Position offset = position.map(Positions::onFloor).orElse(carrier.position());
      double top = carrier.position().aboveFloor() + carrier.vessel().inner().height();
      if (offset.aboveFloor() > 0 && position.isPresent()) {
        throw section.node().failAt(POSITION, "must have two lengths for a stacked container");
      }
      return container.at(new Position(offset.alongX(), offset.alongY(), top));
    }
    if (position.isPresent()) {
      return container.at(Positions.onFloor(position.get()));
    }
    if (!inRow) {
      section.tell(POSITION, "in the middle, on the floor", "assumed");
    }
    return container;
  }
}
