package stenotherm.report;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import stenotherm.base.MessageText;

/**
 * A table of texts.
 *
 * @param caption what it shows, without a full stop
 * @param head names of the columns; the first column names the rows
 * @param lines cells, line by line
 */
record TextTable(String caption, List<String> head, List<List<String>> lines) {
  /** What a console shows in a line, unless a word is longer [characters]. */
  private static final int WIDTH = 100;

  /** In which heads fit. */
  private static final int HEAD_ROWS = 2;

  private static final String GAP = "  ";

  TextTable {
    head = List.copyOf(head);
    lines = List.copyOf(lines);
  }

  /** Prints the table for a console, after an empty line; what is too wide goes on below. */
  void print(PrintWriter out) {
    out.println();
    ConsoleText.line(out, caption + ":");
    List<List<String>> all = new ArrayList<>();
    all.add(shown(head));
    lines.forEach(line -> all.add(shown(line)));
    int[] widths = widths(all);
    printed(all.get(0), widths, out);
    printed(Arrays.stream(widths).mapToObj("-"::repeat).toList(), widths, out);
    all.subList(1, all.size()).forEach(line -> printed(line, widths, out));
  }

  /**
   * As wide as their cells, and as their heads where there is room; where there is not, the widest
   * are made narrower, but never narrower than a word.
   */
  private static int[] widths(List<List<String>> all) {
    int columns = all.get(0).size();
    int[] least = new int[columns];
    int[] widths = new int[columns];
    for (int column = 0; column < columns; column++) {
      for (List<String> line : all) {
        for (String word : line.get(column).split(" ", -1)) {
          least[column] = Math.max(least[column], word.length());
        }
      }
      while (wrapped(all.get(0).get(column), least[column]).size() > HEAD_ROWS) {
        least[column]++;
      }
      widths[column] = least[column];
      for (List<String> line : all.subList(1, all.size())) {
        widths[column] = Math.max(widths[column], line.get(column).length());
      }
    }
    int left = WIDTH - GAP.length() * (columns - 1) - Arrays.stream(widths).sum();
    for (int column = 0; left > 0 && column < columns; column++) {
      int wanted = Math.max(0, all.get(0).get(column).length() - widths[column]);
      int more = Math.min(left, wanted);
      widths[column] += more;
      left -= more;
    }
    for (; left < 0; left++) {
      int widest = -1;
      for (int column = 0; column < columns; column++) {
        boolean mayShrink = widths[column] > least[column];
        if (mayShrink && (widest < 0 || widths[column] > widths[widest])) {
          widest = column;
        }
      }
      if (widest < 0) {
        return widths;
      }
      widths[widest]--;
    }
    return widths;
  }

  private static void printed(List<String> cells, int[] widths, PrintWriter out) {
    List<List<String>> columns = new ArrayList<>();
    for (int column = 0; column < widths.length; column++) {
      columns.add(wrapped(cells.get(column), widths[column]));
    }
    int height = columns.stream().mapToInt(List::size).max().orElse(0);
    for (int row = 0; row < height; row++) {
      StringBuilder line = new StringBuilder();
      for (int column = 0; column < widths.length; column++) {
        List<String> texts = columns.get(column);
        String text = row < texts.size() ? texts.get(row) : "";
        line.append(text).append(" ".repeat(widths[column] - text.length())).append(GAP);
      }
      out.println(line.toString().replace('\u00a0', ' ').stripTrailing());
    }
  }

  private static List<String> wrapped(String text, int width) {
    List<String> rows = new ArrayList<>();
    StringBuilder row = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      if (!row.isEmpty() && row.length() + 1 + word.length() > width) {
        rows.add(row.toString());
        row.setLength(0);
      }
      row.append(row.isEmpty() ? "" : " ").append(word);
    }
    rows.add(row.toString());
    return rows;
  }

  private static List<String> shown(List<String> texts) {
    return texts.stream().map(TextTable::shown).toList();
  }

  /** Names come from files: what would steer a terminal is written out. */
  private static String shown(String text) {
    return Words.unbroken(MessageText.of(text, Integer.MAX_VALUE));
  }
}
