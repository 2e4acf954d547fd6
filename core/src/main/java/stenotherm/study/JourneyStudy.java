package stenotherm.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.function.Predicate;
import stenotherm.animal.Tolerance;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.ListenerGuard;
import stenotherm.base.ProgressListener;
import stenotherm.base.Times;
import stenotherm.journey.Journey;
import stenotherm.parcel.Container;
import stenotherm.parcel.Parcel;
import stenotherm.transit.CondensedModel;
import stenotherm.transit.JourneyMeans;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.TransitResult;
import stenotherm.transit.Variation;

/**
 * Runs a packing through many journeys that differ in what is uncertain.
 *
 * <p>Points are Sobol's, scrambled anew for each replicate. Results are counted as they come:
 * memory does not depend on their number, and results have the same bits for any number of threads.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class JourneyStudy {
  /**
   * From sealing on, while what the model leaves out and its numerical error come into effect, to
   * be evenly more [s]: assumed. At sealing all has the temperature that was stated.
   */
  private static final double COMING_INTO_EFFECT = Times.HOUR;

  private final Parcel parcel;
  private final double[] times;
  private final Function<Variation, JourneyMeans> run;
  private final double opening;
  private final Uncertainties uncertainties;
  private final double[][] correction;
  private final double[][] hotter;

  /**
   * Starts from what runs a journey.
   *
   * @param correction what is added to each computed temperature [K]: a row for each animal
   * @param hotter how much hotter the hottest place in reach is than each animal [K], likewise
   */
  private JourneyStudy(
      Parcel parcel,
      double[] times,
      Function<Variation, JourneyMeans> run,
      double opening,
      Uncertainties uncertainties,
      double[][] correction,
      double[][] hotter) {
    this.parcel = parcel;
    this.times = times;
    this.run = run;
    this.opening = opening;
    this.uncertainties = uncertainties;
    this.correction = correction;
    this.hotter = hotter;
    if (parcel.occupied().isEmpty()) {
      throw new InvalidInputException(
          "packing '" + parcel.name() + "'",
          "has no animal in it, so that there is nothing to judge");
    }
  }

  /**
   * A study on a condensed model.
   *
   * @param parcel the packing of the model
   * @param model the model; its journey may last longer than until the planned opening, to follow
   *     delays
   * @param opening the planned opening, since sealing [s]
   * @param uncertainties what is uncertain
   * @param correction what is added to the computed temperature of each animal at each time of the
   *     model [K], as the difference to finer grids in the nominal case: a row for each animal
   * @param hotter how much hotter the hottest place that each animal can reach is than the animal
   *     [K], in the nominal case: a row for each animal, a column for each time of the model
   * @return the study
   * @throws InvalidInputException if there is no animal, or a correction has another shape
   */
  public static JourneyStudy of(
      Parcel parcel,
      CondensedModel model,
      double opening,
      Uncertainties uncertainties,
      double[][] correction,
      double[][] hotter) {
    Checks.given("parcel", parcel);
    Checks.given("uncertainties", uncertainties);
    double[] times = Checks.given("model", model).times();
    return new JourneyStudy(
        parcel,
        times,
        model::run,
        opening,
        uncertainties,
        copy("correction", correction, model),
        copy("hottest places", hotter, model));
  }

  /**
   * Finds how much hotter than each animal the hottest place is that it can reach.
   *
   * @param nominal the nominal run
   * @return difference to the animal's mean temperature [K]: a row for each animal, a column for
   *     each time of the run
   */
  public static double[][] hotter(TransitResult nominal) {
    List<double[]> all = new ArrayList<>();
    for (Container cup : Checks.given("nominal run", nominal).parcel().occupied()) {
      double[] above = nominal.hottestPlace(cup.name());
      double[] mean = nominal.mean(cup.name());
      for (int row = 0; row < above.length; row++) {
        above[row] -= mean[row];
      }
      all.add(above);
    }
    return all.toArray(new double[0][]);
  }

  private static double[][] copy(String field, double[][] values, CondensedModel model) {
    boolean fits = values.length == model.cups().size();
    for (double[] row : values) {
      fits &= row.length == model.times().length;
    }
    if (!fits) {
      throw new InvalidInputException(
          field, "must have a row for each animal and a column for each time");
    }
    return Arrays.stream(values).map(double[]::clone).toArray(double[][]::new);
  }

  /**
   * A study on a whole model, run by run: far slower, to hold the other one against.
   *
   * @param model the model
   * @param journey the journey, which may last longer than until the planned opening
   * @param opening the planned opening, since sealing [s]
   * @param uncertainties what is uncertain
   * @return the study
   * @throws InvalidInputException if there is no animal
   */
  public static JourneyStudy direct(
      ParcelModel model, Journey journey, double opening, Uncertainties uncertainties) {
    Parcel parcel = Checks.given("model", model).parcel();
    Checks.given("uncertainties", uncertainties);
    double[] times = model.storedTimes(journey);
    return new JourneyStudy(
        parcel,
        times,
        variation -> model.journeyMeans(journey, variation),
        opening,
        uncertainties,
        new double[parcel.occupied().size()][times.length],
        new double[parcel.occupied().size()][times.length]);
  }

  /**
   * Judges one run.
   *
   * @param variation where the uncertain quantities lie
   * @return how the animals fared
   * @throws CancellationException if an interrupt stopped it
   * @throws IllegalStateException if the run failed
   */
  public Fate fate(Variation variation) {
    JourneyMeans means = run(variation, 0);
    return judge().fate(means.temperatures(), means.breathing().breach());
  }

  private Judge judge() {
    return new Judge(tolerances(parcel), times, opening, hotter);
  }

  /**
   * Judges temperatures, as if the air always sufficed.
   *
   * @param temperatures as {@link #temperatures} gives them [K]: a row for each occupied cup, a
   *     column for each time of the model
   * @return how the animals fared
   */
  public Fate fate(double[][] temperatures) {
    return judge().fate(temperatures, Double.POSITIVE_INFINITY);
  }

  /**
   * Runs one journey.
   *
   * @param variation where the uncertain quantities lie
   * @return mean temperature of each animal, corrected [K]: a row for each occupied cup, a column
   *     for each time of the model
   * @throws CancellationException if an interrupt stopped it
   * @throws IllegalStateException if the run failed
   */
  public double[][] temperatures(Variation variation) {
    return run(variation, 0).temperatures();
  }

  /** One run, temperatures corrected, and shifted from an hour after sealing on [K]. */
  private JourneyMeans run(Variation variation, double shift) {
    JourneyMeans means = run.apply(variation);
    double[][] temperatures = means.temperatures();
    for (int animal = 0; animal < temperatures.length; animal++) {
      for (int row = 0; row < times.length; row++) {
        double inEffect = Math.min(1, times[row] / COMING_INTO_EFFECT);
        temperatures[animal][row] += correction[animal][row] + shift * inEffect;
      }
    }
    return means;
  }

  /**
   * Judges a run as a study does.
   *
   * @param parcel the packing
   * @param times times, ascending from 0 [s]
   * @param means the run
   * @param opening the planned opening, since sealing [s]
   * @return how the animals fared, apart from hot places that they can reach
   */
  public static Fate fate(Parcel parcel, double[] times, JourneyMeans means, double opening) {
    return fate(parcel, times, means, opening, new double[parcel.occupied().size()][times.length]);
  }

  /**
   * Judges a run as a study does.
   *
   * @param parcel the packing
   * @param times times, ascending from 0 [s]
   * @param means the run
   * @param opening the planned opening, since sealing [s]
   * @param hotter how much hotter the hottest place that each animal can reach is than the animal
   *     [K]: a row for each animal, a column for each time, see {@link #hotter}
   * @return how the animals fared
   */
  public static Fate fate(
      Parcel parcel, double[] times, JourneyMeans means, double opening, double[][] hotter) {
    return new Judge(tolerances(parcel), times, opening, hotter)
        .fate(means.temperatures(), means.breathing().breach());
  }

  /**
   * Averages temperatures over a span before each time, or since the first time where less has
   * passed. Between the times they are linear.
   *
   * @param times times, ascending [s]
   * @param values temperature at each [K]
   * @param span the span [s]
   * @return the running mean at each time [K]
   * @throws InvalidInputException if there is no time, times do not ascend, there is not one value
   *     for each, or the span is not above 0
   */
  public static double[] runningMeans(double[] times, double[] values, double span) {
    Checks.given("times", times);
    Checks.given("values", values);
    if (times.length == 0 || times.length != values.length) {
      throw new InvalidInputException(
          "running means",
          times.length + " times and " + values.length + " values: needs one each");
    }
    for (int row = 1; row < times.length; row++) {
      if (!(times[row] > times[row - 1])) {
        throw new InvalidInputException(
            "times of running means", "row " + (row + 1) + ": must be later than the row before");
      }
    }
    Checks.positive("span of running means", span, "s");
    return Judge.runningMeans(times, values, span);
  }

  /** Tolerance of each animal. */
  static List<Tolerance> tolerances(Parcel parcel) {
    return parcel.occupied().stream()
        .map(cup -> cup.occupant().orElseThrow().animal().tolerance())
        .toList();
  }

  /**
   * The same study with other uncertainties.
   *
   * @param others what is uncertain instead
   * @return the changed study
   */
  public JourneyStudy with(Uncertainties others) {
    Checks.given("uncertainties", others);
    return new JourneyStudy(parcel, times, run, opening, others, correction, hotter);
  }

  /**
   * Runs the journeys.
   *
   * @param settings how many
   * @param listener told how many journeys of how many are done, on any of the threads but on one
   *     at a time; may stop. What it throws is thrown here as it is
   * @return odds, quantiles and bands
   * @throws CancellationException if the listener or an interrupt stopped it
   * @throws IllegalStateException if a run failed
   */
  public StudyResult run(StudySettings settings, ProgressListener listener) {
    return run(settings, List.of(), listener);
  }

  /**
   * A look at the first journeys of a study.
   *
   * @param points points of each replicate after which to look, a power of two
   * @param isEnough tells by the odds of staying within until opening, of the journeys so far,
   *     whether these are enough
   */
  public record InterimLook(int points, Predicate<Odds> isEnough) {}

  /**
   * Runs the journeys, and only the first of them where these tell enough. The same journeys come
   * first, and the decision has the same bits, for any number of threads.
   *
   * @param settings how many at most
   * @param looks when to look, ascending; those after the last journey are left out
   * @param listener as for all journeys; the number told last is that of the journeys run
   * @return odds, quantiles and bands
   * @throws CancellationException if the listener or an interrupt stopped it
   * @throws IllegalStateException if a run failed
   */
  public StudyResult run(
      StudySettings settings, List<InterimLook> looks, ProgressListener listener) {
    Work work = new Work(settings, listener);
    int done = 0;
    for (InterimLook look : looks) {
      if (look.points < settings.points()) {
        StudySettings few = settings.withPoints(look.points);
        work.run(few, done);
        done = look.points;
        StudyResult soFar = work.result(few);
        if (look.isEnough.test(soFar.within())) {
          return soFar;
        }
      }
    }
    work.run(settings, done);
    return work.result(settings);
  }

  /**
   * Runs the journeys one by one and keeps how each went, for comparisons journey by journey.
   *
   * @param settings how many
   * @return how the animals fared in each, replicate by replicate; other studies with as many
   *     uncertain quantities have the same points in the same places
   * @throws CancellationException if an interrupt stopped it
   * @throws IllegalStateException if a run failed
   */
  public List<Fate> fates(StudySettings settings) {
    return fates(settings, Checks.given("settings", settings).replicates(), few -> false);
  }

  /**
   * Runs the journeys one by one, and only the first replicates where these tell enough. The same
   * journeys come first for any number of threads.
   *
   * @param settings how many
   * @param first replicates after which to look, 1 to all
   * @param isEnough tells by how the animals fared in these, whether they are enough
   * @return how the animals fared in each journey that was run, replicate by replicate
   * @throws InvalidInputException if the number of replicates is out of its range
   * @throws CancellationException if an interrupt stopped it
   * @throws IllegalStateException if a run failed
   */
  public List<Fate> fates(StudySettings settings, int first, Predicate<List<Fate>> isEnough) {
    Checks.given("settings", settings);
    if (first < 1 || first > settings.replicates()) {
      throw new InvalidInputException(
          "first replicates", first + " must be within 1 to " + settings.replicates());
    }
    Fate[] fates = new Fate[settings.journeys()];
    Judge judge = judge();
    Taker taker =
        (worker, replicate, index, point, means) ->
            fates[replicate * settings.points() + index] =
                judge.fate(means.temperatures(), means.breathing().breach());
    each(settings, 0, first, 0, JourneyStudy::requireNotInterrupted, taker);
    Checks.notInterrupted("between runs");
    List<Fate> few = List.of(Arrays.copyOf(fates, first * settings.points()));
    if (first == settings.replicates() || isEnough.test(few)) {
      return few;
    }
    each(settings, first, settings.replicates(), 0, JourneyStudy::requireNotInterrupted, taker);
    Checks.notInterrupted("between runs");
    return List.of(fates);
  }

  /**
   * Runs the journeys one by one and keeps what each is judged by.
   *
   * @param settings how many
   * @return a trace of each, in the order of {@link #fates}
   * @throws CancellationException if an interrupt stopped it
   * @throws IllegalStateException if a run failed
   */
  public List<Trace> traces(StudySettings settings) {
    Trace[] traces = new Trace[Checks.given("settings", settings).journeys()];
    each(
        settings,
        0,
        JourneyStudy::requireNotInterrupted,
        (worker, replicate, index, point, means) ->
            traces[replicate * settings.points() + index] = Trace.of(means, hotter));
    Checks.notInterrupted("between runs");
    return List.of(traces);
  }

  /**
   * Judges a trace of this study, or of one whose journey has the same hours.
   *
   * @param trace the trace
   * @return how the animals fared; a trace does not know when air first fell short, which is told
   *     as at sealing
   */
  public Fate fate(Trace trace) {
    return new Judge(tolerances(parcel), times, opening, trace.hotter())
        .fate(trace.temperatures(), trace.hasEnoughAir() ? Double.POSITIVE_INFINITY : 0);
  }

  /** What is done with a run. */
  private interface Taker {
    /**
     * Takes a run.
     *
     * @param worker number of the thread
     * @param replicate number of the replicate
     * @param index number of the point in it
     * @param point where the uncertain quantities lie, 0 to 1 each; valid during the call
     * @param means what came out
     */
    void take(int worker, int replicate, int index, double[] point, JourneyMeans means);
  }

  /** Looks whether runs go on. */
  private interface Going {
    /**
     * Throws if they are to stop.
     *
     * @param isInterrupted whether whoever asked for them is interrupted
     * @throws CancellationException if they are to stop
     */
    void require(boolean isInterrupted);
  }

  /** Of runs that no listener watches. */
  private static void requireNotInterrupted(boolean isInterrupted) {
    if (isInterrupted) {
      throw new CancellationException("interrupted between runs");
    }
  }

  /** Runs the points of all replicates from one on. */
  private void each(StudySettings settings, int from, Going going, Taker taker) {
    each(settings, 0, settings.replicates(), from, going, taker);
  }

  /** Runs the points from one on, of some replicates. */
  private void each(
      StudySettings settings, int first, int end, int from, Going going, Taker taker) {
    Thread caller = Thread.currentThread();
    SobolPoints any = new SobolPoints(uncertainties.count(), settings.seed(), first);
    settings
        .workers()
        .run(
            end - first,
            (worker, task) -> {
              int replicate = first + task;
              SobolPoints points = any.replicate(settings.seed(), replicate);
              double[] point = new double[uncertainties.count()];
              for (int index = from; index < settings.points(); index++) {
                going.require(caller.isInterrupted());
                points.point(index, point);
                Draft draft = uncertainties.at(point);
                taker.take(worker, replicate, index, point, run(draft.variation(), draft.shift()));
              }
            });
  }

  /** The journeys of one call. */
  private final class Work implements Taker {
    private final StudySettings settings;
    private final ListenerGuard listener;
    private final AtomicInteger done = new AtomicInteger();
    private final AtomicBoolean stopped = new AtomicBoolean();
    private final Tally[] tallies;
    private final Margins[] margins;
    private final Judge judge;

    Work(StudySettings settings, ProgressListener listener) {
      this.settings = Checks.given("settings", settings);
      this.listener = new ListenerGuard(listener);
      this.judge = judge();
      this.tallies = new Tally[Math.min(settings.workers().threads(), settings.replicates())];
      this.margins = new Margins[settings.replicates()];
      Arrays.setAll(margins, replicate -> none());
    }

    /** Runs the points from one on. */
    void run(StudySettings some, int from) {
      try {
        each(some, from, this::requireGoing, this);
      } catch (CancellationException stop) {
        listener.passOn();
        // a run that looks for the interrupt itself does not know how many there were
        requireGoing(Thread.currentThread().isInterrupted());
        throw stop;
      }
    }

    private void requireGoing(boolean isInterrupted) {
      if (isInterrupted || stopped.get()) {
        throw new CancellationException(
            (stopped.get() ? "stopped by the listener" : "interrupted")
                + " after "
                + done.get()
                + " of "
                + settings.journeys()
                + " journeys");
      }
    }

    private Margins none() {
      return new Margins(uncertainties.count(), settings.journeys());
    }

    private Tally tally() {
      double end = times[times.length - 1];
      int hours = (int) Math.floor(Times.toHours(end - opening) + 1e-9);
      return new Tally(
          settings.replicates(), hours, correction.length, times.length, Times.toHours(end));
    }

    @Override
    public void take(int worker, int replicate, int index, double[] point, JourneyMeans means) {
      if (tallies[worker] == null) {
        tallies[worker] = tally();
      }
      Fate fate = judge.fate(means.temperatures(), means.breathing().breach());
      tallies[worker].add(replicate, fate, means, opening);
      margins[replicate].add(point, fate);
      report();
    }

    private void report() {
      // counted where it is told, lest a later count is told first
      synchronized (listener) {
        if (listener.progress(done.incrementAndGet(), settings.journeys())
            == ProgressListener.Signal.STOP) {
          stopped.set(true);
        }
      }
    }

    /** What came out so far, when so many points are done. */
    StudyResult result(StudySettings settings) {
      requireGoing(Thread.currentThread().isInterrupted());
      Tally all = tally();
      for (Tally each : tallies) {
        if (each != null) {
          all.addAll(each);
        }
      }
      Margins sum = none();
      for (Margins each : margins) {
        sum.addAll(each);
      }
      return new StudyResult(parcel, times, opening, settings, all, sum, uncertainties);
    }
  }
}
