package stenotherm.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import stenotherm.animal.Tolerance;
import stenotherm.base.Range;
import stenotherm.base.Temperatures;
import stenotherm.decision.FirstLook;
import stenotherm.decision.JourneyOdds;
import stenotherm.decision.Level;
import stenotherm.decision.Lows;
import stenotherm.decision.OddsMap;
import stenotherm.scenario.OtherWeather;
import stenotherm.words.Figures;
import stenotherm.words.Units;

/** The sentences about a map. None of them permits anything. */
record MapWords(Figures figures) {
  /** Levels that are worth a range of lows, the best first. */
  static final List<Level> LEVELS = List.of(Level.HOLDS, Level.LIKELY, Level.GAMBLE);

  private static final String NONE = "none";

  /** Below this a temperature is taken as written [reader's degree]. */
  private static final double ROUND_OFF = 1e-6;

  /** The low at which a packing does best, the same at both ends [K], and how it fares there. */
  record Best(double low, JourneyOdds odds) {}

  /** A harm, and the share of journeys that meet it. */
  private record Harmed(String words, double share) {}

  /** The widest band of lows on a way over a map at some level or better. */
  static Optional<Range> widest(
      OddsMap map, Level level, Lows from, Lows to, Range wholeWay, Figures figures) {
    return map.stretches(level, from, to).stream()
        .map(
            stretch ->
                new double[] {along(wholeWay, stretch.low()), along(wholeWay, stretch.high())})
        .map(
            ends ->
                new double[] {inwards(ends[0], true, figures), inwards(ends[1], false, figures)})
        .filter(ends -> ends[0] <= ends[1])
        .map(ends -> new Range(ends[0], ends[1]))
        .max((one, other) -> Double.compare(length(one), length(other)));
  }

  /** The low so far along a way over a map, of 1 [K]. */
  private static double along(Range wholeWay, double share) {
    return wholeWay.low() + share * length(wholeWay);
  }

  private static double length(Range range) {
    return range.high() - range.low();
  }

  /** Rounded to what is written, towards the inside of a range [K]. */
  private static double inwards(double kelvin, boolean up, Figures figures) {
    boolean us = figures.units() == Units.US;
    double steps = us ? Temperatures.toFahrenheit(kelvin) : 2 * Temperatures.toCelsius(kelvin);
    double whole = up ? Math.ceil(steps - ROUND_OFF) : Math.floor(steps + ROUND_OFF);
    return us ? Temperatures.fromFahrenheit(whole) : Temperatures.fromCelsius(whole / 2);
  }

  /** Where a packing does best with the same low at both ends. */
  Best best(MapReport report, OddsMap map) {
    return best(wholeDegrees(report.question().lows()), low -> map.odds(Lows.equal(low)));
  }

  /** The best of some lows; of several that are alike the middle of the longest row of them. */
  static Best best(List<Double> lows, DoubleFunction<JourneyOdds> oddsAt) {
    List<Best> all = lows.stream().map(low -> new Best(low, oddsAt.apply(low))).toList();
    double most =
        all.stream().mapToDouble(each -> each.odds().within().within()).max().orElseThrow();
    List<Best> longest = List.of();
    List<Best> row = new ArrayList<>();
    for (Best each : all) {
      if (each.odds().within().within() < most) {
        row.clear();
      } else {
        row.add(each);
        longest = row.size() > longest.size() ? List.copyOf(row) : longest;
      }
    }
    return longest.get((longest.size() - 1) / 2);
  }

  /** Temperatures of whole degrees of the reader's within a range, or its lower end [K]. */
  private List<Double> wholeDegrees(Range range) {
    boolean us = figures.units() == Units.US;
    double low = us ? Temperatures.toFahrenheit(range.low()) : Temperatures.toCelsius(range.low());
    double high =
        us ? Temperatures.toFahrenheit(range.high()) : Temperatures.toCelsius(range.high());
    List<Double> all = new ArrayList<>();
    for (double each = Math.ceil(low - ROUND_OFF); each <= high + ROUND_OFF; each++) {
      double kelvin = us ? Temperatures.fromFahrenheit(each) : Temperatures.fromCelsius(each);
      all.add(Math.min(Math.max(kelvin, range.low()), range.high()));
    }
    return all.isEmpty() ? List.of(range.low()) : all;
  }

  /** At which low each way of packing does best, how it fares there and what goes wrong. */
  List<String> bests(MapReport report) {
    return report.maps().entrySet().stream()
        .map(each -> best(way(report, each.getKey()), best(report, each.getValue())))
        .toList();
  }

