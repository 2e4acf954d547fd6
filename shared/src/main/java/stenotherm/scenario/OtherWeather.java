package stenotherm.scenario;

import java.time.LocalDate;
import java.util.List;
import stenotherm.base.Checks;
import stenotherm.base.Range;

/**
 * Weather at both ends of a journey, and a day of sealing, instead of those that a scenario gives.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param sealed the day of sealing, on the clock of the origin; the hour stays
 * @param origin weather where the parcel is sent from
 * @param destination weather where it is sent to
 */
public record OtherWeather(LocalDate sealed, EndWeather origin, EndWeather destination) {
  /** Error of lows and highs forecast for the next day, as a central 90 % [K]. */
  public static final double FORECAST_SPREAD = Sites.GIVEN_DAYS_SPREAD;

  /** How far a station's recorded days may be off where the parcel is, as a central 90 % [K]. */
  public static final double RECORDED_SPREAD = Sites.RECORDED_DAYS_SPREAD;

  /** Checks that all is given. */
  public OtherWeather {
    Checks.given("day of sealing", sealed);
    Checks.given("weather at the origin", origin);
    Checks.given("weather at the destination", destination);
  }

  private static final Range SPREADS = new Range(0, 30);

  /**
   * Lows and highs at an end.
   *
   * @param first date of the first of the days
   * @param days low and high of each day [K], at least one; before the first and after the last
   *     these go on
   * @param spread how far true temperatures may be above or below, as a central 90 % [K], 0 to 30
   */
  public record EndWeather(LocalDate first, List<Range> days, double spread) {
    /**
     * Checks the numbers.
     *
     * @throws stenotherm.base.InvalidInputException if there is no day, or the spread is not within
     *     0 K to 30 K
     */
    public EndWeather {
      Checks.given("first day", first);
      days = Checks.notEmpty("days of weather", days);
      Checks.within("spread of weather", spread, SPREADS, "K", "0 if it is known exactly.");
    }

    /**
     * The same low and high on all days.
     *
     * @param range low and high [K]
     * @param spread how far true temperatures may be above or below [K]
     * @return the weather
     */
    public static EndWeather daily(Range range, double spread) {
      return new EndWeather(LocalDate.EPOCH, List.of(range), spread);
    }
  }
}
