package stenotherm.study;

import java.util.OptionalDouble;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;

/**
 * Quantiles of many values from counts in bins of one width. Its size does not depend on the number
 * of values; integers alone are added, so that the order of values and merges leaves no trace. A
 * quantile is off by one width at most, but exact where values are the lower end itself: of times,
 * many are 0. Not thread-safe.
 */
final class Quantiles {
  private static final Range SHARES = new Range(0, 1);

  private final double low;
  private final double width;
  private final int[] counts;

  /** Values below the first bin, and beyond the last one. */
  private int below;

  private int above;

  /** Values that are the lower end itself, which no bin holds: spread in it they would be more. */
  private int lowest;

  /**
   * Starts without values.
   *
   * @param low lower end of the first bin
   * @param high what the bins reach at least; the last one may end beyond it
   * @param width width of a bin
   */
  Quantiles(double low, double high, double width) {
    this.low = Checks.finite("lower end", low, "");
    this.width = Checks.positive("width of a bin", width, "");
    double bins = Math.ceil(Checks.positive("range", high - low, "") / width);
    this.counts = new int[Math.toIntExact((long) bins)];
  }

  /**
   * Counts a value.
   *
   * @throws InvalidInputException if it is not a number
   */
  void add(double value) {
    if (Double.isNaN(value)) {
      throw new InvalidInputException("value", "is not a number");
    }
    double bin = Math.floor((value - low) / width);
    if (value == low) {
      lowest = Math.incrementExact(lowest);
    } else if (bin < 0) {
      below = Math.incrementExact(below);
    } else if (bin >= counts.length) {
      above = Math.incrementExact(above);
    } else {
      counts[(int) bin] = Math.incrementExact(counts[(int) bin]);
    }
  }

  /**
   * Adds all counts of another one.
   *
   * @throws InvalidInputException if its bins are others
   */
  void addAll(Quantiles other) {
    if (other.low != low || other.width != width || other.counts.length != counts.length) {
      throw new InvalidInputException("quantiles", "must have the same bins");
    }
    below = Math.addExact(below, other.below);
    above = Math.addExact(above, other.above);
    lowest = Math.addExact(lowest, other.lowest);
    for (int bin = 0; bin < counts.length; bin++) {
      counts[bin] = Math.addExact(counts[bin], other.counts[bin]);
    }
  }

  /** Number of values. */
  long count() {
    long sum = outside() + lowest;
    for (int count : counts) {
      sum += count;
    }
    return sum;
  }

  /** The median of the values above the lower end; empty if there is none. */
  OptionalDouble medianAboveLow() {
    double notAbove = (double) below + lowest;
    return notAbove == count()
        ? OptionalDouble.empty()
        : OptionalDouble.of(quantile((1 + notAbove / count()) / 2));
  }

  /** The median of the values below an edge between bins; empty if there is none. */
  OptionalDouble medianBelow(double edge) {
    long bins = Math.min(counts.length, Math.max(0, Math.round((edge - low) / width)));
    long less = (long) below + (edge > low ? lowest : 0);
    for (int bin = 0; bin < bins; bin++) {
      less += counts[bin];
    }
    return less == 0 ? OptionalDouble.empty() : OptionalDouble.of(quantile(0.5 * less / count()));
  }

  /** Number of values below the lower end and beyond the last bin. */
  long outside() {
    return (long) below + above;
  }

  /**
   * A value below which a share of all values lies, as if those of a bin were spread evenly in it.
   *
   * @param share the share, 0 to 1
   * @return the quantile; infinite where only values that no bin holds would tell it
   * @throws InvalidInputException if the share is out of range
   * @throws IllegalStateException if there are no values
   */
  double quantile(double share) {
    Checks.within("share", share, SHARES, "", "0.5 is the median.");
    long all = count();
    if (all == 0) {
      throw new IllegalStateException("no values, thus no quantile");
    }
    double rank = share * all;
    long passed = below;
    if (passed > 0 && rank <= passed) {
      return Double.NEGATIVE_INFINITY;
    }
    passed += lowest;
    if (lowest > 0 && rank <= passed) {
      return low;
    }
    for (int bin = 0; bin < counts.length; bin++) {
      if (counts[bin] > 0 && rank <= passed + counts[bin]) {
        return low + width * (bin + (rank - passed) / counts[bin]);
      }
      passed += counts[bin];
    }
    return Double.POSITIVE_INFINITY;
  }
}
