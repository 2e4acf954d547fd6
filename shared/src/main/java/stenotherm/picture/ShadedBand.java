package stenotherm.picture;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;

/**
 * The range that a temperature over time may lie in, drawn as a light area around the main curve.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 *
 * @param name what the range stands for; it stands at the area
 * @param low the lower end over time
 * @param high the upper end over time
 */
public record ShadedBand(String name, Curve low, Curve high) {
  /**
   * Checks the name.
   *
   * @param name what the range stands for
   * @param low the lower end
   * @param high the upper end
   * @throws InvalidInputException if the name is blank
   */
  public ShadedBand {
    Checks.name("band name", name);
  }
}
