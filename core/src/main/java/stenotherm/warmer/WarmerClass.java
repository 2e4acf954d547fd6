package stenotherm.warmer;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
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
 * @param mass mass of the fresh contents, which with their specific heat store heat [kg]; 100 to
 *     3000 kg per m3 of the pad
 * @param power power over the time since it was opened [W]
 * @param strength range of the factor by which single warmers differ from the curve, around 1
 * @param source where the curve comes from
 */
public record WarmerClass(
    String name, PadSize size, double mass, TimeFunction power, Range strength, Source source) {
  /** From a pad that is half empty to pressed iron powder [kg/m3]. */
  private static final Range DENSITIES = new Range(100, 3000);

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
     * @throws InvalidInputException if one is not above 0
     */
    public PadSize {
      Checks.positive("warmer length", length, "m");
      Checks.positive("warmer width", width, "m");
      Checks.positive("warmer thickness", thickness, "m");
    }

    /**
     * Returns the volume.
     *
     * @return length times width times thickness [m3]
     */
    public double volume() {
      return length * width * thickness;
    }
  }

  /**
   * Checks the parts.
   *
   * @throws InvalidInputException if the name is blank, the mass does not fit the size, or the
   *     strength is not a positive range that holds 1
   */
  public WarmerClass {
    Checks.name("warmer name", name);
    Checks.given("size of " + name, size);
    Checks.given("power of " + name, power);
    Checks.given("strength of " + name, strength);
    Checks.given("source of " + name, source);
    Checks.within(
        "mass of " + name,
        mass,
        new Range(DENSITIES.low() * size.volume(), DENSITIES.high() * size.volume()),
        "kg",
        "Contents have 100 to 3000 kg per cubic metre of the pad.");
    Checks.positive("weakest strength of " + name, strength.low(), "");
    if (!strength.contains(1)) {
      throw new InvalidInputException(
          "strength of " + name, strength.low() + " to " + strength.high() + " must hold 1");
    }
  }

  /**
   * Returns the density of the contents, spread over the pad.
   *
   * @return mass over volume [kg/m3]
   */
  public double density() {
    return mass / size.volume();
  }
}
