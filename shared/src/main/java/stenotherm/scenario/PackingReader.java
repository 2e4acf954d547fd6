package stenotherm.scenario;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Source;
import stenotherm.base.Temperatures;
import stenotherm.grid.Box;
import stenotherm.material.AirLayer;
import stenotherm.material.Material;
import stenotherm.material.Materials;
import stenotherm.parcel.Container;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Filling;
import stenotherm.parcel.FilmCover;
import stenotherm.parcel.Openings;
import stenotherm.parcel.PackClass;
import stenotherm.parcel.PackStart;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedPack;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Placement;
import stenotherm.parcel.WallLayer;
import stenotherm.parcel.Walls;
import stenotherm.text.Faults;
import stenotherm.text.MappingNode;
import stenotherm.text.Node;
import stenotherm.text.ScalarNode;
import stenotherm.text.Size;
import stenotherm.warmer.PrescribedPower;
import stenotherm.warmer.WarmerClass;
import stenotherm.warmer.Warmers;

/** Reads the packings of a scenario, with the animal and the containers that they share. */
final class PackingReader {
  private static final String WARMER = "warmer";
  private static final String WARMERS = "warmers";
  private static final List<String> WARMER_KEYS =
      List.of(WARMER, "stand-off", "contact", "opened", "film");

  private static final String FILM = "film";
  private static final String MEASURED = "measured";

  /** What covers a film, by its words without the film itself. */
  private static final Map<String, FilmCover> FILMS = films();

  /** What a packing may have of its own instead of the scenario's. */
  private static final List<String> SHARED = List.of("cup", "containers");

  private static final Pattern MOMENT =
      Pattern.compile("(.+)\\sbefore(?:\\s+sealing)?", Pattern.DOTALL);
  private static final Pattern LIQUID = Pattern.compile("(.+%)\\s*liquid", Pattern.DOTALL);

  /** Where a pack comes from, in place of its temperature. */
  private static final Pattern FREEZER =
      Pattern.compile("(?i)frozen(?:\\s+solid)?|(?:from\\s+(?:the|a)\\s+)?freezer");

  private static final Pattern REFRIGERATOR =
      Pattern.compile("(?i)(?:from\\s+(?:the|a)\\s+)?(?:refrigerator|fridge)|refrigerated|chilled");

  /** Stand in for a box with a fault, to read on. */
  private static final Walls ANY_WALLS =
      Walls.uniform(List.of(new WallLayer(Materials.EPS_20, 0.01)));

  private static final Box ANY_BOX = Box.ofSize(0.3, 0.2, 0.2);

  private final Assumptions assumptions;
  private final KeyedSection root;
  private final NamedFiles files;
  private final Map<String, Scenario.Spelling> spellings = new HashMap<>();

  /** What has the containers of each packing that was read, by its name: itself or the file. */
  private final Map<String, KeyedSection> owners = new LinkedHashMap<>();

  PackingReader(Assumptions assumptions, KeyedSection root, NamedFiles files) {
    this.assumptions = assumptions;
    this.root = root;
    this.files = files;
  }

  private static Map<String, FilmCover> films() {
    Map<String, FilmCover> films = new LinkedHashMap<>();
    for (FilmCover cover : FilmCover.values()) {
      films.put(cover.shortWords(), cover);
    }
    return Collections.unmodifiableMap(films);
  }

  static List<String> filmNames() {
    return List.copyOf(FILMS.keySet());
  }

  /** How the file writes the packings that were read, by their names. */
  Map<String, Scenario.Spelling> spellings() {
    return spellings;
  }

