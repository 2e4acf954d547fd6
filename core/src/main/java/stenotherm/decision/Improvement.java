package stenotherm.decision;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.ProgressListener;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;
import stenotherm.study.Fate;
import stenotherm.study.JourneyStudy;
import stenotherm.study.Odds;
import stenotherm.study.StudySettings;
import stenotherm.transit.Factor;
import stenotherm.transit.ModelScope;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.TransitResult;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;

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

  /** Part of the work that ranks changes. */
  private static final double LOOKING = 0.2;

  /** Points of each replicate. */
  private static final int FEW_POINTS = 8;

  /**
   * How far towards the ends of their ranges weather and warmers lie in the cold and in the hot
   * journey of a first look: not all of it is at its worst at once.
   */
  private static final double TOWARDS_ENDS = 0.6;

  private static final Variation COLD = towards(-TOWARDS_ENDS);
  private static final Variation HOT = towards(TOWARDS_ENDS);

  /** Checks the parts. */
  public Improvement {
    Checks.given("remedy", remedy);
    Checks.given("within", within);
    Checks.given("level", level);
  }

  /**
   * A change and what came of a first look.
   *
   * @param margin see {@link #margin}
   */
  private record Candidate(Remedy remedy, Remedy.Shipment changed, double margin) {}

  /**
   * Tries changes. Each goes through a cold and a hot journey on the coarsest grid of a judgement,
   * to some tenths of a kelvin. The two that leave the animals farthest from the ends of their
   * alarm band are judged there by odds on a quarter of the usual number of journeys; what that
   * grid misses of the packing as it is counts as error. Where air is short, holes are one of the
   * two.
   *
   * @param planned the nominal run of the packing as it is until the planned opening
   * @param now how it was judged
   * @param settings mesh, time steps and solver, how many journeys
   * @param listener told how much is done; may stop
   * @return the change with the best odds; empty if none has better ones, by the lower ends of the
   *     intervals
   * @throws CancellationException if the listener or an interrupt stopped it
   * @throws IllegalStateException if a run failed
   */
  public static Optional<Improvement> find(
      TransitResult planned,
      Assessment now,
      AssessmentSettings settings,
      ProgressListener listener) {
    Parcel parcel = planned.parcel();
    Journey journey = planned.journey();
    WatchedWorkers workers = new WatchedWorkers(settings.study().workers(), listener);
    AssessmentSettings one =
        new AssessmentSettings(
            settings.transit().withThreads(1), settings.longestHold(), settings.study());
    List<Remedy> remedies = new ArrayList<>();
    List<Remedy.Shipment> shipments = new ArrayList<>();
    for (Remedy each : Remedy.toTry(parcel, journey)) {
      try {
        shipments.add(each.applyTo(parcel, journey));
        remedies.add(each);
      } catch (InvalidInputException doesNotFit) {
        // nothing to try
      }
    }
    // the packing as it is takes longest and comes first, lest it is left to one thread at the end
    ParcelModel[] asItIs = new ParcelModel[1];
    Candidate[] looked = new Candidate[remedies.size()];
    workers.each(
        1 + looked.length,
        0,
        LOOKING,
        task -> {
          if (task == 0) {
            asItIs[0] = coarse(parcel, journey, one.transit(), ModelScope.NOMINAL_MEANS);
          } else {
            Remedy.Shipment changed = shipments.get(task - 1);
            looked[task - 1] =
                new Candidate(remedies.get(task - 1), changed, margin(changed, one.transit()));
          }
        });
    List<Candidate> candidates = new ArrayList<>(List.of(looked));
    candidates.sort(Comparator.comparingDouble(Candidate::margin).reversed());
    if (now.odds().enoughAir().within() < SHORT_OF_AIR) {
      // a typical journey tells nothing of what holes are for
      candidates.sort(Comparator.comparing(each -> !(each.remedy() instanceof Remedy.MoreAir)));
    }
    CoarseOutlook.Missed missed = CoarseOutlook.Missed.by(planned, now.error().total(), asItIs[0]);
    StudySettings all = settings.study();
    StudySettings few =
        new StudySettings(all.replicates(), Math.min(FEW_POINTS, all.points()), all.seed(), 1);
    Odds[] odds = new Odds[Math.min(FINALISTS, candidates.size())];
    workers.each(
        odds.length,
        LOOKING,
        1,
        place -> {
          Remedy.Shipment changed = candidates.get(place).changed();
          List<Journey> there = List.of(changed.journey());
          odds[place] =
              new CoarseOutlook(changed.parcel(), there, one)
                  .odd(there, there, missed)
                  .odds(changed.journey(), few, (done, total) -> workers.signal())
                  .within();
        });
    Improvement best = null;
    for (int place = 0; place < odds.length; place++) {
      Odds within = odds[place];
      if (within.low() > (best == null ? now.verdict().within().low() : best.within().low())) {
        Remedy remedy = candidates.get(place).remedy();
        best = new Improvement(remedy, within, Level.of(within), candidates.size());
      }
    }
    return Optional.ofNullable(best);
  }

  private static ParcelModel coarse(
      Parcel parcel, Journey journey, TransitSettings settings, ModelScope scope) {
    return ParcelModel.of(parcel, List.of(journey), settings.meshScaled(Assessor.COARSE), scope);
  }

  private static Variation towards(double position) {
    return Variation.NOMINAL
        .with(Factor.AMBIENT, position)
        .with(Factor.WARMER_STRENGTH, position)
        .with(Factor.RATING_BENCH, position);
  }

  /**
   * What is left of the tighter margin [K]: towards the cold in the cold journey, towards the heat
   * in the hot one. A typical journey would tell nothing of what makes journeys differ less.
   */
  private static double margin(Remedy.Shipment changed, TransitSettings settings) {
    Journey journey = changed.journey();
    ParcelModel model = coarse(changed.parcel(), journey, settings, ModelScope.ROUGH_MEANS);
    return Math.min(
        fate(model, journey, COLD).cold().margin(), fate(model, journey, HOT).hot().margin());
  }

  private static Fate fate(ParcelModel model, Journey journey, Variation variation) {
    return JourneyStudy.fate(
        model.parcel(),
        model.storedTimes(journey),
        model.journeyMeans(journey, variation),
        journey.duration());
  }
}
