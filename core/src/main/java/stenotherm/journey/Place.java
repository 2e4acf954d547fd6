package stenotherm.journey;

import java.time.ZoneOffset;
import stenotherm.base.Checks;

/**
 * A place on the way, with its clock.
 *
 * <p>Stable. A value, thus thread-safe.
 *
 * @param name name
 * @param utcOffset how far its local clock is ahead of UTC
 */
public record Place(String name, ZoneOffset utcOffset) {
  /**
   * Checks the name.
   *
   * @throws stenotherm.base.InvalidInputException if it is blank
   */
  public Place {
    Checks.name("place name", name);
  }
}
