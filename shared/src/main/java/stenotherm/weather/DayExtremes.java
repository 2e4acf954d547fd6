package stenotherm.weather;

import java.time.LocalDate;
import java.util.Objects;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;

/**
 * The lowest and the highest air temperature of one calendar day.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param date the local calendar day
 * @param low the lowest temperature of the day [K]
 * @param high the highest temperature of the day [K]
 */
public record DayExtremes(LocalDate date, double low, double high) {
  /**
   * Checks the day.
   *
   * @throws InvalidInputException if a temperature is not a possible one, or the low is above the
   *     high
   */
  public DayExtremes {
    Objects.requireNonNull(date, "date");
    Checks.temperature("low of the day", low);
    Checks.temperature("high of the day", high);
    if (low > high) {
      throw new InvalidInputException(
          "low of the day",
          Checks.show(low, "K")
              + " is above the high of "
              + Checks.show(high, "K")
              + " on "
              + date
              + ". Look whether the two were swapped.");
    }
  }
}
