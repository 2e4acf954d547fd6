package stenotherm.material;

import stenotherm.base.Checks;
import stenotherm.base.Range;

/**
 * How a material melts: its enthalpy rises by the latent heat between two temperatures. Solid and
 * liquid have the same density, so that nothing moves. Freezing follows the same curve: there is no
 * supercooling.
 *
 * <p>A value, thus thread-safe.
 *
 * @param range from the solidus, where melting starts, to the liquidus, where all is liquid [K];
 *     both may be equal
 * @param latentHeat latent heat [J/kg], above 0
 * @param liquidConductivity conductivity of the liquid [W/(m K)], above 0
 * @param liquidSpecificHeat specific heat capacity of the liquid [J/(kg K)], above 0
 */
public record Melting(
    Range range, double latentHeat, double liquidConductivity, double liquidSpecificHeat) {
  private static final Range WIDTHS = new Range(0, 50);

  /**
   * Checks the numbers.
   *
   * @throws stenotherm.base.InvalidInputException if one is out of its range
   */
  public Melting {
    Checks.given("melting range", range);
    Checks.temperature("solidus", range.low());
    Checks.temperature("liquidus", range.high());
    Checks.within("liquidus less solidus", range.high() - range.low(), WIDTHS, "K", "");
    Checks.positive("latent heat", latentHeat, "J/kg");
    Checks.positive("conductivity of the liquid", liquidConductivity, "W/(m K)");
    Checks.positive("specific heat of the liquid", liquidSpecificHeat, "J/(kg K)");
  }
}