  /** How each way of packing fares with the lows of the file, where the map has them. */
  Optional<String> withOwnLows(MapReport report) {
    return report
        .ownLows()
        .map(
            own ->
                "With the lows of the file, "
                    + at(own)
                    + ", read off the map: "
                    + report.maps().entrySet().stream()
                        .map(each -> fares(report, each.getKey(), each.getValue().odds(own)))
                        .collect(Collectors.joining(". "))
                    + ".");
  }

  private String at(Lows lows) {
    String origin = figures.temperature(lows.origin());
    String destination = figures.temperature(lows.destination());
    return origin.equals(destination)
        ? origin + " at both ends"
        : origin + " at the origin and " + destination + " at the destination";
  }

  private String fares(MapReport report, Packed packed, JourneyOdds odds) {
    return (report.stripped().isEmpty()
            ? "of"
            : packed.stripped() ? "Without the warmer, of" : "with the warmer, of")
        + " 100 journeys "
        + goWell(odds)
        + ": "
        + odds.level().words();
  }

  /** How many go well, and what goes wrong in the others. */
  private String goWell(JourneyOdds odds) {
    String harms = harms(odds);
    return Words.decidingGoWell(odds.within()) + (harms.isEmpty() ? "" : "; " + harms);
  }

  /** The same of one way, in a sentence that begins with it. */
  String best(String way, Best best) {
    double share = best.odds().within().within();
    String low = "with lows of " + figures.temperature(best.low()) + " at both ends";
    if (share == 0) {
      return way
          + " goes well at none of the lows computed: not a single journey did; "
          + low
          + ", in the middle of them, of 100 "
          + harms(best.odds())
          + ".";
    }
    return way + " does best " + low + ": of 100 such journeys " + goWell(best.odds()) + ".";
  }

  /** What goes wrong and how often, the most frequent first, such as "too cold in 9". */
  private String harms(JourneyOdds odds) {
    return List.of(
            new Harmed("too cold", odds.tooCold()),
            new Harmed("too hot", odds.tooHot()),
            new Harmed("short of air", odds.shortOfAir()),
            new Harmed(
                "in reach of a place above " + figures.temperature(Tolerance.HOTTEST_TOUCH),
                odds.burnt()))
        .stream()
        .filter(each -> each.share() > 0)
        .sorted(Comparator.comparingDouble(each -> -each.share()))
        .map(each -> each.words() + " in " + Words.inHundred(each.share()))
        .collect(Collectors.joining(", "));
  }

  static String way(MapReport report, Packed packed) {
    if (report.stripped().isEmpty()) {
      return "It";
    }
    return packed.stripped() ? "Without the warmer it" : "With the warmer it";
  }

  /** The level that is told of: the one that is enough, or less if no way reaches it anywhere. */
  private Level told(MapReport report) {
    return report.maps().values().stream()
            .anyMatch(map -> equalLows(report, map, Level.LIKELY).isPresent())
        ? Level.LIKELY
        : Level.GAMBLE;
  }

  Optional<Range> equalLows(MapReport report, OddsMap map, Level level) {
    Range lows = report.question().lows();
    return widest(map, level, Lows.equal(lows.low()), Lows.equal(lows.high()), lows, figures);
  }

  /**
   * The answer: from which lows to which it likely holds, the same level for both ways, and from
   * where on a warmer does harm.
   */
  String headline(MapReport report) {
    Level level = told(report);
    Optional<String> with = equalLows(report, report.map(), level).map(all -> range(report, all));
    if (report.stripped().isEmpty()) {
      return with.map(
              lows ->
                  "It "
                      + verb(level)
                      + " with overnight lows "
                      + lows
                      + " at both ends"
                      + better(report, report.map())
                      + ".")
          .orElse(nowhere(report));
    }
    Optional<String> without =
        equalLows(report, report.stripped().get(), level).map(all -> range(report, all));
    if (with.isEmpty() && without.isEmpty()) {
      return nowhere(report);
    }
    return "With the warmer it "
        + with.map(lows -> verb(level) + " with overnight lows " + lows)
            .orElseGet(() -> atBest(report, report.map(), level))
        + " at both ends"
        + better(report, report.map())
        + "; without it, "
        + without
            .map(lows -> "with lows " + lows.replaceFirst(",$", ""))
            .orElseGet(() -> "it " + atBest(report, report.stripped().get(), level))
        + better(report, report.stripped().get())
        + "."
        + with.flatMap(any -> overtaken(report))
            .map(where -> " Leave the warmer out " + where + ".")
            .orElse("")
        + neither(gaps(report));
  }

  /** Where a way does not reach the level that is told, what it is at best. */
  private String atBest(MapReport report, OddsMap map, Level level) {
    return equalLows(report, map, Level.GAMBLE)
        .map(lows -> "is at best a gamble, with lows " + range(report, lows).replaceFirst(",$", ""))
        .orElse(verb(level) + " with no low");
  }

