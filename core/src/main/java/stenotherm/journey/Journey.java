package stenotherm.journey;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.TimeFunction;

/**
 * What a sealed parcel goes through, leg after leg.
 *
 * <p>A value, thus thread-safe.
 *
 * @param sealing when the parcel is sealed, on the clock of the first leg's place
 * @param startTemperature temperature of everything in the parcel at sealing [K], 200 to 350
 * @param legs the legs in their order, at least one
 */
public record Journey(LocalDateTime sealing, double startTemperature, List<Leg> legs) {
  /**
   * Checks the start, that there is a leg, and that tables of sunlight cover their legs.
   *
   * @throws stenotherm.base.InvalidInputException if there is no leg, the start temperature or a
   *     temperature that a leg meets is not within 200 K to 350 K, or a table of sunlight begins
   *     after its leg or ends before it, delay included, with a row that is not 0
   */
  public Journey {
    Checks.given("sealing", sealing);
    Checks.given("legs", legs);
    Checks.parcelTemperature("start temperature", startTemperature);
    legs = Checks.notEmpty("legs", legs);
    double start = 0;
    for (Leg leg : legs) {
      checkTemperatures(leg, start);
      SunRecord.check(leg, start, start + leg.lasting());
      start += leg.lasting();
    }
  }

  /** Looks at the air of a leg and at what touches the parcel, at the start and where they bend. */
  private static void checkTemperatures(Leg leg, double start) {
    String of = " of leg '" + leg.name() + "'";
    Surroundings surroundings = leg.surroundings();
    checkTemperature("ambient temperature" + of, surroundings.ambient(), start, leg);
    for (Contact contact : surroundings.contacts()) {
      contact
          .condition()
          .neighbour()
          .ifPresent(
              neighbour ->
                  checkTemperature(
                      "temperature of a neighbour" + of, neighbour.temperature(), start, leg));
    }
  }

  private static void checkTemperature(
      String field, TimeFunction temperature, double start, Leg leg) {
    Checks.parcelTemperature(field, temperature.at(start));
    for (double time : temperature.breakpoints(start, start + leg.lasting())) {
      Checks.parcelTemperature(field, temperature.before(time));
      Checks.parcelTemperature(field, temperature.at(time));
    }
  }

  /**
   * Returns the duration from sealing to opening.
   *
   * @return sum of the legs' durations and delays [s]
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
      time += legs.get(index).lasting();
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
   * Returns the leg under way just before a time.
   *
   * @param time time since sealing [s]
   * @return position of the leg; at a change of legs the earlier one, after the end the last one
   */
  public int legUntil(double time) {
    for (int leg = 0; leg < legs.size() - 1; leg++) {
      if (time <= start(leg + 1)) {
        return leg;
      }
    }
    return legs.size() - 1;
  }

  /**
   * Returns the temperature of the air as stated.
   *
   * @param time time since sealing [s]
   * @return the temperature [K]; at a change of legs that of the later one
   */
  public double ambientAt(double time) {
    return legs.get(legAt(time)).surroundings().ambient().at(time);
  }

  /**
   * Returns the clock at the place where the parcel is; at a change of legs that of the later one.
   *
   * @param time time since sealing [s]
   * @return local date and time, to the second
   */
  public LocalDateTime localClock(double time) {
    return localClock(time, legAt(time));
  }

  /**
   * Returns the clock at the place of a leg.
   *
   * @param time time since sealing [s]
   * @param leg position of the leg
   * @return local date and time, to the second
   */
  public LocalDateTime localClock(double time, int leg) {
    return legs.get(leg).place().clockAt(time, sealing, legs.get(0).place());
  }

  /**
   * The journey with its last leg held longer.
   *
   * @param hold how much longer [s], above 0
   * @return the changed journey
   * @throws stenotherm.base.InvalidInputException if the hold is not above 0 and at most 30 days
   */
  public Journey held(double hold) {
    Checks.positive("hold", hold, "s");
    return delayed(legs.size() - 1, hold);
  }

  /**
   * The journey with one leg delayed; the legs after it come later and meet the temperatures of
   * their new hours.
   *
   * @param leg position of the leg
   * @param delay how much longer it lasts [s], 0 to 30 days
   * @return the changed journey
   * @throws stenotherm.base.InvalidInputException if there is no such leg or the delay is out of
   *     its range
   */
  public Journey delayed(int leg, double delay) {
    if (leg < 0 || leg >= legs.size()) {
      throw new InvalidInputException(
          "leg", "there is no leg " + leg + "; the first is 0, the last " + (legs.size() - 1));
    }
    List<Leg> changed = new ArrayList<>(legs);
    changed.set(leg, legs.get(leg).delayed(delay));
    return new Journey(sealing, startTemperature, changed);
  }
}
