package stenotherm.study;

import java.util.Arrays;
import stenotherm.transit.JourneyMeans;

/**
 * Counts of many runs. Integers alone, so that the order of runs and the number of threads leave no
 * trace; its size does not depend on the number of runs. One thread adds to it at a time.
 */
final class Tally {
  /** Width of the bins of margins [K]. */
  private static final double MARGIN_BIN = 0.01;

  /** Farthest margin that is told apart [K]. */
  private static final double FARTHEST = 100;

  /** Width of the bins of temperatures [K]. */
  private static final double TEMPERATURE_BIN = 0.1;

  private static final double COLDEST = 200;
  private static final double HOTTEST = 400;

  final Quantiles coldMargin = new Quantiles(-FARTHEST, FARTHEST, MARGIN_BIN);
  final Quantiles hotMargin = new Quantiles(-FARTHEST, FARTHEST, MARGIN_BIN);

  /** Hours outside the alarm band until opening. */
  final Quantiles outside;

  /** Lowest oxygen that an animal breathed [-], over the whole run. */
  final Quantiles leastOxygen = new Quantiles(0, 0.25, 0.0005);

  /** Temperature of each animal at each time: animal, time. */
  final Quantiles[][] temperatures;

  /** Runs in which no animal was too cold until opening, by replicate. */
  final int[] cold;

  final int[] hot;

  /** Runs in which the air of all animals sufficed until opening, by replicate. */
  final int[] enoughAir;

  /** Runs in which no animal could burn itself until opening, by replicate. */
  final int[] unburnt;

  /**
   * Runs in which all stayed within until so many hours after the planned opening: hour, replicate.
   */
  final int[][] within;

  /** Starts without runs. */
  Tally(int replicates, int hours, int animals, int times, double journeyHours) {
    outside = new Quantiles(0, journeyHours + 1, 0.01);
    temperatures = new Quantiles[animals][times];
    for (Quantiles[] animal : temperatures) {
      Arrays.setAll(animal, time -> new Quantiles(COLDEST, HOTTEST, TEMPERATURE_BIN));
    }
    cold = new int[replicates];
    hot = new int[replicates];
    enoughAir = new int[replicates];
    unburnt = new int[replicates];
    within = new int[hours + 1][replicates];
  }

  void add(int replicate, Fate fate, JourneyMeans means, double opening) {
    double[][] temperature = means.temperatures();
    leastOxygen.add(means.breathing().leastOxygen());
    coldMargin.add(fate.cold().margin());
    hotMargin.add(fate.hot().margin());
    outside.add(fate.outside() / 3600);
    for (int animal = 0; animal < temperature.length; animal++) {
      for (int time = 0; time < temperature[animal].length; time++) {
        temperatures[animal][time].add(temperature[animal][time]);
      }
    }
    cold[replicate] += fate.cold().breach() > opening ? 1 : 0;
    hot[replicate] += fate.hot().breach() > opening ? 1 : 0;
    enoughAir[replicate] += fate.airless() > opening ? 1 : 0;
    unburnt[replicate] += fate.burnt() > opening ? 1 : 0;
    for (int hour = 0; hour < within.length; hour++) {
      within[hour][replicate] += fate.breach() > opening + 3600.0 * hour ? 1 : 0;
    }
  }

  void addAll(Tally other) {
    coldMargin.addAll(other.coldMargin);
    hotMargin.addAll(other.hotMargin);
    outside.addAll(other.outside);
    leastOxygen.addAll(other.leastOxygen);
    for (int animal = 0; animal < temperatures.length; animal++) {
      for (int time = 0; time < temperatures[animal].length; time++) {
        temperatures[animal][time].addAll(other.temperatures[animal][time]);
      }
    }
    addAll(cold, other.cold);
    addAll(hot, other.hot);
    addAll(enoughAir, other.enoughAir);
    addAll(unburnt, other.unburnt);
    for (int hour = 0; hour < within.length; hour++) {
      addAll(within[hour], other.within[hour]);
    }
  }

  private static void addAll(int[] sum, int[] more) {
    for (int index = 0; index < sum.length; index++) {
      sum[index] += more[index];
    }
  }
}
