package stenotherm.picture;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stenotherm.base.Range;
import stenotherm.base.Times;
import stenotherm.picture.Canvas.Alignment;
import stenotherm.picture.Canvas.Dash;
import stenotherm.picture.Canvas.Pen;

/** Draws one {@link TemperatureChart} on one canvas. */
final class TemperatureChartPainter {
  private static final double NARROWEST_HOUR = 52;
  private static final double LEG_ROW = 17;
  private static final int MOST_LEG_ROWS = 5;
  private static final double KEY_LINE = 16;
  private static final double KEY_GAP = 8;
  private static final double NAME_GAP = 8;
  private static final double NUMBER_GAP = 4;
  private static final double SMALLEST_PLOT = 120;

  private final Canvas canvas;
  private final TemperatureChart chart;
  private final CurveKey curveKey;

  TemperatureChartPainter(Canvas canvas, TemperatureChart chart) {
    this.canvas = canvas;
    this.chart = chart;
    this.curveKey = CurveKey.ofMany(chart.curves.stream().map(Curve::name).toList());
  }

  /** A leg's name with the row that it stands in, 0 next to the plot. */
  private record LegLabel(String text, Range across, double legMiddle, int row) {
    /** Whether the names above the strip, or the line of one and the other, would touch. */
    boolean meets(LegLabel other) {
      if (row == 0 || other.row == 0) {
        return false;
      }
      if (row == other.row) {
        return across.low() < other.across.high() && other.across.low() < across.high();
      }
      LegLabel upper = row > other.row ? this : other;
      LegLabel lower = row > other.row ? other : this;
      return upper.legMiddle > lower.across.low() && upper.legMiddle < lower.across.high();
    }
  }

  /**
   * The labels of legs, and the lines of the key to them.
   *
   * @param labels the names or numbers that have a place
   * @param key what the numbers stand for; empty for names
   */
  private record LegNames(List<LegLabel> labels, List<String> key) {
    double heightAbove() {
      return labels.isEmpty()
          ? 0
          : LEG_ROW * (1 + labels.stream().mapToInt(LegLabel::row).max().orElse(0));
    }

    double heightBelow() {
      return key.isEmpty() ? 0 : KEY_GAP + KEY_LINE * key.size();
    }

    double height() {
      return heightAbove() + heightBelow();
    }
  }

  /** The height of all that stands below the heading, with a plot of some height [pixel]. */
  double heightWith(double plotHeight) {
    return curveKey.height(canvas.width()) + numbersIfNeeded().height() + plotHeight + spaceBelow();
  }

  private double spaceBelow() {
    return Plot.spaceBelow(chart.clock.isPresent() ? 2 : 1);
  }

  /** The last text of the clock reaches beyond the plot. */
  private double right() {
    return canvas.width() - (chart.clock.isPresent() ? 4 : 2) * Look.EDGE - 4;
  }

  void paint(double headingEnd) {
    double top = headingEnd + curveKey.height(canvas.width());
    double room = canvas.height() - spaceBelow() - top;
    LegNames named = numbersIfNeeded();
    if (room - named.height() < SMALLEST_PLOT) {
      // rather names that fit than no picture
      named = names();
    }
    Picture.requireHeight(
        "this temperature chart", canvas, SMALLEST_PLOT - (room - named.height()));
    double bottom = top + room - named.heightBelow();
    Area area = new Area(Plot.SIDE_SPACE, top + named.heightAbove(), right(), bottom);
    Plot plot = new Plot(canvas, area, chart.hours(), chart.temperatureAxis());
    curveKey.paint(canvas, headingEnd);
    paintKey(named.key(), bottom + spaceBelow() - Look.EDGE + KEY_GAP);
    paintBands(plot);
    paintAxes(plot);
    paintLegs(plot, named.labels());
    paintUncertainty(plot);
    paintWorst(plot);
    paintAlarm(plot);
    List<List<Pixel>> curves = chart.curves.stream().map(curve -> pixels(curve, plot)).toList();
    plot.curves(curves, Plot.WIDTH_OF_FIRST);
    List<Pixel> points = chart.markers.stream().map(marker -> pixel(marker.point(), plot)).toList();
    points.forEach(plot::point);
    nameLimits(plot);
    for (int i = 0; i < points.size(); i++) {
      plot.note(chart.markers.get(i).text(), points.get(i));
    }
    for (int i = 0; i < curves.size() && curveKey.isEmpty(); i++) {
      plot.name(chart.curves.get(i).name(), curves.get(i), i);
    }
    nameBands(plot);
    plot.border();
  }

