package stenotherm.decision;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import stenotherm.ambient.FaceFilms;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Source;
import stenotherm.base.Suggestions;
import stenotherm.base.TimeFunction;
import stenotherm.grid.Point;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Place;
import stenotherm.journey.Surroundings;
import stenotherm.parcel.Container;
import stenotherm.parcel.Parcel;
import stenotherm.transit.CondensedModel;
import stenotherm.transit.Factor;
import stenotherm.transit.ModelScope;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.TransitOutput;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;

/**
 * A packing without its animals that stands alone and upright on a hard floor in still air, while
 * loggers record: made ready for many runs, so that a fit takes seconds.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class TestBox {
  /** The surroundings that are assumed. */
  public static final Source SURROUNDINGS =
      Source.assumed(
          "the box stood alone, lid up, on a hard floor in still air out of the sun, and all in it"
              + " had one temperature when it was closed");

  /** More rows of a trace would cost time and tell nothing new. */
  static final int MOST_ROWS = 100;

  /** Time between stored values [s], in short traces. */
  private static final double INTERVAL = 300;

  /** Most stored values of a run. */
  private static final int MOST_STORED = 600;

  /** Runs from which the model learns. */
  private static final int LEARNING = 24;

  /** How far those runs spread, in stated ranges. */
  private static final double SPREAD = 2;

  private final List<LoggerQuantity> quantities;
  private final List<LoggerSensor> sensors;
  private final List<String> unfitted;
  private final double duration;
  private final CondensedModel model;

  private TestBox(
      List<LoggerQuantity> quantities,
      LoggerTrace trace,
      List<String> unfitted,
      CondensedModel model) {
    this.quantities = quantities;
    this.sensors = trace.sensors();
    this.duration = trace.duration();
    this.unfitted = unfitted;
    this.model = model;
  }

  /**
   * Makes a box ready for traces like one: of the same sensors, and as long.
   *
   * @param packing the packing; its animals stay outside
   * @param trace the trace
   * @param walls whether the conductivity of the walls is fitted as well; else it is held
   * @param settings mesh, solver and threads of the model
   * @return the box
   * @throws InvalidInputException if a sensor is in no cup of the packing or outside the box, the
   *     settings step every cell, so that each run would take seconds, or nothing is left to fit
   * @throws CancellationException if an interrupt stopped it
   */
  public static TestBox of(
      Parcel packing, LoggerTrace trace, boolean walls, TransitSettings settings) {
    Checks.given("trace", trace);
    Parcel parcel = unmeasured(Checks.given("packing", packing).withoutAnimals());
    if (ParcelModel.stepsEveryCell(settings)) {
      throw new InvalidInputException(
          "settings", "step every cell, so that each of hundreds of runs would take seconds");
    }
    List<LoggerQuantity> quantities = LoggerQuantity.of(parcel, walls);
    if (quantities.isEmpty()) {
      throw new InvalidInputException(
          "packing '" + parcel.name() + "'",
          "has no fill, no open seams and no warmer, so that nothing is left to fit but the walls;"
              + " ask for these");
    }
    Map<String, Point> places = new LinkedHashMap<>();
    List<TransitOutput> outputs = new ArrayList<>();
    for (LoggerSensor sensor : trace.sensors()) {
      if (sensor.spot() instanceof SensorSpot.AtPoint at) {
        places.put(sensor.name(), at.point());
      } else if (sensor.spot() instanceof SensorSpot.InCup in) {
        requireCup(in.cup(), parcel);
      }
      outputs.add(sensor.spot().output(sensor.name()));
    }
    double interval = Math.max(INTERVAL, trace.duration() / MOST_STORED);
    TransitSettings stored =
        new TransitSettings(
            settings.mesh(), interval, settings.stepping(), settings.solver(), settings.workers());
    Journey journey = journey(outside(trace), trace.duration(), start(trace));
    ParcelModel whole =
        ParcelModel.withPlaces(parcel, List.of(journey), stored, ModelScope.MEANS, places);
    return new TestBox(
        quantities,
        trace,
        unfitted(parcel, walls),
        CondensedModel.of(whole, journey, spread(quantities), outputs).smooth());
  }

  /** A strength found in the box holds whatever bench stands behind the warmer. */
  private static Parcel unmeasured(Parcel parcel) {
    return parcel.withWarmers(
        parcel.warmers().stream().map(each -> each.with(each.warmer().unmeasured())).toList());
  }

  private static void requireCup(String cup, Parcel parcel) {
    List<String> names = parcel.containers().stream().map(Container::name).toList();
    if (!names.contains(cup)) {
      throw Suggestions.unknown("cup of a sensor", cup, names);
    }
  }

  /** Runs over the quantities and the films outside, each at one of three positions in turn. */
  private static List<Variation> spread(List<LoggerQuantity> quantities) {
    List<Factor> factors = new ArrayList<>(List.of(Factor.SURFACE_FILM));
    quantities.forEach(each -> factors.add(each.factor()));
    List<Variation> all = new ArrayList<>();
    for (int run = 0; run < LEARNING; run++) {
      Variation variation = Variation.NOMINAL;
      int rest = 5 * run;
      for (Factor factor : factors) {
        double most = factor == Factor.SURFACE_FILM ? 1 : SPREAD;
        variation = variation.with(factor, most * (rest % 3 - 1));
        rest /= 3;
      }
      all.add(variation);
    }
    return all;
  }

  /** What a user might look for in vain, in sentences. */
  private static List<String> unfitted(Parcel parcel, boolean walls) {
    List<Factor> there =
        LoggerQuantity.of(parcel, walls).stream().map(each -> each.factor()).toList();
    List<String> all = new ArrayList<>();
    if (!there.contains(Factor.FILL_CONDUCTIVITY)) {
      all.add("No fill is fitted: nothing but air is between walls and contents.");
    }
    if (!there.contains(Factor.SEAMS)) {
      all.add("No leakage is fitted: all seams are taped.");
    }
    if (!there.contains(Factor.WARMER_STRENGTH)) {
      all.add("No strength is fitted: there is no warmer.");
    }
    return all;
  }

  /** The first guess of the temperature at closing: the mean of the first readings inside [K]. */
  static double start(LoggerTrace trace) {
    double sum = 0;
    for (int sensor = 0; sensor < trace.sensors().size(); sensor++) {
      sum += trace.inside(sensor)[0];
    }
    return sum / trace.sensors().size();
  }

  /** The air outside by means of rows, and by the first and the last reading at the ends. */
  private static TimeFunction outside(LoggerTrace trace) {
    double[] outside = trace.outside();
    double[] times = LoggerTrace.means(trace.times(), MOST_ROWS);
    double[] means = LoggerTrace.means(outside, MOST_ROWS);
    if (times.length == outside.length) {
      return TimeFunction.table(times, means);
    }
    double[] allTimes = new double[times.length + 2];
    double[] all = new double[times.length + 2];
    System.arraycopy(times, 0, allTimes, 1, times.length);
    System.arraycopy(means, 0, all, 1, times.length);
    allTimes[times.length + 1] = trace.duration();
    all[0] = outside[0];
    all[times.length + 1] = outside[outside.length - 1];
    return TimeFunction.table(allTimes, all);
  }

  private static Journey journey(TimeFunction outside, double duration, double start) {
    Leg leg =
        new Leg(
            "test",
            new Place("test", ZoneOffset.UTC),
            duration,
            Surroundings.of(outside, 0, FaceFilms.indoors()),
            SURROUNDINGS);
    return new Journey(LocalDateTime.of(2000, 1, 1, 0, 0), start, List.of(leg));
  }

  /**
   * Computes what the sensors would show at the times of a trace, without errors of their own.
   *
   * @param trace the trace: its times and the air outside count, not its readings inside
   * @param start temperature of all in the box when it is closed [K]
   * @param variation where the uncertain quantities lie
   * @return temperature of each sensor at each time [K]
   * @throws InvalidInputException if a temperature or position is out of its range, or the trace is
   *     longer than the one that the box was made ready for
   * @throws CancellationException if an interrupt stopped it
   * @throws IllegalStateException if the run failed
   */
  public double[][] readings(LoggerTrace trace, double start, Variation variation) {
    requireAsLong(trace);
    CondensedModel on = model.on(journey(outside(trace), duration, start));
    double[][] values = on.run(variation).temperatures();
    double[] stored = on.times();
    double[] times = trace.times();
    for (int sensor = 0; sensor < values.length; sensor++) {
      TimeFunction course = TimeFunction.table(stored, values[sensor]);
      values[sensor] = Arrays.stream(times).map(course::at).toArray();
    }
    return values;
  }

  private void requireAsLong(LoggerTrace trace) {
    if (trace.duration() > duration || !trace.sensors().equals(sensors)) {
      throw new InvalidInputException(
          "trace", "is longer or of other sensors than the one that the box was made ready for");
    }
  }

  /**
   * Fits the quantities to a trace.
   *
   * @param trace a trace of the sensors that the box was made ready for
   * @return the fit
   * @throws InvalidInputException if its sensors are others, or no values come near it
   * @throws CancellationException if an interrupt stopped it
   * @throws IllegalStateException if a run failed
   */
  public LoggerFit fit(LoggerTrace trace) {
    requireAsLong(trace);
    return LoggerFit.of(this, trace);
  }

  /**
   * Returns what is fitted.
   *
   * @return the quantities; unmodifiable
   */
  public List<LoggerQuantity> quantities() {
    return quantities;
  }

  List<LoggerSensor> sensors() {
    return sensors;
  }

  /** What is not fitted, and why. */
  List<String> unfitted() {
    return unfitted;
  }

  /**
   * Returns how far the quick model lies from the one of the whole box.
   *
   * @return the largest difference of a reading over some runs [K]
   */
  public double error() {
    return model.error();
  }
}
