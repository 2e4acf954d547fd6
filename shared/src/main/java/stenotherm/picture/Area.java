package stenotherm.picture;

/** An upright rectangle of a picture, in pixels right of and below its upper left corner. */
record Area(double left, double top, double right, double bottom) {
  static Area sized(double left, double top, double width, double height) {
    return new Area(left, top, left + width, top + height);
  }

  double width() {
    return right - left;
  }

  double height() {
    return bottom - top;
  }

  Pixel middle() {
    return new Pixel((left + right) / 2, (top + bottom) / 2);
  }

  Area grown(double by) {
    return new Area(left - by, top - by, right + by, bottom + by);
  }

  boolean contains(Area other) {
    return left <= other.left && other.right <= right && top <= other.top && other.bottom <= bottom;
  }

  boolean overlaps(Area other) {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }

  /** Whether a straight line from one point to another touches this. */
  boolean touches(Pixel from, Pixel to) {
    double[] part = {0, 1};
    return cut(part, from.x(), to.x(), left, right) && cut(part, from.y(), to.y(), top, bottom);
  }

  /** Narrows the part of a line, as shares of its way, to where one coordinate is in a range. */
  private static boolean cut(double[] part, double from, double to, double low, double high) {
    double way = to - from;
    if (way == 0) {
      return low <= from && from <= high;
    }
    double one = (low - from) / way;
    double other = (high - from) / way;
    part[0] = Math.max(part[0], Math.min(one, other));
    part[1] = Math.min(part[1], Math.max(one, other));
    return part[0] <= part[1];
  }
}
