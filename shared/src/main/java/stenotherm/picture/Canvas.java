package stenotherm.picture;

import java.util.List;
import java.util.Locale;
import stenotherm.words.Markup;

/**
 * A surface to draw on, written as SVG 1.1. Texts stay texts, fixed at their start, middle or end,
 * so that they are in place in any sans-serif font.
 */
final class Canvas {
  private static final double HALO_WIDTH = 3;
  private static final Color HALO = new Color(255, 255, 255, 0.88);

  private final int width;
  private final int height;
  private final StringBuilder elements = new StringBuilder();

  Canvas(int width, int height, String title) {
    this.width = width;
    this.height = height;
    elements.append(
        String.format(
            Locale.ROOT,
            """
        <?xml version="1.0" encoding="UTF-8"?>
        <svg xmlns="http://www.w3.org/2000/svg" width="%1$d" height="%2$d" \
        viewBox="0 0 %1$d %2$d" role="img" font-family="sans-serif">
        <title>%3$s</title>
        <rect width="%1$d" height="%2$d" fill="#ffffff"/>
        """,
            width,
            height,
            Markup.escaped(title)));
  }

  /** How a line is drawn. */
  record Pen(Color color, double width, Dash dash) {
    Pen(Color color, double width) {
      this(color, width, Dash.SOLID);
    }
  }

  /** Line patterns, which tell lines apart without colour. */
  enum Dash {
    SOLID(""),
    LONG("9 4"),
    SHORT("4 3"),
    DOTTED("1.5 3"),
    MIXED("9 3 2 3"),
    TWO_DOTS("9 3 2 3 2 3");

    private final String lengths;

    Dash(String lengths) {
      this.lengths = lengths;
    }
  }

  /** The part of a text that its point fixes. */
  enum Alignment {
    START("start"),
    MIDDLE("middle"),
    END("end");

    private final String word;

    Alignment(String word) {
      this.word = word;
    }
  }

  /**
   * How a text looks.
   *
   * @param size height of the letters' body [pixel]
   * @param bold whether in bold
   * @param color the letters' colour
   * @param halo whether the letters have a light rim, for text upon a drawing
   * @param upwards whether the text runs from the bottom up
   */
  record Lettering(double size, boolean bold, Color color, boolean halo, boolean upwards) {
    Lettering(double size, Color color) {
      this(size, false, color, false, false);
    }

    Lettering inBold() {
      return new Lettering(size, true, color, halo, upwards);
    }

    Lettering withHalo() {
      return new Lettering(size, bold, color, true, upwards);
    }

    Lettering inColor(Color other) {
      return new Lettering(size, bold, other, halo, upwards);
    }

    Lettering runningUpwards() {
      return new Lettering(size, bold, color, halo, true);
    }
  }

  int width() {
    return width;
  }

  int height() {
    return height;
  }

  void fill(Area area, Color color) {
    rectangle(area);
    paint("fill", color);
    end();
  }

  void outline(Area area, Pen pen) {
    rectangle(area);
    pen(pen);
    end();
  }

  private void rectangle(Area area) {
    elements.append("<rect");
    attribute("x", area.left());
    attribute("y", area.top());
    attribute("width", area.width());
    attribute("height", area.height());
  }

  /** Draws the ellipse that touches an area from inside. */
  void ellipse(Area area, Pen pen) {
    elements.append("<ellipse");
    attribute("cx", area.middle().x());
    attribute("cy", area.middle().y());
    attribute("rx", area.width() / 2);
    attribute("ry", area.height() / 2);
    pen(pen);
    end();
  }

  /** Draws a filled circle with a rim. */
  void dot(Pixel middle, double radius, Color color, Pen rim) {
    elements.append("<circle");
    attribute("cx", middle.x());
    attribute("cy", middle.y());
    attribute("r", radius);
    elements.append(" stroke-width=\"").append(number(rim.width())).append('"');
    paint("stroke", rim.color());
    paint("fill", color);
    end();
  }

