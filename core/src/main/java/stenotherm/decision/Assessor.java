package stenotherm.decision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.CancellationException;
import stenotherm.animal.Exposure;
import stenotherm.animal.Limit;
import stenotherm.base.Checks;
import stenotherm.base.End;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Outcome;
import stenotherm.base.ProgressListener;
import stenotherm.conduction.DiscretisationEstimate;
import stenotherm.journey.Journey;
import stenotherm.parcel.Container;
import stenotherm.parcel.Parcel;
import stenotherm.transit.Factor;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.TransitResult;
import stenotherm.transit.Variation;

/**
 * Judges a packing on a journey.
 *
 * <p>First each uncertain quantity goes to both ends of its range on its own, on a grid twice as
 * coarse; that tells which end is worse for the cold and which for the hot side. Then three runs on
 * the full grid: nominal, all quantities at the ends worse for the cold side, all at those worse
 * for the hot side. Quantities are taken as independent and their worst ends as coinciding, which
 * is cautious. While the parcel is held after the planned opening other ends may be worse; then up
 * to two more runs take those. Two coarser nominal runs give an estimate of the error of the grid.
 * All runs on one mesh share its grid and its reduced model.
 *
 * <p>Experimental. Not thread-safe: one object belongs to one thread.
 */
public final class Assessor {
  private static final double COARSE = 2;
  private static final double MEDIUM = Math.sqrt(2);
  private static final double FINE = 1;

  /** Widths of the three grids by which their error is estimated, as scales of the target width. */
  private static final double[] GRIDS = {COARSE, MEDIUM, FINE};

  /** Margins this close count as equal: the error of the time steps of a screening run [K]. */
  private static final double SAME_MARGIN = 0.05;

  private final Parcel parcel;
  private final Journey journey;
  private final Journey held;
  private final AssessmentSettings settings;
  private final Map<Double, ParcelModel> models = new HashMap<>();

  /**
   * Builds nothing yet: the first run on a mesh builds its model.
   *
   * @param parcel the packing
   * @param journey the journey; the ambient of each of its legs must cover the longest hold as well
   * @param settings mesh, time steps and solver, and how long a delay to follow
   * @throws InvalidInputException if no container holds an animal
   */
  public Assessor(Parcel parcel, Journey journey, AssessmentSettings settings) {
    Checks.given("journey", journey);
    Checks.given("settings", settings);
    if (Checks.given("parcel", parcel).occupied().isEmpty()) {
      throw new InvalidInputException(
          "packing '" + parcel.name() + "'",
          "has no animal in it, so that there is nothing to judge");
    }
    this.parcel = parcel;
    this.journey = journey;
    this.held = journey.held(settings.longestHold());
    this.settings = settings;
  }

  /**
   * Judges a packing.
   *
   * @param parcel the packing
   * @param journey the journey; the ambient of its last leg must cover the longest hold as well
   * @param settings mesh, time steps and solver, and how long a delay to follow
   * @param listener called after each run; may stop
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
   * @param listener called after each run; may stop
   * @return the assessment
   * @throws InvalidInputException if an ambient does not cover its time
   * @throws CancellationException if the listener or an interrupt stopped it
   * @throws IllegalStateException if a run failed; the message says why
   */
  public Assessment assess(ProgressListener listener) {
    return new Work(listener).assess();
  }

  /**
   * Finds how much longer any one leg may last, all later legs coming later by as much, before an
   * animal leaves its alarm band until the later opening: at the ends that an assessment found to
   * be worse, on the grid twice as coarse. Delays are tried in quarters of the longest hold and,
   * where one breaches, halved four times; what is returned is the longest delay below the first
   * breach that was found to hold. For the last leg {@link Assessment#delay} is the finer answer.
   *
   * @param assessment the assessment of this packing on this journey
   * @param leg position of the leg
   * @return the delay margin of that leg
   * @throws InvalidInputException if there is no such leg, an ambient does not cover its time, or
   *     another packing was assessed
   * @throws CancellationException if an interrupt stopped it
   * @throws IllegalStateException if a run failed; the message says why
   */
  public DelayMargin delayOf(Assessment assessment, int leg) {
    if (!parcel.equals(assessment.nominal().parcel())) {
      throw new InvalidInputException(
          "packing '" + parcel.name() + "'", "is not the one that was assessed");
    }
    return new LegDelay(model(COARSE), assessment, journey, leg, settings.longestHold()).margin();
  }

