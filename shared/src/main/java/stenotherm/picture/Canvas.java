package stenotherm.picture;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;

/**
 * A surface to draw on, in pixels from the upper left corner; the few things that both formats can
 * do alike.
 */
interface Canvas {
  /** Width [pixel]. */
  int width();

  /** Height [pixel]. */
  int height();

  /** Fills a shape with smooth edges. */
  void fill(Shape shape, Color color);

  /** Fills a rectangle without smoothing, so that neighbours leave no seam. */
  void fillCell(Rectangle2D cell, Color color);

  /** Draws a line. */
  void stroke(Shape shape, Pen pen);

  /** Writes one line of text. */
  void write(String text, Anchor anchor, Lettering lettering);

  /** How a line is drawn. */
  record Pen(Color color, double width, Dash dash) {
    Pen(Color color, double width) {
      this(color, width, Dash.SOLID);
    }
  }

  /** Line patterns; a second means besides colour to tell lines apart. */
  enum Dash {
    SOLID,
    LONG(9, 4),
    SHORT(4, 3),
    DOTTED(1.5, 3),
    MIXED(9, 3, 2, 3);

    private final double[] lengths;

    Dash(double... lengths) {
      this.lengths = lengths;
    }

    /** Lengths drawn and skipped in turn [pixel]; none for an unbroken line. */
    double[] lengths() {
      return lengths.clone();
    }
  }

  /** Where a text stands: a point on its baseline, and which part of the text is there. */
  record Anchor(double x, double y, Alignment alignment) {}

  /** The part of a text that its point fixes. */
  enum Alignment {
    START,
    MIDDLE,
    END
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
}
