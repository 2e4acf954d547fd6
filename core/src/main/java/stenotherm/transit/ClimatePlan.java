package stenotherm.transit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import stenotherm.air.Gas;
import stenotherm.animal.AnimalGroup;
import stenotherm.animal.Animals;
import stenotherm.base.Face;
import stenotherm.material.Material;
import stenotherm.material.Materials;
import stenotherm.parcel.Container;
import stenotherm.parcel.InnerHeat;
import stenotherm.parcel.Occupant;
import stenotherm.parcel.OneBody;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedPack;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.WallLayer;
import stenotherm.warmer.ControlledPower;
import stenotherm.warmer.HeaterLaw;
import stenotherm.warmer.IronPowder;

/**
 * What burns, breathes, evaporates and condenses in a packing, and where: found once for all runs.
 * Outputs are positions among the means of blocks, inputs those of the engine. Immutable.
 */
final class ClimatePlan {
  /** Air that creases hold where contents fill the room altogether [m3]. */
  private static final double LEAST_VOLUME = 1e-6;

  /** Water in a fresh warmer, part of its contents [-]: usual mixes have 0.22 to 0.25. */
  private static final double WARMER_WATER = 0.22;

  /** Surface coefficient that stands for the outside of a wall [W/(m2 K)]: still air. */
  private static final double OUTER_FILM = 8;

  /** Surface coefficient that stands for what is around a wet thing [W/(m2 K)]: assumed. */
  private static final double AROUND_WET = 10;

  /** Water in an animal, part of its mass [-]. */
  private static final double BODY_WATER = 0.7;

  final List<Room> rooms = new ArrayList<>();
  final List<Resident> residents = new ArrayList<>();
  final List<Damp> damp = new ArrayList<>();
  final List<Pad> pads = new ArrayList<>();
  final List<Heater> heaters = new ArrayList<>();
  final List<Melter> melters = new ArrayList<>();
  final Wall wall;

  /** What is told of rooms and warmers. */
  final ClimateColumns columns;

  /** What the air that comes and goes acts on; empty where the contents leave no room. */
  final Optional<Ventilation> ventilation;

  private final List<Integer> surfaceRooms = new ArrayList<>();
  private final List<Double> surfaceWater = new ArrayList<>();
  private final Parcel parcel;
  private final ToIntFunction<String> outputs;
  private final ToIntFunction<String> inputs;

  /** The air between walls and contents, and that of each lidded vessel [m3]. */
  record Room(String name, int output, double volume) {}

  /**
   * A thing as one body: its resistance to what surrounds it [K/W] and its heat capacity [J/K]. It
   * tells how powers change temperatures within a step, for which a rough value will do: as steps
   * get shorter nothing depends on it.
   */
  record Lump(double resistance, double capacity) {
    /** What a step of a duration [s] does. */
    Response over(double duration) {
      double passed = duration / (resistance * capacity);
      double left = Math.exp(-passed);
      double mean = (1 - left) / passed;
      return new Response(left, resistance * (mean - left), resistance * (1 - mean));
    }
  }

  /**
   * What a step does to a body.
   *
   * @param left what is left of a difference [-]
   * @param ofStart rise at the end by one watt at the start that falls to none [K/W]
   * @param ofEnd rise at the end by a power that grows from none to one watt [K/W]
   */
  record Response(double left, double ofStart, double ofEnd) {
    /**
     * Temperature at the end of a step [K], as the one before went but for a power [W] that ends
     * with it.
     *
     * @param now temperature at its start [K]
     * @param expected temperature at its end if it went on as before [K]
     * @param before the power at the start of the step before
     * @param after the same at its end
     * @param from the same at the start of this step, from where it falls to none
     */
    double without(double now, double expected, double before, double after, double from) {
      return now + left * (expected - now) + ofStart * (from - before) - ofEnd * after;
    }
  }

  /** An animal, its mass [kg], how many breathe like it, what it wets, its room and its heat. */
  record Resident(AnimalGroup group, double mass, int count, Wet wet, int room, int input) {
    int output() {
      return wet.output;
    }

