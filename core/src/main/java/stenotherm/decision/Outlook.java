package stenotherm.decision;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import stenotherm.base.ProgressListener;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;
import stenotherm.study.JourneyStudy;
import stenotherm.study.StudyResult;
import stenotherm.study.StudySettings;
import stenotherm.study.Uncertainties;
import stenotherm.transit.CondensedModel;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.TransitResult;
import stenotherm.transit.Variation;

/**
 * A packing made ready for odds on many journeys that are alike but for their weather or their
 * hours: on other days, in other places, with a delay. Making it takes seconds, a journey
 * milliseconds.
 *
 * <p>What finer grids would change is found on the first of the journeys given, and added to all.
 * How much hotter than an animal the hottest place is that it can reach is the most of all of them.
 * A journey whose hours are others has its own hottest places and gets no correction, all of which
 * then counts as error.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class Outlook {
  private final Parcel parcel;
  private final ParcelModel whole;
  private final CondensedModel condensed;
  private final double[] times;
  private final double[][] correction;
  private final double[][] hotter;
  private final double error;

  /**
   * Starts from what an assessor has prepared.
   *
   * @param span the journeys given; on the first the correction was found
   * @param whole the model for nominal runs
   * @param correction what is added to each temperature: animal, time [K]
   * @param error the numerical error as a central 90 % [K]
   */
  Outlook(
      Parcel parcel,
      List<Journey> span,
      ParcelModel whole,
      CondensedModel condensed,
      double[][] correction,
      double error) {
    this.parcel = parcel;
    this.whole = whole;
    this.condensed = condensed;
    this.times = whole.storedTimes(span.get(0));
    this.correction = correction;
    this.error = error;
    this.hotter = JourneyStudy.hotter(nominal(span.get(0)));
    for (Journey journey : span.subList(1, span.size())) {
      TransitResult run = nominal(journey);
      if (Arrays.equals(run.times(), times)) {
        raise(hotter, JourneyStudy.hotter(run));
      }
    }
  }

  /** Raises values to others where these are higher. */
  private static void raise(double[][] values, double[][] others) {
    for (int row = 0; row < values.length; row++) {
      for (int column = 0; column < values[row].length; column++) {
        values[row][column] = Math.max(values[row][column], others[row][column]);
      }
    }
  }

  /**
   * Makes a packing ready.
   *
   * @param parcel the packing
   * @param span journeys that span the weather, at least one: the usual one first, then the ends,
   *     such as the coldest and the hottest
   * @param settings mesh, time steps and solver; journeys are not held longer than they last
   * @param listener told how much is done; may stop
   * @return the packing, ready for journeys like these
   * @throws stenotherm.base.InvalidInputException if no container holds an animal, there is no
   *     journey, or an ambient does not cover its time
   * @throws CancellationException if the listener or an interrupt stopped it
   * @throws IllegalStateException if a run failed; the message says why
   */
  public static Outlook of(
      Parcel parcel, List<Journey> span, AssessmentSettings settings, ProgressListener listener) {
    return new Assessor(parcel, span, settings).outlook(listener);
  }

  /**
   * Returns the packing.
   *
   * @return the packing
   */
  public Parcel parcel() {
    return parcel;
  }

  /** Error of a temperature as a central 90 % [K]. */
  double error() {
    return error;
  }

  /**
   * Runs a journey with everything as stated.
   *
   * @param journey the journey
   * @return its history, without the correction
   * @throws stenotherm.base.InvalidInputException if the journey meets what the packing was not
   *     made ready for, such as sun
   * @throws IllegalStateException if the run failed
   */
  public TransitResult nominal(Journey journey) {
    return whole.run(journey, Variation.NOMINAL).requireCompleted();
  }

  /**
   * Makes the study of a journey, everything uncertain in its stated range.
   *
   * @param journey the journey
   * @return its study
   * @throws stenotherm.base.InvalidInputException as {@link #nominal}
   * @throws IllegalStateException if the nominal run failed
   */
  public JourneyStudy study(Journey journey) {
    CondensedModel there = condensed.on(journey);
    boolean sameHours = Arrays.equals(there.times(), times);
    double[][] added = sameHours ? correction : new double[correction.length][there.times().length];
    double uncertain = sameHours ? error : error + GridCorrection.largest(correction);
    return JourneyStudy.of(
        parcel,
        there,
        journey.duration(),
        Uncertainties.of(parcel, journey, Uncertainties.Ranges.stated(uncertain)),
        added,
        sameHours ? hotter : JourneyStudy.hotter(nominal(journey)));
  }

  /**
   * Finds the odds of a journey.
   *
   * @param journey the journey
   * @param many how many runs; journeys with the same uncertain quantities are run on the same
   *     points
   * @param listener told how many are done; may stop
   * @return odds, quantiles and bands until opening
   * @throws stenotherm.base.InvalidInputException as {@link #nominal}
   * @throws CancellationException if the listener or an interrupt stopped it
   * @throws IllegalStateException if a run failed
   */
  public StudyResult odds(Journey journey, StudySettings many, ProgressListener listener) {
    return study(journey).run(many, listener);
  }
}
