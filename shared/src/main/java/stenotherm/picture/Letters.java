package stenotherm.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import stenotherm.picture.Canvas.Lettering;

/**
 * Measures and breaks texts by the widths of one font, so that a picture has the same bytes on
 * every machine. The font is a wide one: texts take less room in most others.
 */
final class Letters {
  /** From the space on, as DejaVu Sans 2.37 has them [1/1000 of the letters' size]. */
  private static final int[] PLAIN =
      widths(
          """
          318 401 460 838 636 950 780 275 390 390 500 838 318 361 318 337
          636 636 636 636 636 636 636 636 636 636 337 337 838 838 838 531
          1000 684 686 698 770 632 575 775 752 295 295 656 557 863 748 787
          603 787 695 635 611 732 684 989 685 611 685 390 337 390 838 500
          500 613 635 550 635 615 352 635 634 278 278 579 278 974 634 612
          635 635 411 521 392 634 592 818 592 592 525 636 337 636 838
          """);

  /** The same in bold. */
  private static final int[] BOLD =
      widths(
          """
          348 456 521 838 696 1002 872 306 457 457 523 838 380 415 380 365
          696 696 696 696 696 696 696 696 696 696 400 400 838 838 838 580
          1000 774 762 734 830 683 683 821 837 372 372 775 637 995 837 850
          733 850 770 720 682 812 774 1103 771 724 725 457 365 457 838 500
          500 675 716 593 716 678 435 716 712 343 343 665 343 1042 712 687
          716 716 493 595 478 712 652 924 645 652 582 712 365 712 838
          """);

  private static final char FIRST = ' ';

  /** Width of a character that is not in the tables, and of one that fills a square. */
  private static final int OTHER = 700;

  private static final int SQUARE = 1000;

  private Letters() {}

  private static int[] widths(String table) {
    return Arrays.stream(table.split("\\s+")).mapToInt(Integer::parseInt).toArray();
  }

  /** Width of one line of text [pixel]. */
  static double width(String text, Lettering lettering) {
    int[] widths = lettering.bold() ? BOLD : PLAIN;
    int sum = text.codePoints().map(character -> width(character, widths)).sum();
    return sum * lettering.size() / 1000;
  }

  private static int width(int character, int[] widths) {
    int index = character - FIRST;
    if (index >= 0 && index < widths.length) {
      return widths[index];
    }
    return switch (character) {
      case '°' -> widths['_' - FIRST];
      case '−', '×' -> widths['+' - FIRST];
      default -> character == '…' || Character.isIdeographic(character) ? SQUARE : OTHER;
    };
  }

  private static final Pattern UNIT =
      Pattern.compile("(?:°[CF]?|[CF]°|%|K|mm|cm|in|h|min|d|W|kJ|g|kg|oz|lb|L)(?![\\p{L}\\p{N}])");

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
      int blank = blankBefore(text, end);
      if (blank <= 0) {
        return text.substring(0, firstBlank(text));
      }
      end = blank;
    }
    return text.substring(0, end);
  }

  /** The last blank before a place where a line may end; -1 if there is none. */
  private static int blankBefore(String text, int end) {
    int blank = text.lastIndexOf(' ', end - 1);
    while (blank > 0 && !mayBreak(text, blank)) {
      blank = text.lastIndexOf(' ', blank - 1);
    }
    return blank;
  }

  private static int firstBlank(String text) {
    int blank = text.indexOf(' ');
    while (blank >= 0 && !mayBreak(text, blank)) {
      blank = text.indexOf(' ', blank + 1);
    }
    return blank < 0 ? text.length() : blank;
  }

  /** A number stays with its unit. */
  private static boolean mayBreak(String text, int blank) {
    return blank == 0
        || !Character.isDigit(text.charAt(blank - 1))
        || !UNIT.matcher(text).region(blank + 1, text.length()).lookingAt();
  }
}
