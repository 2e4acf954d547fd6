package stenotherm.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.picture.Canvas.Alignment;
import stenotherm.picture.Canvas.Pen;
import stenotherm.words.Figures;

/**
 * Where heat comes from and where it goes: one bar for each part, sources above and takers below,
 * with the part's share of all that the sources give. If they do not balance, the difference is a
 * bar of its own.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class HeatChart extends Picture {
  private static final double ROW = 22;

  /** Below this width a part's name stands above its bar instead of beside it [pixel]. */
  private static final double NARROW = 600;

  private static final double HEADER = 24;
  private static final double LINE = 15;

  /** A difference is shown if it is at least this part of the whole. */
  private static final double VISIBLE = 0.005;

  private final Measure measure;
  private final List<Bar> sources;
  private final List<Bar> takers;

  /**
   * What the bars measure.
   *
   * <p>Experimental. Thread-safe.
   */
  public enum Measure {
    /** Heat flow [W]. */
    POWER("heat flow", "W", 1, Figures::power),
    /** Heat over some time [J], shown in kJ. */
    HEAT("heat", "kJ", 1000, Figures::heat);

    private final String name;
    private final String unit;
    private final double scale;
    private final DoubleFunction<String> words;

    Measure(String name, String unit, double scale, DoubleFunction<String> words) {
      this.name = name;
      this.unit = unit;
      this.scale = scale;
      this.words = words;
    }
  }

  /** A bar: its name and how much it gives or takes, in SI units. */
  private record Bar(String name, double value) {}

  private HeatChart(Builder builder) {
    super(builder);
    measure = builder.measure;
    sources = Checks.notEmpty("sources of heat", builder.sources);
    List<Bar> all = new ArrayList<>(Checks.notEmpty("takers of heat", builder.takers));
    double open = sum(sources) - sum(all);
    if (Math.abs(open)
        > VISIBLE * sources.stream().mapToDouble(part -> Math.abs(part.value)).sum()) {
      all.add(new Bar("not accounted for", open));
    }
    takers = List.copyOf(all);
  }

  private static double sum(List<Bar> parts) {
    return parts.stream().mapToDouble(Bar::value).sum();
  }

  /**
   * Starts a chart.
   *
   * @param title the answer in one sentence, which stands above the chart
   * @param measure what the bars measure
   * @return a builder
   */
  public static Builder titled(String title, Measure measure) {
    return new Builder(title, measure);
  }

  @Override
  void draw(Canvas canvas, double headingEnd) {
    int count = sources.size() + takers.size();
    double top = headingEnd + 2;
    double bottom = canvas.height() - Plot.spaceBelow(1);
    double row = (bottom - top - 2 * HEADER) / count;
    double least = isNarrow(canvas) ? 2 * ROW - 6 : ROW;
    requireHeight("a chart of " + count + " parts", canvas, count * (least - row));
    Group from = new Group("heat comes from", sources, Look.VERMILLION);
    Group to = new Group("heat goes to", takers, Look.BLUE);
    // where names stand above their bars, the plot begins at the edge
    double names =
        isNarrow(canvas)
            ? -Plot.ROW_GAP
            : Math.min(Math.max(from.widestName(), to.widestName()), 0.3 * canvas.width());
    Plot plot = Plot.ofRows(canvas, new Range(top, bottom), names, widestValue(), axis());
    double ticks = plot.area().width() / 60;
    plot.axis(Plot.Edge.BELOW, Plot.Tick.all(Ticks.decimal(plot.x(), ticks)), Plot.Mark.GRID);
    String sign = plot.x().low() < 0 ? "; left of zero: reversed" : "";
    plot.title(Plot.Edge.BELOW, measure.name + " [" + measure.unit + "]" + sign);
    double y = paint(canvas, plot, from, top, row);
    canvas.line(Look.EDGE, y, canvas.width() - Look.EDGE, y, new Pen(Look.GRID, 1));
    paint(canvas, plot, to, y, row);
    double zero = plot.acrossOf(0);
    canvas.line(zero, top, zero, bottom, new Pen(Look.INK, 1.6));
  }

  /** Bars under one heading. */
  private record Group(String heading, List<Bar> bars, Color color) {
    double widestName() {
      return Math.max(
          Letters.width(heading, Look.LABEL.inBold()),
          bars.stream().mapToDouble(bar -> Letters.width(bar.name, Look.LABEL)).max().orElse(0));
    }
  }

  private Stream<Bar> bars() {
    return Stream.concat(sources.stream(), takers.stream());
  }

  private double widestValue() {
    return bars()
        .mapToDouble(bar -> Letters.width(valueOf(bar), Look.LABEL.inBold()))
        .max()
        .orElse(0);
  }

  private Range axis() {
    double low = Math.min(0, bars().mapToDouble(Bar::value).min().orElse(0)) / measure.scale;
    double high = Math.max(0, bars().mapToDouble(Bar::value).max().orElse(0)) / measure.scale;
    double space = 0.04 * (high - low);
    return space == 0 ? new Range(0, 1) : new Range(low - (low < 0 ? space : 0), high + space);
  }

  private static boolean isNarrow(Canvas canvas) {
    return canvas.width() < NARROW;
  }

  /**
   * Returns the height at which the chart fills a width best.
   *
   * @param width width of the picture [pixel]
   * @return height [pixel]
   */
  public int heightFor(int width) {
    double row = width < NARROW ? 2 * ROW - 6 : ROW + 4;
    double bars = 2 * HEADER + (sources.size() + takers.size()) * row;
    return Math.max(200, (int) Math.ceil(headingHeight(width) + 2 + bars + Plot.spaceBelow(1)));
  }

  /** Draws bars under their heading and returns where the next group may begin. */
  private double paint(Canvas canvas, Plot plot, Group group, double top, double row) {
    boolean narrow = isNarrow(canvas);
    double right = narrow ? canvas.width() - Look.EDGE : plot.area().left() - Plot.ROW_GAP;
    double end = narrow ? Look.EDGE + 4 : right;
    Alignment alignment = narrow ? Alignment.START : Alignment.END;
    canvas.write(group.heading, new Pixel(end, top + 16), alignment, Look.LABEL.inBold());
    double y = top + HEADER;
    for (Bar bar : group.bars) {
      double above = narrow ? LINE : 0;
      double middle = y + (row + above) / 2;
      double half = Math.min(20, row - above - 6) / 2;
      double zero = plot.acrossOf(0);
      double tip = plot.acrossOf(bar.value / measure.scale);
      Area area = new Area(Math.min(zero, tip), middle - half, Math.max(zero, tip), middle + half);
      // Hollow where heat runs against the heading, so that the difference needs no colour.
      canvas.fill(area, bar.value < 0 ? Color.WHITE : group.color.withOpacity(0.59));
      canvas.outline(area, new Pen(group.color, 1.4));
      canvas.write(
          Letters.fit(bar.name, right - Look.EDGE, Look.LABEL),
          new Pixel(end, narrow ? y + LINE - 3 : middle + 4),
          alignment,
          Look.LABEL);
      canvas.write(
          valueOf(bar),
          new Pixel(plot.area().right() + Plot.ROW_GAP, middle + 4),
          Alignment.START,
          Look.LABEL.inBold());
      y += row;
    }
    return y;
  }

  /** The value with its share of what the sources give. */
  private String valueOf(Bar part) {
    String value = Look.minus(measure.words.apply(part.value));
    double whole = sources.stream().mapToDouble(source -> Math.max(0, source.value)).sum();
    if (whole == 0) {
      return value;
    }
    long percent = Math.round(100 * part.value / whole);
    return value + Look.minus(String.format(Locale.ROOT, " (%d %%)", percent));
  }

  /**
   * Builds a {@link HeatChart}.
   *
   * <p>Experimental. Not thread-safe.
   */
  public static final class Builder extends Titled<Builder> {
    private final Measure measure;
    private final List<Bar> sources = new ArrayList<>();
    private final List<Bar> takers = new ArrayList<>();

    private Builder(String title, Measure measure) {
      super(title);
      this.measure = measure;
    }

    /**
     * Adds what gives heat; the bars stand in the order of these calls.
     *
     * @param name its name, for example {@code "warmer"}
     * @param value what it gives, negative if it takes heat [W or J]
     * @return this
     * @throws InvalidInputException if the name is blank or the value not finite
     */
    public Builder from(String name, double value) {
      sources.add(part(name, value));
      return this;
    }

    /**
     * Adds what takes heat; the bars stand in the order of these calls.
     *
     * @param name its name, for example {@code "through the lid"} or {@code "stored in the animal"}
     * @param value what it takes, negative if it gives heat [W or J]
     * @return this
     * @throws InvalidInputException if the name is blank or the value not finite
     */
    public Builder to(String name, double value) {
      takers.add(part(name, value));
      return this;
    }

    private Bar part(String name, double value) {
      Checks.name("name of a part", name);
      return new Bar(
          name,
          Checks.finite("heat of '" + name + "'", value, measure == Measure.POWER ? "W" : "J"));
    }

    @Override
    Builder self() {
      return this;
    }

    /**
     * Builds the chart.
     *
     * @return the chart
     * @throws InvalidInputException if there is no source or no taker, or the title is blank
     */
    public HeatChart build() {
      return new HeatChart(this);
    }
  }
}
