package stenotherm.transit;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.CancellationException;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Workers;
import stenotherm.journey.Journey;
import stenotherm.parcel.Container;
import stenotherm.parcel.Parcel;
import stenotherm.transit.TransitOutput.OutputQuantity;

/**
 * A packing on one journey, made ready for thousands of runs that differ in what is uncertain. It
 * reads the mean temperature of each animal, or what else was asked for. A run takes a few
 * milliseconds.
 *
 * <p>It spans the strongest principal directions of the states that a {@link ParcelModel} meets on
 * a few runs. {@link #error} tells how far it lies from that model on others. Where the model steps
 * every cell, so does each run, which takes seconds.
 *
 * <p>Experimental. Immutable, thus thread-safe: a run has the same bits on any thread, whatever ran
 * before.
 */
public final class CondensedModel {
  /**
   * Modes of the condensed model: measured, with 17 the error is a quarter larger than with 20,
   * with 15 four times as large.
   */
  private static final int MODES = 18;

  /** What an interrupt stops. */
  private static final String CONDENSED = "while a model was condensed";

  /** Part of the runs given that is kept to measure the error: one in so many. */
  private static final int CHECKED = 4;

  private final ParcelModel whole;
  private final Journey journey;
  private final List<TransitOutput> read;

  /** Where they lie among the outputs of the small model. */
  private final int[] positions;

  private final double[] times;
  private final double error;

  /** None where every cell is stepped. */
  private final @Nullable ReducedParcel small;

  private CondensedModel(
      ParcelModel whole,
      Journey journey,
      List<TransitOutput> read,
      @Nullable ReducedParcel small,
      double error) {
    this.whole = whole;
    this.journey = journey;
    this.read = read;
    List<TransitOutput> all = whole.meansAndPlaces();
    this.positions = read.stream().mapToInt(all::indexOf).toArray();
    this.small = small;
    this.error = error;
    this.times = whole.storedTimes(journey);
  }

  /**
   * Condenses a model.
   *
   * @param whole the model
   * @param journey the journey of all runs
   * @param seen runs whose states are spanned, spread over what is uncertain, at least four: one in
   *     four is kept to measure the error
   * @return the condensed model
   * @throws InvalidInputException if there are fewer than four runs, or the model refuses one
   * @throws CancellationException if an interrupt stopped it
   */
  public static CondensedModel of(ParcelModel whole, Journey journey, List<Variation> seen) {
    return of(whole, List.of(Checks.given("journey", journey)), seen);
  }

  /**
   * Condenses a model for journeys that are alike but for the temperatures of their air, see {@link
   * #on}.
   *
   * @param whole the model
   * @param journeys journeys that span those temperatures, at least one; the model returned runs
   *     the first
   * @param seen runs whose states are spanned, the journeys taking turns, at least four: one in
   *     four is kept to measure the error
   * @return the condensed model
   * @throws InvalidInputException if there are fewer than four runs, or the model refuses one
   * @throws CancellationException if an interrupt stopped it
   */
  public static CondensedModel of(ParcelModel whole, List<Journey> journeys, List<Variation> seen) {
    return of(whole, journeys, seen, new Workers(1));
  }

  /**
   * The same, several runs at a time.
   *
   * @param whole the model
   * @param journeys journeys that span those temperatures, at least one; the model returned runs
   *     the first
   * @param seen runs whose states are spanned, the journeys taking turns, at least four
   * @param workers threads that share the runs; the model has the same bits for any
   * @return the condensed model
   * @throws InvalidInputException if there are fewer than four runs, or the model refuses one
   * @throws CancellationException if an interrupt stopped it
   */
  public static CondensedModel of(
      ParcelModel whole, List<Journey> journeys, List<Variation> seen, Workers workers) {
    return of(
        whole,
        Checks.notEmpty("journeys to span", journeys),
        seen,
        animals(whole),
        Checks.given("workers", workers));
  }

  private static List<TransitOutput> animals(ParcelModel whole) {
    return Checks.given("model", whole).parcel().occupied().stream()
        .map(cup -> new TransitOutput(OutputQuantity.MEAN, cup.name()))
        .toList();
  }

