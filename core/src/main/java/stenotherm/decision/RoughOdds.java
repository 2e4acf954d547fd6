package stenotherm.decision;

import org.apache.commons.math3.distribution.NormalDistribution;
import stenotherm.base.Range;
import stenotherm.study.StudyResult;

/**
 * What margins computed roughly say of the odds of a packing that was changed: those of the packing
 * as it is, moved by what the margins have moved. Margins count as normal, cold and heat as apart;
 * air and burns stay as they are. Good enough to rank changes.
 */
final class RoughOdds {
  /** None and all of some hundreds of journeys stand for this share of them. */
  private static final Range SHARES = new Range(0.002, 0.998);

  /** What nine of ten journeys span, in standard deviations. */
  private static final double NINE_OF_TEN = 3.29;

  /** Margins that hardly differ from journey to journey would make any change a large one [K]. */
  private static final double LEAST_DEVIATION = 0.3;

  private static final NormalDistribution STANDARD = new NormalDistribution(null, 0, 1);

  private final Margins asItIs;
  private final Margins scores;
  private final Margins deviations;

  /**
   * Margins, or what belongs to each of them.
   *
   * @param cold towards the cold on a cold journey
   * @param hot towards the heat on a hot one
   */
  record Margins(double cold, double hot) {
    double tighter() {
      return Math.min(cold, hot);
    }
  }

  /**
   * Starts from a packing as it is.
   *
   * @param margins its margins, computed as those of its changes [K]
   * @param within shares of journeys that are not too cold, and not too hot
   * @param nineOfTen how far apart the margins of nine of ten journeys are [K]
   */
  RoughOdds(Margins margins, Margins within, Margins nineOfTen) {
    this.asItIs = margins;
    this.scores = new Margins(score(within.cold()), score(within.hot()));
    this.deviations = new Margins(deviation(nineOfTen.cold()), deviation(nineOfTen.hot()));
  }

  /** The same, with what was found of a packing as it is. */
  static RoughOdds of(Margins margins, StudyResult odds) {
    return new RoughOdds(
        margins,
        new Margins(odds.notTooCold().within(), odds.notTooHot().within()),
        new Margins(
            odds.coldMargin(0.95) - odds.coldMargin(0.05),
            odds.hotMargin(0.95) - odds.hotMargin(0.05)));
  }

  private static double score(double share) {
    return STANDARD.inverseCumulativeProbability(
        Math.max(SHARES.low(), Math.min(SHARES.high(), share)));
  }

  private static double deviation(double nineOfTen) {
    return Math.max(LEAST_DEVIATION, nineOfTen / NINE_OF_TEN);
  }

  /** Share of journeys of a changed packing that become too cold or too hot, 0 to 2. */
  double failing(Margins changed) {
    double cold = scores.cold() + (changed.cold() - asItIs.cold()) / deviations.cold();
    double hot = scores.hot() + (changed.hot() - asItIs.hot()) / deviations.hot();
    return STANDARD.cumulativeProbability(-cold) + STANDARD.cumulativeProbability(-hot);
  }
}
