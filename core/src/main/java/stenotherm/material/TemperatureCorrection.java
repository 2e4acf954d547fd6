package stenotherm.material;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Source;

/**
 * How a conductivity changes with the mean temperature of the material: k(T) = k(T0) exp(f (T -
 * T0)), the form of ISO 10456:2007, section 7.2.
 *
 * <p>The standard gives its coefficients for mean temperatures of 0 °C to 30 °C ({@link #VALID});
 * beyond them it is an extrapolation. Moisture is not included.
 *
 * <p>A value, thus thread-safe.
 *
 * @param coefficient relative change of the conductivity per kelvin, f [1/K], -0.02 to 0.02
 * @param referenceTemperature mean temperature T0 at which the conductivity is known [K]
 * @param lowestTemperature mean temperature below which the conductivity is held at its value there
 *     [K], so that no law promises ever better insulation in the cold
 * @param source where the coefficient comes from
 */
public record TemperatureCorrection(
    double coefficient, double referenceTemperature, double lowestTemperature, Source source) {
  private static final Range COEFFICIENTS = new Range(-0.02, 0.02);

  /** Lowest temperature of a law without a lower limit [K]. */
  private static final double NO_FLOOR = 1;

  /**
   * Mean temperatures for which ISO 10456:2007 states its coefficients [K]: 0 °C to 30 °C (scope of
   * the standard, read).
   */
  public static final Range VALID = new Range(273.15, 303.15);

  /** Mean temperature at which the conductivity of insulation is stated in Europe [K]: 10 °C. */
  public static final double EUROPEAN_REFERENCE = 283.15;

  /**
   * Mean temperature at which the conductivity of insulation is stated in North America [K]: 75 °F,
   * 24 °C (from memory).
   */
  public static final double AMERICAN_REFERENCE = 297.15;

  /**
   * Expanded polystyrene: 0.0035 per kelvin about 10 °C. The standard's table goes from 0.0030 to
   * 0.0040 by conductivity and thickness.
   */
  public static final TemperatureCorrection EXPANDED_POLYSTYRENE =
      standard(0.0035, "Table A.2, expanded polystyrene, middle of 0.0030 to 0.0040");

  /** Extruded polystyrene: 0.0040 per kelvin about 10 °C, from a range of 0.0035 to 0.0046. */
  public static final TemperatureCorrection EXTRUDED_POLYSTYRENE =
      standard(0.0040, "extruded polystyrene, middle of 0.0035 to 0.0046");

  /**
   * Rigid polyurethane and polyisocyanurate foam: 0.0055 per kelvin about 10 °C. Below 10 °C the
   * conductivity is held constant: towards 0 °C, where the blowing agent condenses, it rises again.
   */
  public static final TemperatureCorrection POLYURETHANE =
      new TemperatureCorrection(
          0.0055,
          EUROPEAN_REFERENCE,
          EUROPEAN_REFERENCE,
          Source.memory(
              "ISO 10456:2007",
              "polyurethane foam, for mean temperatures above 10 °C; held below (assumed)"));

  /** Mineral wool: 0.0045 per kelvin about 10 °C, from a range of 0.0040 to 0.0050. */
  public static final TemperatureCorrection MINERAL_WOOL =
      standard(0.0045, "mineral wool, middle of 0.0040 to 0.0050");

  /** Still air between fibres or scraps: 0.0028 per kelvin about 10 °C. */
  public static final TemperatureCorrection STILL_AIR = standard(0.0028, "still air");

  /**
   * Checks the numbers.
   *
   * @throws InvalidInputException if the coefficient is out of its range or the temperature is not
   *     absolute
   */
  public TemperatureCorrection {
    Checks.given("source of the correction", source);
    Checks.within(
        "temperature coefficient",
        coefficient,
        COEFFICIENTS,
        "1/K",
        "Insulation has 0.003 to 0.006 per kelvin.");
    Checks.temperature("reference temperature of the correction", referenceTemperature);
    Checks.temperature("lowest temperature of the correction", lowestTemperature);
  }

  /**
   * A law without a lowest temperature.
   *
   * @param coefficient relative change of the conductivity per kelvin [1/K], -0.02 to 0.02
   * @param referenceTemperature mean temperature at which the conductivity is known [K]
   * @param source where the coefficient comes from
   * @throws InvalidInputException if the coefficient is out of its range or the temperature is not
   *     absolute
   */
  public TemperatureCorrection(double coefficient, double referenceTemperature, Source source) {
    this(coefficient, referenceTemperature, NO_FLOOR, source);
  }

  /**
   * The same law for a conductivity that is known at another temperature.
   *
   * @param temperature mean temperature at which the conductivity is known [K]
   * @return the law with that reference temperature
   * @throws InvalidInputException if the temperature is not within 1 K to 5000 K
   */
  public TemperatureCorrection from(double temperature) {
    return new TemperatureCorrection(coefficient, temperature, lowestTemperature, source);
  }

  private static TemperatureCorrection standard(double coefficient, String locator) {
    return new TemperatureCorrection(
        coefficient, EUROPEAN_REFERENCE, Source.memory("ISO 10456:2007", locator));
  }

  /**
   * Returns the factor on the conductivity.
   *
   * @param meanTemperature mean temperature of the material [K]
   * @return k(T) / k(T0) [-]
   * @throws InvalidInputException if the temperature is not within 1 K to 5000 K
   */
  public double factor(double meanTemperature) {
    Checks.temperature("mean temperature of a material", meanTemperature);
    double held = Math.max(meanTemperature, lowestTemperature);
    return Math.exp(coefficient * (held - referenceTemperature));
  }
}