  /**
   * Condenses a model that is to read something else than the animals.
   *
   * @param whole the model
   * @param journey the journey of all runs
   * @param seen runs whose states are spanned, as for animals
   * @param read what runs read: means of blocks, and places that the model was built with
   * @return the condensed model
   * @throws InvalidInputException as for animals, or if the model does not read one of the outputs
   * @throws CancellationException if an interrupt stopped it
   */
  public static CondensedModel of(
      ParcelModel whole, Journey journey, List<Variation> seen, List<TransitOutput> read) {
    List<TransitOutput> outputs = Checks.given("model", whole).meansAndPlaces();
    if (!outputs.containsAll(Checks.given("outputs", read))) {
      throw new InvalidInputException(
          "outputs", read + " are not among those of the model, " + outputs);
    }
    return of(whole, List.of(Checks.given("journey", journey)), seen, read, new Workers(1));
  }

  private static CondensedModel of(
      ParcelModel whole,
      List<Journey> journeys,
      List<Variation> seen,
      List<TransitOutput> read,
      Workers workers) {
    List<TransitOutput> outputs = whole.meansAndPlaces();
    List<TransitOutput> wanted = List.copyOf(read);
    Journey journey = journeys.get(0);
    if (Checks.given("runs to span", seen).size() < CHECKED) {
      throw new InvalidInputException("runs to span", seen.size() + " must be at least " + CHECKED);
    }
    ReducedParcel reduced = whole.reduced();
    if (reduced == null) {
      return new CondensedModel(whole, journey, wanted, null, 0);
    }
    List<ReducedParcel> rough =
        journeys.stream()
            .map(each -> whole.course(each, Variation.NOMINAL))
            .map(usual -> reduced.roughly().startingFrom(usual))
            .toList();
    IntPredicate isKept = run -> run % CHECKED == CHECKED - 1;
    List<Integer> checked = runs(seen, isKept);
    List<Integer> spanned = runs(seen, isKept.negate());
    List<Course> learnt =
        spanned.stream()
            .map(run -> whole.course(journeys.get(turn(journeys, run)), seen.get(run)))
            .toList();
    List<List<double[]>> states =
        workers.map(
            learnt.size(),
            number -> {
              Checks.notInterrupted(CONDENSED);
              ReducedParcel there = rough.get(turn(journeys, spanned.get(number)));
              return there.states(learnt.get(number), whole.interval());
            });
    ReducedParcel small =
        reduced
            .condensed(
                states.stream().flatMap(List::stream).toList(),
                outputs.stream().map(whole::probe).toList(),
                MODES)
            .startingFrom(whole.course(journey, Variation.NOMINAL))
            .forecasting(learnt, workers);
    CondensedModel unchecked = new CondensedModel(whole, journey, wanted, small, 0);
    List<Double> differences =
        workers.map(
            checked.size(),
            number -> {
              Checks.notInterrupted(CONDENSED);
              int run = checked.get(number);
              Journey met = journeys.get(turn(journeys, run));
              CondensedModel there = met.equals(journey) ? unchecked : unchecked.on(met);
              return there.difference(seen.get(run));
            });
    return new CondensedModel(whole, journey, wanted, small, Collections.max(differences));
  }

  private static List<Integer> runs(List<Variation> seen, IntPredicate which) {
    return IntStream.range(0, seen.size()).filter(which).boxed().toList();
  }

  /** Number of the journey of a run. Those kept for the check take turns, too. */
  private static int turn(List<Journey> journeys, int run) {
    return (run + run / CHECKED) % journeys.size();
  }

  /**
   * The same model on another journey. Its error is that of the journeys it was condensed for; the
   * other one should be like them but for the temperatures of its air. Those journeys themselves
   * are treated like any other, so that results depend on what a journey is like alone.
   *
   * @param other the other journey
   * @return the model for it
   */
  public CondensedModel on(Journey other) {
    Checks.given("journey", other);
    if (small == null) {
      return new CondensedModel(whole, other, read, small, error);
    }
    ReducedParcel there = small.startingFrom(whole.course(other, Variation.NOMINAL));
    return new CondensedModel(whole, other, read, there, error);
  }

  /**
   * The same for a single run with everything as stated: it begins to search for its coefficients
   * where runs of the journey of this model do. {@link #on} looks for a better beginning, which
   * pays for many runs.
   *
   * @param other the other journey
   * @return the model for it
   */
  public CondensedModel onceOn(Journey other) {
    return new CondensedModel(whole, Checks.given("journey", other), read, small, error);
  }

