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

  /** Lines to copy into a scenario, each under where they go. */
  static void pasted(PrintWriter out, PastedShipment shipment) {
    if (!shipment.journey().isEmpty()) {
      out.println(PastedShipment.UNDER_JOURNEY + ":");
      shipment.journey().lines().forEach(line -> line(out, line));
    }
    if (!shipment.packing().isEmpty()) {
      out.println(PastedShipment.UNDER_PACKINGS + ":");
      shipment.packing().lines().forEach(line -> line(out, line));
    }
  }
}
