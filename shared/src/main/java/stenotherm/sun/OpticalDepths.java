package stenotherm.sun;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Source;

/**
 * How clear a cloudless sky is: the two pseudo optical depths that ASHRAE tabulates for each month
 * and weather station of its climatic design data. A larger beam depth is a hazier sky; the diffuse
 * depth falls as haze scatters more.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param beam τb of the direct beam, 0.1 to 1.5 [-]
 * @param diffuse τd of diffuse light, 1 to 3.5 [-]
 * @param source where the two come from
 */
public record OpticalDepths(double beam, double diffuse, Source source) {
  private static final String EXAMPLE =
      "EnergyPlus, unit test of the ASHRAE clear-sky model in WeatherManager.unit.cc";

  /** A clear winter sky: the values of January at one station in the east of the United States. */
  public static final OpticalDepths CLEAR_WINTER =
      new OpticalDepths(0.325, 2.461, Source.read(EXAMPLE, "design day of January"));

  /** A hazy summer sky: the values of July at the same station. */
  public static final OpticalDepths HAZY_SUMMER =
      new OpticalDepths(0.556, 1.779, Source.read(EXAMPLE, "design day of July"));

  /**
   * Checks the depths.
   *
   * @throws InvalidInputException if a depth is out of its range, or the two together would make
   *     light grow as the sun sinks
   */
  public OpticalDepths {
    String hint = "See the monthly clear-sky values of a station's climatic design data.";
    Checks.within("beam optical depth", beam, new Range(0.1, 1.5), "", hint);
    Checks.within("diffuse optical depth", diffuse, new Range(1, 3.5), "", hint);
    if (beamExponent(beam, diffuse) <= 0 || diffuseExponent(beam, diffuse) <= 0) {
      throw new InvalidInputException(
          "optical depths",
          Checks.show(beam, "")
              + " for the beam and "
              + Checks.show(diffuse, "")
              + " for diffuse light do not belong together: the hazier the sky, the larger the"
              + " first and the smaller the second");
    }
  }

  /** Exponent of the air mass for the beam. */
  double beamExponent() {
    return beamExponent(beam, diffuse);
  }

  /** Exponent of the air mass for diffuse light. */
  double diffuseExponent() {
    return diffuseExponent(beam, diffuse);
  }

  /** By the model of {@link ClearSky}, Gueymard and Thevenard 2013. */
  private static double beamExponent(double beam, double diffuse) {
    return 1.454 - 0.406 * beam - 0.268 * diffuse + 0.021 * beam * diffuse;
  }

  /** By the model of {@link ClearSky}, Gueymard and Thevenard 2013. */
  private static double diffuseExponent(double beam, double diffuse) {
    return 0.507 + 0.205 * beam - 0.080 * diffuse - 0.190 * beam * diffuse;
  }
}
