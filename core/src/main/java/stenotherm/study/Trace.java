package stenotherm.study;

import java.util.List;
import stenotherm.air.BreathingLimits;
import stenotherm.transit.Breathing;
import stenotherm.transit.JourneyMeans;

/**
 * All of one run that it is judged by. The temperatures of an animal at one moment change smoothly
 * with the weather, where a margin, an extreme over time, has kinks: so it is traces that are
 * interpolated between journeys, and margins come after.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class Trace {
  /** Animal, time [K]. */
  private final double[][] temperatures;

  /** How much hotter the hottest place in reach is than the animal: animal, time [K]. */
  private final double[][] hotter;

  private final double leastOxygen;
  private final double mostCarbonDioxide;

  private Trace(
      double[][] temperatures, double[][] hotter, double leastOxygen, double mostCarbonDioxide) {
    this.temperatures = temperatures;
    this.hotter = hotter;
    this.leastOxygen = leastOxygen;
    this.mostCarbonDioxide = mostCarbonDioxide;
  }

  /** Keeps a run, whose temperatures nobody changes afterwards. */
  static Trace of(JourneyMeans means, double[][] hotter) {
    Breathing air = means.breathing();
    return new Trace(means.temperatures(), hotter, air.leastOxygen(), air.mostCarbonDioxide());
  }

  /**
   * Interpolates between runs of journeys with the same hours.
   *
   * @param traces the runs, of the same animals at the same times, at least one
   * @param weights weight of each [-], together 1
   * @return the weighted mean of each value
   */
  public static Trace mean(List<Trace> traces, double[] weights) {
    Trace first = traces.get(0);
    double[][] temperatures = new double[first.temperatures.length][first.temperatures[0].length];
    double[][] hotter = new double[temperatures.length][temperatures[0].length];
    double leastOxygen = 0;
    double mostCarbonDioxide = 0;
    for (int n = 0; n < weights.length; n++) {
      Trace each = traces.get(n);
      for (int animal = 0; animal < temperatures.length; animal++) {
        add(temperatures[animal], weights[n], each.temperatures[animal]);
        add(hotter[animal], weights[n], each.hotter[animal]);
      }
      leastOxygen += weights[n] * each.leastOxygen;
      mostCarbonDioxide += weights[n] * each.mostCarbonDioxide;
    }
    return new Trace(temperatures, hotter, leastOxygen, mostCarbonDioxide);
  }

  private static void add(double[] sum, double weight, double[] values) {
    for (int row = 0; row < sum.length; row++) {
      sum[row] += weight * values[row];
    }
  }

  double[][] temperatures() {
    return temperatures;
  }

  double[][] hotter() {
    return hotter;
  }

  /** Whether the air of all animals sufficed over the whole run. */
  boolean hasEnoughAir() {
    return leastOxygen >= BreathingLimits.ECTOTHERMS.oxygenAlarm()
        && mostCarbonDioxide <= BreathingLimits.ECTOTHERMS.carbonDioxideAlarm();
  }
}
