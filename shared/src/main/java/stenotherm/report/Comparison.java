package stenotherm.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.IntFunction;
import stenotherm.base.InvalidInputException;
import stenotherm.base.ProgressListener;
import stenotherm.decision.Assessment;
import stenotherm.decision.AssessmentSettings;
import stenotherm.decision.Assessor;
import stenotherm.decision.ChangesTried;
import stenotherm.decision.DelayMargin;
import stenotherm.decision.FirstLook;
import stenotherm.decision.Level;
import stenotherm.grid.GridBudget;
import stenotherm.grid.GridSize;
import stenotherm.grid.RectilinearGrid;
import stenotherm.parcel.Parcel;
import stenotherm.scenario.Scenario;
import stenotherm.study.StudySettings;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.TransitResult;
import stenotherm.transit.TransitSettings;

/**
 * Judges all packings of a scenario, with and without their warmers, several at a time.
 *
 * <p>Experimental. {@link #run} may be called by many threads at a time.
 */
public final class Comparison {
  /** The part of the work before changes are tried. */
  private static final double JUDGING = 0.75;

  /** The part before they are tried on another packing, if that is needed. */
  private static final double CHANGED = 0.9;

  /** The part of that for a packing that is not the search for delays. */
  private static final double ASSESSMENT_SHARE = 0.9;

  private final Scenario scenario;
  private final TransitSettings settings;
  private final StudySettings journeys;
  private final Watcher watcher;
  private final AtomicBoolean stopped = new AtomicBoolean();
  private final List<Packed> packings;
  private final int threads;
  private final double[] shares;

  /** Is told how far the work is, one call at a time, and may stop it. */
  public interface Watcher extends ProgressListener {
    /**
     * Told what is known by then: soon after the start how one typical journey goes, and the answer
     * when only changes are left to be tried.
     *
     * @param sentence what is known, in sentences that can stand alone
     */
    default void soFar(String sentence) {}
  }

  private Comparison(
      Scenario scenario,
      TransitSettings settings,
      StudySettings journeys,
      List<Packed> packings,
      int threads,
      Watcher watcher) {
    this.scenario = scenario;
    this.settings = settings;
    this.journeys = journeys;
    this.packings = packings;
    this.threads = threads;
    this.watcher = watcher;
    this.shares = new double[packings.size()];
  }

  /**
   * Runs everything. The rows do not depend on the number of threads.
   *
   * @param scenario what to compare
   * @param settings how finely
   * @param threads how many packings to judge at a time, fewer if more would not fit in the memory
   *     that the mesh may take; those that are left over share the work of each
   * @param watcher told how far the work is
   * @return what came out
   * @throws InvalidInputException if the scenario does not fit together, or a packing's grid would
   *     be larger than the mesh allows, which is found before any work
   * @throws CancellationException if the calling thread was interrupted, or the watcher stopped it
   * @throws IllegalStateException if a run failed
   */
  public static ComparisonReport run(
      Scenario scenario, TransitSettings settings, int threads, Watcher watcher) {
    return run(scenario, settings, standard(threads), threads, watcher);
  }

  /** With so many journeys. */
  static ComparisonReport run(
      Scenario scenario,
      TransitSettings settings,
      StudySettings journeys,
      int threads,
      Watcher watcher) {
    return of(scenario, settings, journeys, threads, watcher).run(threads, true);
  }

  private static StudySettings standard(int threads) {
    return StudySettings.standard(AssessmentSettings.SEED, threads);
  }

  /**
   * Judges the packings as {@link #run}, but tries no changes.
   *
   * @param scenario what to judge
   * @param settings how finely
   * @param threads how many packings to judge at a time
   * @param watcher told how far the work is
   * @return what came out
   * @throws InvalidInputException as {@link #run}
   * @throws CancellationException as {@link #run}
   * @throws IllegalStateException if a run failed
   */
  public static ComparisonReport withoutChanges(
      Scenario scenario, TransitSettings settings, int threads, Watcher watcher) {
    return of(scenario, settings, standard(threads), threads, watcher).run(threads, false);
  }

  /** The journeys of each packing take all threads, lest the last leaves some idle. */
  private static Comparison of(
      Scenario scenario,
      TransitSettings settings,
      StudySettings journeys,
      int threads,
      Watcher watcher) {
    List<Packed> parcels = packed(scenario.packings());
    int atATime = Math.min(threads, mostAtATime(scenario.packings(), settings));
    TransitSettings each = settings.withThreads(Math.max(1, threads / parcels.size()));
    return new Comparison(scenario, each, journeys, parcels, atATime, watcher);
  }

  /** Each packing, and where it has warmers also without; what is alike is judged once. */
  static List<Packed> packed(List<Parcel> packings) {
    List<Packed> all = new ArrayList<>();
    List<Parcel> known = new ArrayList<>(packings);
    for (Parcel packing : packings) {
      all.add(new Packed(packing, false));
      Parcel bare = packing.withoutWarmers();
      if (known.stream().noneMatch(each -> each.named(bare.name()).equals(bare))) {
        all.add(new Packed(bare, true));
        known.add(bare);
      }
    }
    return all;
  }

