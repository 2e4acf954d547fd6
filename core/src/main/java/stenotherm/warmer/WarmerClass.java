package stenotherm.warmer;

import stenotherm.base.Checks;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.TimeFunction;

/**
 * A warmer with a prescribed power curve.
 *
 * <p>A value, thus thread-safe.
 *
 * @param name name
 * @param size extent of the pad
 * @param power power over the time since it was opened [W]
 * @param strength range of the factor by which single warmers differ from the curve, around 1
 * @param source where the curve comes from
 */
public record WarmerClass(
    String name, PadSize size, TimeFunction power, Range strength, Source source) {
  /** The caution that every output must carry as long as the power is prescribed. */
  public static final String AIR_CAUTION =
      "Assumes that the warmer gets enough air; not checked yet.";

  /**
   * The extent of a warmer's pad.
   *
   * @param length longer side [m]
   * @param width shorter side [m]
   * @param thickness thickness [m]
   */
  public record PadSize(double length, double width, double thickness) {
    /**
     * Checks the extents.
     *
     * @throws stenotherm.base.InvalidInputException if one is not above 0
     */
    public PadSize {
      Checks.positive("warmer length", length, "m");
      Checks.positive("warmer width", width, "m");
      Checks.positive("warmer thickness", thickness, "m");
    }
  }

  /**
   * Checks the parts.
   *
   * @throws stenotherm.base.InvalidInputException if the name is blank, or the strength is not a
   *     positive range that holds 1
   */
  public WarmerClass {
    Checks.name("warmer name", name);
    Checks.positive("weakest strength of " + name, strength.low(), "");
    if (!strength.contains(1)) {
      throw new stenotherm.base.InvalidInputException(
          "strength of " + name, strength.low() + " to " + strength.high() + " must hold 1");
    }
  }
}
