package stenotherm.transit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import stenotherm.air.AmbientAir;
import stenotherm.air.BreathingLimits;
import stenotherm.air.Gas;
import stenotherm.air.GasNetwork;
import stenotherm.air.MoistAir;
import stenotherm.air.StandardAtmosphere;
import stenotherm.animal.AnimalGroup;
import stenotherm.animal.Animals;
import stenotherm.animal.Metabolism;
import stenotherm.base.Face;
import stenotherm.conduction.HeatEngine;
import stenotherm.conduction.Probe;
import stenotherm.journey.Leg;
import stenotherm.parcel.Container;
import stenotherm.parcel.InnerHeat;
import stenotherm.parcel.Occupant;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.WallLayer;
import stenotherm.warmer.IronPowder;

/**
 * What burns, breathes, evaporates and condenses inside a parcel, stepped beside the heat of one
 * run. It gives the engine the powers of warmers, animals, damp bedding, walls and of the air that
 * comes and goes, and takes the temperatures of blocks from it.
 *
 * <p>Over a step it takes the temperatures as going on in a straight line, finds the gases and the
 * conversion of the iron, and from these the powers at the end of the step; the engine then takes
 * the powers as linear in time. So each quantity is found once a step and the error is of second
 * order. The oxygen that was burnt in a step and the heat that the engine took for it differ by a
 * little; the difference is paid back in the next step, so that the ledgers of heat and gases agree.
 *
 * <p>Belongs to one run.
 */
final class InnerClimate {
  /** Humidity of the air outside [-]: assumed. */
  static final double OUTSIDE_HUMIDITY = 0.6;

  /** Time in which the pressure goes over to that of a new leg [s]: climb and descent, assumed. */
  private static final double PRESSURE_CHANGE = 1200;

  /** Still air over damp surfaces through which vapour diffuses [m]: assumed. */
  private static final double STILL_AIR = 0.01;

  /** Water in a fresh warmer, part of its contents [-], and its activity [-]. */
  private static final double WARMER_WATER = 0.22;

  private static final double WARMER_ACTIVITY = 0.85;

  /** Surface coefficient that stands for the outside of a wall [W/(m2 K)]. */
  private static final double OUTER_FILM = 8;

  private final Course course;
  private final Parcel parcel;
  private final HeatEngine engine;
  private final GasNetwork gases;
  private final List<Burner> burners = new ArrayList<>();
  private final List<Room> rooms = new ArrayList<>();
  private final List<Resident> residents = new ArrayList<>();
  private final List<Damp> damp = new ArrayList<>();
  private final Wall wall;
  private final double evaporation;
  private final double metabolism;

  /** Means of blocks at the last two times, and those expected at the next one [K]. */
  private double[] now;

  private double[] before;
  private final double[] next;
  private double lastStep;

  /** Powers that the engine takes at the start and at the end of a step [W], by input. */
  private double[] powerAtStart;

  private double[] powerAtEnd;

  /** Heat that was released and that the engine has not taken yet [J], by input. */
  private final double[] owed;

  /** Time over which the engine is given what is owed [s]; shorter than two steps it would ring. */
  private final double repayment;

  private int leg = -1;
  private double pressure = StandardAtmosphere.SEA_LEVEL_PRESSURE;
  private double earlierPressure;
  private AirPaths paths;
  private boolean pathsAreNew;

  /** The air between walls and contents, and that of each lidded vessel. */
  private record Room(String name, int output) {}

  /** An animal, its room and its heat. */
  private record Resident(AnimalGroup group, double mass, int output, int room, int input) {}

  /** Damp bedding: a surface of water. */
  private record Damp(int surface, int output, int input, double area) {}

  /** A warmer of iron powder. */
  private static final class Burner {
    final PlacedWarmer warmer;
    final IronPowder powder;
    final double strength;
    final int output;
    final int input;
    final int surface;
    double conversion;
    double uptake;

    Burner(PlacedWarmer warmer, IronPowder powder, double strength, int[] at) {
      this.warmer = warmer;
      this.powder = powder;
      this.strength = strength;
      this.output = at[0];
      this.input = at[1];
      this.surface = at[2];
    }

    double age(double time) {
      return time - warmer.opened();
    }

    /** Oxygen that leaves three quarters of the iron that is left: a step takes no more [mol/s]. */
    double most(double duration) {
      return strength * (1 - conversion) / (4 * powder.conversionPerOxygen() * duration);
    }

