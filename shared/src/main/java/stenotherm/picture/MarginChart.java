package stenotherm.picture;

import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.picture.Canvas.Alignment;
import stenotherm.picture.Canvas.Anchor;
import stenotherm.picture.Canvas.Lettering;
import stenotherm.picture.Canvas.Pen;
import stenotherm.words.Units;

/**
 * Packings side by side: for each one the margin to the edge of the alarm band as a dot, with the
 * range that it may lie in. A range that reaches beyond the edge is drawn hollow, so that the
 * difference needs no colour.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class MarginChart extends Picture {
  private static final double ROW = 34;
  private static final double LINE = 14;
  private static final double AXIS_HEIGHT = 58;

  private final String subtitle;
  private final List<MarginBar> margins;
  private final Units units;

  private MarginChart(Builder builder) {
    super(builder.title);
    subtitle = builder.subtitle;
    margins = Checks.notEmpty("packings", builder.margins);
    units = builder.units;
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

  @Override
  void draw(Canvas canvas) {
    double top = Look.writeHeading(canvas, title(), subtitle) + 18;
    double bottom = canvas.height() - AXIS_HEIGHT;
    double row = (bottom - top) / margins.size();
    if (row < ROW) {
      throw tooSmall(
          "a chart of " + margins.size() + " packings",
          "a height of at least "
              + (int) Math.ceil(top + margins.size() * ROW + AXIS_HEIGHT)
              + " pixels");
    }
    double names = namesWidth(canvas.width());
    double values = valuesWidth(canvas.width());
    Frame frame =
        new Frame(
            new Rectangle2D.Double(
                Look.EDGE + names + 14,
                top,
                canvas.width() - 2 * Look.EDGE - names - values - 28,
                bottom - top),
            axis(),
            new Range(0, margins.size()));

    paintBackground(canvas, frame);
    for (int i = 0; i < margins.size(); i++) {
      double middle = frame.top() + (i + 0.5) * row;
      int lines = (int) Math.min(3, Math.floor(row / LINE));
      paintName(canvas, margins.get(i).name(), new Anchor(names, middle, Alignment.START), lines);
      paintMargin(canvas, frame, margins.get(i), middle);
      paintValues(canvas, margins.get(i), new Anchor(frame.right() + 14, middle, Alignment.START));
    }
    canvas.stroke(frame.area(), new Pen(Look.QUIET_INK, 1));
  }

  private double namesWidth(double pictureWidth) {
    double widest =
        margins.stream()
            .mapToDouble(margin -> Letters.width(margin.name(), Look.LABEL))
            .max()
            .orElse(0);
    return Math.min(widest, 0.26 * pictureWidth);
  }

  private double valuesWidth(double pictureWidth) {
    double widest = 0;
    for (MarginBar margin : margins) {
      widest = Math.max(widest, Letters.width(headline(margin), Look.LABEL.inBold()));
      widest = Math.max(widest, Letters.width(margin.note(), Look.TICK));
    }
    return Math.min(widest, 0.28 * pictureWidth);
  }

  private Range axis() {
    double low = margins.stream().mapToDouble(margin -> margin.range().low()).min().orElse(0);
    double high = margins.stream().mapToDouble(margin -> margin.range().high()).max().orElse(0);
    low = Math.min(low, 0);
    high = Math.max(high, 0);
    double space = Math.max(0.5, 0.08 * (high - low));
    return new Range(low - space, high + space);
  }

  private void paintBackground(Canvas canvas, Frame frame) {
    double zero = frame.acrossOf(0);
    canvas.fill(
        new Rectangle2D.Double(
            frame.left(), frame.top(), zero - frame.left(), frame.area().getHeight()),
        Look.SHADE);
    double most = frame.area().getWidth() / 46;
    TemperatureScale scale = TemperatureScale.of(units);
    TemperatureScale other = scale.other();
    for (double tick : ticks(frame, scale, most)) {
      double x = frame.acrossOf(scale.kelvinOfDifference(tick));
      paintTick(canvas, tick, new Anchor(x, frame.bottom() + 16, Alignment.MIDDLE));
      canvas.stroke(new Line2D.Double(x, frame.top(), x, frame.bottom()), new Pen(Look.GRID, 1));
    }
    for (double tick : ticks(frame, other, most)) {
      double x = frame.acrossOf(other.kelvinOfDifference(tick));
      paintTick(canvas, tick, new Anchor(x, frame.bottom() + 31, Alignment.MIDDLE));
    }
    String first = "[" + scale.differenceUnit() + "]";
    String second = "[" + other.differenceUnit() + "]";
    canvas.write(
        first, new Anchor(frame.right() + 14, frame.bottom() + 16, Alignment.START), Look.TICK);
    canvas.write(
        second, new Anchor(frame.right() + 14, frame.bottom() + 31, Alignment.START), Look.TICK);
    canvas.write(
        "margin to the edge of the alarm band " + first + ", " + second,
        new Anchor(frame.area().getCenterX(), canvas.height() - Look.EDGE, Alignment.MIDDLE),
        Look.LABEL.inColor(Look.QUIET_INK));

    canvas.stroke(
        new Line2D.Double(zero, frame.top() - 4, zero, frame.bottom()), new Pen(Look.INK, 2));
    paintZeroName(canvas, frame, zero);
  }

  private static void paintZeroName(Canvas canvas, Frame frame, double zero) {
    String text = "edge of the alarm band";
    Lettering lettering = Look.LABEL.inBold();
    double half = Letters.width(text, lettering) / 2;
    double middle = Math.max(frame.left() + half, Math.min(frame.right() - half, zero));
    canvas.write(text, new Anchor(middle, frame.top() - 7, Alignment.MIDDLE), lettering);
    if (zero - frame.left() > half + Letters.width("outside", Look.TICK) + 12) {
      canvas.write(
          "outside", new Anchor(frame.left(), frame.top() - 7, Alignment.START), Look.TICK);
    }
    if (frame.right() - zero > half + Letters.width("inside", Look.TICK) + 12) {
      canvas.write("inside", new Anchor(frame.right(), frame.top() - 7, Alignment.END), Look.TICK);
    }
  }

  private static List<Double> ticks(Frame frame, TemperatureScale scale, double most) {
    double low = scale.ofDifference(frame.x().low());
    double high = scale.ofDifference(frame.x().high());
    return Ticks.decimal(new Range(low, high), most);
  }

  private static void paintTick(Canvas canvas, double tick, Anchor place) {
    canvas.write(Look.plain(tick), place, Look.TICK);
  }

  private static void paintName(Canvas canvas, String name, Anchor place, int mostLines) {
    List<String> lines = Letters.wrap(name, place.x(), mostLines, Look.LABEL);
    double y = place.y() - (lines.size() - 1) * LINE / 2 + 4;
    for (String line : lines) {
      canvas.write(line, new Anchor(Look.EDGE + place.x(), y, Alignment.END), Look.LABEL);
      y += LINE;
    }
  }

  private static void paintMargin(Canvas canvas, Frame frame, MarginBar margin, double y) {
    boolean safe = margin.range().low() >= 0;
    Color color = safe ? Look.BLUE : Look.VERMILLION;
    double low = frame.acrossOf(margin.range().low());
    double high = frame.acrossOf(margin.range().high());
    Rectangle2D bar = new Rectangle2D.Double(low, y - 5, high - low, 10);
    canvas.fill(bar, safe ? Look.withAlpha(color, 90) : Color.WHITE);
    canvas.stroke(bar, new Pen(color, 1.6));
    double x = frame.acrossOf(margin.nominal());
    Ellipse2D dot = new Ellipse2D.Double(x - 6.5, y - 6.5, 13, 13);
    canvas.fill(dot, safe ? color : Color.WHITE);
    canvas.stroke(dot, new Pen(color, 2.4));
  }

  private String headline(MarginBar margin) {
    return signed(margin.nominal())
        + " "
        + TemperatureScale.of(units).differenceUnit()
        + " ("
        + signed(margin.range().low())
        + " to "
        + signed(margin.range().high())
        + ")";
  }

  private String signed(double kelvin) {
    double value = TemperatureScale.of(units).ofDifference(kelvin);
    String text = String.format(Locale.ROOT, "%.1f", value);
    return Look.minus(text.equals("-0.0") ? "0.0" : text);
  }

  private void paintValues(Canvas canvas, MarginBar margin, Anchor place) {
    double width = canvas.width() - Look.EDGE - place.x();
    Lettering bold = Look.LABEL.inBold();
    double shift = margin.note().isEmpty() ? 4 : -2;
    canvas.write(
        Letters.fit(headline(margin), width, bold),
        new Anchor(place.x(), place.y() + shift, Alignment.START),
        bold);
    canvas.write(
        Letters.fit(margin.note(), width, Look.TICK),
        new Anchor(place.x(), place.y() + 12, Alignment.START),
        Look.TICK);
  }

  /**
   * Builds a {@link MarginChart}.
   *
   * <p>Experimental. Not thread-safe.
   */
  public static final class Builder {
    private final String title;
    private final List<MarginBar> margins = new ArrayList<>();
    private String subtitle = "";
    private Units units = Units.METRIC;

    private Builder(String title) {
      this.title = title;
    }

    /**
     * Adds a line in small letters under the title.
     *
     * @param text the line
     * @return this
     */
    public Builder subtitle(String text) {
      subtitle = text;
      return this;
    }

    /**
     * Sets the reader's units, which are metric otherwise.
     *
     * @param readers the units of values and upper axis
     * @return this
     */
    public Builder units(Units readers) {
      units = readers;
      return this;
    }

    /**
     * Adds a packing; the rows stand in the order of these calls.
     *
     * @param margin the packing's margin
     * @return this
     */
    public Builder margin(MarginBar margin) {
      margins.add(margin);
      return this;
    }

    /**
     * Builds the chart.
     *
     * @return the chart
     * @throws InvalidInputException if there is no packing or the title is blank
     */
    public MarginChart build() {
      return new MarginChart(this);
    }
  }
}
