package stenotherm.scenario;

import stenotherm.journey.Journey;
import stenotherm.text.Node;
import stenotherm.text.TextFormatException;

/**
 * The journey of a scenario before its weather is known: makes it on other days, in other weather.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class JourneyPlan {
  private final Node journey;
  private final double hold;

  JourneyPlan(Node journey, double hold) {
    this.journey = journey;
    this.hold = hold;
  }

  /**
   * Makes the journey in other weather.
   *
   * @param weather the weather
   * @return the journey, otherwise as the scenario has it
   * @throws TextFormatException if no leg follows the weather of either end, or a temperature is
   *     out of range
   */
  public Journey in(OtherWeather weather) {
    return new JourneyReader(new Assumptions(), hold, weather).read(journey);
  }
}
