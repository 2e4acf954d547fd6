package stenotherm.transit;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import stenotherm.base.Checks;
import stenotherm.base.End;
import stenotherm.base.InvalidInputException;
import stenotherm.base.ListenerGuard;
import stenotherm.base.Outcome;
import stenotherm.base.ProgressListener;
import stenotherm.base.Suggestions;
import stenotherm.conduction.FullEngine;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.Probe;
import stenotherm.conduction.TemperatureField;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.grid.RectilinearGrid;
import stenotherm.journey.Journey;
import stenotherm.parcel.Container;
import stenotherm.parcel.Parcel;
import stenotherm.transit.TransitOutput.OutputQuantity;

/**
 * A packing made ready for many journeys: built once, then each run takes milliseconds.
 *
 * <p>The model is built for given journeys. Other journeys run as well if contacts cover only parts
 * of faces that a contact of a given journey covers, and if each face that meets nothing but the
 * air on all given journeys does so on the other one. Else the run is refused: the model lacks what
 * drives it. The error estimate holds where films and conductivities are like those of the given
 * journeys or within the ranges of the uncertain quantities.
 *
 * <p>Each run finds its own coefficients by going through the journey a few times on the model;
 * nothing that one run learns reaches another.
 *
 * <p>A pack that melts does so as one body: by its mean temperature. A parcel whose settings ask
 * for it is stepped cell by cell, each of which then melts by its own temperature: the model then
 * holds nothing but the grid, and a run takes seconds.
 *
 * <p>Experimental. Immutable, thus thread-safe: a run has the same bits on any thread, whatever ran
 * before.
 */
public final class ParcelModel {
  private final ParcelBody body;
  private final ModelScope scope;
  private final Set<String> inOneAir;
  private final int cells;
  private final double interval;

  /** What stepping every cell takes; none in a model that was read. */
  private final @Nullable Stepping stepping;

  private final @Nullable ReducedParcel reduced;
  private final @Nullable Reduction reduction;

  /**
   * What stepping every cell takes.
   *
   * @param network the network with nominal materials
   * @param settings mesh, time steps and solver
   * @param reason why every cell is stepped; empty if that was asked for
   */
  private record Stepping(HeatNetwork network, IntegratorSettings settings, String reason) {
    boolean isLive() {
      return settings.conductivities() == IntegratorSettings.Conductivities.LIVE;
    }
  }

  private ParcelModel(
      ParcelBody body,
      ModelScope scope,
      Set<String> inOneAir,
      int cells,
      double interval,
      @Nullable Stepping stepping,
      @Nullable ReducedParcel reduced,
      @Nullable Reduction reduction) {
    this.body = body;
    this.scope = scope;
    this.inOneAir = inOneAir;
    this.cells = cells;
    this.interval = interval;
    this.stepping = stepping;
    this.reduced = reduced;
    this.reduction = reduction;
  }

  /**
   * Builds the model of a packing for one journey and others like it, with the widest scope. A
   * {@linkplain ModelScope narrower one} is built in less than half of the time.
   *
   * @param parcel the packing
   * @param journey the journey
   * @param settings mesh, time steps and solver
   * @return the model
   * @throws InvalidInputException if the ambient of a leg does not cover its time
   * @throws CancellationException if an interrupt stopped it
   * @throws IllegalStateException if no reduced model could be made; the message says why
   */
  public static ParcelModel of(Parcel parcel, Journey journey, TransitSettings settings) {
    return of(parcel, List.of(Checks.given("journey", journey)), settings);
  }

  /**
   * Builds the model of a packing for several journeys and others like them.
   *
   * @param parcel the packing
   * @param journeys the journeys, at least one; conductivities are taken cell by cell at the mean
   *     temperatures of the longest stage of the first
   * @param settings mesh, time steps and solver
   * @return the model
   * @throws InvalidInputException if there is no journey, the grid is larger than the mesh allows,
   *     or the ambient of a leg does not cover its time
   * @throws CancellationException if an interrupt stopped it
   * @throws IllegalStateException if no reduced model could be made; the message says why
   */
  public static ParcelModel of(Parcel parcel, List<Journey> journeys, TransitSettings settings) {
    return of(parcel, journeys, settings, ModelScope.ALL);
  }

