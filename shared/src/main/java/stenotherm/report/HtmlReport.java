package stenotherm.report;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import stenotherm.base.Face;
import stenotherm.conduction.HeatLedger;
import stenotherm.decision.NumericalError;
import stenotherm.decision.Sensitivity;
import stenotherm.decision.Verdict;
import stenotherm.picture.Picture;
import stenotherm.picture.SectionSheet;
import stenotherm.scenario.Scenario;
import stenotherm.study.Share;
import stenotherm.study.StudyResult;
import stenotherm.transit.LegCoefficients;
import stenotherm.words.FaceNames;
import stenotherm.words.Figures;
import stenotherm.words.Markup;

/** The report as one page that works offline and without scripts. */
final class HtmlReport {
  /** Shares below this have no line. */
  private static final double LEAST_SHARE = 0.01;

  private static final int WIDTH = 980;
  private static final int SECTIONS_WIDTH = 1100;

  /** The start of a cell with a number, aligned to the right. */
  private static final String NUMBER = "<td class=\"n\">";

  private static final String STYLE =
      """
      body { font: 16px/1.5 system-ui, sans-serif; color: #1b1b1b; background: #fff;
        max-width: 1040px; margin: 0 auto; padding: 1rem 1.25rem 4rem; }
      h1 { font-size: 1.6rem; line-height: 1.25; margin-bottom: .3rem; }
      h2 { margin-top: 2.6rem; border-bottom: 1px solid #bbb; font-size: 1.3rem; }
      h3 { margin-top: 1.6rem; font-size: 1.05rem; }
      .answer { font-size: 1.2rem; font-weight: 600; margin: .6rem 0; }
      .cautions { border: 2px solid #1b1b1b; border-left-width: 10px; padding: .4rem 1rem; }
      summary { cursor: pointer; }
      .wide { overflow-x: auto; }
      table { border-collapse: collapse; font-size: .88rem; }
      caption { text-align: left; padding: .3rem 0; color: #444; }
      th, td { border-bottom: 1px solid #ccc; padding: .3rem .6rem; text-align: left;
        vertical-align: top; }
      thead th { border-bottom: 2px solid #1b1b1b; }
      td.n { text-align: right; white-space: nowrap; font-variant-numeric: tabular-nums; }
      figure { margin: 1rem 0; }
      svg { max-width: 100%; height: auto; display: block; }
      figcaption, .small { color: #444; font-size: .88rem; }
      @media print { body { max-width: none; } figure, tr { break-inside: avoid; } }
      """;

  private final Scenario scenario;
  private final List<Judged> rows;
  private final Words words;
  private final VerdictWords verdicts;
  private final Tables tables;
  private final Pictures pictures;
  private final StringBuilder html = new StringBuilder();

  private HtmlReport(Scenario scenario, List<Judged> rows) {
    this.scenario = scenario;
    this.rows = rows;
    this.words = new Words(new Figures(scenario.units()));
    this.verdicts = new VerdictWords(words.figures());
    this.tables = new Tables(words, rows);
    this.pictures = new Pictures(words);
  }

  static byte[] of(Scenario scenario, List<Judged> rows) {
    return new HtmlReport(scenario, rows).write().getBytes(StandardCharsets.UTF_8);
  }

  private String write() {
    html.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
    html.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
    html.append("<title>").append(Markup.escaped(scenario.title())).append("</title>\n");
    html.append("<style>\n").append(STYLE).append("</style>\n</head>\n<body>\n<main>\n");
    answer();
    comparison();
    rows.stream()
        .filter(row -> row.hasWarmer() || row.parcel().warmers().equals(original(row)))
        .forEach(this::packing);
    html.append("<section class=\"cautions\" id=\"cautions\">\n");
    element("h2", "Cautions");
    list(Cautions.of(rows));
    html.append("</section>\n");
    assumptions();
    computation();
    html.append("</main>\n</body>\n</html>\n");
    return html.toString();
  }

  private void answer() {
    element("h1", scenario.title());
    html.append("<p class=\"answer\">")
        .append(Markup.escaped(verdicts.headline(rows)))
        .append("</p>\n");
    html.append("<ul>\n");
    for (Judged row : rows) {
      html.append("<li><strong>").append(Markup.escaped(row.label())).append(": ");
      html.append(Markup.escaped(row.verdict().level().words())).append(".</strong> ");
      html.append(Markup.escaped(verdicts.sentence(row.assessment())));
      verdicts
          .costliest(row)
          .ifPresent(sentence -> html.append(' ').append(Markup.escaped(sentence)));
      html.append("</li>\n");
    }
    html.append("</ul>\n");
    verdicts.warmerEffects(rows).forEach(sentence -> element("p", sentence));
    html.append("<p><strong>").append(Markup.escaped(Verdict.DEFER)).append("</strong> ");
    html.append("There are <a href=\"#cautions\">more cautions</a> below.</p>\n");
  }

