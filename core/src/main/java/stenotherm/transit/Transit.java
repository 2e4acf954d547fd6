package stenotherm.transit;

import java.util.concurrent.CancellationException;
import stenotherm.base.ProgressListener;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;

/**
 * Sends a parcel on a journey.
 *
 * <p>Coefficients are frozen for each leg, for a leg of more than six hours in two parts: surface
 * coefficients at the mean temperatures of each face and of the ambient, conductivities that depend
 * on temperature at the mean temperature of each cell, those of air that convects at the mean of
 * its block and by how the parcel lies. A delay of a leg has coefficients of its own, so that what
 * comes before does not depend on it. These means are found beforehand, by going through the
 * journey repeatedly; {@link TransitResult#coefficientChange} tells what that leaves.
 *
 * <p>What is linear then runs on a {@linkplain ParcelModel reduced model}. A parcel in which
 * something melts, or one for which that is {@linkplain TransitSettings#full asked}, is stepped
 * cell by cell, with coefficients taken from its state as a leg begins and a quarter of an hour, an
 * hour and four hours later. With {@linkplain TransitSettings#live live} coefficients
 * conductivities follow the temperatures, films and air every five minutes, also cell by cell.
 * {@link TransitResult#engine} tells which it was and why. Several runs of one packing are cheaper
 * with a {@link ParcelModel}.
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class Transit {
  private Transit() {}

  /**
   * Runs a parcel through a journey.
   *
   * @param parcel the parcel
   * @param journey the journey
   * @param variation which uncertain quantities are at an end of their range
   * @param settings how finely
   * @return the history
   * @throws stenotherm.base.InvalidInputException if the ambient of a leg does not cover its time
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
   * @param variation which uncertain quantities are at an end of their range
   * @param settings how finely
   * @param listener told of each stored value, in simulated seconds; may stop the run
   * @return the history; partial if the outcome is not completed
   * @throws stenotherm.base.InvalidInputException if the ambient of a leg does not cover its time
   */
  public static TransitResult run(
      Parcel parcel,
      Journey journey,
      Variation variation,
      TransitSettings settings,
      ProgressListener listener) {
    return model(parcel, journey, settings).run(journey, variation, listener);
  }

  /** The model; after an interrupt one of cells, whose run stores the start before it stops. */
  private static ParcelModel model(Parcel parcel, Journey journey, TransitSettings settings) {
    try {
      return ParcelModel.of(parcel, journey, settings);
    } catch (CancellationException interrupted) {
      return ParcelModel.of(parcel, journey, settings.full());
    }
  }
}
