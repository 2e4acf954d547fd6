package stenotherm.transit;

import static stenotherm.transit.TransitOutput.OutputQuantity.COLDEST;
import static stenotherm.transit.TransitOutput.OutputQuantity.HEAT_FLOW;
import static stenotherm.transit.TransitOutput.OutputQuantity.HOTTEST;
import static stenotherm.transit.TransitOutput.OutputQuantity.INSIDE;
import static stenotherm.transit.TransitOutput.OutputQuantity.LIQUID_FRACTION;
import static stenotherm.transit.TransitOutput.OutputQuantity.MEAN;
import static stenotherm.transit.TransitOutput.OutputQuantity.PLACE;
import static stenotherm.transit.TransitOutput.OutputQuantity.SURFACE;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stenotherm.base.Face;
import stenotherm.base.Orientation;
import stenotherm.base.Suggestions;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.InitialState;
import stenotherm.conduction.Port;
import stenotherm.conduction.Probe;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Point;
import stenotherm.material.Material;
import stenotherm.modal.ReducedModel;
import stenotherm.parcel.Container;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedPack;
import stenotherm.parcel.PlacedWarmer;

/**
 * What all runs of a packing share: where it meets the outside, what is read of it, and which of
 * its blocks change their conductivity from run to run or from stage to stage. Immutable.
 */
final class ParcelBody {
  /**
   * A block whose conductivity differs between minus and plus this position counts as uncertain.
   */
  private static final double END = 1;

  /** Where only names are wanted, not conductivities [K]. */
  private static final double ANY_TEMPERATURE = 293.15;

  private final Parcel parcel;
  private final FaceParts parts;
  private final List<Port.BoundaryPort> ports;

  /** Names of the heat sources, in the order of the inputs after the ports. */
  private final List<String> sources;

  /** Places beyond the usual ones whose temperatures are read, by name. */
  private final Map<String, Point> places;

  private final List<TransitOutput> outputs;
  private final List<Probe> probes;
  private final List<Probe> means;

  /** Found once for each start temperature: warmers take a while to be followed on a table. */
  private final Map<Double, AtSealing> sealed = new ConcurrentHashMap<>();

  private final ClimatePlan climate;
  private final Set<String> air;
  private final Set<String> airOfVessels;

  /** The nominal material of each solid block. */
  private final Map<String, Material> solids;

  private final List<String> varying;

  private ParcelBody(
      Parcel parcel,
      FaceParts parts,
      List<Port.BoundaryPort> ports,
      List<String> sources,
      List<String> varying,
      Map<String, Point> places,
      Map<TransitOutput, Probe> read) {
    this.parcel = parcel;
    this.places = places;
    this.parts = parts;
    this.ports = ports;
    this.sources = sources;
    this.air = air(parcel);
    this.airOfVessels =
        parcel.containers().stream().map(Container::airBlock).collect(Collectors.toSet());
    this.solids = solids(parcel);
    this.varying = varying;
    this.outputs = List.copyOf(read.keySet());
    this.probes = List.copyOf(read.values());
    this.means = probes.stream().filter(probe -> probe instanceof Probe.Mean).toList();
    this.climate = new ClimatePlan(parcel, this::mean, this::source);
  }

  /** Describes a packing by its cells. */
  static ParcelBody of(
      Parcel parcel, FaceParts parts, HeatNetwork network, Map<String, Point> places) {
    List<Port.BoundaryPort> ports = network.boundaryPorts();
    Map<TransitOutput, Probe> outputs = findOutputs(parcel, ports);
    places.forEach(
        (name, place) -> put(outputs, PLACE, name, output -> new Probe.At(output, place)));
    return new ParcelBody(
        parcel,
        parts,
        ports,
        network.sourcePorts().stream().map(Port::name).toList(),
        findVarying(parcel, network),
        places,
        outputs);
  }

  /** Describes a packing by its reduced model. */
  static ParcelBody of(Parcel parcel, FaceParts parts, ReducedModel model) {
    List<Port.BoundaryPort> ports = model.boundaryPorts();
    return new ParcelBody(
        parcel,
        parts,
        ports,
        model.inputs().stream().skip(ports.size()).map(Port::name).toList(),
        model.varying(),
        Map.of(),
        findOutputs(parcel, ports));
  }

  /** The same packing, of which a model reads what its scope says. */
  ParcelBody within(ModelScope scope) {
    if (!scope.isMeansAlone()) {
      return this;
    }
    Map<TransitOutput, Probe> some = new LinkedHashMap<>();
    for (int index = 0; index < outputs.size(); index++) {
      if (scope.reads(outputs.get(index).quantity())) {
        some.put(outputs.get(index), probes.get(index));
      }
    }
    return new ParcelBody(parcel, parts, ports, sources, varying, places, some);
  }

