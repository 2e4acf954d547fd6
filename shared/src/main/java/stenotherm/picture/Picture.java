package stenotherm.picture;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;

/**
 * A picture that can be written in several formats. The same picture gives the same bytes on one
 * machine.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public abstract sealed class Picture
    permits TemperatureChart, HistoryChart, MarginChart, HeatChart, SectionPicture, SectionSheet {
  private static final Range WIDTHS = new Range(600, 8000);
  private static final Range HEIGHTS = new Range(200, 8000);

  private final String title;

  Picture(String title) {
    this.title = Checks.name("title", title);
  }

  /**
   * Returns the sentence above the picture.
   *
   * @return the title
   */
  public final String title() {
    return title;
  }

  /**
   * Draws the picture as pixels.
   *
   * @param width width, 600 to 8000 [pixel]
   * @param height height, 200 to 8000 [pixel]
   * @return the bytes of a PNG file
   * @throws InvalidInputException if a size is out of its range or too small for what the picture
   *     shows
   */
  public final byte[] png(int width, int height) {
    checkSize(width, height);
    RasterCanvas canvas = new RasterCanvas(width, height);
    draw(canvas);
    return canvas.png();
  }

  /**
   * Draws the picture as vectors.
   *
   * @param width width, 600 to 8000 [pixel]
   * @param height height, 200 to 8000 [pixel]
   * @return the text of an SVG file, to be saved as UTF-8
   * @throws InvalidInputException if a size is out of its range or too small for what the picture
   *     shows
   */
  public final String svg(int width, int height) {
    checkSize(width, height);
    SvgCanvas canvas = new SvgCanvas(width, height, title);
    draw(canvas);
    return canvas.svg();
  }

  abstract void draw(Canvas canvas);

  private static void checkSize(int width, int height) {
    Checks.within("picture width", width, WIDTHS, "pixels", "900 suits most pages.");
    Checks.within("picture height", height, HEIGHTS, "pixels", "420 suits most pages.");
  }

  static InvalidInputException tooSmall(String what, String size) {
    return new InvalidInputException("picture size", what + " needs " + size);
  }
}
