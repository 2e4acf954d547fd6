package stenotherm.transit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import org.jspecify.annotations.Nullable;
import stenotherm.base.Checks;
import stenotherm.base.ListenerGuard;
import stenotherm.base.ProgressListener;
import stenotherm.base.Workers;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.Probe;
import stenotherm.conduction.TemperatureField;
import stenotherm.modal.ReducedModel;
import stenotherm.parcel.PlacedPack;
import stenotherm.parcel.PlacedWarmer;

/**
 * Reduces a packing for the journeys that it is to be sent on.
 *
 * <p>A small model, or one that is there, finds the mean temperature of each cell over the longest
 * stage of the first journey. The network takes its conductivities at these, so that the factors of
 * blocks stay near 1. The basis of the large model spans the coefficients that the journeys ask for
 * and those with walls, fill and films at the ends of their ranges.
 */
final class ReducedParcelBuilder {
  /** Coefficients no farther apart than this need no resolvents of their own in the basis. */
  private static final double SPANNED = 0.12;

  /** The same for reading outputs, which costs less. */
  private static final double READ = 0.03;

  /**
   * Positions in their ranges that walls, fill, air in cups and films take beyond the nominal ones.
   */
  private static final double[] ENDS = {-1, 1, -0.5, 0.5};

  /**
   * The same where means alone are read, which are smoother: measured, the other two change means
   * by up to 0.017 K, a tenth of what condensing leaves.
   */
  private static final double[] ENDS_OF_MEANS = {-1, 1};

  /** Parts of the work, by the time they take: done after each. */
  private static final double SCOUTED = 0.35;

  private static final double FOUND = 0.4;
  private static final double AT_MEANS = 0.5;
  private static final double SPANNED_ALL = 0.9;

  private final ParcelBody body;
  private final HeatNetwork nominal;
  private final List<Course> courses;
  private final Set<String> inOneAir;
  private final ModelScope scope;
  private final @Nullable ReducedParcel known;
  private final Workers workers;
  private final ListenerGuard listener;

  /**
   * Starts from a packing on its journeys.
   *
   * @param nominal the network of the packing, materials at the temperatures where they state their
   *     conductivity
   * @param known a model of the same packing for the same courses, on this grid or another one,
   *     that takes the place of the small model; null if there is none
   * @param listener told between the phases what part of the work is done, of 1; may stop
   */
  ReducedParcelBuilder(
      ParcelBody body,
      HeatNetwork nominal,
      List<Course> courses,
      ModelScope scope,
      @Nullable ReducedParcel known,
      Workers workers,
      ListenerGuard listener) {
    this.known = known;
    this.body = body;
    this.nominal = nominal;
    this.courses = courses;
    this.inOneAir = ParcelModel.inOneAir(courses);
    this.scope = scope;
    this.workers = workers;
    this.listener = listener;
  }

  /**
   * Makes the model.
   *
   * @throws CancellationException if the listener stopped it or the thread was interrupted: looked
   *     for between the phases
   */
  ReducedParcel build() {
    requireNotInterrupted();
    ReducedParcel scout = known == null ? scout() : known;
    report(SCOUTED);
    if (scope == ModelScope.ROUGH_MEANS) {
      return scout;
    }
    List<Coefficients> found = new ArrayList<>();
    List<Schedule> scouted = new ArrayList<>();
    for (Course course : courses) {
      requireNotInterrupted();
      Schedule schedule = scout.schedule(course.journey());
      schedule.settings().forEach(each -> found.add(each.coefficients()));
      scouted.add(schedule);
    }
    double[] reference = new double[body.varying().size()];
    report(FOUND);
    HeatNetwork network = atMeans(scout, scouted.get(0), reference);
    report(AT_MEANS);
    ReducedModel.Builder builder = builder(network, body.probes());
    if (scope.isMeansAlone() && !body.hasPlaces()) {
      // places that were asked for may be those of quick sensors
      builder.means();
    }
    List<Coefficients> spanned = new ArrayList<>();
    for (Coefficients each : found) {
      addUnlessNear(each, SPANNED, spanned);
    }
    double[] ends =
        scope.isNominalAlone() ? new double[0] : scope.isMeansAlone() ? ENDS_OF_MEANS : ENDS;
    for (double position : ends) {
      addUnlessNear(end(spanned.get(0), position, position, position), SPANNED, spanned);
      addUnlessNear(end(spanned.get(0), position, -position, -position), SPANNED, spanned);
    }
    for (Coefficients each : spanned) {
      builder.spanning(each.films(), each.factors(reference));
    }
    // what is inside depends on conductivities alone
    double[] films = spanned.get(0).films();
    List<Coefficients> read = new ArrayList<>();
    spanned.forEach(each -> read.add(new Coefficients(films, each.conductivities())));
    for (Coefficients each : found) {
      addUnlessNear(new Coefficients(films, each.conductivities()), READ, read);
    }
    for (double position : ends) {
      // one by one: an edge between two of them depends on the ratio of both
      addUnlessNear(end(spanned.get(0), position, 0, 0), READ, read);
      addUnlessNear(end(spanned.get(0), 0, position, 0), READ, read);
      addUnlessNear(end(spanned.get(0), 0, 0, position), READ, read);
    }
    for (Coefficients each : read.subList(spanned.size(), read.size())) {
      builder.reading(each.factors(reference));
    }
    ReducedParcel reduced = new ReducedParcel(body, builder.build(), reference, List.of());
    report(SPANNED_ALL);
    reduced = reduced.withAtHand(spanned.stream().map(reduced::setting).toList());
    List<Schedule.Setting> used = new ArrayList<>();
    for (Course course : courses) {
      requireNotInterrupted();
      for (Schedule.Setting each : reduced.schedule(course).settings()) {
        if (used.stream().noneMatch(other -> other.coefficients().equals(each.coefficients()))) {
          used.add(each.forManyReadings());
        }
      }
    }
    return reduced.withAtHand(used).settled(courses);
  }

