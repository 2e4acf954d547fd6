package stenotherm.decision;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import stenotherm.animal.Exposure;
import stenotherm.animal.Limit;
import stenotherm.parcel.Container;
import stenotherm.transit.TransitResult;

/**
 * How far an animal stays from an end of its alarm band.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param side which end
 * @param cup name of the cup
 * @param kelvin distance at the tightest moment [K], negative if the end was passed
 * @param temperature temperature of the animal's coldest or hottest part then [K]
 * @param time the tightest moment, since sealing [s]
 */
public record Margin(Side side, String cup, double kelvin, double temperature, double time) {
  /** The smallest margin that any of several runs leaves on one side, up to a time. */
  static Margin worst(List<TransitResult> runs, Side side, double until) {
    return Collections.min(each(runs, side, until), Comparator.comparingDouble(Margin::kelvin));
  }

  /** The largest of the margins that several runs leave on one side, up to a time. */
  static Margin best(List<TransitResult> runs, Side side, double until) {
    return Collections.max(each(runs, side, until), Comparator.comparingDouble(Margin::kelvin));
  }

  private static List<Margin> each(List<TransitResult> runs, Side side, double until) {
    return runs.stream().map(run -> smallest(run, side, until)).toList();
  }

  /** The smallest margin over all cups on one side, up to a time. */
  static Margin smallest(TransitResult result, Side side, double until) {
    Margin smallest = null;
    for (Container cup : result.parcel().occupied()) {
      Exposure exposure = result.exposure(cup.name(), until);
      Margin margin =
          side == Side.COLD
              ? new Margin(
                  side,
                  cup.name(),
                  exposure.coldMargin(Limit.ALARM),
                  exposure.coldest().temperature(),
                  exposure.coldest().time())
              : new Margin(
                  side,
                  cup.name(),
                  exposure.hotMargin(Limit.ALARM),
                  exposure.hottest().temperature(),
                  exposure.hottest().time());
      if (smallest == null || margin.kelvin() < smallest.kelvin()) {
        smallest = margin;
      }
    }
    if (smallest == null) {
      throw new IllegalStateException("a parcel has at least one cup");
    }
    return smallest;
  }
}
