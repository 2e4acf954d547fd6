package stenotherm.journey;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;

/** Refuses sunlight whose table does not cover its leg: its first or last row would shine on. */
final class SunRecord {
  /** Rows are looked for within so much time before and after a leg [s]. */
  private static final double HORIZON = 30 * Times.DAY;

  /** Sums of durations may miss a row by rounding [s]. */
  private static final double ROUNDING = 1;

  private SunRecord() {}

  /**
   * Checks all sunlight of a leg.
   *
   * @param from when the leg starts [s]
   * @param to when it ends, with its delay [s]
   */
  static void check(Leg leg, double from, double to) {
    Surroundings surroundings = leg.surroundings();
    surroundings
        .sunshine()
        .irradiance()
        .forEach((face, sun) -> check("sunlight on " + face.label(), sun, leg, from, to));
    for (Contact contact : surroundings.contacts()) {
      String part = "sunlight on a part of the " + contact.face().words();
      contact.condition().sunlight().ifPresent(sun -> check(part, sun, leg, from, to));
    }
  }

  private static void check(String what, TimeFunction sun, Leg leg, double from, double to) {
    double[] rows = sun.breakpoints(from - HORIZON, to + HORIZON);
    if (rows.length == 0) {
      return;
    }
    String field = what + " in leg '" + leg.name() + "'";
    double first = rows[0];
    if (first > from + ROUNDING && shinesOn(sun, from, first)) {
      throw new InvalidInputException(
          field,
          "its first row is "
              + Checks.show(sun.before(first), "W/m2")
              + " at "
              + hours(first)
              + " after sealing, but the leg begins at "
              + hours(from)
              + "; add rows for the first "
              + hours(Math.min(first, to) - from)
              + " of it, or begin with 0 W/m2");
    }
    double last = rows[rows.length - 1];
    if (last < to - ROUNDING && shinesOn(sun, last, to)) {
      throw new InvalidInputException(
          field,
          "its last row is "
              + Checks.show(sun.at(last), "W/m2")
              + " at "
              + hours(last)
              + " after sealing, but the leg ends at "
              + hours(to)
              + "; add rows for the last "
              + hours(to - Math.max(last, from))
              + " of it, or end with 0 W/m2");
    }
  }

  /** Tells whether the same light falls all the time, as beyond the ends of a table. */
  private static boolean shinesOn(TimeFunction sun, double from, double to) {
    double value = sun.at(from);
    return value != 0 && sun.at((from + to) / 2) == value && sun.before(to) == value;
  }

  private static String hours(double seconds) {
    return Checks.show(Times.toHours(seconds), "h");
  }
}
