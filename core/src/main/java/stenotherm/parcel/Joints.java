package stenotherm.parcel;

import java.util.List;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.HeatDirection;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Temperatures;
import stenotherm.material.AirLayer;

/**
 * How the panels of a wall meet at the edges of the box.
 *
 * <p>A joint is a thin resistance between the panels that meet there: that of the air in its gap,
 * across the gap. Along the gap, from inside to outside, still air conducts about as well as the
 * foam whose place it takes, so that the strip gets no cells of its own. Air that leaks through a
 * joint is not part of it.
 *
 * <p>A value, thus thread-safe.
 *
 * @param overlap the three axes: panels normal to the first reach over all others, those normal to
 *     the second over those normal to the third
 * @param firstShell the outermost shell that is made of panels, 0 for the outermost of all
 * @param gap width of the gap between panels [m], 1e-5 to 0.01; 0 for one piece, or glued without a
 *     gap
 */
public record Joints(List<Axis> overlap, int firstShell, double gap) {
  private static final Range GAPS = new Range(0, 0.01);

  /** The roughness of cut foam and of board is larger [m]. */
  private static final double NARROWEST = 1e-5;

  /** Lid and floor over the sides, y sides over x sides, no gaps. */
  public static final Joints NONE = new Joints(List.of(Axis.Z, Axis.Y, Axis.X), 0, 0);

  /** Temperature at which radiation across a gap is taken [K]. */
  private static final double GAP_TEMPERATURE = Temperatures.fromCelsius(15);

  /**
   * Checks the order and the gap.
   *
   * @throws InvalidInputException if the order does not name each axis once, the shell is negative
   *     or the gap out of its range
   */
  public Joints {
    Checks.given("overlap", overlap);
    overlap = List.copyOf(overlap);
    if (overlap.size() != 3 || !overlap.containsAll(List.of(Axis.values()))) {
      throw new InvalidInputException("overlap of panels", overlap + " must name each axis once");
    }
    if (firstShell < 0) {
      throw new InvalidInputException("first shell of panels", firstShell + " must be 0 or above");
    }
    Checks.within("gap between panels", gap, GAPS, "m", "A wider gap is an opening.");
    if (gap > 0 && gap < NARROWEST) {
      throw new InvalidInputException(
          "gap between panels",
          Checks.show(gap, "m")
              + " is narrower than any joint; write 0 for none, or at least "
              + Checks.show(NARROWEST, "m"));
    }
  }

  boolean areIn(int shell) {
    return gap > 0 && shell >= firstShell;
  }

  /** Whether panels normal to one axis reach over those normal to another one. */
  boolean covers(Axis one, Axis other) {
    return overlap.indexOf(one) < overlap.indexOf(other);
  }

  /** Resistance across the gap [m2 K/W]. */
  double resistance() {
    return AirLayer.ordinary(HeatDirection.HORIZONTAL, gap).resistance(GAP_TEMPERATURE);
  }
}
