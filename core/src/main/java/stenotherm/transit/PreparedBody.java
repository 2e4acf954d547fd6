package stenotherm.transit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CancellationException;
import org.jspecify.annotations.Nullable;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.Probe;
import stenotherm.modal.ModalEngine;
import stenotherm.modal.ReducedModel;
import stenotherm.parcel.PlacedPack;

/**
 * The grid of a packing and the reduced models on it, for all its runs. Not thread-safe.
 *
 * <p>Coefficients depend on temperatures and these on coefficients. A small model finds them by
 * running through the course under coefficients at the mean temperatures of its last passage, until
 * they hardly change. The large model then runs under those; should its own means ask for others
 * after all, it goes on from there.
 */
final class PreparedBody {
  /** Changes of coefficients from one passage of the small model to the next that are enough. */
  private static final double SCOUTING_TOLERANCE = 0.002;

  /** The same in the large one. */
  private static final double TOLERANCE = 0.02;

  /** Passages, each of which takes about nine tenths of the change that is left. */
  private static final int MOST_PASSES = 6;

  /** Legs that last longer are split [s]. */
  private static final double LONG = 6 * 3600;

  /** When after a long leg's beginning [s]: the time that walls and fill take, about. */
  private static final double SETTLING = 2 * 3600;

  /** Modes for each drive under each coefficients of its own: 8 to 11 in trials. */
  private static final int MODES_EACH = 9;

  /**
   * More expected modes than that take longer than every cell: the work of a model grows with their
   * square for each coefficients. 88 took two thirds of the full solver's time, 367 seven times it.
   */
  private static final int MOST_MODES = 150;

  private final HeatNetwork network;

  /** Names of the boundaries that meet the same air, for which the models were made. */
  private Set<String> alike = Set.of();

  /** Both keep the number of threads of the run that they were made for; it changes no result. */
  private @Nullable ReducedModel scout;

  private @Nullable ReducedModel whole;

  /** Mean temperatures of each stage that were found first, by leg and position in the leg. */
  private final Map<String, Temperatures> usual = new HashMap<>();

  PreparedBody(HeatNetwork network) {
    this.network = network;
  }

  HeatNetwork network() {
    return network;
  }

  /**
   * A course with the schedule of its coefficients.
   *
   * @param model a model that has them; null if stepping every cell takes less time
   * @param expectedModes how many modes one was expected to need
   * @param change by how much coefficients would still change
   */
  record Prepared(
      Schedule schedule, @Nullable ReducedModel model, int expectedModes, double change) {}

  /**
   * Finds the coefficients of a course.
   *
   * @param settings interval, solver and threads count
   */
  Prepared prepare(Course course, TransitSettings settings) {
    double interval = settings.interval();
    List<Stage> stages = course.stages(leg -> splits(course, leg));
    List<Temperatures> means = new ArrayList<>();
    for (int number = 0; number < stages.size(); number++) {
      Temperatures found = usual.get(key(course, stages.get(number)));
      means.add(found == null ? course.guess(stages.get(number)) : found);
    }
    Schedule schedule = Schedule.at(course, stages, means);
    if (!course.alike().equals(alike)) {
      alike = course.alike();
      scout = null;
      whole = null;
    }
    if (scout == null) {
      scout = scout(course, schedule, settings.threads());
    }
    double change = Double.POSITIVE_INFINITY;
    for (int pass = 0; pass < MOST_PASSES && change > SCOUTING_TOLERANCE; pass++) {
      ReducedModel model = extended(scout, schedule.coefficients());
      means = means(course, schedule, model, interval);
      Schedule next = Schedule.at(course, stages, means);
      change = next.change(schedule);
      schedule = next;
    }
    int expected = expectedModes(course, schedule);
    if (settings.solver() == Solver.FASTER && expected > MOST_MODES) {
      remember(course, stages, means);
      return new Prepared(schedule, null, expected, change);
    }
    if (whole == null) {
      whole = whole(course, schedule, settings.threads());
    }
    ReducedModel model = extended(whole, schedule.coefficients());
    means = means(course, schedule, model, interval);
    change = Schedule.at(course, stages, means).change(schedule);
    for (int pass = 0; pass < MOST_PASSES && change > TOLERANCE; pass++) {
      schedule = schedule.at(means, TOLERANCE);
      model = extended(model, schedule.coefficients());
      means = means(course, schedule, model, interval);
      change = Schedule.at(course, stages, means).change(schedule);
    }
    if (model.modes() > whole.modes()) {
      whole = model.withFirstAlone();
    }
    remember(course, stages, means);
    return new Prepared(schedule, model, expected, change);
  }

