package stenotherm.picture;

import java.util.ArrayList;
import java.util.List;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;

/**
 * A named temperature over time.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 *
 * @param name the name that stands at the curve
 * @param points the points in time order, joined by straight lines, at least two; two points at one
 *     time are a jump
 */
public record Curve(String name, List<Reading> points) {
  /**
   * A point of a curve.
   *
   * <p>Experimental. A value, thus thread-safe.
   *
   * @param time time from sealing [s]
   * @param temperature temperature [K]
   */
  public record Reading(double time, double temperature) {
    /**
     * Checks the point.
     *
     * @param time time from sealing [s]
     * @param temperature temperature [K]
     * @throws InvalidInputException if the time is not finite or the temperature not a possible one
     */
    public Reading {
      Checks.finite("time", time, "s");
      Checks.temperature("temperature", temperature);
    }
  }

  /**
   * Checks the curve and copies its points.
   *
   * @param name the name
   * @param points the points
   * @throws InvalidInputException if the name is blank, there are fewer than two points or time
   *     runs backwards
   */
  public Curve {
    Checks.name("curve name", name);
    points = List.copyOf(points);
    if (points.size() < 2) {
      throw new InvalidInputException("curve '" + name + "'", "needs at least two points");
    }
    for (int i = 1; i < points.size(); i++) {
      if (points.get(i).time() < points.get(i - 1).time()) {
        throw new InvalidInputException(
            "curve '" + name + "'",
            "time runs backwards at " + Checks.show(points.get(i).time(), "s"));
      }
    }
  }

  /**
   * Makes a curve from two tables of equal length, which are copied.
   *
   * @param name the name that stands at the curve
   * @param times times from sealing in ascending order [s]
   * @param temperatures the temperature at each time [K]
   * @return the curve
   * @throws InvalidInputException if the tables differ in length or the curve is bad
   */
  public static Curve of(String name, double[] times, double[] temperatures) {
    if (times.length != temperatures.length) {
      throw new InvalidInputException(
          "curve '" + name + "'",
          times.length + " times for " + temperatures.length + " temperatures");
    }
    List<Reading> points = new ArrayList<>();
    for (int i = 0; i < times.length; i++) {
      points.add(new Reading(times[i], temperatures[i]));
    }
    return new Curve(name, points);
  }
}
