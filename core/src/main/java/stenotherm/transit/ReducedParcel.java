package stenotherm.transit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.ToDoubleBiFunction;
import org.jspecify.annotations.Nullable;
import stenotherm.base.Outcome;
import stenotherm.base.ProgressListener;
import stenotherm.base.Workers;
import stenotherm.conduction.Probe;
import stenotherm.conduction.TemperatureField;
import stenotherm.journey.Journey;
import stenotherm.modal.ModalConfiguration;
import stenotherm.modal.ModalEngine;
import stenotherm.modal.ReducedModel;

/**
 * A packing reduced to a few modes: finds the coefficients of a course and runs through it, without
 * any cell. Immutable, thus thread-safe; a run leaves nothing behind.
 *
 * <p>Coefficients depend on temperatures and temperatures on coefficients: a fixed point. A run
 * first goes through the journey under the nearest settings at hand and takes the coefficients at
 * the mean temperatures of each stage; then it goes through again under those, until they hardly
 * change; a run like one that was followed before starts from the temperatures of that one. Each
 * pass leaves about a tenth of the change. Among thousands of runs a run is not gone through twice:
 * it takes the mean temperatures of a stage that are forecast when it gets there. Coefficients that
 * lie closer than {@link Search#shared} to those of a setting use that setting, which saves the
 * modes of a new one.
 */
final class ReducedParcel {
  /** Most passes under settings at hand; each costs a run. */
  private static final int MOST_NEAR = 3;

  /**
   * How closely the fixed point is searched for, and how closely runs follow.
   *
   * @param shared stages whose coefficients are no farther apart than this share a setting. As the
   *     means are found under the shared coefficients, these may be off by half as much again; see
   *     the agreement tests
   * @param sharedBefore the same in passes before the last one: a tenth of what they are off is
   *     left
   * @param passes most times that settings of a run's own are made; each costs the modes of each
   *     setting
   * @param settling when after a leg's beginning its coefficients are taken anew [s], if it lasts
   *     half as long again: surfaces, walls and fill settle one after another, ever more slowly
   * @param step longest step of runs that are read [s]
   */
  private record Search(
      double shared, double sharedBefore, int passes, List<Double> settling, double step) {
    /** For single runs. */
    static final Search USUAL =
        new Search(0.002, 0.002, 3, List.of(3600.0, 4 * 3600.0), Run.FINE_STEP);

    /** Where the effect of holding coefficients is to be measured. */
    static final Search FINE =
        new Search(
            0.002,
            0.002,
            3,
            List.of(900.0, 1800.0, 3600.0, 5400.0, 7200.0, 10_800.0, 14_400.0, 21_600.0, 32_400.0),
            Run.FINE_STEP);

    /**
     * Where states are wanted that are like those of runs, not those of one run: a setting at hand
     * is mostly near enough. Measured on five packings, settings of their own within 0.05 leave the
     * error of condensed models within 2 mK of this.
     */
    static final Search ROUGH = new Search(0.15, 0.15, 1, List.of(3600.0), Run.COARSE_STEP);

    /**
     * For thousands of runs. Measured beside settings within 0.002 and fine steps, on three
     * packings: 0.04 K at most for a gecko, 0.14 K for a frog of 4 g, a tenth of that in the mean,
     * for three quarters of the time. Where nothing is forecast, coefficients are up to 0.04 K off
     * for half of the time; with a single pass it would be 0.4 K.
     */
    static final Search QUICK = new Search(0.005, 0.02, 2, List.of(3600.0), Run.COARSE_STEP);

    /** For runs that are compared with each other. */
    Search sharing(double distance) {
      return new Search(distance, distance, passes, settling, Run.FINE_STEP);
    }
  }

  private static final double HALF_AS_LONG_AGAIN = 1.5;

  /** Fewest runs that forecasts are fitted to; there are eight weights. */
  private static final int FEWEST_FITTED = 9;

