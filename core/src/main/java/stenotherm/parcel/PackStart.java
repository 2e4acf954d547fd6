package stenotherm.parcel;

import java.util.Locale;
import java.util.Optional;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Temperatures;
import stenotherm.conduction.InitialState;
import stenotherm.material.EnthalpyCurve;
import stenotherm.material.Melting;

/**
 * In which state a pack goes into the parcel.
 *
 * <p>Values, thus thread-safe.
 */
public sealed interface PackStart {
  /**
   * Checks that a pack can be in this state.
   *
   * @param field what messages call the state
   * @param pack the pack
   * @throws InvalidInputException if the pack does not melt but is said to be partly melted, or
   *     melts just at the temperature
   */
  void requireFits(String field, PackClass pack);

  /**
   * Adds the state to that of a parcel.
   *
   * @param state state of the parcel
   * @param pack name of the pack
   * @return the changed state
   */
  InitialState addTo(InitialState state, String pack);

  /**
   * Tells whether all of a pack is liquid.
   *
   * @param melting how its contents melt
   * @return true if nothing is left to melt
   */
  boolean isLiquid(Melting melting);

  /**
   * Returns the temperature of a pack.
   *
   * @param pack the pack
   * @return its temperature, or the middle of its melting range if it is partly melted [K]
   */
  double temperatureOf(PackClass pack);

  /**
   * Returns the enthalpy of a pack that starts like this.
   *
   * @param curve the pack's enthalpy curve
   * @return its enthalpy at sealing [J]
   */
  double enthalpyOf(EnthalpyCurve curve);

  /**
   * At a temperature away from its melting: frozen below, liquid above.
   *
   * @param temperature temperature of the whole pack [K]
   */
  record AtTemperature(double temperature) implements PackStart {
    /**
     * Checks the temperature.
     *
     * @throws stenotherm.base.InvalidInputException if it is not within 200 K to 350 K
     */
    public AtTemperature {
      Checks.parcelTemperature("start temperature of a pack", temperature);
    }

    @Override
    public void requireFits(String field, PackClass pack) {
      Optional<Melting> melting = pack.contents().behaviour().fusion();
      if (melting.isPresent() && melting.get().range().contains(temperature)) {
        throw new InvalidInputException(
            field,
            String.format(
                    Locale.ROOT,
                    "%.1f °C (%.1f °F) is where '",
                    Temperatures.toCelsius(temperature),
                    Temperatures.toFahrenheit(temperature))
                + pack.contents().name()
                + "' melts; say which part of it is liquid, such as 0 % liquid for one that is"
                + " frozen through");
      }
    }

    @Override
    public InitialState addTo(InitialState state, String pack) {
      return state.with(pack, temperature);
    }

    @Override
    public boolean isLiquid(Melting melting) {
      return temperature > melting.range().high();
    }

    @Override
    public double temperatureOf(PackClass pack) {
      return temperature;
    }

    @Override
    public double enthalpyOf(EnthalpyCurve curve) {
      return curve.enthalpy(temperature);
    }
  }

  /**
   * At its melting temperature, partly liquid.
   *
   * @param liquidFraction melted part [-], 0 to 1
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

    @Override
    public void requireFits(String field, PackClass pack) {
      if (!pack.melts()) {
        throw new InvalidInputException(
            field, "'" + pack.contents().name() + "' does not melt; give its temperature");
      }
    }

    @Override
    public InitialState addTo(InitialState state, String pack) {
      return state.partlyMelted(pack, liquidFraction);
    }

    @Override
    public boolean isLiquid(Melting melting) {
      return liquidFraction == 1;
    }

    @Override
    public double temperatureOf(PackClass pack) {
      Range range = pack.contents().behaviour().fusion().orElseThrow().range();
      return (range.low() + range.high()) / 2;
    }

    @Override
    public double enthalpyOf(EnthalpyCurve curve) {
      return curve.enthalpyAtFraction(liquidFraction);
    }
  }
}
