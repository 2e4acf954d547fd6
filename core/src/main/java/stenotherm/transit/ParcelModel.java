package stenotherm.transit;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import stenotherm.base.End;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Outcome;
import stenotherm.base.ProgressListener;
import stenotherm.conduction.FullEngine;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.TemperatureField;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;

/**
 * A packing made ready for many journeys: built once, then each run takes milliseconds.
 *
 * <p>The model is built for journeys that it is told of. Any other journey runs as well, as long as
 * the parcel touches the same things on the same parts of its faces and no face is in the sun, or
 * meets anything but the air around, that never did in those: then its basis lacks what drives it
 * and the run is refused. A run is as close to the full solver where films and conductivities are
 * like those of the journeys told, or within the ranges of the uncertain quantities.
 *
 * <p>A parcel in which something melts, or whose settings ask for it, is stepped cell by cell: the
 * model then holds the grid alone, and a run takes seconds.
 *
 * <p>Experimental. Immutable, thus thread-safe: runs have the same bits on any thread, whatever ran
 * before.
 */
public final class ParcelModel {
  private final ParcelBody body;
  private final TransitSettings settings;
  private final Set<String> inOneAir;

  /** The network with nominal materials. */
  private final HeatNetwork nominal;

  /** Why every cell is stepped; empty if that was asked for. */
  private final String reasonForCells;

  private final @Nullable ReducedParcel reduced;
  private final @Nullable Reduction reduction;

  private ParcelModel(
      ParcelBody body,
      TransitSettings settings,
      Set<String> inOneAir,
      HeatNetwork nominal,
      String reasonForCells,
      @Nullable ReducedParcel reduced,
      @Nullable Reduction reduction) {
    this.body = body;
    this.settings = settings;
    this.inOneAir = inOneAir;
    this.nominal = nominal;
    this.reasonForCells = reasonForCells;
    this.reduced = reduced;
    this.reduction = reduction;
  }

  /**
   * Builds the model of a packing for one journey and what is like it.
   *
   * @param parcel the packing
   * @param journey the journey
   * @param settings how finely
   * @return the model
   * @throws InvalidInputException if the ambient of a leg does not cover its time
   * @throws CancellationException if an interrupt stopped it
   * @throws IllegalStateException if no reduced model could be made; the message says why
   */
  public static ParcelModel of(Parcel parcel, Journey journey, TransitSettings settings) {
    return of(parcel, List.of(journey), settings);
  }

  /**
   * Builds the model of a packing for several journeys and what is like them.
   *
   * @param parcel the packing
   * @param journeys the journeys, at least one; conductivities are taken cell by cell at the mean
   *     temperatures of the first
   * @param settings how finely
   * @return the model
   * @throws InvalidInputException if there is no journey, or the ambient of a leg does not cover
   *     its time
   * @throws CancellationException if an interrupt stopped it
   * @throws IllegalStateException if no reduced model could be made; the message says why
   */
  public static ParcelModel of(Parcel parcel, List<Journey> journeys, TransitSettings settings) {
    if (journeys.isEmpty()) {
      throw new InvalidInputException("journeys", "there is none; a model is built for journeys");
    }
    FaceParts parts = new FaceParts(journeys, parcel.outer());
    HeatNetwork nominal = parcel.network(settings.mesh(), parts.patches());
    ParcelBody body = new ParcelBody(parcel, parts, nominal);
    List<Course> courses =
        journeys.stream().map(each -> new Course(body, each, Variation.NOMINAL)).toList();
    Set<String> inOneAir = inOneAir(courses);
    Optional<String> cells = reasonForCells(parcel, settings);
    if (cells.isPresent()) {
      return new ParcelModel(body, settings, inOneAir, nominal, cells.get(), null, null);
    }
    ReducedParcel reduced =
        new ReducedParcelBuilder(body, nominal, courses, settings.threads()).build();
    Reduction reduction =
        new Reduction(reduced.model().modes(), errors(reduced, courses, settings));
    return new ParcelModel(body, settings, inOneAir, nominal, "", reduced, reduction);
  }

