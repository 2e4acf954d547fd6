package stenotherm.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.IntConsumer;
import stenotherm.base.InvalidInputException;
import stenotherm.base.ProgressListener;
import stenotherm.decision.Assessment;
import stenotherm.decision.AssessmentSettings;
import stenotherm.decision.Assessor;
import stenotherm.decision.DelayMargin;
import stenotherm.grid.GridBudget;
import stenotherm.grid.GridSize;
import stenotherm.grid.RectilinearGrid;
import stenotherm.parcel.Parcel;
import stenotherm.scenario.Scenario;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.TransitResult;
import stenotherm.transit.TransitSettings;

/**
 * Judges all packings of a scenario, with and without their warmers, several at a time.
 *
 * <p>Experimental. {@link #run} may be called by many threads at a time.
 */
public final class Comparison {
  /** The part of the work that is not the search for delays. */
  private static final double ASSESSMENT_SHARE = 0.9;

  private final Scenario scenario;
  private final TransitSettings settings;
  private final IntConsumer percentListener;
  private final AtomicBoolean stopped = new AtomicBoolean();
  private final double[] shares;
  private int percent = -1;

  private Comparison(
      Scenario scenario, TransitSettings settings, int jobs, IntConsumer percentListener) {
    this.scenario = scenario;
    this.settings = settings;
    this.percentListener = percentListener;
    this.shares = new double[jobs];
  }

  /**
   * Runs everything. The rows do not depend on the number of threads.
   *
   * @param scenario what to compare
   * @param settings how finely
   * @param threads how many packings to judge at a time, fewer if more would not fit in the memory
   *     that the mesh may take; those that are left over share the work of each
   * @param percentListener told of every new percentage that is done, one call at a time
   * @return a row for each packing in the scenario's order; where it has warmers, one more without
   * @throws InvalidInputException if the scenario does not fit together, or a packing's grid would
   *     be larger than the mesh allows, which is found before any work
   * @throws CancellationException if the calling thread was interrupted
   * @throws IllegalStateException if a run failed
   */
  public static List<Judged> run(
      Scenario scenario, TransitSettings settings, int threads, IntConsumer percentListener) {
    List<Packed> parcels = new ArrayList<>();
    for (Parcel packing : scenario.packings()) {
      parcels.add(new Packed(packing, false));
      if (!packing.warmers().isEmpty()) {
        parcels.add(new Packed(packing.withoutWarmers(), true));
      }
    }
    int atATime = Math.min(threads, mostAtATime(scenario.packings(), settings));
    TransitSettings each = settings.withThreads(Math.max(1, threads / parcels.size()));
    return new Comparison(scenario, each, parcels.size(), percentListener).run(parcels, atATime);
  }

  /** Refuses grids that are too large before any work, and counts how many fit in the memory. */
  private static int mostAtATime(List<Parcel> packings, TransitSettings settings) {
    GridBudget budget = settings.mesh().budget();
    double most = 1;
    for (Parcel packing : packings) {
      GridSize size = RectilinearGrid.size(packing.layout(), settings.mesh());
      boolean stepped = ParcelModel.stepsEveryCell(packing, settings);
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

  /** A packing, perhaps stripped of the warmers that the scenario gives it. */
  private record Packed(Parcel parcel, boolean stripped) {}

  private List<Judged> run(List<Packed> parcels, int threads) {
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      List<Future<Judged>> futures = new ArrayList<>();
      for (int job = 0; job < parcels.size(); job++) {
        int number = job;
        futures.add(pool.submit(() -> judge(number, parcels.get(number))));
      }
      List<Judged> rows = new ArrayList<>();
      for (Future<Judged> future : futures) {
        rows.add(future.get());
      }
      return rows;
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
      stopped.set(true);
      pool.shutdownNow();
    }
  }

  private static CancellationException stoppedBy(InterruptedException interrupt) {
    CancellationException stop = new CancellationException("stopped by an interrupt");
    stop.initCause(interrupt);
    return stop;
  }

  private Judged judge(int job, Packed packed) {
    Parcel parcel = packed.parcel();
    AssessmentSettings how = new AssessmentSettings(settings, scenario.longestHold());
    Assessor assessor = new Assessor(parcel, scenario.journey(), how);
    Assessment assessment =
        assessor.assess((done, total) -> report(job, ASSESSMENT_SHARE * done / total));
    TransitResult planned = untilOpening(assessor);
    report(job, ASSESSMENT_SHARE);
    List<DelayMargin> legDelays = new ArrayList<>();
    int legs = scenario.journey().legs().size();
    for (int leg = 0; leg < legs && !isOutside(legDelays); leg++) {
      legDelays.add(assessor.delayOf(leg));
      double share = (1 - ASSESSMENT_SHARE) * (leg + 1) / legs;
      if (report(job, ASSESSMENT_SHARE + share) == ProgressListener.Signal.STOP) {
        throw new CancellationException("stopped");
      }
    }
    if (isOutside(legDelays)) {
      legDelays.clear();
    }
    report(job, 1);
    return new Judged(parcel, packed.stripped(), assessment, planned, legDelays);
  }

  /** Whether not even the planned journey keeps the animals within what they tolerate. */
  private static boolean isOutside(List<DelayMargin> delays) {
    return !delays.isEmpty() && delays.get(0).isAlreadyOutside();
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
    int now = (int) Math.floor(100 * Arrays.stream(shares).sum() / shares.length + 1e-9);
    if (now != percent && !stopped.get()) {
      percent = now;
      percentListener.accept(now);
    }
    return stopped.get() ? ProgressListener.Signal.STOP : ProgressListener.Signal.CONTINUE;
  }
}
