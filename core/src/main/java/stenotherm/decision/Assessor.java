package stenotherm.decision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import stenotherm.base.Checks;
import stenotherm.base.End;
import stenotherm.base.InvalidInputException;
import stenotherm.base.ListenerGuard;
import stenotherm.base.ProgressListener;
import stenotherm.journey.Journey;
import stenotherm.parcel.Container;
import stenotherm.parcel.Parcel;
import stenotherm.study.Fate;
import stenotherm.study.JourneyStudy;
import stenotherm.study.Odds;
import stenotherm.study.StudyResult;
import stenotherm.study.StudySettings;
import stenotherm.study.Uncertainties;
import stenotherm.transit.CondensedModel;
import stenotherm.transit.Factor;
import stenotherm.transit.JourneyMeans;
import stenotherm.transit.ModelScope;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.TransitResult;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;

/**
 * Judges a packing on a journey by the odds.
 *
 * <p>Nominal runs on three grids tell what finer ones would change. The middle one of them is
 * condensed, and many journeys are run on it that differ in everything uncertain; the correction by
 * the grids is added to each, and its error is uncertain as well. All quantities at their worse
 * ends at once are two more of them: a figure of stress, not the verdict. A packing that is clearly
 * out is followed in a quarter of the journeys only, one whose level hangs on their number in twice
 * as many.
 *
 * <p>A listener is told what part of the whole is done, of 1: several times while models are made,
 * then after each journey; on the calling thread or one of those that share the work, one call at a
 * time. What it throws reaches the caller as it is.
 *
 * <p>Experimental. Not thread-safe: one object belongs to one thread at a time; another one gets an
 * {@link IllegalStateException}.
 */
public final class Assessor {
  /** Widths of the three grids, as scales of the width that the settings ask for. */
  static final double COARSE = 4;

  private static final double MEDIUM = 2 * Math.sqrt(2);
  private static final double FINE = 2;

  /** Runs that a condensed model learns from and is checked by. */
  private static final int LEARNING = 24;

  /** The strongest warmers in the warmest air. */
  private static final Variation WARMEST =
      Variation.NOMINAL
          .with(Factor.AMBIENT, End.HIGH)
          .with(Factor.WARMER_STRENGTH, End.HIGH)
          .with(Factor.RATING_BENCH, End.HIGH);

  /** All ranges half as wide again. */
  private static final double WIDER = 1.5;

  /**
   * Points of each replicate with wider ranges, and with ranges as stated where cells are stepped.
   */
  private static final int FEW_POINTS = 8;

  private static final int LEAST_POINTS = 2;

  /** Times as many journeys where the level hangs on their number. */
  private static final int MORE = 2;

  private final Parcel parcel;
  private final Journey journey;
  private final Journey held;
  private final List<Journey> span;
  private final AssessmentSettings settings;
  private final Map<Double, ParcelModel> models = new HashMap<>();
  private final AtomicReference<@Nullable Thread> user = new AtomicReference<>();
  private @Nullable Prepared prepared;

  /**
   * Builds nothing yet: the first run on a mesh builds its model.
   *
   * @param parcel the packing
   * @param journey the journey; the ambient of each of its legs must cover the longest hold as well
   * @param settings mesh, time steps and solver, how long a delay to follow, how many journeys
   * @throws InvalidInputException if no container holds an animal
   */
  public Assessor(Parcel parcel, Journey journey, AssessmentSettings settings) {
    this(
        parcel,
        Checks.given("journey", journey),
        List.of(journey.held(Checks.given("settings", settings).longestHold())),
        settings);
  }

  /** Judges journeys that are spanned by some; these are followed as they are, without a hold. */
  Assessor(Parcel parcel, List<Journey> span, AssessmentSettings settings) {
    this(parcel, Checks.notEmpty("journeys", span).get(0), span, settings);
  }

  private Assessor(
      Parcel parcel, Journey journey, List<Journey> span, AssessmentSettings settings) {
    if (Checks.given("parcel", parcel).occupied().isEmpty()) {
      throw new InvalidInputException(
          "packing '" + parcel.name() + "'",
          "has no animal in it, so that there is nothing to judge");
    }
    this.parcel = parcel;
    this.journey = journey;
    this.held = span.get(0);
    this.span = List.copyOf(span);
    this.settings = settings;
  }

