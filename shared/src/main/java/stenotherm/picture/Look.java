package stenotherm.picture;

import java.util.List;
import java.util.Locale;
import stenotherm.picture.Canvas.Alignment;
import stenotherm.picture.Canvas.Dash;
import stenotherm.picture.Canvas.Lettering;
import stenotherm.words.Figures;
import stenotherm.words.Units;

/**
 * The one look of all pictures.
 *
 * <p>The strong colours are those of Okabe and Ito, Color Universal Design (2008), from memory:
 * chosen there so that readers with any kind of colour vision tell them apart.
 */
final class Look {
  static final Color BLUE = new Color(0, 114, 178);
  static final Color VERMILLION = new Color(213, 94, 0);
  static final Color PURPLE = new Color(204, 121, 167);
  static final Color BLUISH_GREEN = new Color(0, 158, 115);
  static final Color YELLOW = new Color(240, 228, 66);
  static final Color ORANGE = new Color(230, 159, 0);
  static final Color INK = new Color(30, 30, 30);
  static final Color QUIET_INK = new Color(95, 95, 95);
  static final Color GRID = new Color(225, 225, 225);
  static final Color SHADE = new Color(0, 0, 0, 0.11);
  static final Color FAINT_SHADE = new Color(0, 0, 0, 0.035);

  /** Colours of curves in the order of the curves. */
  static final List<Color> CURVE_COLORS =
      List.of(BLUE, VERMILLION, PURPLE, BLUISH_GREEN, INK, ORANGE);

  static final List<Dash> CURVE_DASHES =
      List.of(Dash.SOLID, Dash.LONG, Dash.SHORT, Dash.MIXED, Dash.TWO_DOTS, Dash.DOTTED);

  static final Lettering TITLE = new Lettering(16, INK).inBold();
  static final Lettering SUBTITLE = new Lettering(12, QUIET_INK);
  static final Lettering LABEL = new Lettering(12, INK);
  static final Lettering TICK = new Lettering(11, QUIET_INK);

  /** Space between the picture's edge and anything drawn [pixel]. */
  static final double EDGE = 10;

  private static final double TITLE_LINE = 18;
  private static final double SUBTITLE_LINE = 16;
  private static final int MOST_HEADING_LINES = 5;

  private Look() {}

  /** Writes title and subtitle and returns the height that they take. */
  static double writeHeading(Canvas canvas, String title, String subtitle) {
    double height = headingHeight(canvas.width(), title, subtitle);
    double y = EDGE;
    for (String line : headingLines(canvas.width(), title, TITLE)) {
      y += TITLE_LINE;
      canvas.write(line, new Pixel(EDGE, y - 3), Alignment.START, TITLE);
    }
    for (String line : headingLines(canvas.width(), subtitle, SUBTITLE)) {
      y += SUBTITLE_LINE;
      canvas.write(line, new Pixel(EDGE, y - 3), Alignment.START, SUBTITLE);
    }
    return height;
  }

  /** The height that title and subtitle take in a picture of some width [pixel]. */
  static double headingHeight(double width, String title, String subtitle) {
    return EDGE
        + TITLE_LINE * headingLines(width, title, TITLE).size()
        + SUBTITLE_LINE * headingLines(width, subtitle, SUBTITLE).size()
        + 6;
  }

  private static List<String> headingLines(double width, String text, Lettering lettering) {
    return Letters.wrap(text, width - 2 * EDGE, MOST_HEADING_LINES, lettering);
  }

  /** A temperature on the reader's scale, rounded as people read it, with a real minus sign. */
  static String temperature(double kelvin, Units units) {
    return minus(new Figures(units).temperature(kelvin));
  }

  /** A number with as many decimals as it needs, at most three, with a real minus sign. */
  static String plain(double value) {
    String text = String.format(Locale.ROOT, "%.3f", value).replaceAll("\\.?0+$", "");
    return minus(text.equals("-0") ? "0" : text);
  }

  static String minus(String number) {
    return number.replace('-', '−');
  }
}
