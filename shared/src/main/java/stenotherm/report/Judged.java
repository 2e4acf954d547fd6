package stenotherm.report;

import java.util.Comparator;
import java.util.List;
import stenotherm.animal.Animal;
import stenotherm.decision.Assessment;
import stenotherm.decision.DelayMargin;
import stenotherm.decision.Side;
import stenotherm.journey.Journey;
import stenotherm.parcel.Container;
import stenotherm.parcel.Parcel;
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
 * @param legDelays how much longer each leg may last; empty if the alarm band is left anyway
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
    String name = assessment.verdict().tightest().cup();
    return parcel.occupied().stream()
        .filter(cup -> cup.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no cup '" + name + "'"));
  }

  /** Who is in a cup. */
  static Animal animal(Container cup) {
    return cup.occupant().orElseThrow().animal();
  }

  Side side() {
    return assessment.verdict().tightest().side();
  }

  /** The nominal field when the tighter side had least left before the opening. */
  Snapshot tightest() {
    return side() == Side.COLD ? planned.coldestMoment() : planned.hottestMoment();
  }

  /** Margin on the tighter side in the worst case [K]. */
  double worst() {
    return assessment.verdict().tightest().kelvin();
  }

  /** The row with the largest margin in the worst case; the first of equals. */
  static Judged best(List<Judged> rows) {
    return rows.stream()
        .max(Comparator.comparingDouble(Judged::worst).thenComparingInt(row -> -rows.indexOf(row)))
        .orElseThrow();
  }
}
