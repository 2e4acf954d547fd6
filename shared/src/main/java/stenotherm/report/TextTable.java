package stenotherm.report;

import java.util.List;

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
}
