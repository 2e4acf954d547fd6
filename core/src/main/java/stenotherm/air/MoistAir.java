package stenotherm.air;

import stenotherm.base.Checks;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.Temperatures;

/**
 * Properties of moist air as an ideal gas.
 *
 * <p>Stateless, thus thread-safe.
 */
public final class MoistAir {
  /** Universal gas constant [J/(mol K)], exact by definition (SI Brochure, 9th edition, 2019). */
  public static final double GAS_CONSTANT = 8.31446261815324;

  /** Molar mass of dry air [kg/mol] (ASHRAE Handbook of Fundamentals 2021, chapter 1). */
  public static final double DRY_AIR_MOLAR_MASS = 0.028966;

  /** Where the saturation pressure comes from. */
  public static final Source SATURATION =
      Source.memory(
          "Hyland and Wexler 1983, in ASHRAE Handbook of Fundamentals 2021, chapter 1",
          "equations 5 (ice) and 6 (water)");

  /** Where latent heats come from. */
  public static final Source LATENT_HEAT =
      Source.memory(
          "IAPWS-95 steam tables",
          "2500.9 kJ/kg at 0 °C, 2441.7 at 25 °C, 2406.0 at 40 °C, a straight line through them;"
              + " ice 2834 kJ/kg");

  private static final double WATER_MOLAR_MASS = Gas.WATER_VAPOUR.molarMass();

  /** Temperatures for which the saturation pressure is known [K]. */
  public static final Range SATURATION_RANGE = new Range(233.15, 363.15);

  private MoistAir() {}

  /**
   * Returns the saturation pressure of water vapour: over ice below 0 °C, over water from there on,
   * by {@link #SATURATION}.
   *
   * @param temperature temperature [K], 233.15 to 363.15
   * @return the pressure [Pa]
   * @throws stenotherm.base.InvalidInputException if the temperature is out of its range
   */
  public static double saturationPressure(double temperature) {
    double t =
        Checks.within(
            "temperature of a wet surface",
            temperature,
            SATURATION_RANGE,
            "K",
            "The saturation pressure is known from -40 °C to 90 °C.");
    if (t < Temperatures.CELSIUS_ZERO) {
      return Math.exp(
          -5.6745359e3 / t
              + 6.3925247
              + t * (-9.677843e-3 + t * (6.2215701e-7 + t * (2.0747825e-9 + t * -9.484024e-13)))
              + 4.1635019 * Math.log(t));
    }
    return Math.exp(
        -5.8002206e3 / t
            + 1.3914993
            + t * (-4.8640239e-2 + t * (4.1764768e-5 + t * -1.4452093e-8))
            + 6.5459673 * Math.log(t));
  }

  /**
   * Returns the temperature at which water vapour is saturated, the inverse of {@link
   * #saturationPressure}.
   *
   * @param vapourPressure partial pressure of water vapour [Pa], from that of ice at -40 °C to that
   *     of water at 90 °C
   * @return the dew point, below 0 °C the frost point [K]
   * @throws stenotherm.base.InvalidInputException if the pressure is out of its range
   */
  public static double dewPoint(double vapourPressure) {
    Checks.within(
        "vapour pressure",
        vapourPressure,
        new Range(
            saturationPressure(SATURATION_RANGE.low()),
            saturationPressure(SATURATION_RANGE.high())),
        "Pa",
        "The dew point is known from -40 °C to 90 °C.");
    double low = SATURATION_RANGE.low();
    double high = SATURATION_RANGE.high();
    // the jump of 0.01 % between ice and water at 0 °C rules out Newton's method
    while (high - low > 1e-9) {
      double middle = (low + high) / 2;
      if (saturationPressure(middle) < vapourPressure) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /**
   * Returns the mass of water vapour per mass of dry air.
   *
   * @param vapourPressure partial pressure of water vapour [Pa], below the pressure
   * @param pressure absolute pressure of the moist air [Pa]
   * @return the humidity ratio [kg/kg]
   */
  public static double humidityRatio(double vapourPressure, double pressure) {
    return WATER_MOLAR_MASS / DRY_AIR_MOLAR_MASS * vapourPressure / (pressure - vapourPressure);
  }

  /**
   * Returns the density of moist air.
   *
   * @param temperature temperature [K]
   * @param pressure absolute pressure [Pa]
   * @param vapourPressure partial pressure of water vapour [Pa]
   * @return the density [kg/m3]
   */
  public static double density(double temperature, double pressure, double vapourPressure) {
    return ((pressure - vapourPressure) * DRY_AIR_MOLAR_MASS + vapourPressure * WATER_MOLAR_MASS)
        / (GAS_CONSTANT * temperature);
  }

  /**
   * Returns the heat that water takes up when it evaporates, or ice when it sublimes below 0 °C, by
   * {@link #LATENT_HEAT}.
   *
   * @param temperature temperature of the surface [K], meant for 233 to 363
   * @return the heat [J/mol]
   */
  public static double latentHeat(double temperature) {
    double celsius = Temperatures.toCelsius(temperature);
    return WATER_MOLAR_MASS * (celsius < 0 ? 2.834e6 : 2.5009e6 - 2372 * celsius);
  }

  /**
   * Returns the molar heat capacity of moist air at constant pressure: 1.006 kJ/(kg K) of dry air
   * and about 1.86 kJ/(kg K) of vapour, from memory (ASHRAE Handbook of Fundamentals 2021, chapter
   * 1).
   *
   * @param vapourFraction mole fraction of water vapour [-], 0 to 1
   * @return the heat capacity [J/(mol K)], between 29.1 (dry air) and 33.6 (vapour)
   */
  public static double molarHeatCapacity(double vapourFraction) {
    return 29.1 + 4.5 * vapourFraction;
  }

  /**
   * Returns the dynamic viscosity of air by Sutherland's law (U.S. Standard Atmosphere 1976).
   *
   * @param temperature temperature [K]
   * @return the viscosity [Pa s]
   */
  public static double viscosity(double temperature) {
    return 1.458e-6 * temperature * Math.sqrt(temperature) / (temperature + 110.4);
  }
}
