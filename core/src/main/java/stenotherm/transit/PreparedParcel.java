package stenotherm.transit;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import stenotherm.base.Outcome;
import stenotherm.base.ProgressListener;
import stenotherm.conduction.FullEngine;
import stenotherm.conduction.HeatEngine;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.grid.FacePatch;
import stenotherm.grid.MeshControl;
import stenotherm.journey.Journey;
import stenotherm.modal.ModalEngine;
import stenotherm.modal.ReducedModel;
import stenotherm.parcel.Parcel;

/**
 * A packing made ready for several transits. For each mesh it keeps the grid of the nominal packing
 * and a reduced model, so that a further run, with quantities at ends of their ranges or with a leg
 * that lasts longer, costs a fraction of the first.
 *
 * <p>All runs on a mesh share the nominal packing's grid: no run differs from another by where the
 * cells lie. A model that has met more answers a little differently, within the error that it
 * states; runs in the same order give the same bits.
 *
 * <p>Experimental. Not thread-safe: one object belongs to one thread.
 */
public final class PreparedParcel {
  private final Parcel parcel;
  private final Map<Place, PreparedBody> bodies = new HashMap<>();

  /** What the grid and the ports of a packing depend on. */
  private record Place(MeshControl mesh, List<FacePatch> patches) {}

  /**
   * Prepares nothing yet: grids and models are made by the runs that need them.
   *
   * @param parcel the packing
   */
  public PreparedParcel(Parcel parcel) {
    this.parcel = parcel;
  }

  /**
   * Returns the packing.
   *
   * @return the packing with nominal properties
   */
  public Parcel parcel() {
    return parcel;
  }

  /**
   * Runs the packing through a journey.
   *
   * @param journey the journey
   * @param variation which uncertain quantities are at an end of their range
   * @param settings how finely
   * @param listener told of each stored value, in simulated seconds; may stop the run
   * @return the history; partial if the outcome is not completed
   * @throws stenotherm.base.InvalidInputException if the ambient of a leg does not cover its time
   */
  public TransitResult run(
      Journey journey, Variation variation, TransitSettings settings, ProgressListener listener) {
    FaceParts parts = new FaceParts(journey, parcel.outer());
    PreparedBody body =
        bodies.computeIfAbsent(
            new Place(settings.mesh(), parts.patches()),
            place -> new PreparedBody(parcel.network(place.mesh(), place.patches())));
    Course course = new Course(parcel, journey, variation, parts, body.network());
    if (settings.stepping().conductivities() == IntegratorSettings.Conductivities.LIVE) {
      return run(
          course,
          settings,
          new Live(course),
          EngineChoice.full("coefficients follow the temperatures"),
          listener);
    }
    Optional<String> melting = melting();
    if (melting.isPresent()) {
      return run(
          course, settings, new Settling(course), EngineChoice.full(melting.get()), listener);
    }
    PreparedBody.Prepared prepared;
    try {
      prepared = body.prepare(course, settings);
    } catch (CancellationException interrupt) {
      // the full solver finds the interrupt as well, and ends with the start stored
      String reason = "interrupted before there was a reduced model";
      return run(course, settings, new Settling(course), EngineChoice.full(reason), listener);
    } catch (IllegalStateException failure) {
      String reason = "no reduced model could be made, " + failure.getMessage();
      return run(course, settings, new Settling(course), EngineChoice.full(reason), listener);
    }
    ReducedModel model = prepared.model();
    if (model == null || settings.solver() == Solver.FULL) {
      String reason =
          model == null
              ? "a reduced model would need about "
                  + prepared.expectedModes()
                  + " modes and more time"
              : "";
      return run(
          course,
          settings,
          prepared.schedule(),
          new EngineChoice(reason, null, prepared.change()),
          listener);
    }
    return reduced(course, settings, prepared, model, listener);
  }

  /** Names of what keeps the body from being linear. */
  private Optional<String> melting() {
    List<String> names =
        parcel.packs().stream()
            .filter(pack -> pack.pack().melts())
            .map(pack -> "'" + pack.name() + "'")
            .toList();
    return names.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", names) + " can melt");
  }

  private TransitResult run(
      Course course,
      TransitSettings settings,
      Regime regime,
      EngineChoice choice,
      ProgressListener listener) {
    HeatEngine engine =
        new FullEngine(
            course.network(), course.probes(), course.initialState(), settings.stepping());
    Recorder recorder = new Recorder(course, engine, settings.interval(), listener);
    Run run = new Run(course, regime, engine, settings.interval());
    Outcome outcome = recorder.outcome(run);
    return recorder.result(outcome, run.coefficients(), choice);
  }

  private static TransitResult reduced(
      Course course,
      TransitSettings settings,
      PreparedBody.Prepared prepared,
      ReducedModel model,
      ProgressListener listener) {
    ModalEngine engine = model.engine(course.initialState());
    Recorder recorder = new Recorder(course, engine, settings.interval(), listener);
    Run run = new Run(course, prepared.schedule(), engine, settings.interval());
    Outcome outcome = recorder.outcome(run);
    double[] estimates = engine.errorEstimates();
    Map<String, Double> errors = new LinkedHashMap<>();
    for (int index = 0; index < estimates.length; index++) {
      errors.put(course.probes().get(index).name(), estimates[index]);
    }
    Reduction reduction = new Reduction(model.modes(), errors);
    return recorder.result(
        outcome, run.coefficients(), new EngineChoice("", reduction, prepared.change()));
  }
}