  /** The warmers that the scenario gives the packing of a row. */
  private List<?> original(Judged row) {
    return scenario.packings().stream()
        .filter(packing -> packing.name().equals(row.parcel().name()))
        .findFirst()
        .orElseThrow()
        .warmers();
  }

  private void comparison() {
    element("h2", "Packings side by side");
    picture(
        pictures.margins(rows),
        WIDTH,
        Pictures.marginsHeight(rows),
        "Margins to the alarm band until the planned opening.");
    table(tables.odds());
    table(tables.temperatures());
    table(tables.margins());
    tables.animals().ifPresent(this::table);
    tables.packs().ifPresent(this::table);
    tables
        .legDelays()
        .ifPresent(
            table -> {
              element("h2", "How late may it be?");
              table(table);
            });
  }

  private void table(TextTable table) {
    table(table, "<td>");
  }

  private void table(TextTable table, String cell) {
    html.append("<div class=\"wide\"><table>\n<caption>").append(Markup.escaped(table.caption()));
    html.append(".</caption>\n<thead><tr>");
    for (String name : table.head()) {
      html.append("<th scope=\"col\">").append(Markup.escaped(name)).append("</th>");
    }
    html.append("</tr></thead>\n<tbody>\n");
    for (List<String> line : table.lines()) {
      html.append("<tr><th scope=\"row\">").append(Markup.escaped(line.get(0))).append("</th>");
      for (String text : line.subList(1, line.size())) {
        html.append(cell).append(Markup.escaped(text)).append("</td>");
      }
      html.append("</tr>\n");
    }
    html.append("</tbody></table></div>\n");
  }

  private void packing(Judged row) {
    element("h2", row.label());
    element("p", verdicts.sentence(row.assessment()));
    picture(
        pictures.temperatures(row),
        WIDTH,
        480,
        "Temperature of the animal and of the air around the parcel over time. In nine of ten"
            + " journeys the animal's temperature lies within the shaded band at any one time."
            + (inTheSun()
                ? " Sunshine warms the box above the air temperature that is drawn."
                : ""));
    SectionSheet sections = pictures.sections(row);
    picture(
        sections,
        SECTIONS_WIDTH,
        sections.heightFor(SECTIONS_WIDTH),
        "Sections at the coldest and at the hottest moment before opening, nominal run.");
    picture(
        Pictures.heat(row),
        WIDTH,
        Pictures.heatHeight(row),
        "Where the heat comes from and where it goes.");
    faces(row);
    shares(row);
    sensitivities(row);
    if (row.hasWarmer()) {
      html.append("<p><strong>");
      html.append(Markup.escaped(stenotherm.warmer.WarmerClass.AIR_CAUTION));
      html.append("</strong></p>\n");
    }
  }

  private boolean inTheSun() {
    return scenario.journey().legs().stream().anyMatch(leg -> leg.surroundings().hasSun());
  }

  private void faces(Judged row) {
    element("h3", "Heat through the faces");
    List<List<String>> lines = new ArrayList<>();
    for (Face face : Face.values()) {
      lines.add(
          List.of(
              face.words(),
              watts(FaceHeat.mean(row, face)),
              watts(FaceHeat.atTightest(row, face))));
    }
    table(
        new TextTable(
            "In W, positive into the parcel, nominal run",
            List.of("face", "mean until opening", "at the tightest moment"),
            lines),
        NUMBER);
  }

  private static String watts(double value) {
    return String.format(Locale.ROOT, "%.2f", Math.rint(100 * value) / 100 + 0.0);
  }

