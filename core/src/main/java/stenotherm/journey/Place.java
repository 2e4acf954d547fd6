package stenotherm.journey;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import stenotherm.base.Checks;

/**
 * A place on the way, with its clock.
 *
 * <p>A value, thus thread-safe.
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
    Checks.given("name", name);
    Checks.given("utc offset", utcOffset);
    Checks.name("place name", name);
  }

  /**
   * Converts a reading of the local clock to the time of a journey.
   *
   * @param clock local date and time here
   * @param sealing when the parcel was sealed, on the clock of another place
   * @param sealedAt that place
   * @return time since sealing [s], negative before it
   */
  public double timeOf(LocalDateTime clock, LocalDateTime sealing, Place sealedAt) {
    Duration since =
        Duration.between(sealing.atOffset(sealedAt.utcOffset), clock.atOffset(utcOffset));
    return since.toMillis() / 1000.0;
  }

  /**
   * Converts the time of a journey to a reading of the local clock.
   *
   * @param time time since sealing [s]
   * @param sealing when the parcel was sealed, on the clock of another place
   * @param sealedAt that place
   * @return local date and time here, to the second
   */
  public LocalDateTime clockAt(double time, LocalDateTime sealing, Place sealedAt) {
    return sealing
        .atOffset(sealedAt.utcOffset)
        .plusSeconds(Math.round(time))
        .withOffsetSameInstant(utcOffset)
        .toLocalDateTime();
  }
}
