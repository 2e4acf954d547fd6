package stenotherm.picture;

import java.util.ArrayList;
import java.util.List;
import stenotherm.base.Checks;
import stenotherm.base.Range;
import stenotherm.picture.Canvas.Alignment;
import stenotherm.picture.Canvas.Pen;

/**
 * How many of 100 journeys go well in several cases: a row for each, with its name, a bar and the
 * number at the bar's end, inside it where a line or the edge is in the way.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class OddsBars extends Picture {
  /** Below this width a row's name stands above its bar instead of beside it [pixel]. */
  private static final double NARROW = 600;

  private static final double ROW = 24;

  /** What a second line of a name takes. */
  private static final double LINE = 15;

  private static final int MOST_LINES = 2;

  private static final double NAMED_ROW = 44;

  /** High enough for a number inside. */
  private static final double BAR = 14;

  private static final double NUMBER = 34;

  /** How far lines reach above and below a bar where they would run through names. */
  private static final double BESIDE_BAR = 10;

  /** Between a bar's end and its number. */
  private static final double GAP = 8;

  private static final Canvas.Lettering OUTSIDE = Look.LABEL.inBold().withHalo();
  private static final Canvas.Lettering INSIDE = Look.LABEL.inBold().inColor(Color.WHITE);

  private static final double BELOW = 40;
  private static final double NAMES = 0.52;
  private static final int ALL = 100;

  /** The lowest picture there may be [pixel]. */
  private static final double LOWEST = 200;

  private final List<Row> rows;
  private final List<Level> levels;

  private record Row(String name, double share, String number) {}

  /** A row with its name in lines. */
  private record Placed(List<String> name, double share, String number, double height) {}

  private record Level(String name, double share) {}

  private OddsBars(Builder builder) {
    super(builder);
    rows = Checks.notEmpty("rows of odds", builder.rows);
    levels = List.copyOf(builder.levels);
  }

  /**
   * Starts a chart.
   *
   * @param title the answer in one sentence, which stands above the chart
   * @return a builder
   */
  public static Builder titled(String title) {
    return new Builder(title);
  }

  /**
   * Returns the height at which the chart fills a width best.
   *
   * @param width width of the picture [pixel]
   * @return height [pixel]
   */
  public int heightFor(int width) {
    double needed = headingHeight(width) + BELOW + ROW + height(placed(width));
    return (int) Math.ceil(Math.max(LOWEST, needed));
  }

  private static boolean isNarrow(double width) {
    return width < NARROW;
  }

  /** Where bars begin. */
  private static double left(double width) {
    return isNarrow(width) ? Look.EDGE + 2 : NAMES * width;
  }

  /** The rows in a picture of a width, from top to bottom. */
  private List<Placed> placed(double width) {
    double room = (isNarrow(width) ? width : left(width)) - 2 * Look.EDGE;
    List<Placed> placed = new ArrayList<>();
    for (Row row : rows) {
      List<String> name = Letters.wrap(row.name(), room, MOST_LINES, Look.LABEL);
      double height = (isNarrow(width) ? NAMED_ROW : ROW) + LINE * (name.size() - 1);
      placed.add(new Placed(name, row.share(), row.number(), height));
    }
    return placed;
  }

  private static double height(List<Placed> placed) {
    return placed.stream().mapToDouble(Placed::height).sum();
  }

  @Override
  void draw(Canvas canvas, double headingEnd) {
    double top = headingEnd + ROW;
    List<Placed> placed = placed(canvas.width());
    double bottom = top + height(placed);
    requireHeight("a chart of odds", canvas, bottom + BELOW - canvas.height());
    double left = left(canvas.width());
    double scale = (canvas.width() - Look.EDGE - NUMBER - left) / ALL;
    boolean narrow = isNarrow(canvas.width());
    List<Area> bands =
        narrow ? bands(placed, top, left) : List.of(new Area(left, top, left, bottom));
    for (int percent = 0; percent <= ALL; percent += 20) {
      double x = left + scale * percent;
      lines(canvas, x, bands, new Pen(Look.GRID, 1));
      canvas.write(
          Integer.toString(percent), new Pixel(x, bottom + 14), Alignment.MIDDLE, Look.TICK);
    }
    canvas.write(
        "of 100 journeys go well",
        new Pixel(left + scale * ALL / 2, bottom + 32),
        Alignment.MIDDLE,
        Look.LABEL);
    for (Level level : levels) {
      double x = left + scale * ALL * level.share();
      Pen pen = new Pen(Look.INK, 1.2, Canvas.Dash.SHORT);
      canvas.line(x, top - 2, x, top + 2, pen);
      lines(canvas, x, bands, pen);
      canvas.write(level.name(), new Pixel(x, top - 6), Alignment.END, Look.TICK);
    }
    double under = top;
    for (Placed row : placed) {
      under += row.height();
      paint(canvas, row, under, left, scale);
    }
    lines(canvas, left, bands, new Pen(Look.INK, 1.6));
  }

  /** Where lines may run down: beside bars alone if names stand above these. */
  private static List<Area> bands(List<Placed> placed, double top, double left) {
    List<Area> bands = new ArrayList<>();
    double under = top;
    for (Placed row : placed) {
      under += row.height();
      double middle = middle(row, under, true);
      bands.add(new Area(left, middle - BESIDE_BAR, left, middle + BESIDE_BAR));
    }
    return bands;
  }

  private static void lines(Canvas canvas, double x, List<Area> bands, Pen pen) {
    bands.forEach(band -> canvas.line(x, band.top(), x, band.bottom(), pen));
  }

  /** The middle of a bar whose row ends at a height. */
  private static double middle(Placed row, double under, boolean narrow) {
    return under - (narrow ? BESIDE_BAR + 2 : row.height() / 2);
  }

  private void paint(Canvas canvas, Placed row, double under, double left, double scale) {
    boolean narrow = isNarrow(canvas.width());
    List<String> name = row.name();
    double end = left + scale * ALL * row.share();
    double middle = middle(row, under, narrow);
    canvas.fill(
        new Area(left, middle - BAR / 2, Math.max(end, left + 1), middle + BAR / 2), Look.BLUE);
    canvas.dot(new Pixel(end, middle), 4, Color.WHITE, new Pen(Look.BLUE, 2));
    number(canvas, row.number(), new Pixel(end, middle), left, scale);
    double first =
        middle
            + (narrow
                ? -BESIDE_BAR - 4 - LINE * (name.size() - 1)
                : 4 - LINE * (name.size() - 1) / 2);
    for (int line = 0; line < name.size(); line++) {
      canvas.write(
          name.get(line),
          new Pixel(narrow ? left : left - 12, first + LINE * line),
          narrow ? Alignment.START : Alignment.END,
          Look.LABEL.withHalo());
    }
  }

  /**
   * Writes the number at a bar's end: inside if a level's line or the edge is in the way outside.
   */
  private void number(Canvas canvas, String number, Pixel end, double left, double scale) {
    double width = Letters.width(number, OUTSIDE);
    double start = end.x() + GAP;
    boolean crossed =
        levels.stream()
            .mapToDouble(level -> left + scale * ALL * level.share())
            .anyMatch(line -> line > start - 4 && line < start + width + 4);
    boolean fits = start + width < canvas.width() - Look.EDGE;
    if ((crossed || !fits) && end.x() - GAP - width > left + 4) {
      canvas.write(number, new Pixel(end.x() - GAP, end.y() + 4), Alignment.END, INSIDE);
    } else {
      canvas.write(number, new Pixel(start, end.y() + 4), Alignment.START, OUTSIDE);
    }
  }

  /**
   * Builds an {@link OddsBars}.
   *
   * <p>Experimental. Not thread-safe.
   */
  public static final class Builder extends Titled<Builder> {
    private static final Range SHARES = new Range(0, 1);

    private final List<Row> rows = new ArrayList<>();
    private final List<Level> levels = new ArrayList<>();

    private Builder(String title) {
      super(title);
    }

    /**
     * Adds a row.
     *
     * @param name its name
     * @param share the share of journeys that go well [-], 0 to 1
     * @param number how many of 100 that is, in the words of what stands beside the chart
     * @return this
     * @throws stenotherm.base.InvalidInputException if the name or the number is blank or the share
     *     out of range
     */
    public Builder row(String name, double share, String number) {
      rows.add(
          new Row(
              Checks.name("name of a row", name),
              Checks.within("share", share, SHARES, "", "1 is all."),
              Checks.name("number of a row", number)));
      return this;
    }

    /**
     * Adds a line down all rows.
     *
     * @param name its name
     * @param share where [-], 0 to 1
     * @return this
     * @throws stenotherm.base.InvalidInputException if the name is blank or the share out of range
     */
    public Builder level(String name, double share) {
      levels.add(
          new Level(
              Checks.name("name of a level", name),
              Checks.within("level", share, SHARES, "", "1 is all.")));
      return this;
    }

    @Override
    Builder self() {
      return this;
    }

    /**
     * Builds the chart.
     *
     * @return the chart
     * @throws stenotherm.base.InvalidInputException if there is no row, or the title is blank
     */
    public OddsBars build() {
      return new OddsBars(this);
    }
  }
}
