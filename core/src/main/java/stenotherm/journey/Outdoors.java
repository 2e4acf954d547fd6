package stenotherm.journey;

import stenotherm.ambient.Sunshine;
import stenotherm.base.Checks;
import stenotherm.base.TimeFunction;

/**
 * The weather at an end of a journey.
 *
 * <p>A value, thus thread-safe.
 *
 * @param place where
 * @param temperature outdoor temperature over the time since sealing [K against s]
 * @param spread uncertainty of that temperature, plus or minus [K], 0 to 30
 * @param sunshine sun and sky there, for legs that they reach
 */
public record Outdoors(Place place, TimeFunction temperature, double spread, Sunshine sunshine) {
  /**
   * Checks the spread.
   *
   * @throws stenotherm.base.InvalidInputException if it is not within 0 K to 30 K
   */
  public Outdoors {
    Checks.given("place", place);
    Checks.given("temperature", temperature);
    Checks.given("sunshine", sunshine);
    AmbientSpread.checked("outdoor spread at " + place.name(), spread);
  }
}
