package stenotherm.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import stenotherm.animal.Limit;
import stenotherm.animal.Tolerance;
import stenotherm.base.Orientation;
import stenotherm.base.Range;
import stenotherm.decision.Assessment;
import stenotherm.decision.ChangesTried;
import stenotherm.decision.FirstLook;
import stenotherm.decision.Level;
import stenotherm.decision.Remedy;
import stenotherm.decision.Side;
import stenotherm.decision.Verdict;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.parcel.Container;
import stenotherm.study.Odds;
import stenotherm.study.OddsByCause;
import stenotherm.study.Share;
import stenotherm.study.StudyResult;

/**
 * The sentences about verdicts. None of them permits anything.
 *
 * @param words writes numbers and moments for the reader
 */
record VerdictWords(Words words) {
  /** Odds below this are worth a sentence on what causes most of them. */
  private static final double WORTH_EXPLAINING = 0.995;

  /** A side that goes wrong less often is told in numbers only. */
  private static final double WORTH_TELLING = 0.05;

  /** The delay that headlines tell of, if journeys were followed so long [h]. */
  private static final int LATE = 24;

  /** Where else to look if no change that was tried is enough. */
  private static final String ELSEWHERE =
      "Or wait for other weather: write map before the file's name, and the same program tells with"
          + " which lows this does better; write search, and it looks through hundreds of other"
          + " boxes, foams and warmers. Each takes minutes.";

  /**
   * The verdict of a packing: how many of a hundred journeys go well, how certain that is, what
   * goes wrong in the others, and the moment that matters.
   */
  String sentence(Assessment assessment) {
    Verdict verdict = assessment.verdict();
    StudyResult odds = assessment.odds();
    return "Goes well in "
        + Words.inHundred(verdict.within().within())
        + " of 100 journeys that arrive on time ("
        + Words.interval(verdict.within())
        + ", as only so many journeys were computed"
        + (Words.isLowered(verdict.within()) ? ", and the lower end decides; " : "; ")
        + Words.percent(assessment.wider().within().within())
        + " if all that is uncertain varied 1.5 times as much); too cold in "
        + Words.inHundred(1 - odds.notTooCold().within())
        + ", too hot in "
        + Words.inHundred(1 - odds.notTooHot().within())
        + harm(", short of air in ", odds.enoughAir())
        + harm(
            ", in reach of a place above " + words.temperature(Tolerance.HOTTEST_TOUCH) + " in ",
            odds.notBurnt())
        + ". "
        + extreme(assessment, verdict.side())
        + otherSide(assessment)
        + howLong(assessment);
  }

  /** For how long and how far it is too cold or too hot where it is, if that happens often. */
  private String howLong(Assessment assessment) {
    StudyResult odds = assessment.odds();
    double tooCold = 1 - odds.notTooCold().within();
    double tooHot = 1 - odds.notTooHot().within();
    OptionalDouble hours = odds.typicallyOutside();
    if (tooCold + tooHot < WORTH_TELLING || hours.isEmpty()) {
      return "";
    }
    boolean cold = tooCold >= WORTH_TELLING || tooCold > tooHot;
    boolean hot = tooHot >= WORTH_TELLING || tooHot > tooCold;
    String tooWhat = cold && hot ? "too cold or too hot" : cold ? "too cold" : "too hot";
    boolean several = assessment.nominal().parcel().occupied().size() > 1;
    return " On a journey that is "
        + tooWhat
        + " for "
        + (several ? "an animal" : "it")
        + ", it is typically "
        + (cold && hot ? "outside its temperatures" : tooWhat)
        + " for "
        + Words.hours(hours.getAsDouble())
        + " h in all"
        + beyond(odds, cold, hot)
        + ".";
  }

  /** How far it typically gets beyond its temperatures; critical limits may be passed without. */
  private String beyond(StudyResult odds, boolean cold, boolean hot) {
    OptionalDouble below = cold ? odds.typicallyBeyond(true) : OptionalDouble.empty();
    OptionalDouble above = hot ? odds.typicallyBeyond(false) : OptionalDouble.empty();
    if (below.isPresent() && above.isPresent()) {
      return ", at worst too cold by "
          + words.figures().difference(below.getAsDouble())
          + " or too hot by "
          + words.figures().difference(above.getAsDouble());
    }
    OptionalDouble one = below.isPresent() ? below : above;
    return one.isEmpty() ? "" : ", at worst by " + words.figures().difference(one.getAsDouble());
  }

