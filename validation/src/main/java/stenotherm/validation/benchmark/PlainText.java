package stenotherm.validation.benchmark;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import stenotherm.validation.studies.Findings.Exhibit;

/** Shows exhibits of a report on a console. */
final class PlainText {
  private static final String GAP = "  ";

  private PlainText() {}

  /** Prints a paragraph or a table, after an empty line. */
  static void print(Exhibit exhibit, PrintWriter console) {
    console.println();
    if (exhibit instanceof Exhibit.Paragraph text) {
      console.println(text.text());
      return;
    }
    Exhibit.Tabulation table = (Exhibit.Tabulation) exhibit;
    List<List<String>> rows = new ArrayList<>();
    rows.add(table.header());
    rows.addAll(table.rows());
    int[] width = new int[table.header().size()];
    for (List<String> row : rows) {
      for (int column = 0; column < width.length; column++) {
        width[column] = Math.max(width[column], row.get(column).length());
      }
    }
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder();
      for (int column = 0; column < width.length; column++) {
        String cell = row.get(column);
        line.append(cell).append(" ".repeat(width[column] - cell.length())).append(GAP);
      }
      console.println(line.toString().stripTrailing());
    }
  }
}
