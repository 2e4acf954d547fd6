package stenotherm.transit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import stenotherm.base.Face;
import stenotherm.base.Orientation;
import stenotherm.base.TimeFunction;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.InitialState;
import stenotherm.conduction.Port;
import stenotherm.conduction.Probe;
import stenotherm.conduction.TemperatureField;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.Point;
import stenotherm.journey.Journey;
import stenotherm.material.Behaviour;
import stenotherm.material.Material;
import stenotherm.parcel.Container;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedPack;
import stenotherm.parcel.PlacedWarmer;

/**
 * A parcel on a journey with quantities at ends of their ranges, whoever computes it: its network,
 * what is read of it, and what acts on it when.
 */
final class Course {
  /** How far a surface is from the air towards the inside, before anything is known: assumed. */
  private static final double SURFACE_PART = 0.2;

  private final Parcel parcel;
  private final Journey journey;
  private final Variation variation;

  /** The packing with walls and fill at the ends of the variation. */
  private final Parcel varied;

  private final HeatNetwork network;
  private final List<Port.BoundaryPort> ports;
  private final FaceParts parts;
  private final List<Outside> outside;
  private final Set<String> air;
  private final List<String> changing;
  private final List<Probe> probes;
  private final int firstInner;
  private final List<TimeFunction> powers;
  private final double[] strengths;

  /**
   * Prepares a course.
   *
   * @param nominal network of the nominal parcel; that of the varied one has the same grid
   */
  Course(
      Parcel parcel, Journey journey, Variation variation, FaceParts parts, HeatNetwork nominal) {
    this.parcel = parcel;
    this.journey = journey;
    this.variation = variation;
    this.parts = parts;
    this.varied =
        parcel.at(variation.of(Factor.WALL_CONDUCTIVITY), variation.of(Factor.FILL_CONDUCTIVITY));
    this.network = varied.equals(parcel) ? nominal : nominal.withMaterialsOf(varied.layout());
    this.ports = network.boundaryPorts();
    this.outside =
        journey.legs().stream().map(leg -> new Outside(leg, ports, parts, variation)).toList();
    this.air = varied.conductivities(Orientation.LID_UP, journey.startTemperature()).keySet();
    this.changing = changing();
    List<Probe> all = new ArrayList<>(contents(parcel));
    for (Port.BoundaryPort port : ports) {
      all.add(new Probe.SurfaceMean(TransitResult.surfaceOf(port.name()), port.name()));
      all.add(new Probe.HeatFlow(TransitResult.heatThrough(port.name()), port.name()));
    }
    this.firstInner = all.size();
    for (Face face : Face.values()) {
      all.add(new Probe.At("inside " + face.label(), middleOf(parcel.cavity(), face)));
    }
    this.probes = List.copyOf(all);
    this.powers = parcel.warmers().stream().map(PlacedWarmer::power).toList();
    this.strengths =
        parcel.warmers().stream()
            .mapToDouble(w -> variation.of(Factor.WARMER_STRENGTH).of(w.warmer().strength(), 1))
            .toArray();
  }

  /** Blocks whose conductivity depends on their temperature or on how the parcel lies. */
  private List<String> changing() {
    List<String> names = new ArrayList<>();
    List<Block> blocks = network.grid().layout().blocks();
    for (int index = 0; index < blocks.size(); index++) {
      if (blocks.get(index) instanceof Block.Solid solid
          && network.grid().cellsOf(index).length > 0
          && (air.contains(solid.name()) || follows(solid.material().behaviour()))) {
        names.add(solid.name());
      }
    }
    return List.copyOf(names);
  }

  private static boolean follows(Behaviour behaviour) {
    return behaviour instanceof Behaviour.Corrected || behaviour instanceof Behaviour.Voids;
  }

  private static Point middleOf(Box box, Face face) {
    double[] middle = {box.centre().x(), box.centre().y(), box.centre().z()};
    middle[face.axis().ordinal()] = box.at(face);
    return new Point(middle[0], middle[1], middle[2]);
  }