  private void report(double part) {
    requireNotInterrupted();
    if (listener.progress(part, 1) == ProgressListener.Signal.STOP) {
      throw new CancellationException("stopped by the listener while a reduced model was made");
    }
  }

  static void requireNotInterrupted() {
    Checks.notInterrupted("while a reduced model was made");
  }

  private static void addUnlessNear(
      Coefficients added, double distance, List<Coefficients> others) {
    if (others.stream().noneMatch(other -> other.distance(added) <= distance)) {
      others.add(added);
    }
  }

  private ReducedModel.Builder builder(HeatNetwork network, List<Probe> probes) {
    ReducedModel.Builder builder =
        ReducedModel.builder(network, probes).varying(body.varying()).workers(workers);
    if (!inOneAir.isEmpty()) {
      builder.together(inOneAir);
    }
    builder.weak(body.weakSources());
    for (PlacedPack pack : body.parcel().packs()) {
      builder.startsApart(pack.name());
    }
    for (PlacedWarmer warmer : body.parcel().warmers()) {
      if (warmer.burnsBeforeSealing()) {
        builder.startsApart(warmer.name());
      }
    }
    return builder;
  }

  /** The small model, for the weakest and the strongest films of a first guess. */
  private ReducedParcel scout() {
    List<Coefficients> guesses = new ArrayList<>();
    for (Course course : courses) {
      for (int leg = 0; leg < course.journey().legs().size(); leg++) {
        double start = course.journey().start(leg);
        Stage whole = new Stage(leg, start, course.plannedEnd(leg));
        guesses.add(course.coefficients(whole, course.guess(whole)));
      }
    }
    Coefficients weakest = guesses.get(0);
    Coefficients strongest = weakest;
    for (Coefficients each : guesses) {
      weakest = each.sumOfFilms() < weakest.sumOfFilms() ? each : weakest;
      strongest = each.sumOfFilms() > strongest.sumOfFilms() ? each : strongest;
    }
    double[] reference = weakest.conductivities();
    HeatNetwork network = nominal.withConductivities(body.named(reference));
    ReducedModel.Builder builder = builder(network, body.means()).scouting();
    for (Coefficients each : List.of(weakest, strongest)) {
      builder.spanning(each.films(), each.factors(reference));
    }
    ReducedParcel scout = new ReducedParcel(body, builder.build(), reference, List.of());
    List<Coefficients> apart = new ArrayList<>();
    for (Coefficients each : guesses) {
      addUnlessNear(each, SPANNED, apart);
    }
    return scout.withAtHand(apart.stream().map(scout::setting).toList());
  }

  /**
   * The network with the conductivity of each cell at its mean temperature over the longest stage
   * of the first journey.
   *
   * @param schedule coefficients of that journey
   * @param reference where to put the conductivities of the blocks that vary [W/(m K)]
   */
  private HeatNetwork atMeans(ReducedParcel scout, Schedule schedule, double[] reference) {
    Course course = courses.get(0);
    TemperatureField field = scout.meanField(course.journey(), schedule);
    double[] means = body.varying().stream().mapToDouble(field::mean).toArray();
    System.arraycopy(course.conductivities(0, means), 0, reference, 0, reference.length);
    return body.withAir(nominal.withConductivitiesAt(field), reference);
  }

  /**
   * Coefficients with walls, fill and the air in cups elsewhere in their ranges, and the films with
   * walls and fill.
   */
  private Coefficients end(Coefficients usual, double ofWalls, double ofFill, double ofCupAir) {
    Course course = courses.get(0);
    Variation variation =
        Variation.NOMINAL
            .with(Factor.WALL_CONDUCTIVITY, ofWalls)
            .with(Factor.FILL_CONDUCTIVITY, ofFill)
            .with(Factor.CUP_AIR, ofCupAir);
    double[] temperatures = new double[body.varying().size()];
    Arrays.fill(temperatures, course.journey().startTemperature());
    double[] there = new Course(body, course.journey(), variation).conductivities(0, temperatures);
    double[] here = course.conductivities(0, temperatures);
    double[] conductivities = usual.conductivities().clone();
    for (int block = 0; block < here.length; block++) {
      conductivities[block] *= there[block] / here[block];
    }
    double[] films = usual.films().clone();
    double factor = Factor.FILM_FACTORS.at(ofWalls == ofFill ? ofWalls : 0, 1);
    for (int port = 0; port < films.length; port++) {
      films[port] *= factor;
    }
    return new Coefficients(films, conductivities);
  }
}
