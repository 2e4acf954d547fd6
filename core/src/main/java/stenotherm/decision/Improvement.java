package stenotherm.decision;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.ProgressListener;
import stenotherm.base.Workers;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;
import stenotherm.study.Odds;
import stenotherm.study.StudySettings;

/**
 * The one change that helps a shipment most.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param remedy the change
 * @param within odds that every animal stays within what it tolerates until the planned opening,
 *     with the change
 * @param level the level that these odds give
 * @param tried how many changes were tried
 */
public record Improvement(Remedy remedy, Odds within, Level level, int tried) {
  /** Changes judged by odds; the others are left after one typical journey. */
  private static final int FINALISTS = 2;

  /** Odds of enough air below which holes are judged whatever they do to temperatures. */
  private static final double SHORT_OF_AIR = 0.97;

  /** Points of each replicate. */
  private static final int FEW_POINTS = 8;

  /** Checks the parts. */
  public Improvement {
    Checks.given("remedy", remedy);
    Checks.given("within", within);
    Checks.given("level", level);
  }

  /** A change and what is left of the tighter margin in one typical journey [K]. */
  private record Candidate(Remedy remedy, double margin) {}

  /**
   * Tries changes. Each goes through one typical journey on the coarsest grid; the two that leave
   * the animals farthest from the ends of their alarm band are judged by odds on a quarter of the
   * usual number of journeys. Where air is short, holes are one of the two.
   *
   * @param parcel the packing
   * @param journey its journey
   * @param settings how it was judged
   * @param now the odds without a change
   * @param air the odds of enough air without a change
   * @return the change with the best odds; empty if none has better ones, by the lower ends of the
   *     intervals
   * @throws CancellationException if an interrupt stopped it
   * @throws IllegalStateException if a run failed
   */
  public static Optional<Improvement> find(
      Parcel parcel, Journey journey, AssessmentSettings settings, Odds now, Odds air) {
    List<Remedy> remedies = Remedy.toTry(parcel, journey);
    Candidate[] looked = new Candidate[remedies.size()];
    Workers workers = new Workers(settings.study().threads());
    workers.run(
        looked.length,
        (worker, index) -> looked[index] = look(remedies.get(index), parcel, journey, settings));
    List<Candidate> fitting = new ArrayList<>();
    for (Candidate each : looked) {
      if (!Double.isNaN(each.margin())) {
        fitting.add(each);
      }
    }
    fitting.sort(Comparator.comparingDouble(Candidate::margin).reversed());
    if (air.within() < SHORT_OF_AIR) {
      // a typical journey tells nothing of what holes are for
      fitting.sort(Comparator.comparing(each -> !(each.remedy() instanceof Remedy.MoreAir)));
    }
    StudySettings all = settings.study();
    StudySettings one = new StudySettings(all.replicates(), all.points(), all.seed(), 1);
    AssessmentSettings few =
        new AssessmentSettings(
            settings.transit().withThreads(1),
            settings.longestHold(),
            one.withPoints(Math.min(FEW_POINTS, settings.study().points())));
    int finalists = Math.min(FINALISTS, fitting.size());
    Verdict[] verdicts = new Verdict[finalists];
    Thread caller = Thread.currentThread();
    workers.run(
        finalists,
        (worker, place) -> {
          Remedy.Shipment changed = fitting.get(place).remedy().applyTo(parcel, journey);
          verdicts[place] =
              new Assessor(changed.parcel(), changed.journey(), few)
                  .verdict(
                      (done, total) ->
                          caller.isInterrupted()
                              ? ProgressListener.Signal.STOP
                              : ProgressListener.Signal.CONTINUE);
        });
    Improvement best = null;
    for (int place = 0; place < finalists; place++) {
      Odds within = verdicts[place].within();
      if (within.low() > (best == null ? now.low() : best.within().low())) {
        Remedy remedy = fitting.get(place).remedy();
        best = new Improvement(remedy, within, verdicts[place].level(), fitting.size());
      }
    }
    return Optional.ofNullable(best);
  }

  /** One typical journey; no number if the changed packing does not fit together. */
  private static Candidate look(
      Remedy remedy, Parcel parcel, Journey journey, AssessmentSettings settings) {
    Remedy.Shipment changed;
    try {
      changed = remedy.applyTo(parcel, journey);
    } catch (InvalidInputException doesNotFit) {
      return new Candidate(remedy, Double.NaN);
    }
    FirstLook look = new Assessor(changed.parcel(), changed.journey(), settings).firstLook();
    return new Candidate(remedy, look.least());
  }
}