  /** Does something while no other thread uses this: what it has found so far is not guarded. */
  private <T> T alone(Supplier<T> work) {
    Thread caller = Thread.currentThread();
    Thread before = user.compareAndExchange(null, caller);
    if (before != null && before != caller) {
      throw new IllegalStateException(
          "an assessor belongs to one thread at a time, and '"
              + before.getName()
              + "' uses this one; make one for each thread");
    }
    try {
      return work.get();
    } finally {
      if (before == null) {
        user.set(null);
      }
    }
  }

  /**
   * Judges a packing.
   *
   * @param parcel the packing
   * @param journey the journey; the ambient of its last leg must cover the longest hold as well
   * @param settings mesh, time steps and solver, how long a delay to follow, how many journeys
   * @param listener told what part of the work is done, of 1, on the calling thread or one that
   *     shares the work, one call at a time; may stop
   * @return the assessment
   * @throws stenotherm.base.InvalidInputException if an ambient does not cover its time, or no
   *     container holds an animal
   * @throws CancellationException if the listener or an interrupt stopped it
   * @throws IllegalStateException if a run failed; the message says why
   */
  public static Assessment assess(
      Parcel parcel, Journey journey, AssessmentSettings settings, ProgressListener listener) {
    return new Assessor(parcel, journey, settings).assess(listener);
  }

  /**
   * Judges the packing.
   *
   * @param listener told what part of the work is done, of 1, on the calling thread or one that
   *     shares the work, one call at a time; may stop
   * @return the assessment
   * @throws InvalidInputException if an ambient does not cover its time
   * @throws CancellationException if the listener or an interrupt stopped it
   * @throws IllegalStateException if a run failed; the message says why
   */
  public Assessment assess(ProgressListener listener) {
    return alone(new Work(listener)::assess);
  }

  /**
   * Goes through one typical journey, all quantities nominal, on the coarsest grid: an answer
   * within a second. {@link #assess} uses the same grid later.
   *
   * @return how the animals fare in it
   * @throws InvalidInputException if an ambient does not cover its time
   * @throws CancellationException if an interrupt stopped it
   * @throws IllegalStateException if the run failed
   */
  public FirstLook firstLook() {
    return firstLook(held);
  }

  /** The same on another of the journeys that are spanned, or on one between them. */
  FirstLook firstLook(Journey typical) {
    return alone(() -> look(typical));
  }

  private FirstLook look(Journey typical) {
    ParcelModel model = model(COARSE);
    JourneyMeans run = model.journeyMeans(typical, Variation.NOMINAL);
    double[][] means = run.temperatures();
    double[] times = model.storedTimes(typical);
    double coldest = Double.POSITIVE_INFINITY;
    double hottest = Double.NEGATIVE_INFINITY;
    for (int animal = 0; animal < means.length; animal++) {
      Container cup = parcel.occupied().get(animal);
      double span = cup.occupant().orElseThrow().animal().tolerance().averaging();
      double[] running = JourneyStudy.runningMeans(times, means[animal], span);
      for (int row = 0; row < times.length && times[row] <= journey.duration(); row++) {
        coldest = Math.min(coldest, running[row]);
        hottest = Math.max(hottest, running[row]);
      }
    }
    Fate fate = JourneyStudy.fate(parcel, times, run, journey.duration());
    return new FirstLook(coldest, hottest, fate);
  }

  /**
   * Finds how much longer any one leg may last in the nominal case, all later legs coming later by
   * as much, before an animal leaves what it tolerates until the later opening. Delays are tried in
   * quarters of the longest hold and, where one breaches, halved four times; what is returned is
   * the longest delay below the first breach that was found to hold.
   *
   * @param listener told what part of the legs is done, of 1, on the calling thread or one that
   *     shares the work, one call at a time; while models are made, 0 of 1; may stop
   * @return the delay margin of each leg; empty if an animal does not even stay within what it
   *     tolerates until the planned opening
   * @throws InvalidInputException if an ambient does not cover its time
   * @throws CancellationException if the listener or an interrupt stopped it
   * @throws IllegalStateException if a run failed; the message says why
   */
  public List<DelayMargin> legDelays(ProgressListener listener) {
    WatchedWorkers workers = new WatchedWorkers(settings.study().workers(), listener);
    return alone(
        () -> {
          CondensedModel condensed = prepared((done, total) -> listener.progress(0, 1)).condensed();
          return new LegDelays(parcel, condensed, journey, settings.longestHold()).margins(workers);
        });
  }