  /**
   * Writes what runs need: some megabytes. The model that was condensed comes first, as {@link
   * ParcelModel#write} writes it; then a head with its version, the smaller model in the form that
   * {@link stenotherm.modal} describes, and what forecasts take.
   *
   * @param out where to write to; neither flushed nor closed
   * @throws IOException if writing fails
   * @throws IllegalStateException if every cell is stepped, so that there is nothing to store; if
   *     the model that was condensed {@linkplain ParcelModel#write cannot be written}; or if this
   *     one is {@linkplain #smooth smooth} or reads something else than the animals, which the form
   *     has no room for
   */
  public void write(DataOutput out) throws IOException {
    ReducedParcel model = small;
    if (model == null) {
      throw new IllegalStateException("every cell of this packing is stepped: no model to store");
    }
    if (!model.isQuick()) {
      throw new IllegalStateException(
          "a smooth model is not stored: read again, it would be the usual one; store that and make"
              + " this of it");
    }
    if (!read.equals(animals(whole))) {
      throw new IllegalStateException(
          "a model that reads something else than the animals is not stored");
    }
    whole.write(out);
    StoredCondensed.write(model.stored(error), out);
  }

  /**
   * Reads a model that was written and that reads the mean temperature of each animal. {@link #on}
   * another journey, its runs have the same bits as those of the model that was written. Safe to
   * use on data of unknown origin, as {@link ParcelModel#read}.
   *
   * @param in where to read from; exactly the model is read
   * @param parcel the packing that the model was built for; its name may be another, as with {@link
   *     ParcelModel#read}
   * @param journey the journey of all runs, as the model that was written had it
   * @return the model
   * @throws InvalidInputException if it was built for another packing
   * @throws stenotherm.modal.ModelFormatException if this is no stored model, or one of another
   *     version, or damaged, or the data end within it
   * @throws IOException if reading fails
   */
  public static CondensedModel read(DataInput in, Parcel parcel, Journey journey)
      throws IOException {
    ParcelModel whole = ParcelModel.read(in, parcel);
    ReducedParcel reduced = Objects.requireNonNull(whole.reduced());
    StoredCondensed.Content stored = StoredCondensed.read(in, whole.body());
    return new CondensedModel(
        whole, journey, animals(whole), reduced.condensed(stored), stored.error());
  }

  /**
   * The same model for derivatives: no run shares coefficients with another that lies near, so that
   * temperatures are smooth in what is varied. Sharing saves time and makes steps of about 0.01 K.
   * It cannot be written.
   *
   * @return the model; this one where every cell is stepped
   */
  public CondensedModel smooth() {
    return small == null ? this : new CondensedModel(whole, journey, read, small.sharing(0), error);
  }

  /** The largest difference to the whole model in one run [K]. */
  private double difference(Variation variation) {
    double[][] here = run(variation).temperatures();
    double[][] there = whole.readingsFrom(Objects.requireNonNull(small), journey, variation, read);
    double largest = 0;
    for (int output = 0; output < here.length; output++) {
      for (int row = 0; row < times.length; row++) {
        largest = Math.max(largest, Math.abs(here[output][row] - there[output][row]));
      }
    }
    return largest;
  }

  /**
   * Returns the largest difference to the model that was condensed, over the runs kept for that.
   *
   * @return the difference of a mean temperature [K]; 0 where every cell is stepped
   */
  public double error() {
    return error;
  }

  /**
   * Tells whether each run steps every cell.
   *
   * @return true where the model that was condensed does
   */
  public boolean stepsEveryCell() {
    return small == null;
  }

  /**
   * Returns the names of the cups with an animal, in the order of a run's rows.
   *
   * @return the names; unmodifiable
   */
  public List<String> cups() {
    return whole.parcel().occupied().stream().map(Container::name).toList();
  }

  /**
   * Returns the times of a run's values.
   *
   * @return a copy, since sealing, ascending [s]
   */
  public double[] times() {
    return times.clone();
  }

  /**
   * Runs the packing through the journey.
   *
   * @param variation where the uncertain quantities lie in their ranges
   * @return what is read at each time, the mean temperature of each animal unless other outputs
   *     were asked for, and the air that was breathed
   * @throws InvalidInputException if the variation names a warmer, place or leg that is not there
   * @throws CancellationException if an interrupt stopped it
   * @throws IllegalStateException if the run failed
   */
  public JourneyMeans run(Variation variation) {
    Checks.given("variation", variation);
    ReducedParcel model = small;
    if (model == null) {
      return whole.journeyReadings(journey, variation, read);
    }
    Checks.notInterrupted("between runs");
    return model.read(whole.course(journey, variation), whole.interval(), times.length, positions);
  }
}