  /**
   * What one share for all conductances of a group leaves, which no coarser model sees [K; W]:
   * found beside every cell.
   */
  private static final double GROUPED = 0.002;

  /** How near settings are shared by runs that estimate errors: these hardly depend on them. */
  private static final double NEAR_FOR_ESTIMATES = 0.05;

  /** Interval of a run that stores nothing [s]. */
  private static final double NO_INTERVAL = Double.MAX_VALUE;

  private final ParcelBody body;
  private final ReducedModel model;
  private final double[] reference;
  private final List<Schedule.Setting> atHand;
  private final Search search;

  /** What a usual run meets in each stage, from which runs of the same stages start. */
  private final Map<Stage, StageForecast.Met> usual;

  /** Forecasts of the same stages; empty where the coefficients of a run are searched for. */
  private final Map<Stage, StageForecast> forecasts;

  /** What a search finds for nominal runs of some journeys. */
  private final Map<Journey, Schedule> settled;

  /**
   * Starts from a model.
   *
   * @param reference conductivities of the blocks that vary in the network of the model [W/(m K)]
   * @param atHand settings that runs may share
   */
  ReducedParcel(
      ParcelBody body, ReducedModel model, double[] reference, List<Schedule.Setting> atHand) {
    this(body, model, reference, atHand, Search.USUAL, Map.of(), Map.of(), Map.of());
  }

  private ReducedParcel(
      ParcelBody body,
      ReducedModel model,
      double[] reference,
      List<Schedule.Setting> atHand,
      Search search,
      Map<Stage, StageForecast.Met> usual,
      Map<Stage, StageForecast> forecasts,
      Map<Journey, Schedule> settled) {
    this.body = body;
    this.model = model;
    this.reference = reference.clone();
    this.atHand = List.copyOf(atHand);
    this.search = search;
    this.usual = usual;
    this.forecasts = forecasts;
    this.settled = settled;
  }

  /** The same model and settings at hand, nothing settled. */
  private ReducedParcel with(
      Search other, Map<Stage, StageForecast.Met> start, Map<Stage, StageForecast> forecast) {
    return new ReducedParcel(body, model, reference, atHand, other, start, forecast, Map.of());
  }

  ReducedModel model() {
    return model;
  }

  double[] reference() {
    return reference.clone();
  }

  List<Schedule.Setting> atHand() {
    return atHand;
  }

  /** The same model with other settings at hand. */
  ReducedParcel withAtHand(List<Schedule.Setting> others) {
    return new ReducedParcel(body, model, reference, others, search, usual, forecasts, Map.of());
  }

  /** The same model, stages sharing a setting up to another distance of their coefficients. */
  ReducedParcel sharing(double distance) {
    return with(search.sharing(distance), usual, Map.of());
  }

  /** The same model, coefficients taken anew more often. */
  ReducedParcel settlingFinely() {
    return with(Search.FINE, usual, Map.of());
  }

  /** Whether its runs search for coefficients as those of a model that is read again. */
  boolean isUsual() {
    return search.equals(Search.USUAL);
  }

  /** Whether its runs search for coefficients as those of a condensed model that is read again. */
  boolean isQuick() {
    return search.equals(Search.QUICK);
  }

  /** The same model, which need not search for the coefficients of nominal courses. */
  ReducedParcel settled(List<Course> nominal) {
    Map<Journey, Schedule> found = new HashMap<>();
    nominal.forEach(course -> found.put(course.journey(), search(course)));
    return new ReducedParcel(
        body, model, reference, atHand, search, usual, forecasts, Map.copyOf(found));
  }

  /** The modes under coefficients. */
  Schedule.Setting setting(Coefficients coefficients) {
    double[] factors = coefficients.factors(reference);
    ModalConfiguration modes = model.configuration(coefficients.films(), factors);
    return new Schedule.Setting(coefficients, modes);
  }

