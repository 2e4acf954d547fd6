package stenotherm.journey;

import stenotherm.ambient.FaceFilms;
import stenotherm.base.Checks;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.TimeFunction;

/**
 * A part of a journey under one kind of surroundings.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param name what happens, for example "night in the depot"
 * @param place where, for the local clock; for a leg between two places the one whose clock applies
 * @param duration how long [s], above 0
 * @param ambient temperature of air and surroundings over the time since sealing [K against s]
 * @param ambientSpread how far the ambient may lie off on either side [K], 0 or above
 * @param films how heat passes the faces
 * @param source where ambient and duration come from
 */
public record Leg(
    String name,
    Place place,
    double duration,
    TimeFunction ambient,
    double ambientSpread,
    FaceFilms films,
    Source source) {
  private static final Range DURATION = new Range(60, 30 * 86400.0);

  /**
   * Checks the parts.
   *
   * @throws stenotherm.base.InvalidInputException if the name is blank, the duration is not within
   *     one minute and 30 days, or the spread is negative
   */
  public Leg {
    Checks.name("leg name", name);
    Checks.within(
        "duration of leg '" + name + "'",
        duration,
        DURATION,
        "s",
        "Durations are in seconds: 2 h are 7200 s.");
    Checks.notNegative("ambient spread of leg '" + name + "'", ambientSpread, "K");
  }

  /**
   * The same leg, longer or shorter.
   *
   * @param other duration [s]
   * @return the changed leg
   */
  public Leg lasting(double other) {
    return new Leg(name, place, other, ambient, ambientSpread, films, source);
  }
}
