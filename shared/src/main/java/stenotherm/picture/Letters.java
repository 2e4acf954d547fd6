package stenotherm.picture;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.ArrayList;
import java.util.List;
import stenotherm.picture.Canvas.Lettering;

/**
 * Measures and breaks texts. Uses the logical sans-serif font, the only one that every Java runtime
 * has.
 */
final class Letters {
  static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);

  private Letters() {}

  static Font font(Lettering lettering) {
    return new Font(Font.SANS_SERIF, lettering.bold() ? Font.BOLD : Font.PLAIN, 1)
        .deriveFont((float) lettering.size());
  }

  /** Width of one line of text [pixel]. */
  static double width(String text, Lettering lettering) {
    return font(lettering).createGlyphVector(CONTEXT, text).getLogicalBounds().getWidth();
  }

  /** Shortens a text to a width. */
  static String fit(String text, double width, Lettering lettering) {
    if (text.isEmpty() || width(text, lettering) <= width) {
      return text;
    }
    int length = text.length();
    String shorter;
    do {
      length = text.offsetByCodePoints(length, -1);
      shorter = text.substring(0, length).stripTrailing() + "…";
    } while (length > 0 && width(shorter, lettering) > width);
    return length > 0 ? shorter : "";
  }

  /** Breaks a text between words into at most some lines; what is left over is shortened. */
  static List<String> wrap(String text, double width, int mostLines, Lettering lettering) {
    List<String> lines = new ArrayList<>();
    String rest = text.strip();
    while (!rest.isEmpty() && lines.size() < mostLines) {
      String line = lines.size() == mostLines - 1 ? rest : firstLine(rest, width, lettering);
      lines.add(fit(line, width, lettering));
      rest = rest.substring(line.length()).strip();
    }
    return lines;
  }

  private static String firstLine(String text, double width, Lettering lettering) {
    int end = text.length();
    while (width(text.substring(0, end), lettering) > width) {
      int blank = text.lastIndexOf(' ', end - 1);
      if (blank <= 0) {
        int firstBlank = text.indexOf(' ');
        return firstBlank < 0 ? text : text.substring(0, firstBlank);
      }
      end = blank;
    }
    return text.substring(0, end);
  }
}
