package stenotherm.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import stenotherm.animal.AnimalGroup;
import stenotherm.animal.Animals;
import stenotherm.parcel.Container;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.transit.TransitResult;
import stenotherm.warmer.IronPowder;

/**
 * What the animals of a packing breathe and can touch, and what its warmers do, with everything as
 * stated and until the planned opening. Sentences, tables and pictures all take it from here.
 *
 * @param row the packing
 */
record Climate(Judged row) {
  /** What counts as next to nothing of a warmer's power. */
  private static final double NOTHING = 0.05;

  /**
   * An extreme.
   *
   * @param cup where the animal is
   * @param time when, since sealing [s]
   * @param value how much
   */
  record Moment(Container cup, double time, double value) {}

  /**
   * What a warmer does.
   *
   * @param warmer which
   * @param peak its highest power [W]
   * @param useful how long it gives at least half of that [s]
   * @param hottest its hottest part [K]
   * @param limits what limits it for how long [s]; empty if its power is prescribed
   * @param spent when it gives next to nothing any more, its iron being used up [s]; empty if it
   *     lasts
   * @param tipping the highest gain of its loop while it was held back by cold [-]; at 1 it goes
   *     out
   */
  record WarmerCourse(
      PlacedWarmer warmer,
      double peak,
      double useful,
      double hottest,
      Map<IronPowder.LimitedBy, Double> limits,
      Optional<Double> spent,
      double tipping) {
    /** What limits it longest. */
    Optional<IronPowder.LimitedBy> mostly() {
      return limits.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
    }
  }

  private TransitResult result() {
    return row.assessment().nominal();
  }

  /** Oxygen in an animal's air at each stored time, as at sea level [-]. */
  double[] oxygen(Container cup) {
    return result().oxygenAtSeaLevel(cup.name());
  }

  Moment leastOxygen() {
    return least(this::oxygen);
  }

  Moment mostCarbonDioxide() {
    return most(cup -> result().carbonDioxideAtSeaLevel(cup.name()));
  }

  /** How much fresh air counts as when it is as thin as at a moment [-]: at sea level 1. */
  double thinness(Moment moment) {
    int at = Arrays.binarySearch(result().times(), moment.time);
    return oxygen(moment.cup)[at] / result().oxygen(moment.cup.name())[at];
  }

  /** The coldest place that an animal can reach. */
  Moment coldestPlace() {
    return least(cup -> result().coldestPlace(cup.name()));
  }

  /** The hottest place that an animal can reach. */
  Moment hottestPlace() {
    return most(cup -> result().hottestPlace(cup.name()));
  }

  /** The amphibian that gives off most water until opening, part of its mass [-]; 0 without one. */
  Moment mostDried() {
    return most(
        cup -> {
          double[] water = result().waterGivenOff(cup.name());
          double mass = cup.occupant().orElseThrow().body().mass();
          boolean dries =
              Animals.group(Judged.animal(cup)).filter(AnimalGroup.AMPHIBIAN::equals).isPresent();
          return Arrays.stream(water).map(each -> dries ? each / mass : 0).toArray();
        });
  }

  private Moment most(Function<Container, double[]> values) {
    Moment most =
        least(
            cup -> {
              double[] negative = values.apply(cup);
              for (int at = 0; at < negative.length; at++) {
                negative[at] = -negative[at];
              }
              return negative;
            });
    return new Moment(most.cup, most.time, -most.value);
  }

  private Moment least(Function<Container, double[]> values) {
    double[] times = result().times();
    List<Moment> all = new ArrayList<>();
    for (Container cup : row.parcel().occupied()) {
      double[] of = values.apply(cup);
      int least = 0;
      for (int at = 1; at < untilOpening(times); at++) {
        least = of[at] < of[least] ? at : least;
      }
      all.add(new Moment(cup, times[least], of[least]));
    }
    return all.stream().min(Comparator.comparingDouble(Moment::value)).orElseThrow();
  }

  private int untilOpening(double[] times) {
    int count = 0;
    while (count < times.length && times[count] <= row.assessment().plannedEnd()) {
      count++;
    }
    return count;
  }

  List<WarmerCourse> warmers() {
    return row.parcel().warmers().stream().map(this::course).toList();
  }

  private WarmerCourse course(PlacedWarmer warmer) {
    TransitResult result = result();
    double[] times = result.times();
    int count = untilOpening(times);
    double[] power = result.power(warmer.name());
    double[] surface = result.hottest(warmer.name());
    double[] gain = result.gain(warmer.name());
    List<IronPowder.LimitedBy> limitedBy = result.limitedBy(warmer.name());
    double peak = 0;
    double hottest = surface[0];
    for (int at = 0; at < count; at++) {
      peak = Math.max(peak, power[at]);
      hottest = Math.max(hottest, surface[at]);
    }
    double useful = 0;
    double tipping = 0;
    Map<IronPowder.LimitedBy, Double> limits = new EnumMap<>(IronPowder.LimitedBy.class);
    Optional<Double> spent = Optional.empty();
    for (int at = 1; at < count; at++) {
      double lasted = times[at] - times[at - 1];
      useful += power[at] >= peak / 2 ? lasted : 0;
      if (limitedBy.isEmpty()) {
        continue;
      }
      IronPowder.LimitedBy limit = limitedBy.get(at);
      limits.merge(limit, lasted, Double::sum);
      if (limit == IronPowder.LimitedBy.KINETICS) {
        tipping = Math.max(tipping, gain[at]);
      }
      boolean out = limit == IronPowder.LimitedBy.SPENT || power[at] < NOTHING * peak;
      if (spent.isEmpty() && out && result.conversion(warmer.name())[at] > 0.5) {
        spent = Optional.of(times[at]);
      }
    }
    return new WarmerCourse(warmer, peak, useful, hottest, limits, spent, tipping);
  }
}
