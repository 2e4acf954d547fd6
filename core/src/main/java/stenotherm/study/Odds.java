package stenotherm.study;

import java.util.Arrays;
import org.apache.commons.math3.distribution.TDistribution;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;

/**
 * The share of journeys in which something holds, and the interval that sampling leaves open. The
 * interval says how far more journeys might move the share, not how true the model is or its ranges
 * are.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param within share of journeys [-], 0 to 1
 * @param low lower end of its 95 % interval [-], 0 to {@code within}
 * @param high upper end of its 95 % interval [-], {@code within} to 1
 */
public record Odds(double within, double low, double high) {
  static final int LEAST_REPLICATES = 16;

  private static final Range SHARES = new Range(0, 1);

  /** An interval of 95 % leaves as much out on either side. */
  private static final double UPPER = 0.975;

  /**
   * Checks the numbers.
   *
   * @throws InvalidInputException if one is not within 0 and 1, or the share is not within its
   *     interval
   */
  public Odds {
    Checks.within("share of journeys", within, SHARES, "", "It is a share of one.");
    Checks.within("lower end of the odds", low, SHARES, "", "It is a share of one.");
    Checks.within("upper end of the odds", high, SHARES, "", "It is a share of one.");
    if (!(low <= within && within <= high)) {
      throw new InvalidInputException(
          "odds", within + " must lie within its interval, " + low + " to " + high);
    }
  }

  /**
   * Counts journeys. The interval is the wider one, on each side, of two: Student's t over the
   * shares of the replicates, which knows how even the points of a replicate are and how much
   * replicates differ; and Wilson's of all journeys as if they were independent, so that replicates
   * that agree by chance never claim certainty. An end beyond 0 or 1 is moved there.
   *
   * <p>Source: E. B. Wilson (1927), Probable inference, the law of succession, and statistical
   * inference, J. Am. Stat. Assoc. 22, 209-212 (from memory).
   *
   * @param hits number of journeys in which it holds, for each of at least 16 independent
   *     replicates
   * @param perReplicate number of journeys of each replicate, 1 or more
   * @return the odds
   * @throws InvalidInputException if there are too few replicates, or a count is out of range
   */
  public static Odds of(int[] hits, int perReplicate) {
    if (hits.length < LEAST_REPLICATES) {
      throw new InvalidInputException(
          "replicates", hits.length + " must be at least " + LEAST_REPLICATES);
    }
    if (perReplicate < 1) {
      throw new InvalidInputException(
          "journeys of a replicate", perReplicate + " must be at least 1");
    }
    for (int each : hits) {
      if (each < 0 || each > perReplicate) {
        throw new InvalidInputException(
            "hits of a replicate", each + " must be within 0 to " + perReplicate);
      }
    }
    long sum = Arrays.stream(hits).asLongStream().sum();
    long all = (long) hits.length * perReplicate;
    double within = (double) sum / all;
    Range replicates = student(hits, perReplicate);
    Range pooled = wilson(sum, all);
    return new Odds(
        within,
        Math.max(0, Math.min(within, Math.min(replicates.low(), pooled.low()))),
        Math.min(1, Math.max(within, Math.max(replicates.high(), pooled.high()))));
  }

  /** Student's interval of the mean of the replicates' shares. */
  static Range student(int[] hits, int perReplicate) {
    int replicates = hits.length;
    double mean = Arrays.stream(hits).asLongStream().sum() / (double) replicates;
    double squares = 0;
    for (int each : hits) {
      squares += (each - mean) * (each - mean);
    }
    double error = Math.sqrt(squares / (replicates - 1) / replicates);
    double half = studentQuantile(replicates - 1) * error;
    return new Range((mean - half) / perReplicate, (mean + half) / perReplicate);
  }

  /** The 97.5 % quantile of Student's distribution. */
  static double studentQuantile(int degreesOfFreedom) {
    // without a generator of random numbers, which it would seed by the clock
    return new TDistribution(null, degreesOfFreedom).inverseCumulativeProbability(UPPER);
  }

  /** Wilson's interval of a share of independent journeys. */
  static Range wilson(long hits, long all) {
    double z = NormalScores.of(UPPER);
    double share = (double) hits / all;
    double middle = share + z * z / (2 * all);
    double half = z * Math.sqrt(share * (1 - share) / all + z * z / (4.0 * all * all));
    double scale = 1 + z * z / all;
    return new Range((middle - half) / scale, (middle + half) / scale);
  }
}
