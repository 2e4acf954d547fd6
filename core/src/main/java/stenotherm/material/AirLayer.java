package stenotherm.material;

import stenotherm.base.Checks;
import stenotherm.base.HeatDirection;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Radiation;
import stenotherm.base.Range;
import stenotherm.base.Source;

/**
 * An unventilated layer of air between two parallel surfaces, such as an unfilled gap beside a cup
 * or the space between a liner and a carton: conduction, convection and radiation in one
 * resistance.
 *
 * <p>R = 1 / (ha + E hr0), with ha the larger of 0.025 W/(m K) over the thickness and a convective
 * value for the direction of heat, E the exchange factor of the two emissivities and hr0 the
 * radiative coefficient of black surfaces at the mean temperature.
 *
 * <p>Limits: the layer is closed, at least ten times as wide and high as it is thick, and at most
 * 0.3 m thick. A small cavity radiates less; for the air in a fill see {@link FillConvection}.
 *
 * <p>A value, thus thread-safe.
 *
 * @param heatFlow direction of the heat through the layer
 * @param thickness thickness in the direction of heat flow [m], above 0, at most 0.3
 * @param firstEmissivity emissivity of one surface [-], 0.01 to 1
 * @param secondEmissivity emissivity of the other surface [-], 0.01 to 1
 */
public record AirLayer(
    HeatDirection heatFlow, double thickness, double firstEmissivity, double secondEmissivity) {
  /** Where the law comes from. */
  public static final Source SOURCE =
      Source.memory("ISO 6946:2017", "Annex D, Table D.1 (2007 edition: Annex B)");

  /** Emissivity that the standard gives to ordinary surfaces: paper, board, plastics, paint. */
  public static final double ORDINARY_EMISSIVITY = 0.9;

  /** Conductivity of air in the law of {@link #SOURCE} [W/(m K)]. */
  private static final double AIR_CONDUCTIVITY = 0.025;

  /** Largest temperature difference for which the standard gives constant convective values [K]. */
  private static final double SMALL_DIFFERENCE = 5;

  private static final Range THICKNESSES = new Range(1e-5, 0.3);

  /**
   * Checks the layer.
   *
   * @throws InvalidInputException if the thickness or an emissivity is out of its range
   */
  public AirLayer {
    Checks.given("heat flow", heatFlow);
    Checks.within(
        "thickness of an air layer",
        thickness,
        THICKNESSES,
        "m",
        "Beyond 0.3 m it is a room: give each of its surfaces a film instead.");
    Radiation.emissivity(firstEmissivity);
    Radiation.emissivity(secondEmissivity);
  }

  /**
   * A layer between ordinary surfaces of emissivity 0.9.
   *
   * @param heatFlow direction of the heat through the layer
   * @param thickness thickness in the direction of heat flow [m], above 0, at most 0.3
   * @return the layer
   * @throws InvalidInputException if the thickness is out of its range
   */
  public static AirLayer ordinary(HeatDirection heatFlow, double thickness) {
    return new AirLayer(heatFlow, thickness, ORDINARY_EMISSIVITY, ORDINARY_EMISSIVITY);
  }

  /**
   * Returns the resistance for a temperature difference of up to 5 K across the layer, by {@link
   * #SOURCE}.
   *
   * @param meanTemperature mean temperature of the two surfaces [K]
   * @return the resistance [m2 K/W]
   * @throws InvalidInputException if the temperature is not within 1 K to 5000 K
   */
  public double resistance(double meanTemperature) {
    return resistance(meanTemperature, 0);
  }

  /**
   * Returns the resistance for a stated temperature difference, by {@link #SOURCE}. Above 5 K the
   * standard's convective values grow with the difference; at 5 K its two rules differ by up to 1
   * %.
   *
   * @param meanTemperature mean temperature of the two surfaces [K]
   * @param difference temperature difference between the two surfaces, 0 or above [K]
   * @return the resistance [m2 K/W]
   * @throws InvalidInputException if the temperature is not within 1 K to 5000 K or the difference
   *     is negative
   */
  public double resistance(double meanTemperature, double difference) {
    Checks.notNegative("temperature difference across an air layer", difference, "K");
    double convective = Math.max(AIR_CONDUCTIVITY / thickness, convective(difference));
    double exchange = Radiation.exchangeFactor(firstEmissivity, secondEmissivity);
    return 1 / (convective + exchange * Radiation.blackCoefficient(meanTemperature));
  }

  /**
   * Returns the conductivity of a solid of the same resistance: thickness over {@link
   * #resistance(double)}.
   *
   * @param meanTemperature mean temperature of the two surfaces [K]
   * @return the effective conductivity [W/(m K)]
   * @throws InvalidInputException if the temperature is not within 1 K to 5000 K
   */
  public double effectiveConductivity(double meanTemperature) {
    return thickness / resistance(meanTemperature);
  }

  /** Convective coefficient [W/(m2 K)], Table D.1 of {@link #SOURCE}. */
  private double convective(double difference) {
    boolean small = difference <= SMALL_DIFFERENCE;
    return switch (heatFlow) {
      case HORIZONTAL -> small ? 1.25 : 0.73 * StrictMath.cbrt(difference);
      case UPWARD -> small ? 1.95 : 1.14 * StrictMath.cbrt(difference);
      case DOWNWARD ->
          (small ? 0.12 : 0.09 * Math.pow(difference, 0.187)) * Math.pow(thickness, -0.44);
    };
  }
}
