package stenotherm.report;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import stenotherm.animal.Animal;
import stenotherm.decision.Assessment;
import stenotherm.decision.DelayMargin;
import stenotherm.decision.Level;
import stenotherm.decision.Side;
import stenotherm.decision.Verdict;
import stenotherm.journey.Journey;
import stenotherm.parcel.Container;
import stenotherm.parcel.Parcel;
import stenotherm.study.StudyResult;
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

  /** The packing's name and, if it was run both ways, whether a warmer is in it. */
  String label() {
    return new Packed(parcel, stripped).label();
  }

  /** The journey with the hold that was followed. */
  Journey held() {
    return assessment.nominal().journey();
  }

  /** The moment that matters, on the side on which it fails more often. */
  Extreme extreme() {
    return Extreme.of(assessment, side());
  }

  /**
   * The coldest or the hottest that an animal may be at each stored time: of all journeys that were
   * run and of the one with everything against it at once [K].
   */
  double[] worst(Container cup, Side side) {
    boolean cold = side == Side.COLD;
    double[] worst = assessment.stress(side).temperatures(cup.name());
    double[] end = odds().temperatures(cup.name(), cold ? 0 : 1);
    for (int row = 0; row < worst.length; row++) {
      if (Double.isFinite(end[row])) {
        worst[row] = cold ? Math.min(worst[row], end[row]) : Math.max(worst[row], end[row]);
      }
    }
    return worst;
  }

  /** Whole hours late with which it still likely holds; nothing if not even on time. */
  OptionalInt delay() {
    return IntStream.rangeClosed(0, odds().longestDelay())
        .takeWhile(hours -> odds().withinUntil(hours).low() >= Level.LIKELY.least())
        .max();
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

  /**
   * The row to take: with the best odds, to a hundredth; of equals that nobody should send the one
   * that comes closest, of others the one without a warmer, then the smallest.
   */
  static Judged best(List<Judged> rows) {
    return rows.stream()
        .max(
            Comparator.comparingLong((Judged row) -> Math.round(100 * row.verdict().within().low()))
                .thenComparingDouble(Judged::leastBad)
                .thenComparing(row -> !row.hasWarmer())
                .thenComparingDouble(row -> -row.parcel().outerVolume())
                .thenComparingInt(row -> -rows.indexOf(row)))
        .orElseThrow();
  }

  /** What the middle one of journeys leaves on the tighter side [K], if this should not be sent. */
  private double leastBad() {
    return verdict().level() == Level.DO_NOT
        ? Math.min(odds().coldMargin(0.5), odds().hotMargin(0.5))
        : 0;
  }
}