  /**
   * Builds a model that is asked for no more than its scope. Where every cell is stepped the scope
   * makes no difference.
   *
   * @param parcel the packing
   * @param journeys the journeys, at least one
   * @param settings mesh, time steps and solver
   * @param scope what is asked for; anything else throws an {@link IllegalStateException}
   * @return the model
   * @throws InvalidInputException as without a scope
   * @throws CancellationException if an interrupt stopped it
   * @throws IllegalStateException if no reduced model could be made; the message says why
   */
  public static ParcelModel of(
      Parcel parcel, List<Journey> journeys, TransitSettings settings, ModelScope scope) {
    return of(parcel, journeys, settings, scope, ProgressListener.NONE);
  }

  /**
   * Builds a model that is asked for no more than its scope, watched by a listener.
   *
   * @param parcel the packing
   * @param journeys the journeys, at least one
   * @param settings mesh, time steps and solver
   * @param scope what is asked for; anything else throws an {@link IllegalStateException}
   * @param listener told on the calling thread, a few times, what part of the work is done, of 1;
   *     may stop. What it throws is thrown here as it is. An interrupt stops sooner
   * @return the model
   * @throws InvalidInputException as without a scope
   * @throws CancellationException if the listener or an interrupt stopped it
   * @throws IllegalStateException if no reduced model could be made; the message says why
   */
  public static ParcelModel of(
      Parcel parcel,
      List<Journey> journeys,
      TransitSettings settings,
      ModelScope scope,
      ProgressListener listener) {
    return of(parcel, journeys, settings, scope, Map.of(), null, new ListenerGuard(listener));
  }

  /**
   * Builds another model of the packing for the same journeys, on another mesh or with another
   * scope. What both need to know first, the temperatures and coefficients of nominal runs, it
   * takes from this one instead of from a small model of its own, which saves a tenth to a quarter
   * of the time.
   *
   * @param journeys the journeys that this model was built for
   * @param settings mesh, time steps and solver
   * @param scope what is asked for
   * @param listener as for a first model
   * @return the other model
   * @throws InvalidInputException as for a first model, or if a journey meets what this model was
   *     not built for
   * @throws CancellationException if the listener or an interrupt stopped it
   * @throws IllegalStateException if no reduced model could be made; the message says why
   */
  public ParcelModel another(
      List<Journey> journeys,
      TransitSettings settings,
      ModelScope scope,
      ProgressListener listener) {
    Checks.given("journeys", journeys).forEach(journey -> course(journey, Variation.NOMINAL));
    ReducedParcel known = stepping == null ? null : reduced;
    return of(parcel(), journeys, settings, scope, Map.of(), known, new ListenerGuard(listener));
  }

  /**
   * Builds a model that also reads the temperature at places, such as those of sensors: outputs
   * {@link OutputQuantity#PLACE} of their names, and {@link TransitResult#at}.
   *
   * @param parcel the packing
   * @param journeys the journeys, at least one
   * @param settings mesh, time steps and solver
   * @param scope what is asked for
   * @param places the places by name, within the outer box
   * @return the model
   * @throws InvalidInputException as without places, or if a place is not inside the outer box
   * @throws CancellationException if an interrupt stopped it
   * @throws IllegalStateException if no reduced model could be made; the message says why
   */
  public static ParcelModel withPlaces(
      Parcel parcel,
      List<Journey> journeys,
      TransitSettings settings,
      ModelScope scope,
      Map<String, Point> places) {
    Checks.given("parcel", parcel);
    Checks.given("places", places);
    places.forEach(
        (name, place) -> {
          if (!parcel.outer().contains(place)) {
            throw new InvalidInputException(
                "place '" + name + "'", place + " [m] is not inside the box, " + parcel.outer());
          }
        });
    ListenerGuard none = new ListenerGuard(ProgressListener.NONE);
    return of(parcel, journeys, settings, scope, places, null, none);
  }

