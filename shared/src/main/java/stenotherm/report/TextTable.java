package stenotherm.report;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stenotherm.base.MessageText;

/**
 * A table of texts.
 *
 * @param caption what it shows, without a full stop
 * @param head names of the columns; the first column names the rows
 * @param lines cells, line by line
 */
record TextTable(String caption, List<String> head, List<List<String>> lines) {
  TextTable {
    head = List.copyOf(head);
    lines = List.copyOf(lines);
  }

  /** Prints the table for a console, after an empty line. */
  void print(PrintWriter out) {
    out.println();
    out.println(shown(caption) + ":");
    List<List<String>> all = new ArrayList<>();
    all.add(shown(head));
    lines.forEach(line -> all.add(shown(line)));
    int[] widths =
        IntStream.range(0, head.size())
            .map(column -> all.stream().mapToInt(l -> l.get(column).length()).max().orElse(0))
            .toArray();
    all.add(1, Arrays.stream(widths).mapToObj("-"::repeat).toList());
    for (List<String> line : all) {
      out.println(
          IntStream.range(0, line.size())
              .mapToObj(column -> padded(line.get(column), widths[column]))
              .collect(Collectors.joining("  "))
              .stripTrailing());
    }
  }

  private static List<String> shown(List<String> texts) {
    return texts.stream().map(TextTable::shown).toList();
  }

  /** Names come from files: what would steer a terminal is written out. */
  private static String shown(String text) {
    return MessageText.of(text, Integer.MAX_VALUE);
  }

  private static String padded(String text, int width) {
    return text + " ".repeat(width - text.length());
  }
}
