package stenotherm.picture;

import java.util.ArrayList;
import java.util.List;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.picture.Canvas.Alignment;
import stenotherm.picture.Canvas.Lettering;

/**
 * Sections beside and below each other, in rows of two where the picture is wide enough: for
 * example from the side and from above, at the coldest and at the hottest moment. All share one
 * scale of colours, one scale of length and one list of names, so that they can be compared. The
 * title of each section stands above it; subtitles are left out. The colours are labelled in the
 * units of the first one.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class SectionSheet extends Picture {
  private static final int MOST = 6;
  private static final double CAPTION_LINE = 15;
  private static final double CAPTION = 2 * CAPTION_LINE + 8;
  private static final double GAP = 8;

  /** From this width on two sections stand beside each other [pixel]. */
  private static final double TWO_COLUMNS = 640;

  private static final Lettering CAPTION_LETTERS = Look.LABEL.inBold();

  private final List<SectionPicture> sections;

  private SectionSheet(Builder builder) {
    super(builder);
    sections = Checks.notEmpty("sections", builder.sections);
    if (sections.size() > MOST) {
      throw new InvalidInputException(
          "sections", sections.size() + " are too many for one sheet; " + MOST + " are most");
    }
  }

  /**
   * Starts a sheet.
   *
   * @param title the answer in one sentence, which stands above the sheet
   * @return a builder
   */
  public static Builder titled(String title) {
    return new Builder(title);
  }

  /**
   * Returns the height at which the sections fill a width best.
   *
   * @param width width of the picture, 340 to 8000 [pixel]
   * @return height [pixel]
   * @throws InvalidInputException if the width is out of its range
   */
  public int heightFor(int width) {
    checkedWidth(width);
    Area room = new Area(0, 0, columnWidth(width) - GAP, Double.POSITIVE_INFINITY);
    double scale = commonScale(room);
    double highest = 0;
    for (SectionPicture section : sections) {
      Range z = section.field.z();
      highest = Math.max(highest, scale * (z.high() - z.low()));
    }
    double row = CAPTION + highest + SectionPicturePainter.BOTTOM_SPACE;
    return (int) Math.ceil(headingHeight(width) + rows(width) * row + GAP + key().height(width));
  }

  @Override
  void draw(Canvas canvas, double top) {
    int columns = columns(canvas.width());
    double width = columnWidth(canvas.width());
    SectionKey key = key();
    double bottom = canvas.height() - key.height(canvas.width());
    double height = (bottom - top - GAP) / rows(canvas.width());
    Area first = Area.sized(0, top + CAPTION, width - GAP, height - CAPTION);
    if (!SectionPicturePainter.fits(first)) {
      throw tooSmall("this sheet of sections", "more height for its rows");
    }
    double scale = commonScale(first);
    ColorScale colors =
        new ColorScale(
            SectionPicturePainter.colorRange(
                sections.stream().map(section -> section.field).toList()));
    for (int i = 0; i < sections.size(); i++) {
      SectionPicture section = sections.get(i);
      int row = i / columns;
      double left = i % columns * width;
      double down = first.top() + row * height;
      double y = down - CAPTION + CAPTION_LINE;
      double captionWidth = first.width() - Look.EDGE;
      for (String line : Letters.wrap(section.title(), captionWidth, 2, CAPTION_LETTERS)) {
        Pixel place = new Pixel(left + Look.EDGE, y);
        canvas.write(line, place, Alignment.START, CAPTION_LETTERS);
        y += CAPTION_LINE;
      }
      new SectionPicturePainter(canvas, section, colors, key)
          .paint(Area.sized(left, down, first.width(), first.height()), scale);
    }
    double barLeft = columns * width + GAP;
    SectionPicturePainter.paintBar(
        canvas,
        new Area(
            barLeft,
            first.top() + 18,
            barLeft + SectionPicturePainter.BAR_WIDTH,
            bottom - SectionPicturePainter.BOTTOM_SPACE),
        colors,
        sections.get(0).units);
    key.paint(canvas);
  }

  private SectionKey key() {
    return SectionKey.of(sections);
  }

  private int columns(double width) {
    return width < TWO_COLUMNS ? 1 : Math.min(2, sections.size());
  }

  private int rows(double width) {
    return (sections.size() + columns(width) - 1) / columns(width);
  }

  /** Width of one section with its axis [pixel]. */
  private double columnWidth(double width) {
    return (width - SectionPicturePainter.BAR_SPACE - Look.EDGE) / columns(width);
  }

  /** Pixels per metre with which every section fits into its room. */
  private double commonScale(Area room) {
    return sections.stream()
        .mapToDouble(section -> SectionPicturePainter.scale(section, room))
        .min()
        .orElseThrow();
  }

  /**
   * Builds a {@link SectionSheet}.
   *
   * <p>Experimental. Not thread-safe.
   */
  public static final class Builder extends Titled<Builder> {
    private final List<SectionPicture> sections = new ArrayList<>();

    private Builder(String title) {
      super(title);
    }

    /**
     * Adds a section, left to right and then down.
     *
     * @param section the section
     * @return this
     */
    public Builder section(SectionPicture section) {
      sections.add(section);
      return this;
    }

    @Override
    Builder self() {
      return this;
    }

    /**
     * Builds the sheet.
     *
     * @return the sheet
     * @throws InvalidInputException if there is no section or more than six, or the title is blank
     */
    public SectionSheet build() {
      return new SectionSheet(this);
    }
  }
}
