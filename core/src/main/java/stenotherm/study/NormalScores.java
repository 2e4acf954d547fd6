package stenotherm.study;

import org.apache.commons.math3.distribution.NormalDistribution;
import stenotherm.base.InvalidInputException;

/** The inverse of the standard normal distribution. Thread-safe. */
final class NormalScores {
  /** Without a generator of random numbers, which it would seed by the clock. */
  private static final NormalDistribution STANDARD = new NormalDistribution(null, 0, 1);

  private NormalScores() {}

  /**
   * The score below which a share of all cases lies.
   *
   * @param share the share, above 0 and below 1
   * @throws InvalidInputException if it is not
   */
  static double of(double share) {
    if (!(share > 0 && share < 1)) {
      throw new InvalidInputException("share of cases", share + " must be above 0 and below 1");
    }
    return STANDARD.inverseCumulativeProbability(share);
  }
}
