package stenotherm.material;

import stenotherm.base.Checks;
import stenotherm.base.Radiation;

/**
 * Conductivity of a loose fill: k(T) = k_gas + k_solid + 4 sigma T^3 d / (2 / eps - 1), where d is
 * the mean size of its voids.
 *
 * <p>A value, thus thread-safe.
 *
 * @param still conductivity of gas and solid together [W/(m K)], above 0
 * @param voidSize mean size of the voids [m], 0 or above
 * @param emissivity emissivity of the fill's surfaces [-], 0.01 to 1
 */
public record FillLaw(double still, double voidSize, double emissivity) {
  /**
   * Checks the numbers.
   *
   * @throws stenotherm.base.InvalidInputException if one is out of its range
   */
  public FillLaw {
    Checks.positive("conductivity of gas and solid in a fill", still, "W/(m K)");
    Checks.notNegative("size of the voids of a fill", voidSize, "m");
    Radiation.emissivity(emissivity);
  }

  /**
   * Returns the conductivity.
   *
   * @param temperature mean temperature of the fill [K]
   * @return the conductivity [W/(m K)]
   */
  public double conductivity(double temperature) {
    double exchange = Radiation.exchangeFactor(emissivity, emissivity);
    return still + exchange * Radiation.blackCoefficient(temperature) * voidSize;
  }
}
