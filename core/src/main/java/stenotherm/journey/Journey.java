package stenotherm.journey;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import stenotherm.base.Checks;

/**
 * What a sealed parcel goes through, leg after leg.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param sealing when the parcel is sealed, on the clock of the first leg's place
 * @param startTemperature temperature of everything in the parcel at sealing [K]
 * @param legs the legs in their order, at least one
 */
public record Journey(LocalDateTime sealing, double startTemperature, List<Leg> legs) {
  /**
   * Checks the start and that there is a leg.
   *
   * @throws stenotherm.base.InvalidInputException if there is none, or the temperature is not
   *     absolute
   */
  public Journey {
    Checks.temperature("start temperature", startTemperature);
    legs = Checks.notEmpty("legs", legs);
  }

  /**
   * Returns the duration from sealing to opening.
   *
   * @return sum of the legs' durations [s]
   */
  public double duration() {
    return start(legs.size());
  }

  /**
   * Returns when a leg starts.
   *
   * @param leg position of the leg; the number of legs for the end of the journey
   * @return time since sealing [s]
   */
  public double start(int leg) {
    double time = 0;
    for (int index = 0; index < leg; index++) {
      time += legs.get(index).duration();
    }
    return time;
  }

  /**
   * Returns the leg under way at a time.
   *
   * @param time time since sealing [s]
   * @return position of the leg; at a change of legs the later one, after the end the last one
   */
  public int legAt(double time) {
    for (int leg = 0; leg < legs.size() - 1; leg++) {
      if (time < start(leg + 1)) {
        return leg;
      }
    }
    return legs.size() - 1;
  }

  /**
   * Returns the clock at the place where the parcel is.
   *
   * @param time time since sealing [s]
   * @return local date and time, to the second
   */
  public LocalDateTime localClock(double time) {
    ZoneOffset atSealing = legs.get(0).place().utcOffset();
    ZoneOffset now = legs.get(legAt(time)).place().utcOffset();
    return sealing
        .plus(Duration.ofSeconds(Math.round(time)))
        .plusSeconds(now.getTotalSeconds() - (long) atSealing.getTotalSeconds());
  }

  /**
   * The journey with its last leg held longer.
   *
   * @param hold how much longer [s], above 0
   * @return the changed journey
   */
  public Journey held(double hold) {
    Checks.positive("hold", hold, "s");
    List<Leg> changed = new ArrayList<>(legs);
    Leg last = changed.remove(changed.size() - 1);
    changed.add(last.lasting(last.duration() + hold));
    return new Journey(sealing, startTemperature, changed);
  }
}
