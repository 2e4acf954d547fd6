package stenotherm.report;

import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stenotherm.base.Orientation;
import stenotherm.base.Times;
import stenotherm.decision.Assessment;
import stenotherm.decision.Level;
import stenotherm.decision.Margin;
import stenotherm.decision.Sensitivity;
import stenotherm.decision.Side;
import stenotherm.decision.Verdict;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.words.Figures;

/**
 * The sentences about verdicts. None of them permits anything.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param figures writes numbers in the reader's units
 */
public record VerdictWords(Figures figures) {
  /** A change of a margin that is worth a sentence [K]. */
  private static final double WORTH_SAYING = 0.1;

  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("HH:mm 'on' d MMMM", Locale.ENGLISH);

  /**
   * Composes the verdict of a packing: which side is tightest, how much is left there in the worst
   * case, when and where, and how much is left nominally and at best.
   *
   * @param assessment the assessment of the packing
   * @return a sentence that can stand alone, times on the local clock
   */
  public String sentence(Assessment assessment) {
    Verdict verdict = assessment.verdict();
    Margin tightest = verdict.tightest();
    Journey journey = assessment.nominal().journey();
    // what is stored at a change of legs belongs to the one that ends
    int number = journey.legUntil(tightest.time());
    Leg leg = journey.legs().get(number);
    Orientation lying = leg.surroundings().orientation();
    boolean several = assessment.nominal().parcel().occupied().size() > 1;
    return "The "
        + tightest.side().words()
        + " is tightest"
        + (several ? ", in '" + tightest.cup() + "': " : ": ")
        + "in the worst case "
        + left(tightest)
        + " at "
        + CLOCK.format(journey.localClock(tightest.time(), number))
        + " ("
        + Figures.tenth(Times.toHours(tightest.time()))
        + " h after sealing), "
        + leg.name()
        + (lying == Orientation.LID_UP ? "" : ", " + lying.words())
        + "; nominal "
        + figures.difference(verdict.nominal())
        + ", at best "
        + figures.difference(verdict.best())
        + ".";
  }

  private String left(Margin margin) {
    return margin.kelvin() < 0
        ? figures.difference(-margin.kelvin()) + " outside the alarm band"
        : figures.difference(margin.kelvin()) + " left";
  }

  /** The answer before everything else. */
  String headline(List<Judged> rows) {
    Judged best = Judged.best(rows);
    Level level = best.assessment().verdict().level();
    String which = "'" + best.label() + "'";
    return switch (level) {
      case OUTSIDE ->
          "No packing is sure to stay inside the alarm band. The closest is "
              + which
              + ", in the worst case "
              + (best.worst() < 0
                  ? figures.difference(-best.worst()) + " outside it"
                  : "just at its edge")
              + ": "
              + level.words()
              + ".";
      case TIGHT ->
          which
              + " has the largest margin, but only "
              + figures.difference(best.worst())
              + " in the worst case: "
              + level.words()
              + ".";
      case INSIDE ->
          which
              + " has the largest margin, "
              + figures.difference(best.worst())
              + " in the worst case: "
              + level.words()
              + ".";
    };
  }

  /**
   * Which uncertain quantity takes most of the margin, where little or nothing is left: what to
   * know better, or to guard against, first.
   */
  Optional<String> costliest(Judged row) {
    if (row.assessment().verdict().level() == Level.INSIDE) {
      return Optional.empty();
    }
    return row.assessment().sensitivities().stream()
        .max(Comparator.comparingDouble(each -> cost(each, row.side())))
        .filter(most -> cost(most, row.side()) >= WORTH_SAYING)
        .map(
            most ->
                "Of all uncertain quantities, "
                    + most.factor().words()
                    + " alone costs most: "
                    + figures.difference(cost(most, row.side()))
                    + ".");
  }

  /** What a quantity at the worse end of its range takes from the margin of a side [K]. */
  private static double cost(Sensitivity sensitivity, Side side) {
    Sensitivity.Change change = side == Side.COLD ? sensitivity.cold() : sensitivity.hot();
    return -Math.min(change.atLow(), change.atHigh());
  }

  /** The answer in a line above a picture of all packings. */
  String margins(List<Judged> rows) {
    Judged best = Judged.best(rows);
    double most = best.worst();
    return most < 0
        ? "Closest in the worst case: "
            + best.label()
            + ", "
            + left(best.assessment().verdict().tightest())
        : "Largest margin in the worst case: " + best.label() + ", " + figures.difference(most);
  }

  /** The verdict of a packing in a line above a picture. */
  String summary(Judged row) {
    Margin tightest = row.assessment().verdict().tightest();
    return tightest.side().words()
        + " is tightest, "
        + left(tightest)
        + " in the worst case, "
        + Words.moment(row.held(), tightest.time());
  }

  /** What the warmer changes, for a packing that was run both ways. */
  List<String> warmerEffects(List<Judged> rows) {
    return rows.stream()
        .filter(Judged::hasWarmer)
        .flatMap(
            with ->
                rows.stream()
                    .filter(
                        row -> !row.hasWarmer() && row.parcel().name().equals(with.parcel().name()))
                    .map(without -> warmerEffect(with, without)))
        .toList();
  }

  private String warmerEffect(Judged with, Judged without) {
    return with.parcel().name()
        + ": in the worst case "
        + (with.parcel().warmers().size() == 1 ? "the warmer moves" : "the warmers move")
        + " the cold margin from "
        + worst(without, Side.COLD)
        + " to "
        + worst(with, Side.COLD)
        + " and the hot margin from "
        + worst(without, Side.HOT)
        + " to "
        + worst(with, Side.HOT)
        + ".";
  }

  private String worst(Judged row, Side side) {
    return figures.degrees(row.assessment().worstMargin(side).kelvin())
        + " "
        + figures.differenceUnit();
  }
}
