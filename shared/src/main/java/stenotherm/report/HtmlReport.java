package stenotherm.report;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import stenotherm.conduction.HeatLedger;
import stenotherm.decision.NumericalError;
import stenotherm.decision.Verdict;
import stenotherm.picture.AirChart;
import stenotherm.picture.HeatChart;
import stenotherm.picture.Picture;
import stenotherm.picture.SectionSheet;
import stenotherm.picture.TemperatureChart;
import stenotherm.scenario.Scenario;
import stenotherm.study.Share;
import stenotherm.study.StudyResult;
import stenotherm.words.Figures;
import stenotherm.words.Markup;

/**
 * The report as one page that works offline and without scripts: the answer, a table, a picture and
 * the cautions; all else is folded. Each picture is drawn twice, for wide and for narrow screens.
 */
final class HtmlReport {
  /** Shares below this have no line. */
  private static final double LEAST_SHARE = 0.01;

  /** Widths at which a picture's letters are large enough on paper, and on a phone [pixel]. */
  private static final int WIDE = 760;

  private static final int NARROW = 340;

  private static final String STYLE =
      """
      body { font: 16px/1.5 system-ui, sans-serif; color: #1b1b1b; background: #fff;
        max-width: 1080px; margin: 0 auto; padding: .5rem 1rem 3rem; }
      h1 { font-size: 1.1rem; font-weight: 500; line-height: 1.25; margin: .6rem 0 .3rem; }
      h2 { font-size: 1.2rem; margin: 1.6rem 0 .4rem; }
      h3 { font-size: 1.05rem; margin: 1.4rem 0 .3rem; }
      .answer { font-size: 1.4rem; font-weight: 700; line-height: 1.3; margin: .6rem 0 .2rem; }
      .cautions { border: 2px solid #1b1b1b; border-left-width: 10px; padding: 0 1rem;
        margin: 1.6rem 0; }
      .cautions h2 { margin-top: .6rem; }
      ul { padding-left: 1.2rem; }
      details { border-top: 1px solid #888; padding: .5rem 0; }
      summary { cursor: pointer; font-size: 1.1rem; font-weight: 600; }
      table { border-collapse: collapse; font-size: .9rem; width: 100%; margin: .6rem 0; }
      caption { text-align: left; padding: .3rem 0; color: #444; }
      th, td { border-bottom: 1px solid #bbb; padding: .3rem .5rem .3rem 0; text-align: left;
        vertical-align: top; }
      thead th { border-bottom: 2px solid #1b1b1b; vertical-align: bottom; }
      figure { margin: 1rem 0; }
      svg { width: 100%; height: auto; display: block; }
      .narrow { display: none; max-width: 34rem; }
      figcaption, .small { color: #444; font-size: .9rem; }
      dt { font-weight: 600; } dd { margin: 0 0 .4rem; }
      .paper { display: none; }
      @media screen and (max-width: 740px) {
        .wide { display: none; } .narrow { display: block; }
        table, caption, tbody, tr, tbody th, td { display: block; } thead { display: none; }
        tbody tr { border-top: 2px solid #1b1b1b; padding: .3rem 0; }
        tbody th, td { border: 0; padding: .1rem 0; }
        td { display: grid; grid-template-columns: 9.5rem 1fr; column-gap: .5rem; }
        td.none { display: none; }
        td::before { content: attr(data-head); color: #444; }
      }
      @media print {
        @page { margin: 12mm; }
        body { max-width: none; padding: 0; font-size: 10pt; }
        table { font-size: 8.5pt; } dl, .small { font-size: 9pt; } dt, dd { display: inline; }
        p { margin: .4rem 0; } .answer { font-size: 14pt; } main > figure { margin: .4rem 0; }
        main > figure svg { max-height: 100mm; }
        h2, .cautions { margin-top: .8rem; }
        h1, h2, h3, caption { break-after: avoid; }
        figure, tr, li, dl div, .cautions { break-inside: avoid; }
        details:not([open]) { display: none; }
        .paper { display: block; }
      }
      """;

  private final ComparisonReport report;
  private final boolean withPictures;
  private final Scenario scenario;
  private final List<Judged> rows;
  private final Words words;
  private final VerdictWords verdicts;
  private final ClimateWords climate;
  private final Tables tables;
  private final Pictures pictures;
  private final StringBuilder html = new StringBuilder();

  private HtmlReport(ComparisonReport report, boolean withPictures) {
    this.report = report;
    this.withPictures = withPictures;
    this.scenario = report.scenario();
    this.rows = report.rows();
    this.words = new Words(new Figures(scenario.units()));
    this.verdicts = new VerdictWords(words.figures());
    this.climate = new ClimateWords(words);
    this.tables = new Tables(words, rows);
    this.pictures = new Pictures(words);
  }

