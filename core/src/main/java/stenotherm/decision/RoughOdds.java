package stenotherm.decision;

import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.distribution.NormalDistribution;
import stenotherm.base.Range;
import stenotherm.study.StudyResult;

/**
 * What margins computed roughly say of the odds of a packing: how many standard deviations lie
 * between them and failing. Margins count as normal, cold and heat as apart; air and burns are left
 * out. What this misses of the packing as it is, whose odds are known, is added to all. Good enough
 * to rank changes, bad packings among each other as well.
 */
final class RoughOdds {
  /** Outside of these, shares of some hundreds of journeys say little of deviations. */
  private static final Range SHARES = new Range(0.02, 0.98);

  /** One journey in twenty lies as many standard deviations from a typical one. */
  private static final double ONE_IN_TWENTY = 1.645;

  /** Margins that hardly differ from journey to journey would make any change a large one [K]. */
  private static final double LEAST_DEVIATION = 0.3;

  private static final NormalDistribution STANDARD = new NormalDistribution(null, 0, 1);

  /** For packings of which no odds are known: nothing is added. */
  static final RoughOdds OF_NONE = new RoughOdds(new Margins(0, 0));

  private final Margins missed;

  /**
   * Margins, or what belongs to each of them.
   *
   * @param cold towards the cold
   * @param hot towards the heat
   */
  record Margins(double cold, double hot) {
    double tighter() {
      return Math.min(cold, hot);
    }

    private Margins plus(Margins other, double times) {
      return new Margins(cold + times * other.cold, hot + times * other.hot);
    }
  }

  /**
   * A look at a packing.
   *
   * @param typical what is left on a typical journey [K]
   * @param seldom what is left towards the cold on a journey as cold as one in twenty, and towards
   *     the heat on one as hot as one in twenty [K]
   */
  record Look(Margins typical, Margins seldom) {
    /** What two changes come to, if what each does to margins adds up. */
    Look plus(Look other) {
      return plus(other, 1);
    }

    Look minus(Look other) {
      return plus(other, -1);
    }

    private Look plus(Look other, double times) {
      return new Look(typical.plus(other.typical, times), seldom.plus(other.seldom, times));
    }

    private Margins scores() {
      return new Margins(score(Margins::cold), score(Margins::hot));
    }

    private double score(ToDoubleFunction<Margins> side) {
      double middle = side.applyAsDouble(typical);
      double deviation = (middle - side.applyAsDouble(seldom)) / ONE_IN_TWENTY;
      return middle / Math.max(LEAST_DEVIATION, deviation);
    }
  }

  /**
   * Starts from a packing as it is.
   *
   * @param look a look at it
   * @param within shares of its journeys that are not too cold, and not too hot
   */
  RoughOdds(Look look, Margins within) {
    Margins scores = look.scores();
    this.missed =
        new Margins(missed(within.cold(), scores.cold()), missed(within.hot(), scores.hot()));
  }

  private RoughOdds(Margins missed) {
    this.missed = missed;
  }

  /** The same, with what was found of a packing as it is. */
  static RoughOdds of(Look look, StudyResult odds) {
    return new RoughOdds(look, new Margins(odds.notTooCold().within(), odds.notTooHot().within()));
  }

  private static double missed(double share, double score) {
    return SHARES.contains(share) ? STANDARD.inverseCumulativeProbability(share) - score : 0;
  }

  /**
   * How far a packing is from failing on the side that is nearer to it, in standard deviations [-]:
   * negative where more than half of the journeys fail.
   */
  double score(Look look) {
    Margins scores = look.scores();
    return Math.min(scores.cold() + missed.cold(), scores.hot() + missed.hot());
  }
}
