package stenotherm.warmer;

import stenotherm.base.Checks;

/**
 * Power that follows a temperature, as of an electric heater behind a thermostat. It takes no
 * oxygen.
 *
 * <p>A value, thus thread-safe.
 *
 * @param watched name of the cup whose air is watched: its mean temperature
 * @param law power at that temperature
 */
public record ControlledPower(String watched, HeaterLaw law) implements HeatRelease {
  /**
   * Checks the parts.
   *
   * @throws stenotherm.base.InvalidInputException if the name is blank or there is no law
   */
  public ControlledPower {
    Checks.given("watched", watched);
    Checks.name("watched cup", watched);
    Checks.given("law", law);
  }
}