  void line(double x1, double y1, double x2, double y2, Pen pen) {
    line(List.of(new Pixel(x1, y1), new Pixel(x2, y2)), pen);
  }

  /** Joins points by straight lines. */
  void line(List<Pixel> points, Pen pen) {
    lines(List.of(points), pen);
  }

  void lines(List<List<Pixel>> lines, Pen pen) {
    elements.append("<path d=\"");
    lines.forEach(points -> path(points, ""));
    elements.append("\" stroke-linejoin=\"round\"");
    pen(pen);
    end();
  }

  /** Fills what is within an odd number of closed lines. */
  void fill(List<List<Pixel>> loops, Color color) {
    elements.append("<path d=\"");
    loops.forEach(points -> path(points, "Z"));
    elements.append("\" fill-rule=\"evenodd\"");
    paint("fill", color);
    end();
  }

  private void path(List<Pixel> points, String last) {
    for (int i = 0; i < points.size(); i++) {
      elements.append(i == 0 ? 'M' : i == 1 ? 'L' : ' ');
      elements.append(number(points.get(i).x())).append(' ').append(number(points.get(i).y()));
    }
    elements.append(last);
  }

  /** Writes one line of text whose start, middle or end stands on a point. */
  void write(String text, Pixel place, Alignment alignment, Lettering lettering) {
    if (lettering.halo()) {
      // An element of its own: not every reader knows how to paint a rim behind the letters.
      text(place, alignment, lettering);
      elements.append(" stroke-linejoin=\"round\" aria-hidden=\"true\"");
      attribute("stroke-width", HALO_WIDTH);
      paint("stroke", HALO);
      paint("fill", HALO);
      elements.append('>').append(Markup.escaped(text)).append("</text>\n");
    }
    text(place, alignment, lettering);
    paint("fill", lettering.color());
    elements.append('>').append(Markup.escaped(text)).append("</text>\n");
  }

  private void text(Pixel place, Alignment alignment, Lettering lettering) {
    elements.append("<text");
    attribute("x", place.x());
    attribute("y", place.y());
    attribute("font-size", lettering.size());
    if (lettering.bold()) {
      elements.append(" font-weight=\"bold\"");
    }
    if (alignment != Alignment.START) {
      elements.append(" text-anchor=\"").append(alignment.word).append('"');
    }
    if (lettering.upwards()) {
      elements.append(" transform=\"rotate(-90 ").append(number(place.x())).append(' ');
      elements.append(number(place.y())).append(")\"");
    }
  }

  private void attribute(String name, double value) {
    elements.append(' ').append(name).append("=\"").append(number(value)).append('"');
  }

  private void paint(String attribute, Color color) {
    elements.append(' ').append(attribute).append("=\"").append(color.hex()).append('"');
    if (color.opacity() < 1) {
      attribute(attribute + "-opacity", color.opacity());
    }
  }

  private void pen(Pen pen) {
    elements.append(" fill=\"none\"");
    attribute("stroke-width", pen.width());
    if (pen.dash() != Dash.SOLID) {
      elements.append(" stroke-dasharray=\"").append(pen.dash().lengths).append('"');
    }
    paint("stroke", pen.color());
  }

  private void end() {
    elements.append("/>\n");
  }

  /** A hundredth of a pixel is finer than any reader shows. */
  private static String number(double value) {
    long hundredths = Math.round(value * 100);
    String sign = hundredths < 0 ? "-" : "";
    long whole = Math.abs(hundredths) / 100;
    long rest = Math.abs(hundredths) % 100;
    if (rest == 0) {
      return sign + whole;
    }
    String digits = rest < 10 ? "0" + rest : rest % 10 == 0 ? "" + rest / 10 : "" + rest;
    return sign + whole + "." + digits;
  }

  String svg() {
    return elements + "</svg>\n";
  }
}