  private static ParcelModel of(
      Parcel stated,
      List<Journey> journeys,
      TransitSettings settings,
      ModelScope scope,
      Map<String, Point> places,
      @Nullable ReducedParcel known,
      ListenerGuard listener) {
    Checks.given("scope", scope);
    Checks.given("parcel", stated);
    Checks.given("settings", settings);
    if (Checks.given("journeys", journeys).isEmpty()) {
      throw new InvalidInputException("journeys", "there is none; a model needs at least one");
    }
    Optional<String> reason = reasonForCells(settings);
    Parcel parcel = reason.isEmpty() ? stated.withPacksAsBodies() : stated;
    if (reason.isEmpty()) {
      MeshControl mesh = settings.mesh();
      mesh.budget().requireReducible(RectilinearGrid.size(parcel.layout(), mesh));
    }
    FaceParts parts = FaceParts.on(journeys, parcel.outer());
    HeatNetwork network = parcel.network(settings.mesh(), parts.patches(), parcel.innerHeat());
    ParcelBody whole = ParcelBody.of(parcel, parts, network, places);
    ParcelBody body = reason.isEmpty() ? whole.within(scope) : whole;
    List<Course> courses =
        journeys.stream().map(each -> new Course(body, each, Variation.NOMINAL)).toList();
    ReducedParcel reduced = null;
    Reduction reduction = null;
    if (reason.isEmpty()) {
      reduced =
          new ReducedParcelBuilder(
                  body, network, courses, scope, known, settings.workers(), listener)
              .build();
      if (!scope.isMeansAlone()) {
        List<End> ends = scope.isNominalAlone() ? List.of(End.NOMINAL) : List.of(End.values());
        reduction =
            new Reduction(reduced.model().modes(), errors(reduced, courses, settings, ends));
      }
    }
    return new ParcelModel(
        body,
        scope,
        inOneAir(courses),
        network.solidCellCount(),
        settings.interval(),
        new Stepping(network, settings.stepping(), reason.orElse("")),
        reduced,
        reduction);
  }

  /**
   * Writes what runs need, without the cells: some megabytes. A head with its version, a checksum
   * of the packing, the scope, error estimates and coefficients at hand comes first; then the
   * reduced model in the form that {@link stenotherm.modal} describes. Another version than that of
   * this library is refused when it is read.
   *
   * @param out where to write to; neither flushed nor closed
   * @throws IOException if writing fails
   * @throws IllegalStateException if every cell is stepped, so that there is nothing to store; if
   *     the model reads places by name or is {@linkplain #settlingFinely one that settles finely},
   *     which the form has no room for
   */
  public void write(DataOutput out) throws IOException {
    if (reduced == null) {
      throw new IllegalStateException("every cell of this packing is stepped: no model to store");
    }
    if (body.hasPlaces()) {
      throw new IllegalStateException("a model that reads places by name is not stored");
    }
    if (!reduced.isUsual()) {
      throw new IllegalStateException(
          "a model that settles finely is not stored: read again, it would settle as usual; store"
              + " the usual one and make this of it");
    }
    TreeSet<String> names = new TreeSet<>(inOneAir);
    Map<TransitOutput, Double> errors = reduction == null ? Map.of() : reduction.errors();
    StoredParcel.write(
        body, new StoredParcel.Content(cells, scope, interval, names, reduced, errors), out);
  }

