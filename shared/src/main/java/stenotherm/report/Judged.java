package stenotherm.report;

import java.util.Comparator;
import java.util.List;
import stenotherm.animal.Animal;
import stenotherm.decision.Assessment;
import stenotherm.decision.DelayMargin;
import stenotherm.decision.Side;
import stenotherm.decision.Verdict;
import stenotherm.journey.Journey;
import stenotherm.parcel.Container;
import stenotherm.parcel.Parcel;
import stenotherm.study.StudyResult;
import stenotherm.transit.Snapshot;
import stenotherm.transit.TransitResult;

/**
 * One row of the comparison: a packing as it was run, with or without its warmers.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 *
 * @param parcel the packing as it was run
 * @param assessment the judgement
 * @param planned the nominal run until the planned opening
 * @param stripped whether the packing has warmers that were left out
 * @param legDelays how much longer each leg may last in the nominal case; empty if an animal does
 *     not stay within its band even then
 */
public record Judged(
    Parcel parcel,
    boolean stripped,
    Assessment assessment,
    TransitResult planned,
    List<DelayMargin> legDelays) {
  /** Copies the delays. */
  public Judged {
    legDelays = List.copyOf(legDelays);
  }

  boolean hasWarmer() {
    return !parcel.warmers().isEmpty();
  }

  String warmerWords() {
    int count = parcel.warmers().size();
    return count == 0 ? "without" : count == 1 ? "with" : "with " + count;
  }

  /** The packing's name and, if it was run both ways, whether a warmer is in it. */
  String label() {
    if (stripped) {
      return parcel.name() + ", no warmer";
    }
    return switch (parcel.warmers().size()) {
      case 0 -> parcel.name();
      case 1 -> parcel.name() + ", with warmer";
      default -> parcel.name() + ", with warmers";
    };
  }

  /** The journey with the hold that was followed. */
  Journey held() {
    return assessment.nominal().journey();
  }

  /** The cup that is tightest. */
  Container cup() {
    String name = assessment.nominalMargin(side()).cup();
    return parcel.occupied().stream()
        .filter(cup -> cup.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no cup '" + name + "'"));
  }

  /** Who is in a cup. */
  static Animal animal(Container cup) {
    return cup.occupant().orElseThrow().animal();
  }

  Verdict verdict() {
    return assessment.verdict();
  }

  StudyResult odds() {
    return assessment.odds();
  }

  /** The side on which it fails more often. */
  Side side() {
    return verdict().side();
  }

  boolean isCold() {
    return side() == Side.COLD;
  }

  /** A quantile of the margin on that side [K]. */
  double margin(double share) {
    return isCold() ? odds().coldMargin(share) : odds().hotMargin(share);
  }

  /** The nominal field when the tighter side had least left before the opening. */
  Snapshot tightest() {
    return isCold() ? planned.coldestMoment() : planned.hottestMoment();
  }

  /**
   * The row to take: with the best odds, to a hundredth; of equals the one without a warmer, then
   * the smallest.
   */
  static Judged best(List<Judged> rows) {
    return rows.stream()
        .max(
            Comparator.comparingLong((Judged row) -> Math.round(100 * row.verdict().within().low()))
                .thenComparing(row -> !row.hasWarmer())
                .thenComparingDouble(row -> -row.parcel().outerVolume())
                .thenComparingInt(row -> -rows.indexOf(row)))
        .orElseThrow();
  }
}
