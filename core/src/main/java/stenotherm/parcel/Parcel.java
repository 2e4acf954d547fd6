package stenotherm.parcel;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.HeatFlow;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Lengths;
import stenotherm.base.Orientation;
import stenotherm.base.Range;
import stenotherm.base.Temperatures;
import stenotherm.conduction.BoundaryKind;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.HeatNetworkBuilder;
import stenotherm.conduction.InitialState;
import stenotherm.conduction.InnerSurface;
import stenotherm.conduction.ThinResistance;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.FacePatch;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.material.FillConvection;
import stenotherm.material.Material;
import stenotherm.material.Materials;
import stenotherm.warmer.WarmerClass;

/**
 * A packed parcel. Its faces and axes are named as if it stood upright, however it lies.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param name name of the packing
 * @param outer outer box, its lower corner at the origin [m]
 * @param walls layers of the six faces
 * @param filling what is between walls, containers, warmers and packs
 * @param containers cups, bags and vials, at least one
 * @param warmers the warmers; may be empty
 * @param packs the packs; may be empty
 */
public record Parcel(
    String name,
    Box outer,
    Walls walls,
    Filling filling,
    List<Container> containers,
    List<PlacedWarmer> warmers,
    List<PlacedPack> packs) {
  /** How far things may overlap by round-off [m]. */
  private static final double ROUND_OFF = 1e-9;

  /** Name of the block between walls and contents, fill or air. */
  private static final String FILL = "fill";

  /** Temperature at which the conductivity of the air is taken if no other one is said [K]. */
  private static final double AIR_TEMPERATURE = Temperatures.fromCelsius(15);

  /**
   * A parcel with a fill and without packs.
   *
   * @param name name of the packing
   * @param outer outer box, its lower corner at the origin [m]
   * @param walls layers of the six faces
   * @param fill what fills the room between walls, containers and warmers
   * @param containers cups, bags and vials, at least one
   * @param warmers the warmers; may be empty
   * @throws InvalidInputException as the other constructor
   */
  public Parcel(
      String name,
      Box outer,
      Walls walls,
      Material fill,
      List<Container> containers,
      List<PlacedWarmer> warmers) {
    this(name, outer, walls, new Filling.Loose(fill), containers, warmers, List.of());
  }

  /**
   * Checks that everything fits.
   *
   * @throws InvalidInputException if the name is blank, there is no container, a name occurs twice
   *     or is that of a part of the parcel, or two things overlap or one sticks out of the cavity;
   *     the message gives the packing, both names and by how many millimetres
   */
  public Parcel {
    Checks.name("packing name", name);
    containers = Checks.notEmpty("containers of packing '" + name + "'", containers);
    warmers = List.copyOf(warmers);
    packs = List.copyOf(packs);
    Box cavity = cavity(name, outer, walls);
    List<Item> items = items(cavity, containers, warmers, packs);
    checkNames(name, walls.blocks(outer), containers, items);
    for (int index = 0; index < items.size(); index++) {
      Item item = items.get(index);
      for (Face face : Face.values()) {
        double excess = cavity.excess(item.box(), face);
        if (excess > ROUND_OFF) {
          throw refusal(
              name,
              "'"
                  + item.name()
                  + "' sticks out of the cavity into the wall "
                  + face.label()
                  + " by "
                  + Extents.of(excess)
                  + "; the cavity is "
                  + Extents.of(cavity));
        }
      }
      for (Item other : items.subList(0, index)) {
        double depth = item.overlap(other);
        if (depth > ROUND_OFF) {
          throw refusal(
              name,
              "'"
                  + item.name()
                  + "' overlaps '"
                  + other.name()
                  + "' by "
                  + Extents.of(depth)
                  + "; the cavity is "
                  + Extents.of(cavity));
        }
      }
    }
  }

  private static Box cavity(String packing, Box outer, Walls walls) {
    try {
      return walls.inside(outer, walls.shells());
    } catch (InvalidInputException fault) {
      throw refusal(
          packing,
          fault.field() + " " + fault.problem() + "; the outer box is " + Extents.of(outer));
    }
  }

  private static List<Item> items(
      Box cavity, List<Container> containers, List<PlacedWarmer> warmers, List<PlacedPack> packs) {
    List<Item> items = new ArrayList<>();
    containers.forEach(container -> items.add(container.item(cavity)));
    warmers.forEach(warmer -> items.add(warmer.item(cavity)));
    packs.forEach(pack -> items.add(pack.item(cavity)));
    return items;
  }

  private static void checkNames(
      String packing, List<Block> wallBlocks, List<Container> containers, List<Item> items) {
    Set<String> reserved = new HashSet<>();
    reserved.add(FILL);
    wallBlocks.forEach(block -> reserved.add(block.name()));
    reserved.add(InnerHeat.ofVentilation());
    for (Face face : Face.values()) {
      reserved.add(face.label());
      reserved.add(InnerHeat.ofWall(face));
    }
    List<String> names = new ArrayList<>(items.stream().map(Item::name).toList());
    for (Container container : containers) {
      names.add(container.airBlock());
      container.bedding().forEach(layer -> names.add(container.beddingBlock(layer)));
      container.occupant().ifPresent(who -> names.add(container.animalBlock()));
      names.add(InnerHeat.ofBedding(container));
    }
    Set<String> seen = new HashSet<>();
    for (String each : names) {
      if (reserved.contains(each)) {
        throw refusal(
            packing, "'" + each + "' is the name of a part of the parcel; choose another one");
      }
      if (!seen.add(each)) {
        throw refusal(packing, "'" + each + "' occurs twice; everything needs a name of its own");
      }
    }
  }

  private static InvalidInputException refusal(String packing, String message) {
    return new InvalidInputException("packing '" + packing + "'", message);
  }

  /**
   * Returns the room inside the walls.
   *
   * @return the cavity [m]
   */
  public Box cavity() {
    return walls.inside(outer, walls.shells());
  }

  /**
   * Returns the containers with an animal in them.
   *
   * @return the containers in their order
   */
  public List<Container> occupied() {
    return containers.stream().filter(each -> each.occupant().isPresent()).toList();
  }

  /**
   * The same packing without its warmers.
   *
   * @return the changed parcel
   */
  public Parcel withoutWarmers() {
    return withWarmers(List.of());
  }

  /**
   * The same packing with other packs.
   *
   * @param other the packs; may be empty
   * @return the changed parcel
   * @throws InvalidInputException if they do not fit
   */
  public Parcel withPacks(List<PlacedPack> other) {
    return new Parcel(name, outer, walls, filling, containers, warmers, other);
  }

  /**
   * The same packing with other warmers.
   *
   * @param other the warmers; may be empty
   * @return the changed parcel
   * @throws InvalidInputException if they do not fit
   */
  public Parcel withWarmers(List<PlacedWarmer> other) {
    return new Parcel(name, outer, walls, filling, containers, other, packs);
  }

  /**
   * The same packing with something else, or nothing, between its things.
   *
   * @param other the filling
   * @return the changed parcel
   */
  public Parcel withFilling(Filling other) {
    return new Parcel(name, outer, walls, other, containers, warmers, packs);
  }

  /**
   * The same packing with walls and fill elsewhere in their ranges of conductivity.
   *
   * @param ofWalls position of all wall layers in their ranges, see {@link stenotherm.base.Range#at}
   * @param ofFill position of the filling
   * @return the changed parcel
   */
  public Parcel at(double ofWalls, double ofFill) {
    return new Parcel(
        name, outer, walls.at(ofWalls), filling.at(ofFill), containers, warmers, packs);
  }

  /**
   * Returns the blocks. Air that convects is taken at 15 °C with heat going sideways; {@link
   * #conductivities} has the values for a way of lying.
   *
   * @return walls, fill, contents of containers, warmers, packs
   */
  public Layout layout() {
    Box cavity = cavity();
    List<Block> blocks = new ArrayList<>(walls.blocks(outer));
    blocks.add(new Block.Solid(FILL, cavity, fillMaterial(cavity)));
    for (Container container : containers) {
      double conductivity = container.airConductivity(HeatFlow.HORIZONTAL, Axis.Z, AIR_TEMPERATURE);
      blocks.addAll(container.blocks(cavity, conductivity));
    }
    for (PlacedWarmer warmer : warmers) {
      blocks.add(
          new Block.Solid(warmer.name(), warmer.item(cavity).box(), Materials.WARMER_MIX_FRESH));
    }
    for (PlacedPack pack : packs) {
      blocks.add(new Block.Solid(pack.name(), pack.item(cavity).box(), pack.pack().spread()));
    }
    return new Layout(blocks);
  }

  private Material fillMaterial(Box cavity) {
    if (filling instanceof Filling.Loose loose) {
      return loose.material();
    }
    CavityAir air = new CavityAir((Filling.Unfilled) filling, gap(cavity));
    return Materials.STILL_AIR.withConductivity(
        air.conductivity(HeatFlow.HORIZONTAL, 0, AIR_TEMPERATURE));
  }

  /** Twice the free volume over the surface of walls and contents [m]. */
  private double gap(Box cavity) {
    double volume = cavity.volume();
    double surface = new Item(FILL, cavity).surface();
    for (Item item : items(cavity, containers, warmers, packs)) {
      volume -= item.volume();
      surface += item.surface();
    }
    return 2 * volume / surface;
  }

  /**
   * Returns the conductivities of the solids that stand for air that convects: the air in vessels
   * and in a cavity without fill.
   *
   * <p>The direction of heat across a layer that lies level decides how its air moves. It is taken
   * from where warmers and packs are: a warmer above sends heat downward, a pack colder than the
   * mean temperature above takes it upward; without either, or with as many above as below, it is
   * taken as sideways, which lies between the two. Every warmer counts, as if it heated.
   *
   * @param orientation how the parcel lies
   * @param meanTemperature mean temperature of the air [K]
   * @return conductivity [W/(m K)] of each block by its name
   * @throws InvalidInputException if the temperature is not absolute
   */
  public Map<String, Double> conductivities(Orientation orientation, double meanTemperature) {
    return conductivities(orientation, meanTemperature, warmers);
  }

  /**
   * Returns the same conductivities at a time: a warmer that has not been opened yet, or that is
   * spent, sends no heat anywhere.
   *
   * @param orientation how the parcel lies
   * @param meanTemperature mean temperature of the air [K]
   * @param time time since sealing [s]
   * @return conductivity [W/(m K)] of each block by its name
   * @throws InvalidInputException if the temperature is not absolute or the time not finite
   */
  public Map<String, Double> conductivities(
      Orientation orientation, double meanTemperature, double time) {
    Checks.finite("time since sealing", time, "s");
    return conductivities(
        orientation,
        meanTemperature,
        warmers.stream().filter(warmer -> warmer.power().at(time) > 0).toList());
  }

  private Map<String, Double> conductivities(
      Orientation orientation, double meanTemperature, List<PlacedWarmer> heating) {
    Checks.temperature("mean temperature of the air", meanTemperature);
    Box cavity = cavity();
    Axis up = orientation.up().axis();
    Map<String, Double> all = new LinkedHashMap<>();
    for (Container container : containers) {
      HeatFlow vertical =
          vertical(container.item(cavity).box(), orientation, meanTemperature, heating);
      all.put(container.airBlock(), container.airConductivity(vertical, up, meanTemperature));
    }
    if (filling instanceof Filling.Unfilled unfilled) {
      CavityAir air = new CavityAir(unfilled, gap(cavity));
      double level = 2 * cavity.volume() / cavity.size(up) / new Item(FILL, cavity).surface();
      HeatFlow vertical = vertical(middle(cavity), orientation, meanTemperature, heating);
      all.put(FILL, air.conductivity(vertical, level, meanTemperature));
    }
    return all;
  }

  /** The middle third of a box along each axis. */
  private static Box middle(Box box) {
    return new Dimensions(box.size(Axis.X) / 3, box.size(Axis.Y) / 3, box.size(Axis.Z) / 3)
        .above(
            new Point(box.centre().x(), box.centre().y(), box.centre().z() - box.size(Axis.Z) / 6));
  }

  /** Which way heat goes vertically at a thing, by where warmers and packs are. */
  private HeatFlow vertical(
      Box thing, Orientation orientation, double meanTemperature, List<PlacedWarmer> heating) {
    Box cavity = cavity();
    int downward = 0;
    for (PlacedWarmer warmer : heating) {
      downward += side(warmer.item(cavity).box(), thing, orientation);
    }
    for (PlacedPack pack : packs) {
      int warm = pack.startTemperature() > meanTemperature ? 1 : -1;
      downward += warm * side(pack.item(cavity).box(), thing, orientation);
    }
    if (downward == 0) {
      return HeatFlow.HORIZONTAL;
    }
    return downward > 0 ? HeatFlow.DOWNWARD : HeatFlow.UPWARD;
  }

  /** 1 if a box lies above a thing, -1 below it, 0 beside it. */
  private static int side(Box box, Box thing, Orientation orientation) {
    if (gap(box, thing, orientation.up()) > -ROUND_OFF) {
      return 1;
    }
    return gap(box, thing, orientation.down()) > -ROUND_OFF ? -1 : 0;
  }

  /** Distance from a thing's face to a box that lies beyond it; negative if it begins before. */
  private static double gap(Box box, Box thing, Face face) {
    double distance = box.at(face.opposite()) - thing.at(face);
    return face.isMax() ? distance : -distance;
  }

  /**
   * Tells whether the air in the fill may move, which the conduction does not know of.
   *
   * @param orientation how the parcel lies
   * @param difference how much warmer the cavity is below than above [K]; negative if it is warmer
   *     above, where nothing moves
   * @param meanTemperature mean temperature of the fill [K]
   * @return sentences; empty if the fill stays at rest, or if there is none
   * @throws InvalidInputException if the difference is not finite or the temperature not absolute
   */
  public List<String> convectionWarnings(
      Orientation orientation, double difference, double meanTemperature) {
    Checks.finite("temperature difference over the cavity", difference, "K");
    Checks.temperature("mean temperature of the fill", meanTemperature);
    if (difference <= 0 || !(filling instanceof Filling.Loose loose)) {
      return List.of();
    }
    Material fill = loose.material();
    double height = cavity().size(orientation.up().axis());
    String where =
        String.format(
            Locale.ROOT,
            "The %s is %.1f K warmer below than above over %.0f mm: ",
            fill.name(),
            difference,
            Lengths.toMillimetres(height));
    Optional<FillConvection> known = FillConvection.of(fill);
    if (known.isEmpty()) {
      return List.of(where + "whether its air moves is not known, as its voids are not stated.");
    }
    FillConvection air = known.get();
    List<String> warnings = new ArrayList<>();
    Range seeping = air.darcyRayleigh(height, difference, meanTemperature);
    if (seeping.high() > FillConvection.CRITICAL_DARCY_RAYLEIGH) {
      boolean surely = seeping.low() > FillConvection.CRITICAL_DARCY_RAYLEIGH;
      warnings.add(
          where
              + String.format(
                  Locale.ROOT,
                  "air %s seep through it in circles and carry more heat than computed"
                      + " (Darcy-Rayleigh number %.3g to %.3g, critical %.3g).",
                  surely ? "will" : "may",
                  seeping.low(),
                  seeping.high(),
                  FillConvection.CRITICAL_DARCY_RAYLEIGH));
    }
    double inVoids = air.voidRayleigh(height, difference, meanTemperature);
    if (inVoids > FillConvection.CRITICAL_RAYLEIGH) {
      warnings.add(
          where
              + String.format(
                  Locale.ROOT,
                  "the air in its voids of %.0f mm will turn over and carry more heat than computed"
                      + " (Rayleigh number %.3g, critical %.0f).",
                  Lengths.toMillimetres(air.voidSize()),
                  inVoids,
                  FillConvection.CRITICAL_RAYLEIGH));
    }
    return List.copyOf(warnings);
  }

  /**
   * Returns the state of the parcel at sealing.
   *
   * @param startTemperature temperature of all but the packs [K]
   * @return that temperature, with each pack in its own state
   * @throws InvalidInputException if the temperature is not absolute
   */
  public InitialState initialState(double startTemperature) {
    InitialState state = InitialState.uniform(startTemperature);
    for (PlacedPack pack : packs) {
      state = pack.addTo(state);
    }
    return state;
  }

  /**
   * Returns the heat network: a film on each outer face, a source for each warmer.
   *
   * @param mesh how fine the grid is
   * @return the network
   */
  public HeatNetwork network(MeshControl mesh) {
    return network(mesh, List.of());
  }

  /**
   * Returns the heat network with boundaries of their own on parts of the outer faces. Its boundary
   * ports are the faces that patches do not cover altogether, then the patches; its sources are the
   * warmers.
   *
   * @param mesh how fine the grid is
   * @param patches parts of the outer faces
   * @return the network
   * @throws InvalidInputException if a patch does not lie on its face or its name is taken
   */
  public HeatNetwork network(MeshControl mesh, List<FacePatch> patches) {
    return network(mesh, patches, Set.of());
  }

  /**
   * Returns the heat network with sources for other physics inside the parcel as well. Its boundary
   * ports are the faces that patches do not cover altogether, then the patches; its sources are the
   * warmers, then those of {@link InnerHeat} in the order given there.
   *
   * @param mesh how fine the grid is
   * @param patches parts of the outer faces
   * @param innerHeat the kinds of heat that get sources
   * @return the network
   * @throws InvalidInputException if a patch does not lie on its face or its name is taken, or
   *     ventilation is asked for where the contents leave no filling
   */
  public HeatNetwork network(MeshControl mesh, List<FacePatch> patches, Set<InnerHeat> innerHeat) {
    HeatNetworkBuilder network = HeatNetwork.builder(layout(), mesh);
    for (Face face : Face.values()) {
      network.boundary(face, BoundaryKind.CONVECTION);
    }
    patches.forEach(patch -> network.patch(patch, BoundaryKind.CONVECTION));
    walls.jointResistances().forEach(network::thinResistance);
    containers.forEach(container -> network.thinResistance(container.wallResistance()));
    for (PlacedWarmer warmer : warmers) {
      network.source(warmer.name());
      addContact(network, warmer.name(), warmer.placement());
    }
    for (PlacedPack pack : packs) {
      network.thinResistance(ThinResistance.around(Set.of(pack.name()), pack.pack().wrap()));
      addContact(network, pack.name(), pack.placement());
    }
    for (InnerHeat kind : InnerHeat.values()) {
      if (innerHeat.contains(kind)) {
        addSources(network, kind);
      }
    }
    return network.build();
  }

  private void addSources(HeatNetworkBuilder network, InnerHeat kind) {
    switch (kind) {
      case ANIMALS -> occupied().forEach(each -> network.source(InnerHeat.ofAnimal(each)));
      case BEDDING -> {
        for (Container container : containers) {
          Set<String> damp = container.dampBlocks();
          if (!damp.isEmpty()) {
            network.source(InnerHeat.ofBedding(container), damp);
          }
        }
      }
      case VENTILATION -> network.source(InnerHeat.ofVentilation(), Set.of(FILL));
      case WALLS -> {
        for (Face face : Face.values()) {
          innerSurface(face).ifPresent(surface -> network.source(InnerHeat.ofWall(face), surface));
        }
      }
    }
  }

  /**
   * Returns the inner surface of a wall as far as the filling touches it.
   *
   * @param face the wall's face
   * @return the surface; nothing if containers, warmers and packs cover it altogether
   */
  public Optional<InnerSurface> innerSurface(Face face) {
    Box cavity = cavity();
    double free = cavity.area(face);
    for (Item item : items(cavity, containers, warmers, packs)) {
      if (Math.abs(cavity.excess(item.box(), face)) <= ROUND_OFF) {
        free -= item.endArea(face);
      }
    }
    return free > ROUND_OFF * cavity.area(face)
        ? Optional.of(InnerSurface.of(walls.innermost(face), face.opposite(), FILL))
        : Optional.empty();
  }

  private void addContact(HeatNetworkBuilder network, String name, Placement placement) {
    placement
        .onWall()
        .ifPresent(
            place ->
                network.thinResistance(
                    ThinResistance.between(
                        name,
                        walls.innermost(place.face()),
                        place.mounting().contactResistance())));
  }

  /**
   * Returns the mass of the packed parcel.
   *
   * @return walls, fill, containers with contents, warmers and packs [kg]
   */
  public double mass() {
    Box cavity = cavity();
    double free = cavity.volume();
    for (Item item : items(cavity, containers, warmers, packs)) {
      free -= item.volume();
    }
    double sum = walls.mass(outer) + free * fillMaterial(cavity).density();
    for (Container container : containers) {
      sum += container.mass();
    }
    for (PlacedWarmer warmer : warmers) {
      sum += warmer.item(cavity).volume() * Materials.WARMER_MIX_FRESH.density();
    }
    for (PlacedPack pack : packs) {
      sum += pack.pack().mass();
    }
    return sum;
  }

  /**
   * Returns the mass of the water in all bedding.
   *
   * @return mass of water [kg]
   */
  public double waterMass() {
    return containers.stream().mapToDouble(Container::waterMass).sum();
  }

  /**
   * Returns the outer volume.
   *
   * @return the volume [m3]
   */
  public double outerVolume() {
    return outer.volume();
  }

  /**
   * Returns what every output about this packing must say.
   *
   * @return cautions as sentences, without those of the animals
   */
  public List<String> cautions() {
    Set<String> all = new LinkedHashSet<>();
    if (!warmers.isEmpty()) {
      all.add(WarmerClass.AIR_CAUTION);
    }
    if (packs.stream().anyMatch(pack -> pack.pack().melts())) {
      all.add(PackClass.SUPERCOOLING_CAUTION);
    }
    packs.stream()
        .filter(PlacedPack::liquidAtSealing)
        .map(
            pack ->
                "'"
                    + pack.name()
                    + "' is liquid at sealing: against heat it helps by its mass alone, as nothing"
                    + " in it is left to melt.")
        .forEach(all::add);
    if (filling instanceof Filling.Unfilled) {
      all.add(CavityAir.CAUTION);
    }
    return List.copyOf(all);
  }
}
