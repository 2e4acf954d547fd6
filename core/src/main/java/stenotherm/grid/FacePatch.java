package stenotherm.grid;

import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;

/**
 * A named rectangle on a face of the domain with a boundary of its own, such as a part of the face
 * in the sun or in contact with something.
 *
 * <p>A value, thus thread-safe.
 *
 * @param name name of its boundary, unique among boundaries and blocks
 * @param face the face of the domain
 * @param region a box whose intersection with the face is the rectangle [m]
 */
public record FacePatch(String name, Face face, Box region) {
  /**
   * Checks the name.
   *
   * @throws InvalidInputException if it is blank or that of a face
   */
  public FacePatch {
    Checks.given("name", name);
    Checks.given("face", face);
    Checks.given("region", region);
    Checks.name("patch name", name);
    for (Face each : Face.values()) {
      if (name.equals(each.label())) {
        throw new InvalidInputException("patch name", "'" + name + "' is the name of a face");
      }
    }
  }

  /**
   * The rectangle that covers a part of a face of a box.
   *
   * @param name name of its boundary
   * @param face the face
   * @param box the box, usually the outer box of a parcel
   * @param first part of the face along its first axis (x, or y on the left and right), 0 to 1
   * @param second part of the face along its second axis, 0 to 1
   * @return the patch
   * @throws InvalidInputException if a part is not within 0 and 1
   */
  public static FacePatch part(String name, Face face, Box box, Range first, Range second) {
    requirePart(first);
    requirePart(second);
    double[] min = new double[3];
    double[] max = new double[3];
    boolean isFirst = true;
    for (Axis axis : Axis.values()) {
      int a = axis.ordinal();
      Range part = new Range(0, 1);
      if (axis != face.axis()) {
        part = isFirst ? first : second;
        isFirst = false;
      }
      min[a] = box.min().along(axis) + part.low() * box.size(axis);
      max[a] = box.min().along(axis) + part.high() * box.size(axis);
    }
    return new FacePatch(
        name, face, new Box(new Point(min[0], min[1], min[2]), new Point(max[0], max[1], max[2])));
  }

  private static void requirePart(Range part) {
    Range whole = new Range(0, 1);
    for (double end : new double[] {Checks.given("part of a face", part).low(), part.high()}) {
      Checks.within("part of a face", end, whole, "", "The whole face is 0 to 1.");
    }
  }
}