  /** Refuses grids that are too large before any work, and counts how many fit in the memory. */
  private static int mostAtATime(List<Parcel> packings, TransitSettings settings) {
    GridBudget budget = settings.mesh().budget();
    double most = 1;
    for (Parcel packing : packings) {
      GridSize size = RectilinearGrid.size(packing.layout(), settings.mesh());
      boolean stepped = ParcelModel.stepsEveryCell(settings);
      try {
        if (stepped) {
          budget.require(size);
        } else {
          budget.requireReducible(size);
        }
      } catch (InvalidInputException fault) {
        throw new InvalidInputException(
            "packing '" + packing.name() + "'", String.valueOf(fault.getMessage()));
      }
      most = Math.max(most, stepped ? size.bytes() : size.bytesToReduce());
    }
    return (int) Math.max(1, Math.min(Integer.MAX_VALUE, budget.bytes() / most));
  }

  private ComparisonReport run(int allThreads, boolean tryChanges) {
    // an assessor holds its models: each is let go of when its packing is judged
    Map<Integer, Assessor> assessors = new ConcurrentHashMap<>();
    for (int job = 0; job < packings.size(); job++) {
      Parcel parcel = packings.get(job).parcel();
      assessors.put(job, new Assessor(parcel, scenario.journey(), how(settings)));
    }
    List<FirstLook> looks =
        all(number -> Objects.requireNonNull(assessors.get(number)).firstLook());
    VerdictWords words = new VerdictWords(new Words(scenario));
    watcher.soFar(words.firstLook(packings, looks));
    List<Judged> rows =
        all(number -> judge(number, Objects.requireNonNull(assessors.remove(number))));
    Optional<Improvement> changes = Optional.empty();
    if (tryChanges && wantsChange(Judged.best(rows))) {
      watcher.soFar(words.beforeChanges(rows));
      changes = Optional.of(improvement(rows, how(settings.withThreads(allThreads))));
    }
    watcher.progress(1, 1);
    return new ComparisonReport(scenario, rows, changes);
  }

  /** Whether changes are tried: where even the best packing does not likely hold. */
  private static boolean wantsChange(Judged best) {
    return best.verdict().level().compareTo(Level.LIKELY) > 0;
  }

  private Improvement improvement(List<Judged> rows, AssessmentSettings settings) {
    Judged best = Judged.best(rows);
    Improvement first = tried(best, settings, JUDGING, CHANGED);
    Optional<Judged> warmed =
        first.tried().isEnough() ? Optional.empty() : Improvement.warmedBeside(best, rows);
    return warmed.map(row -> first.or(tried(row, settings, CHANGED, 1))).orElse(first);
  }

  private Improvement tried(Judged row, AssessmentSettings settings, double from, double to) {
    return Improvement.of(
        row,
        ChangesTried.on(
            row.planned(),
            row.assessment(),
            settings,
            (done, total) -> watcher.progress(from + (to - from) * done / total, 1)));
  }

  private AssessmentSettings how(TransitSettings transit) {
    return new AssessmentSettings(transit, scenario.longestHold(), journeys);
  }

  /** Does something for all packings, several at a time. */
  private <T> List<T> all(IntFunction<T> work) {
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    boolean done = false;
    try {
      List<Future<T>> futures = new ArrayList<>();
      for (int job = 0; job < packings.size(); job++) {
        int number = job;
        futures.add(pool.submit(() -> work.apply(number)));
      }
      List<T> results = new ArrayList<>();
      for (Future<T> future : futures) {
        results.add(future.get());
      }
      done = true;
      return results;
    } catch (InterruptedException interrupt) {
      Thread.currentThread().interrupt();
      throw stoppedBy(interrupt);
    } catch (ExecutionException failure) {
      if (failure.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      if (failure.getCause() instanceof Error cause) {
        throw cause;
      }
      throw new IllegalStateException(failure);
    } finally {
      // after a failure the others need not go on
      stopped.set(!done);
      pool.shutdownNow();
    }
  }

  private static CancellationException stoppedBy(InterruptedException interrupt) {
    CancellationException stop = new CancellationException("stopped by an interrupt");
    stop.initCause(interrupt);
    return stop;
  }

  private Judged judge(int job, Assessor assessor) {
    Packed packed = packings.get(job);
    Assessment assessment =
        assessor.assess((done, total) -> report(job, ASSESSMENT_SHARE * done / total));
    TransitResult planned = untilOpening(assessor);
    report(job, ASSESSMENT_SHARE);
    double rest = 1 - ASSESSMENT_SHARE;
    List<DelayMargin> legDelays =
        assessor.legDelays((done, total) -> report(job, ASSESSMENT_SHARE + rest * done / total));
    report(job, 1);
    return new Judged(packed.parcel(), packed.stripped(), assessment, planned, legDelays);
  }

  /** Fields and heat of the assessment's own runs reach into the hold. */
  private TransitResult untilOpening(Assessor assessor) {
    return assessor
        .untilOpening(
            (done, total) ->
                stopped.get() ? ProgressListener.Signal.STOP : ProgressListener.Signal.CONTINUE)
        .requireCompleted();
  }

  private synchronized ProgressListener.Signal report(int job, double share) {
    shares[job] = share;
    if (!stopped.get()
        && watcher.progress(JUDGING * Arrays.stream(shares).sum(), shares.length)
            == ProgressListener.Signal.STOP) {
      stopped.set(true);
    }
    return stopped.get() ? ProgressListener.Signal.STOP : ProgressListener.Signal.CONTINUE;
  }
}
