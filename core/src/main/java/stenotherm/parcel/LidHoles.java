package stenotherm.parcel;

import java.util.Collections;
import java.util.List;
import stenotherm.air.VentHole;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;

/**
 * Holes in the lid of a cup or the cap of a vial: all of the air that an animal breathes passes
 * them.
 *
 * <p>A value, thus thread-safe.
 *
 * @param count how many, 0 to 1000; without any the lid is taken as tight
 * @param diameter diameter of each [m], 0.3 mm to 20 mm
 */
public record LidHoles(int count, double diameter) {
  /** Thickness of a lid or cap [m]: assumed. */
  private static final double LID = 0.0005;

  private static final int MOST = 1000;

  /** From a pin to a thumb [m]. */
  private static final Range DIAMETERS = new Range(0.0003, 0.020);

  /** What keepers punch into a lid: common practice, no source. */
  public static final LidHoles USUAL = new LidHoles(8, 0.002);

  /** A lid as it is sold, taken as tight. */
  public static final LidHoles NONE = new LidHoles(0, USUAL.diameter);

  /**
   * Checks the numbers.
   *
   * @throws InvalidInputException if one is out of its range
   */
  public LidHoles {
    if (count < 0 || count > MOST) {
      throw new InvalidInputException(
          "number of holes in a lid", count + " must lie between 0 and " + MOST);
    }
    Checks.within(
        "diameter of a hole in a lid",
        diameter,
        DIAMETERS,
        "m",
        "Keepers punch holes of some 2 mm.");
  }

  /** Each of them. */
  List<VentHole> each() {
    return Collections.nCopies(count, new VentHole(diameter, LID));
  }
}