  private static List<Probe> contents(Parcel parcel) {
    List<Probe> list = new ArrayList<>();
    for (Container cup : parcel.occupied()) {
      list.add(new Probe.Mean(TransitResult.meanOf(cup.name()), cup.animalBlock()));
      list.add(new Probe.Minimum(TransitResult.coldestOf(cup.name()), cup.animalBlock()));
      list.add(new Probe.Maximum(TransitResult.hottestOf(cup.name()), cup.animalBlock()));
    }
    for (PlacedWarmer warmer : parcel.warmers()) {
      list.add(new Probe.Mean(TransitResult.meanOf(warmer.name()), warmer.name()));
      list.add(new Probe.Maximum(TransitResult.hottestOf(warmer.name()), warmer.name()));
    }
    for (PlacedPack pack : parcel.packs()) {
      list.add(new Probe.Mean(TransitResult.meanOf(pack.name()), pack.name()));
      if (pack.pack().melts()) {
        list.add(new Probe.LiquidFraction(TransitResult.liquidOf(pack.name()), pack.name()));
      }
    }
    return list;
  }

  Parcel parcel() {
    return parcel;
  }

  Journey journey() {
    return journey;
  }

  Variation variation() {
    return variation;
  }

  HeatNetwork network() {
    return network;
  }

  List<Port.BoundaryPort> ports() {
    return ports;
  }

  FaceParts parts() {
    return parts;
  }

  List<Probe> probes() {
    return probes;
  }

  /** The planned end of a leg, which a delay of it does not move [s]. */
  double plannedEnd(int leg) {
    return journey.start(leg) + journey.legs().get(leg).duration();
  }

  /** Position among the probes of the coldest part of an animal. */
  int coldest(int cup) {
    return 3 * cup + 1;
  }

  /** Position among the probes of the hottest part of an animal. */
  int hottest(int cup) {
    return 3 * cup + 2;
  }

  /** Position among the probes of the temperature in the middle of a face of the cavity. */
  int inner(Face face) {
    return firstInner + face.ordinal();
  }

  Outside outside(int leg) {
    return outside.get(leg);
  }

  InitialState initialState() {
    return parcel.initialState(journey.startTemperature());
  }

  int inputCount() {
    return ports.size() + network.sourcePorts().size();
  }

  /** Names of the boundaries that meet the same air all the way. */
  Set<String> alike() {
    Set<String> names =
        ports.stream()
            .map(Port.BoundaryPort::name)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    for (Outside each : outside) {
      for (int port = 0; port < ports.size(); port++) {
        if (!each.meetsAirAlone(port)) {
          names.remove(ports.get(port).name());
        }
      }
    }
    return names;
  }

  /** Inputs at a time within a leg; {@code before} takes the limit from earlier times. */
  void inputs(int leg, double time, boolean before, double[] into) {
    outside.get(leg).inputs(time, before, into);
    for (int index = 0; index < powers.size(); index++) {
      into[ports.size() + index] =
          strengths[index] * Outside.value(powers.get(index), time, before);
    }
  }

  /** Kinks, jumps and multiples of an interval within a stage, its end included. */
  double[] stops(Stage stage, double interval) {
    TreeSet<Double> all = new TreeSet<>();
    addMultiples(all, interval, stage.from(), stage.to());
    List<TimeFunction> courses = new ArrayList<>(outside.get(stage.leg()).courses());
    courses.addAll(powers);
    for (TimeFunction course : courses) {
      for (double time : course.breakpoints(stage.from(), stage.to())) {
        all.add(time);
      }
    }
    all.add(stage.to());
    return all.stream().mapToDouble(Double::doubleValue).toArray();
  }

  static void addMultiples(Set<Double> all, double interval, double from, double to) {
    for (long n = (long) Math.floor(from / interval) + 1; n * interval < to; n++) {
      all.add(n * interval);
    }
  }

