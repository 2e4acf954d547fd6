package stenotherm.picture;

import java.util.ArrayList;
import java.util.List;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.picture.Canvas.Alignment;
import stenotherm.picture.Canvas.Lettering;

/**
 * Sections beside and below each other, in rows of two: for example from the side and from above,
 * at the coldest and at the hottest moment. All share one scale of colours and one scale of length,
 * so that they can be compared. The title of each section stands above it; subtitles are left out.
 * The colours are labelled in the units of the first one.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class SectionSheet extends Picture {
  private static final int MOST = 6;
  private static final double CAPTION = 22;
  private static final double GAP = 8;
  private static final double HEADING = 52;
  private static final double UNBOUNDED = 1e6;
  private static final Lettering CAPTION_LETTERS = Look.LABEL.inBold();

  /** The part of a section's width that its notes may take. */
  private static final double NOTES_SHARE = 0.42;

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
   * @param width width of the picture [pixel]
   * @return height [pixel]
   */
  public int heightFor(int width) {
    Area room = new Area(0, 0, columnWidth(width) - GAP, UNBOUNDED);
    double scale = commonScale(room, notesWidths(width));
    double highest = 0;
    for (SectionPicture section : sections) {
      Range z = section.field.z();
      highest = Math.max(highest, scale * (z.high() - z.low()));
      highest = Math.max(highest, SectionPicturePainter.notesHeight(section));
    }
    double row = CAPTION + highest + SectionPicturePainter.BOTTOM_SPACE;
    return (int) Math.ceil(HEADING + rows() * row + GAP);
  }

  @Override
  void draw(Canvas canvas, double top) {
    double width = columnWidth(canvas.width());
    double height = (canvas.height() - top - GAP) / rows();
    double[] notes = notesWidths(canvas.width());
    Area first = Area.sized(0, top + CAPTION, width - GAP, height - CAPTION);
    double scale = commonScale(first, notes);
    ColorScale colors =
        new ColorScale(
            SectionPicturePainter.colorRange(
                sections.stream().map(section -> section.field).toList()));
    for (int i = 0; i < sections.size(); i++) {
      SectionPicture section = sections.get(i);
      int column = i % columns();
      int row = i / columns();
      Area room =
          Area.sized(column * width, first.top() + row * height, first.width(), first.height());
      if (!SectionPicturePainter.fits(section, room, notes[column])) {
        throw tooSmall(
            "this sheet of sections", "1100 pixels of width and about 400 of height for each row");
      }
      double left = room.left() + Plot.SIDE_SPACE;
      canvas.write(
          Letters.fit(section.title(), room.right() - left, CAPTION_LETTERS),
          new Pixel(left, room.top() - 7),
          Alignment.START,
          CAPTION_LETTERS);
      new SectionPicturePainter(canvas, section, colors).paint(room, scale, notes[column]);
    }
    double barLeft = columns() * width + GAP;
    SectionPicturePainter.paintBar(
        canvas,
        new Area(
            barLeft,
            first.top() + 18,
            barLeft + SectionPicturePainter.BAR_WIDTH,
            canvas.height() - SectionPicturePainter.BOTTOM_SPACE),
        colors,
        sections.get(0).units);
  }

  private int columns() {
    return Math.min(2, sections.size());
  }

  private int rows() {
    return (sections.size() + 1) / 2;
  }

  /** Width of one section with its axis and notes [pixel]. */
  private double columnWidth(double width) {
    return (width - SectionPicturePainter.BAR_SPACE - Look.EDGE) / columns();
  }

  /** Widths of the notes in each column of sections [pixel]. */
  private double[] notesWidths(double width) {
    double most = NOTES_SHARE * columnWidth(width);
    double[] notes = new double[columns()];
    for (int i = 0; i < sections.size(); i++) {
      double needed = SectionPicturePainter.notesWidth(sections.get(i), most);
      notes[i % columns()] = Math.max(notes[i % columns()], needed);
    }
    return notes;
  }

  /** Pixels per metre with which every section fits into its room. */
  private double commonScale(Area room, double[] notes) {
    double scale = Double.POSITIVE_INFINITY;
    for (int i = 0; i < sections.size(); i++) {
      double own = SectionPicturePainter.scale(sections.get(i), room, notes[i % columns()]);
      scale = Math.min(scale, own);
    }
    return scale;
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
