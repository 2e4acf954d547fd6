package stenotherm.decision;

import stenotherm.base.Checks;

/**
 * A sensor of a logger inside a box.
 *
 * <p>A value, thus thread-safe.
 *
 * @param name name, unique in a trace
 * @param spot where it was
 */
public record LoggerSensor(String name, SensorSpot spot) {
  /**
   * Checks the parts.
   *
   * @throws stenotherm.base.InvalidInputException if the name is blank
   */
  public LoggerSensor {
    Checks.name("name of a sensor", name);
    Checks.given("spot of sensor '" + name + "'", spot);
  }
}
