package stenotherm.decision;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CancellationException;
import stenotherm.base.Checks;
import stenotherm.base.ProgressListener;
import stenotherm.base.Times;
import stenotherm.journey.Journey;
import stenotherm.modal.ModelFormatException;
import stenotherm.modal.StoredForm;
import stenotherm.modal.StoredNumbers;
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
  private static final long MAGIC = 0x5354454E4F55544CL;
  private static final int VERSION = 1;

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
    this(
        parcel,
        whole,
        condensed,
        whole.storedTimes(span.get(0)),
        new Additions(correction, hottest(whole, span), error));
  }

  private Outlook(
      Parcel parcel,
      ParcelModel whole,
      CondensedModel condensed,
      double[] times,
      Additions additions) {
    this.parcel = parcel;
    this.whole = whole;
    this.condensed = condensed;
    this.times = times;
    this.correction = additions.correction;
    this.hotter = additions.hotter;
    this.error = additions.error;
  }

  /**
   * What is added to the temperatures of a run.
   *
   * @param correction what finer grids would change: animal, time [K]
   * @param hotter how much hotter than an animal the hottest place is in its reach, likewise [K]
   * @param error the numerical error as a central 90 % [K]
   */
  @SuppressWarnings("ArrayRecordComponent") // internal; never compared or printed
  private record Additions(double[][] correction, double[][] hotter, double error) {}

  /** The most of all journeys with the hours of the first. */
  private static double[][] hottest(ParcelModel whole, List<Journey> span) {
    TransitResult first = nominal(whole, span.get(0));
    double[][] hotter = JourneyStudy.hotter(first);
    for (Journey journey : span.subList(1, span.size())) {
      TransitResult run = nominal(whole, journey);
      if (Arrays.equals(run.times(), first.times())) {
        raise(hotter, JourneyStudy.hotter(run));
      }
    }
    return hotter;
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
   * @param listener told what part of the work is done, of 1, on the calling thread or one that
   *     shares the work, one call at a time; may stop
   * @return the packing, ready for journeys like these
   * @throws stenotherm.base.InvalidInputException if no container holds an animal, there is no
   *     journey, or an ambient does not cover its time
   * @throws CancellationException if the listener or an interrupt stopped it
   * @throws IllegalStateException if a run failed; the message says why
   */
  public static Outlook of(
      Parcel parcel, List<Journey> span, AssessmentSettings settings, ProgressListener listener) {
    return new Assessor(parcel, span, Checks.given("settings", settings)).outlook(listener);
  }

  /**
   * Chooses journeys that span the weather of many: the middle one, the coldest and the hottest, by
   * the mean of the air on the way.
   *
   * @param journeys the journeys, at least one
   * @return one to three of them, the middle one first
   * @throws stenotherm.base.InvalidInputException if there is none
   */
  public static List<Journey> span(List<Journey> journeys) {
    List<Journey> sorted = new ArrayList<>(Checks.notEmpty("journeys", journeys));
    sorted.sort(Comparator.comparingDouble(Outlook::meanAir));
    int last = sorted.size() - 1;
    return List.of(sorted.get(last / 2), sorted.get(0), sorted.get(last)).stream()
        .distinct()
        .toList();
  }

  private static double meanAir(Journey journey) {
    double sum = 0;
    int count = 0;
    for (int leg = 0; leg < journey.legs().size(); leg++) {
      for (double time = journey.start(leg); time < journey.start(leg + 1); time += Times.HOUR) {
        sum += journey.legs().get(leg).surroundings().ambient().at(time);
        count++;
      }
    }
    return sum / count;
  }

  /**
   * Writes what odds take, without the cells: some megabytes, for other machines or a later day.
   *
   * <pre>
   * long      0x5354454E4F55544C, "STENOUTL"
   * int       version, 1
   * the model for nominal runs, see {@link ParcelModel#write}
   * the condensed model, see {@link CondensedModel#write}
   * rows of numbers, see {@link StoredNumbers}: the error [K]; the stored times of the first
   *   journey [s]; for each animal what is added to its temperature [K]; for each animal how much
   *   hotter the hottest place in its reach is [K]
   * </pre>
   *
   * @param out where to write to; neither flushed nor closed
   * @throws IOException if writing fails
   * @throws IllegalStateException if every cell is stepped, so that there is nothing to store
   */
  public void write(DataOutput out) throws IOException {
    out.writeLong(MAGIC);
    out.writeInt(VERSION);
    whole.write(out);
    condensed.write(out);
    List<double[]> rows = new ArrayList<>();
    rows.add(new double[] {error});
    rows.add(times);
    rows.addAll(List.of(correction));
    rows.addAll(List.of(hotter));
    StoredNumbers.write(rows, out);
  }

  /**
   * Reads a packing that was made ready and written. Its odds have the same bits as those of the
   * one that was written. Safe to use on data of unknown origin, as {@link ParcelModel#read}.
   *
   * @param in where to read from; exactly the packing is read
   * @param parcel the packing; its name may be another, nothing else that runs depend on
   * @param journey any journey that it is to be ready for
   * @return the packing, ready for the same journeys
   * @throws stenotherm.base.InvalidInputException if another packing was written
   * @throws ModelFormatException if this is no such packing, or one of another version, or damaged,
   *     or the data end within it
   * @throws IOException if reading fails
   */
  public static Outlook read(DataInput in, Parcel parcel, Journey journey) throws IOException {
    Checks.given("parcel", parcel);
    Checks.given("journey", journey);
    StoredForm.readHead(in, MAGIC, VERSION, "this is no packing that was made ready");
    ParcelModel whole = ParcelModel.read(in, parcel);
    CondensedModel condensed = CondensedModel.read(in, parcel, journey);
    List<double[]> rows = StoredNumbers.read(in);
    int animals = parcel.occupied().size();
    boolean fits = rows.size() == 2 + 2 * animals && rows.get(0).length == 1;
    for (int row = 2; fits && row < rows.size(); row++) {
      fits = rows.get(row).length == rows.get(1).length;
    }
    if (!fits) {
      throw new ModelFormatException("additions", 0, "do not fit the animals of the packing");
    }
    return new Outlook(
        parcel,
        whole,
        condensed,
        rows.get(1),
        new Additions(
            rows.subList(2, 2 + animals).toArray(new double[0][]),
            rows.subList(2 + animals, rows.size()).toArray(new double[0][]),
            rows.get(0)[0]));
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
    return nominal(whole, journey);
  }

  private static TransitResult nominal(ParcelModel whole, Journey journey) {
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
   * @param listener told how many runs of how many are done, on the calling thread or one that
   *     shares the work, one call at a time; may stop
   * @return odds, quantiles and bands until opening
   * @throws stenotherm.base.InvalidInputException as {@link #nominal}
   * @throws CancellationException if the listener or an interrupt stopped it
   * @throws IllegalStateException if a run failed
   */
  public StudyResult odds(Journey journey, StudySettings many, ProgressListener listener) {
    Checks.given("settings", many);
    Checks.given("listener", listener);
    return study(Checks.given("journey", journey)).run(many, listener);
  }
}
