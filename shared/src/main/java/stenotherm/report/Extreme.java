package stenotherm.report;

import java.util.Comparator;
import java.util.Optional;
import stenotherm.animal.Limit;
import stenotherm.base.Range;
import stenotherm.decision.Assessment;
import stenotherm.decision.Side;
import stenotherm.parcel.Container;
import stenotherm.study.StudyResult;

/**
 * When an animal is coldest or hottest on a typical journey: the end of the curve of medians until
 * the planned opening. Sentences, tables and pictures all take it from here.
 *
 * @param side whether the coldest or the hottest moment is meant
 * @param cup where the animal is
 * @param time the moment, since sealing [s]
 * @param typical its temperature then, in half of all journeys less [K]
 * @param seldom its temperature then that one journey in twenty passes on that side [K]
 */
record Extreme(Side side, Container cup, double time, double typical, double seldom) {
  /** A difference that readers see [K]. */
  private static final double CLEARLY = 1;

  /** That of the animal which comes closest to the end of its alarm band, or farthest beyond. */
  static Extreme of(Assessment assessment, Side side) {
    return assessment.nominal().parcel().occupied().stream()
        .map(cup -> of(assessment, cup, side))
        .min(Comparator.comparingDouble(Extreme::left))
        .orElseThrow();
  }

  /**
   * The moment at which that animal is likeliest to leave its temperatures, where one journey in
   * twenty is clearly worse then than when a typical one is worst: something chilled makes the
   * first hour the coldest of most journeys, and a flight that of the few that fail.
   */
  static Optional<Extreme> ofTheFew(Assessment assessment, Side side) {
    Extreme usual = of(assessment, side);
    if (usual.left() < 0) {
      // then most journeys fail when a typical one is worst
      return Optional.empty();
    }
    StudyResult odds = assessment.odds();
    double[] few = odds.temperatures(usual.cup.name(), share(side));
    int at = farthest(few, assessment, side);
    if (Math.abs(few[at] - usual.seldom) < CLEARLY) {
      return Optional.empty();
    }
    double typical = odds.temperatures(usual.cup.name(), 0.5)[at];
    return Optional.of(new Extreme(side, usual.cup, odds.times()[at], typical, few[at]));
  }

  private static double share(Side side) {
    return side == Side.COLD ? Words.ONE_IN_TWENTY : 1 - Words.ONE_IN_TWENTY;
  }

  /** That of the animal in one cup. */
  static Extreme of(Assessment assessment, Container cup, Side side) {
    StudyResult odds = assessment.odds();
    double[] middle = odds.temperatures(cup.name(), 0.5);
    int at = farthest(middle, assessment, side);
    double seldom = odds.temperatures(cup.name(), share(side))[at];
    return new Extreme(side, cup, odds.times()[at], middle[at], seldom);
  }

  /** Where a curve is coldest or hottest until the planned opening: its row. */
  private static int farthest(double[] curve, Assessment assessment, Side side) {
    double[] times = assessment.odds().times();
    int at = 0;
    for (int row = 1; row < times.length && times[row] <= assessment.plannedEnd(); row++) {
      boolean farther = side == Side.COLD ? curve[row] < curve[at] : curve[row] > curve[at];
      at = farther ? row : at;
    }
    return at;
  }

  /** What is left to the end of the alarm band [K]; negative beyond it. */
  private double left() {
    Range band = Judged.animal(cup).tolerance().band(Limit.ALARM).range();
    return side == Side.COLD ? typical - band.low() : band.high() - typical;
  }

  /** "coldest" or "hottest". */
  String words() {
    return side == Side.COLD ? "coldest" : "hottest";
  }
}
