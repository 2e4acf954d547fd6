package stenotherm.transit;

import stenotherm.base.Checks;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.grid.MeshControl;

/**
 * How finely a transit is computed.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param mesh cells of the parcel
 * @param interval time between stored values [s]
 * @param stepping time steps
 */
public record TransitSettings(MeshControl mesh, double interval, IntegratorSettings stepping) {
  /**
   * Checks the interval.
   *
   * @throws stenotherm.base.InvalidInputException if it is not above 0
   */
  public TransitSettings {
    Checks.positive("interval between stored values", interval, "s");
  }

  /**
   * The default: cells of 5 mm at material boundaries growing to 20 mm, a value every 15 minutes.
   *
   * @return the settings
   */
  public static TransitSettings standard() {
    return new TransitSettings(
        MeshControl.graded(0.020, 0.005), 900, IntegratorSettings.standard());
  }

  /**
   * The same settings on a coarser or finer mesh.
   *
   * @param factor ratio of the new cell widths to the old ones
   * @return the changed settings
   */
  public TransitSettings meshScaled(double factor) {
    return new TransitSettings(mesh.scaled(factor), interval, stepping);
  }
}
