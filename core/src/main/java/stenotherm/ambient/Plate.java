package stenotherm.ambient;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;

/**
 * A flat surface of uniform temperature in still air of another.
 *
 * <p>A value, thus thread-safe.
 *
 * @param length characteristic length [m], above 0: the height of a vertical plate, area over
 *     perimeter of a horizontal one
 * @param surfaceTemperature temperature of the surface [K]
 * @param airTemperature temperature of the air far from it [K]
 */
public record Plate(double length, double surfaceTemperature, double airTemperature) {
  /**
   * Checks the plate.
   *
   * @throws InvalidInputException if the length is not above 0 or a temperature is not absolute
   */
  public Plate {
    Checks.positive("characteristic length of a plate", length, "m");
    Checks.temperature("surface temperature of a plate", surfaceTemperature);
    Checks.temperature("air temperature at a plate", airTemperature);
  }

  /**
   * Returns the temperature at which a correlation takes its properties.
   *
   * @return the mean of surface and air [K]
   */
  public double filmTemperature() {
    return (surfaceTemperature + airTemperature) / 2;
  }
}
