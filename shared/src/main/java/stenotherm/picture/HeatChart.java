package stenotherm.picture;

import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.picture.Canvas.Alignment;
import stenotherm.picture.Canvas.Anchor;
import stenotherm.picture.Canvas.Pen;
import stenotherm.words.Figures;

/**
 * Where heat comes from and where it goes: one bar for each part, sources above and takers below,
 * with the part's share of all that the sources give. What the parts leave open is a bar of its
 * own.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class HeatChart extends Picture {
  private static final double ROW = 22;
  private static final double HEADER = 24;
  private static final double AXIS_HEIGHT = 46;

  /** What is left open is shown from this part of the whole on. */
  private static final double VISIBLE = 0.005;

  private final String subtitle;
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
    POWER("W", 1, Figures::power),
    /** Heat over some time [J], shown in kJ. */
    HEAT("kJ", 1000, Figures::heat);

    private final String unit;
    private final double scale;
    private final DoubleFunction<String> words;

    Measure(String unit, double scale, DoubleFunction<String> words) {
      this.unit = unit;
      this.scale = scale;
      this.words = words;
    }
  }

  /** A bar: its name and how much it gives or takes, in SI units. */
  private record Bar(String name, double value) {}

  private HeatChart(Builder builder) {
    super(builder.title);
    subtitle = builder.subtitle;
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
  void draw(Canvas canvas) {
    double top = Look.writeHeading(canvas, title(), subtitle) + 2;
    double bottom = canvas.height() - AXIS_HEIGHT;
    double row = (bottom - top - 2 * HEADER) / (sources.size() + takers.size());
    if (row < ROW) {
      throw tooSmall(
          "a chart of " + (sources.size() + takers.size()) + " parts",
          "a height of at least "
              + (int)
                  Math.ceil(top + 2 * HEADER + (sources.size() + takers.size()) * ROW + AXIS_HEIGHT)
              + " pixels");
    }
    double names = Math.min(widestName(), 0.3 * canvas.width());
    double values = widestValue();
    Frame frame =
        new Frame(
            new Rectangle2D.Double(
                Look.EDGE + names + 14,
                top,
                canvas.width() - 2 * Look.EDGE - names - values - 28,
                bottom - top),
            axis(),
            new Range(0, 1));
    paintGrid(canvas, frame);
    double y = paintGroup(canvas, frame, new Group("heat comes from", sources, true), top, row);
    canvas.stroke(
        new Line2D.Double(Look.EDGE, y, canvas.width() - Look.EDGE, y), new Pen(Look.GRID, 1));
    paintGroup(canvas, frame, new Group("heat goes to", takers, false), y, row);
    double zero = frame.acrossOf(0);
    canvas.stroke(new Line2D.Double(zero, top, zero, bottom), new Pen(Look.INK, 1.6));
  }

  /** Bars under one heading. */
  private record Group(String heading, List<Bar> parts, boolean source) {}

  private double widestName() {
    double widest = 0;
    for (Group group :
        List.of(
            new Group("heat comes from", sources, true),
            new Group("heat goes to", takers, false))) {
      widest = Math.max(widest, Letters.width(group.heading, Look.LABEL.inBold()));
      for (Bar part : group.parts) {
        widest = Math.max(widest, Letters.width(part.name, Look.LABEL));
      }
    }
    return widest;
  }

  private double widestValue() {
    double widest = 0;
    for (List<Bar> parts : List.of(sources, takers)) {
      for (Bar part : parts) {
        widest = Math.max(widest, Letters.width(valueOf(part), Look.LABEL.inBold()));
      }
    }
    return widest;
  }

  private Range axis() {
    double low = 0;
    double high = 0;
    for (List<Bar> parts : List.of(sources, takers)) {
      for (Bar part : parts) {
        low = Math.min(low, part.value / measure.scale);
        high = Math.max(high, part.value / measure.scale);
      }
    }
    double length = high - low;
    return length == 0
        ? new Range(0, 1)
        : new Range(low - (low < 0 ? 0.04 * length : 0), high + 0.04 * length);
  }

  private void paintGrid(Canvas canvas, Frame frame) {
    for (double tick : Ticks.decimal(frame.x(), frame.area().getWidth() / 60)) {
      double x = frame.acrossOf(tick);
      canvas.stroke(new Line2D.Double(x, frame.top(), x, frame.bottom()), new Pen(Look.GRID, 1));
      canvas.write(
          Look.plain(tick), new Anchor(x, frame.bottom() + 15, Alignment.MIDDLE), Look.TICK);
    }
    String sign = frame.x().low() < 0 ? "; left of zero: the other way round" : "";
    canvas.write(
        (measure == Measure.POWER ? "heat flow [" : "heat [") + measure.unit + "]" + sign,
        new Anchor(frame.area().getCenterX(), canvas.height() - Look.EDGE, Alignment.MIDDLE),
        Look.LABEL.inColor(Look.QUIET_INK));
  }

  /** Draws bars under their heading and returns where the next group may begin. */
  private double paintGroup(Canvas canvas, Frame frame, Group group, double top, double row) {
    double right = frame.left() - 14;
    canvas.write(group.heading, new Anchor(right, top + 16, Alignment.END), Look.LABEL.inBold());
    double y = top + HEADER;
    for (Bar part : group.parts) {
      double middle = y + row / 2;
      double thick = Math.min(20, row - 6);
      double zero = frame.acrossOf(0);
      double end = frame.acrossOf(part.value / measure.scale);
      Rectangle2D bar =
          new Rectangle2D.Double(
              Math.min(zero, end), middle - thick / 2, Math.abs(end - zero), thick);
      Color color = group.source ? Look.VERMILLION : Look.BLUE;
      // Hollow where heat runs against the heading, so that the difference needs no colour.
      canvas.fill(bar, part.value < 0 ? Color.WHITE : Look.withAlpha(color, 150));
      canvas.stroke(bar, new Pen(color, 1.4));
      canvas.write(
          Letters.fit(part.name, right - Look.EDGE, Look.LABEL),
          new Anchor(right, middle + 4, Alignment.END),
          Look.LABEL);
      canvas.write(
          valueOf(part),
          new Anchor(frame.right() + 14, middle + 4, Alignment.START),
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
  public static final class Builder {
    private final String title;
    private final Measure measure;
    private final List<Bar> sources = new ArrayList<>();
    private final List<Bar> takers = new ArrayList<>();
    private String subtitle = "";

    private Builder(String title, Measure measure) {
      this.title = title;
      this.measure = measure;
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