    /** Water in it at sealing [kg]. */
    double water() {
      return BODY_WATER * mass;
    }
  }

  /** Damp bedding, and the heat that its water takes up. */
  record Damp(Wet wet, int input) {}

  /** A wet surface, its area [m2], its temperature, and what it belongs to as one body. */
  record Wet(int surface, double area, int output, Lump body) {}

  private static Wet wet(int surface, double area, int output, double capacity) {
    return new Wet(surface, area, output, new Lump(1 / (AROUND_WET * area), capacity));
  }

  /** A warmer of iron powder. */
  record Pad(PlacedWarmer warmer, IronPowder powder, int output, int input, int surface) {}

  /** A heater by the temperature that it watches. */
  record Heater(PlacedWarmer warmer, HeaterLaw law, int output, int input) {}

  /** A pack that melts as one body, with the heat capacity of its block as liquid [J/K]. */
  record Melter(OneBody body, double capacity, int output, int input) {}

  /**
   * The inner sides of the walls, on which water condenses: their area [m2], and the part of the
   * resistance from the middle of the innermost layer to the middle of the filling that lies in the
   * layer [-], and the innermost layers as one body.
   */
  @SuppressWarnings("ArrayRecordComponent") // internal; never compared or printed
  record Wall(int surface, int[] outputs, int input, double area, double inwards, Lump body) {}

  /** The filling as one body. */
  record Ventilation(int input, Lump body) {}

  /**
   * Finds all of it.
   *
   * @param outputs position of a block among the means of blocks
   * @param inputs position of a heat source among all inputs, -1 if there is none
   */
  ClimatePlan(Parcel parcel, ToIntFunction<String> outputs, ToIntFunction<String> inputs) {
    this.parcel = parcel;
    this.outputs = outputs;
    this.inputs = inputs;
    findRooms();
    findDamp();
    findPads();
    findMelters();
    this.wall = wall(surface(0, 0));
    this.ventilation = ventilation(wall);
    this.columns =
        new ClimateColumns(
            rooms.stream().map(Room::name).toList(),
            pads.stream().map(pad -> pad.warmer().name()).toList(),
            heaters.stream().map(heater -> heater.warmer().name()).toList(),
            parcel.packs().stream()
                .filter(pack -> pack.oneBody().isPresent())
                .map(PlacedPack::name)
                .toList(),
            parcel.occupied().stream().map(Container::name).toList());
    for (Container container : parcel.occupied()) {
      Occupant who = container.occupant().orElseThrow();
      double mass = who.body().mass();
      // the law of reptiles gives the most heat; it stands in for a keeper's own animal
      AnimalGroup group = Animals.group(who.animal()).orElse(AnimalGroup.REPTILE);
      residents.add(
          new Resident(
              group,
              mass,
              who.count(),
              wet(
                  surface(room(container), BODY_WATER * mass),
                  group.wetSurface(mass),
                  outputs.applyAsInt(container.animalBlock()),
                  mass * Materials.ANIMAL_TISSUE.specificHeat()),
              room(container),
              inputs.applyAsInt(InnerHeat.ofAnimal(container))));
    }
  }

  double[] volumes() {
    return rooms.stream().mapToDouble(Room::volume).toArray();
  }

  int[] surfaceRooms() {
    return surfaceRooms.stream().mapToInt(Integer::intValue).toArray();
  }