  /**
   * Runs through the journey until the planned opening with all quantities nominal, on the finest
   * grid.
   *
   * @param listener told on the calling thread at each stored time after sealing how much of the
   *     journey is done [s], not while the model is made; may stop the run
   * @return the history; partial if the outcome is not completed
   * @throws InvalidInputException if an ambient does not cover its time
   */
  public TransitResult untilOpening(ProgressListener listener) {
    Checks.given("listener", listener);
    return alone(() -> model(FINE)).run(journey, Variation.NOMINAL, listener);
  }

  /**
   * Prepares the study that odds come from, without the numerical error among what is uncertain: to
   * hold it against runs of a whole model.
   *
   * @param listener told what part of the work is done, of 1, on the calling thread or one that
   *     shares the work, one call at a time; may stop
   * @return the study
   * @throws InvalidInputException if an ambient does not cover its time
   * @throws CancellationException if the listener or an interrupt stopped it
   * @throws IllegalStateException if a run failed; the message says why
   */
  public JourneyStudy study(ProgressListener listener) {
    return alone(() -> prepared(listener)).study(journey.duration(), uncertainties(0));
  }

  /** What the grids tell, found once. */
  private Prepared prepared(ProgressListener listener) {
    Checks.given("listener", listener);
    return new Work((done, total) -> listener.progress(done / Work.OF_MODELS, total)).prepared();
  }

  /** Prepares many journeys like those that were given. */
  Outlook outlook(ProgressListener listener) {
    return alone(
        () -> {
          Prepared all = prepared(listener);
          return new Outlook(
              parcel, span, model(FINE), all.condensed(), all.correction(), all.error().total());
        });
  }

  /**
   * What the grids tell.
   *
   * @param nominal the nominal run on the finest of them
   * @param condensed the model for many journeys, made on the middle one
   * @param correction what is added to each temperature of that: animal, time [K]
   * @param error what is left
   */
  @SuppressWarnings("ArrayRecordComponent") // internal; never compared or printed
  private record Prepared(
      TransitResult nominal,
      CondensedModel condensed,
      double[][] correction,
      NumericalError error) {
    JourneyStudy study(double opening, Uncertainties uncertainties) {
      return study(condensed, opening, uncertainties);
    }

    /** The same of a shorter journey, up to its planned opening: half of the work. */
    JourneyStudy untilOpening(Journey journey, Uncertainties uncertainties) {
      return study(condensed.onceOn(journey), journey.duration(), uncertainties);
    }

    private JourneyStudy study(CondensedModel on, double opening, Uncertainties uncertainties) {
      int rows = on.times().length;
      return JourneyStudy.of(
          nominal.parcel(),
          on,
          opening,
          uncertainties,
          first(rows, correction),
          first(rows, JourneyStudy.hotter(nominal)));
    }

    /** The hours of a shorter journey are the first ones of a longer. */
    private static double[][] first(int rows, double[][] all) {
      return Arrays.stream(all).map(row -> Arrays.copyOf(row, rows)).toArray(double[][]::new);
    }
  }

  /** The model on a grid of a scale, for what is asked of it. */
  private ParcelModel model(double scale) {
    return model(scale, ProgressListener.NONE);
  }

  /** The same; the listener is told of its making, if it is made here. */
  private ParcelModel model(double scale, ProgressListener listener) {
    ParcelModel known = models.get(scale);
    if (known != null) {
      return known;
    }
    ModelScope scope =
        scale == FINE
            ? ModelScope.NOMINAL
            : scale == MEDIUM ? ModelScope.MEANS : ModelScope.NOMINAL_MEANS;
    TransitSettings there = settings.transit().meshScaled(scale);
    ParcelModel made =
        scale == COARSE
            ? ParcelModel.of(parcel, span, there, scope, listener)
            : model(COARSE).another(span, there, scope, listener);
    models.put(scale, made);
    return made;
  }

  private Uncertainties uncertainties(double error) {
    return Uncertainties.of(parcel, held, Uncertainties.Ranges.stated(error));
  }

  /**
   * Whether even the upper end of the interval gives the lowest level: more journeys change
   * nothing.
   */
  static boolean isClearlyOut(Odds odds) {
    return odds.high() < Level.GAMBLE.least();
  }

