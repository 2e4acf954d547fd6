package stenotherm.picture;

import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stenotherm.base.Range;
import stenotherm.base.Times;
import stenotherm.picture.Canvas.Alignment;
import stenotherm.picture.Canvas.Anchor;
import stenotherm.picture.Canvas.Dash;
import stenotherm.picture.Canvas.Lettering;
import stenotherm.picture.Canvas.Pen;
import stenotherm.picture.LabelPlacer.Candidate;

/** Draws one {@link TemperatureChart} on one canvas. */
final class TemperatureChartPainter {
  private static final double SIDE = 62;
  private static final double NARROWEST_HOUR = 52;
  private static final double LEG_ROW = 17;
  private static final int MOST_LEG_ROWS = 5;
  private static final double SHORTEST_LEG_NAME = 24;
  private static final double SMALLEST_PLOT = 120;
  private static final double LABEL_HEIGHT = 14;
  private static final double LONGEST_PIECE = 4;

  private final Canvas canvas;
  private final TemperatureChart chart;

  TemperatureChartPainter(Canvas canvas, TemperatureChart chart) {
    this.canvas = canvas;
    this.chart = chart;
  }

  /** A leg's name with the row that it stands in, 0 next to the plot. */
  private record LegLabel(String text, Rectangle2D box, double legMiddle, int row) {
    /** Whether the names above the strip, or the line of one and the other, would touch. */
    boolean meets(LegLabel other) {
      if (row == 0 || other.row == 0) {
        return false;
      }
      if (row == other.row) {
        return box.getMinX() < other.box.getMaxX() && other.box.getMinX() < box.getMaxX();
      }
      LegLabel upper = row > other.row ? this : other;
      LegLabel lower = row > other.row ? other : this;
      return upper.legMiddle > lower.box.getMinX() && upper.legMiddle < lower.box.getMaxX();
    }
  }

  void paint() {
    double top = Look.writeHeading(canvas, chart.title(), chart.subtitle());
    double left = SIDE;
    double right = canvas.width() - SIDE;
    double bottom = canvas.height() - (chart.clock().isPresent() ? 56 : 41);
    Range hours = chart.hours();
    List<LegLabel> legLabels =
        legLabels(new Frame(new Rectangle2D.Double(left, 0, right - left, 1), hours, hours));
    int highestRow = legLabels.stream().mapToInt(LegLabel::row).max().orElse(0);
    double legRows = chart.legs().isEmpty() ? 0 : highestRow + 1;
    double plotTop = top + legRows * LEG_ROW;
    if (bottom - plotTop < SMALLEST_PLOT) {
      throw Picture.tooSmall(
          "this temperature chart",
          "a height of at least "
              + (int) Math.ceil(canvas.height() + SMALLEST_PLOT - (bottom - plotTop))
              + " pixels");
    }
    Frame frame =
        new Frame(
            new Rectangle2D.Double(left, plotTop, right - left, bottom - plotTop),
            hours,
            chart.temperatureAxis());

    LabelPlacer placer = new LabelPlacer(frame.area());
    paintBands(frame);
    paintGrid(frame);
    paintLegs(frame, legLabels);
    paintUncertainty(frame);
    List<List<Point2D>> lines =
        chart.curves().stream().map(curve -> reduced(curve, frame)).toList();
    lines.forEach(line -> avoid(placer, line));
    paintBandEdges(frame, placer);
    for (int i = lines.size() - 1; i >= 0; i--) {
      canvas.stroke(pathOf(lines.get(i)), penOf(i));
    }
    paintMarkers(frame, placer);
    for (int i = 0; i < lines.size(); i++) {
      Lettering lettering = Look.LABEL.inBold().inColor(colorOf(i)).withHalo();
      writeAlong(lines.get(i), chart.curves().get(i).name(), lettering, placer);
    }
    writeUncertaintyName(frame, placer);
    writeBandNames(frame, placer);
    canvas.stroke(frame.area(), new Pen(Look.QUIET_INK, 1));
  }

  private static Color colorOf(int index) {
    return Look.CURVE_COLORS.get(index % Look.CURVE_COLORS.size());
  }