  /** Water that each surface holds at sealing [mol]. */
  double[] surfaceWater() {
    return surfaceWater.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Adds a surface of water; its number. */
  private int surface(int room, double kilograms) {
    surfaceRooms.add(room);
    surfaceWater.add(kilograms / Gas.WATER_VAPOUR.molarMass());
    return surfaceRooms.size() - 1;
  }

  /** The room of a container: its own if it has a lid. */
  private int room(Container container) {
    for (int room = 1; room < rooms.size(); room++) {
      if (rooms.get(room).name().equals(container.name())) {
        return room;
      }
    }
    return 0;
  }

  private void findRooms() {
    // without a filling the walls tell how warm the air in the creases is
    String first = parcel.climateBlocks().get(0);
    rooms.add(new Room("", outputs.applyAsInt(first), Math.max(parcel.airVolume(), LEAST_VOLUME)));
    for (Container container : parcel.containers()) {
      if (!container.vessel().isOpen()) {
        double volume = Math.max(container.airVolume(), LEAST_VOLUME);
        rooms.add(new Room(container.name(), outputs.applyAsInt(container.airBlock()), volume));
      }
    }
  }

  private void findDamp() {
    for (Container container : parcel.containers()) {
      if (container.waterMass() > 0) {
        damp.add(
            new Damp(
                wet(
                    surface(room(container), container.waterMass()),
                    container.dampArea(),
                    outputs.applyAsInt(container.dampBlocks().iterator().next()),
                    container.waterMass() * Materials.WATER.specificHeat()),
                inputs.applyAsInt(InnerHeat.ofBedding(container))));
      }
    }
  }

  private void findPads() {
    for (PlacedWarmer warmer : parcel.warmers()) {
      if (warmer.warmer().heat() instanceof IronPowder powder) {
        pads.add(
            new Pad(
                warmer,
                powder,
                outputs.applyAsInt(warmer.name()),
                inputs.applyAsInt(warmer.name()),
                surface(0, WARMER_WATER * warmer.warmer().mass())));
      } else if (warmer.warmer().heat() instanceof ControlledPower controlled) {
        Container watched =
            parcel.containers().stream()
                .filter(each -> each.name().equals(controlled.watched()))
                .findFirst()
                .orElseThrow();
        heaters.add(
            new Heater(
                warmer,
                controlled.law(),
                outputs.applyAsInt(watched.airBlock()),
                inputs.applyAsInt(warmer.name())));
      }
    }
  }

  private void findMelters() {
    for (PlacedPack pack : parcel.packs()) {
      pack.oneBody()
          .ifPresent(
              body ->
                  melters.add(
                      new Melter(
                          body,
                          body.curve().slope(1),
                          outputs.applyAsInt(pack.name()),
                          inputs.applyAsInt(InnerHeat.ofPack(pack)))));
    }
  }

  private Wall wall(int surface) {
    double area = 0;
    double ofLayer = 0;
    double capacity = 0;
    for (Face face : Face.values()) {
      double ofFace = parcel.cavity().area(face);
      List<WallLayer> layers = parcel.walls().layersOf(face);
      WallLayer innermost = layers.get(layers.size() - 1);
      Material material = innermost.material();
      ofLayer += ofFace * innermost.thickness() / material.conductivity() / 2;
      capacity += ofFace * innermost.thickness() * material.density() * material.specificHeat();
      area += ofFace;
    }
    ofLayer /= area;
    double ofFilling = parcel.fillingResistance();
    return new Wall(
        surface,
        parcel.innermostBlocks().stream().mapToInt(outputs).toArray(),
        inputs.applyAsInt(InnerHeat.ofWalls()),
        area,
        ofFilling == 0 ? 0 : ofLayer / (ofLayer + ofFilling),
        new Lump((ofLayer + ofFilling) / area, capacity));
  }

  private Optional<Ventilation> ventilation(Wall around) {
    int input = inputs.applyAsInt(InnerHeat.ofVentilation());
    if (input < 0) {
      return Optional.empty();
    }
    double ofWalls = 0;
    for (Face face : Face.values()) {
      for (WallLayer layer : parcel.walls().layersOf(face)) {
        ofWalls += parcel.cavity().area(face) * layer.thickness() / layer.material().conductivity();
      }
    }
    double resistance = parcel.fillingResistance() + ofWalls / around.area() + 1 / OUTER_FILM;
    return Optional.of(
        new Ventilation(input, new Lump(resistance / around.area(), parcel.fillingCapacity())));
  }
}
