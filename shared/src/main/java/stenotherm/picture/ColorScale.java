package stenotherm.picture;

import stenotherm.base.Range;

/**
 * Colours for temperatures, from dark blue over grey to light yellow. Lightness rises evenly, so
 * that the order is seen with any kind of colour vision and in a grey print, and no hue stands out
 * where the field has no edge.
 *
 * <p>The colours lie on a straight line in the colour space OKLab (B. Ottosson, "A perceptual color
 * space for image processing", 2020; its two matrices are quoted from memory), between the end
 * points chosen here.
 */
record ColorScale(Range range) {
  /** Enough that steps can hardly be seen; few enough for a small file. */
  static final int LEVELS = 64;

  private static final double[] COLDEST = {0.30, -0.010, -0.115};
  private static final double[] WARMEST = {0.94, -0.030, 0.150};

  /** The temperature from which on a level's colour holds, levels 0 to {@link #LEVELS} - 1 [K]. */
  double from(int level) {
    return range.low() + (range.high() - range.low()) * level / LEVELS;
  }

  static Color color(int level) {
    double share = level / (LEVELS - 1.0);
    double lightness = COLDEST[0] + share * (WARMEST[0] - COLDEST[0]);
    double greenRed = COLDEST[1] + share * (WARMEST[1] - COLDEST[1]);
    double blueYellow = COLDEST[2] + share * (WARMEST[2] - COLDEST[2]);
    double l = cube(lightness + 0.3963377774 * greenRed + 0.2158037573 * blueYellow);
    double m = cube(lightness - 0.1055613458 * greenRed - 0.0638541728 * blueYellow);
    double s = cube(lightness - 0.0894841775 * greenRed - 1.2914855480 * blueYellow);
    return new Color(
        encoded(4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s),
        encoded(-1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s),
        encoded(-0.0041960863 * l - 0.7034186147 * m + 1.7076147010 * s));
  }

  private static double cube(double value) {
    return value * value * value;
  }

  /** The sRGB transfer function (IEC 61966-2-1), as a value from 0 to 255. */
  private static int encoded(double linear) {
    double clamped = Math.max(0, Math.min(1, linear));
    double value =
        clamped <= 0.0031308 ? 12.92 * clamped : 1.055 * Math.pow(clamped, 1 / 2.4) - 0.055;
    return (int) Math.round(255 * value);
  }
}
