package stenotherm.picture;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.Locale;

/**
 * Writes SVG 1.1. Texts stay texts, fixed at their start, middle or end, so that they stand right
 * in whatever sans-serif font the reader has.
 */
final class SvgCanvas implements Canvas {
  private final int width;
  private final int height;
  private final StringBuilder elements = new StringBuilder();

  SvgCanvas(int width, int height, String title) {
    this.width = width;
    this.height = height;
    elements.append(
        """
        <?xml version="1.0" encoding="UTF-8"?>
        <svg xmlns="http://www.w3.org/2000/svg" width="%1$d" height="%2$d" \
        viewBox="0 0 %1$d %2$d" role="img" font-family="sans-serif">
        <title>%3$s</title>
        <rect width="%1$d" height="%2$d" fill="#ffffff"/>
        """
            .formatted(width, height, escaped(title)));
  }

  @Override
  public int width() {
    return width;
  }

  @Override
  public int height() {
    return height;
  }

  @Override
  public void fill(Shape shape, Color color) {
    elements.append("<path d=\"").append(path(shape)).append('"');
    appendPaint("fill", color);
    elements.append("/>\n");
  }

  @Override
  public void fillCell(Rectangle2D cell, Color color) {
    elements.append("<path shape-rendering=\"crispEdges\" d=\"").append(path(cell)).append('"');
    appendPaint("fill", color);
    elements.append("/>\n");
  }

  @Override
  public void stroke(Shape shape, Pen pen) {
    elements.append("<path fill=\"none\" stroke-linejoin=\"round\" d=\"").append(path(shape));
    elements.append("\" stroke-width=\"").append(number(pen.width())).append('"');
    double[] lengths = pen.dash().lengths();
    if (lengths.length > 0) {
      elements.append(" stroke-dasharray=\"");
      for (int i = 0; i < lengths.length; i++) {
        elements.append(i == 0 ? "" : " ").append(number(lengths[i]));
      }
      elements.append('"');
    }
    appendPaint("stroke", pen.color());
    elements.append("/>\n");
  }

  @Override
  public void write(String text, Anchor anchor, Lettering lettering) {
    if (lettering.halo()) {
      // An element of its own: not every reader knows how to paint a rim behind the letters.
      appendText(text, anchor, lettering, true);
    }
    appendText(text, anchor, lettering, false);
  }

  private void appendText(String text, Anchor anchor, Lettering lettering, boolean rim) {
    elements.append("<text x=\"").append(number(anchor.x()));
    elements.append("\" y=\"").append(number(anchor.y()));
    elements.append("\" font-size=\"").append(number(lettering.size())).append('"');
    if (lettering.bold()) {
      elements.append(" font-weight=\"bold\"");
    }
    if (anchor.alignment() != Alignment.START) {
      elements.append(" text-anchor=\"");
      elements.append(anchor.alignment() == Alignment.MIDDLE ? "middle" : "end").append('"');
    }
    if (lettering.upwards()) {
      elements.append(" transform=\"rotate(-90 ").append(number(anchor.x())).append(' ');
      elements.append(number(anchor.y())).append(")\"");
    }
    if (rim) {
      elements.append(" stroke-linejoin=\"round\" aria-hidden=\"true\" stroke-width=\"");
      elements.append(number(Look.HALO_WIDTH)).append('"');
      appendPaint("stroke", Look.HALO);
      appendPaint("fill", Look.HALO);
    } else {
      appendPaint("fill", lettering.color());
    }
    elements.append('>').append(escaped(text)).append("</text>\n");
  }

  private void appendPaint(String attribute, Color color) {
    elements.append(
        String.format(
            Locale.ROOT,
            " %s=\"#%02x%02x%02x\"",
            attribute,
            color.getRed(),
            color.getGreen(),
            color.getBlue()));
    if (color.getAlpha() < 255) {
      elements.append(' ').append(attribute).append("-opacity=\"");
      elements.append(number(color.getAlpha() / 255.0)).append('"');
    }
  }

  private static String path(Shape shape) {
    StringBuilder path = new StringBuilder();
    double[] points = new double[6];
    for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
      int kind = i.currentSegment(points);
      int count =
          switch (kind) {
            case PathIterator.SEG_MOVETO, PathIterator.SEG_LINETO -> 2;
            case PathIterator.SEG_QUADTO -> 4;
            case PathIterator.SEG_CUBICTO -> 6;
            default -> 0;
          };
      path.append("MLQCZ".charAt(kind));
      for (int j = 0; j < count; j++) {
        path.append(j == 0 ? "" : " ").append(number(points[j]));
      }
    }
    return path.toString();
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

  private static String escaped(String text) {
    StringBuilder escaped = new StringBuilder();
    text.codePoints()
        .forEach(
            character -> {
              switch (character) {
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '&' -> escaped.append("&amp;");
                case '"' -> escaped.append("&quot;");
                default -> {
                  // XML 1.0 cannot hold control characters and lone surrogates at all.
                  boolean allowed =
                      character >= 0x20
                          && !(character >= 0xD800 && character <= 0xDFFF)
                          && character != 0xFFFE
                          && character != 0xFFFF;
                  escaped.appendCodePoint(allowed ? character : ' ');
                }
              }
            });
    return escaped.toString();
  }

  String svg() {
    return elements + "</svg>\n";
  }
}
