package stenotherm.decision;

import java.util.List;
import stenotherm.animal.Limit;
import stenotherm.animal.Tolerance;
import stenotherm.base.Checks;
import stenotherm.base.Range;
import stenotherm.base.Suggestions;
import stenotherm.parcel.Container;
import stenotherm.study.JourneyStudy;
import stenotherm.transit.TransitResult;

/**
 * How far an animal stays from an end of its alarm band: its mean temperature, averaged over time
 * as its {@link Tolerance#averaging} says.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param side which end
 * @param cup name of the cup
 * @param kelvin distance at the tightest moment [K], negative if the end was passed
 * @param temperature running mean of the animal's temperature then [K]
 * @param time the tightest moment, since sealing [s]
 */
public record Margin(Side side, String cup, double kelvin, double temperature, double time) {
  /** The smallest margin over all cups on one side, up to a time. */
  static Margin smallest(TransitResult result, Side side, double until) {
    Margin smallest = null;
    for (Container cup : result.parcel().occupied()) {
      Margin margin = of(result, cup.name(), side, until);
      if (smallest == null || margin.kelvin() < smallest.kelvin()) {
        smallest = margin;
      }
    }
    if (smallest == null) {
      throw new IllegalStateException("a parcel has at least one cup");
    }
    return smallest;
  }

  /**
   * Finds the margin of one animal.
   *
   * @param result the run
   * @param cup name of its cup
   * @param side which end
   * @param until last time that counts, since sealing [s]
   * @return the smallest margin up to then
   * @throws stenotherm.base.InvalidInputException if there is no such cup
   */
  public static Margin of(TransitResult result, String cup, Side side, double until) {
    Checks.given("side", side);
    List<Container> occupied = Checks.given("result", result).parcel().occupied();
    Tolerance tolerance =
        occupied.stream()
            .filter(each -> each.name().equals(cup))
            .findFirst()
            .flatMap(Container::occupant)
            .orElseThrow(
                () ->
                    Suggestions.unknown(
                        "cup", cup, occupied.stream().map(Container::name).toList()))
            .animal()
            .tolerance();
    Range alarm = tolerance.band(Limit.ALARM).range();
    double[] times = result.times();
    double[] means = JourneyStudy.runningMeans(times, result.mean(cup), tolerance.averaging());
    int tightest = 0;
    for (int row = 1; row < times.length && times[row] <= until; row++) {
      boolean tighter =
          side == Side.COLD ? means[row] < means[tightest] : means[row] > means[tightest];
      tightest = tighter ? row : tightest;
    }
    double temperature = means[tightest];
    double kelvin = side == Side.COLD ? temperature - alarm.low() : alarm.high() - temperature;
    return new Margin(side, cup, kelvin, temperature, times[tightest]);
  }
}
