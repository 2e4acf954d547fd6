package stenotherm.report;

import java.io.PrintWriter;
import java.util.List;
import stenotherm.base.MessageText;

/** Lines for a console. Names come from files: what would steer a terminal is written out. */
final class ConsoleText {
  private ConsoleText() {}

  static void line(PrintWriter out, String text) {
    out.println(MessageText.of(text, Integer.MAX_VALUE));
  }

  /** Begins an answer: what it is about, and the answer itself. */
  static void answer(PrintWriter out, String title, String answer) {
    line(out, title);
    out.println();
    line(out, answer);
  }

  /** A list under its heading, after an empty line. */
  static void list(PrintWriter out, String heading, List<String> items) {
    out.println();
    out.println(heading + ":");
    items.forEach(item -> line(out, "- " + item));
  }
}