  static byte[] of(ComparisonReport report, boolean withPictures) {
    return new HtmlReport(report, withPictures).write().getBytes(StandardCharsets.UTF_8);
  }

  private String write() {
    html.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
    html.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
    html.append("<title>").append(Markup.escaped(scenario.title())).append("</title>\n");
    html.append("<style>\n").append(STYLE).append("</style>\n</head>\n<body>\n<main>\n");
    Judged best = Judged.best(rows);
    element("h1", scenario.title());
    html.append("<p class=\"answer\">")
        .append(Markup.escaped(verdicts.advice(rows)))
        .append("</p>\n");
    element("p", verdicts.grounds(rows));
    verdicts.improvement(report).ifPresent(sentence -> element("p", sentence));
    html.append("<p><strong>").append(Markup.escaped(Verdict.DEFER)).append("</strong> ");
    html.append("There are <a href=\"#cautions\">more cautions</a> below.</p>\n");
    table(tables.overview());
    temperatures(best);
    html.append("<section class=\"cautions\" id=\"cautions\">\n");
    element("h2", "Cautions");
    // what is deferred to stands above
    list(Cautions.of(report).stream().filter(caution -> !caution.equals(Verdict.DEFER)).toList());
    html.append("</section>\n");
    html.append("<p class=\"small paper\">What the page on the screen has folded is not printed;");
    html.append(" open it there to print it.</p>\n");
    rows.stream().filter(row -> !row.stripped()).forEach(row -> packing(row, row.equals(best)));
    open("The odds in more detail");
    table(tables.odds());
    table(tables.temperatures());
    tables.animals().ifPresent(this::table);
    tables.packs().ifPresent(this::table);
    close();
    tables
        .legDelays()
        .ifPresent(
            table -> {
              open("How late may each part of the journey be?");
              table(table);
              close();
            });
    assumptions();
    computation();
    element("h2", "Words used here");
    html.append("<dl>\n");
    Glossary.WORDS.forEach(
        (word, meaning) -> {
          html.append("<div>");
          element("dt", word);
          element("dd", meaning);
          html.append("</div>\n");
        });
    html.append("</dl>\n</main>\n</body>\n</html>\n");
    return html.toString();
  }

  private void open(String summary) {
    html.append("<details>\n");
    element("summary", summary);
  }

  private void close() {
    html.append("</details>\n");
  }

  private void table(TextTable table) {
    html.append("<table>\n<caption>").append(Markup.escaped(table.caption()));
    html.append(".</caption>\n<thead><tr>");
    for (String name : table.head()) {
      html.append("<th scope=\"col\">").append(Markup.escaped(name)).append("</th>");
    }
    html.append("</tr></thead>\n<tbody>\n");
    for (List<String> line : table.lines()) {
      html.append("<tr><th scope=\"row\">").append(Markup.escaped(line.get(0))).append("</th>");
      for (int column = 1; column < line.size(); column++) {
        // on narrow screens, where the head of the table is left out, each cell has its own
        html.append(line.get(column).equals(Tables.NOTHING) ? "<td class=\"none\"" : "<td");
        html.append(" data-head=\"").append(Markup.escaped(table.head().get(column)));
        html.append("\">").append(Markup.escaped(line.get(column))).append("</td>");
      }
      html.append("</tr>\n");
    }
    html.append("</tbody></table>\n");
  }

  private void temperatures(Judged row) {
    if (!withPictures) {
      return;
    }
    boolean sun = scenario.journey().legs().stream().anyMatch(leg -> leg.surroundings().hasSun());
    TemperatureChart chart = pictures.temperatures(row);
    picture(
        chart,
        chart::heightFor,
        "The animal's temperature from sealing to opening and somewhat beyond."
            + (sun ? " Sunshine warms the box above the air temperature that is drawn." : ""));
  }

  /** What is told of a packing, and in short of the same without its warmers. */
  private void packing(Judged row, boolean shown) {
    open(row.label() + ": " + row.verdict().level().words());
    sentences(row, "");
    rows.stream()
        .filter(each -> each.stripped() && each.parcel().name().equals(row.parcel().name()))
        .forEach(each -> sentences(each, "Without a warmer: "));
    if (!shown) {
      temperatures(row);
    }
    if (withPictures) {
      insideAndHeat(row);
    }
    shares(row);
    close();
  }