  private static Pen penOf(int index) {
    Dash dash = Look.CURVE_DASHES.get(index % Look.CURVE_DASHES.size());
    return new Pen(colorOf(index), index == 0 ? 2.6 : 1.8, dash);
  }

  private void paintBands(Frame frame) {
    chart
        .alarm()
        .ifPresent(
            band -> {
              fillBetween(frame, new Range(Double.NEGATIVE_INFINITY, band.low()), Look.SHADE);
              fillBetween(frame, new Range(band.high(), Double.POSITIVE_INFINITY), Look.SHADE);
            });
    chart
        .comfortable()
        .ifPresent(band -> fillBetween(frame, band, Look.withAlpha(Look.YELLOW, 76)));
  }

  private void fillBetween(Frame frame, Range band, Color color) {
    double low = Math.max(band.low(), frame.y().low());
    double high = Math.min(band.high(), frame.y().high());
    if (low < high) {
      canvas.fill(
          new Rectangle2D.Double(
              frame.left(),
              frame.downOf(high),
              frame.area().getWidth(),
              frame.downOf(low) - frame.downOf(high)),
          color);
    }
  }

  private void paintGrid(Frame frame) {
    Pen pen = new Pen(Look.GRID, 1);
    double ticksDown = frame.area().getHeight() / 34;
    TemperatureScale scale = TemperatureScale.of(chart.units());
    Range left = new Range(scale.of(frame.y().low()), scale.of(frame.y().high()));
    for (double tick : Ticks.decimal(left, ticksDown)) {
      double y = frame.downOf(scale.kelvin(tick));
      canvas.stroke(new Line2D.Double(frame.left(), y, frame.right(), y), pen);
      write(Look.plain(tick), frame.left() - 6, y + 4, Alignment.END, Look.TICK);
    }
    TemperatureScale other = scale.other();
    Range right = new Range(other.of(frame.y().low()), other.of(frame.y().high()));
    for (double tick : Ticks.decimal(right, ticksDown)) {
      double y = frame.downOf(other.kelvin(tick));
      Line2D mark = new Line2D.Double(frame.right(), y, frame.right() + 4, y);
      canvas.stroke(mark, new Pen(Look.QUIET_INK, 1));
      write(Look.plain(tick), frame.right() + 7, y + 4, Alignment.START, Look.TICK);
    }
    for (double tick : hourTicks(frame)) {
      double x = frame.acrossOf(tick);
      canvas.stroke(new Line2D.Double(x, frame.bottom(), x, frame.bottom() + 4), pen);
      write(Look.plain(tick), x, frame.bottom() + 16, Alignment.MIDDLE, Look.TICK);
      chart
          .clock()
          .ifPresent(
              clock -> {
                String text = clock.apply(Times.fromHours(tick));
                write(text, x, frame.bottom() + 31, Alignment.MIDDLE, Look.TICK);
              });
    }
    double middle = frame.area().getCenterY();
    Lettering axis = Look.LABEL.inColor(Look.QUIET_INK);
    write(
        "temperature [" + scale.unit() + "]", 20, middle, Alignment.MIDDLE, axis.runningUpwards());
    write(
        "[" + other.unit() + "]",
        canvas.width() - 12,
        middle,
        Alignment.MIDDLE,
        axis.runningUpwards());
    String time =
        chart.clock().isPresent()
            ? "hours from sealing [h], local clock"
            : "hours from sealing [h]";
    write(time, frame.area().getCenterX(), canvas.height() - Look.EDGE, Alignment.MIDDLE, axis);
  }

  /** Hours at the axis, so far apart that the clock's texts do not touch. */
  private List<Double> hourTicks(Frame frame) {
    double width = frame.area().getWidth();
    List<Double> ticks = Ticks.hours(frame.x(), width / NARROWEST_HOUR);
    double widest =
        ticks.stream()
            .mapToDouble(
                tick ->
                    chart
                        .clock()
                        .map(clock -> Letters.width(clock.apply(Times.fromHours(tick)), Look.TICK))
                        .orElse(0.0))
            .max()
            .orElse(0);
    return Ticks.hours(frame.x(), width / Math.max(NARROWEST_HOUR, widest + 14));
  }

