package stenotherm.transit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;
import stenotherm.air.StackFlow;
import stenotherm.base.Orientation;
import stenotherm.base.TimeFunction;
import stenotherm.conduction.InitialState;
import stenotherm.conduction.Port;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Surroundings;
import stenotherm.material.Material;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;

/**
 * A parcel on a journey under one variation, for any engine: what acts on it at which time, and the
 * coefficients that follow from temperatures. Has no cells. It remembers the films last used and
 * the kinks of each stage, so each run needs its own.
 */
final class Course {
  /** First guess of (surface - air) over (inside - air) [-]: assumed. */
  private static final double SURFACE_PART = 0.2;

  private final ParcelBody body;
  private final Journey journey;
  private final Variation variation;

  /** The packing with walls and fill as the variation has them. */
  private final Parcel varied;

  /** The materials of {@link ParcelBody#varying}; null for air that convects. */
  private final @Nullable Material[] materials;

  /** Factor on the conductivity of the air in vessels [-]. */
  private final double cupAir;

  private final Map<Orientation, List<StackFlow.OpeningAtHeight>> openings = new HashMap<>();
  private final @Nullable AirPaths[] airPaths;
  private final List<Outside> outside = new ArrayList<>();
  private final List<TimeFunction> powers;
  private final double[] strengths;

  /** Found once for each stage: a run is gone through several times. */
  private final Map<Stage, double[]> kinksOf = new HashMap<>();

  Course(ParcelBody body, Journey journey, Variation variation) {
    this.body = body;
    this.journey = journey;
    this.variation = variation;
    this.airPaths = new AirPaths[journey.legs().size()];
    Parcel parcel = body.parcel();
    double ofWalls = variation.of(Factor.WALL_CONDUCTIVITY);
    double ofFill = variation.of(Factor.FILL_CONDUCTIVITY);
    this.varied = ofWalls == 0 && ofFill == 0 ? parcel : parcel.at(ofWalls, ofFill);
    this.cupAir = Factor.CUP_AIRS.at(variation.of(Factor.CUP_AIR), 1);
    Map<String, Material> solids = body.solidsOf(varied);
    this.materials =
        body.varying().stream()
            .map(block -> body.isAir(block) ? null : solids.get(block))
            .toArray(Material[]::new);
    List<MetAir> met = MetAir.of(journey, variation);
    for (Leg leg : journey.legs()) {
      outside.add(new Outside(leg, met.get(outside.size()), body.ports(), body.parts(), variation));
    }
    this.powers = parcel.warmers().stream().map(PlacedWarmer::prescribedPower).toList();
    this.strengths = parcel.warmers().stream().mapToDouble(variation::power).toArray();
  }

  ParcelBody body() {
    return body;
  }

  Journey journey() {
    return journey;
  }

  Variation variation() {
    return variation;
  }

  /** The packing with walls and fill as the variation has them. */
  Parcel varied() {
    return varied;
  }

  /** The planned end of a leg, which a delay of it does not move [s]. */
  double plannedEnd(int leg) {
    return journey.start(leg) + journey.legs().get(leg).duration();
  }

  /** How gases pass the walls in a leg; found once for all passes through the journey. */
  AirPaths airPaths(int leg) {
    AirPaths found = airPaths[leg];
    if (found == null) {
      Surroundings around = journey.legs().get(leg).surroundings();
      double ambient = outside.get(leg).meanAmbient(journey.start(leg), plannedEnd(leg));
      List<StackFlow.OpeningAtHeight> there =
          openings.computeIfAbsent(
              around.orientation(), lying -> AirPaths.openings(varied, lying, variation));
      double usual = (ambient + journey.startTemperature()) / 2;
      found = AirPaths.of(varied, there, around.pressure(), usual);
      airPaths[leg] = found;
    }
    return found;
  }

  /** How many numbers {@link #conditions} has. */
  static final int CONDITIONS = 7;

  /**
   * What the mean temperatures of a stage depend on beside those at its beginning: the mean ambient
   * of its first tenth, of its first half and of all of it [K], the mean strength of the warmers
   * over the nominal one [-], and where conductivities and films lie in their ranges [-].
   */
  double[] conditions(Stage stage) {
    Outside there = outside.get(stage.leg());
    double from = stage.from();
    return new double[] {
      there.meanAmbient(from, from + stage.duration() / 10),
      there.meanAmbient(from, from + stage.duration() / 2),
      there.meanAmbient(from, stage.to()),
      Arrays.stream(strengths).average().orElse(0),
      variation.of(Factor.WALL_CONDUCTIVITY),
      variation.of(Factor.FILL_CONDUCTIVITY),
      variation.of(Factor.SURFACE_FILM),
    };
  }