  /**
   * The stages of all legs.
   *
   * @param splits times within a leg, since sealing [s]
   */
  List<Stage> stages(IntFunction<Set<Double>> splits) {
    List<Stage> stages = new ArrayList<>();
    for (int leg = 0; leg < journey.legs().size(); leg++) {
      double last = journey.start(leg);
      double to = journey.start(leg + 1);
      for (double split : new TreeSet<>(splits.apply(leg)).subSet(last, false, to, false)) {
        stages.add(new Stage(leg, last, split));
        last = split;
      }
      stages.add(new Stage(leg, last, to));
    }
    return List.copyOf(stages);
  }

  /** Temperatures during a stage as long as nobody has computed any. */
  Temperatures guess(Stage stage) {
    double ambient = outside.get(stage.leg()).meanAmbient(stage.from(), stage.to());
    double inside = (ambient + journey.startTemperature()) / 2;
    double[] surfaces = new double[ports.size()];
    Arrays.fill(surfaces, ambient + SURFACE_PART * (inside - ambient));
    Map<String, Double> blocks = new LinkedHashMap<>();
    changing.forEach(block -> blocks.put(block, inside));
    return new Temperatures(surfaces, blocks, null);
  }

  /** What coefficients depend on in a field. */
  Temperatures temperatures(TemperatureField field) {
    double[] surfaces =
        ports.stream().mapToDouble(port -> field.surfaceMean(port.name())).toArray();
    Map<String, Double> blocks = new LinkedHashMap<>();
    changing.forEach(block -> blocks.put(block, field.mean(block)));
    return new Temperatures(surfaces, blocks, field);
  }

  /** Coefficients at the mean temperatures of a stage. */
  Coefficients coefficients(Stage stage, Temperatures means) {
    return frozen(
        stage.leg(),
        means,
        outside.get(stage.leg()).meanCoefficients(means.surfaces(), stage.from(), stage.to()));
  }

  /** Coefficients that are frozen at some temperatures, with given films. */
  Coefficients frozen(int leg, Temperatures now, double[] films) {
    Map<String, Double> conductivities = ofAir(leg, now);
    Map<String, Double> others = ofMeans(now);
    HeatNetwork settled = withAir(conductivities);
    if (!others.isEmpty()) {
      TemperatureField field = now.field();
      settled =
          field == null ? settled.withConductivities(others) : settled.withConductivitiesAt(field);
    }
    conductivities.putAll(others);
    return new Coefficients(settled, films, conductivities);
  }

  /** Coefficients that hold for now, in a network whose other conductivities follow temperature. */
  Coefficients live(int leg, Temperatures now, double[] films) {
    Map<String, Double> conductivities = ofAir(leg, now);
    return new Coefficients(withAir(conductivities), films, conductivities);
  }

  private HeatNetwork withAir(Map<String, Double> conductivities) {
    return conductivities.isEmpty() ? network : network.withConductivities(conductivities);
  }

  /** Conductivities of air that convects, at the mean temperatures of its blocks. */
  private Map<String, Double> ofAir(int leg, Temperatures now) {
    Orientation orientation = journey.legs().get(leg).surroundings().orientation();
    Map<String, Double> all = new LinkedHashMap<>();
    now.blocks()
        .forEach(
            (block, mean) -> {
              if (air.contains(block)) {
                all.put(block, varied.conductivities(orientation, mean).get(block));
              }
            });
    return all;
  }

  /** Conductivities that depend on temperature, at the mean temperatures of their blocks. */
  private Map<String, Double> ofMeans(Temperatures now) {
    Map<String, Double> all = new LinkedHashMap<>();
    now.blocks()
        .forEach(
            (block, mean) -> {
              if (!air.contains(block)) {
                all.put(block, material(block).conductivityAt(mean));
              }
            });
    return all;
  }

  private Material material(String block) {
    Layout layout = network.grid().layout();
    return ((Block.Solid) layout.blocks().get(layout.indexOf(block))).material();
  }
}
