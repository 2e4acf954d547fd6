package stenotherm.report;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import stenotherm.animal.Tolerance;
import stenotherm.base.Range;
import stenotherm.decision.JourneyOdds;
import stenotherm.decision.Level;
import stenotherm.decision.Lows;
import stenotherm.decision.OddsMap;
import stenotherm.picture.OddsChart;
import stenotherm.picture.OddsField;
import stenotherm.words.Figures;

/** A map as a page and as text. */
final class MapPage {
  /** Lows at each end of which the picture is made. */
  private static final int FINE = 31;

  private static final String NONE = "none";

  /** Lows of the tables. */
  private static final int ROWS = 7;

  private final MapReport report;
  private final Figures figures;
  private final MapWords words;
  private final Range lows;

  MapPage(MapReport report) {
    this.report = report;
    this.figures = new Figures(report.scenario().units());
    this.words = new MapWords(figures);
    this.lows = report.question().lows();
  }

  byte[] html(boolean withPictures) {
    String headline = words.headline(report);
    AnswerPage page = new AnswerPage(title(), headline);
    words.withOwnLow(report).ifPresent(page::sentence);
    words.withOwnLows(report).ifPresent(page::sentence);
    words.bests(report).forEach(page::sentence);
    page.sentence(words.grounds(report));
    MapWords.withoutEffect(report).ifPresent(page::sentence);
    page.deferral();
    if (withPictures) {
      OddsChart chart = chart();
      page.picture(
          chart,
          chart::heightFor,
          "Find the low forecast where the parcel is sent from on the lower scale, the low where it"
              + " is sent to on the left one. Words beside the shapes say what goes wrong there most;"
              + " 'burns' means places above "
              + figures.temperature(Tolerance.HOTTEST_TOUCH)
              + " in reach of an animal. Where lines lie close together a few degrees decide.");
    }
    tables().forEach(page::table);
    page.cautions(cautions());
    page.folded(
        "The odds in more detail",
        folded -> report.maps().forEach((packed, map) -> folded.table(odds(packed, map))));
    List<String> sentences = StatedAssumptions.sentences(report.scenario());
    page.folded(
        "How it was computed", folded -> folded.sentence(MapWords.error(report)).list(sentences));
    page.files("All digits in SI units", List.of(MapReport.SUMMARY, MapReport.ODDS));
    return page.html();
  }

  void print(PrintWriter out) {
    ConsoleText.answer(out, title(), words.headline(report));
    words.withOwnLow(report).ifPresent(sentence -> ConsoleText.line(out, sentence));
    words.withOwnLows(report).ifPresent(sentence -> ConsoleText.line(out, sentence));
    words.bests(report).forEach(sentence -> ConsoleText.line(out, sentence));
    out.println();
    ConsoleText.line(out, words.grounds(report));
    MapWords.withoutEffect(report).ifPresent(sentence -> ConsoleText.line(out, sentence));
    tables().forEach(table -> table.print(out));
    out.println();
    ConsoleText.line(out, MapWords.error(report));
    ConsoleText.list(out, "Cautions", cautions());
  }

  private String title() {
    return report.scenario().title()
        + ": with which overnight lows does it hold? Packing '"
        + report.question().packing().name()
        + "'";
  }

  List<String> cautions() {
    Set<String> ofRuns = new LinkedHashSet<>();
    report.maps().values().forEach(map -> ofRuns.addAll(map.cautions()));
    return Cautions.of(report.scenario(), report.question().packing(), List.copyOf(ofRuns));
  }

  private String of(Packed packed) {
    return report.stripped().isEmpty()
        ? packed.parcel().name()
        : packed.stripped() ? "no warmer" : "with warmer";
  }

  /** That of all lows at both ends only if there is something in it. */
  private List<TextTable> tables() {
    TextTable all = byDestination();
    return all.head().size() == 1 ? List.of(equalLows()) : List.of(equalLows(), all);
  }

  private TextTable equalLows() {
    List<String> head = new ArrayList<>(List.of("packing"));
    MapWords.LEVELS.forEach(level -> head.add(atLeast(level)));
    List<List<String>> lines = new ArrayList<>();
    report
        .maps()
        .forEach(
            (packed, map) -> {
              List<String> line = new ArrayList<>(List.of(of(packed)));
              for (Level level : MapWords.LEVELS) {
                line.add(cell(words.equalLows(report, map, level)));
              }
              lines.add(line);
            });
    return new TextTable(
        "The same low at both ends; in brackets how many journeys go well at least", head, lines);
  }

  private static String atLeast(Level level) {
    return level.words() + " (" + Math.round(100 * level.least()) + " of 100)";
  }