  Outside outside(int leg) {
    return outside.get(leg);
  }

  /** The state at sealing. */
  ParcelBody.AtSealing atSealing() {
    return body.atSealing(journey.startTemperature());
  }

  InitialState initialState() {
    return atSealing().state();
  }

  /** Names of the boundaries that meet nothing but the air on the whole journey. */
  Set<String> inOneAir() {
    Set<String> names = new LinkedHashSet<>();
    for (int port = 0; port < body.ports().size(); port++) {
      int position = port;
      if (outside.stream().allMatch(each -> each.meetsAirAlone(position))) {
        names.add(body.ports().get(port).name());
      }
    }
    return names;
  }

  /**
   * What is prescribed at a time within a leg, 0 for other sources of heat; {@code before} takes
   * the limit from earlier times.
   */
  void inputs(int leg, double time, boolean before, double[] into) {
    Arrays.fill(into, body.ports().size(), into.length, 0);
    outside.get(leg).inputs(time, before, into);
    for (int index = 0; index < strengths.length; index++) {
      into[body.ports().size() + index] =
          strengths[index] * Outside.value(powers.get(index), time, before);
    }
  }

  /**
   * Kinks, jumps, multiples of an interval and the leg's planned end within a stage, the stage's
   * end included.
   */
  double[] stops(Stage stage, double interval) {
    double[] kinks = kinksOf.computeIfAbsent(stage, this::findKinks);
    double[] all = new double[kinks.length + (int) (stage.duration() / interval) + 2];
    int count = 0;
    long multiple = (long) Math.floor(stage.from() / interval) + 1;
    for (double kink : kinks) {
      for (; multiple * interval < kink; multiple++) {
        all[count++] = multiple * interval;
      }
      if (multiple * interval == kink) {
        multiple++;
      }
      all[count++] = kink;
    }
    return Arrays.copyOf(all, count);
  }

  private double[] findKinks(Stage stage) {
    Set<Double> all = new TreeSet<>();
    List<TimeFunction> courses = new ArrayList<>(outside.get(stage.leg()).courses());
    courses.addAll(powers);
    for (TimeFunction course : courses) {
      for (double time : course.breakpoints(stage.from(), stage.to())) {
        all.add(time);
      }
    }
    double planned = plannedEnd(stage.leg());
    if (planned > stage.from() && planned < stage.to()) {
      all.add(planned);
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

  /** First guess of the mean temperatures of a stage. */
  Temperatures guess(Stage stage) {
    double ambient = outside.get(stage.leg()).meanAmbient(stage.from(), stage.to());
    double inside = (ambient + journey.startTemperature()) / 2;
    double[] surfaces = new double[body.ports().size()];
    Arrays.fill(surfaces, ambient + SURFACE_PART * (inside - ambient));
    double[] blocks = new double[materials.length];
    Arrays.fill(blocks, inside);
    return new Temperatures(surfaces, blocks);
  }

  /** Coefficients at the mean temperatures of a stage. */
  Coefficients coefficients(Stage stage, Temperatures means) {
    double[] films =
        outside.get(stage.leg()).meanCoefficients(means.surfaces(), stage.from(), stage.to());
    return new Coefficients(films, conductivities(stage.leg(), means.blocks()));
  }

  /**
   * Conductivities of the blocks that vary [W/(m K)].
   *
   * @param temperatures mean of each of these blocks [K]
   */
  double[] conductivities(int leg, double[] temperatures) {
    Orientation orientation = journey.legs().get(leg).surroundings().orientation();
    double[] all = new double[temperatures.length];
    for (int block = 0; block < all.length; block++) {
      Material material = materials[block];
      all[block] =
          material == null
              ? ofAir(body.varying().get(block), orientation, temperatures[block])
              : material.conductivityAt(temperatures[block]);
    }
    return all;
  }

  private double ofAir(String block, Orientation orientation, double temperature) {
    Double found = varied.conductivities(orientation, temperature).get(block);
    if (found == null) {
      throw new IllegalStateException("'" + block + "' is no air");
    }
    return body.isAirOfVessel(block) ? cupAir * found : found;
  }

  /** Mean temperature of each boundary and of each block that varies [K], in a field. */
  Temperatures temperatures(stenotherm.conduction.TemperatureField field) {
    double[] surfaces =
        body.ports().stream()
            .map(Port.BoundaryPort::name)
            .mapToDouble(field::surfaceMean)
            .toArray();
    double[] blocks = body.varying().stream().mapToDouble(field::mean).toArray();
    return new Temperatures(surfaces, blocks);
  }
}
