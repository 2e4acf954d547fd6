package stenotherm.scenario;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stenotherm.base.Checks;
import stenotherm.base.Source;
import stenotherm.grid.Box;
import stenotherm.material.AirLayer;
import stenotherm.material.Material;
import stenotherm.material.Materials;
import stenotherm.parcel.Container;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Filling;
import stenotherm.parcel.PackClass;
import stenotherm.parcel.PackStart;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedPack;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Walls;
import stenotherm.text.MappingNode;
import stenotherm.text.Node;
import stenotherm.text.ScalarNode;
import stenotherm.text.Size;
import stenotherm.warmer.WarmerClass;
import stenotherm.warmer.Warmers;

/** Reads the packings of a scenario, with the animal and the containers that they share. */
final class PackingReader {
  private static final String WARMER = "warmer";
  private static final String WARMERS = "warmers";
  private static final List<String> WARMER_KEYS = List.of(WARMER, "stand-off", "contact", "opened");

  /** What a packing may have of its own instead of the scenario's. */
  private static final List<String> SHARED = List.of("cup", "containers");

  private static final Pattern MOMENT = Pattern.compile("(.+)\\sbefore\\s+sealing", Pattern.DOTALL);
  private static final Pattern LIQUID = Pattern.compile("(.+%)\\s*liquid", Pattern.DOTALL);

  private final Assumptions assumptions;
  private final KeyedSection root;

  PackingReader(Assumptions assumptions, KeyedSection root) {
    this.assumptions = assumptions;
    this.root = root;
  }

  List<Parcel> read(Node node) {
    List<MappingNode> nodes = node.asSequence().mappings();
    root.optional("animal").ifPresent(animal -> ContainerReader.occupant(animal.asScalar()));
    List<Parcel> parcels = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (MappingNode each : nodes) {
      parcels.add(
          Names.within(
              each, () -> packing(KeyedSection.of(each, Vocabulary.PACKING, assumptions), names)));
    }
    boolean allHaveTheirOwn =
        nodes.stream().allMatch(each -> SHARED.stream().anyMatch(each.keys()::contains));
    for (String key : SHARED) {
      if (allHaveTheirOwn && root.has(key)) {
        throw root.node().failAt(key, "has no effect, as every packing has its own");
      }
    }
    return parcels;
  }

  private Parcel packing(KeyedSection packing, Set<String> earlier) {
    ScalarNode nameNode = packing.require("name").asScalar();
    String name = nameNode.text();
    if (!earlier.add(name)) {
      throw nameNode.fail("an earlier packing has the same name, give each its own");
    }
    BoxReader reader = new BoxReader(packing);
    Walls walls = reader.read();
    Box outer = reader.box();
    Filling filling = filling(packing);
    List<Container> containers = new ContainersReader(root, packing).read(outer, walls);
    List<PlacedWarmer> warmers = warmers(packing, containers);
    List<PlacedPack> packs = packs(packing, containers);
    return packing
        .node()
        .locate(
            "packing '" + name + "'",
            () -> {
              Parcel parcel = new Parcel(name, outer, walls, filling, containers, warmers, packs);
              // Layers too thin for a number to tell their faces apart show only here.
              parcel.layout();
              return parcel;
            });
  }

  private static Filling filling(KeyedSection packing) {
    ScalarNode fill = packing.require("fill").asScalar();
    boolean isAir = fill.text().equalsIgnoreCase(Materials.STILL_AIR.name());
    if (fill.text().equals(Layers.NONE) || isAir) {
      packing.tell(
          "fill",
          "nothing but air between surfaces of emissivity " + AirLayer.ORDINARY_EMISSIVITY,
          "assumed");
      return Filling.none();
    }
    return fill.locate(() -> new Filling.Loose(Layers.material(fill)));
  }

