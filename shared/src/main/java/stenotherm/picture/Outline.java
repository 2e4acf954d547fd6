package stenotherm.picture;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;

/**
 * The outline of a thing in a section, with its name.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 *
 * @param name the thing's name
 * @param x from where to where it reaches along the horizontal axis [m]
 * @param z from where to where it reaches along the vertical axis [m]
 */
public record Outline(String name, Range x, Range z) {
  /**
   * Checks the outline.
   *
   * @param name the thing's name
   * @param x its reach along the horizontal axis [m]
   * @param z its reach along the vertical axis [m]
   * @throws InvalidInputException if the name is blank or an end not finite
   */
  public Outline {
    Checks.name("outline name", name);
    for (Range range : new Range[] {x, z}) {
      Checks.finite("outline '" + name + "'", range.low(), "m");
      Checks.finite("outline '" + name + "'", range.high(), "m");
    }
  }
}
