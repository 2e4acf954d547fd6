package stenotherm.parcel;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stenotherm.air.StackFlow;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Orientation;
import stenotherm.base.Suggestions;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.InitialState;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.FacePatch;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.material.Material;
import stenotherm.warmer.ControlledPower;

/**
 * A packed parcel. Its faces and axes are named as if it stood upright, however it lies.
 *
 * <p>A value, thus thread-safe.
 *
 * @param name name of the packing
 * @param outer outer box, its lower corner at the origin [m]
 * @param walls layers of the six faces
 * @param filling what is between walls, containers, warmers and packs
 * @param containers cups, bags and vials, at least one
 * @param warmers the warmers; may be empty
 * @param packs the packs; may be empty
 * @param openings where air and gases pass the walls
 */
public record Parcel(
    String name,
    Box outer,
    Walls walls,
    Filling filling,
    List<Container> containers,
    List<PlacedWarmer> warmers,
    List<PlacedPack> packs,
    Openings openings) {
  /** How far things may overlap by round-off [m]. */
  static final double ROUND_OFF = 1e-9;

  /** Longer than any box in which small animals travel [m]. */
  private static final double LARGEST = 2;

  /** What lies no farther from a wall closes a hole there [m]. */
  private static final double AGAINST = 0.002;

  /** Part of a free wall that may be holes [-]: with more it is no wall, assumed. */
  private static final double MOST_HOLES = 0.25;

  /** Where else a warmer may go; not on the floor: a cup may come to lie on what is there. */
  private static final List<Face> OTHER_WALLS =
      List.of(Face.Z_MAX, Face.Y_MIN, Face.Y_MAX, Face.X_MIN, Face.X_MAX);

  /** Name of the block between walls and contents, fill or air. */
  static final String FILL = "fill";

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
   * A parcel whose flaps are closed and that has no holes.
   *
   * @param name name of the packing
   * @param outer outer box, its lower corner at the origin [m]
   * @param walls layers of the six faces
   * @param filling what is between walls, containers, warmers and packs
   * @param containers cups, bags and vials, at least one
   * @param warmers the warmers; may be empty
   * @param packs the packs; may be empty
   * @throws InvalidInputException as the other constructor
   */
  public Parcel(
      String name,
      Box outer,
      Walls walls,
      Filling filling,
      List<Container> containers,
      List<PlacedWarmer> warmers,
      List<PlacedPack> packs) {
    this(name, outer, walls, filling, containers, warmers, packs, Openings.usual());
  }

  /**
   * Checks that everything fits.
   *
   * @throws InvalidInputException if the name is blank, there is no container, the box is longer
   *     than 2 m, the walls leave no room, a name occurs twice or is that of a part of the parcel,
   *     or two things overlap or one sticks out of the cavity; the message gives the packing, both
   *     names, by how many millimetres, and what size would do; or if a heater watches a cup that
   *     is not there
   */
  public Parcel {
    Checks.given("name", name);
    Checks.given("outer", outer);
    Checks.given("walls", walls);
    Checks.given("filling", filling);
    Checks.given("containers", containers);
    Checks.given("warmers", warmers);
    Checks.given("packs", packs);
    Checks.given("openings", openings);
    Checks.name("packing name", name);
    containers = Checks.notEmpty("containers of packing '" + name + "'", containers);
    warmers = List.copyOf(warmers);
    packs = List.copyOf(packs);
    NeededRoom room = room(containers, warmers, packs);
    Box cavity = cavity(name, outer, walls, room);
    List<Item> items = items(cavity, containers, warmers, packs);
    checkNames(name, walls.blocks(outer), containers, packs, items);
    checkWatched(name, containers, warmers);
    Optional<String> fault = NeededRoom.fault(cavity, items);
    if (fault.isPresent()) {
      throw refusal(
          name,
          fault.get()
              + "; the cavity is "
              + LengthText.of(cavity)
              + ". "
              + onOtherWalls(cavity, containers, warmers, packs)
              + room.inWords("It", walls));
    }
    checkHoles(name, cavity, items, openings);
  }

  private static NeededRoom room(
      List<Container> containers, List<PlacedWarmer> warmers, List<PlacedPack> packs) {
    return new NeededRoom(inside -> items(inside, containers, warmers, packs), LARGEST);
  }

  /** On which other walls of the same box a warmer has room, in a sentence. */
  private static String onOtherWalls(
      Box cavity, List<Container> containers, List<PlacedWarmer> warmers, List<PlacedPack> packs) {
    for (int index = 0; index < warmers.size(); index++) {
      PlacedWarmer warmer = warmers.get(index);
      if (!(warmer.placement() instanceof Placement.OnFace there)) {
        continue;
      }
      List<PlacedWarmer> moved = new ArrayList<>(warmers);
      List<String> walls = new ArrayList<>();
      for (Face face : OTHER_WALLS) {
        moved.set(index, warmer.at(new Placement.OnFace(face, 0, 0, there.mounting())));
        if (NeededRoom.fault(cavity, items(cavity, containers, moved, packs)).isEmpty()) {
          walls.add(face.words());
        }
      }
      if (!walls.isEmpty()) {
        // two are enough to look at
        return "Here '"
            + warmer.name()
            + "' has room on "
            + String.join(" or ", walls.subList(0, Math.min(2, walls.size())))
            + ". ";
      }
    }
    return "";
  }

  /** Holes need a free place, and a wall that is more hole than wall is none. */
  private static void checkHoles(String name, Box cavity, List<Item> items, Openings openings) {
    for (Face face : Face.values()) {
      double free = cavity.area(face);
      for (Item item : items) {
        free -= liesAgainst(cavity, item, face) ? item.box().area(face) : 0;
      }
      double holes = openings.holeArea(face);
      // what is covered wholly may be a little less than none by round-off
      double most = MOST_HOLES * Math.max(0, free);
      if (holes > most) {
        throw refusal(
            name,
            String.format(
                Locale.ROOT,
                "the holes on the %s take %.1f cm2; at most %.1f cm2 of it may be holes, a quarter of"
                    + " what nothing lies against",
                face.words(),
                1e4 * holes,
                1e4 * most));
      }
    }
  }

  private static boolean liesAgainst(Box cavity, Item item, Face face) {
    return cavity.excess(item.box(), face) > -AGAINST;
  }

  /**
   * Checks an outer box and its walls before anything is put into it.
   *
   * @param outer outer box [m]
   * @param walls layers of the six faces
   * @throws InvalidInputException if the box is longer than 2 m along an axis, or the walls leave
   *     no room inside
   */
  public static void requireFits(Box outer, Walls walls) {
    for (Axis axis : Axis.values()) {
      if (outer.size(axis) > LARGEST) {
        throw new InvalidInputException(
            "outer box",
            LengthText.of(outer) + " is longer than " + LengthText.of(LARGEST) + " along " + axis);
      }
    }
    walls.inside(outer, walls.shells());
  }

  private static Box cavity(String packing, Box outer, Walls walls, NeededRoom room) {
    try {
      requireFits(outer, walls);
    } catch (InvalidInputException fault) {
      throw refusal(
          packing,
          fault.field()
              + " "
              + fault.problem()
              + (fault.field().equals(Walls.FIELD)
                  ? ". " + room.inWords("What lies in it", walls)
                  : ""));
    }
    return walls.inside(outer, walls.shells());
  }

  private static List<Item> items(
      Box cavity, List<Container> containers, List<PlacedWarmer> warmers, List<PlacedPack> packs) {
    List<Item> items = new ArrayList<>();
    containers.forEach(container -> items.add(container.item(cavity)));
    warmers.forEach(warmer -> items.add(warmer.item(cavity)));
    packs.forEach(pack -> items.add(pack.item(cavity)));
    return items;
  }

  /** All that lies in the cavity. */
  List<Item> items() {
    return items(cavity(), containers, warmers, packs);
  }

  private static void checkWatched(
      String name, List<Container> containers, List<PlacedWarmer> warmers) {
    List<String> cups = containers.stream().map(Container::name).toList();
    for (PlacedWarmer each : warmers) {
      if (each.warmer().heat() instanceof ControlledPower controlled
          && !cups.contains(controlled.watched())) {
        throw Suggestions.unknown(
            "cup that '" + each.name() + "' in packing '" + name + "' watches",
            controlled.watched(),
            cups);
      }
    }
  }

  private static void checkNames(
      String packing,
      List<Block> wallBlocks,
      List<Container> containers,
      List<PlacedPack> packs,
      List<Item> items) {
    Set<String> reserved = new HashSet<>();
    reserved.add(FILL);
    wallBlocks.forEach(block -> reserved.add(block.name()));
    reserved.add(InnerHeat.ofVentilation());
    reserved.add(InnerHeat.ofWalls());
    for (Face face : Face.values()) {
      reserved.add(face.label());
    }
    List<String> names = new ArrayList<>(items.stream().map(Item::name).toList());
    for (Container container : containers) {
      names.add(container.airBlock());
      container.bedding().forEach(layer -> names.add(container.beddingBlock(layer)));
      container.occupant().ifPresent(who -> names.add(container.animalBlock()));
      names.add(InnerHeat.ofBedding(container));
    }
    packs.forEach(pack -> names.add(InnerHeat.ofPack(pack)));
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
   * Returns what lets gases through the walls, each at its height above the middle of the parcel.
   *
   * @param orientation how the parcel lies
   * @param seams factor on the gap of the seams [-]
   * @param foam effective diffusivity of oxygen in expanded polystyrene [m2/s]
   * @return holes, pieces of seams and walls that breathe
   */
  public List<StackFlow.OpeningAtHeight> openings(
      Orientation orientation, double seams, double foam) {
    return openings.widened(seams).places(this, orientation, foam);
  }

  /**
   * Returns the volume of the air between walls and contents.
   *
   * @return free volume, without what a loose fill takes up [m3]
   */
  public double airVolume() {
    return room() * (filling.fill().isPresent() ? Filling.PORES : 1);
  }

  /**
   * Returns the resistance from the middle of the filling to the walls: the filling lies on average
   * half of the usual gap between walls and contents away from them.
   *
   * @return the resistance [m2 K/W]; 0 where the contents leave no room
   */
  public double fillingResistance() {
    if (airVolume() <= ROUND_OFF) {
      return 0;
    }
    ParcelLayout layout = new ParcelLayout(this);
    return layout.gap() / 2 / layout.fillMaterial().conductivity();
  }

  /**
   * Returns the heat capacity of the filling: of the fill, or of the air where there is none.
   *
   * @return the capacity [J/K]; 0 where the contents leave no room
   */
  public double fillingCapacity() {
    Material filled = new ParcelLayout(this).fillMaterial();
    return room() * filled.density() * filled.specificHeat();
  }

  /** Volume that walls and contents leave between them [m3]. */
  private double room() {
    double volume = cavity().volume();
    for (Item item : items()) {
      volume -= item.volume();
    }
    return volume;
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
   * Returns the room inside a container.
   *
   * @param container one of this parcel's
   * @return the box around it [m]
   */
  public Box room(Container container) {
    return container.item(cavity()).box();
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
   * The same packing under another name.
   *
   * @param other the name
   * @return the changed parcel
   * @throws InvalidInputException if the name is blank
   */
  public Parcel named(String other) {
    return new Parcel(other, outer, walls, filling, containers, warmers, packs, openings);
  }

  /**
   * The same packing without its animals, as for a test; bedding stays.
   *
   * @return the changed parcel
   */
  public Parcel withoutAnimals() {
    List<Container> empty =
        containers.stream()
            .map(
                each ->
                    new Container(
                        each.name(),
                        each.vessel(),
                        each.position(),
                        each.bedding(),
                        Optional.empty()))
            .toList();
    return withContainers(empty);
  }

  /**
   * The same packing with other packs.
   *
   * @param other the packs; may be empty
   * @return the changed parcel
   * @throws InvalidInputException if they do not fit
   */
  public Parcel withPacks(List<PlacedPack> other) {
    return new Parcel(name, outer, walls, filling, containers, warmers, other, openings);
  }

  /**
   * The same packing, in which each pack that melts does so as one body: by its mean temperature,
   * with a source of heat in it that {@link InnerHeat#PACKS} adds to a network.
   *
   * @return the changed parcel; equal to this one if nothing melts part by part
   */
  public Parcel withPacksAsBodies() {
    return withPacks(packs.stream().map(PlacedPack::asOneBody).toList());
  }

  /**
   * The same packing with other containers.
   *
   * @param other the containers; may be empty
   * @return the changed parcel
   * @throws InvalidInputException if they do not fit
   */
  public Parcel withContainers(List<Container> other) {
    return new Parcel(name, outer, walls, filling, other, warmers, packs, openings);
  }

  /**
   * The same packing with other warmers.
   *
   * @param other the warmers; may be empty
   * @return the changed parcel
   * @throws InvalidInputException if they do not fit
   */
  public Parcel withWarmers(List<PlacedWarmer> other) {
    return new Parcel(name, outer, walls, filling, containers, other, packs, openings);
  }

  /**
   * The same packing with something else, or nothing, between its things.
   *
   * @param other the filling
   * @return the changed parcel
   */
  public Parcel withFilling(Filling other) {
    return new Parcel(name, outer, walls, other, containers, warmers, packs, openings);
  }

  /**
   * The same packing with other walls.
   *
   * @param other layers of the six faces
   * @return the changed parcel
   * @throws InvalidInputException if the contents do not fit
   */
  public Parcel withWalls(Walls other) {
    return new Parcel(name, outer, other, filling, containers, warmers, packs, openings);
  }

  /**
   * The same packing with walls and fill elsewhere in their ranges of conductivity.
   *
   * @param ofWalls position of all wall layers in their ranges [-], see {@link
   *     stenotherm.base.Range#at}
   * @param ofFill position of the filling [-]
   * @return the changed parcel
   */
  public Parcel at(double ofWalls, double ofFill) {
    return new Parcel(
        name, outer, walls.at(ofWalls), filling.at(ofFill), containers, warmers, packs, openings);
  }

  /**
   * The same packing with other openings.
   *
   * @param other where air and gases pass the walls
   * @return the changed parcel
   */
  public Parcel withOpenings(Openings other) {
    return new Parcel(name, outer, walls, filling, containers, warmers, packs, other);
  }

  /**
   * Returns the blocks. Air that convects is taken at 15 °C with heat going sideways; {@link
   * #conductivities} has the values for an orientation.
   *
   * @return walls, fill, contents of containers, warmers, packs
   */
  public Layout layout() {
    return new ParcelLayout(this).layout();
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
    return new ParcelAir(this, warmers).conductivities(orientation, meanTemperature);
  }

  /**
   * Tells whether the air in the fill may move; conduction alone does not show it.
   *
   * @param orientation how the parcel lies
   * @param difference how much warmer the cavity is below than above [K]; negative if it is warmer
   *     above, where air stays at rest
   * @param meanTemperature mean temperature of the fill [K]
   * @return sentences; empty if the fill stays at rest, or if there is none
   * @throws InvalidInputException if the difference is not finite or the temperature not absolute
   */
  public List<String> convectionWarnings(
      Orientation orientation, double difference, double meanTemperature) {
    Checks.finite("temperature difference over the cavity", difference, "K");
    Checks.temperature("mean temperature of the fill", meanTemperature);
    return FillWarnings.of(this, orientation, difference, meanTemperature);
  }

  /**
   * Returns the state of the parcel at sealing.
   *
   * @param startTemperature temperature of all but the packs and warmers that burn already [K]
   * @return that temperature, with each of these in its own state
   * @throws InvalidInputException if the temperature is not absolute
   */
  public InitialState initialState(double startTemperature) {
    InitialState state = InitialState.uniform(startTemperature);
    for (PlacedPack pack : packs) {
      state = pack.addTo(state);
    }
    for (PlacedWarmer warmer : warmers) {
      if (warmer.burnsBeforeSealing()) {
        state = state.with(warmer.name(), warmer.atSealing(startTemperature).temperature());
      }
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
    return new ParcelLayout(this).network(mesh, patches, innerHeat);
  }

  /**
   * Returns the blocks that face the contents.
   *
   * @return names of the innermost layers of the walls, each once
   */
  public List<String> innermostBlocks() {
    Set<String> names = new LinkedHashSet<>();
    for (Face face : Face.values()) {
      names.add(walls.innermost(face));
    }
    return List.copyOf(names);
  }

  /**
   * Returns the blocks whose temperatures decide what evaporates, condenses and flows inside: the
   * filling, the air and the damp layers of vessels, the innermost layers of the walls.
   *
   * @return their names
   */
  public List<String> climateBlocks() {
    List<String> names = new ArrayList<>();
    if (innerHeat().contains(InnerHeat.VENTILATION)) {
      names.add(FILL);
    }
    for (Container container : containers) {
      names.add(container.airBlock());
      names.addAll(container.dampBlocks());
    }
    names.addAll(innermostBlocks());
    return List.copyOf(names);
  }

  /**
   * Returns what heats inside this parcel beside its warmers.
   *
   * @return all kinds; no ventilation where the contents leave no air between them and the walls,
   *     none of packs where none melts as one body
   */
  public Set<InnerHeat> innerHeat() {
    Set<InnerHeat> kinds = EnumSet.allOf(InnerHeat.class);
    if (airVolume() <= ROUND_OFF) {
      kinds.remove(InnerHeat.VENTILATION);
    }
    if (packs.stream().noneMatch(pack -> pack.oneBody().isPresent())) {
      kinds.remove(InnerHeat.PACKS);
    }
    return kinds;
  }

  /**
   * Returns the mass of the packed parcel.
   *
   * @return walls, fill, containers with contents, warmers and packs [kg]
   */
  public double mass() {
    Box cavity = cavity();
    double free = cavity.volume();
    for (Item item : items()) {
      free -= item.volume();
    }
    double sum = walls.mass(outer) + free * new ParcelLayout(this).fillMaterial().density();
    for (Container container : containers) {
      sum += container.mass();
    }
    for (PlacedWarmer warmer : warmers) {
      sum += warmer.warmer().mass();
    }
    for (PlacedPack pack : packs) {
      sum += pack.pack().mass();
    }
    return sum;
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
   * @return cautions as sentences, without those of the animals, which are true of each alone
   */
  public List<String> cautions() {
    Set<String> all = new LinkedHashSet<>();
    for (Container each : occupied()) {
      each.occupant()
          .flatMap(Occupant::crowding)
          .ifPresent(warning -> all.add("Container '" + each.name() + "': " + warning));
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
    occupied().stream()
        .filter(cup -> cup.vessel().isTight())
        .map(
            cup ->
                "'"
                    + cup.name()
                    + "' has no holes: all that there is to breathe in it is the air inside.")
        .forEach(all::add);
    filling.air().map(CavityAir::caution).ifPresent(all::add);
    Box cavity = cavity();
    List<Face> pierced = openings.vents().stream().map(Vent::face).distinct().sorted().toList();
    if (pierced.size() == 1) {
      // openings at one height exchange next to nothing, see StackFlow
      all.add(
          "Holes in one face alone, here the "
              + pierced.get(0).words()
              + ", let little air through: it passes between holes at two heights, such as lid and"
              + " side.");
    }
    for (Face face : pierced) {
      List<String> covering =
          items().stream()
              .filter(item -> liesAgainst(cavity, item, face))
              .map(item -> "'" + item.name() + "'")
              .toList();
      if (!covering.isEmpty()) {
        all.add(
            "Make the holes on the "
                + face.words()
                + " beside "
                + String.join(" and ", covering)
                + ": they are taken as open, and what lies on a hole closes it.");
      }
    }
    return List.copyOf(all);
  }

  /**
   * Returns name, outer extents and what is inside.
   *
   * @return for example "box, 254 x 203.2 x 170 mm: cup, 110 x 110 x 60 mm, leopard gecko of 45 g;
   *     warmer, 40 hour warmer"
   */
  @Override
  public String toString() {
    List<String> inside = new ArrayList<>();
    containers.forEach(each -> inside.add(each.toString()));
    warmers.forEach(each -> inside.add(each.name() + ", " + each.warmer().name()));
    packs.forEach(each -> inside.add(each.name() + ", " + each.pack().name()));
    return name
        + ", "
        + LengthText.millimetres(outer.size(Axis.X), outer.size(Axis.Y), outer.size(Axis.Z))
        + ": "
        + String.join("; ", inside);
  }
}
