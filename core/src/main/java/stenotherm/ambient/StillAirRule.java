package stenotherm.ambient;

import stenotherm.base.HeatDirection;
import stenotherm.base.Source;

/**
 * Convective coefficients of still air by direction of heat, from two published tables. They differ
 * by up to 1 W/(m2 K), which is a fair measure of how well such a coefficient is known.
 *
 * <p>Thread-safe.
 */
public enum StillAirRule {
  /** ISO 6946: 5.0 upward, 2.5 horizontal, 0.7 downward [W/(m2 K)]. */
  ISO_6946(5.0, 2.5, 0.7, Source.memory("ISO 6946:2017", "Annex C, internal surfaces")),
  /**
   * ASHRAE: 4.03 upward, 3.06 horizontal, 0.94 downward [W/(m2 K)], what is left of its printed
   * film coefficients when radiation at a mean of 70 °F (21.1 °C) is taken off.
   */
  ASHRAE(
      4.03,
      3.06,
      0.94,
      Source.derived("ASHRAE Handbook - Fundamentals 2021", "ch. 26, Table 10, still air"));

  private final double upward;
  private final double horizontal;
  private final double downward;
  private final Source source;

  StillAirRule(double upward, double horizontal, double downward, Source source) {
    this.upward = upward;
    this.horizontal = horizontal;
    this.downward = downward;
    this.source = source;
  }

  /**
   * Returns the convective coefficient.
   *
   * @param heatFlow direction of the heat
   * @return the coefficient [W/(m2 K)]
   */
  public double convective(HeatDirection heatFlow) {
    return switch (heatFlow) {
      case UPWARD -> upward;
      case HORIZONTAL -> horizontal;
      case DOWNWARD -> downward;
    };
  }

  /**
   * Returns where the coefficients come from.
   *
   * @return the citation
   */
  public Source source() {
    return source;
  }
}
