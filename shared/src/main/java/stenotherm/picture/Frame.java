package stenotherm.picture;

import java.awt.geom.Rectangle2D;
import stenotherm.base.Range;

/** The area of a picture that has axes, and the straight scales from values to pixels. */
record Frame(Rectangle2D area, Range x, Range y) {
  double left() {
    return area.getMinX();
  }

  double right() {
    return area.getMaxX();
  }

  double top() {
    return area.getMinY();
  }

  double bottom() {
    return area.getMaxY();
  }

  double acrossOf(double value) {
    return left() + (value - x.low()) / (x.high() - x.low()) * area.getWidth();
  }

  double downOf(double value) {
    return bottom() - (value - y.low()) / (y.high() - y.low()) * area.getHeight();
  }
}
