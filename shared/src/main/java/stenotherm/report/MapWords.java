package stenotherm.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import stenotherm.base.Range;
import stenotherm.base.Temperatures;
import stenotherm.decision.FirstLook;
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

  /** Below this a temperature is taken as written [reader's degree]. */
  private static final double ROUND_OFF = 1e-6;

  /** Lows at a level, where both ends are inside the map. */
  record Band(Level level, Range lows) {}

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

  /** The best level that the same low at both ends reaches, and the lows that reach it. */
  Optional<Band> band(MapReport report, OddsMap map) {
    return LEVELS.stream()
        .flatMap(level -> equalLows(report, map, level).map(lows -> new Band(level, lows)).stream())
        .findFirst();
  }

  Optional<Range> equalLows(MapReport report, OddsMap map, Level level) {
    Range lows = report.question().lows();
    return widest(map, level, Lows.equal(lows.low()), Lows.equal(lows.high()), lows, figures);
  }

  /** The answer: from which lows to which it holds, and from where on a warmer does harm. */
  String headline(MapReport report) {
    Optional<Band> best = band(report, report.map());
    if (report.stripped().isEmpty()) {
      return best.map(
              band ->
                  "It "
                      + verb(band.level())
                      + " with overnight lows "
                      + range(report, band.lows())
                      + " at both ends.")
          .orElse(nowhere(report));
    }
    Optional<Band> bare = band(report, report.stripped().get());
    if (best.isEmpty() && bare.isEmpty()) {
      return nowhere(report);
    }
    String with =
        best.map(
                band ->
                    "With the warmer it "
                        + verb(band.level())
                        + " with overnight lows "
                        + range(report, band.lows())
                        + " at both ends")
            .orElse("With the warmer, do not send it with the same low at both ends");
    String without =
        bare.map(
                band ->
                    "without it, it "
                        + verb(band.level())
                        + " with lows "
                        + range(report, band.lows()))
            .orElse("without it, at none of these");
    return with
        + "; "
        + without
        + "."
        + overtaken(report).map(where -> " Leave the warmer out " + where + ".").orElse("")
        + neither(gaps(report));
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
        .filter(gap -> !figures.temperature(gap.low()).equals(figures.temperature(gap.high())))
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
    boolean both = report.stripped().isPresent();
    return band(report, report.map())
        .map(
            band ->
                (both ? "With the warmer it " : "It ")
                    + verb(band.level())
                    + " with lows "
                    + range(report, band.lows())
                    + " at both ends"
                    + (both ? overtaken(report) : Optional.<String>empty())
                        .map(where -> "; leave it out " + where)
                        .orElse("")
                    + ".")
        .orElse("Do not send it with the same low at both ends.");
  }

  private String nowhere(MapReport report) {
    Range lows = report.question().lows();
    return "Do not send it like this: with the same overnight low at both ends, anywhere from "
        + figures.temperature(lows.low())
        + " to "
        + figures.temperature(lows.high())
        + ", half of the journeys or more go wrong. "
        + leastBad(report);
  }

  /** Where it goes wrong least. */
  private String leastBad(MapReport report) {
    double[] lows = MapData.spread(report.question().lows(), MapData.SIDE);
    Packed best = new Packed(report.map().parcel(), false);
    double where = lows[0];
    double most = -1;
    for (Map.Entry<Packed, OddsMap> each : report.maps().entrySet()) {
      for (double low : lows) {
        double within = each.getValue().odds(Lows.equal(low)).within().within();
        if (within > most) {
          most = within;
          where = low;
          best = each.getKey();
        }
      }
    }
    if (most == 0) {
      return "At none of these lows did a single one go well.";
    }
    return "The least bad of these lows is "
        + figures.temperature(where)
        + ", where "
        + Words.inHundred(most)
        + " of 100"
        + Words.goWell(most)
        + " with '"
        + best.label()
        + "'.";
  }

  private static String verb(Level level) {
    return level == Level.GAMBLE ? "is a gamble" : level.words();
  }

  /** Such as "from 34 °F to 58 °F"; an end of the map is told as such. */
  String range(MapReport report, Range lows) {
    Range all = report.question().lows();
    boolean lowest = lows.low() - all.low() < 0.3;
    boolean highest = all.high() - lows.high() < 0.3;
    if (lowest && highest) {
      return "from "
          + figures.temperature(lows.low())
          + " to "
          + figures.temperature(lows.high())
          + ", which are all computed,";
    }
    return "from "
        + figures.temperature(lows.low())
        + (lowest ? ", the lowest computed," : "")
        + " to "
        + figures.temperature(lows.high())
        + (highest ? ", the highest computed," : "");
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
        + figures.difference(question.dailyRange())
        + " warmer; lows as forecast, so that true ones may lie "
        + figures.difference(OtherWeather.FORECAST_SPREAD)
        + " above or below. 'Holds' means that 95 of 100 journeys that arrive on time go well,"
        + " 'likely holds' 80, 'a gamble' 50, at the lower end of what "
        + report.map().journeys()
        + " computed journeys leave open.";
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
