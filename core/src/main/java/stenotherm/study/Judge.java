package stenotherm.study;

import java.util.List;
import stenotherm.animal.Limit;
import stenotherm.animal.Tolerance;
import stenotherm.base.Range;

/**
 * Judges the temperatures of animals: their running mean by the alarm band, for time matters, and
 * each moment by the critical limits. The running mean at a time is that over {@link
 * Tolerance#averaging} before it, or since sealing where less has passed; between stored times
 * temperatures are linear, and for the time outside their running means too. Immutable.
 */
final class Judge {
  private final List<Tolerance> tolerances;
  private final double[] times;
  private final double opening;

  /** How much hotter the hottest place in reach is than each animal at each time [K]. */
  private final double[][] hotter;

  /**
   * Starts.
   *
   * @param tolerances tolerance of each animal
   * @param times the stored times, ascending from 0 [s]
   * @param opening the planned opening [s]
   * @param hotter how much hotter the hottest place that each animal can reach is than the animal
   *     [K]: a row for each animal, a column for each time
   */
  Judge(List<Tolerance> tolerances, double[] times, double opening, double[][] hotter) {
    this.tolerances = tolerances;
    this.times = times;
    this.opening = opening;
    this.hotter = hotter;
  }

  /**
   * Judges a run.
   *
   * @param temperatures a row for each animal, a value for each time [K]
   * @param airless when the air of an animal first was beyond an alarm level [s]
   */
  Fate fate(double[][] temperatures, double airless) {
    double coldMargin = Double.POSITIVE_INFINITY;
    double hotMargin = Double.POSITIVE_INFINITY;
    double coldBreach = Double.POSITIVE_INFINITY;
    double hotBreach = Double.POSITIVE_INFINITY;
    double burnt = Double.POSITIVE_INFINITY;
    double longest = 0;
    for (int animal = 0; animal < temperatures.length; animal++) {
      Tolerance tolerance = tolerances.get(animal);
      Range alarm = tolerance.band(Limit.ALARM).range();
      Range critical = tolerance.band(Limit.CRITICAL).range();
      double[] now = temperatures[animal];
      double[] means = runningMeans(times, now, tolerance.averaging());
      double outside = 0;
      for (int row = 0; row < times.length; row++) {
        double cold = means[row] - alarm.low();
        double hot = alarm.high() - means[row];
        if (times[row] <= opening) {
          coldMargin = Math.min(coldMargin, cold);
          hotMargin = Math.min(hotMargin, hot);
          if (row > 0) {
            double part =
                shareBelow(means[row - 1] - alarm.low(), cold)
                    + shareBelow(alarm.high() - means[row - 1], hot);
            outside += part * (times[row] - times[row - 1]);
          }
        }
        if (cold < 0 || now[row] < critical.low()) {
          coldBreach = Math.min(coldBreach, times[row]);
        }
        if (hot < 0 || now[row] > critical.high()) {
          hotBreach = Math.min(hotBreach, times[row]);
        }
        if (now[row] + hotter[animal][row] > Tolerance.HOTTEST_TOUCH) {
          burnt = Math.min(burnt, times[row]);
        }
      }
      longest = Math.max(longest, outside);
    }
    return new Fate(
        new Fate.Approach(coldMargin, coldBreach),
        new Fate.Approach(hotMargin, hotBreach),
        longest,
        airless,
        burnt);
  }

  /** Share of a straight line between two values that lies below 0. */
  private static double shareBelow(double start, double end) {
    if (start >= 0 && end >= 0) {
      return 0;
    }
    double below = Math.max(-start, 0) + Math.max(-end, 0);
    return below / (Math.abs(start) + Math.abs(end));
  }

  /** Mean over a span before each time, of values that are linear between the times. */
  static double[] runningMeans(double[] times, double[] values, double span) {
    double[] means = new double[times.length];
    double[] integrals = new double[times.length];
    means[0] = values[0];
    int left = 0;
    for (int row = 1; row < times.length; row++) {
      integrals[row] =
          integrals[row - 1] + (times[row] - times[row - 1]) * (values[row - 1] + values[row]) / 2;
      double from = times[row] - span;
      if (from <= times[0]) {
        means[row] = integrals[row] / (times[row] - times[0]);
        continue;
      }
      while (times[left + 1] <= from) {
        left++;
      }
      double passed = from - times[left];
      double slope = (values[left + 1] - values[left]) / (times[left + 1] - times[left]);
      double before = integrals[left] + passed * (values[left] + slope * passed / 2);
      means[row] = (integrals[row] - before) / span;
    }
    return means;
  }
}
