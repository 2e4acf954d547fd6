package stenotherm.picture;

import java.util.Locale;

/**
 * A colour of the screen (sRGB).
 *
 * @param red 0 to 255
 * @param green 0 to 255
 * @param blue 0 to 255
 * @param opacity 0 for none to 1
 */
record Color(int red, int green, int blue, double opacity) {
  static final Color WHITE = new Color(255, 255, 255);

  Color(int red, int green, int blue) {
    this(red, green, blue, 1);
  }

  Color withOpacity(double other) {
    return new Color(red, green, blue, other);
  }

  /** A darker colour of the same kind, in which letters can be read on a light ground. */
  Color forLetters() {
    double share = 0.55;
    return new Color((int) (share * red), (int) (share * green), (int) (share * blue), opacity);
  }

  /** As SVG writes it, opacity left aside. */
  String hex() {
    return String.format(Locale.ROOT, "#%02x%02x%02x", red, green, blue);
  }
}
