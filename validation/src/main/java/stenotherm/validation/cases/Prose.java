package stenotherm.validation.cases;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Text that comes with the program, in a small part of Markdown: headings, paragraphs, lists and
 * tables; nothing within a line.
 */
final class Prose {
  private Prose() {}

  /**
   * Writes a text on a page.
   *
   * @param name name of the resource
   * @param level level of its first heading
   * @param page the page
   */
  static void write(String name, int level, Page page) {
    // blank lines separate what belongs together
    for (String part : read(name).split("\\R{2,}", -1)) {
      String text = part.strip();
      if (text.startsWith("#")) {
        int depth = text.indexOf(' ');
        page.heading(level + depth - 1, text.substring(depth + 1));
      } else if (text.startsWith("- ")) {
        page.list(Arrays.stream(text.substring(2).split("\\R- ")).map(Prose::oneLine).toList());
      } else if (text.startsWith("|")) {
        table(text, page);
      } else if (!text.isEmpty()) {
        page.paragraph(oneLine(text));
      }
    }
  }

  private static String read(String name) {
    try (InputStream stream = Prose.class.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalStateException("the program comes without " + name);
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  private static String oneLine(String text) {
    return text.replaceAll("\\s+", " ");
  }

  private static void table(String text, Page page) {
    List<List<String>> rows = new ArrayList<>();
    text.lines()
        .map(line -> line.substring(1, line.lastIndexOf('|')))
        .map(line -> Arrays.stream(line.split("\\|")).map(String::strip).toList())
        .forEach(rows::add);
    // the second line only separates the header
    page.table(rows.get(0), rows.subList(2, rows.size()));
  }
}
