package stenotherm.validation.studies;

import java.util.List;

/**
 * What a study found.
 *
 * @param checks reference values with what was computed, at least one
 * @param runs the solver's runs, from coarse to fine; empty for closed forms
 * @param exhibits what the report shows beside the checks
 */
public record Findings(List<Check> checks, List<Cost> runs, List<Exhibit> exhibits) {
  /** Copies the lists. */
  public Findings {
    checks = List.copyOf(checks);
    runs = List.copyOf(runs);
    exhibits = List.copyOf(exhibits);
  }

  /** Findings of a closed form. */
  static Findings of(List<Check> checks) {
    return new Findings(checks, List.of(), List.of());
  }

  /** The same findings with something beside them. */
  Findings with(Exhibit... shown) {
    return new Findings(checks, runs, List.of(shown));
  }

  /**
   * Runs of the solver on one grid.
   *
   * @param cells cells of the grid; of the largest, if there were several
   * @param steps time steps in all; 0 if steady
   * @param seconds wall-clock time [s]
   */
  public record Cost(int cells, long steps, double seconds) {}

  /** Something that the report shows beside the checks. */
  public sealed interface Exhibit {
    /**
     * Shows the exhibit.
     *
     * @param sheet where to
     */
    void showOn(ExhibitSheet sheet);

    /**
     * A paragraph.
     *
     * @param text what it says
     */
    record Paragraph(String text) implements Exhibit {
      @Override
      public void showOn(ExhibitSheet sheet) {
        sheet.paragraph(text);
      }
    }

    /**
     * A table.
     *
     * @param header names of the columns
     * @param rows the rows, each as long as the header
     */
    record Tabulation(List<String> header, List<List<String>> rows) implements Exhibit {
      /** Copies the rows. */
      public Tabulation {
        header = List.copyOf(header);
        rows = rows.stream().map(List::copyOf).toList();
      }

      @Override
      public void showOn(ExhibitSheet sheet) {
        sheet.table(header, rows);
      }
    }
  }
}