  private void remember(Course course, List<Stage> stages, List<Temperatures> means) {
    for (int number = 0; number < stages.size(); number++) {
      usual.putIfAbsent(key(course, stages.get(number)), means.get(number));
    }
  }

  private static int expectedModes(Course course, Schedule schedule) {
    int inOneAir = course.alike().size();
    int drives = course.inputCount() - Math.max(0, inOneAir - 1);
    return MODES_EACH * drives * different(schedule.coefficients()).size();
  }

  private static List<Coefficients> different(List<Coefficients> all) {
    List<Coefficients> different = new ArrayList<>();
    for (Coefficients each : all) {
      if (different.stream().allMatch(other -> each.change(other) > 0)) {
        different.add(each);
      }
    }
    return different;
  }

  /** A long leg has coefficients of its own while the parcel settles, and so has a delay. */
  private static Set<Double> splits(Course course, int leg) {
    double from = course.journey().start(leg);
    double planned = course.plannedEnd(leg);
    return planned - from > LONG ? Set.of(from + SETTLING, planned) : Set.of(planned);
  }

  /** The same part of the same leg has about the same temperatures in every run. */
  private static String key(Course course, Stage stage) {
    boolean late = stage.from() >= course.plannedEnd(stage.leg());
    boolean settled = stage.from() > course.journey().start(stage.leg());
    return stage.leg() + (late ? " late" : settled ? " settled" : "");
  }

  /** The small model: for the weakest and the strongest films of a first guess. */
  private static ReducedModel scout(Course course, Schedule schedule, int threads) {
    Coefficients weakest = schedule.coefficients().get(0);
    Coefficients strongest = weakest;
    for (Coefficients each : schedule.coefficients()) {
      weakest = each.sumOfFilms() < weakest.sumOfFilms() ? each : weakest;
      strongest = each.sumOfFilms() > strongest.sumOfFilms() ? each : strongest;
    }
    return builder(course, List.of(), threads)
        .scouting()
        .configuration(weakest.network(), weakest.films())
        .configuration(strongest.network(), strongest.films())
        .build();
  }

  private static ReducedModel whole(Course course, Schedule schedule, int threads) {
    ReducedModel.Builder builder = builder(course, course.probes(), threads);
    for (Coefficients each : schedule.coefficients()) {
      builder.configuration(each.network(), each.films());
    }
    return builder.build();
  }

  private static ReducedModel.Builder builder(Course course, List<Probe> probes, int threads) {
    ReducedModel.Builder builder = ReducedModel.builder(probes).threads(threads);
    Set<String> alike = course.alike();
    if (!alike.isEmpty()) {
      builder.together(alike);
    }
    for (PlacedPack pack : course.parcel().packs()) {
      builder.startsApart(pack.name());
    }
    return builder;
  }

  private static ReducedModel extended(ReducedModel model, List<Coefficients> coefficients) {
    ReducedModel extended = model;
    for (Coefficients each : coefficients) {
      extended = extended.with(each.network(), each.films());
    }
    return extended;
  }

  /** Goes through a course and takes the mean temperatures of each stage. */
  private static List<Temperatures> means(
      Course course, Schedule schedule, ReducedModel model, double interval) {
    if (Thread.currentThread().isInterrupted()) {
      throw new CancellationException("interrupted");
    }
    ModalEngine engine = model.engineWithoutEstimates(course.initialState());
    List<Temperatures> means = new ArrayList<>();
    new Run(course, schedule, engine, interval)
        .go(
            new Run.Visitor() {
              @Override
              public void begin() {
                engine.startMean();
              }

              @Override
              public void end() {
                means.add(course.temperatures(engine.meanField()));
              }
            });
    return means;
  }
}