    IronPowder.Conditions at(double pressure, double temperature) {
      return new IronPowder.Conditions(warmer.cover().open(), pressure, temperature);
    }

    /** Oxygen taken for its partial pressure [mol/(s Pa)]. */
    double uptake(double time, double pressure, double temperature) {
      return strength * powder.uptake(conversion, age(time), at(pressure, temperature));
    }
  }

  /** The inner sides of the walls, on which water condenses. */
  private record Wall(int surface, int[] outputs, int input, double area, double outwards) {}

  /**
   * Starts at sealing.
   *
   * @param engine the engine of the run, at its start
   * @param longest longest step that will be taken [s]
   */
  InnerClimate(Course course, HeatEngine engine, double longest) {
    this.repayment = 2 * longest;
    this.course = course;
    this.parcel = course.varied();
    this.engine = engine;
    Variation variation = course.variation();
    this.evaporation = Factor.EVAPORATIONS.at(variation.of(Factor.EVAPORATION), 1);
    this.metabolism = Factor.METABOLISMS.at(variation.of(Factor.METABOLISM), 1);
    double[] sizes = findRooms();
    List<Integer> roomsOfWater = new ArrayList<>();
    List<Double> water = new ArrayList<>();
    findDamp(roomsOfWater, water);
    findBurners(roomsOfWater, water);
    this.wall = wall(roomsOfWater.size());
    roomsOfWater.add(0);
    water.add(0.0);
    findResidents();
    int inputs = engine.inputs().size();
    int outputs = engine.outputs().size();
    this.now = new double[outputs];
    this.before = new double[outputs];
    this.next = new double[outputs];
    this.powerAtStart = new double[inputs];
    this.powerAtEnd = new double[inputs];
    this.owed = new double[inputs];
    enter(0);
    earlierPressure = pressure;
    gases =
        new GasNetwork(
            sizes,
            roomsOfWater.stream().mapToInt(Integer::intValue).toArray(),
            water.stream().mapToDouble(Double::doubleValue).toArray(),
            outside(0),
            course.journey().startTemperature());
    engine.readMeans(now);
    System.arraycopy(now, 0, next, 0, outputs);
    findPowers(0);
  }

