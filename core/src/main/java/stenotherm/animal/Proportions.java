package stenotherm.animal;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;

/**
 * The proportions of a resting body's bounding box, length : width : height. Only their ratios
 * count.
 *
 * <p>A value, thus thread-safe.
 *
 * @param length along the parcel's x [-], above 0
 * @param width along the parcel's y [-], above 0
 * @param height upwards [-], above 0
 */
public record Proportions(double length, double width, double height) {
  /**
   * Checks the proportions.
   *
   * @throws InvalidInputException if one is not a finite number above 0
   */
  public Proportions {
    Checks.positive("body length proportion", length, "");
    Checks.positive("body width proportion", width, "");
    Checks.positive("body height proportion", height, "");
  }
}