  /** Names of the boundaries that meet the same air in all of some courses. */
  static Set<String> inOneAir(List<Course> courses) {
    Set<String> names = new LinkedHashSet<>(courses.get(0).inOneAir());
    courses.forEach(course -> names.retainAll(course.inOneAir()));
    return names;
  }

  private static Optional<String> reasonForCells(Parcel parcel, TransitSettings settings) {
    if (settings.stepping().conductivities() == IntegratorSettings.Conductivities.LIVE) {
      return Optional.of("coefficients follow the temperatures");
    }
    List<String> melting =
        parcel.packs().stream()
            .filter(pack -> pack.pack().melts())
            .map(pack -> "'" + pack.name() + "'")
            .toList();
    if (!melting.isEmpty()) {
      return Optional.of(String.join(", ", melting) + " can melt");
    }
    return settings.solver() == Solver.FULL ? Optional.of("") : Optional.empty();
  }

  /** The largest estimate of each output's error, nominal and with all quantities at their ends. */
  private static Map<TransitOutput, Double> errors(
      ReducedParcel reduced, List<Course> courses, TransitSettings settings) {
    Map<TransitOutput, Double> largest = new LinkedHashMap<>();
    Course first = courses.get(0);
    for (End end : End.values()) {
      ReducedParcelBuilder.requireNotInterrupted();
      Variation variation = Variation.NOMINAL;
      for (Factor factor : Factor.values()) {
        variation = variation.with(factor, end);
      }
      Course course = new Course(first.body(), first.journey(), variation);
      reduced
          .errors(course, settings.interval())
          .forEach((output, error) -> largest.merge(output, error, Math::max));
    }
    return largest;
  }

  /**
   * Runs the packing through a journey.
   *
   * @param journey the journey
   * @param variation where the uncertain quantities lie
   * @return the history; partial if the outcome is not completed
   * @throws InvalidInputException if the ambient of a leg does not cover its time, the journey
   *     meets what the model was not built for, or the variation names a warmer or leg that is not
   *     there
   */
  public TransitResult run(Journey journey, Variation variation) {
    return run(journey, variation, ProgressListener.NONE);
  }

  /**
   * Runs the packing through a journey, watched by a listener.
   *
   * @param journey the journey
   * @param variation where the uncertain quantities lie
   * @param listener told of each stored value, in simulated seconds; may stop the run
   * @return the history; partial if the outcome is not completed
   * @throws InvalidInputException as without a listener
   */
  public TransitResult run(Journey journey, Variation variation, ProgressListener listener) {
    Course course = course(journey, variation);
    if (reduced == null) {
      return stepped(course, listener);
    }
    return reduced.run(course, settings.interval(), reduction, cells(), listener);
  }

  /**
   * Runs the packing through a journey by stepping every cell under the coefficients that {@link
   * #run} would find: what the reduction leaves can be seen from the difference.
   *
   * @param journey the journey
   * @param variation where the uncertain quantities lie
   * @return the history; partial if the outcome is not completed
   * @throws InvalidInputException as {@link #run}
   */
  public TransitResult runEveryCell(Journey journey, Variation variation) {
    Course course = course(journey, variation);
    ReducedParcel model = reduced;
    if (model == null) {
      return stepped(course, ProgressListener.NONE);
    }
    return stepped(
        course,
        (of, engine) -> model.schedule(of).on(engine, of, model.model().body(), model.reference()),
        new EngineChoice(cells(), "", null, model.schedule(course).change()),
        ProgressListener.NONE);
  }

  /**
   * The coefficients of an engine that steps every cell. Kept with a result: holds the model only.
   */
  private interface RegimeOf {
    Regime on(Course course, FullEngine engine);
  }

  private TransitResult stepped(Course course, ProgressListener listener) {
    return stepped(course, this::following, EngineChoice.full(cells(), reasonForCells), listener);
  }

  /** Coefficients that are taken from the state. */
  private Regime following(Course course, FullEngine engine) {
    VariedCells varied = new VariedCells(course, nominal);
    return settings.stepping().conductivities() == IntegratorSettings.Conductivities.LIVE
        ? new Live(course, engine, varied)
        : new Settling(course, engine, varied);
  }

