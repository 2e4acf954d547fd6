package stenotherm.study;

import org.apache.commons.math3.distribution.NormalDistribution;

/** The inverse of the standard normal distribution. Thread-safe. */
final class NormalScores {
  /** Without a generator of random numbers, which it would seed by the clock. */
  private static final NormalDistribution STANDARD = new NormalDistribution(null, 0, 1);

  private NormalScores() {}

  /**
   * The score below which a share of all cases lies.
   *
   * @param share the share, above 0 and below 1
   */
  static double of(double share) {
    return STANDARD.inverseCumulativeProbability(share);
  }
}
