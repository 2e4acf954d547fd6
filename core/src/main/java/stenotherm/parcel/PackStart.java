package stenotherm.parcel;

import stenotherm.base.Checks;
import stenotherm.base.Range;

/**
 * In which state a pack goes into the parcel.
 *
 * <p>Experimental. Values, thus thread-safe.
 */
public sealed interface PackStart {
  /**
   * At a temperature away from its melting: frozen below, liquid above.
   *
   * @param temperature temperature of the whole pack [K]
   */
  record At(double temperature) implements PackStart {
    /**
     * Checks the temperature.
     *
     * @throws stenotherm.base.InvalidInputException if it is not absolute
     */
    public At {
      Checks.temperature("start temperature of a pack", temperature);
    }
  }

  /**
   * At its melting temperature, partly liquid.
   *
   * @param liquidFraction melted part, 0 to 1
   */
  record PartlyMelted(double liquidFraction) implements PackStart {
    private static final Range FRACTION = new Range(0, 1);

    /**
     * Checks the fraction.
     *
     * @throws stenotherm.base.InvalidInputException if it is not within 0 and 1
     */
    public PartlyMelted {
      Checks.within(
          "liquid fraction of a pack",
          liquidFraction,
          FRACTION,
          "",
          "0 is frozen through, 1 all liquid.");
    }
  }
}