  List<Parcel> read(Node node) {
    Faults faults = new Faults();
    root.optional("animal")
        .ifPresent(animal -> faults.attempt(() -> OccupantReader.read(animal, assumptions)));
    List<MappingNode> nodes = node.asSequence().mappings();
    List<Parcel> parcels = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (MappingNode each : nodes) {
      faults
          .attempt(
              () ->
                  Names.within(
                      each,
                      () -> packing(KeyedSection.of(each, Vocabulary.PACKING, assumptions), names)))
          .ifPresent(parcels::add);
    }
    faults.throwIfAny();
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
    Faults faults = new Faults();
    String name = faults.attempt(() -> name(packing, earlier)).orElse("packing");
    Optional<BoxReader> reader = faults.attempt(() -> new BoxReader(packing));
    Optional<Box> box = reader.flatMap(walled -> faults.attempt(walled::box));
    spellings.put(
        name,
        new Scenario.Spelling(
            reader.flatMap(BoxReader::carton),
            SHARED.stream().anyMatch(packing::has),
            packing.has(MEASURED)));
    Optional<Filling> fill = faults.attempt(() -> filling(packing));
    Optional<Openings> openings = faults.attempt(() -> OpeningsReader.read(packing));
    // what stands in it is checked even if the box is not known
    Walls walls = reader.map(BoxReader::read).orElse(ANY_WALLS);
    Box outer = box.orElse(ANY_BOX);
    Optional<List<Container>> standing =
        faults
            .attempt(() -> ContainersReader.owner(root, packing, owners))
            .flatMap(
                owner -> {
                  owners.put(name, owner);
                  return faults.attempt(
                      () -> new ContainersReader(root, packing, owner).read(outer, walls));
                });
    List<Container> containers = standing.orElse(List.of());
    Optional<List<PlacedWarmer>> warmers = Optional.empty();
    Optional<List<PlacedPack>> packs = Optional.empty();
    if (standing.isPresent()) {
      warmers = faults.attempt(() -> warmers(packing, containers));
      packs = faults.attempt(() -> packs(packing, containers));
    }
    if (!faults.isEmpty()) {
      // what size would do is told once all that is to lie in the box is known
      box.ifPresent(any -> faults.attempt(() -> reader.orElseThrow().fitting(any)));
    }
    faults.throwIfAny();
    Parcel stated =
        parcel(
            packing,
            new Parts(
                name,
                outer,
                walls,
                fill.orElseThrow(),
                containers,
                warmers.orElseThrow(),
                packs.orElseThrow(),
                openings.orElseThrow()));
    return packing
        .optional(MEASURED)
        .map(
            node ->
                new MeasuredReader(KeyedSection.of(node, Vocabulary.MEASURED, assumptions))
                    .applied(stated))
        .orElse(stated);
  }

  /** All that a packing is made of. */
  private record Parts(
      String name,
      Box outer,
      Walls walls,
      Filling filling,
      List<Container> containers,
      List<PlacedWarmer> warmers,
      List<PlacedPack> packs,
      Openings openings) {}

  private static String name(KeyedSection packing, Set<String> earlier) {
    ScalarNode node = packing.require("name").asScalar();
    String name = node.text();
    if (!earlier.add(name)) {
      throw node.fail("an earlier packing has the same name, give each its own");
    }
    return name;
  }

  private static Parcel parcel(KeyedSection packing, Parts parts) {
    return blamed(packing, parts)
        .locate(
            "packing '" + parts.name() + "'",
            () -> {
              Parcel parcel =
                  new Parcel(
                      parts.name(),
                      parts.outer(),
                      parts.walls(),
                      parts.filling(),
                      parts.containers(),
                      parts.warmers(),
                      parts.packs(),
                      parts.openings());
              // Layers too thin for a number to tell their faces apart show only here.
              parcel.layout();
              return parcel;
            });
  }

  /** What a packing that does not fit together is told of: the box, if even its walls do not. */
  private static Node blamed(KeyedSection packing, Parts parts) {
    try {
      Parcel.requireFits(parts.outer(), parts.walls());
      return packing.node();
    } catch (InvalidInputException fault) {
      return packing.require("box");
    }
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
    Material loose = Layers.material(fill, EverydayWords.FILL, packing.assumptions());
    return fill.locate(() -> new Filling.Loose(loose));
  }