  private void write(String text, double x, double y, Alignment alignment, Lettering lettering) {
    canvas.write(text, new Anchor(x, y, alignment), lettering);
  }

  /**
   * Puts a leg's name into the leg's own strip if it fits there, else above it at a line from the
   * leg. Names are placed from the right, each in the lowest row where neither it nor its line
   * meets another; a name without a place is shortened, and left out if nothing remains.
   */
  private List<LegLabel> legLabels(Frame frame) {
    List<LegLabel> labels = new ArrayList<>();
    for (int i = chart.legs().size() - 1; i >= 0; i--) {
      ChartLeg leg = chart.legs().get(i);
      double start = frame.acrossOf(Times.toHours(leg.time().low()));
      double end = frame.acrossOf(Times.toHours(leg.time().high()));
      double width = Letters.width(leg.name(), Look.LABEL) + 8;
      if (width <= end - start) {
        double left = (start + end - width) / 2;
        labels.add(new LegLabel(leg.name(), legBox(left, width), (start + end) / 2, 0));
      } else {
        above(leg.name(), (start + end) / 2, frame, labels).ifPresent(labels::add);
      }
    }
    return labels;
  }

  private static Optional<LegLabel> above(
      String name, double middle, Frame frame, List<LegLabel> placed) {
    for (String text = name;
        text.equals(name) || Letters.width(text, Look.LABEL) >= SHORTEST_LEG_NAME;
        text = Letters.fit(name, 0.8 * Letters.width(text, Look.LABEL), Look.LABEL)) {
      double width = Letters.width(text, Look.LABEL) + 8;
      double left = Math.min(middle - 4, frame.right() - width);
      for (int row = 1; row <= MOST_LEG_ROWS; row++) {
        LegLabel label = new LegLabel(text, legBox(left, width), middle, row);
        if (left >= frame.left() - 4 && placed.stream().noneMatch(label::meets)) {
          return Optional.of(label);
        }
      }
    }
    return Optional.empty();
  }

  private static Rectangle2D legBox(double left, double width) {
    return new Rectangle2D.Double(left, 0, width, LEG_ROW);
  }

  private static double clamp(double value, double low, double high) {
    return Math.max(low, Math.min(high, value));
  }

  private void paintLegs(Frame frame, List<LegLabel> labels) {
    if (chart.legs().isEmpty()) {
      return;
    }
    double stripTop = frame.top() - LEG_ROW;
    Pen boundary = new Pen(new Color(120, 120, 120), 1, Dash.SHORT);
    for (int i = 0; i < chart.legs().size(); i++) {
      ChartLeg leg = chart.legs().get(i);
      double start = frame.acrossOf(Times.toHours(leg.time().low()));
      double end = frame.acrossOf(Times.toHours(leg.time().high()));
      canvas.fill(
          new Rectangle2D.Double(start, stripTop, end - start, LEG_ROW),
          i % 2 == 0 ? new Color(214, 214, 214) : new Color(238, 238, 238));
      if (i % 2 == 0) {
        canvas.fill(
            new Rectangle2D.Double(start, frame.top(), end - start, frame.area().getHeight()),
            Look.FAINT_SHADE);
      }
      if (start > frame.left() + 1) {
        canvas.stroke(new Line2D.Double(start, stripTop, start, frame.bottom()), boundary);
      }
    }
    for (LegLabel label : labels) {
      double baseline = frame.top() - label.row() * LEG_ROW - 5;
      if (label.row() > 0) {
        // A name above other names points at its leg.
        canvas.stroke(
            new Line2D.Double(label.legMiddle(), baseline + 3, label.legMiddle(), stripTop + 5),
            new Pen(Look.QUIET_INK, 1));
      }
      write(label.text(), label.box().getCenterX(), baseline, Alignment.MIDDLE, Look.LABEL);
    }
  }

  private void paintUncertainty(Frame frame) {
    chart
        .uncertainty()
        .ifPresent(
            band -> {
              Path2D area = pathOf(reduced(band.high(), frame));
              List<Point2D> low = reduced(band.low(), frame);
              for (int i = low.size() - 1; i >= 0; i--) {
                area.lineTo(low.get(i).getX(), low.get(i).getY());
              }
              area.closePath();
              canvas.fill(area, Look.withAlpha(colorOf(0), 50));
            });
  }

