package stenotherm.picture;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;

/**
 * A part of a journey as a chart marks it.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 *
 * @param name the name that stands above the leg
 * @param time from when to when, from sealing [s]
 */
public record ChartLeg(String name, Range time) {
  /**
   * Checks the leg.
   *
   * @param name the name
   * @param time from when to when [s]
   * @throws InvalidInputException if the name is blank or the time not finite
   */
  public ChartLeg {
    Checks.name("leg name", name);
    Checks.finite("start of leg", time.low(), "s");
    Checks.finite("end of leg", time.high(), "s");
  }
}