  /** Where it does better than what is told, in brackets; empty if nowhere. */
  private String better(MapReport report, OddsMap map) {
    return equalLows(report, map, Level.HOLDS)
        .map(
            lows ->
                " (" + Level.HOLDS.words() + " " + range(report, lows).replaceFirst(",$", "") + ")")
        .orElse("");
  }

  /**
   * With the low that the file states at the origin: which lows at the destination will do. What a
   * keeper asks is when to refuse a buyer.
   */
  Optional<String> withOwnLow(MapReport report) {
    return report
        .ownLows()
        .filter(own -> report.matters(true) && report.matters(false))
        .map(own -> withOwnLow(report, own.origin()));
  }

  private String withOwnLow(MapReport report, double origin) {
    Level level = told(report);
    List<String> ranges =
        report.maps().values().stream()
            .map(map -> atDestination(report, map, level, origin))
            .toList();
    String lows =
        ranges.stream().allMatch(NONE::equals)
            ? ": " + NONE
            : ranges.size() == 1
                ? " " + ranges.get(0)
                : ": with the warmer " + ranges.get(0) + "; without it " + ranges.get(1);
    return "With the file's low of "
        + figures.temperature(origin)
        + " at the origin it "
        + verb(level)
        + " with lows at the destination"
        + lows
        + ".";
  }

  private String atDestination(MapReport report, OddsMap map, Level level, double origin) {
    Range lows = report.question().lows();
    return widest(
            map, level, new Lows(origin, lows.low()), new Lows(origin, lows.high()), lows, figures)
        .map(all -> range(report, all).replaceFirst(",$", ""))
        .orElse(NONE);
  }

  /** Lows between others at which neither way reaches the lowest level that is told [K]. */
  private List<Range> gaps(MapReport report) {
    Range lows = report.question().lows();
    Level least = LEVELS.get(LEVELS.size() - 1);
    List<Range> reached = new ArrayList<>();
    for (OddsMap map : report.maps().values()) {
      reached.addAll(map.stretches(least, Lows.equal(lows.low()), Lows.equal(lows.high())));
    }
    return between(reached).stream()
        .map(gap -> new Range(along(lows, gap.low()), along(lows, gap.high())))
        .filter(gap -> !isOne(gap))
        .toList();
  }

  /** What lies between some stretches, which may overlap, and is in none of them. */
  static List<Range> between(List<Range> stretches) {
    List<Range> sorted = new ArrayList<>(stretches);
    sorted.sort(Comparator.comparingDouble(Range::low));
    List<Range> gaps = new ArrayList<>();
    double end = sorted.isEmpty() ? 0 : sorted.get(0).high();
    for (Range each : sorted) {
      if (each.low() > end) {
        gaps.add(new Range(end, each.low()));
      }
      end = Math.max(end, each.high());
    }
    return gaps;
  }

  /** Warns of lows at which neither way will do; empty without such lows. */
  String neither(List<Range> gaps) {
    if (gaps.isEmpty()) {
      return "";
    }
    return " With lows between "
        + Figures.listed(
            gaps.stream()
                .map(
                    gap ->
                        figures.temperature(gap.low()) + " and " + figures.temperature(gap.high()))
                .toList())
        + " neither way is even a gamble: do not send it then.";
  }

  /** The same in short, for a picture that shows the rest. */
  String conclusion(MapReport report) {
    Level level = told(report);
    boolean both = report.stripped().isPresent();
    return equalLows(report, report.map(), level)
        .map(
            lows ->
                (both ? "With the warmer it " : "It ")
                    + verb(level)
                    + " with lows "
                    + range(report, lows)
                    + " at both ends"
                    + (both ? overtaken(report) : Optional.<String>empty())
                        .map(where -> "; leave it out " + where)
                        .orElse("")
                    + ".")
        .or(
            () ->
                report
                    .stripped()
                    .flatMap(bare -> equalLows(report, bare, level))
                    .map(lows -> without(report, level, lows)))
        .orElse("Do not send it at any low, the same at both ends.");
  }

  private String without(MapReport report, Level level, Range lows) {
    return "Without the warmer it "
        + verb(level)
        + " with lows "
        + range(report, lows)
        + " at both ends; with it, do not send it.";
  }

  private String nowhere(MapReport report) {
    Range lows = report.question().lows();
    return "Do not send it like this: with the same overnight low at both ends, anywhere from "
        + figures.temperature(lows.low())
        + " to "
        + figures.temperature(lows.high())
        + ", it is not even a gamble.";
  }

  private static String verb(Level level) {
    return level == Level.GAMBLE ? "is a gamble" : level.words();
  }