  private List<PlacedWarmer> warmers(KeyedSection packing, List<Container> containers) {
    if (packing.has(WARMERS)) {
      for (String key : WARMER_KEYS) {
        if (packing.has(key)) {
          throw packing.node().failAt(key, "cannot be given together with warmers");
        }
      }
      Node listed = packing.require(WARMERS);
      if (isNothing(listed)) {
        return List.of();
      }
      List<PlacedWarmer> warmers = new ArrayList<>();
      Faults faults = new Faults();
      int number = 0;
      for (Node each : listed.asSequence().items()) {
        String usual = WARMER + " " + ++number;
        faults.attempt(() -> item(each, WARMER, usual, containers)).ifPresent(warmers::add);
      }
      faults.throwIfAny();
      return warmers;
    }
    boolean without = packing.optional(WARMER).map(PackingReader::isNothing).orElse(true);
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

  /** What people write where there is none of a thing. */
  static boolean isNothing(Node node) {
    return node instanceof ScalarNode scalar
        && Vocabulary.NOTHING.contains(scalar.text().toLowerCase(Locale.ROOT));
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

  private PlacedWarmer warmer(KeyedSection section, String usual, List<Container> containers) {
    PlacementReader places = new PlacementReader(section, WARMER, containers);
    String name = section.optional("name").map(node -> node.asScalar().text()).orElse(usual);
    if (section.require(WARMER) instanceof MappingNode own) {
      KeyedSection keys = KeyedSection.of(own, Vocabulary.OWN_WARMER, section.assumptions());
      OwnWarmerReader.Described described =
          OwnWarmerReader.read(keys, places, section.has("position"), files);
      return placed(section, name, described.kind(), described.placement());
    }
    EverydayWords.refuseOtherThanWarmer(section.require(WARMER).asScalar());
    PlacementReader.Placed placed = places.read();
    EverydayWords.requireKnownWarmer(placed.kind());
    WarmerClass kind =
        placed.kind().locate(() -> Warmers.named(EverydayWords.warmer(placed.kind().text())));
    return placed(section, name, kind, placed.placement());
  }

  private static PlacedWarmer placed(
      KeyedSection section, String name, WarmerClass kind, Placement placement) {
    double opened = opened(section.value("opened").asScalar());
    if (kind.heat() instanceof PrescribedPower) {
      if (section.has(FILM)) {
        throw section.node().failAt(FILM, "has no effect on a warmer whose watts are given");
      }
      return section.node().locate(() -> new PlacedWarmer(name, kind, placement, opened));
    }
    FilmCover cover = section.value(FILM).asScalar().choice(FILMS);
    return section.node().locate(() -> new PlacedWarmer(name, kind, placement, opened, cover));
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
    if (node == null || isNothing(node)) {
      return List.of();
    }
    List<PlacedPack> packs = new ArrayList<>();
    Faults faults = new Faults();
    int number = 0;
    for (MappingNode each : listed(node)) {
      String usual = "pack " + ++number;
      faults
          .attempt(
              () ->
                  Names.within(
                      each,
                      () ->
                          pack(
                              KeyedSection.of(each, Vocabulary.PACK, assumptions),
                              usual,
                              containers)))
          .ifPresent(packs::add);
    }
    faults.throwIfAny();
    return packs;
  }

  /** Several packs, or one that is no list. */
  private static List<MappingNode> listed(Node packs) {
    if (packs instanceof ScalarNode) {
      throw packs.fail(
          "must be a list of packs, write for example"
              + " packs: [{pack: gel pack on lid, size: 5 x 4 x 3/4 in, start: from the freezer}]");
    }
    return packs instanceof MappingNode one ? List.of(one) : packs.asSequence().mappings();
  }

  private static PlacedPack pack(KeyedSection section, String usual, List<Container> containers) {
    PlacementReader.Placed placed = new PlacementReader(section, "pack", containers).read();
    Faults faults = new Faults();
    faults.attempt(() -> section.require("size"));
    faults.attempt(() -> section.require("start"));
    faults.throwIfAny();
    ScalarNode startNode = section.require("start").asScalar();
    PackStart start = start(startNode, section.assumptions());
    Material contents = Layers.material(placed.kind(), EverydayWords.PACK, section.assumptions());
    if (contents.equals(Materials.WATER)
        && start instanceof PackStart.AtTemperature at
        && at.temperature() < Temperatures.fromCelsius(0)) {
      throw startNode.fail("is below the freezing point of water; frozen water is called ice pack");
    }
    if (contents.equals(Materials.ICE)) {
      throw placed.kind().fail("as a material does not melt; what melts is called ice pack");
    }
    Size extents = section.require("size").asScalar().size();
    Dimensions size =
        section.node().locate(() -> new Dimensions(extents.x(), extents.y(), extents.z()));
    double full = size.volume() * contents.density();
    ScalarNode massNode =
        section.value("mass", Checks.show(full, "kg"), "as much as fills it").asScalar();
    // what is told of a mass that is left out has fewer digits
    double mass = section.has("mass") ? massNode.mass() : full;
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
    return startNode.locate(() -> new PlacedPack(name, kind, placed.placement(), start));
  }

  private static PackStart start(ScalarNode node, Assumptions assumptions) {
    boolean isFrozen = FREEZER.matcher(node.text()).matches();
    if (isFrozen || REFRIGERATOR.matcher(node.text()).matches()) {
      int celsius = isFrozen ? -18 : 4;
      assumptions.add(
          "A pack '" + node.text() + "' has " + celsius + " °C (common practice, no source).");
      return new PackStart.AtTemperature(Temperatures.fromCelsius(celsius));
    }
    Matcher liquid = LIQUID.matcher(node.text());
    if (liquid.matches()) {
      double fraction = node.piece(liquid.group(1)).percentage();
      return node.locate(() -> new PackStart.PartlyMelted(fraction));
    }
    double temperature = node.temperature();
    return node.locate(() -> new PackStart.AtTemperature(temperature));
  }
}