  private void paintBandEdges(Frame frame, LabelPlacer placer) {
    chart
        .alarm()
        .ifPresent(
            band -> {
              for (double end : new double[] {band.low(), band.high()}) {
                if (frame.y().contains(end)) {
                  double y = frame.downOf(end);
                  Line2D line = new Line2D.Double(frame.left(), y, frame.right(), y);
                  canvas.stroke(line, new Pen(Look.INK, 1.4, Dash.LONG));
                  placer.avoid(line);
                }
              }
            });
  }

  private void paintMarkers(Frame frame, LabelPlacer placer) {
    for (Marker marker : chart.markers()) {
      double x = frame.acrossOf(Times.toHours(marker.point().time()));
      double y = frame.downOf(marker.point().temperature());
      placer.avoid(new Rectangle2D.Double(x - 7, y - 7, 14, 14));
    }
    for (Marker marker : chart.markers()) {
      double x = frame.acrossOf(Times.toHours(marker.point().time()));
      double y = frame.downOf(marker.point().temperature());
      Lettering lettering = Look.LABEL.inBold().withHalo();
      String text = Letters.fit(marker.text(), frame.area().getWidth() - 10, lettering);
      double width = Letters.width(text, lettering);
      List<Candidate> candidates = new ArrayList<>();
      for (double distance = 14; distance <= 110; distance += 8) {
        for (double side : new double[] {-0.5, 0, -1, -0.25, -0.75}) {
          double left = clamp(x + side * width, frame.left() + 4, frame.right() - width - 4);
          double bend = Math.abs(side + 0.5) * 4;
          candidates.add(new Candidate(box(left, y + distance, width), distance + bend));
          candidates.add(
              new Candidate(box(left, y - distance - LABEL_HEIGHT, width), distance + bend + 1));
        }
      }
      placer
          .place(candidates)
          .ifPresent(
              box -> {
                double near = box.getCenterY() > y ? box.getMinY() : box.getMaxY();
                double foot = clamp(x, box.getMinX() + 6, box.getMaxX() - 6);
                canvas.stroke(new Line2D.Double(x, y, foot, near), new Pen(Look.INK, 1));
                write(text, box.getMinX(), box.getMaxY() - 3, Alignment.START, lettering);
              });
      Ellipse2D dot = new Ellipse2D.Double(x - 4.5, y - 4.5, 9, 9);
      canvas.fill(dot, Color.WHITE);
      canvas.stroke(dot, new Pen(Look.INK, 2));
    }
  }

  private static Rectangle2D box(double left, double top, double width) {
    return new Rectangle2D.Double(left, top, width, LABEL_HEIGHT);
  }

  /** Writes a name beside a line, where it covers nothing. */
  private void writeAlong(
      List<Point2D> line, String name, Lettering lettering, LabelPlacer placer) {
    double width = Letters.width(name, lettering);
    List<Candidate> candidates = new ArrayList<>();
    List<Point2D> points = dense(line);
    int steps = 60;
    for (int i = 0; i <= steps; i++) {
      Point2D point = points.get((int) Math.round((points.size() - 1) * (double) i / steps));
      // Names near the end are found first, but a free place counts more.
      double cost = 6 * Math.abs(0.8 - (double) i / steps);
      for (double gap = 4; gap <= 16; gap += 6) {
        double left = point.getX() - width / 2;
        candidates.add(
            new Candidate(box(left, point.getY() - gap - LABEL_HEIGHT, width), cost + gap));
        candidates.add(new Candidate(box(left, point.getY() + gap, width), cost + gap));
      }
    }
    placer
        .place(candidates)
        .ifPresent(
            box -> write(name, box.getMinX(), box.getMaxY() - 3, Alignment.START, lettering));
  }

  private void writeUncertaintyName(Frame frame, LabelPlacer placer) {
    chart
        .uncertainty()
        .ifPresent(
            band -> {
              Lettering lettering = Look.TICK.inColor(colorOf(0)).withHalo();
              List<Point2D> low = reduced(band.low(), frame);
              avoid(placer, low);
              avoid(placer, reduced(band.high(), frame));
              writeAlong(low, band.name(), lettering, placer);
            });
  }