  /** Such as "from 34 °F to 58 °F" or "of 34 °F"; an end of the map is told as such. */
  String range(MapReport report, Range lows) {
    return range(report.question().lows(), lows);
  }

  String range(Range all, Range lows) {
    boolean lowest = lows.low() - all.low() < 0.3;
    boolean highest = all.high() - lows.high() < 0.3;
    if (lowest && highest) {
      return "from "
          + figures.temperature(lows.low())
          + " to "
          + figures.temperature(lows.high())
          + ", which are all computed,";
    }
    String end = lowest ? ", the lowest computed," : highest ? ", the highest computed," : "";
    if (isOne(lows)) {
      return "of " + figures.temperature(lows.low()) + end;
    }
    return "from "
        + figures.temperature(lows.low())
        + (lowest ? end : "")
        + " to "
        + figures.temperature(lows.high())
        + (highest ? end : "");
  }

  /** Some lows in short, such as "34 °F to 58 °F". */
  String inShort(Range lows) {
    return figures.temperature(lows.low())
        + (isOne(lows) ? "" : " to " + figures.temperature(lows.high()));
  }

  /** Whether both ends of a range are written alike. */
  private boolean isOne(Range range) {
    return figures.temperature(range.low()).equals(figures.temperature(range.high()));
  }

  /** From where on the packing is better without its warmer, and some of these may be sent. */
  private Optional<String> overtaken(MapReport report) {
    OddsMap stripped = report.stripped().orElseThrow();
    Range lows = report.question().lows();
    OptionalDouble share =
        report.map().overtaken(stripped, Lows.equal(lows.low()), Lows.equal(lows.high()));
    if (share.isEmpty()) {
      return Optional.empty();
    }
    double kelvin = along(lows, share.getAsDouble());
    boolean useful =
        equalLows(report, stripped, Level.GAMBLE).filter(each -> each.high() > kelvin).isPresent();
    if (!useful) {
      return Optional.empty();
    }
    if (share.getAsDouble() == 0) {
      return Optional.of("at all lows computed");
    }
    // where the one overtakes the other both may be too bad to tell
    double from =
        gaps(report).stream()
            .filter(gap -> gap.contains(kelvin))
            .mapToDouble(Range::high)
            .findFirst()
            .orElse(kelvin);
    return Optional.of("above " + figures.temperature(from));
  }

  /** What the map is of, and what its words mean. */
  String grounds(MapReport report) {
    MapReport.Question question = report.question();
    return "'"
        + question.packing().name()
        + "' on the journey of the scenario, with every night as cold as the low and every day "
        + question.dailyRanges().words(figures)
        + "; lows as forecast, so that true ones may lie "
        + figures.difference(OtherWeather.FORECAST_SPREAD)
        + " above or below. 'Holds' means that 95 of 100 journeys that arrive on time go well,"
        + " 'likely holds' 80, 'a gamble' 50, at the lower end of what "
        + report.map().journeys()
        + " computed journeys leave open. A comparison computes more of them, which leaves less"
        + " open: the same odds may be a level higher there.";
  }

  /** Where lows at one end are without effect. */
  static Optional<String> withoutEffect(MapReport report) {
    if (!report.matters(true)) {
      return Optional.of("No leg depends on the weather at the origin.");
    }
    return report.matters(false)
        ? Optional.empty()
        : Optional.of("No leg depends on the weather at the destination.");
  }

  /** How the odds between the lows that were run were found, and by how much that may be off. */
  static String error(MapReport report) {
    double error = report.maps().values().stream().mapToDouble(OddsMap::error).max().orElseThrow();
    int nodes = report.question().nodes();
    return "Journeys were run at "
        + nodes
        + " x "
        + nodes
        + " pairs of lows. In between their temperatures are interpolated; runs in between, where"
        + " the odds change most, differ by at most "
        + String.format(Locale.ROOT, "%.0f", Math.max(1, Math.ceil(100 * error)))
        + " of 100 journeys.";
  }

  /** A first look at typical journeys, before there are odds. */
  String firstLook(Packed packed, List<Double> lows, List<FirstLook> looks) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int n = 0; n < looks.size(); n++) {
      if (looks.get(n).isWithin()) {
        low = Math.min(low, lows.get(n));
        high = Math.max(high, lows.get(n));
      }
    }
    return "First look, "
        + looks.size()
        + " typical journeys computed roughly: '"
        + packed.label()
        + "' stays within its temperatures "
        + (low > high
            ? "at none of their lows"
            : "with "
                + (low == high
                    ? "a low of " + figures.temperature(low)
                    : "lows from " + figures.temperature(low) + " to " + figures.temperature(high))
                + " at both ends")
        + ". How often that goes well follows.";
  }
}
