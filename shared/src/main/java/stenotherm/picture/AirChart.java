package stenotherm.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import stenotherm.base.Checks;
import stenotherm.base.Range;
import stenotherm.base.Times;
import stenotherm.picture.HistoryChart.Line;
import stenotherm.picture.HistoryChart.Sample;

/**
 * The oxygen that animals breathe against time, with the moment of least, and below it the power of
 * the warmers on the same hours.
 *
 * <p>Experimental. Immutable, thus thread-safe, if the clock given to the builder is.
 */
public final class AirChart extends Picture {
  /** Height of one of the two plots [pixel]. */
  private static final double PLOT_HEIGHT = 130;

  private static final double BETWEEN = 22;

  /** Room for the number of an hour [pixel]. */
  private static final double NARROWEST_HOUR = 30;

  /** Oxygen in fresh air, below the upper end of its axis [%]. */
  private static final double MOST_OXYGEN = 22;

  private final List<Line> oxygen;
  private final List<Line> power;
  private final double harmful;
  private final String least;
  private final Sample leastAt;
  private final List<ChartLeg> legs;
  private final DoubleFunction<String> clock;

  private AirChart(Builder builder) {
    super(builder);
    oxygen = Checks.notEmpty("curves of oxygen", builder.oxygen);
    power = List.copyOf(builder.power);
    harmful = builder.harmful;
    least = builder.least;
    leastAt = Checks.given("moment of least oxygen", builder.leastAt);
    legs = List.copyOf(builder.legs);
    clock = builder.clock;
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
   * Returns a height that suits a width.
   *
   * @param width width of the picture [pixel]
   * @return height [pixel]
   */
  public int heightFor(int width) {
    double plots = power.isEmpty() ? PLOT_HEIGHT : 2 * PLOT_HEIGHT + BETWEEN;
    double keys = key(oxygen).height(width) + key(power).height(width);
    return (int) Math.ceil(headingHeight(width) + 4 + keys + plots + Plot.spaceBelow(2));
  }

  private static CurveKey key(List<Line> lines) {
    return CurveKey.ofMany(lines.stream().map(Line::name).toList());
  }

  @Override
  void draw(Canvas canvas, double top) {
    double right = canvas.width() - 2 * Look.EDGE;
    double bottom = canvas.height() - Plot.spaceBelow(2);
    double underKey = top + key(oxygen).height(canvas.width());
    double keyOfPower = key(power).height(canvas.width());
    double room = bottom - underKey - 4;
    double height = power.isEmpty() ? room : (room - BETWEEN - keyOfPower) / 2;
    Picture.requireHeight("this chart of air", canvas, 60 - height);
    Range hours = hours();
    Plot above =
        new Plot(
            canvas,
            new Area(Plot.SIDE_SPACE, underKey + 4, right, underKey + 4 + height),
            hours,
            new Range(Math.min(lowest(), harmful) - 1, MOST_OXYGEN));
    key(oxygen).paint(canvas, top);
    shadeLegs(canvas, above);
    canvas.fill(above.part(hours, new Range(above.y().low(), harmful)), Look.SHADE);
    above.axis(Plot.Edge.LEFT, Plot.Tick.all(Ticks.decimal(above.y(), 5)), Plot.Mark.GRID);
    above.title(Plot.Edge.LEFT, "oxygen [%]");
    draw(above, oxygen);
    Pixel point = above.pixel(Times.toHours(leastAt.time()), leastAt.value());
    above.point(point);
    // where there is no place for all texts, the limit matters most
    above.nameLevel("too little below " + Look.plain(harmful) + " %", harmful, false);
    above.note(least, point);
    name(above, oxygen);
    above.border();
    Plot last = above;
    if (!power.isEmpty()) {
      double most = values(power).max(Double::compare).orElse(1.0);
      last =
          new Plot(
              canvas,
              new Area(Plot.SIDE_SPACE, bottom - height, right, bottom),
              hours,
              new Range(0, Math.max(0.1, 1.15 * most)));
      key(power).paint(canvas, bottom - height - keyOfPower);
      shadeLegs(canvas, last);
      last.axis(Plot.Edge.LEFT, Plot.Tick.all(Ticks.decimal(last.y(), 4)), Plot.Mark.GRID);
      last.title(Plot.Edge.LEFT, "warmer [W]");
      draw(last, power);
      name(last, power);
      last.border();
    }
    last.hourAxis(Optional.of(clock), NARROWEST_HOUR);
  }

  private static void draw(Plot plot, List<Line> lines) {
    plot.curves(lines.stream().map(line -> pixels(plot, line)).toList(), Plot.WIDTH_OF_FIRST);
  }

  /** A single curve needs no name: the axis has it. */
  private static void name(Plot plot, List<Line> lines) {
    boolean beside = lines.size() > 1 && key(lines).isEmpty();
    for (int i = 0; i < lines.size() && beside; i++) {
      plot.name(lines.get(i).name(), pixels(plot, lines.get(i)), i);
    }
  }

  private static List<Pixel> pixels(Plot plot, Line line) {
    return Plot.reduced(
        line.samples().stream()
            .map(each -> plot.pixel(Times.toHours(each.time()), each.value()))
            .toList());
  }

  private void shadeLegs(Canvas canvas, Plot plot) {
    for (int leg = 0; leg < legs.size(); leg += 2) {
      Range time = legs.get(leg).time();
      Range across = new Range(Times.toHours(time.low()), Times.toHours(time.high()));
      canvas.fill(plot.part(across, plot.y()), Look.FAINT_SHADE);
    }
  }

  private Range hours() {
    List<Sample> samples = oxygen.get(0).samples();
    return new Range(
        Times.toHours(samples.get(0).time()),
        Times.toHours(samples.get(samples.size() - 1).time()));
  }

  private double lowest() {
    return values(oxygen).min(Double::compare).orElseThrow();
  }

  private static Stream<Double> values(List<Line> lines) {
    return lines.stream().flatMap(line -> line.samples().stream()).map(Sample::value);
  }

  /**
   * Builds an {@link AirChart}.
   *
   * <p>Experimental. Not thread-safe.
   */
  public static final class Builder extends Titled<Builder> {
    private final List<Line> oxygen = new ArrayList<>();
    private final List<Line> power = new ArrayList<>();
    private final List<ChartLeg> legs = new ArrayList<>();
    private DoubleFunction<String> clock = time -> "";
    private double harmful;
    private String least = "";
    private @Nullable Sample leastAt;

    private Builder(String title) {
      super(title);
    }

    /**
     * Adds the oxygen of an animal's air.
     *
     * @param line oxygen over the time from sealing [% against s]
     * @return this
     */
    public Builder oxygen(Line line) {
      oxygen.add(line);
      return this;
    }

    /**
     * Adds the power of a warmer.
     *
     * @param line power over the time from sealing [W against s]
     * @return this
     */
    public Builder power(Line line) {
      power.add(line);
      return this;
    }

    /**
     * Sets how little oxygen is too little.
     *
     * @param percent oxygen [%]
     * @return this
     */
    public Builder harmful(double percent) {
      harmful = percent;
      return this;
    }

    /**
     * Marks the moment of least oxygen.
     *
     * @param text what is to be said of it
     * @param at the moment
     * @return this
     */
    public Builder least(String text, Sample at) {
      least = text;
      leastAt = at;
      return this;
    }

    /**
     * Adds a leg of the journey.
     *
     * @param leg the leg
     * @return this
     */
    public Builder leg(ChartLeg leg) {
      legs.add(leg);
      return this;
    }

    /**
     * Shows the local clock under the hours.
     *
     * @param format gives the text for a time from sealing [s]
     * @return this
     */
    public Builder clock(DoubleFunction<String> format) {
      clock = format;
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
     * @throws stenotherm.base.InvalidInputException if there is no curve of oxygen or its least is
     *     not given
     */
    public AirChart build() {
      return new AirChart(this);
    }
  }
}