  private static List<Pixel> pixels(Curve curve, Plot plot) {
    return Plot.reduced(curve.points().stream().map(point -> pixel(point, plot)).toList());
  }

  private static Pixel pixel(Curve.Reading reading, Plot plot) {
    return plot.pixel(Times.toHours(reading.time()), reading.temperature());
  }

  private void paintBands(Plot plot) {
    chart.alarm.ifPresent(
        band -> {
          fillBetween(plot, plot.y().low(), band.low(), Look.SHADE);
          fillBetween(plot, band.high(), plot.y().high(), Look.SHADE);
        });
    chart.comfortable.ifPresent(
        band -> fillBetween(plot, band.low(), band.high(), Look.YELLOW.withOpacity(0.3)));
  }

  private void fillBetween(Plot plot, double from, double to, Color color) {
    double low = Math.max(from, plot.y().low());
    double high = Math.min(to, plot.y().high());
    if (low < high) {
      canvas.fill(plot.part(plot.x(), new Range(low, high)), color);
    }
  }

  private void paintAxes(Plot plot) {
    TemperatureScale scale = TemperatureScale.of(chart.units);
    plot.axis(Plot.Edge.LEFT, degrees(plot, scale), Plot.Mark.GRID);
    plot.title(Plot.Edge.LEFT, "temperature [" + scale.unit() + "]");
    plot.hourAxis(chart.clock, NARROWEST_HOUR);
  }

  private static List<Plot.Tick> degrees(Plot plot, TemperatureScale scale) {
    Range range = new Range(scale.of(plot.y().low()), scale.of(plot.y().high()));
    List<Double> ticks = Ticks.decimal(range, plot.area().height() / 34);
    return Plot.Tick.all(ticks, scale::kelvin, Look::plain);
  }

  /**
   * Puts a leg's name into the leg's own strip if it fits there, else above it at a line from the
   * leg. Names are placed from the right, each in the lowest row where neither it nor its line
   * meets another; a name without a place is left out.
   */
  private List<LegLabel> legLabels(List<String> names, double gap) {
    double right = right();
    // where names are across does not depend on how high the plot is
    Plot plot =
        new Plot(
            canvas, new Area(Plot.SIDE_SPACE, 0, right, 1), chart.hours(), chart.temperatureAxis());
    List<LegLabel> labels = new ArrayList<>();
    for (int i = chart.legs.size() - 1; i >= 0; i--) {
      String name = names.get(i);
      Range across = across(chart.legs.get(i), plot);
      double middle = (across.low() + across.high()) / 2;
      double width = Letters.width(name, Look.LABEL) + gap;
      if (width <= across.high() - across.low()) {
        labels.add(new LegLabel(name, wide(middle - width / 2, width), middle, 0));
      } else {
        Range beside = wide(Math.min(middle - gap / 2, right - width), width);
        above(name, middle, beside, labels).ifPresent(labels::add);
      }
    }
    return labels;
  }

  private static Optional<LegLabel> above(
      String name, double middle, Range across, List<LegLabel> placed) {
    return IntStream.rangeClosed(1, across.low() < Plot.SIDE_SPACE - 4 ? 0 : MOST_LEG_ROWS)
        .mapToObj(row -> new LegLabel(name, across, middle, row))
        .filter(label -> placed.stream().noneMatch(label::meets))
        .findFirst();
  }

  private LegNames names() {
    List<String> names = chart.legs.stream().map(ChartLeg::name).toList();
    return new LegNames(legLabels(names, NAME_GAP), List.of());
  }

  /** Numbers with a key, unless every name has a place. */
  private LegNames numbersIfNeeded() {
    LegNames named = names();
    if (named.labels().size() == chart.legs.size()) {
      return named;
    }
    List<String> numbers =
        IntStream.rangeClosed(1, chart.legs.size()).mapToObj(Integer::toString).toList();
    return new LegNames(legLabels(numbers, NUMBER_GAP), keyOfLegs(numbers));
  }

  private void paintKey(List<String> key, double above) {
    double baseline = above;
    for (String line : key) {
      baseline += KEY_LINE;
      canvas.write(line, new Pixel(Look.EDGE, baseline - 4), Alignment.START, Look.LABEL);
    }
  }