  private String cell(Optional<Range> range) {
    return range.map(words::inShort).orElse(NONE);
  }

  private TextTable byDestination() {
    List<String> head = new ArrayList<>(List.of("low at the destination"));
    List<Level> levels = List.of(Level.HOLDS, Level.LIKELY);
    for (Packed packed : report.maps().keySet()) {
      levels.forEach(level -> head.add(of(packed) + ": " + level.words()));
    }
    List<List<String>> lines = new ArrayList<>();
    for (double low : spread(ROWS)) {
      List<String> line = new ArrayList<>(List.of(figures.temperature(low)));
      for (OddsMap map : report.maps().values()) {
        for (Level level : levels) {
          line.add(
              cell(
                  MapWords.widest(
                      map,
                      level,
                      new Lows(lows.low(), low),
                      new Lows(lows.high(), low),
                      lows,
                      figures)));
        }
      }
      lines.add(line);
    }
    return withoutNone("Lows at the origin with which it holds, or likely holds", head, lines);
  }

  /** A table without columns that have nothing to tell. */
  static TextTable withoutNone(String caption, List<String> head, List<List<String>> lines) {
    int[] columns =
        IntStream.range(0, head.size())
            .filter(column -> lines.stream().anyMatch(line -> isSome(line.get(column))))
            .toArray();
    return new TextTable(
        caption, chosen(head, columns), lines.stream().map(line -> chosen(line, columns)).toList());
  }

  private static boolean isSome(String cell) {
    return !cell.equals(NONE);
  }

  private static List<String> chosen(List<String> cells, int[] columns) {
    return IntStream.of(columns).mapToObj(cells::get).toList();
  }

  private TextTable odds(Packed packed, OddsMap map) {
    List<List<String>> lines = new ArrayList<>();
    for (double low : spread(MapData.SIDE)) {
      JourneyOdds odds = map.odds(Lows.equal(low));
      lines.add(
          List.of(
              figures.temperature(low),
              Words.percent(odds.within().within()),
              Words.interval(odds.within()),
              Words.percent(odds.tooCold()),
              Words.percent(odds.tooHot()),
              Words.percent(odds.shortOfAir()),
              Words.percent(odds.burnt())));
    }
    return new TextTable(
        "Of 100 journeys with the same low at both ends, " + of(packed),
        List.of(
            "low",
            "go well",
            "what their number leaves open",
            "too cold",
            "too hot",
            "short of air",
            "burns"),
        lines);
  }

  double[] spread(int many) {
    return MapData.spread(lows, many);
  }

  private OddsChart chart() {
    OddsChart.Builder chart =
        OddsChart.titled(words.conclusion(report))
            .subtitle(
                "Share of journeys that go well, less what their number leaves open, over the"
                    + " overnight lows at both ends; days "
                    + report.question().dailyRanges().words(figures))
            .axes("low at the origin", "low at the destination")
            .units(report.scenario().units())
            .rest(Level.DO_NOT.words());
    MapWords.LEVELS.forEach(level -> chart.level(level.least(), level.words()));
    report
        .ownLows()
        .ifPresent(own -> chart.here(own.origin(), own.destination(), "lows of the file"));
    for (Map.Entry<Packed, OddsMap> each : report.maps().entrySet()) {
      chart.map(field(each.getKey(), each.getValue()));
    }
    return chart.build();
  }

  private OddsField field(Packed packed, OddsMap map) {
    double[] axis = spread(FINE);
    double[][] odds = new double[FINE][FINE];
    String[][] meanings = new String[FINE][FINE];
    for (int i = 0; i < FINE; i++) {
      for (int j = 0; j < FINE; j++) {
        JourneyOdds there = map.odds(new Lows(axis[i], axis[j]));
        odds[i][j] = there.within().low();
        meanings[i][j] = there.level() == Level.DO_NOT ? mostly(there) : there.level().words();
      }
    }
    // what tells the two apart first: on a narrow screen the rest is cut off
    String name = packed.parcel().name();
    String told = report.stripped().isEmpty() ? name : of(packed) + ": " + name;
    return new OddsField(told, axis, axis, odds, meanings);
  }

  /** What goes wrong most. */
  private static String mostly(JourneyOdds odds) {
    double most =
        Math.max(
            Math.max(odds.tooCold(), odds.tooHot()), Math.max(odds.shortOfAir(), odds.burnt()));
    if (odds.tooCold() == most) {
      return "too cold";
    }
    if (odds.tooHot() == most) {
      return "too hot";
    }
    return odds.shortOfAir() == most ? "short of air" : "burns";
  }
}
