package stenotherm.picture;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;

/**
 * A picture that can be written as SVG. The same picture gives the same bytes.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public abstract sealed class Picture
    permits TemperatureChart,
        HistoryChart,
        AirChart,
        HeatChart,
        MonthChart,
        OddsBars,
        OddsChart,
        SectionPicture,
        SectionSheet,
        PackingDrawing {
  private static final Range WIDTHS = new Range(340, 8000);
  private static final Range HEIGHTS = new Range(200, 8000);

  private final String title;
  private final String subtitle;

  Picture(Titled<?> builder) {
    this.title = Checks.name("title", builder.title);
    this.subtitle = builder.subtitle;
  }

  /**
   * What the builders of all pictures have in common.
   *
   * <p>Experimental. Not thread-safe.
   *
   * @param <B> the builder itself
   */
  public abstract static sealed class Titled<B extends Titled<B>>
      permits TemperatureChart.Builder,
          HistoryChart.Builder,
          AirChart.Builder,
          HeatChart.Builder,
          MonthChart.Builder,
          OddsBars.Builder,
          OddsChart.Builder,
          SectionPicture.Builder,
          SectionSheet.Builder,
          PackingDrawing.Builder {
    private final String title;
    private String subtitle = "";

    Titled(String title) {
      this.title = title;
    }

    /**
     * Adds a line in small letters under the title.
     *
     * @param text the line
     * @return this
     */
    public final B subtitle(String text) {
      subtitle = text;
      return self();
    }

    abstract B self();
  }

  /**
   * Returns the sentence above the picture.
   *
   * @return the title
   */
  public final String title() {
    return title;
  }

  /** Refuses a width for which a picture is not made. */
  static void checkedWidth(int width) {
    Checks.within("picture width", width, WIDTHS, "pixels", "900 suits most pages.");
  }

  /** The height that title and subtitle take in a picture of some width [pixel]. */
  final double headingHeight(double width) {
    return Look.headingHeight(width, title, subtitle);
  }

  /**
   * Draws the picture.
   *
   * @param width width, 340 to 8000 [pixel]
   * @param height height, 200 to 8000 [pixel]
   * @return the text of an SVG file, to be saved as UTF-8
   * @throws InvalidInputException if a size is out of its range or too small for what the picture
   *     shows
   */
  public final String svg(int width, int height) {
    checkedWidth(width);
    Checks.within("picture height", height, HEIGHTS, "pixels", "420 suits most pages.");
    Canvas canvas = new Canvas(width, height, title);
    draw(canvas, Look.writeHeading(canvas, title, subtitle));
    return canvas.svg();
  }

  /**
   * Draws what stands below the heading.
   *
   * @param canvas where to
   * @param top where the heading ends [pixel]
   */
  abstract void draw(Canvas canvas, double top);

  static InvalidInputException tooSmall(String what, String size) {
    return new InvalidInputException("picture size", what + " needs " + size);
  }

  /** Refuses a height that is less than a picture needs. */
  static void requireHeight(String what, Canvas canvas, double lack) {
    if (lack > 0) {
      throw tooSmall(
          what, "a height of at least " + (int) Math.ceil(canvas.height() + lack) + " pixels");
    }
  }
}
