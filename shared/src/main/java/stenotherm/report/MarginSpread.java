package stenotherm.report;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import stenotherm.animal.Exposure;
import stenotherm.animal.Limit;
import stenotherm.decision.Assessment;
import stenotherm.decision.Margin;
import stenotherm.decision.Side;
import stenotherm.transit.TransitResult;

/**
 * The margin of one animal on one side until the planned opening: nominal, worst case and best
 * case.
 *
 * @param nominal with everything nominal
 * @param worst the smallest of the three runs
 * @param best the largest of the three runs
 */
record MarginSpread(Margin nominal, Margin worst, Margin best) {
  private static final Comparator<Margin> BY_SIZE = Comparator.comparingDouble(Margin::kelvin);

  /** Of the animal that is tightest. */
  static MarginSpread of(Assessment assessment, Side side) {
    return new MarginSpread(
        assessment.nominalMargin(side), assessment.worstMargin(side), assessment.bestMargin(side));
  }

  /** Of the animal in a cup. */
  static MarginSpread of(Assessment assessment, String cup, Side side) {
    List<Margin> all =
        List.of(
            margin(assessment.nominal(), assessment, cup, side),
            margin(assessment.coldEnd(), assessment, cup, side),
            margin(assessment.hotEnd(), assessment, cup, side));
    return new MarginSpread(
        all.get(0), Collections.min(all, BY_SIZE), Collections.max(all, BY_SIZE));
  }

  private static Margin margin(TransitResult run, Assessment assessment, String cup, Side side) {
    Exposure exposure = run.exposure(cup, assessment.plannedEnd());
    Exposure.Moment moment = side == Side.COLD ? exposure.coldest() : exposure.hottest();
    double kelvin =
        side == Side.COLD ? exposure.coldMargin(Limit.ALARM) : exposure.hotMargin(Limit.ALARM);
    return new Margin(side, cup, kelvin, moment.temperature(), moment.time());
  }
}
