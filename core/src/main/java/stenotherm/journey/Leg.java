package stenotherm.journey;

import stenotherm.ambient.FaceFilms;
import stenotherm.base.Checks;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;

/**
 * A part of a journey under one kind of surroundings.
 *
 * <p>A value, thus thread-safe.
 *
 * @param name what happens, for example "night in the depot"
 * @param place where, for the local clock; for a leg between two places the one whose clock applies
 * @param duration how long it is planned to last [s], one minute to 30 days
 * @param delay how much longer it lasts [s], 0 to 30 days
 * @param surroundings surroundings of the parcel
 * @param source where surroundings and duration come from
 */
public record Leg(
    String name,
    Place place,
    double duration,
    double delay,
    Surroundings surroundings,
    Source source) {
  private static final Range DURATION = new Range(60, 30 * Times.DAY);
  private static final Range DELAY = new Range(0, 30 * Times.DAY);

  /**
   * Checks the parts.
   *
   * @throws stenotherm.base.InvalidInputException if the name is blank, or the duration or the
   *     delay is out of its range
   */
  public Leg {
    Checks.given("name", name);
    Checks.given("place", place);
    Checks.given("surroundings", surroundings);
    Checks.given("source", source);
    Checks.name("leg name", name);
    Checks.duration("duration of leg '" + name + "'", duration, DURATION);
    Checks.duration("delay of leg '" + name + "'", delay, DELAY);
  }

  /**
   * A leg without a delay.
   *
   * @param name what happens
   * @param place where, for the local clock
   * @param duration how long [s]
   * @param surroundings surroundings of the parcel
   * @param source where surroundings and duration come from
   */
  public Leg(String name, Place place, double duration, Surroundings surroundings, Source source) {
    this(name, place, duration, 0, surroundings, source);
  }

  /**
   * A leg without a delay, at sea level, in which the parcel stands alone and upright, out of the
   * sun.
   *
   * @param name what happens
   * @param place where, for the local clock
   * @param duration how long [s]
   * @param ambient temperature of air and surroundings over the time since sealing [K against s]
   * @param ambientSpread uncertainty of the ambient temperature, plus or minus [K], 0 to 30; none
   *     of it shared with other legs
   * @param films films of the faces
   * @param source where ambient and duration come from
   */
  public Leg(
      String name,
      Place place,
      double duration,
      TimeFunction ambient,
      double ambientSpread,
      FaceFilms films,
      Source source) {
    this(name, place, duration, 0, Surroundings.of(ambient, ambientSpread, films), source);
  }

  /**
   * Returns how long the leg lasts.
   *
   * @return planned duration and delay [s]
   */
  public double lasting() {
    return duration + delay;
  }

  /**
   * The same leg, planned longer or shorter.
   *
   * @param other duration [s]
   * @return the changed leg
   */
  public Leg lasting(double other) {
    return new Leg(name, place, other, delay, surroundings, source);
  }

  /**
   * The same leg with a longer delay. Its films stay those of the planned duration, so that what
   * happens until the planned end does not depend on the delay.
   *
   * @param more delay that is added [s]
   * @return the changed leg
   */
  public Leg delayed(double more) {
    return new Leg(name, place, duration, delay + more, surroundings, source);
  }

  /**
   * The same leg in other surroundings.
   *
   * @param other surroundings of the parcel
   * @return the changed leg
   */
  public Leg in(Surroundings other) {
    return new Leg(name, place, duration, delay, other, source);
  }
}
