package stenotherm.transit;

import java.util.List;
import java.util.concurrent.CancellationException;
import stenotherm.base.Checks;
import stenotherm.base.ProgressListener;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;

/**
 * Sends a parcel on a journey.
 *
 * <p>Coefficients are constant within a stage: a leg, the first two hours and the rest of a leg of
 * more than six, or a delay, so that nothing before a delay depends on it. Surface coefficients are
 * those at the mean temperatures of each surface and of the ambient over the stage. Conductivities
 * that depend on temperature are taken cell by cell, at the mean temperatures of the longest stage;
 * in each stage they are multiplied by a factor for each block, that of the block's mean
 * temperature. Air that convects has the conductivity of its mean temperature and of how the parcel
 * lies.
 *
 * <p>A small model finds the mean temperatures by which the {@linkplain
 * stenotherm.modal.ReducedModel reduced model} is built. The run then goes through the journey a
 * few times, each time under the coefficients at the mean temperatures of the time before, until
 * they hardly change; {@link TransitResult#coefficientChange} says by how much they still would.
 *
 * <p>A parcel runs on the full solver if that is {@linkplain TransitSettings#full asked for}. The
 * full solver takes coefficients from its state as a leg begins and a quarter of an hour, an hour
 * and four hours later. With {@linkplain TransitSettings#live live} coefficients conductivities
 * follow the temperatures all the time, films and air every five minutes, on the full solver.
 * {@link TransitResult#engine} says which ran and why.
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class Transit {
  private Transit() {}

  /**
   * Runs a parcel through a journey, all that is uncertain in the middle of its range, on the usual
   * mesh.
   *
   * @param parcel the parcel
   * @param journey the journey
   * @return the history
   * @throws stenotherm.base.InvalidInputException if the ambient of a leg does not cover its time
   * @throws CancellationException as with a listener
   * @throws IllegalStateException as with a listener
   */
  public static TransitResult run(Parcel parcel, Journey journey) {
    return run(parcel, journey, Variation.NOMINAL, TransitSettings.standard());
  }

  /**
   * Runs a parcel through a journey.
   *
   * @param parcel the parcel
   * @param journey the journey
   * @param variation where the uncertain quantities lie in their ranges
   * @param settings mesh, time steps and solver
   * @return the history
   * @throws stenotherm.base.InvalidInputException if the ambient of a leg does not cover its time
   * @throws CancellationException as with a listener
   * @throws IllegalStateException as with a listener
   */
  public static TransitResult run(
      Parcel parcel, Journey journey, Variation variation, TransitSettings settings) {
    return run(parcel, journey, variation, settings, ProgressListener.NONE);
  }

  /**
   * Runs a parcel through a journey, watched by a listener.
   *
   * @param parcel the parcel
   * @param journey the journey
   * @param variation where the uncertain quantities lie in their ranges
   * @param settings mesh, time steps and solver
   * @param listener told on the calling thread at each stored time after sealing how much of the
   *     journey is done [s]; may stop the run. What it throws is thrown here as it is
   * @return the history; partial if the outcome is not completed: the listener or an interrupt
   *     stopped it on its way, or the solver failed
   * @throws stenotherm.base.InvalidInputException if the ambient of a leg does not cover its time
   * @throws CancellationException if the thread is interrupted before the run begins, in the
   *     seconds in which the model is built; it stays interrupted
   * @throws IllegalStateException if no reduced model could be made; the message says why
   */
  public static TransitResult run(
      Parcel parcel,
      Journey journey,
      Variation variation,
      TransitSettings settings,
      ProgressListener listener) {
    Checks.given("variation", variation);
    ModelScope scope = variation.movesProperties() ? ModelScope.ALL : ModelScope.NOMINAL;
    List<Journey> journeys = List.of(Checks.given("journey", journey));
    // the model takes seconds, and what is wrong with the rest would be found after it
    Checks.given("listener", listener);
    return ParcelModel.of(parcel, journeys, settings, scope).run(journey, variation, listener);
  }
}