  private TransitResult stepped(
      Course course, RegimeOf regime, EngineChoice choice, ProgressListener listener) {
    FullEngine engine = fullEngine(course);
    Recorder.Camera camera = time -> fieldAt(course.journey(), course.variation(), regime, time);
    Recorder recorder = new Recorder(course, engine, camera, settings.interval(), listener);
    Run run = new Run(course, regime.on(course, engine), engine, settings.interval());
    Outcome outcome = recorder.outcome(run);
    return recorder.result(outcome, run.coefficients(), choice);
  }

  private FullEngine fullEngine(Course course) {
    HeatNetwork network = new VariedCells(course, nominal).network();
    return new FullEngine(network, body.probes(), course.initialState(), settings.stepping());
  }

  /** The field of a moment, by going through the journey until then. */
  private Supplier<TemperatureField> fieldAt(
      Journey journey, Variation variation, RegimeOf regime, double moment) {
    return () -> {
      Course course = new Course(body, journey, variation);
      FullEngine engine = fullEngine(course);
      TemperatureField[] found = new TemperatureField[1];
      new Run(course, regime.on(course, engine), engine, settings.interval())
          .go(
              new Run.Visitor() {
                @Override
                public void start() {
                  found[0] = engine.field();
                }

                @Override
                public @Nullable Outcome stop(Stage stage, double time) {
                  if (moment > 0 && Thread.currentThread().isInterrupted()) {
                    throw new CancellationException("interrupted on the way to a field");
                  }
                  if (moment > 0 && time >= moment) {
                    found[0] = engine.field();
                  }
                  return time >= moment ? new Outcome.Stopped("as wanted", time) : null;
                }
              });
      return found[0];
    };
  }

  private Course course(Journey journey, Variation variation) {
    for (String warmer : variation.warmers().keySet()) {
      requireKnown(
          "warmer", warmer, body.parcel().warmers().stream().map(each -> each.name()).toList());
    }
    for (int leg : variation.legs().keySet()) {
      if (leg < 0 || leg >= journey.legs().size()) {
        throw new InvalidInputException(
            "ambient offset of leg " + (leg + 1),
            "there are only " + journey.legs().size() + " legs");
      }
    }
    for (String place : variation.places().keySet()) {
      requireKnown(
          "place",
          place,
          journey.legs().stream().map(leg -> leg.place().name()).distinct().toList());
    }
    body.parts().requireContactsOf(journey);
    Course course = new Course(body, journey, variation);
    if (!course.inOneAir().containsAll(inOneAir)) {
      Set<String> others = new LinkedHashSet<>(inOneAir);
      others.removeAll(course.inOneAir());
      throw new InvalidInputException(
          "journey",
          "lets "
              + String.join(", ", others)
              + " meet the sun, the sky or a neighbour, which the model was not built for; build it"
              + " for this journey as well");
    }
    return course;
  }

  private static void requireKnown(String field, String name, List<String> known) {
    if (!known.contains(name)) {
      throw new InvalidInputException(
          field, "there is no '" + name + "' to vary; there are " + known);
    }
  }

  /**
   * Returns the packing.
   *
   * @return the packing with nominal properties
   */
  public Parcel parcel() {
    return body.parcel();
  }

  /**
   * Returns the size of the grid.
   *
   * @return number of solid cells
   */
  public int cells() {
    return nominal.solidCellCount();
  }

  /**
   * Returns how the packing was reduced, and an estimate of what that costs: the largest error of
   * each output over runs through the first journey, with all uncertain quantities nominal, at
   * their low and at their high ends.
   *
   * @return the reduction; empty if every cell is stepped
   */
  public Optional<Reduction> reduction() {
    return Optional.ofNullable(reduction);
  }

  /** The same model, stages of a run sharing coefficients up to another distance of these. */
  ParcelModel sharing(double distance) {
    ReducedParcel other = reduced == null ? null : reduced.sharing(distance);
    return new ParcelModel(body, settings, inOneAir, nominal, reasonForCells, other, reduction);
  }

  /** Coefficients that runs have at hand; more are found by runs that need them. */
  int settingsAtHand() {
    return reduced == null ? 0 : reduced.atHand().size();
  }
}
