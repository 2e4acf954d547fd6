package stenotherm.picture;

/** A point of a picture, in pixels right of and below its upper left corner. */
record Pixel(double x, double y) {
  double distance(Pixel other) {
    return Math.hypot(x - other.x, y - other.y);
  }

  /** The point at a share of the way to another one, 0 for here and 1 for there. */
  Pixel towards(Pixel other, double share) {
    return new Pixel(x + share * (other.x - x), y + share * (other.y - y));
  }
}
