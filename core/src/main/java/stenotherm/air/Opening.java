package stenotherm.air;

/**
 * A way for gases between inside and outside, or between a parcel and a cup.
 *
 * <p>Implementations are values, thus thread-safe.
 */
public sealed interface Opening permits VentHole, Seam, FoamPanel {
  /**
   * Returns how well a gas diffuses through.
   *
   * @param gas the gas
   * @param temperature temperature in the opening [K]
   * @param pressure absolute pressure [Pa]
   * @return flow of the gas over the difference of its concentrations [m3/s]
   */
  double conductance(Gas gas, double temperature, double pressure);

  /**
   * Returns the laminar part of the resistance to a flow of air.
   *
   * @param temperature temperature in the opening [K]
   * @return pressure difference over flow [Pa s/m3]; infinite where no air can flow
   */
  double laminarResistance(double temperature);

  /**
   * Returns what a flow of air loses at entrance and exit.
   *
   * @param density density of the air [kg/m3]
   * @return pressure difference over the square of the flow [Pa s2/m6]; infinite where no air can
   *     flow
   */
  double inertialResistance(double density);

  /**
   * Returns the flow of air under a pressure difference Δp = a q + b q².
   *
   * @param pressureDifference the difference [Pa], of either sign
   * @param temperature temperature in the opening [K]
   * @param density density of the air that flows [kg/m3]
   * @return the flow, with the sign of the difference [m3/s]
   */
  default double flow(double pressureDifference, double temperature, double density) {
    double a = laminarResistance(temperature);
    if (Double.isInfinite(a)) {
      return 0;
    }
    double drive = Math.abs(pressureDifference);
    // the stable form of the root of b q² + a q - Δp
    double root = Math.sqrt(a * a + 4 * inertialResistance(density) * drive);
    return Math.signum(pressureDifference) * 2 * drive / (a + root);
  }

  /**
   * Returns the Reynolds number of a flow, by the hydraulic diameter.
   *
   * @param flow the flow [m3/s]
   * @param temperature temperature in the opening [K]
   * @param density density of the air [kg/m3]
   * @return the Reynolds number [-]
   */
  double reynolds(double flow, double temperature, double density);

  /**
   * Losses of a sharp entrance and a free exit in dynamic heads: 0.5 and 1 (Idelchik, from memory).
   */
  double LOSSES = 1.5;
}
