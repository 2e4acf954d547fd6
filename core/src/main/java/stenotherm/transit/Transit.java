package stenotherm.transit;

import stenotherm.base.ProgressListener;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;

/**
 * Sends a parcel on a journey.
 *
 * <p>For each leg the surface coefficients are those of its films between the mean surface
 * temperature of each face when the leg begins and the mean ambient temperature of its planned
 * duration; a face in the sun counts with its mean sol-air temperature. Conductivities that depend
 * on temperature are those at the temperature of each cell, those of air that convects at the mean
 * temperature of its block and by how the parcel lies. All of them are frozen, and taken again as
 * the parcel settles: a quarter of an hour, an hour and four hours after the leg began. With
 * {@linkplain stenotherm.conduction.IntegratorSettings#live live} conductivities they follow the
 * temperatures, films and air every five minutes.
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
    return new PreparedParcel(parcel).run(journey, variation, settings, listener);
  }

  /** How much warmer the middle of a cavity's floor is than that of its ceiling, and their mean. */
  record FillDifference(double kelvin, double meanTemperature) {}
}