  /** The coefficients of a course. */
  Schedule schedule(Course course) {
    Schedule known =
        course.variation().equals(Variation.NOMINAL) ? settled.get(course.journey()) : null;
    return known == null ? search(course) : known;
  }

  /** The coefficients of a journey, all quantities nominal. */
  Schedule schedule(Journey journey) {
    return schedule(new Course(body, journey, Variation.NOMINAL));
  }

  private Schedule search(Course course) {
    List<Stage> stages = course.stages(leg -> splits(course, leg));
    List<Coefficients> wanted = new ArrayList<>();
    boolean isUsual = usual.keySet().containsAll(stages);
    for (Stage stage : stages) {
      StageForecast.Met met = isUsual ? usual.get(stage) : null;
      wanted.add(course.coefficients(stage, met == null ? course.guess(stage) : met.means()));
    }
    List<Schedule.Setting> used = List.of();
    for (int pass = 0; !isUsual && pass < MOST_NEAR; pass++) {
      List<Schedule.Setting> near = near(wanted);
      if (near.isEmpty() || near.equals(used)) {
        break;
      }
      used = near;
      goThrough(course, stages, used, wanted);
    }
    for (int pass = 1; pass <= search.passes && !areShared(wanted, used); pass++) {
      boolean isLast = pass == search.passes;
      used = own(wanted, used, isLast ? search.shared : search.sharedBefore);
      if (!isLast) {
        goThrough(course, stages, used, wanted);
      }
    }
    return new Schedule(stages, used);
  }

  /** By how much a coefficient would still change at the mean temperatures of a run. */
  double change(Course course, Schedule schedule) {
    List<Coefficients> wanted = new ArrayList<>();
    goThrough(course, schedule.stages(), schedule.settings(), wanted);
    return change(wanted, schedule);
  }

  /** The same at mean temperatures of some stages, the first ones. */
  private static double change(List<Coefficients> wanted, Schedule schedule) {
    return largest(wanted, schedule.settings(), Coefficients::change);
  }

  /** The same model, runs of a course's stages starting from the temperatures that it has there. */
  ReducedParcel startingFrom(Course course) {
    Map<Stage, StageForecast.Met> met = met(course);
    Map<Stage, StageForecast> about = new HashMap<>();
    if (forecasts.keySet().containsAll(met.keySet())) {
      met.forEach(
          (stage, there) ->
              about.put(stage, Objects.requireNonNull(forecasts.get(stage)).about(there)));
    }
    return with(search, Map.copyOf(met), Map.copyOf(about));
  }

  /** The same model, a run of a course starting from the temperatures that another has there. */
  ReducedParcel startingFrom(ReducedParcel other, Course course) {
    return with(search, Map.copyOf(other.met(course)), Map.of());
  }

  /**
   * The same model, stages of a run forecast as fitted to those of some courses that have the same
   * stages; where they are too few, nothing is forecast.
   */
  ReducedParcel forecasting(List<Course> courses, Workers workers) {
    List<Map<Stage, StageForecast.Met>> runs =
        workers.map(courses.size(), number -> met(courses.get(number))).stream()
            .filter(run -> run.keySet().equals(usual.keySet()))
            .toList();
    Map<Stage, StageForecast> fitted = new HashMap<>();
    if (runs.size() >= FEWEST_FITTED) {
      usual.forEach(
          (stage, met) ->
              fitted.put(
                  stage,
                  StageForecast.fitted(met, runs.stream().map(run -> run.get(stage)).toList())));
    }
    return with(search, usual, Map.copyOf(fitted));
  }

  /** What a course meets in each stage. */
  private Map<Stage, StageForecast.Met> met(Course course) {
    Map<Stage, StageForecast.Met> met = new HashMap<>();
    double[][] atStart = {{}};
    follow(
        course,
        engine -> regime(course, engine),
        engine -> atStart[0] = engine.nowOf(body.varying()),
        (stage, engine) ->
            met.put(
                stage,
                new StageForecast.Met(
                    atStart[0],
                    course.conditions(stage),
                    new Temperatures(engine.meanSurfaces(), engine.meanOf(body.varying())))));
    return met;
  }