  /** Whether places by name are read. */
  boolean hasPlaces() {
    return !places.isEmpty();
  }

  /** The means of blocks and the places that were asked for, in the order of {@link #outputs}. */
  List<TransitOutput> meansAndPlaces() {
    return outputs.stream()
        .filter(
            output ->
                output.quantity() == MEAN
                    || (output.quantity() == PLACE && places.containsKey(output.of())))
        .toList();
  }

  /** The places inside a cup that its animal can reach. */
  static List<TransitOutput> placesInReach(String cup) {
    return Arrays.stream(Face.values())
        .map(face -> new TransitOutput(PLACE, place(cup, face)))
        .toList();
  }

  /** The probe of an output. */
  Probe probe(TransitOutput output) {
    return probes.get(position(output.quantity(), output.of()));
  }

  private static Set<String> air(Parcel parcel) {
    return Set.copyOf(parcel.conductivities(Orientation.LID_UP, ANY_TEMPERATURE).keySet());
  }

  private static List<String> findVarying(Parcel parcel, HeatNetwork network) {
    Set<String> air = air(parcel);
    Map<String, Material> low = solids(parcel.at(-END, -END));
    Map<String, Material> high = solids(parcel.at(END, END));
    List<String> names = new ArrayList<>();
    solids(parcel)
        .forEach(
            (name, material) -> {
              boolean uncertain =
                  low.getOrDefault(name, material).conductivity()
                      != high.getOrDefault(name, material).conductivity();
              boolean hasCells =
                  network.grid().cellsOf(network.grid().layout().indexOf(name)).length > 0;
              if (hasCells && (uncertain || air.contains(name) || material.followsTemperature())) {
                names.add(name);
              }
            });
    return List.copyOf(names);
  }

  /** The material of each solid block, by its name, with walls and fill as a course has them. */
  @SuppressWarnings("ReferenceEquality") // the same object saves the work, an equal one is no fault
  Map<String, Material> solidsOf(Parcel varied) {
    return varied == parcel ? solids : solids(varied);
  }

  private static Map<String, Material> solids(Parcel parcel) {
    Map<String, Material> solids = new LinkedHashMap<>();
    for (Block block : parcel.layout().blocks()) {
      block.asSolid().ifPresent(solid -> solids.put(solid.name(), solid.material()));
    }
    return solids;
  }

  private static Map<TransitOutput, Probe> findOutputs(
      Parcel parcel, List<Port.BoundaryPort> ports) {
    Map<TransitOutput, Probe> all = new LinkedHashMap<>();
    for (Container cup : parcel.occupied()) {
      String block = cup.animalBlock();
      put(all, MEAN, cup.name(), name -> new Probe.Mean(name, block));
      put(all, COLDEST, cup.name(), name -> new Probe.Minimum(name, block));
      put(all, HOTTEST, cup.name(), name -> new Probe.Maximum(name, block));
      for (Face face : Face.values()) {
        Point place = justInside(parcel.room(cup), face);
        put(all, PLACE, place(cup.name(), face), name -> new Probe.At(name, place));
      }
    }
    for (PlacedWarmer warmer : parcel.warmers()) {
      put(all, MEAN, warmer.name(), name -> new Probe.Mean(name, warmer.name()));
      put(all, HOTTEST, warmer.name(), name -> new Probe.Maximum(name, warmer.name()));
    }
    for (PlacedPack pack : parcel.packs()) {
      put(all, MEAN, pack.name(), name -> new Probe.Mean(name, pack.name()));
      if (pack.pack().melts() && pack.oneBody().isEmpty()) {
        put(all, LIQUID_FRACTION, pack.name(), name -> new Probe.LiquidFraction(name, pack.name()));
      }
    }
    for (String block : parcel.climateBlocks()) {
      put(all, MEAN, block, name -> new Probe.Mean(name, block));
    }
    for (Port.BoundaryPort port : ports) {
      put(all, SURFACE, port.name(), name -> new Probe.SurfaceMean(name, port.name()));
      put(all, HEAT_FLOW, port.name(), name -> new Probe.HeatFlow(name, port.name()));
    }
    for (Face face : Face.values()) {
      put(all, INSIDE, face.label(), name -> new Probe.At(name, middleOf(parcel.cavity(), face)));
    }
    return all;
  }

  /** Makes the probe of an output from its name. */
  private interface ProbeOf {
    Probe named(String name);
  }

  private static void put(
      Map<TransitOutput, Probe> all,
      TransitOutput.OutputQuantity quantity,
      String of,
      ProbeOf probe) {
    TransitOutput output = new TransitOutput(quantity, of);
    all.put(output, probe.named(output.words()));
  }

  private static Point middleOf(Box box, Face face) {
    double[] middle = {box.centre().x(), box.centre().y(), box.centre().z()};
    middle[face.axis().ordinal()] = box.at(face);
    return new Point(middle[0], middle[1], middle[2]);
  }