  /** Whether the level would stay if more journeys, going as well, left less open. */
  static boolean isSettled(Odds odds) {
    double open = (odds.within() - odds.low()) / Math.sqrt(MORE);
    return Level.of(odds.within() - open) == Level.of(odds);
  }

  /** One assessment under way. */
  private final class Work {
    /** Parts of the work, by the time they take: of models and of journeys. */
    private static final double OF_MODELS = 0.5;

    private final double plannedEnd = journey.duration();
    private final ListenerGuard listener;

    Work(ProgressListener listener) {
      this.listener = new ListenerGuard(listener);
    }

    /** What the grids tell, found once. */
    Prepared prepared() {
      Prepared found = prepared == null ? prepare() : prepared;
      prepared = found;
      return found;
    }

    private Prepared prepare() {
      List<String> followed = new ArrayList<>();
      parcel.occupied().forEach(cup -> followed.add(cup.name()));
      int animals = followed.size();
      parcel.warmers().forEach(warmer -> followed.add(warmer.name()));
      double[][] coarse = made(COARSE, 0, 0.09).means(held, Variation.NOMINAL, followed);
      report(0.1 * OF_MODELS);
      double[][] medium = made(MEDIUM, 0.1, 0.29).means(held, Variation.NOMINAL);
      report(0.3 * OF_MODELS);
      made(FINE, 0.3, 0.6);
      TransitResult nominal = run(Variation.NOMINAL);
      report(0.7 * OF_MODELS);
      double[][] all = followed.stream().map(nominal::mean).toArray(double[][]::new);
      double[][] fine = Arrays.copyOf(all, animals);
      double[][] finely = model(FINE).settlingFinely().means(held, Variation.NOMINAL);
      report(0.8 * OF_MODELS);
      GridCorrection grids =
          new GridCorrection(
              Arrays.copyOf(coarse, animals), medium, fine, new double[] {MEDIUM, FINE});
      CondensedModel condensed =
          CondensedModel.of(
              model(MEDIUM),
              span,
              uncertainties(0).spread(LEARNING, settings.study().seed()),
              settings.study().workers());
      report(0.9 * OF_MODELS);
      double[][] holding = GridCorrection.difference(finely, fine);
      NumericalError error =
          new NumericalError(
              grids.error(),
              warmerError(coarse, all, animals),
              NumericalError.ofMelting(parcel),
              grids.isOrdered(),
              GridCorrection.largest(holding) / 2,
              reductionError(nominal),
              condensed.error());
      double[][] correction =
          GridCorrection.difference(fine, condensed.run(Variation.NOMINAL).temperatures());
      for (int animal = 0; animal < correction.length; animal++) {
        for (int time = 0; time < correction[animal].length; time++) {
          correction[animal][time] += grids.added()[animal][time] + holding[animal][time];
        }
      }
      return new Prepared(nominal, condensed, correction, error);
    }

    /** The model on a grid; its making goes from one part of the work on models to another. */
    private ParcelModel made(double scale, double from, double to) {
      return model(
          scale,
          (done, total) -> listener.progress(OF_MODELS * (from + (to - from) * done / total), 1));
    }

    /** So many points of each replicate, the least where cells are stepped. */
    private StudySettings points(int points, CondensedModel condensed) {
      return settings.study().withPoints(condensed.stepsEveryCell() ? LEAST_POINTS : points);
    }

    Assessment assess() {
      Prepared all = prepared();
      TransitResult nominal = all.nominal();
      CondensedModel condensed = all.condensed();
      NumericalError error = all.error();
      Uncertainties stated = uncertainties(error.total());
      JourneyStudy study = all.study(plannedEnd, stated);
      JourneyStudy untilOpening = all.untilOpening(journey, stated);
      List<Sensitivity> sensitivities =
          condensed.stepsEveryCell() ? List.of() : sensitivities(untilOpening);
      Stress cold = new Stress(Side.COLD, worst(Side.COLD, sensitivities), study, parcel);
      Stress hot = new Stress(Side.HOT, worst(Side.HOT, sensitivities), study, parcel);
      report(OF_MODELS);
      StudySettings usual = points(settings.study().points(), condensed);
      StudySettings most =
          condensed.stepsEveryCell() ? usual : usual.withPoints(MORE * usual.points());
      StudySettings few = points(Math.min(usual.points(), FEW_POINTS), condensed);
      double whole = most.journeys() + few.journeys();
      double share = (1 - OF_MODELS) * most.journeys() / whole;
      StudyResult odds =
          study.run(
              most,
              List.of(
                  new JourneyStudy.InterimLook(FEW_POINTS, Assessor::isClearlyOut),
                  new JourneyStudy.InterimLook(usual.points(), Assessor::isSettled)),
              (done, total) -> signal(OF_MODELS + share * done / total));
      StudyResult wider =
          untilOpening
              .with(stated.widened(WIDER))
              .run(
                  few,
                  (done, total) ->
                      signal(OF_MODELS + share + (1 - OF_MODELS - share) * done / total));
      return new Assessment(
          nominal,
          run(WARMEST),
          cold,
          hot,
          plannedEnd,
          sensitivities,
          error,
          odds,
          wider,
          verdict(odds, nominal));
    }