  /** What most of the spread of the tighter margin comes from. */
  private void shares(Judged row) {
    Optional<StudyResult.Apportioned> apportioned = row.odds().shares(row.isCold());
    if (apportioned.isEmpty()) {
      return;
    }
    element("h3", "What the spread of the margin comes from");
    List<List<String>> lines = new ArrayList<>();
    for (Share share : apportioned.get().shares()) {
      if (share.total() >= LEAST_SHARE) {
        lines.add(
            List.of(share.of(), Words.percent(share.firstOrder()), Words.percent(share.total())));
      }
    }
    table(
        new TextTable(
            "Share in the variance of the margin on the "
                + row.side().words()
                + ", in %, by a fitted function that leaves "
                + Words.percent(apportioned.get().unexplained())
                + " % unexplained; below 1 % left out",
            List.of("uncertain quantity", "alone", "with what it does together with others"),
            lines),
        NUMBER);
  }

  private void sensitivities(Judged row) {
    if (row.assessment().sensitivities().isEmpty()) {
      return;
    }
    element("h3", "What each uncertain quantity does on its own");
    Figures figures = words.figures();
    List<List<String>> lines = new ArrayList<>();
    for (Sensitivity sensitivity : row.assessment().sensitivities()) {
      lines.add(
          List.of(
              sensitivity.factor().words(),
              figures.change(sensitivity.cold().atLow()),
              figures.change(sensitivity.cold().atHigh()),
              figures.change(sensitivity.hot().atLow()),
              figures.change(sensitivity.hot().atHigh())));
    }
    table(
        new TextTable(
            "Change of the margin in "
                + figures.differenceUnit()
                + " when one quantity goes to an end of its range and all others stay nominal;"
                + " computed on a coarser grid",
            List.of("quantity", "cold, low end", "cold, high end", "hot, low end", "hot, high end"),
            lines),
        NUMBER);
  }

  private void assumptions() {
    element("h2", "Assumptions and their sources");
    List<String> all = StatedAssumptions.sentences(scenario);
    element("h3", "Presets for what the file leaves out");
    list(StatedAssumptions.presets(all));
    element("h3", "Sources of all other numbers");
    list(StatedAssumptions.others(all));
  }

  private void computation() {
    element("h2", "How it was computed");
    html.append("<ul>\n");
    for (Judged row : rows) {
      HeatLedger ledger = row.planned().ledger();
      element(
          "li",
          row.label()
              + ": "
              + row.planned().engine()
              + "; estimated error of an animal's temperature ± "
              + words.errorWithUnit(row)
              + " ("
              + errorParts(row)
              + "); "
              + row.odds().journeys()
              + " journeys for the odds; heat balance closes to "
              + String.format(Locale.ROOT, "%.0e", Math.abs(ledger.residual()) / ledger.scale())
              + " of all heat moved.");
    }
    html.append("</ul>\n<details>\n<summary>Coefficients of each leg</summary>\n");
    for (Judged row : rows) {
      table(coefficients(row));
    }
    html.append("</details>\n<p class=\"small\">All digits, in SI units: ");
    link(ComparisonReport.SUMMARY);
    html.append(" and ");
    link(ComparisonReport.HISTORY);
    html.append(" beside this file.</p>\n");
  }

  private static String errorParts(Judged row) {
    NumericalError error = row.assessment().error();
    return String.format(
        Locale.ROOT,
        "K: grid %s%.2f, holding coefficients %.2f, modes %.3f, modes for many journeys %.3f",
        error.ordered() ? "" : "below ",
        error.grid(),
        error.holding(),
        error.reduction(),
        error.condensation());
  }

  private static TextTable coefficients(Judged row) {
    List<List<String>> lines = new ArrayList<>();
    for (LegCoefficients leg : row.planned().coefficients()) {
      lines.add(
          List.of(
              row.held().legs().get(leg.leg()).name(),
              listed(leg.surfaces(), "%.1f"),
              listed(leg.conductivities(), "%.4f")));
    }
    return new TextTable(
        row.label() + ", nominal run",
        List.of("leg", "surface coefficients W/(m² K)", "conductivities W/(m K)"),
        lines);
  }

  private static String listed(Map<String, Double> values, String format) {
    return values.entrySet().stream()
        .map(
            each ->
                FaceNames.in(each.getKey())
                    + " "
                    + String.format(Locale.ROOT, format, each.getValue()))
        .collect(Collectors.joining(", "));
  }

  private void link(String file) {
    html.append("<a href=\"").append(file).append("\">").append(file).append("</a>");
  }

  private void picture(Picture picture, int width, int height, String caption) {
    String svg = picture.svg(width, height);
    html.append("<figure>\n").append(svg.substring(svg.indexOf("<svg")));
    html.append("<figcaption>")
        .append(Markup.escaped(caption))
        .append("</figcaption>\n</figure>\n");
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