  /** The coefficients of a run as it goes: those forecast for a stage when it begins. */
  private final class Forecast implements Regime {
    private final Course course;
    private final ModalEngine engine;
    private final List<Stage> stages;
    private final List<Schedule.Setting> known = new ArrayList<>(atHand);

    Forecast(Course course, ModalEngine engine, List<Stage> stages) {
      this.course = course;
      this.engine = engine;
      this.stages = stages;
    }

    @Override
    public List<Stage> stages() {
      return stages;
    }

    @Override
    public Coefficients enter(int number) {
      Stage stage = stages.get(number);
      Outside outside = course.outside(stage.leg());
      StageForecast forecast = Objects.requireNonNull(forecasts.get(stage));
      Temperatures means = forecast.means(engine.nowOf(body.varying()), course.conditions(stage));
      Coefficients wanted = course.coefficients(stage, means);
      Schedule.Setting setting = own(wanted, known, search.shared);
      engine.use(setting.modes());
      outside.use(setting.coefficients().films());
      return setting.coefficients();
    }

    @Override
    public boolean standsForLeg(int stage) {
      return false;
    }
  }

  private boolean areShared(List<Coefficients> wanted, List<Schedule.Setting> used) {
    return !used.isEmpty() && largest(wanted, used, Coefficients::distance) <= search.shared;
  }

  /** A leg has other coefficients while the parcel settles, and so has a delay. */
  private Set<Double> splits(Course course, int leg) {
    double from = course.journey().start(leg);
    double planned = course.plannedEnd(leg);
    Set<Double> splits = new HashSet<>();
    splits.add(planned);
    for (double after : search.settling) {
      if (planned - from >= HALF_AS_LONG_AGAIN * after) {
        splits.add(from + after);
      }
    }
    return splits;
  }

  /** The nearest setting at hand for each stage; empty if a stage has none. */
  private List<Schedule.Setting> near(List<Coefficients> wanted) {
    List<Schedule.Setting> near = new ArrayList<>();
    for (Coefficients each : wanted) {
      Schedule.Setting nearest = nearest(each, atHand, Double.MAX_VALUE);
      if (nearest == null) {
        return List.of();
      }
      near.add(nearest);
    }
    return near;
  }

  private static Schedule.@Nullable Setting nearest(
      Coefficients wanted, List<Schedule.Setting> among, double farthest) {
    Schedule.Setting nearest = null;
    double least = farthest;
    for (Schedule.Setting each : among) {
      double distance = each.coefficients().distance(wanted);
      if (distance <= least) {
        nearest = each;
        least = distance;
      }
    }
    return nearest;
  }

  /**
   * Settings for coefficients: those at hand, of the pass before or of an earlier stage where they
   * are near enough.
   */
  private List<Schedule.Setting> own(
      List<Coefficients> wanted, List<Schedule.Setting> before, double shared) {
    List<Schedule.Setting> known = new ArrayList<>(atHand);
    known.addAll(before);
    List<Schedule.Setting> own = new ArrayList<>();
    for (Coefficients each : wanted) {
      own.add(own(each, known, shared));
    }
    return own;
  }

  /** The nearest of the settings known, or if none is near enough another, known from then on. */
  private Schedule.Setting own(Coefficients wanted, List<Schedule.Setting> known, double shared) {
    Schedule.Setting setting = nearest(wanted, known, shared);
    if (setting == null) {
      setting = setting(wanted);
      known.add(setting);
    }
    return setting;
  }

