package stenotherm.report;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stenotherm.decision.Remedy;
import stenotherm.scenario.Scenario;
import stenotherm.words.Figures;

/**
 * The report of a comparison of packings: as text for a console, and as three files, a page for
 * people and two files with all digits for programs.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 *
 * @param scenario what was compared
 * @param rows a row for each packing in the scenario's order; where it has warmers, one more
 *     without, unless another packing is that already
 * @param changes where no packing likely holds, the changes that were tried
 */
public record ComparisonReport(Scenario scenario, List<Judged> rows, Optional<Improvement> changes)
    implements Answer {
  /** The page; it works offline and without scripts. */
  public static final String PAGE = "report.html";

  /** All numbers of the comparison in SI units, as JSON. */
  public static final String SUMMARY = "summary.json";

  /** Temperatures over time in SI units, as CSV. */
  public static final String HISTORY = "history.csv";

  /** Names of all files, the page first. */
  public static final List<String> FILES = List.of(PAGE, SUMMARY, HISTORY);

  /** Copies the rows. */
  public ComparisonReport {
    rows = List.copyOf(rows);
  }

  /** The packing that a change is made on. */
  private Judged changed() {
    return changes.orElseThrow().row();
  }

  /** The change that helps most, to paste; empty if a file needs more than names for it. */
  Optional<PastedShipment> pasted(Remedy change) {
    Judged row = changed();
    return PastedShipment.of(change, row.parcel(), row.planned().journey(), scenario);
  }

  /** What the change that helps most brings with it, in the scenario's units. */
  List<String> cautionsOf(Remedy change) {
    Judged row = changed();
    Figures figures = new Figures(scenario.units());
    return PastedShipment.newCautions(change, row.parcel(), row.planned().journey()).stream()
        .map(caution -> Cautions.plain(caution, figures))
        .toList();
  }

  @Override
  public Map<String, byte[]> files(boolean pictures) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put(PAGE, HtmlReport.of(this, pictures));
    files.put(SUMMARY, json().getBytes(StandardCharsets.UTF_8));
    files.put(HISTORY, DataFiles.history(this));
    return files;
  }

  @Override
  public String json() {
    return DataFiles.summary(this);
  }

  @Override
  public void print(PrintWriter out) {
    ConsoleReport.print(this, out);
  }
}