  private void writeBandNames(Frame frame, LabelPlacer placer) {
    chart
        .alarm()
        .ifPresent(
            band -> {
              writeAtEdge(frame, placer, "alarm below ", band.low(), 3);
              writeAtEdge(frame, placer, "alarm above ", band.high(), -3 - LABEL_HEIGHT);
            });
    chart
        .comfortable()
        .ifPresent(
            band -> {
              writeAtEdge(frame, placer, "comfortable below ", band.high(), 3);
              writeAtEdge(frame, placer, "comfortable above ", band.low(), -3 - LABEL_HEIGHT);
            });
  }

  private void writeAtEdge(
      Frame frame, LabelPlacer placer, String words, double temperature, double shift) {
    if (!frame.y().contains(temperature)) {
      return;
    }
    String text = words + Look.bothUnits(temperature, chart.units());
    Lettering lettering = Look.TICK.inColor(Look.INK).withHalo();
    double width = Letters.width(text, lettering);
    double y = frame.downOf(temperature);
    double room = frame.area().getWidth() - width - 12;
    List<Candidate> candidates = new ArrayList<>();
    for (int i = 0; i <= 40; i++) {
      double left = frame.left() + 6 + room * i / 40;
      candidates.add(new Candidate(box(left, y + shift, width), i));
      // The other side of the edge still names it.
      candidates.add(new Candidate(box(left, y - shift - LABEL_HEIGHT, width), i + 60));
    }
    placer
        .place(candidates)
        .ifPresent(
            box -> write(text, box.getMinX(), box.getMaxY() - 3, Alignment.START, lettering));
  }

  private static void avoid(LabelPlacer placer, List<Point2D> line) {
    List<Point2D> points = dense(line);
    for (int i = 1; i < points.size(); i++) {
      placer.avoid(new Line2D.Double(points.get(i - 1), points.get(i)));
    }
  }

  /**
   * A line in short pieces, so that the number of pieces under a label tells how much it covers.
   */
  private static List<Point2D> dense(List<Point2D> line) {
    List<Point2D> points = new ArrayList<>();
    points.add(line.get(0));
    for (int i = 1; i < line.size(); i++) {
      Point2D from = line.get(i - 1);
      Point2D to = line.get(i);
      int pieces = Math.max(1, (int) (from.distance(to) / LONGEST_PIECE));
      for (int j = 1; j <= pieces; j++) {
        double share = (double) j / pieces;
        points.add(
            new Point2D.Double(
                from.getX() + share * (to.getX() - from.getX()),
                from.getY() + share * (to.getY() - from.getY())));
      }
    }
    return points;
  }

  private static Path2D pathOf(List<Point2D> points) {
    Path2D path = new Path2D.Double();
    path.moveTo(points.get(0).getX(), points.get(0).getY());
    for (Point2D point : points.subList(1, points.size())) {
      path.lineTo(point.getX(), point.getY());
    }
    return path;
  }

  /**
   * A curve in pixels, with no more points than can be seen: first, lowest, highest and last of
   * each column.
   */
  private static List<Point2D> reduced(Curve curve, Frame frame) {
    List<Point2D> all =
        curve.points().stream()
            .<Point2D>map(
                point ->
                    new Point2D.Double(
                        frame.acrossOf(Times.toHours(point.time())),
                        frame.downOf(point.temperature())))
            .toList();
    List<Point2D> kept = new ArrayList<>();
    for (int from = 0; from < all.size(); ) {
      int to = from + 1;
      int lowest = from;
      int highest = from;
      while (to < all.size() && (int) all.get(to).getX() == (int) all.get(from).getX()) {
        lowest = all.get(to).getY() < all.get(lowest).getY() ? to : lowest;
        highest = all.get(to).getY() > all.get(highest).getY() ? to : highest;
        to++;
      }
      int last = to - 1;
      List.of(from, Math.min(lowest, highest), Math.max(lowest, highest), last).stream()
          .distinct()
          .map(all::get)
          .forEach(kept::add);
      from = to;
    }
    return kept;
  }
}
