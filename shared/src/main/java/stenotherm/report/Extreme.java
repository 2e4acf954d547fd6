package stenotherm.report;

import java.util.Comparator;
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
  /** That of the animal which comes closest to the end of its alarm band, or farthest beyond. */
  static Extreme of(Assessment assessment, Side side) {
    return assessment.nominal().parcel().occupied().stream()
        .map(cup -> of(assessment, cup, side))
        .min(Comparator.comparingDouble(Extreme::left))
        .orElseThrow();
  }

  /** That of the animal in one cup. */
  static Extreme of(Assessment assessment, Container cup, Side side) {
    boolean cold = side == Side.COLD;
    StudyResult odds = assessment.odds();
    double[] times = odds.times();
    double[] middle = odds.temperatures(cup.name(), 0.5);
    int at = 0;
    for (int row = 1; row < times.length && times[row] <= assessment.plannedEnd(); row++) {
      boolean farther = cold ? middle[row] < middle[at] : middle[row] > middle[at];
      at = farther ? row : at;
    }
    double share = cold ? Words.ONE_IN_TWENTY : 1 - Words.ONE_IN_TWENTY;
    double seldom = odds.temperatures(cup.name(), share)[at];
    return new Extreme(side, cup, times[at], middle[at], seldom);
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