  private void insideAndHeat(Judged row) {
    SectionSheet sections = pictures.sections(row);
    picture(
        sections,
        sections::heightFor,
        "When a part of the animal is coldest and when one is hottest, with everything as stated;"
            + " what is uncertain is counted in the odds.");
    AirChart air = pictures.air(row);
    picture(
        air,
        air::heightFor,
        "The oxygen that the animal breathes, as at sea level"
            + (row.hasWarmer() ? ", and the heat that the warmer gives" : "")
            + ", with everything as stated.");
    HeatChart heat = Pictures.heat(row);
    picture(heat, heat::heightFor, "Where the heat comes from and where it goes.");
  }

  private void sentences(Judged row, String start) {
    element(
        "p",
        start
            + verdicts.sentence(row.assessment())
            + verdicts.costliest(row).map(sentence -> " " + sentence).orElse(""));
    element(
        "p", climate.warmers(row).map(sentence -> sentence + " ").orElse("") + climate.air(row));
  }

  /** What most of the spread on the side that fails more often comes from. */
  private void shares(Judged row) {
    Optional<StudyResult.Apportioned> apportioned = row.odds().shares(row.isCold());
    if (apportioned.isEmpty()) {
      return;
    }
    List<List<String>> lines = new ArrayList<>();
    for (Share share : apportioned.get().shares()) {
      if (share.total() >= LEAST_SHARE) {
        lines.add(List.of(share.of(), Words.percent(share.total())));
      }
    }
    table(
        new TextTable(
            "What makes one journey "
                + (row.isCold() ? "colder" : "hotter")
                + " than another; "
                + Words.percent(apportioned.get().unexplained())
                + " % stay unexplained; below 1 % left out",
            List.of("what is uncertain", "share [%]"),
            lines));
  }

  private void assumptions() {
    List<String> all = StatedAssumptions.sentences(scenario);
    open("What it rests on: " + all.size() + " assumptions and their sources");
    element("h3", "Filled in where the file says nothing");
    list(StatedAssumptions.presets(all));
    element("h3", "Sources of all other numbers");
    list(StatedAssumptions.others(all));
    close();
  }

  private void computation() {
    open("How it was computed");
    html.append("<ul>\n");
    for (Judged row : rows) {
      HeatLedger ledger = row.planned().ledger();
      element(
          "li",
          row.label()
              + ": "
              + row.planned().engine()
              + "; estimated error of an animal's temperature ± "
              + words.error(row)
              + " ("
              + errorParts(row)
              + "); "
              + row.odds().journeys()
              + " journeys for the odds; heat balance closes to "
              + String.format(Locale.ROOT, "%.0e", Math.abs(ledger.residual()) / ledger.scale())
              + " of all heat moved.");
    }
    html.append(
        "</ul>\n<p class=\"small\">All digits in SI units, with the heat through each face,");
    html.append(
        " what each uncertain quantity does on its own and the coefficients of each part of");
    html.append(" the journey: ");
    link(ComparisonReport.SUMMARY);
    html.append(" and ");
    link(ComparisonReport.HISTORY);
    html.append(" beside this file.</p>\n");
    close();
  }

  private String errorParts(Judged row) {
    NumericalError error = row.assessment().error();
    Figures figures = words.figures();
    return figures.differenceUnit()
        + ": grid "
        + (error.ordered() ? "" : "below ")
        + figures.hundredths(error.grid())
        + ", holding coefficients "
        + figures.hundredths(error.holding())
        + ", modes "
        + figures.hundredths(error.reduction())
        + ", modes for many journeys "
        + figures.hundredths(error.condensation());
  }

  private void link(String file) {
    html.append("<a href=\"").append(file).append("\">").append(file).append("</a>");
  }

  private void picture(Picture picture, IntUnaryOperator heightFor, String caption) {
    html.append("<figure>\n");
    drawing("wide", picture.svg(WIDE, heightFor.applyAsInt(WIDE)));
    drawing("narrow", picture.svg(NARROW, heightFor.applyAsInt(NARROW)));
    element("figcaption", caption);
    html.append("</figure>\n");
  }

  private void drawing(String kind, String svg) {
    html.append("<div class=\"").append(kind).append("\">");
    html.append(svg.substring(svg.indexOf("<svg"))).append("</div>\n");
  }

  private void element(String name, String text) {
    html.append('<').append(name).append('>').append(Markup.escaped(text));
    html.append("</").append(name).append(">\n");
  }

  private void list(List<String> items) {
    html.append("<ul>\n");
    items.forEach(item -> element("li", item));
    html.append("</ul>\n");
  }
}