  /**
   * Runs through the journey until the planned opening with all quantities nominal, on the full
   * grid.
   *
   * @param listener called at each stored time, in simulated seconds; may stop the run
   * @return the history; partial if the outcome is not completed
   * @throws InvalidInputException if an ambient does not cover its time
   */
  public TransitResult untilOpening(ProgressListener listener) {
    return model(FINE).run(journey, Variation.NOMINAL, listener);
  }

  /** The model on a grid of a scale. */
  private ParcelModel model(double scale) {
    return models.computeIfAbsent(
        scale, of -> ParcelModel.of(parcel, held, settings.transit().meshScaled(of)));
  }

  /** One assessment under way. */
  private final class Work {
    private final double plannedEnd = journey.duration();
    private final ProgressListener listener;
    private final List<Factor> factors = new ArrayList<>();
    private int done;

    Work(ProgressListener listener) {
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
        case WALL_CONDUCTIVITY, FILL_CONDUCTIVITY, SURFACE_FILM, AMBIENT, LEAKAGE, STOWAGE -> true;
      };
    }

    /** Both ends of each factor, three grids, two worst ends until the opening and two held. */
    private int total() {
      return 2 * factors.size() + 7;
    }

    Assessment assess() {
      TransitResult screened = run(Variation.NOMINAL, COARSE);
      List<Sensitivity> sensitivities = new ArrayList<>();
      Variation coldWorst = Variation.NOMINAL;
      Variation hotWorst = Variation.NOMINAL;
      Variation coldHeld = Variation.NOMINAL;
      Variation hotHeld = Variation.NOMINAL;
      for (Factor factor : factors) {
        TransitResult low = run(Variation.NOMINAL.with(factor, End.LOW), COARSE);
        TransitResult high = run(Variation.NOMINAL.with(factor, End.HIGH), COARSE);
        Sensitivity sensitivity =
            new Sensitivity(
                factor,
                change(Side.COLD, screened, low, high),
                change(Side.HOT, screened, low, high));
        sensitivities.add(sensitivity);
        End coldEnd = worse(Side.COLD, sensitivity, low, high);
        End hotEnd = worse(Side.HOT, sensitivity, low, high);
        coldWorst = coldWorst.with(factor, coldEnd);
        hotWorst = hotWorst.with(factor, hotEnd);
        coldHeld = coldHeld.with(factor, worseHeld(Side.COLD, low, high, coldEnd));
        hotHeld = hotHeld.with(factor, worseHeld(Side.HOT, low, high, hotEnd));
      }
      TransitResult medium = run(Variation.NOMINAL, MEDIUM);
      List<TransitResult> late = new ArrayList<>();
      for (Variation variation : new LinkedHashSet<>(List.of(coldHeld, hotHeld))) {
        if (!variation.equals(coldWorst) && !variation.equals(hotWorst)) {
          late.add(run(variation, FINE));
        }
      }
      TransitResult nominal = run(Variation.NOMINAL, FINE);
      TransitResult cold = run(coldWorst, FINE);
      // runs that were not needed count as done
      done = total() - 1;
      TransitResult hot = run(hotWorst, FINE);
      List<TransitResult> grids = List.of(screened, medium, nominal);
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

    private TransitResult run(Variation variation, double scale) {
      TransitResult result = model(scale).run(held, variation);
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
        Exposure.Excursions outside = result.exposure(cup.name()).outside(Limit.ALARM);
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