  /**
   * Reads a model that was written. Its runs have the same bits as those of the model that was
   * written, whatever its scope; fields and {@link #runEveryCell} need the cells and throw an
   * {@link IllegalStateException} that says so. Safe to use on data of unknown origin, as {@link
   * stenotherm.modal.ReducedModel#read}.
   *
   * @param in where to read from; exactly the model is read
   * @param parcel the packing that the model was built for. Its name may be another, and so may
   *     citations, cautions and what animals tolerate; walls, contents, openings and how warmers
   *     burn and lie may not: coefficients at hand and the basis were found for these
   * @return the model
   * @throws InvalidInputException if it was built for another packing
   * @throws stenotherm.modal.ModelFormatException if this is no stored model, or one of another
   *     version, or damaged, or the data end within it
   * @throws IOException if reading fails
   */
  public static ParcelModel read(DataInput in, Parcel parcel) throws IOException {
    StoredParcel.Read read =
        StoredParcel.read(in, Checks.given("parcel", parcel).withPacksAsBodies());
    StoredParcel.Content content = read.content();
    ReducedParcel reduced = content.reduced();
    boolean whole = !content.scope().isMeansAlone();
    return new ParcelModel(
        read.body(),
        content.scope(),
        content.inOneAir(),
        content.cells(),
        content.interval(),
        null,
        reduced,
        whole ? new Reduction(reduced.model().modes(), content.errors()) : null);
  }

  /** Names of the boundaries that meet nothing but the air in all of some courses. */
  static Set<String> inOneAir(List<Course> courses) {
    Set<String> names = new LinkedHashSet<>(courses.get(0).inOneAir());
    courses.forEach(course -> names.retainAll(course.inOneAir()));
    return names;
  }

  /**
   * Tells whether every cell of a packing would be stepped, without building anything.
   *
   * @param settings mesh, time steps and solver
   * @return false if there would be a reduced model
   */
  public static boolean stepsEveryCell(TransitSettings settings) {
    return reasonForCells(Checks.given("settings", settings)).isPresent();
  }

  private static Optional<String> reasonForCells(TransitSettings settings) {
    if (settings.stepping().conductivities() == IntegratorSettings.Conductivities.LIVE) {
      return Optional.of("coefficients follow the temperatures");
    }
    return settings.solver() == Solver.FULL ? Optional.of("") : Optional.empty();
  }