  /** The same of the other side, where that goes wrong so often that a reader wonders when. */
  private String otherSide(Assessment assessment) {
    boolean cold = assessment.verdict().side() == Side.COLD;
    StudyResult odds = assessment.odds();
    Odds spared = cold ? odds.notTooHot() : odds.notTooCold();
    return 1 - spared.within() < WORTH_TELLING
        ? ""
        : " " + extreme(assessment, cold ? Side.HOT : Side.COLD);
  }

  /** What else may befall an animal, where it does. */
  private static String harm(String words, Odds spared) {
    return spared.within() < 1 ? words + Words.inHundred(1 - spared.within()) : "";
  }

  /** When and where it is worst on a typical journey, and how it is then on a bad one. */
  private String extreme(Assessment assessment, Side side) {
    StudyResult odds = assessment.odds();
    Odds spared = side == Side.COLD ? odds.notTooCold() : odds.notTooHot();
    Optional<Extreme> ofTheFew =
        1 - spared.within() < WORTH_TELLING ? Optional.empty() : Extreme.ofTheFew(assessment, side);
    Extreme extreme = ofTheFew.orElseGet(() -> Extreme.of(assessment, side));
    Journey journey = assessment.nominal().journey();
    // what is stored at a change of legs belongs to the one that ends
    int number = journey.legUntil(extreme.time());
    Leg leg = journey.legs().get(number);
    Orientation lying = leg.surroundings().orientation();
    boolean several = assessment.nominal().parcel().occupied().size() > 1;
    String who =
        several
            ? "the " + Judged.animal(extreme.cup()).name() + " in '" + extreme.cup().name() + "'"
            : "it";
    return (ofTheFew.isPresent()
            ? (side == Side.COLD ? "Cold" : "Heat") + " threatens " + who + " most"
            : who.substring(0, 1).toUpperCase(Locale.ROOT)
                + who.substring(1)
                + " is "
                + extreme.words())
        + " about "
        + words.clockOnDay(journey, extreme.time())
        + " during '"
        + leg.name()
        + "'"
        + (lying == Orientation.LID_UP ? "" : " (" + lying.words() + ")")
        + ": "
        + howFar(extreme)
        + ".";
  }

  /**
   * Where both temperatures are written alike, the second tells that it seldom passes the first.
   */
  private String howFar(Extreme extreme) {
    boolean cold = extreme.side() == Side.COLD;
    String typical = words.temperature(extreme.typical());
    String seldom = words.temperature(extreme.seldom());
    return typical
        + " on a typical journey, "
        + (typical.equals(seldom)
            ? (cold ? "no less" : "no more") + " on 19 of 20"
            : seldom + (cold ? " or less" : " or more") + " on one journey of twenty");
  }

  /** The answer before everything else: what to do, and why. */
  String headline(ComparisonReport report) {
    return String.join(" ", paragraphs(report));
  }

  /** The same, a paragraph for each thought. */
  List<String> paragraphs(ComparisonReport report) {
    List<String> why = explanation(report);
    List<String> all = new ArrayList<>(List.of(advice(report.rows()) + " " + why.get(0)));
    all.addAll(why.subList(1, why.size()));
    return all;
  }

  /** The paragraphs after what to do: what would help comes first, if something does. */
  List<String> explanation(ComparisonReport report) {
    List<Judged> rows = report.rows();
    List<String> all = new ArrayList<>();
    Optional<String> change = improvement(report);
    if (report.changes().flatMap(changes -> changes.tried().best()).isPresent()) {
      all.add(change.orElseThrow());
      all.add("As it is, of 100" + fares(rows));
    } else {
      all.add(grounds(rows));
      change.ifPresent(all::add);
    }
    if (report.changes().filter(changes -> !changes.tried().isEnough()).isPresent()) {
      all.add(ELSEWHERE);
    }
    return all;
  }

  /** Where no packing likely holds: what to change. */
  private Optional<String> improvement(ComparisonReport report) {
    return report
        .changes()
        .map(
            changes ->
                changes
                    .tried()
                    .best()
                    .map(best -> helping(best, changes, Judged.best(report.rows())))
                    .orElseGet(() -> noneHelps(changes.count())));
  }

  /** Only the changes that promise most have odds: of the others nothing is known. */
  private static String noneHelps(int count) {
    return count == 1
        ? "The one change that was tried does not clearly help."
        : "None of the " + count + " changes that were tried clearly helps.";
  }

  private String helping(ChangesTried.TriedChange change, Improvement changes, Judged best) {
    Odds within = change.within().orElseThrow();
    Level level = Level.of(within);
    return (changes.count() == 1
            ? "What helps, the one change tried on it"
            : "What helps most of " + changes.count() + " changes tried on it")
        + (changes.row().label().equals(best.label())
            ? ": "
            : " and on '" + changes.row().label() + "', made on the latter: ")
        + remedy(change.remedy())
        + "; "
        + (level.compareTo(Level.LIKELY) > 0 ? "even then only " : "")
        + Words.deciding(within)
        + " of 100"
        + Words.goWell(within.within())
        + " ("
        + level.words()
        + (level.compareTo(Level.LIKELY) > 0 ? failing(change.odds().orElseThrow()) : "")
        + ").";
  }