  /** The largest measure of the coefficients wanted and used, over the stages. */
  private static double largest(
      List<Coefficients> wanted,
      List<Schedule.Setting> used,
      ToDoubleBiFunction<Coefficients, Coefficients> measure) {
    double largest = 0;
    for (int stage = 0; stage < wanted.size(); stage++) {
      Coefficients now = used.get(stage).coefficients();
      largest = Math.max(largest, measure.applyAsDouble(wanted.get(stage), now));
    }
    return largest;
  }

  /** Goes through a course and takes the coefficients at the mean temperatures of each stage. */
  private void goThrough(
      Course course,
      List<Stage> stages,
      List<Schedule.Setting> settings,
      List<Coefficients> wanted) {
    wanted.clear();
    followMeans(
        course,
        new Schedule(stages, settings),
        (stage, engine) -> wanted.add(atMeans(course, stage, engine)));
  }

  /** Coefficients at the means that an engine has over a stage. */
  private Coefficients atMeans(Course course, Stage stage, ModalEngine engine) {
    Temperatures means = new Temperatures(engine.meanSurfaces(), engine.meanOf(body.varying()));
    return course.coefficients(stage, means);
  }

  /** Goes through a course; at the end of each stage the engine has the means over it. */
  private void followMeans(Course course, Schedule schedule, BiConsumer<Stage, ModalEngine> atEnd) {
    follow(course, engine -> schedule.on(engine, course), engine -> {}, atEnd);
  }

  /** The same; something is done at the beginning of each stage, too. */
  private void follow(
      Course course,
      Function<ModalEngine, Regime> regime,
      Consumer<ModalEngine> atStart,
      BiConsumer<Stage, ModalEngine> atEnd) {
    ModalEngine engine = model.engineWithoutEstimates(course.initialState());
    new Run(course, regime.apply(engine), engine, NO_INTERVAL, Run.COARSE_STEP)
        .go(
            new Run.Visitor() {
              @Override
              public void begin() {
                engine.startMean();
                atStart.accept(engine);
              }

              @Override
              public void end(Stage stage) {
                atEnd.accept(stage, engine);
              }
            });
  }

  /**
   * The mean field of the longest stage of a journey, all quantities nominal.
   *
   * @param schedule its coefficients
   */
  TemperatureField meanField(Journey journey, Schedule schedule) {
    Stage longest = Collections.max(schedule.stages(), Comparator.comparingDouble(Stage::duration));
    List<TemperatureField> found = new ArrayList<>();
    followMeans(
        new Course(body, journey, Variation.NOMINAL),
        schedule,
        (stage, engine) -> {
          if (stage.equals(longest)) {
            found.add(engine.meanField());
          }
        });
    return found.get(0);
  }

  /** Runs through a course. */
  TransitResult run(
      Course course, double interval, Reduction reduction, int cells, ProgressListener listener) {
    Schedule schedule = schedule(course);
    ModalEngine engine = model.engineWithoutEstimates(course.initialState());
    List<Coefficients> wanted = new ArrayList<>();
    Recorder recorder =
        new Recorder(course, engine, time -> engine.moment(), interval, listener) {
          @Override
          public void begin() {
            engine.startMean();
          }

          @Override
          public void end(Stage stage) {
            wanted.add(atMeans(course, stage, engine));
          }
        };
    Run run = new Run(course, schedule.on(engine, course), engine, interval, Run.FINE_STEP);
    Outcome outcome = recorder.outcome(run);
    return recorder.result(
        outcome,
        run.coefficients(),
        new EngineChoice(cells, "", reduction, change(wanted, schedule)));
  }

  /** What is done at the start and at each stop. */
  private interface StopReader {
    /**
     * Reads the engine.
     *
     * @param stored whether runs store values at that time [s]
     */
    void at(ModalEngine engine, double time, boolean stored);
  }