  /** A place inside a cup that an animal can reach. */
  static String place(String cup, Face face) {
    return cup + " " + face.label();
  }

  /** Middle of a face, a little inside: on the wall itself the temperature jumps. */
  private static Point justInside(Box box, Face face) {
    Point middle = middleOf(box, face);
    Point centre = box.centre();
    return new Point(
        middle.x() + JUST_INSIDE * (centre.x() - middle.x()),
        middle.y() + JUST_INSIDE * (centre.y() - middle.y()),
        middle.z() + JUST_INSIDE * (centre.z() - middle.z()));
  }

  /** Part of the way to the centre [-]. */
  private static final double JUST_INSIDE = 0.02;

  Parcel parcel() {
    return parcel;
  }

  FaceParts parts() {
    return parts;
  }

  List<Port.BoundaryPort> ports() {
    return ports;
  }

  /** All that is read, in the order of a row of a run's history. */
  List<TransitOutput> outputs() {
    return outputs;
  }

  /** The means of blocks, which what burns and breathes inside follows. */
  List<Probe> means() {
    return means;
  }

  List<Probe> probes() {
    return probes;
  }

  /** Position of an output in a row; -1 if there is none. */
  int position(TransitOutput.OutputQuantity quantity, String of) {
    return outputs.indexOf(new TransitOutput(quantity, of));
  }

  /** Positions of outputs in a row; refuses those that are not read. */
  int[] positions(List<TransitOutput> wanted) {
    int[] positions = wanted.stream().mapToInt(outputs::indexOf).toArray();
    for (int index = 0; index < positions.length; index++) {
      if (positions[index] < 0) {
        throw Suggestions.unknown(
            "output",
            wanted.get(index).words(),
            outputs.stream().map(TransitOutput::words).toList());
      }
    }
    return positions;
  }

  /** Blocks whose conductivity may change, in the order of the factors. */
  List<String> varying() {
    return varying;
  }

  /** Values of the blocks whose conductivity may change, by name. */
  Map<String, Double> named(double[] values) {
    Map<String, Double> named = new LinkedHashMap<>();
    for (int block = 0; block < values.length; block++) {
      named.put(varying.get(block), values[block]);
    }
    return named;
  }

  /** A network with the conductivity of its air taken from those of the blocks that may change. */
  HeatNetwork withAir(HeatNetwork network, double[] conductivities) {
    Map<String, Double> ofAir = named(conductivities);
    ofAir.keySet().retainAll(air);
    return ofAir.isEmpty() ? network : network.withConductivities(ofAir);
  }

  /** Tells whether a block is air that convects. */
  boolean isAir(String block) {
    return air.contains(block);
  }

  /** Tells whether a block is the air in a vessel. */
  boolean isAirOfVessel(String block) {
    return airOfVessels.contains(block);
  }

  /** Position of a heat source among all inputs; -1 if there is none. */
  private int source(String name) {
    int position = sources.indexOf(name);
    return position < 0 ? -1 : ports.size() + position;
  }

  /** Position of a block among the means. */
  private int mean(String block) {
    List<Probe> all = means;
    for (int index = 0; index < all.size(); index++) {
      if (((Probe.Mean) all.get(index)).block().equals(block)) {
        return index;
      }
    }
    throw new IllegalStateException("the mean of '" + block + "' is not read");
  }

  /**
   * The state of a packing when it is sealed.
   *
   * @param state temperatures
   * @param conversions part of each warmer's iron that has burnt, by the warmer's name
   */
  record AtSealing(InitialState state, Map<String, Double> conversions) {}

  /** The state at sealing, all but packs and warmers that burn already at one temperature [K]. */
  AtSealing atSealing(double start) {
    return sealed.computeIfAbsent(
        start,
        room -> {
          Map<String, Double> conversions = new LinkedHashMap<>();
          for (PlacedWarmer warmer : parcel.warmers()) {
            conversions.put(warmer.name(), warmer.atSealing(room).conversion());
          }
          return new AtSealing(parcel.initialState(room), conversions);
        });
  }

  /** What burns and breathes inside, its outputs positions among {@link #means}. */
  ClimatePlan climate() {
    return climate;
  }

  /** Where the means of blocks lie among the outputs of an engine, all of them or the means. */
  int[] positionsOfMeans(List<Probe> ofEngine) {
    return IntStream.range(0, ofEngine.size())
        .filter(index -> ofEngine.get(index) instanceof Probe.Mean)
        .toArray();
  }

  /** Heat sources of milliwatts: all but the warmers and packs that melt. */
  List<String> weakSources() {
    int strong = parcel.warmers().size() + climate.melters.size();
    return sources.subList(strong, sources.size());
  }

  int inputCount() {
    return ports.size() + sources.size();
  }
}
