package stenotherm.parcel;

import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;

/**
 * Holes through all layers of a wall, spread over a face. They are taken as open: they lie beside
 * what is fastened to the face or lies against it, not behind it.
 *
 * <p>A value, thus thread-safe.
 *
 * @param face the face
 * @param count how many, 1 to 1000; with the others of its face at most a quarter of what is free
 * @param diameter diameter of each [m], 0.5 mm to 50 mm
 */
public record Vent(Face face, int count, double diameter) {
  private static final Range DIAMETERS = new Range(0.0005, 0.05);

  /**
   * Checks the numbers.
   *
   * @throws InvalidInputException if one is out of its range
   */
  public Vent {
    Checks.given("face of a vent", face);
    if (count < 1 || count > 1000) {
      throw new InvalidInputException(
          "number of vent holes", count + " must lie between 1 and 1000");
    }
    Checks.within(
        "diameter of a vent hole", diameter, DIAMETERS, "m", "A pencil makes a hole of 7 mm.");
  }

  /**
   * Returns the area of all its holes.
   *
   * @return the area [m2]
   */
  public double area() {
    return count * Math.PI / 4 * diameter * diameter;
  }
}
