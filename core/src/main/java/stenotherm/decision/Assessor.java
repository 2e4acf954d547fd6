package stenotherm.decision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.CancellationException;
import stenotherm.animal.Exposure;
import stenotherm.animal.Limit;
import stenotherm.base.End;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Outcome;
import stenotherm.base.ProgressListener;
import stenotherm.conduction.DiscretisationEstimate;
import stenotherm.journey.Journey;
import stenotherm.parcel.Container;
import stenotherm.parcel.Parcel;
import stenotherm.transit.Factor;
import stenotherm.transit.PreparedParcel;
import stenotherm.transit.TransitResult;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;

/**
 * Judges a packing on a journey.
 *
 * <p>First each uncertain quantity goes to both ends of its range on its own, on a grid twice as
 * coarse; that tells which end is worse for the cold and which for the hot side. Then three runs on
 * the full grid: nominal, all quantities at the ends worse for the cold side, all at those worse
 * for the hot side. Quantities are taken as independent and their worst ends as coinciding, which
 * is cautious. Which ends are worse may be others once the parcel is held after its opening; where
 * they are, up to two more runs follow the hold at those. Two coarser nominal runs give the error
 * that the grid leaves. All runs of a packing share the grid and the reduced model of each mesh.
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class Assessor {
  private static final double COARSE = 2;
  private static final double MEDIUM = Math.sqrt(2);

  /** Widths of the three grids by which their error is estimated, as scales of the target width. */
  private static final double[] GRIDS = {COARSE, MEDIUM, 1};

  /** Margins this close are the same: what the steps of a screening run leave [K]. */
  private static final double SAME_MARGIN = 0.05;

  private Assessor() {}

  /**
   * Judges a packing.
   *
   * @param parcel the packing
   * @param journey the journey; the ambient of its last leg must cover the longest hold as well
   * @param settings how finely, and how long a delay to follow
   * @param listener told of finished runs; may stop
   * @return the assessment
   * @throws stenotherm.base.InvalidInputException if an ambient does not cover its time, or no
   *     container holds an animal
   * @throws CancellationException if the listener or an interrupt stopped it
   * @throws IllegalStateException if a run failed; the message says why
   */
  public static Assessment assess(
      Parcel parcel, Journey journey, AssessmentSettings settings, ProgressListener listener) {
    return assess(new PreparedParcel(parcel), journey, settings, listener);
  }

  /**
   * Judges a packing that is ready for many runs, and leaves it so for further ones.
   *
   * @param prepared the packing
   * @param journey as in the other method
   * @param settings how finely, and how long a delay to follow
   * @param listener told of finished runs; may stop
   * @return the assessment
   * @throws stenotherm.base.InvalidInputException as in the other method
   * @throws CancellationException if the listener or an interrupt stopped it
   * @throws IllegalStateException if a run failed; the message says why
   */
  public static Assessment assess(
      PreparedParcel prepared,
      Journey journey,
      AssessmentSettings settings,
      ProgressListener listener) {
    Parcel parcel = prepared.parcel();
    if (parcel.occupied().isEmpty()) {
      throw new InvalidInputException(
          "packing '" + parcel.name() + "'",
          "has no animal in it, so that there is nothing to judge");
    }
    return new Work(prepared, journey, settings, listener).assess();
  }

  /**
   * Finds how much longer any one leg may last, all later legs coming later by as much, before an
   * animal leaves its alarm band until the later opening: at the ends that an assessment found to
   * be worse, on the grid twice as coarse. Delays are tried in quarters of the longest hold and,
   * where one breaches, halved four times; what is returned is the longest delay below the first
   * breach that was found to hold. For the last leg {@link Assessment#delay} is the finer answer.
   *
   * @param assessment the assessment of a packing on a journey
   * @param journey that journey; all ambients must cover the longest hold as well
   * @param leg position of the leg
   * @param settings how finely, and how long a delay to follow
   * @return the delay margin of that leg
   * @throws InvalidInputException if there is no such leg, or an ambient does not cover its time
   * @throws CancellationException if an interrupt stopped it
   * @throws IllegalStateException if a run failed; the message says why
   */
  public static DelayMargin delayOf(
      Assessment assessment, Journey journey, int leg, AssessmentSettings settings) {
    PreparedParcel prepared = new PreparedParcel(assessment.nominal().parcel());
    return delayOf(prepared, assessment, journey, leg, settings);
  }

  /**
   * The same for a packing that is ready for many runs.
   *
   * @param prepared the packing that was assessed
   * @param assessment the assessment of it on a journey
   * @param journey that journey; all ambients must cover the longest hold as well
   * @param leg position of the leg
   * @param settings how finely, and how long a delay to follow
   * @return the delay margin of that leg
   * @throws InvalidInputException if there is no such leg, an ambient does not cover its time, or
   *     another packing was assessed
   * @throws CancellationException if an interrupt stopped it
   * @throws IllegalStateException if a run failed; the message says why
   */
  public static DelayMargin delayOf(
      PreparedParcel prepared,
      Assessment assessment,
      Journey journey,
      int leg,
      AssessmentSettings settings) {
    if (!prepared.parcel().equals(assessment.nominal().parcel())) {
      throw new InvalidInputException(
          "packing '" + prepared.parcel().name() + "'", "is not the one that was assessed");
    }
    return new LegDelay(prepared, assessment, journey, leg, settings).margin();
  }

  /** One assessment under way. */
  private static final class Work {
    private final PreparedParcel prepared;
    private final Parcel parcel;
    private final Journey held;
    private final double plannedEnd;
    private final AssessmentSettings settings;
    private final ProgressListener listener;
    private final List<Factor> factors = new ArrayList<>();
    private int done;

    Work(
        PreparedParcel prepared,
        Journey journey,
        AssessmentSettings settings,
        ProgressListener listener) {
      this.prepared = prepared;
      this.parcel = prepared.parcel();
      this.held = journey.held(settings.longestHold());
      this.plannedEnd = journey.duration();
      this.settings = settings;
      this.listener = listener;
      for (Factor factor : Factor.values()) {
        if (matters(factor, parcel, journey)) {
          factors.add(factor);
        }
      }
    }

    private static boolean matters(Factor factor, Parcel parcel, Journey journey) {
      return switch (factor) {
        case WARMER_STRENGTH -> !parcel.warmers().isEmpty();
        case SOLAR_ABSORPTANCE ->
            journey.legs().stream().anyMatch(leg -> leg.surroundings().hasSun());
        case WALL_CONDUCTIVITY, FILL_CONDUCTIVITY, SURFACE_FILM, AMBIENT -> true;
      };
    }

    /** Both ends of each factor, three grids, two worst ends until the opening and two held. */
    private int total() {
      return 2 * factors.size() + 8;
    }

    Assessment assess() {
      TransitSettings screening = settings.transit().screening();
      TransitResult screened = run(Variation.NOMINAL, screening);
      List<Sensitivity> sensitivities = new ArrayList<>();
      Variation coldWorst = Variation.NOMINAL;
      Variation hotWorst = Variation.NOMINAL;
      Variation coldHeld = Variation.NOMINAL;
      Variation hotHeld = Variation.NOMINAL;
      for (Factor factor : factors) {
        TransitResult low = run(Variation.NOMINAL.with(factor, End.LOW), screening);
        TransitResult high = run(Variation.NOMINAL.with(factor, End.HIGH), screening);
        Sensitivity sensitivity =
            new Sensitivity(
                factor,
                change(Side.COLD, screened, low, high),
                change(Side.HOT, screened, low, high));
        sensitivities.add(sensitivity);
        coldWorst = coldWorst.with(factor, worse(Side.COLD, sensitivity, low, high));
        hotWorst = hotWorst.with(factor, worse(Side.HOT, sensitivity, low, high));
        coldHeld = coldHeld.with(factor, worseHeld(Side.COLD, low, high, coldWorst.of(factor)));
        hotHeld = hotHeld.with(factor, worseHeld(Side.HOT, low, high, hotWorst.of(factor)));
      }
      TransitResult coarse = run(Variation.NOMINAL, settings.transit().meshScaled(COARSE));
      TransitResult medium = run(Variation.NOMINAL, settings.transit().meshScaled(MEDIUM));
      List<TransitResult> late = new ArrayList<>();
      for (Variation variation : new LinkedHashSet<>(List.of(coldHeld, hotHeld))) {
        if (!variation.equals(coldWorst) && !variation.equals(hotWorst)) {
          late.add(run(variation, settings.transit()));
        }
      }
      TransitResult nominal = run(Variation.NOMINAL, settings.transit());
      TransitResult cold = run(coldWorst, settings.transit());
      // runs that were not needed count as done
      done = total() - 1;
      TransitResult hot = run(hotWorst, settings.transit());
      List<TransitResult> grids = List.of(coarse, medium, nominal);
      DiscretisationEstimate coldGrid = estimate(grids, Side.COLD);
      DiscretisationEstimate hotGrid = estimate(grids, Side.HOT);
      List<TransitResult> runs = List.of(nominal, cold, hot);
      List<TransitResult> all = new ArrayList<>(late);
      all.addAll(runs);
      return new Assessment(
          nominal,
          cold,
          hot,
          late.stream().map(TransitResult::variation).toList(),
          plannedEnd,
          sensitivities,
          coldGrid,
          hotGrid,
          delay(all),
          verdict(runs, coldGrid, hotGrid));
    }

    private TransitResult run(Variation variation, TransitSettings how) {
      TransitResult result = prepared.run(held, variation, how, ProgressListener.NONE);
      if (result.outcome() instanceof Outcome.Failed failed) {
        throw new IllegalStateException("packing '" + parcel.name() + "': " + failed.reason());
      }
      done++;
      if (!result.outcome().isCompleted()
          || listener.progress(done, total()) == ProgressListener.Signal.STOP) {
        throw new CancellationException("stopped");
      }
      return result;
    }

    private double margin(TransitResult result, Side side) {
      return Margin.smallest(result, side, plannedEnd).kelvin();
    }

    /**
     * The end of a quantity that is worse for a side. Where both give the same margin, as in a
     * parcel that has taken on the temperature around it, the end that breaches earlier or comes
     * closer to it during the hold; else the one that leaves the animals colder or warmer.
     */
    private End worse(Side side, Sensitivity sensitivity, TransitResult low, TransitResult high) {
      Sensitivity.Change change = side == Side.COLD ? sensitivity.cold() : sensitivity.hot();
      if (Math.abs(change.atLow() - change.atHigh()) > SAME_MARGIN) {
        return sensitivity.worse(side);
      }
      int order = orderHeld(side, low, high);
      if (order == 0) {
        int warmer = Double.compare(warmth(high), warmth(low));
        order = side == Side.COLD ? -warmer : warmer;
      }
      return order <= 0 ? End.LOW : End.HIGH;
    }

    /**
     * The end that breaches earlier or comes closer to it until the end of the hold; a stated end
     * if both do alike.
     */
    private End worseHeld(Side side, TransitResult low, TransitResult high, End ifAlike) {
      int order = orderHeld(side, low, high);
      if (order == 0) {
        return ifAlike;
      }
      return order < 0 ? End.LOW : End.HIGH;
    }

    /** Mean temperature of all animals over the stored times [K]. */
    private double warmth(TransitResult result) {
      return parcel.occupied().stream()
          .mapToDouble(cup -> Arrays.stream(result.mean(cup.name())).average().orElseThrow())
          .average()
          .orElseThrow();
    }

    /** Negative if the low end breaches earlier or comes closer to it until the end of the hold. */
    private int orderHeld(Side side, TransitResult low, TransitResult high) {
      int order = Double.compare(firstBreach(low, side), firstBreach(high, side));
      if (order != 0) {
        return order;
      }
      double end = held.duration();
      double difference =
          Margin.smallest(low, side, end).kelvin() - Margin.smallest(high, side, end).kelvin();
      return Math.abs(difference) > SAME_MARGIN ? (int) Math.signum(difference) : 0;
    }

    private double firstBreach(TransitResult result, Side side) {
      double earliest = Double.POSITIVE_INFINITY;
      for (Container cup : parcel.occupied()) {
        Exposure.Outside outside = result.exposure(cup.name()).outside(Limit.ALARM);
        OptionalDouble breach = (side == Side.COLD ? outside.cold() : outside.hot()).firstBreach();
        earliest = Math.min(earliest, breach.orElse(Double.POSITIVE_INFINITY));
      }
      return earliest;
    }

    private Sensitivity.Change change(
        Side side, TransitResult nominal, TransitResult low, TransitResult high) {
      double unchanged = margin(nominal, side);
      return new Sensitivity.Change(margin(low, side) - unchanged, margin(high, side) - unchanged);
    }

    private DiscretisationEstimate estimate(List<TransitResult> grids, Side side) {
      double[] values =
          grids.stream()
              .mapToDouble(result -> Margin.smallest(result, side, plannedEnd).temperature())
              .toArray();
      return DiscretisationEstimate.of(values, GRIDS);
    }

    private DelayMargin delay(List<TransitResult> runs) {
      double earliest = Double.POSITIVE_INFINITY;
      for (TransitResult run : runs) {
        earliest = Math.min(earliest, firstBreach(run));
      }
      if (earliest < plannedEnd) {
        return new DelayMargin.AlreadyOutside(plannedEnd - earliest);
      }
      return Double.isInfinite(earliest)
          ? new DelayMargin.AtLeast(settings.longestHold())
          : new DelayMargin.Until(earliest - plannedEnd);
    }

    private double firstBreach(TransitResult result) {
      return Math.min(firstBreach(result, Side.COLD), firstBreach(result, Side.HOT));
    }

    private Verdict verdict(
        List<TransitResult> runs, DiscretisationEstimate coldGrid, DiscretisationEstimate hotGrid) {
      Margin cold = Margin.worst(runs, Side.COLD, plannedEnd);
      Margin hot = Margin.worst(runs, Side.HOT, plannedEnd);
      double coldLeft =
          cold.kelvin() - coldGrid.error() - Assessment.reductionError(runs, Side.COLD);
      double hotLeft = hot.kelvin() - hotGrid.error() - Assessment.reductionError(runs, Side.HOT);
      Margin tightest = coldLeft <= hotLeft ? cold : hot;
      double nominalMargin = margin(runs.get(0), tightest.side());
      double best = Margin.best(runs, tightest.side(), plannedEnd).kelvin();
      return new Verdict(
          Level.of(Math.min(coldLeft, hotLeft)),
          tightest,
          nominalMargin,
          best,
          cautions(runs.get(0)));
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
