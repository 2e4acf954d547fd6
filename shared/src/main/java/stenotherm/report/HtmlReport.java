package stenotherm.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stenotherm.conduction.HeatLedger;
import stenotherm.decision.NumericalError;
import stenotherm.decision.Remedy;
import stenotherm.picture.AirChart;
import stenotherm.picture.HeatChart;
import stenotherm.picture.SectionSheet;
import stenotherm.picture.TemperatureChart;
import stenotherm.scenario.Scenario;
import stenotherm.study.Share;
import stenotherm.study.StudyResult;
import stenotherm.words.Figures;

/** The report as one page: the answer, a table, a picture and the cautions; all else is folded. */
final class HtmlReport {
  /** Shares below this have no line. */
  private static final double LEAST_SHARE = 0.01;

  private final ComparisonReport report;
  private final boolean withPictures;
  private final Scenario scenario;
  private final List<Judged> rows;
  private final Words words;
  private final VerdictWords verdicts;
  private final ClimateWords climate;
  private final Tables tables;
  private final Pictures pictures;
  private final AnswerPage page;

  private HtmlReport(ComparisonReport report, boolean withPictures) {
    this.report = report;
    this.withPictures = withPictures;
    this.scenario = report.scenario();
    this.rows = report.rows();
    this.words = new Words(scenario);
    this.verdicts = new VerdictWords(words);
    this.climate = new ClimateWords(words);
    this.tables = new Tables(words, rows);
    this.pictures = new Pictures(words);
    this.page = new AnswerPage(scenario.title(), verdicts.advice(rows));
  }

  static byte[] of(ComparisonReport report, boolean withPictures) {
    return new HtmlReport(report, withPictures).write();
  }

  private byte[] write() {
    Judged best = Judged.best(rows);
    verdicts.explanation(report).forEach(page::sentence);
    page.deferral().table(tables.overview());
    temperatures(best);
    page.cautions(Cautions.of(report));
    report
        .changes()
        .ifPresent(
            changes ->
                page.folded(
                    "What would help?",
                    folded -> {
                      folded.table(tables.changes(changes, verdicts));
                      tables.lesserChanges(changes.tried(), verdicts).ifPresent(folded::table);
                      changes.tried().best().ifPresent(change -> paste(folded, change.remedy()));
                    }));
    rows.stream().filter(row -> !row.stripped()).forEach(row -> packing(row, row.equals(best)));
    page.folded("The way, and the air on it", folded -> folded.table(tables.way()));
    page.folded("Size, mass and warmers", folded -> folded.table(tables.parcels()));
    page.folded(
        "The odds in more detail",
        folded -> {
          folded.table(tables.odds()).table(tables.temperatures());
          tables.animals().ifPresent(folded::table);
          tables.packs().ifPresent(folded::table);
        });
    String late = "How much longer could each part last?";
    tables.legDelays().ifPresent(table -> page.folded(late, folded -> folded.table(table)));
    tables.anyLegMayBeLate().ifPresent(any -> page.folded(late, folded -> folded.sentence(any)));
    assumptions();
    page.folded("How it was computed", this::computation);
    return page.words(Glossary.WORDS).html();
  }

  private void paste(AnswerPage folded, Remedy change) {
    Optional<PastedShipment> pasted = report.pasted(change);
    folded.sentence(pasted.isPresent() ? PastedShipment.TO_COMPUTE : PastedShipment.BY_HAND);
    pasted.ifPresent(folded::pasted);
    report.cautionsOf(change).forEach(folded::sentence);
  }

  private void temperatures(Judged row) {
    if (!withPictures) {
      return;
    }
    boolean sun = scenario.journey().legs().stream().anyMatch(leg -> leg.surroundings().hasSun());
    TemperatureChart chart = pictures.temperatures(row);
    page.picture(
        chart,
        chart::heightFor,
        "The animal's temperature from sealing to opening and somewhat beyond."
            + (sun ? " Sunshine warms the box above the air temperature that is drawn." : ""));
  }

  /** What is told of a packing, and in short of the same without its warmers. */
  private void packing(Judged row, boolean shown) {
    page.folded(
        row.label() + ": " + row.verdict().level().words(),
        folded -> {
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
        });
  }

  private void insideAndHeat(Judged row) {
    SectionSheet sections = pictures.sections(row);
    page.picture(
        sections,
        sections::heightFor,
        "When a part of the animal is coldest and when one is hottest, with everything as stated;"
            + " what is uncertain is counted in the odds.");
    AirChart air = pictures.air(row);
    page.picture(
        air,
        air::heightFor,
        "The oxygen that the animal breathes, as at sea level"
            + (row.hasWarmer() ? ", and the heat that the warmer gives" : "")
            + ", with everything as stated.");
    HeatChart heat = Pictures.heat(row);
    page.picture(heat, heat::heightFor, "Where the heat comes from and where it goes.");
  }

  private void sentences(Judged row, String start) {
    page.sentence(
        start
            + verdicts.sentence(row.assessment())
            + verdicts.costliest(row).map(sentence -> " " + sentence).orElse(""));
    page.sentence(
        climate.warmers(row).map(sentence -> sentence + " ").orElse("") + climate.air(row));
  }

  /** What most of the spread on the side that fails more often comes from. */
  private void shares(Judged row) {
    Optional<StudyResult.Apportioned> apportioned = row.assessment().shares();
    if (apportioned.isEmpty()) {
      return;
    }
    List<List<String>> lines = new ArrayList<>();
    for (Share share : apportioned.get().shares()) {
      if (share.total() >= LEAST_SHARE) {
        lines.add(List.of(share.of(), Words.percent(share.total())));
      }
    }
    page.table(
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
    page.folded(
        "What it rests on: " + all.size() + " assumptions and their sources",
        folded ->
            folded
                .subheading("Filled in where the file says nothing")
                .list(StatedAssumptions.presets(all))
                .subheading("Sources of all other numbers")
                .list(StatedAssumptions.others(all)));
  }

  private void computation(AnswerPage folded) {
    List<String> items = new ArrayList<>();
    for (Judged row : rows) {
      HeatLedger ledger = row.planned().ledger();
      items.add(
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
    folded
        .list(items)
        .files(
            "All digits in SI units, with the heat through each face, what each uncertain quantity"
                + " does on its own and the coefficients of each part of the journey",
            List.of(ComparisonReport.SUMMARY, ComparisonReport.HISTORY));
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
}
