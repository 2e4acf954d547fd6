package stenotherm.picture;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;

/**
 * A point in a section, with a text.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 *
 * @param text what is to be said of the point, for example {@code "coldest: 12.5 °C (54 °F)"}
 * @param x place along the horizontal axis [m]
 * @param z place along the vertical axis [m]
 */
public record Spot(String text, double x, double z) {
  /**
   * Checks the point.
   *
   * @param text what is to be said of the point
   * @param x place along the horizontal axis [m]
   * @param z place along the vertical axis [m]
   * @throws InvalidInputException if the text is blank or a coordinate not finite
   */
  public Spot {
    Checks.name("spot text", text);
    Checks.finite("spot '" + text + "'", x, "m");
    Checks.finite("spot '" + text + "'", z, "m");
  }
}
