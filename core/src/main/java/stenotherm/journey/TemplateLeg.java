package stenotherm.journey;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Optional;
import stenotherm.ambient.Situation;
import stenotherm.base.Checks;
import stenotherm.base.Times;

/**
 * A leg of a journey template.
 *
 * <p>A value, thus thread-safe.
 *
 * @param name what happens
 * @param situation what kind of surroundings it has
 * @param end whose weather and clock apply
 * @param timing when it ends
 */
public record TemplateLeg(String name, Situation situation, JourneyEnd end, Timing timing) {
  /**
   * Checks the name.
   *
   * @throws stenotherm.base.InvalidInputException if it is blank
   */
  public TemplateLeg {
    Checks.given("name", name);
    Checks.given("situation", situation);
    Checks.given("end", end);
    Checks.given("timing", timing);
    Checks.name("leg name", name);
  }

  /** Which end of a journey a leg belongs to. Thread-safe. */
  public enum JourneyEnd {
    /** Where the parcel is sent from. */
    ORIGIN,
    /** Where it is sent to. */
    DESTINATION
  }

  /** When a leg ends. Values, thus thread-safe. */
  public sealed interface Timing {
    /**
     * Returns how long a leg lasts.
     *
     * @param start when it starts, on its local clock
     * @return the duration [s]
     */
    double duration(LocalDateTime start);

    /**
     * Returns the clock time that the leg waits for.
     *
     * @return this timing; nothing if it waits for none
     */
    default Optional<UntilClock> untilClock() {
      return Optional.empty();
    }
  }

  /**
   * After some time.
   *
   * @param seconds how long [s], above 0
   */
  public record Lasting(double seconds) implements Timing {
    /**
     * Checks the duration.
     *
     * @throws stenotherm.base.InvalidInputException if it is not above 0
     */
    public Lasting {
      Checks.positive("duration of a template's leg", seconds, "s");
    }

    @Override
    public double duration(LocalDateTime start) {
      return seconds;
    }
  }

  /**
   * When the local clock next shows a time, but not before some time has passed. If it would show
   * it only {@link #PATIENCE} later or more, the hour was just missed; then the parcel goes on as
   * soon as it can.
   *
   * @param clock the time
   * @param shortest the least that the leg lasts [s], above 0
   */
  public record UntilClock(LocalTime clock, double shortest) implements Timing {
    /** The longest wait for a clock time [s]. */
    public static final double PATIENCE = Times.fromHours(18);

    /**
     * Checks the duration.
     *
     * @throws stenotherm.base.InvalidInputException if it is not above 0
     */
    public UntilClock {
      Checks.given("clock", clock);
      Checks.positive("shortest duration of a template's leg", shortest, "s");
    }

    /**
     * Tells whether the hour was just missed, so that the leg ends as soon as it can.
     *
     * @param start when the leg starts, on its local clock
     * @return true if the clock is not waited for
     */
    public boolean misses(LocalDateTime start) {
      return secondsToWait(start) >= PATIENCE;
    }

    @Override
    public double duration(LocalDateTime start) {
      return misses(start) ? shortest : secondsToWait(start);
    }

    @Override
    public Optional<UntilClock> untilClock() {
      return Optional.of(this);
    }

    /** Time until the clock shows its hour, after the shortest duration at the least [s]. */
    private double secondsToWait(LocalDateTime start) {
      LocalDateTime earliest = start.plusSeconds(Math.round(shortest));
      LocalDateTime end = earliest.toLocalDate().atTime(clock);
      if (end.isBefore(earliest)) {
        end = end.plusDays(1);
      }
      return Duration.between(start, end).toSeconds();
    }
  }
}