  private int output(String block) {
    List<Probe> probes = engine.outputs();
    for (int index = 0; index < probes.size(); index++) {
      if (probes.get(index) instanceof Probe.Mean mean && mean.block().equals(block)) {
        return index;
      }
    }
    throw new IllegalStateException("the mean of '" + block + "' is not read");
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

  private double[] findRooms() {
    List<Double> sizes = new ArrayList<>();
    List<String> blocks = parcel.climateBlocks();
    rooms.add(new Room("", output(blocks.get(0))));
    sizes.add(Math.max(parcel.airVolume(), LEAST_VOLUME));
    for (Container container : parcel.containers()) {
      if (!container.vessel().isOpen()) {
        rooms.add(new Room(container.name(), output(container.airBlock())));
        sizes.add(Math.max(container.airVolume(), LEAST_VOLUME));
      }
    }
    return sizes.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Air that creases hold where contents fill the room altogether [m3]. */
  private static final double LEAST_VOLUME = 1e-6;

  private void findDamp(List<Integer> roomsOfWater, List<Double> water) {
    for (Container container : parcel.containers()) {
      if (container.waterMass() > 0) {
        String block = container.dampBlocks().iterator().next();
        int input = course.body().source(InnerHeat.ofBedding(container));
        damp.add(new Damp(water.size(), output(block), input, container.dampArea()));
        roomsOfWater.add(room(container));
        water.add(container.waterMass() / Gas.WATER_VAPOUR.molarMass());
      }
    }
  }

  private void findBurners(List<Integer> roomsOfWater, List<Double> water) {
    double reaction = Factor.REACTIONS.at(course.variation().of(Factor.REACTION), 1);
    for (PlacedWarmer warmer : parcel.warmers()) {
      if (warmer.warmer().heat() instanceof IronPowder powder) {
        int[] at = {
          output(warmer.name()), course.body().source(warmer.name()), water.size(),
        };
        double strength =
            warmer.warmer().strength().at(course.variation().ofWarmer(warmer.name()), 1);
        burners.add(new Burner(warmer, powder.reacting(reaction), strength, at));
        roomsOfWater.add(0);
        water.add(WARMER_WATER * warmer.warmer().mass() / Gas.WATER_VAPOUR.molarMass());
      }
    }
  }

  private void findResidents() {
    for (Container container : parcel.occupied()) {
      Occupant who = container.occupant().orElseThrow();
      residents.add(
          new Resident(
              Animals.group(who.animal()).orElse(AnimalGroup.REPTILE),
              who.body().mass(),
              output(container.animalBlock()),
              room(container),
              course.body().source(InnerHeat.ofAnimal(container))));
    }
  }

  private Wall wall(int surface) {
    List<String> blocks = parcel.innermostBlocks();
    double area = 0;
    double inner = 0;
    double outer = 0;
    for (Face face : Face.values()) {
      double ofFace = parcel.cavity().area(face);
      List<WallLayer> layers = parcel.walls().layers().get(face);
      int last = layers.size() - 1;
      for (int n = 0; n <= last; n++) {
        double resistance = layers.get(n).thickness() / layers.get(n).material().conductivity();
        inner += n == last ? ofFace * resistance / 2 : 0;
        outer += ofFace * (n == last ? resistance / 2 : resistance);
      }
      outer += ofFace / OUTER_FILM;
      area += ofFace;
    }
    return new Wall(
        surface,
        blocks.stream().mapToInt(this::output).toArray(),
        course.body().source(InnerHeat.ofWalls()),
        area,
        inner / outer);
  }

  /** The openings as the parcel lies in a leg, and the pressure there. */
  private void enter(int number) {
    if (number == leg) {
      return;
    }
    Leg entered = course.journey().legs().get(number);
    earlierPressure = pressure;
    leg = number;
    pressure = entered.surroundings().pressure();
    paths = course.airPaths(number);
    pathsAreNew = true;
  }

  /** Pressure at a time: it goes over to that of the leg in a while. */
  private double pressure(double time) {
    double since = time - course.journey().start(leg);
    double part = Math.min(1, since / PRESSURE_CHANGE);
    return earlierPressure + part * (pressure - earlierPressure);
  }

  private AmbientAir outside(double time) {
    return new AmbientAir(course.outside(leg).air(time), pressure(time), OUTSIDE_HUMIDITY);
  }

  /** When the coefficients of a leg hold. */
  void begin(int number) {
    enter(number);
  }

  /** Adds the powers at the start of the next step to inputs. */
  void addAtStart(double[] inputs) {
    add(powerAtStart, inputs);
  }

  /** Adds the powers at the end of the step that was found last to inputs. */
  void addAtEnd(double[] inputs) {
    add(powerAtEnd, inputs);
  }

  private static void add(double[] powers, double[] inputs) {
    for (int input = 0; input < inputs.length; input++) {
      inputs[input] += powers[input];
    }
  }

  /** Finds gases, conversion and powers at the end of a step that the engine takes afterwards. */
  void step(double from, double to) {
    double duration = to - from;
    double reach = lastStep > 0 ? duration / lastStep : 0;
    for (int y = 0; y < next.length; y++) {
      next[y] = now[y] + reach * (now[y] - before[y]);
    }
    double[] spare = powerAtStart;
    powerAtStart = powerAtEnd;
    powerAtEnd = spare;
    double meanPressure = (pressure(from) + pressure(to)) / 2;
    AmbientAir air = outside(to);
    setPaths(air);
    double[] uptakes = new double[burners.size()];
    double all = 0;
    double oxygen = gases.fraction(0, Gas.OXYGEN) * meanPressure;
    for (int b = 0; b < uptakes.length; b++) {
      Burner burner = burners.get(b);
      double first = burner.uptake(from, pressure(from), now[burner.output]);
      double second = burner.uptake(to, pressure(to), next[burner.output]);
      uptakes[b] = Math.min((first + second) / 2, burner.most(duration) / oxygen);
      all += uptakes[b];
    }
    gases.setSink(0, all * meanPressure);
    setWater();
    setResidents();
    gases.step(duration);
    double burnt = gases.oxygenToSink(0);
    for (int b = 0; b < uptakes.length; b++) {
      Burner burner = burners.get(b);
      burner.uptake = all > 0 ? burnt * uptakes[b] / all : 0;
      double converted =
          burner.uptake * duration * burner.powder.conversionPerOxygen() / burner.strength;
      burner.conversion = Math.min(1, burner.conversion + converted);
    }
    findPowers(to);
    pay(air, duration);
  }

  private void setPaths(AmbientAir air) {
    gases.setOutside(air);
    for (int room = 0; room < rooms.size(); room++) {
      gases.setTemperature(room, next[rooms.get(room).output()]);
    }
    gases.setFlow(0, paths.flow(next[rooms.get(0).output()] - air.temperature()));
    if (pathsAreNew) {
      pathsAreNew = false;
      for (int room = 0; room < rooms.size(); room++) {
        for (Gas gas : Gas.values()) {
          gases.setExchange(room, gas, paths.diffusion(room, gas));
        }
      }
    }
  }

  private void setWater() {
    for (Damp each : damp) {
      double temperature = next[each.output()];
      gases.setSurface(
          each.surface(),
          evaporation * vapourConductance(each.area(), temperature),
          MoistAir.saturationPressure(temperature));
    }
    for (Burner burner : burners) {
      double temperature = Math.min(next[burner.output], HOTTEST_WATER);
      double film =
          burner.strength
              * burner.powder.film().conductance(burner.warmer.cover().open(), pressure)
              * Gas.WATER_VAPOUR.diffusivity(temperature, pressure)
              / Gas.OXYGEN.diffusivity(temperature, pressure);
      gases.setSurface(
          burner.surface, film, WARMER_ACTIVITY * MoistAir.saturationPressure(temperature));
    }
    double temperature = wallTemperature();
    gases.setSurface(
        wall.surface(),
        vapourConductance(wall.area(), temperature),
        MoistAir.saturationPressure(temperature));
  }

  /** As far as the saturation pressure is known [K]. */
  private static final double HOTTEST_WATER = 363;

  private double vapourConductance(double area, double temperature) {
    return Gas.WATER_VAPOUR.diffusivity(temperature, pressure)
        * area
        / (STILL_AIR * MoistAir.GAS_CONSTANT * temperature);
  }

  /** Inner surface of the walls, from the middle of their innermost layers outwards. */
  private double wallTemperature() {
    double sum = 0;
    for (int output : wall.outputs()) {
      sum += next[output];
    }
    double middle = sum / wall.outputs().length;
    double ambient = course.outside(leg).air(course.journey().start(leg));
    return middle + wall.outwards() * (middle - ambient);
  }

  private void setResidents() {
    double[] oxygen = new double[rooms.size()];
    for (Resident each : residents) {
      oxygen[each.room()] += metabolism * metabolism(each).oxygen();
    }
    for (int room = 0; room < oxygen.length; room++) {
      gases.setUptake(room, oxygen[room]);
      gases.setSource(
          room, Gas.CARBON_DIOXIDE, Metabolism.RESPIRATORY_QUOTIENT * oxygen[room]);
    }
  }

  private Metabolism metabolism(Resident resident) {
    return Metabolism.resting(
        resident.group(),
        resident.mass(),
        Math.min(next[resident.output()], WARMEST_BODY));
  }

  /** Up to here metabolism was measured; warmer animals do not go on to burn more [K]. */
  private static final double WARMEST_BODY = 313.15;


  /** Powers at a time, from gases and conversion now. */
  private void findPowers(double time) {
    Arrays.fill(powerAtEnd, 0);
    double oxygen = gases.fraction(0, Gas.OXYGEN) * pressure(time);
    for (Burner burner : burners) {
      double temperature = next[burner.output];
      powerAtEnd[burner.input] =
          burner.uptake(time, pressure(time), temperature)
              * oxygen
              * burner.powder.product().heatPerOxygen();
    }
    for (Resident each : residents) {
      powerAtEnd[each.input()] += metabolism * metabolism(each).heat();
    }
  }

  /** Lets the engine take in the end what was released, and adds latent heat and that of air. */
  private void pay(AmbientAir air, double duration) {
    double[] released = new double[owed.length];
    for (Burner burner : burners) {
      released[burner.input] =
          burner.uptake * burner.powder.product().heatPerOxygen()
              - latent(burner.surface, next[burner.output]);
      powerAtEnd[burner.input] -= latent(burner.surface, next[burner.output]);
    }
    for (Damp each : damp) {
      released[each.input()] = -latent(each.surface(), next[each.output()]);
      powerAtEnd[each.input()] = released[each.input()];
    }
    released[wall.input()] = -latent(wall.surface(), wallTemperature());
    powerAtEnd[wall.input()] = released[wall.input()];
    int ventilation = course.body().ventilation();
    if (ventilation >= 0) {
      released[ventilation] = ventilationHeat(air);
      powerAtEnd[ventilation] = released[ventilation];
    }
    for (Resident each : residents) {
      released[each.input()] = (powerAtStart[each.input()] + powerAtEnd[each.input()]) / 2;
    }
    for (int input = 0; input < owed.length; input++) {
      powerAtEnd[input] += owed[input] / repayment;
      owed[input] +=
          duration * (released[input] - (powerAtStart[input] + powerAtEnd[input]) / 2);
    }
  }

  private double latent(int surface, double temperature) {
    return gases.evaporation(surface) * MoistAir.latentHeat(temperature);
  }

  private double ventilationHeat(AmbientAir air) {
    double inside = next[rooms.get(0).output()];
    double density = air.pressure() / (MoistAir.GAS_CONSTANT * air.temperature());
    double flow = paths.flow(inside - air.temperature()) * density + Math.max(0, gases.makeUp(0));
    return flow * MoistAir.molarHeatCapacity(0) * (air.temperature() - inside);
  }

  /** The air that animals breathed so far. */
  Breathing breathing() {
    return new Breathing(leastOxygen, mostCarbonDioxide, breach);
  }

  private void breathe(double time) {
    double thin = pressure(time) / StandardAtmosphere.SEA_LEVEL_PRESSURE;
    for (Resident each : residents) {
      double oxygen = gases.fraction(each.room(), Gas.OXYGEN) * thin;
      double carbonDioxide = gases.fraction(each.room(), Gas.CARBON_DIOXIDE) * thin;
      leastOxygen = Math.min(leastOxygen, oxygen);
      mostCarbonDioxide = Math.max(mostCarbonDioxide, carbonDioxide);
      if (oxygen < BreathingLimits.ECTOTHERMS.oxygenAlarm()
          || carbonDioxide > BreathingLimits.ECTOTHERMS.carbonDioxideAlarm()) {
        breach = Math.min(breach, time);
      }
    }
  }

  /** How many numbers {@link #read} gives. */
  int width() {
    return ClimateColumns.OF_ROOM * rooms.size() + ClimateColumns.OF_WARMER * burners.size();
  }

  /** The rooms and the warmers of iron powder, in the order of {@link #read}. */
  ClimateColumns columns() {
    return new ClimateColumns(
        rooms.stream().map(Room::name).toList(),
        burners.stream().map(burner -> burner.warmer.name()).toList());
  }

  /** Reads gases and warmers now. */
  double[] read(double time) {
    double[] row = new double[width()];
    int at = 0;
    for (int room = 0; room < rooms.size(); room++) {
      row[at++] = gases.fraction(room, Gas.OXYGEN);
      row[at++] = gases.fraction(room, Gas.CARBON_DIOXIDE);
      double temperature = now[rooms.get(room).output()];
      row[at++] = gases.vapourPressure(room) / MoistAir.saturationPressure(temperature);
    }
    double oxygen = gases.fraction(0, Gas.OXYGEN);
    double outside = outside(time).fraction(Gas.OXYGEN);
    for (Burner burner : burners) {
      double temperature = now[burner.output];
      IronPowder.Conditions there = burner.at(pressure(time), temperature);
      double age = burner.age(time);
      row[at++] =
          burner.uptake(time, pressure(time), temperature)
              * oxygen
              * pressure(time)
              * burner.powder.product().heatPerOxygen();
      row[at++] = burner.conversion;
      row[at++] =
          burner.powder.limitedBy(burner.conversion, age, there, oxygen / outside).ordinal();
      row[at++] =
          burner.powder.growth(burner.conversion, age, there)
              * (temperature - now[rooms.get(0).output()]);
    }
    return row;
  }

  private double leastOxygen = 1;
  private double mostCarbonDioxide;
  private double breach = Double.POSITIVE_INFINITY;

  /** Takes the temperatures that the engine has reached after a step. */
  void follow(double duration) {
    double[] spare = before;
    before = now;
    now = spare;
    engine.readMeans(now);
    lastStep = duration;
    breathe(engine.time());
  }
}