  /** What journeys still fail of under a change that is not enough. */
  private static String failing(OddsByCause odds) {
    return Arrays.stream(Cause.values())
        .filter(cause -> cause.share(odds) >= WORTH_TELLING)
        .sorted(Comparator.comparingDouble(cause -> -cause.share(odds)))
        .map(cause -> ", " + cause.words() + " in " + Words.inHundred(cause.share(odds)))
        .collect(Collectors.joining());
  }

  /** A change, as what to do. */
  String remedy(Remedy remedy) {
    return remedy.words(words);
  }

  /** A first look at one typical journey, before there are odds. */
  String firstLook(List<Packed> packings, List<FirstLook> looks) {
    int best = 0;
    for (int n = 1; n < looks.size(); n++) {
      best = looks.get(n).least() > looks.get(best).least() ? n : best;
    }
    FirstLook look = looks.get(best);
    boolean several = packings.size() > 1;
    return "First look, one typical journey computed roughly: "
        + (look.isWithin()
            ? (several ? "best is '" + packings.get(best).label() + "': " : "") + "the animal has "
            : "the animal leaves its temperatures"
                + (several
                    ? " with each packing, least with '" + packings.get(best).label() + "'"
                    : "")
                + ": it has ")
        + words.temperature(look.coldest())
        + " to "
        + words.temperature(look.hottest())
        + ". How often all goes well follows.";
  }

  /** The answer while changes are still to be tried. */
  String beforeChanges(List<Judged> rows) {
    return advice(rows) + " " + grounds(rows) + " What would help is being tried.";
  }

  /** What to do. */
  String advice(List<Judged> rows) {
    Judged best = Judged.best(rows);
    String which = "'" + best.label() + "'";
    return switch (best.verdict().level()) {
      case HOLDS, LIKELY -> "Take " + which + ".";
      case GAMBLE ->
          "Better wait, or change something: the best of these, " + which + ", is a gamble.";
      case DO_NOT -> "Do not send it like this. The best of these is " + which + ".";
    };
  }

  /** How the best packing fares. */
  String grounds(List<Judged> rows) {
    return "Of 100" + fares(rows);
  }

  private String fares(List<Judged> rows) {
    Judged best = Judged.best(rows);
    return " such journeys that arrive on time, "
        + Words.decidingGoWell(best.verdict().within())
        + ": "
        + animals(best)
        + late(best)
        + ". "
        + new ClimateWords(words)
            .reason(best)
            .orElseGet(
                () ->
                    extreme(best.assessment(), best.verdict().side()) + howLong(best.assessment()));
  }

  private String late(Judged best) {
    StudyResult odds = best.odds();
    if (odds.longestDelay() < LATE) {
      return "";
    }
    return "; of those opened a day late, " + Words.inHundred(odds.withinUntil(LATE).within());
  }

  /** For example "the leopard gecko stays between 10 °C and 32 °C, with air to breathe". */
  private String animals(Judged row) {
    List<Container> cups = row.parcel().occupied();
    if (cups.size() > 1) {
      return "all animals stay within their temperatures, with air to breathe";
    }
    Range band = Judged.animal(cups.get(0)).tolerance().band(Limit.ALARM).range();
    return "the "
        + Judged.animal(cups.get(0)).name()
        + " stays between "
        + words.temperature(band.low())
        + " and "
        + words.temperature(band.high())
        + ", with air to breathe";
  }

  /** What causes most of the spread of the margin that decides: what to know better first. */
  Optional<String> costliest(Judged row) {
    if (row.verdict().within().within() >= WORTH_EXPLAINING) {
      return Optional.empty();
    }
    return row.assessment()
        .shares()
        .map(
            shared ->
                "What makes journeys differ most: "
                    + shared.shares().stream()
                        .limit(3)
                        .map(VerdictWords::share)
                        .collect(Collectors.joining(", "))
                    + ".");
  }

  private static String share(Share share) {
    return share.of() + " (" + Math.round(100 * share.total()) + " %)";
  }

  /** The verdict of a packing in a line above a picture. */
  String summary(Judged row) {
    return row.verdict().level().words()
        + ", well in "
        + Words.inHundred(row.verdict().within().within())
        + Words.brackets(row.verdict().within())
        + " of 100 journeys";
  }
}
