package stenotherm.ambient;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Source;

/**
 * The sol-air temperature: that of shaded air which would pass as much heat into a surface as air,
 * sun and sky do together.
 *
 * <p>T_sol-air = T_ambient + (absorbed - lost to the sky) / h. A surface that passes no heat on has
 * just this temperature.
 *
 * <p>Stateless, thus thread-safe.
 */
public final class SolAir {
  /** Where the form comes from. */
  public static final Source SOURCE =
      Source.memory(
          "ASHRAE Handbook - Fundamentals 2021, ch. 18, sol-air temperature",
          "t_e = t_o + alpha E_t / h_o - epsilon Delta R / h_o");

  /**
   * What a black surface that looks up loses to a clear sky beyond what it would lose to
   * surroundings as warm as the air [W/m2].
   */
  public static final double CLEAR_SKY_LOSS = 63;

  /** Where that value comes from. */
  public static final Source CLEAR_SKY_SOURCE =
      Source.memory(
          "ASHRAE Handbook - Fundamentals 2021, ch. 18, sol-air temperature",
          "Delta R of 63 W/m2 for horizontal surfaces, 0 for vertical ones");

  private SolAir() {}

  /**
   * Returns how far the sol-air temperature lies above the ambient one.
   *
   * @param absorbed absorbed sunlight: absorptance times incident irradiance [W/m2], 0 or above
   * @param skyLoss net long-wave loss to the sky [W/m2], 0 or above: emissivity times {@link
   *     #CLEAR_SKY_LOSS} for a face that looks up to a clear sky, 0 under cloud or a roof
   * @param coefficient surface coefficient [W/(m2 K)], above 0
   * @return the rise [K], negative if the loss is larger
   * @throws InvalidInputException if a value is out of its range
   */
  public static double rise(double absorbed, double skyLoss, double coefficient) {
    Checks.notNegative("absorbed sunlight", absorbed, "W/m2");
    Checks.notNegative("loss to the sky", skyLoss, "W/m2");
    Checks.positive("surface coefficient", coefficient, "W/(m2 K)");
    return (absorbed - skyLoss) / coefficient;
  }
}
