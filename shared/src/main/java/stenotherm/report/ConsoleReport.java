package stenotherm.report;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import stenotherm.decision.ChangesTried;
import stenotherm.decision.Remedy;
import stenotherm.scenario.Scenario;

/** The comparison as text. */
final class ConsoleReport {
  private final ComparisonReport report;
  private final Scenario scenario;
  private final List<Judged> rows;
  private final PrintWriter out;
  private final VerdictWords verdicts;
  private final ClimateWords climate;
  private final Tables tables;

  private ConsoleReport(ComparisonReport report, PrintWriter out) {
    this.report = report;
    this.scenario = report.scenario();
    this.rows = report.rows();
    this.out = out;
    Words words = new Words(scenario);
    this.verdicts = new VerdictWords(words);
    this.climate = new ClimateWords(words);
    this.tables = new Tables(words, rows);
  }

  static void print(ComparisonReport report, PrintWriter out) {
    new ConsoleReport(report, out).print();
  }

  private void print() {
    println(scenario.title());
    out.println();
    verdicts.paragraphs(report).forEach(this::println);
    tables.overview().print(out);
    tables.animals().ifPresent(table -> table.print(out));
    tables.packs().ifPresent(table -> table.print(out));
    report.changes().ifPresent(this::changes);
    tables.parcels().print(out);
    tables.way().print(out);
    out.println();
    for (Judged row : rows) {
      println(row.label() + ": " + row.verdict().level().words() + ".");
      println("  " + verdicts.sentence(row.assessment()));
      climate.warmers(row).ifPresent(sentence -> println("  " + sentence));
      println("  " + climate.air(row));
      verdicts.costliest(row).ifPresent(sentence -> println("  " + sentence));
    }
    ConsoleText.list(out, "Cautions", Cautions.of(report));
    out.println();
    out.println(
        "These results rest on "
            + StatedAssumptions.sentences(scenario).size()
            + " assumptions; the report lists them with their sources.");
  }

  private void changes(Improvement changes) {
    tables.changes(changes, verdicts).print(out);
    tables.lesserChanges(changes.tried(), verdicts).ifPresent(table -> table.print(out));
    changes.tried().best().map(ChangesTried.TriedChange::remedy).ifPresent(this::paste);
  }

  private void paste(Remedy change) {
    out.println();
    Optional<PastedShipment> pasted = report.pasted(change);
    println(pasted.isPresent() ? PastedShipment.TO_COMPUTE : PastedShipment.BY_HAND);
    pasted.ifPresent(shipment -> ConsoleText.pasted(out, shipment));
    report.cautionsOf(change).forEach(caution -> println("- " + caution));
  }

  private void println(String text) {
    ConsoleText.line(out, text);
  }
}