  private Breathing atStops(Course course, double interval, StopReader reader) {
    ModalEngine engine = model.engineWithoutEstimates(course.initialState());
    Run run = new Run(course, regime(course, engine), engine, interval, search.step);
    run.go(
        new Run.Visitor() {
          @Override
          public void start() {
            reader.at(engine, 0, true);
          }

          @Override
          public @Nullable Outcome stop(Stage stage, double time) {
            reader.at(engine, time, Run.isStored(course, stage, time, interval));
            return null;
          }
        });
    return run.climate().breathing();
  }

  private Regime regime(Course course, ModalEngine engine) {
    List<Stage> stages = course.stages(leg -> splits(course, leg));
    return !forecasts.isEmpty() && forecasts.keySet().containsAll(stages)
        ? new Forecast(course, engine, stages)
        : schedule(course).on(engine, course);
  }

  /** The same model, for {@link #states}. */
  ReducedParcel roughly() {
    return with(Search.ROUGH, Map.of(), Map.of());
  }

  /** States such as a course meets at its stops, for a smaller model. */
  List<double[]> states(Course course, double interval) {
    List<double[]> states = new ArrayList<>();
    atStops(course, interval, (engine, time, stored) -> states.add(engine.coordinates()));
    return states;
  }

  /** A smaller model for runs like those whose states are given, with the same settings at hand. */
  ReducedParcel condensed(List<double[]> states, List<Probe> outputs, int modes) {
    return condensed(model.condensed(states, outputs, modes), Map.of(), Map.of());
  }

  /** The condensed model of this one that was stored. */
  ReducedParcel condensed(StoredCondensed.Content stored) {
    return condensed(stored.small(), Map.copyOf(stored.usual()), Map.copyOf(stored.forecasts()));
  }

  /** What of a condensed model is stored. */
  StoredCondensed.Content stored(double error) {
    return new StoredCondensed.Content(model, usual, forecasts, error);
  }

  private ReducedParcel condensed(
      ReducedModel small,
      Map<Stage, StageForecast.Met> usual,
      Map<Stage, StageForecast> forecasts) {
    ReducedParcel condensed =
        new ReducedParcel(
            body, small, reference, List.of(), Search.QUICK, usual, forecasts, Map.of());
    return condensed.withAtHand(
        atHand.stream()
            .map(each -> condensed.setting(each.coefficients()).forManyReadings())
            .toList());
  }

  /**
   * Runs through a course and reads outputs of the model at the multiples of an interval and at the
   * end and the planned end of each leg.
   *
   * @param times number of those times
   * @param positions which outputs of the model
   * @return a row for each output, a column for each time; and the air that was breathed
   */
  JourneyMeans read(Course course, double interval, int times, int[] positions) {
    double[][] values = new double[positions.length][times];
    double[] row = new double[model.outputs().size()];
    int[] column = {0};
    Breathing breathing =
        atStops(
            course,
            interval,
            (engine, time, stored) -> {
              if (stored) {
                engine.read(row);
                for (int n = 0; n < positions.length; n++) {
                  values[n][column[0]] = row[positions[n]];
                }
                column[0]++;
              }
            });
    return new JourneyMeans(values, breathing);
  }

  /**
   * Runs through a course beside coarser models.
   *
   * @return estimates of the error of each output
   */
  Map<TransitOutput, Double> errors(Course course, double interval) {
    Schedule schedule = sharing(NEAR_FOR_ESTIMATES).schedule(course);
    ModalEngine engine = model.engine(course.initialState());
    double[] row = new double[body.outputs().size()];
    new Run(course, schedule.on(engine, course), engine, interval, Run.FINE_STEP)
        .go(
            new Run.Visitor() {
              @Override
              public @Nullable Outcome stop(Stage stage, double time) {
                engine.read(row);
                return null;
              }
            });
    double[] estimates = engine.errorEstimates();
    Map<TransitOutput, Double> errors = new LinkedHashMap<>();
    for (int index = 0; index < estimates.length; index++) {
      errors.put(body.outputs().get(index), estimates[index] + GROUPED);
    }
    return errors;
  }
}
