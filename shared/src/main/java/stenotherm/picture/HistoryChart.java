package stenotherm.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Times;

/**
 * Any quantity against time: computed curves with their names, and values that they are compared
 * with as open circles. The names of more than two stand above, each behind a piece of its line.
 *
 * <p>The time axis is in seconds, minutes, hours or days, whatever gives numbers that are easy to
 * read. A name for which there is no place that covers nothing is left out.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class HistoryChart extends Picture {
  /** Radius of circles that belong to one of several curves [pixel]. */
  private static final double SMALL = 3;

  private final String quantity;
  private final List<Line> lines;
  private final List<Mark> marks;

  /**
   * A value at a time.
   *
   * <p>Experimental. A value, thus thread-safe.
   *
   * @param time time [s]
   * @param value the value [unit of the axis]
   */
  public record Sample(double time, double value) {
    /**
     * Checks the numbers.
     *
     * @param time time [s]
     * @param value the value
     * @throws InvalidInputException if one is not finite
     */
    public Sample {
      Checks.finite("time", time, "s");
      Checks.finite("value", value, "");
    }
  }

  /**
   * A named curve.
   *
   * <p>Experimental. Immutable, thus thread-safe.
   *
   * @param name the name that stands at the curve
   * @param samples its points in time order, joined by straight lines, at least two
   */
  public record Line(String name, List<Sample> samples) {
    /**
     * Checks the curve and copies its points.
     *
     * @param name the name
     * @param samples the points
     * @throws InvalidInputException if the name is blank or there are fewer than two points
     */
    public Line {
      Checks.name("curve name", name);
      samples = List.copyOf(samples);
      if (samples.size() < 2) {
        throw new InvalidInputException("curve '" + name + "'", "needs at least two points");
      }
    }
  }

  /** A value to compare a curve with, by the curve's number. */
  private record Mark(Sample sample, int line) {}

  /** The unit of the time axis. */
  enum TimeUnit {
    SECONDS("s", 1),
    MINUTES("min", Times.MINUTE),
    HOURS("h", Times.HOUR),
    DAYS("d", Times.DAY);

    private final String label;
    private final double seconds;

    TimeUnit(String label, double seconds) {
      this.label = label;
      this.seconds = seconds;
    }
  }

  private HistoryChart(Builder builder) {
    super(builder);
    quantity = Checks.name("quantity", builder.quantity);
    lines = Checks.notEmpty("curves", builder.lines);
    marks = List.copyOf(builder.marks);
    Range time = time();
    if (!(time.high() > time.low())) {
      throw new InvalidInputException("curves", "have no duration");
    }
  }

  /**
   * Starts a chart.
   *
   * @param title what the chart shows, which stands above it
   * @param quantity the quantity with its unit, which stands at the axis, for example {@code "heat
   *     flow [W]"}
   * @return a builder
   */
  public static Builder titled(String title, String quantity) {
    return new Builder(title, quantity);
  }

  /**
   * Returns a height that suits a width.
   *
   * @param width width of the picture [pixel]
   * @param plain what would suit if names took no room [pixel]
   * @return height [pixel]
   */
  public int heightFor(int width, int plain) {
    return plain + (int) Math.ceil(key().height(width));
  }

  private CurveKey key() {
    return CurveKey.ofMany(lines.stream().map(Line::name).toList());
  }

  @Override
  void draw(Canvas canvas, double top) {
    TimeUnit unit = timeUnit();
    Range time = new Range(time().low() / unit.seconds, time().high() / unit.seconds);
    double right = canvas.width() - 2 * Look.EDGE;
    double bottom = canvas.height() - Plot.spaceBelow(1);
    CurveKey key = key();
    key.paint(canvas, top);
    double above = top + key.height(canvas.width()) + 4;
    Plot plot = new Plot(canvas, new Area(Plot.SIDE_SPACE, above, right, bottom), time, axis());
    plot.axis(Plot.Edge.LEFT, ticks(plot.y(), plot.area().height() / 40), Plot.Mark.GRID);
    plot.axis(Plot.Edge.BELOW, ticks(plot.x(), plot.area().width() / 60), Plot.Mark.GRID);
    plot.title(Plot.Edge.LEFT, quantity);
    plot.title(Plot.Edge.BELOW, "time [" + unit.label + "]");
    List<List<Pixel>> curves =
        lines.stream().map(line -> Plot.reduced(pixels(plot, line.samples(), unit))).toList();
    plot.curves(curves, 1.8);
    for (Mark mark : marks) {
      Pixel point = plot.pixel(mark.sample().time() / unit.seconds, mark.sample().value());
      if (lines.size() == 1) {
        plot.point(point);
      } else {
        plot.point(point, Plot.colorOf(Math.max(0, mark.line())), SMALL);
      }
    }
    for (int i = 0; i < curves.size() && key.isEmpty(); i++) {
      plot.name(lines.get(i).name(), curves.get(i), i);
    }
    plot.border();
  }

  private static List<Pixel> pixels(Plot plot, List<Sample> samples, TimeUnit unit) {
    return samples.stream()
        .map(sample -> plot.pixel(sample.time() / unit.seconds, sample.value()))
        .toList();
  }

  private static List<Plot.Tick> ticks(Range range, double most) {
    return Plot.Tick.all(Ticks.decimal(range, most), value -> value, HistoryChart::number);
  }

  /** Small numbers keep their digits; a tick of a heat flow may be a milliwatt. */
  private static String number(double value) {
    return Math.abs(value) >= 0.01 || value == 0
        ? Look.plain(value)
        : Look.minus(String.format(Locale.ROOT, "%.3g", value));
  }

  /** The time that the axis shows [s]. */
  Range time() {
    return span(all().mapToDouble(Sample::time).toArray());
  }

  TimeUnit timeUnit() {
    double length = time().high() - time().low();
    TimeUnit best = TimeUnit.SECONDS;
    for (TimeUnit unit : TimeUnit.values()) {
      if (length >= 3 * unit.seconds) {
        best = unit;
      }
    }
    return best;
  }

  /** The values that the axis shows, with a margin. */
  Range axis() {
    Range drawn = span(all().mapToDouble(Sample::value).toArray());
    double extent = drawn.high() - drawn.low();
    // a constant needs an axis, too
    double margin = extent > 0 ? 0.07 * extent : Math.max(1, 0.1 * Math.abs(drawn.high()));
    return new Range(drawn.low() - margin, drawn.high() + margin);
  }

  private Stream<Sample> all() {
    return Stream.concat(
        lines.stream().flatMap(line -> line.samples().stream()), marks.stream().map(Mark::sample));
  }

  private static Range span(double[] values) {
    return new Range(
        Arrays.stream(values).min().orElseThrow(), Arrays.stream(values).max().orElseThrow());
  }

  /**
   * Builds a {@link HistoryChart}.
   *
   * <p>Experimental. Not thread-safe.
   */
  public static final class Builder extends Titled<Builder> {
    private final String quantity;
    private final List<Line> lines = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();

    private Builder(String title, String quantity) {
      super(title);
      this.quantity = quantity;
    }

    /**
     * Adds a curve.
     *
     * @param line the curve
     * @return this
     */
    public Builder line(Line line) {
      lines.add(line);
      return this;
    }

    /**
     * Adds a value to compare the curve added last with, which gives its colour where there are
     * several.
     *
     * @param mark the value
     * @return this
     */
    public Builder mark(Sample mark) {
      marks.add(new Mark(mark, lines.size() - 1));
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
     * @throws InvalidInputException if there is no curve, the title is blank or the curves have no
     *     duration
     */
    public HistoryChart build() {
      return new HistoryChart(this);
    }
  }
}
