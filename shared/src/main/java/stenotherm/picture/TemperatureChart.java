package stenotherm.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Times;
import stenotherm.words.Units;

/**
 * Temperature against time: curves with their names, the tolerance bands, the legs of the journey,
 * the range that an uncertain run likely lies in, the worst on both sides, and points that matter.
 *
 * <p>The axis has the scale of the reader's units; below stand the hours from sealing and, if
 * known, the local clock. More than two curves are named above the plot, in their order; two or one
 * beside them. Of other names one that has no place of its own is left out, limits last; if that
 * befalls a leg, all legs have numbers instead, with a key below where there is room for one.
 *
 * <p>Experimental. Immutable, thus thread-safe, if the clock given to the builder is.
 */
public final class TemperatureChart extends Picture {
  /** Height at which curves are well read [pixel]. */
  private static final int PLOT_HEIGHT = 230;

  final List<Curve> curves;
  final Optional<ShadedBand> uncertainty;
  final Optional<ShadedBand> worst;
  final Optional<Range> comfortable;
  final Optional<Range> alarm;
  final List<ChartLeg> legs;
  final List<Marker> markers;
  final Optional<DoubleFunction<String>> clock;
  final Units units;

  private TemperatureChart(Builder builder) {
    super(builder);
    curves = Checks.notEmpty("curves", builder.curves);
    uncertainty = Optional.ofNullable(builder.uncertainty);
    worst = Optional.ofNullable(builder.worst);
    comfortable = Optional.ofNullable(builder.comfortable);
    alarm = Optional.ofNullable(builder.alarm);
    legs = List.copyOf(builder.legs);
    markers = List.copyOf(builder.markers);
    clock = Optional.ofNullable(builder.clock);
    units = builder.units;
    Range time = time();
    if (!(time.high() > time.low())) {
      throw new InvalidInputException("curves", "have no duration");
    }
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

  /** The time that the axis shows [s]. */
  private Range time() {
    List<Double> times = new ArrayList<>();
    allCurves()
        .forEach(curve -> times.addAll(curve.points().stream().map(Curve.Reading::time).toList()));
    legs.forEach(leg -> times.addAll(List.of(leg.time().low(), leg.time().high())));
    markers.forEach(marker -> times.add(marker.point().time()));
    return spanOf(times);
  }

  /** The temperatures that are drawn, bands left aside [K]. */
  private Range temperatures() {
    List<Double> temperatures = new ArrayList<>();
    allCurves()
        .forEach(
            curve ->
                temperatures.addAll(
                    curve.points().stream().map(Curve.Reading::temperature).toList()));
    markers.forEach(marker -> temperatures.add(marker.point().temperature()));
    return spanOf(temperatures);
  }

  private static Range spanOf(List<Double> values) {
    return new Range(
        values.stream().mapToDouble(Double::doubleValue).min().orElseThrow(),
        values.stream().mapToDouble(Double::doubleValue).max().orElseThrow());
  }

  private Stream<Curve> allCurves() {
    return Stream.concat(
        curves.stream(),
        Stream.of(uncertainty, worst)
            .flatMap(Optional::stream)
            .flatMap(band -> Stream.of(band.low(), band.high())));
  }

  /**
   * Returns a height that leaves the curves enough room between the names of the legs.
   *
   * @param width width of the picture [pixel]
   * @return height [pixel]
   */
  public int heightFor(int width) {
    Canvas measured = new Canvas(width, PLOT_HEIGHT, title());
    double below = new TemperatureChartPainter(measured, this).heightWith(PLOT_HEIGHT);
    return (int) Math.ceil(headingHeight(width) + below);
  }

  @Override
  void draw(Canvas canvas, double top) {
    new TemperatureChartPainter(canvas, this).paint(top);
  }

  /** The time axis [h]. */
  Range hours() {
    Range time = time();
    return new Range(Times.toHours(time.low()), Times.toHours(time.high()));
  }

  /**
   * The temperature axis [K]: all that is drawn, and the ends of the bands unless they are far
   * away.
   */
  Range temperatureAxis() {
    Range drawn = temperatures();
    double near = Math.max(8, 0.6 * (drawn.high() - drawn.low()));
    double low = drawn.low();
    double high = drawn.high();
    for (Range band : Stream.concat(comfortable.stream(), alarm.stream()).toList()) {
      for (double end : new double[] {band.low(), band.high()}) {
        if (end >= drawn.low() - near && end <= drawn.high() + near) {
          low = Math.min(low, end);
          high = Math.max(high, end);
        }
      }
    }
    double margin = Math.max(1, 0.07 * (high - low));
    return new Range(low - margin, high + margin);
  }

  /**
   * Builds a {@link TemperatureChart}.
   *
   * <p>Experimental. Not thread-safe.
   */
  public static final class Builder extends Titled<Builder> {
    private final List<Curve> curves = new ArrayList<>();
    private final List<ChartLeg> legs = new ArrayList<>();
    private final List<Marker> markers = new ArrayList<>();
    private Units units = Units.METRIC;
    private @Nullable ShadedBand uncertainty;
    private @Nullable ShadedBand worst;
    private @Nullable Range comfortable;
    private @Nullable Range alarm;
    private @Nullable DoubleFunction<String> clock;

    private Builder(String title) {
      super(title);
    }

    /**
     * Sets the reader's units, which are metric otherwise.
     *
     * @param readers the units of the axis
     * @return this
     */
    public Builder units(Units readers) {
      units = readers;
      return this;
    }

    /**
     * Adds a curve; the first one is the main curve.
     *
     * @param curve the curve
     * @return this
     */
    public Builder curve(Curve curve) {
      curves.add(curve);
      return this;
    }

    /**
     * Sets the range around the main curve.
     *
     * @param band the range
     * @return this
     */
    public Builder uncertainty(ShadedBand band) {
      uncertainty = band;
      return this;
    }

    /**
     * Sets the coldest and the hottest that may be, drawn as lines and not shaded.
     *
     * @param band the two lines
     * @return this
     */
    public Builder worst(ShadedBand band) {
      worst = band;
      return this;
    }

    /**
     * Sets the comfortable band; an end may be infinite.
     *
     * @param band the band [K]
     * @return this
     */
    public Builder comfortable(Range band) {
      comfortable = band;
      return this;
    }

    /**
     * Sets the alarm band, outside of which harm is likely; an end may be infinite.
     *
     * @param band the band [K]
     * @return this
     */
    public Builder alarm(Range band) {
      alarm = band;
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
     * Adds a point that matters.
     *
     * @param marker the point
     * @return this
     */
    public Builder marker(Marker marker) {
      markers.add(marker);
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
     * @throws InvalidInputException if there is no curve, the title is blank or the curves have no
     *     duration
     */
    public TemperatureChart build() {
      return new TemperatureChart(this);
    }
  }
}
