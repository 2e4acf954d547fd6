package stenotherm.journey;

import stenotherm.base.Checks;
import stenotherm.base.Range;

/**
 * How uncertain the air temperature of a leg is, in two parts with different causes: legs at one
 * place share an error of the weather, but not what their buildings and vehicles make of it.
 *
 * <p>A value, thus thread-safe.
 *
 * @param own uncertainty of the leg's air if the weather were known, plus or minus [K], 0 to 30
 * @param outdoors uncertainty of the outdoor temperature that the air follows, plus or minus [K], 0
 *     to 30; shared by all legs at a place; 0 if the air does not follow it
 */
public record AmbientSpread(double own, double outdoors) {
  private static final Range SPREADS = new Range(0, 30);

  /**
   * Checks the values.
   *
   * @throws stenotherm.base.InvalidInputException if one is not within 0 K to 30 K
   */
  public AmbientSpread {
    checked("ambient spread", own);
    checked("outdoor spread", outdoors);
  }

  /**
   * Checks how uncertain a temperature is.
   *
   * @param field name of the input
   * @param spread the uncertainty, plus or minus [K]
   * @return the spread [K]
   * @throws stenotherm.base.InvalidInputException if it is not within 0 K to 30 K
   */
  public static double checked(String field, double spread) {
    return Checks.within(
        field, spread, SPREADS, "K", "It is a difference: 9 F° of difference are 5 K.");
  }

  /**
   * The uncertainty of air whose temperature owes nothing to the weather.
   *
   * @param own the uncertainty, plus or minus [K], 0 to 30
   * @return the spread
   */
  public static AmbientSpread ofItsOwn(double own) {
    return new AmbientSpread(own, 0);
  }

  /**
   * How far the air may be off with both parts at the same end.
   *
   * @return sum of both parts [K]
   */
  public double total() {
    return own + outdoors;
  }

  /**
   * The spread that adds up to another sum, with both parts in the same proportion; a spread of
   * nothing grows on its own side.
   *
   * @param total sum of both parts, plus or minus [K], 0 to 30
   * @return the changed spread
   * @throws stenotherm.base.InvalidInputException if the sum is not within 0 K to 30 K
   */
  public AmbientSpread adjustedTo(double total) {
    checked("ambient spread", total);
    double shared = total() > 0 ? total * outdoors / total() : 0;
    return new AmbientSpread(total - shared, shared);
  }
}
