package stenotherm.examples;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import stenotherm.decision.Assessment;
import stenotherm.decision.Side;
import stenotherm.journey.Journey;
import stenotherm.parcel.Container;
import stenotherm.parcel.Parcel;
import stenotherm.transit.Snapshot;
import stenotherm.transit.TransitResult;

/**
 * One row of the comparison: a packing as it was run, with or without its warmers.
 *
 * @param parcel the packing as it was run
 * @param assessment what came out
 * @param planned the nominal run until the planned opening
 */
record Judged(Parcel parcel, Assessment assessment, TransitResult planned) {
  boolean hasWarmer() {
    return !parcel.warmers().isEmpty();
  }

  String warmerWords() {
    int count = parcel.warmers().size();
    return count == 0 ? "without" : count == 1 ? "with" : "with " + count;
  }

  /** The packing's name and whether a warmer is in it. */
  String label() {
    return parcel.name() + (hasWarmer() ? ", with warmer" : ", no warmer");
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

  Side side() {
    return assessment.verdict().tightest().side();
  }

  /** The nominal field when the tighter side had least left before the opening. */
  Snapshot tightest() {
    return side() == Side.COLD ? planned.coldestMoment() : planned.hottestMoment();
  }

  /** The verdict as a sentence that can stand alone. */
  String sentence() {
    String sentence = assessment.verdict().sentence();
    return sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
  }

  /** Margin at the worse end of the range on the tighter side [K]. */
  double worst() {
    return assessment.verdict().tightest().kelvin();
  }

  /** The row that keeps most at the worse end; the first of equals. */
  static Judged best(List<Judged> rows) {
    return rows.stream()
        .max(Comparator.comparingDouble(Judged::worst).thenComparingInt(row -> -rows.indexOf(row)))
        .orElseThrow();
  }
}