  private List<PlacedWarmer> warmers(KeyedSection packing, List<Container> containers) {
    if (packing.has(WARMERS)) {
      for (String key : WARMER_KEYS) {
        if (packing.has(key)) {
          throw packing.node().failAt(key, "cannot be given together with warmers");
        }
      }
      List<PlacedWarmer> warmers = new ArrayList<>();
      for (Node each : packing.require(WARMERS).asSequence().items()) {
        String usual = WARMER + " " + (warmers.size() + 1);
        warmers.add(item(each, WARMER, usual, containers));
      }
      return warmers;
    }
    boolean without =
        packing
            .optional(WARMER)
            .map(node -> node.asScalar().text().equals(Layers.NONE))
            .orElse(true);
    if (without) {
      for (String key : WARMER_KEYS.subList(1, WARMER_KEYS.size())) {
        if (packing.has(key)) {
          throw packing.node().failAt(key, "has no effect without a warmer");
        }
      }
      return List.of();
    }
    MappingNode warmer = packing.node().only(WARMER_KEYS);
    return List.of(
        warmer(KeyedSection.of(warmer, Vocabulary.WARMER, assumptions), WARMER, containers));
  }

  private PlacedWarmer item(Node node, String key, String usual, List<Container> containers) {
    if (node instanceof ScalarNode scalar) {
      MappingNode spelledOut = scalar.shortFor(Map.of(key, scalar.text()));
      return warmer(KeyedSection.of(spelledOut, Vocabulary.WARMER, assumptions), usual, containers);
    }
    MappingNode mapping = node.asMapping();
    return Names.within(
        mapping,
        () -> warmer(KeyedSection.of(mapping, Vocabulary.WARMER, assumptions), usual, containers));
  }

  private static PlacedWarmer warmer(
      KeyedSection section, String usual, List<Container> containers) {
    PlacementReader.Placed placed = new PlacementReader(section, WARMER, containers).read();
    WarmerClass kind = placed.kind().locate(() -> Warmers.named(placed.kind().text()));
    String name = section.optional("name").map(node -> node.asScalar().text()).orElse(usual);
    double opened = opened(section.value("opened").asScalar());
    return section.node().locate(() -> new PlacedWarmer(name, kind, placed.placement(), opened));
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

  private List<PlacedPack> packs(KeyedSection packing, List<Container> containers) {
    Node node = packing.optional("packs").orElse(null);
    if (node == null) {
      return List.of();
    }
    List<PlacedPack> packs = new ArrayList<>();
    for (MappingNode each : node.asSequence().mappings()) {
      String usual = "pack " + (packs.size() + 1);
      packs.add(
          Names.within(
              each,
              () -> pack(KeyedSection.of(each, Vocabulary.PACK, assumptions), usual, containers)));
    }
    return packs;
  }

  private static PlacedPack pack(KeyedSection section, String usual, List<Container> containers) {
    PlacementReader.Placed placed = new PlacementReader(section, "pack", containers).read();
    Material contents = Layers.material(placed.kind());
    Size extents = section.require("size").asScalar().size();
    Dimensions size =
        section.node().locate(() -> new Dimensions(extents.x(), extents.y(), extents.z()));
    String full = Checks.show(size.volume() * contents.density(), "kg");
    ScalarNode massNode = section.value("mass", full, "as much as fills it").asScalar();
    double mass = massNode.mass();
    ScalarNode wrapNode = section.value("wrap").asScalar();
    double wrap = wrapNode.thermalResistance();
    String name = section.optional("name").map(node -> node.asScalar().text()).orElse(usual);
    PackClass kind =
        massNode.locate(
            () ->
                new PackClass(
                    contents.name(),
                    contents,
                    size,
                    mass,
                    wrap,
                    Source.assumed("size and mass as the scenario file gives them")));
    ScalarNode startNode = section.require("start").asScalar();
    PackStart start = start(startNode);
    return startNode.locate(() -> new PlacedPack(name, kind, placed.placement(), start));
  }

  private static PackStart start(ScalarNode node) {
    Matcher liquid = LIQUID.matcher(node.text());
    if (liquid.matches()) {
      double fraction = node.piece(liquid.group(1)).percentage();
      return node.locate(() -> new PackStart.PartlyMelted(fraction));
    }
    double temperature = node.temperature();
    return node.locate(() -> new PackStart.AtTemperature(temperature));
  }
}