  /** The largest estimate of each output's error, nominal and with all quantities at their ends. */
  private static Map<TransitOutput, Double> errors(
      ReducedParcel reduced, List<Course> courses, TransitSettings settings, List<End> ends) {
    Map<TransitOutput, Double> largest = new LinkedHashMap<>();
    Course first = courses.get(0);
    for (End end : ends) {
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
   * @param variation where the uncertain quantities lie in their ranges
   * @return the history; partial if the outcome is not completed
   * @throws InvalidInputException if the ambient of a leg does not cover its time, the journey
   *     meets what the model was not built for, or the variation names a warmer, a place or a leg
   *     that is not there or makes air colder than 200 K
   */
  public TransitResult run(Journey journey, Variation variation) {
    return run(journey, variation, ProgressListener.NONE);
  }

  /**
   * Runs the packing through a journey, watched by a listener.
   *
   * @param journey the journey
   * @param variation where the uncertain quantities lie in their ranges
   * @param listener told on the calling thread at each stored time after sealing how much of the
   *     journey is done [s]; may stop the run. What it throws is thrown here as it is
   * @return the history; partial if the outcome is not completed: the listener or an interrupt
   *     stopped it, or the solver failed
   * @throws InvalidInputException as without a listener
   * @throws IllegalStateException if the model was built for means alone
   */
  public TransitResult run(Journey journey, Variation variation, ProgressListener listener) {
    Checks.given("listener", listener);
    Course course = course(journey, variation);
    if (reduced == null) {
      return stepped(course, listener);
    }
    if (reduction == null) {
      throw new IllegalStateException("the model was built for means alone, not for whole results");
    }
    return reduced.run(course, interval, reduction, cells, listener);
  }

  /**
   * Runs the packing through a journey and reads the mean temperatures of its animals.
   *
   * @param journey the journey
   * @param variation where the uncertain quantities lie in their ranges
   * @return mean temperature of each animal [K]: a row for each occupied cup, a column for each of
   *     the {@link #storedTimes}
   * @throws InvalidInputException as {@link #run}
   * @throws CancellationException if an interrupt stopped it
   * @throws IllegalStateException if the run failed
   */
  public double[][] means(Journey journey, Variation variation) {
    return means(journey, variation, parcel().occupied().stream().map(Container::name).toList());
  }

  /**
   * Runs the packing through a journey and reads mean temperatures.
   *
   * @param journey the journey
   * @param variation where the uncertain quantities lie in their ranges
   * @param names names of occupied cups, warmers or packs
   * @return mean temperature of each [K]: a row for each name, a column for each of the {@link
   *     #storedTimes}
   * @throws InvalidInputException as {@link #run}, or if nothing has one of the names
   * @throws CancellationException if an interrupt stopped it
   * @throws IllegalStateException if the run failed
   */
  public double[][] means(Journey journey, Variation variation, List<String> names) {
    return readings(
        journey,
        variation,
        Checks.given("names", names).stream()
            .map(name -> new TransitOutput(OutputQuantity.MEAN, name))
            .toList());
  }

  /**
   * Runs the packing through a journey and reads outputs.
   *
   * @param journey the journey
   * @param variation where the uncertain quantities lie in their ranges
   * @param wanted the outputs
   * @return a row for each output [K], a column for each of the {@link #storedTimes}
   * @throws InvalidInputException as {@link #run}, or if the model does not read one of the outputs
   * @throws CancellationException if an interrupt stopped it
   * @throws IllegalStateException if the run failed
   */
  public double[][] readings(Journey journey, Variation variation, List<TransitOutput> wanted) {
    return journeyReadings(journey, variation, wanted).temperatures();
  }

  /**
   * Runs the packing through a journey, all quantities nominal, and reads the hottest place that
   * each animal can reach, see {@link TransitResult#hottestPlace}, against the animal itself.
   *
   * @param journey the journey
   * @return difference to the animal's mean temperature [K]: a row for each occupied cup, a column
   *     for each of the {@link #storedTimes}
   * @throws InvalidInputException as {@link #run}, or if the model reads no places
   * @throws CancellationException if an interrupt stopped it
   * @throws IllegalStateException if the run failed
   */
  public double[][] hotterInReach(Journey journey) {
    List<TransitOutput> wanted = new ArrayList<>();
    for (Container cup : parcel().occupied()) {
      wanted.add(new TransitOutput(OutputQuantity.MEAN, cup.name()));
      wanted.addAll(ParcelBody.placesInReach(cup.name()));
    }
    List<double[]> readings = List.of(readings(journey, Variation.NOMINAL, wanted));
    double[][] hotter = new double[parcel().occupied().size()][];
    int each = readings.size() / hotter.length;
    for (int animal = 0; animal < hotter.length; animal++) {
      List<double[]> own = readings.subList(animal * each, (animal + 1) * each);
      double[] above = TransitResult.extremes(own.subList(1, each), Math::max);
      Arrays.setAll(above, row -> above[row] - own.get(0)[row]);
      hotter[animal] = above;
    }
    return hotter;
  }

  /**
   * Runs the packing through a journey and reads what a judgement takes.
   *
   * @param journey the journey
   * @param variation where the uncertain quantities lie in their ranges
   * @return mean temperature of each animal at the {@link #storedTimes}, and the air it breathed
   * @throws InvalidInputException as {@link #run}
   * @throws CancellationException if an interrupt stopped it
   * @throws IllegalStateException if the run failed
   */
  public JourneyMeans journeyMeans(Journey journey, Variation variation) {
    return journeyReadings(
        journey,
        variation,
        parcel().occupied().stream()
            .map(cup -> new TransitOutput(OutputQuantity.MEAN, cup.name()))
            .toList());
  }

  JourneyMeans journeyReadings(Journey journey, Variation variation, List<TransitOutput> wanted) {
    int[] positions = body.positions(Checks.given("outputs", wanted));
    if (reduced == null) {
      TransitResult result = run(journey, variation).requireCompleted();
      double[][] values = wanted.stream().map(result::readings).toArray(double[][]::new);
      return new JourneyMeans(values, result.breathing());
    }
    return read(reduced, journey, variation, positions);
  }

  /** The same as {@link #readings}, coefficients searched for from where another model has them. */
  double[][] readingsFrom(
      ReducedParcel other, Journey journey, Variation variation, List<TransitOutput> wanted) {
    ReducedParcel model =
        Objects.requireNonNull(reduced).startingFrom(other, course(journey, variation));
    return read(model, journey, variation, body.positions(wanted)).temperatures();
  }

  private JourneyMeans read(
      ReducedParcel model, Journey journey, Variation variation, int[] positions) {
    return model.read(course(journey, variation), interval, storedTimes(journey).length, positions);
  }

  /**
   * Runs the packing through a journey by stepping every cell under the coefficients that {@link
   * #run} would find: the difference is the error of the reduction.
   *
   * @param journey the journey
   * @param variation where the uncertain quantities lie in their ranges
   * @return the history; partial if the outcome is not completed
   * @throws InvalidInputException as {@link #run}
   */
  public TransitResult runEveryCell(Journey journey, Variation variation) {
    Course course = course(journey, variation);
    ReducedParcel model = reduced;
    if (model == null) {
      return stepped(course, ProgressListener.NONE);
    }
    Schedule schedule = model.schedule(course);
    return stepped(
        course,
        (of, engine) -> model.schedule(of).on(engine, of, model.model().body(), model.reference()),
        new EngineChoice(cells, "", null, model.change(course, schedule)),
        ProgressListener.NONE);
  }

  /**
   * The coefficients of an engine that steps every cell. Kept with a result: holds the model only.
   */
  private interface RegimeOf {
    Regime on(Course course, FullEngine engine);
  }

  private TransitResult stepped(Course course, ProgressListener listener) {
    EngineChoice choice = EngineChoice.full(cells, stepping().reason);
    return stepped(course, this::following, choice, listener);
  }

  /** Coefficients that follow the state. */
  Regime following(Course course, FullEngine engine) {
    Stepping how = stepping();
    VariedCells varied = new VariedCells(course, how.network);
    return new FollowedState(course, engine, varied, how.isLive());
  }

  private TransitResult stepped(
      Course course, RegimeOf regime, EngineChoice choice, ProgressListener listener) {
    FullEngine engine = fullEngine(course);
    Recorder.Camera camera = time -> fieldAt(course.journey(), course.variation(), regime, time);
    Recorder recorder = new Recorder(course, engine, camera, interval, listener);
    Run run = new Run(course, regime.on(course, engine), engine, interval, Run.FINE_STEP);
    Outcome outcome = recorder.outcome(run);
    return recorder.result(outcome, run.coefficients(), choice);
  }

  private Stepping stepping() {
    if (stepping == null) {
      throw new IllegalStateException(
          "the model was read without its cells; stepping every cell needs them");
    }
    return stepping;
  }

  FullEngine fullEngine(Course course) {
    HeatNetwork network = new VariedCells(course, stepping().network).network();
    return new FullEngine(network, body.probes(), course.initialState(), stepping().settings);
  }

  /** The field of a moment, by going through the journey until then. */
  private Supplier<TemperatureField> fieldAt(
      Journey journey, Variation variation, RegimeOf regime, double moment) {
    return () -> {
      Course course = new Course(body, journey, variation);
      FullEngine engine = fullEngine(course);
      TemperatureField[] found = new TemperatureField[1];
      new Run(course, regime.on(course, engine), engine, interval, Run.FINE_STEP)
          .go(
              new Run.Visitor() {
                @Override
                public void start() {
                  found[0] = engine.field();
                }

                @Override
                public @Nullable Outcome stop(Stage stage, double time) {
                  if (moment > 0) {
                    Checks.notInterrupted("on the way to a field");
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

  /** What a run goes through; refuses what the model was not built for. */
  Course course(Journey journey, Variation variation) {
    Checks.given("journey", journey);
    Checks.given("variation", variation);
    for (String warmer : variation.warmers().keySet()) {
      requireKnown(
          "warmer", warmer, body.parcel().warmers().stream().map(each -> each.name()).toList());
    }
    for (int leg : variation.legs().keySet()) {
      if (leg < 0 || leg >= journey.legs().size()) {
        throw new InvalidInputException(
            "ambient offset of leg " + leg,
            "there is no such leg; they are counted from 0, the last is "
                + (journey.legs().size() - 1));
      }
    }
    for (String place : variation.places().keySet()) {
      requireKnown(
          "place",
          place,
          journey.legs().stream().map(leg -> leg.place().name()).distinct().toList());
    }
    if (reduced != null && scope.isNominalAlone() && variation.movesProperties()) {
      throw new IllegalStateException("the model was built for nominal properties alone");
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
      throw Suggestions.unknown(field, name, known);
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
    return cells;
  }

  /**
   * Returns the number of modes and an estimate of the error in each output: the largest over three
   * runs through the first journey, with all uncertain quantities nominal, all at their low ends
   * and all at their high ends.
   *
   * @return the reduction; empty if every cell is stepped, or for means alone
   */
  public Optional<Reduction> reduction() {
    return Optional.ofNullable(reduction);
  }

  @Nullable ReducedParcel reduced() {
    return reduced;
  }

  ParcelBody body() {
    return body;
  }

  double interval() {
    return interval;
  }

  /** Means of blocks, those of the animals first, and places that were asked for. */
  List<TransitOutput> meansAndPlaces() {
    return body.meansAndPlaces();
  }

  Probe probe(TransitOutput output) {
    return body.probe(output);
  }

  /**
   * Returns the times at which a run through a journey stores values.
   *
   * @param journey the journey
   * @return multiples of the settings' interval, and the end and the planned end of each leg,
   *     ascending from 0 [s]
   */
  public double[] storedTimes(Journey journey) {
    Checks.given("journey", journey);
    TreeSet<Double> times = new TreeSet<>();
    times.add(0.0);
    for (int leg = 0; leg < journey.legs().size(); leg++) {
      // a verdict ends at the planned opening, whatever delay is followed
      times.add(journey.start(leg) + journey.legs().get(leg).duration());
      times.add(journey.start(leg + 1));
    }
    Course.addMultiples(times, interval, 0, journey.duration());
    return times.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /**
   * The same model with coefficients taken anew more often: nine times instead of twice after a
   * leg's beginning. The difference of two runs tells what holding them does. It cannot be written.
   *
   * @return the model; this one if every cell is stepped
   */
  public ParcelModel settlingFinely() {
    return reduced == null
        ? this
        : new ParcelModel(
            body, scope, inOneAir, cells, interval, stepping, reduced.settlingFinely(), reduction);
  }

  /** The same model, stages of a run sharing coefficients up to another distance of these. */
  ParcelModel sharing(double distance) {
    ReducedParcel other = reduced == null ? null : reduced.sharing(distance);
    return new ParcelModel(body, scope, inOneAir, cells, interval, stepping, other, reduction);
  }

  /** Coefficients that runs have at hand; more are found by runs that need them. */
  int settingsAtHand() {
    return reduced == null ? 0 : reduced.atHand().size();
  }
}
