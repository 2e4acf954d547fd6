package stenotherm.picture;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;

/**
 * A point of a chart that the reader must see, with a text beside it.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 *
 * @param text what is to be said of the point, for example {@code "coldest: 12.5 °C (54 °F) at
 *     04:30"}
 * @param point the point
 */
public record Marker(String text, Curve.Reading point) {
  /**
   * Checks the text.
   *
   * @param text what is to be said of the point
   * @param point the point
   * @throws InvalidInputException if the text is blank
   */
  public Marker {
    Checks.name("marker text", text);
  }
}