  /** What the numbers of legs stand for, as many to a line as there is room for. */
  private List<String> keyOfLegs(List<String> numbers) {
    double room = canvas.width() - 2 * Look.EDGE;
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < numbers.size(); i++) {
      String entry = numbers.get(i) + " " + chart.legs.get(i).name();
      String longer = lines.isEmpty() ? entry : lines.get(lines.size() - 1) + "; " + entry;
      if (!lines.isEmpty() && Letters.width(longer, Look.LABEL) <= room) {
        lines.set(lines.size() - 1, longer);
      } else {
        lines.add(Letters.fit(entry, room, Look.LABEL));
      }
    }
    return lines;
  }

  private static Range wide(double left, double width) {
    return new Range(left, left + width);
  }

  private static Range across(ChartLeg leg, Plot plot) {
    return new Range(
        plot.acrossOf(Times.toHours(leg.time().low())),
        plot.acrossOf(Times.toHours(leg.time().high())));
  }

  private void paintLegs(Plot plot, List<LegLabel> labels) {
    Area area = plot.area();
    double stripTop = area.top() - LEG_ROW;
    Pen boundary = new Pen(new Color(120, 120, 120), 1, Dash.SHORT);
    for (int i = 0; i < chart.legs.size(); i++) {
      Range across = across(chart.legs.get(i), plot);
      canvas.fill(
          new Area(across.low(), stripTop, across.high(), area.top()),
          i % 2 == 0 ? new Color(214, 214, 214) : new Color(238, 238, 238));
      if (i % 2 == 0) {
        canvas.fill(
            new Area(across.low(), area.top(), across.high(), area.bottom()), Look.FAINT_SHADE);
      }
      if (across.low() > area.left() + 1) {
        canvas.line(across.low(), stripTop, across.low(), area.bottom(), boundary);
      }
    }
    for (LegLabel label : labels) {
      double baseline = area.top() - label.row() * LEG_ROW - 5;
      if (label.row() > 0) {
        // A name above other names points at its leg.
        Pen pen = new Pen(Look.QUIET_INK, 1);
        canvas.line(label.legMiddle(), baseline + 3, label.legMiddle(), stripTop + 5, pen);
      }
      double middle = (label.across().low() + label.across().high()) / 2;
      canvas.write(label.text(), new Pixel(middle, baseline), Alignment.MIDDLE, Look.LABEL);
    }
  }

  private void paintUncertainty(Plot plot) {
    chart.uncertainty.ifPresent(
        band -> {
          List<Pixel> loop = new ArrayList<>(pixels(band.high(), plot));
          List<Pixel> low = new ArrayList<>(pixels(band.low(), plot));
          Collections.reverse(low);
          loop.addAll(low);
          canvas.fill(List.of(loop), Plot.colorOf(0).withOpacity(0.2));
        });
  }

  private void paintWorst(Plot plot) {
    chart.worst.ifPresent(
        band -> {
          for (Curve curve : List.of(band.low(), band.high())) {
            canvas.line(pixels(curve, plot), new Pen(Look.INK, 1.4, Dash.DOTTED));
          }
        });
  }

  private void paintAlarm(Plot plot) {
    chart.alarm.ifPresent(
        band -> {
          for (double end : new double[] {band.low(), band.high()}) {
            if (plot.y().contains(end)) {
              Pixel from = plot.pixel(plot.x().low(), end);
              Pixel to = plot.pixel(plot.x().high(), end);
              canvas.line(List.of(from, to), new Pen(Look.INK, 1.4, Dash.LONG));
              plot.placer().avoid(from, to);
            }
          }
        });
  }

  /** Before all else is named: where there is no place for all names, limits matter most. */
  private void nameLimits(Plot plot) {
    chart.alarm.ifPresent(
        band -> {
          nameEdge(plot, "too cold below ", band.low(), false);
          nameEdge(plot, "too hot above ", band.high(), true);
        });
  }

  private void nameBands(Plot plot) {
    Color shade = Plot.colorOf(0).forLetters();
    chart.uncertainty.ifPresent(band -> nameBand(plot, band, List.of(band.low()), shade));
    chart.worst.ifPresent(band -> nameBand(plot, band, List.of(band.low(), band.high()), Look.INK));
    chart.comfortable.ifPresent(
        band -> {
          nameEdge(plot, "comfortable below ", band.high(), false);
          nameEdge(plot, "comfortable above ", band.low(), true);
        });
  }

  private static void nameBand(Plot plot, ShadedBand band, List<Curve> named, Color color) {
    plot.placer().avoid(pixels(band.low(), plot));
    plot.placer().avoid(pixels(band.high(), plot));
    for (Curve curve : named) {
      plot.name(band.name(), pixels(curve, plot), Look.TICK.inColor(color).withHalo());
    }
  }

  private void nameEdge(Plot plot, String words, double temperature, boolean above) {
    if (plot.y().contains(temperature)) {
      plot.nameLevel(words + Look.temperature(temperature, chart.units), temperature, above);
    }
  }
}
