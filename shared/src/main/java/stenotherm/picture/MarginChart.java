package stenotherm.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.picture.Canvas.Alignment;
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

  private final List<MarginBar> margins;
  private final Units units;

  private MarginChart(Builder builder) {
    super(builder);
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
  void draw(Canvas canvas, double headingEnd) {
    double top = headingEnd + 18;
    double bottom = canvas.height() - Plot.spaceBelow(2);
    int count = margins.size();
    double row = (bottom - top) / count;
    requireHeight("a chart of " + count + " packings", canvas, count * (ROW - row));
    double names = namesWidth(canvas.width());
    double values = valuesWidth(canvas.width());
    Plot plot = Plot.ofRows(canvas, new Range(top, bottom), names, values, axis());
    paintAxis(canvas, plot);
    for (int i = 0; i < count; i++) {
      double middle = top + (i + 0.5) * row;
      int lines = (int) Math.min(3, Math.floor(row / LINE));
      paintName(canvas, margins.get(i).name(), new Pixel(names, middle), lines);
      paintMargin(canvas, plot, margins.get(i), middle);
      paintValues(canvas, margins.get(i), plot.area().right() + Plot.ROW_GAP, middle);
    }
    plot.border();
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

  private void paintAxis(Canvas canvas, Plot plot) {
    double zero = plot.acrossOf(0);
    canvas.fill(plot.part(new Range(plot.x().low(), 0), plot.y()), Look.SHADE);
    TemperatureScale scale = TemperatureScale.of(units);
    TemperatureScale other = scale.other();
    plot.axis(Plot.Edge.BELOW, ticks(plot, scale), Plot.Mark.GRID);
    plot.axis(Plot.Edge.BELOW, ticks(plot, other), Plot.Mark.NONE, 2);
    String first = "[" + scale.differenceUnit() + "]";
    String second = "[" + other.differenceUnit() + "]";
    double right = plot.area().right() + Plot.ROW_GAP;
    double bottom = plot.area().bottom();
    canvas.write(first, new Pixel(right, bottom + 16), Alignment.START, Look.TICK);
    canvas.write(second, new Pixel(right, bottom + 31), Alignment.START, Look.TICK);
    plot.title(Plot.Edge.BELOW, "margin to the edge of the alarm band " + first + ", " + second, 2);
    canvas.line(zero, plot.area().top() - 4, zero, bottom, new Pen(Look.INK, 2));
    paintZeroName(canvas, plot.area(), zero);
  }

  private static List<Plot.Tick> ticks(Plot plot, TemperatureScale scale) {
    Range range =
        new Range(scale.ofDifference(plot.x().low()), scale.ofDifference(plot.x().high()));
    List<Double> ticks = Ticks.decimal(range, plot.area().width() / 46);
    return Plot.Tick.all(ticks, scale::kelvinOfDifference, Look::plain);
  }

  private static void paintZeroName(Canvas canvas, Area area, double zero) {
    String text = "edge of the alarm band";
    Lettering lettering = Look.LABEL.inBold();
    double half = Letters.width(text, lettering) / 2;
    double middle = Plot.clamp(zero, area.left() + half, area.right() - half);
    double y = area.top() - 7;
    canvas.write(text, new Pixel(middle, y), Alignment.MIDDLE, lettering);
    if (zero - area.left() > half + Letters.width("outside", Look.TICK) + 12) {
      canvas.write("outside", new Pixel(area.left(), y), Alignment.START, Look.TICK);
    }
    if (area.right() - zero > half + Letters.width("inside", Look.TICK) + 12) {
      canvas.write("inside", new Pixel(area.right(), y), Alignment.END, Look.TICK);
    }
  }

  private static void paintName(Canvas canvas, String name, Pixel place, int mostLines) {
    List<String> lines = Letters.wrap(name, place.x(), mostLines, Look.LABEL);
    double y = place.y() - (lines.size() - 1) * LINE / 2 + 4;
    for (String line : lines) {
      canvas.write(line, new Pixel(Look.EDGE + place.x(), y), Alignment.END, Look.LABEL);
      y += LINE;
    }
  }

  private static void paintMargin(Canvas canvas, Plot plot, MarginBar margin, double y) {
    boolean inside = margin.range().low() >= 0;
    Color color = inside ? Look.BLUE : Look.VERMILLION;
    double low = plot.acrossOf(margin.range().low());
    Area bar = new Area(low, y - 5, plot.acrossOf(margin.range().high()), y + 5);
    canvas.fill(bar, inside ? color.withOpacity(0.35) : Color.WHITE);
    canvas.outline(bar, new Pen(color, 1.6));
    Pixel middle = new Pixel(plot.acrossOf(margin.nominal()), y);
    canvas.dot(middle, 6.5, inside ? color : Color.WHITE, new Pen(color, 2.4));
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

  private void paintValues(Canvas canvas, MarginBar margin, double x, double y) {
    double width = canvas.width() - Look.EDGE - x;
    Lettering bold = Look.LABEL.inBold();
    canvas.write(
        Letters.fit(headline(margin), width, bold),
        new Pixel(x, y + (margin.note().isEmpty() ? 4 : -2)),
        Alignment.START,
        bold);
    canvas.write(
        Letters.fit(margin.note(), width, Look.TICK),
        new Pixel(x, y + 12),
        Alignment.START,
        Look.TICK);
  }

  /**
   * Builds a {@link MarginChart}.
   *
   * <p>Experimental. Not thread-safe.
   */
  public static final class Builder extends Titled<Builder> {
    private final List<MarginBar> margins = new ArrayList<>();
    private Units units = Units.METRIC;

    private Builder(String title) {
      super(title);
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

    @Override
    Builder self() {
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
