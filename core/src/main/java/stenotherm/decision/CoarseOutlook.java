package stenotherm.decision;

import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import stenotherm.base.Checks;
import stenotherm.base.ProgressListener;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;
import stenotherm.study.Fate;
import stenotherm.study.JourneyStudy;
import stenotherm.study.StudyResult;
import stenotherm.study.StudySettings;
import stenotherm.study.Uncertainties;
import stenotherm.transit.CondensedModel;
import stenotherm.transit.JourneyMeans;
import stenotherm.transit.ModelScope;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.TransitResult;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;

/**
 * A packing on the coarsest grid of an assessment, to look at many of them: made in a second, with
 * odds in two or three.
 *
 * <p>Immutable, thus thread-safe.
 */
final class CoarseOutlook {
  /** Runs that a condensed model learns from and is checked by. */
  private static final int LEARNING = 16;

  /**
   * What the coarsest grid misses.
   *
   * @param added what is added to the temperature of each animal at each time of a journey with
   *     these hours [K]
   * @param times the times of those hours [s]
   * @param error error of a temperature as a central 90 % [K]
   */
  @SuppressWarnings("ArrayRecordComponent") // internal; never compared or printed
  record Missed(double[][] added, double[] times, double error) {
    /**
     * Assumed: margins of the coarsest grid were within 0.3 K of those of an assessment where both
     * were computed.
     */
    static final Missed UNKNOWN = new Missed(new double[0][], new double[0], 0.3);

    /**
     * As found on one packing; of others the coarsest grid misses another amount, so that all of it
     * counts as error as well.
     */
    static Missed by(Outlook outlook, Journey journey, CoarseOutlook coarse) {
      double[][] fine = outlook.study(journey).temperatures(Variation.NOMINAL);
      return by(fine, outlook.error(), journey, coarse.nominal);
    }

    /**
     * As found by one nominal run.
     *
     * @param error error of its temperatures as a central 90 % [K]
     */
    static Missed by(TransitResult fine, double error, ParcelModel coarse) {
      double[][] means =
          fine.parcel().occupied().stream()
              .map(cup -> fine.mean(cup.name()))
              .toArray(double[][]::new);
      return by(means, error, fine.journey(), coarse);
    }

    private static Missed by(double[][] fine, double error, Journey journey, ParcelModel coarse) {
      double[][] there = coarse.means(journey, Variation.NOMINAL);
      double[][] added = GridCorrection.difference(fine, there);
      return new Missed(added, coarse.storedTimes(journey), error + GridCorrection.largest(added));
    }

    private double[][] at(double[] others, int animals) {
      return Arrays.equals(times, others) ? added : new double[animals][others.length];
    }
  }

  private final Parcel parcel;
  private final AssessmentSettings settings;
  private final ParcelModel nominal;

  /**
   * Makes a packing ready for nominal runs.
   *
   * @param span journeys that it goes on, at least one
   */
  CoarseOutlook(Parcel parcel, List<Journey> span, AssessmentSettings settings) {
    this(
        parcel,
        settings,
        model(parcel, Checks.notEmpty("journeys", span), settings, ModelScope.NOMINAL_MEANS));
  }

  private CoarseOutlook(Parcel parcel, AssessmentSettings settings, ParcelModel nominal) {
    this.parcel = parcel;
    this.settings = settings;
    this.nominal = nominal;
  }

  /** Makes a packing ready for the odds of one journey, for which a rough model was made. */
  static Odd odd(ParcelModel rough, Journey journey, AssessmentSettings settings, Missed missed) {
    List<Journey> there = List.of(journey);
    ParcelModel model =
        rough.another(there, mesh(settings), ModelScope.MEANS, ProgressListener.NONE);
    return new CoarseOutlook(rough.parcel(), settings, model).odd(model, there, missed);
  }

  private static TransitSettings mesh(AssessmentSettings settings) {
    return settings.transit().meshScaled(Assessor.COARSE);
  }

  /** A model on the coarsest grid. */
  static ParcelModel model(
      Parcel parcel, List<Journey> span, AssessmentSettings settings, ModelScope scope) {
    return ParcelModel.of(parcel, span, mesh(settings), scope);
  }

  /** Runs a journey with everything as stated. */
  Fate fate(Journey journey, Missed missed) {
    double[] times = nominal.storedTimes(journey);
    JourneyMeans means = nominal.journeyMeans(journey, Variation.NOMINAL);
    double[][] temperatures = means.temperatures();
    double[][] added = missed.at(times, temperatures.length);
    for (int animal = 0; animal < temperatures.length; animal++) {
      for (int row = 0; row < times.length; row++) {
        temperatures[animal][row] += added[animal][row];
      }
    }
    return JourneyStudy.fate(
        parcel, times, means, journey.duration(), nominal.hotterInReach(journey));
  }

  /**
   * Makes the packing ready for odds.
   *
   * @param span journeys that meet all that there is to meet
   * @param journeys those whose odds will be asked for, at least one
   */
  Odd odd(List<Journey> span, List<Journey> journeys, Missed missed) {
    return odd(model(parcel, span, settings, ModelScope.MEANS), journeys, missed);
  }

  private Odd odd(ParcelModel model, List<Journey> journeys, Missed missed) {
    // sun divides a leg in two: what a run says of fewer legs goes with more of them, too
    Journey shortest =
        Collections.min(
            Checks.notEmpty("journeys", journeys),
            Comparator.comparingInt(each -> each.legs().size()));
    Uncertainties uncertain =
        Uncertainties.of(parcel, shortest, Uncertainties.Ranges.stated(missed.error()));
    return new Odd(
        CondensedModel.of(
            model,
            journeys,
            uncertain.spread(LEARNING, settings.study().seed()),
            settings.study().workers()),
        missed);
  }

  /** The packing, ready for odds. */
  final class Odd {
    private final CondensedModel condensed;
    private final Missed missed;

    private Odd(CondensedModel condensed, Missed missed) {
      this.condensed = condensed;
      this.missed = missed;
    }

    StudyResult odds(Journey journey, StudySettings many, ProgressListener listener) {
      return odds(journey, many, List.of(), listener);
    }

    /** The same, fewer journeys where a look at the first of them is enough. */
    StudyResult odds(
        Journey journey,
        StudySettings many,
        List<JourneyStudy.InterimLook> looks,
        ProgressListener listener) {
      CondensedModel there = condensed.on(journey);
      return JourneyStudy.of(
              parcel,
              there,
              journey.duration(),
              Uncertainties.of(
                  parcel, journey, Uncertainties.Ranges.stated(missed.error() + condensed.error())),
              missed.at(there.times(), there.cups().size()),
              nominal.hotterInReach(journey))
          .run(many, looks, listener);
    }
  }
}
