package stenotherm.validation.benchmark;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import stenotherm.validation.studies.ExhibitSheet;
import stenotherm.validation.studies.Findings.Exhibit;

/** Shows exhibits of a report on a console. */
record PlainText(PrintWriter console) implements ExhibitSheet {
  private static final String GAP = "  ";

  /** Prints exhibits, each after an empty line. */
  static void print(Exhibit exhibit, PrintWriter console) {
    exhibit.showOn(new PlainText(console));
  }

  @Override
  public void paragraph(String text) {
    console.println();
    console.println(text);
  }

  @Override
  public void table(List<String> header, List<List<String>> body) {
    console.println();
    List<List<String>> rows = new ArrayList<>();
    rows.add(header);
    rows.addAll(body);
    int[] width = new int[header.size()];
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