    private ProgressListener.Signal signal(double share) {
      return listener.progress(share, 1);
    }

    private void report(double share) {
      if (signal(share) == ProgressListener.Signal.STOP) {
        throw new CancellationException("stopped by the listener while models were made");
      }
    }

    private TransitResult run(Variation variation) {
      return model(FINE).run(held, variation).requireCompleted();
    }

    /** From what cells half as wide have changed in the rows after those of the animals [K]. */
    private double warmerError(double[][] coarse, double[][] fine, int animals) {
      return fine.length == animals
          ? 0
          : GridCorrection.SAFETY
              * GridCorrection.largest(
                  GridCorrection.difference(
                      Arrays.copyOfRange(coarse, animals, fine.length),
                      Arrays.copyOfRange(fine, animals, fine.length)));
    }

    private double reductionError(TransitResult result) {
      return parcel.occupied().stream()
          .mapToDouble(cup -> result.reductionErrorOfMean(cup.name()))
          .max()
          .orElse(0);
    }

    private List<Sensitivity> sensitivities(JourneyStudy study) {
      Fate middle = study.fate(Variation.NOMINAL);
      List<Sensitivity> all = new ArrayList<>();
      for (Factor factor : Factor.values()) {
        if (factor.matters(parcel, journey)) {
          Fate low = study.fate(Variation.NOMINAL.with(factor, End.LOW));
          Fate high = study.fate(Variation.NOMINAL.with(factor, End.HIGH));
          all.add(
              new Sensitivity(
                  factor,
                  new Sensitivity.Change(
                      low.cold().margin() - middle.cold().margin(),
                      high.cold().margin() - middle.cold().margin()),
                  new Sensitivity.Change(
                      low.hot().margin() - middle.hot().margin(),
                      high.hot().margin() - middle.hot().margin())));
        }
      }
      return all;
    }

    /** Every quantity at the end that is worse for a side; where none is known, the usual ones. */
    private Variation worst(Side side, List<Sensitivity> sensitivities) {
      Variation worst = Variation.NOMINAL;
      for (Sensitivity each : sensitivities) {
        worst = worst.with(each.factor(), each.worse(side));
      }
      if (sensitivities.isEmpty()) {
        End ambient = side == Side.COLD ? End.LOW : End.HIGH;
        worst =
            worst
                .with(Factor.AMBIENT, ambient)
                .with(Factor.WALL_CONDUCTIVITY, End.HIGH)
                .with(Factor.FILL_CONDUCTIVITY, End.HIGH)
                .with(Factor.SURFACE_FILM, End.HIGH)
                .with(Factor.WARMER_STRENGTH, ambient)
                .with(Factor.RATING_BENCH, ambient);
      }
      return worst;
    }

    private Verdict verdict(StudyResult odds, TransitResult nominal) {
      double cold = odds.notTooCold().within();
      double hot = odds.notTooHot().within();
      boolean coldSide =
          cold < hot || (cold == hot && odds.coldMargin(0.05) <= odds.hotMargin(0.05));
      return new Verdict(
          Level.of(odds.within()),
          odds.within(),
          coldSide ? Side.COLD : Side.HOT,
          odds.tightest(coldSide),
          cautions(nominal));
    }

    private List<String> cautions(TransitResult nominal) {
      Set<String> all = new LinkedHashSet<>(nominal.cautions());
      for (Container cup : parcel.occupied()) {
        all.addAll(cup.occupant().orElseThrow().animal().cautions());
      }
      all.add(Verdict.DEFER);
      return List.copyOf(all);
    }
  }
}
