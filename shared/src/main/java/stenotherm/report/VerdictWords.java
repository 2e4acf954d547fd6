package stenotherm.report;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import stenotherm.animal.Limit;
import stenotherm.base.Orientation;
import stenotherm.base.Range;
import stenotherm.decision.Assessment;
import stenotherm.decision.Level;
import stenotherm.decision.Side;
import stenotherm.decision.Verdict;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.parcel.Container;
import stenotherm.study.Share;
import stenotherm.study.StudyResult;
import stenotherm.words.Figures;

/**
 * The sentences about verdicts. None of them permits anything.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param figures writes numbers in the reader's units
 */
public record VerdictWords(Figures figures) {
  /** Odds below this are worth a sentence on what causes most of them. */
  private static final double WORTH_EXPLAINING = 0.995;

  /** A share of journeys that get too hot that is worth a word. */
  private static final double WORTH_A_WORD = 0.02;

  /** The delay that headlines tell of, if journeys were followed so long [h]. */
  private static final int LATE = 24;

  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("HH:mm 'on' d MMMM", Locale.ENGLISH);

  /**
   * Composes the verdict of a packing: in how many of a hundred journeys every animal stays within
   * its band, how certain that is, what goes wrong in the others, and the tightest moment.
   *
   * @param assessment the assessment of the packing
   * @return sentences that can stand alone, times on the local clock
   */
  public String sentence(Assessment assessment) {
    Verdict verdict = assessment.verdict();
    StudyResult odds = assessment.odds();
    return "Stays within its band in "
        + Words.inHundred(verdict.within().within())
        + " of 100 journeys that arrive on time (by the sample, "
        + Words.percent(verdict.within().low())
        + " to "
        + Words.percent(verdict.within().high())
        + "; with all ranges half as wide again, "
        + Words.percent(assessment.wider().within().within())
        + "); too cold in "
        + Words.inHundred(1 - odds.notTooCold().within())
        + ", too hot in "
        + Words.inHundred(1 - odds.notTooHot().within())
        + ". "
        + tightest(assessment)
        + heldBack(verdict);
  }

  private static String heldBack(Verdict verdict) {
    boolean better = verdict.level() == verdict.highest() && verdict.highest() != Level.HOLDS;
    return better && verdict.within().low() >= Level.HOLDS.least()
        ? " No better verdict is given to a packing with a warmer, as its air is not computed yet."
        : "";
  }

  /** When and where the middle case is tightest, and how much is left. */
  private String tightest(Assessment assessment) {
    Verdict verdict = assessment.verdict();
    Journey journey = assessment.nominal().journey();
    // what is stored at a change of legs belongs to the one that ends
    int number = journey.legUntil(verdict.tightest());
    Leg leg = journey.legs().get(number);
    Orientation lying = leg.surroundings().orientation();
    StudyResult odds = assessment.odds();
    boolean cold = verdict.side() == Side.COLD;
    double middle = cold ? odds.coldMargin(0.5) : odds.hotMargin(0.5);
    double least =
        cold ? odds.coldMargin(Words.ONE_IN_TWENTY) : odds.hotMargin(Words.ONE_IN_TWENTY);
    return "The "
        + verdict.side().words()
        + " is tightest, about "
        + CLOCK.format(journey.localClock(verdict.tightest(), number))
        + " on the leg '"
        + leg.name()
        + "'"
        + (lying == Orientation.LID_UP ? "" : " (" + lying.words() + ")")
        + ": "
        + left(middle)
        + " in the middle case, "
        + left(least)
        + " in one journey of twenty.";
  }

  private String left(double kelvin) {
    return kelvin < 0
        ? figures.difference(-kelvin) + " outside the alarm band"
        : figures.difference(kelvin) + " left";
  }

  /** The answer before everything else: what to do. */
  String headline(List<Judged> rows) {
    Judged best = Judged.best(rows);
    Verdict verdict = best.verdict();
    String which = "'" + best.label() + "'";
    String fares =
        "of 100 such journeys that arrive on time "
            + animals(best)
            + " in "
            + Words.inHundred(verdict.within().within())
            + late(best);
    return switch (verdict.level()) {
      case HOLDS, LIKELY -> "Take " + which + ": " + fares + ". " + tightest(best.assessment());
      case GAMBLE ->
          "Better wait, or change something: the best of these, "
              + which
              + ", is a gamble; "
              + fares
              + ". "
              + tightest(best.assessment());
      case DO_NOT ->
          "Do not send it like this. The best of these is "
              + which
              + "; "
              + fares
              + ". "
              + tightest(best.assessment());
    };
  }

  private String late(Judged best) {
    StudyResult odds = best.odds();
    if (odds.longestDelay() < LATE) {
      return "";
    }
    return ", of those opened a day late in " + Words.inHundred(odds.withinUntil(LATE).within());
  }

  /** For example "the leopard gecko stays within 10 °C to 32 °C". */
  private String animals(Judged row) {
    List<Container> cups = row.parcel().occupied();
    if (cups.size() > 1) {
      return "all animals stay within their alarm bands";
    }
    Range band = Judged.animal(cups.get(0)).tolerance().band(Limit.ALARM).range();
    return "the "
        + Judged.animal(cups.get(0)).name()
        + " stays within "
        + figures.temperature(band.low())
        + " to "
        + figures.temperature(band.high());
  }

  /** What causes most of the spread of the margin that decides: what to know better first. */
  Optional<String> costliest(Judged row) {
    if (row.verdict().within().within() >= WORTH_EXPLAINING) {
      return Optional.empty();
    }
    return row.odds()
        .shares(row.isCold())
        .map(
            shared ->
                "Of what is uncertain there, most comes from "
                    + shared.shares().stream()
                        .limit(3)
                        .map(VerdictWords::share)
                        .collect(Collectors.joining(", "))
                    + ".");
  }

  private static String share(Share share) {
    return share.of() + " (" + Math.round(100 * share.total()) + " %)";
  }

  /** The answer in a line above a picture of all packings. */
  String margins(List<Judged> rows) {
    Judged best = Judged.best(rows);
    return "Best odds: "
        + best.label()
        + ", within its band in "
        + Words.inHundred(best.verdict().within().within())
        + " of 100 journeys";
  }

  /** The verdict of a packing in a line above a picture. */
  String summary(Judged row) {
    return row.verdict().level().words()
        + ", within its band in "
        + Words.inHundred(row.verdict().within().within())
        + " of 100 journeys";
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

  private static String warmerEffect(Judged with, Judged without) {
    double tooHot = 1 - with.odds().notTooHot().within();
    return with.parcel().name()
        + ": "
        + Words.inHundred(with.verdict().within().within())
        + " of 100 journeys go well with "
        + (with.parcel().warmers().size() == 1 ? "the warmer" : "the warmers")
        + (tooHot >= WORTH_A_WORD ? " (too hot in " + Words.inHundred(tooHot) + "), " : ", ")
        + Words.inHundred(without.verdict().within().within())
        + " without.";
  }
}
