package stenotherm.picture;

import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import stenotherm.base.Range;
import stenotherm.picture.Canvas.Alignment;
import stenotherm.picture.Canvas.Anchor;
import stenotherm.picture.Canvas.Lettering;
import stenotherm.picture.Canvas.Pen;
import stenotherm.picture.LabelPlacer.Candidate;

/** Draws one {@link HistoryChart} on one canvas. */
final class HistoryChartPainter {
  private static final double SIDE = 70;
  private static final double BELOW = 41;
  private static final double LABEL_HEIGHT = 14;
  private static final double PIXELS_PER_TICK = 80;

  private final Canvas canvas;
  private final HistoryChart chart;
  private final double unit;

  HistoryChartPainter(Canvas canvas, HistoryChart chart) {
    this.canvas = canvas;
    this.chart = chart;
    this.unit = chart.timeUnit().seconds();
  }

  void paint() {
    double top = Look.writeHeading(canvas, chart.title(), chart.subtitle()) + 4;
    Range time = new Range(chart.time().low() / unit, chart.time().high() / unit);
    Rectangle2D area =
        new Rectangle2D.Double(
            SIDE, top, canvas.width() - SIDE - 2 * Look.EDGE, canvas.height() - BELOW - top);
    Frame frame = new Frame(area, time, chart.axis());
    paintGrid(frame);
    LabelPlacer placer = new LabelPlacer(area);
    List<List<Point2D>> lines =
        chart.lines().stream().map(line -> pixels(line.samples(), frame)).toList();
    for (List<Point2D> line : lines) {
      for (int i = 1; i < line.size(); i++) {
        placer.avoid(new Line2D.Double(line.get(i - 1), line.get(i)));
      }
    }
    for (int i = lines.size() - 1; i >= 0; i--) {
      stroke(lines.get(i), i);
    }
    for (Point2D mark : pixels(chart.marks(), frame)) {
      Ellipse2D dot = new Ellipse2D.Double(mark.getX() - 4, mark.getY() - 4, 8, 8);
      placer.avoid(dot.getBounds2D());
      canvas.fill(dot, Color.WHITE);
      canvas.stroke(dot, new Pen(Look.INK, 1.6));
    }
    for (int i = 0; i < lines.size(); i++) {
      name(lines.get(i), chart.lines().get(i).name(), i, placer);
    }
    canvas.stroke(area, new Pen(Look.QUIET_INK, 1));
  }

  private List<Point2D> pixels(List<HistoryChart.Sample> samples, Frame frame) {
    return samples.stream()
        .<Point2D>map(
            sample ->
                new Point2D.Double(
                    frame.acrossOf(sample.time() / unit), frame.downOf(sample.value())))
        .toList();
  }

  private void paintGrid(Frame frame) {
    Pen pen = new Pen(Look.GRID, 1);
    double rows = frame.area().getHeight() / (PIXELS_PER_TICK / 2);
    for (double value : Ticks.decimal(frame.y(), rows)) {
      double y = frame.downOf(value);
      canvas.stroke(new Line2D.Double(frame.left(), y, frame.right(), y), pen);
      write(number(value), frame.left() - 6, y + 4, Alignment.END);
    }
    double columns = frame.area().getWidth() / PIXELS_PER_TICK;
    for (double value : Ticks.decimal(frame.x(), columns)) {
      double x = frame.acrossOf(value);
      canvas.stroke(new Line2D.Double(x, frame.top(), x, frame.bottom()), pen);
      write(number(value), x, frame.bottom() + 16, Alignment.MIDDLE);
    }
    write(
        "time [" + chart.timeUnit().label() + "]",
        frame.area().getCenterX(),
        frame.bottom() + 33,
        Alignment.MIDDLE);
    canvas.write(
        chart.quantity(),
        new Anchor(Look.EDGE + 8, frame.area().getCenterY(), Alignment.MIDDLE),
        Look.TICK.runningUpwards());
  }

  /** Small numbers keep their digits; a tick of a heat flow may be a milliwatt. */
  private static String number(double value) {
    return Math.abs(value) >= 0.01 || value == 0
        ? Look.plain(value)
        : Look.minus(String.format(java.util.Locale.ROOT, "%.3g", value));
  }

  private void write(String text, double x, double y, Alignment alignment) {
    canvas.write(text, new Anchor(x, y, alignment), Look.TICK);
  }

  private static Color colorOf(int index) {
    return Look.CURVE_COLORS.get(index % Look.CURVE_COLORS.size());
  }

  private void stroke(List<Point2D> points, int index) {
    Path2D path = new Path2D.Double();
    path.moveTo(points.get(0).getX(), points.get(0).getY());
    for (Point2D point : points.subList(1, points.size())) {
      path.lineTo(point.getX(), point.getY());
    }
    canvas.stroke(
        path,
        new Pen(colorOf(index), 1.8, Look.CURVE_DASHES.get(index % Look.CURVE_DASHES.size())));
  }

  /** Writes a name beside its curve, where it covers nothing. */
  private void name(List<Point2D> points, String name, int index, LabelPlacer placer) {
    Lettering lettering = Look.LABEL.inBold().inColor(colorOf(index)).withHalo();
    double width = Letters.width(name, lettering);
    List<Candidate> candidates = new ArrayList<>();
    int steps = 40;
    for (int i = 0; i <= steps; i++) {
      Point2D point = pointAt(points, (double) i / steps);
      // names near the end are found first, but a free place counts more
      double cost = 6 * Math.abs(0.8 - (double) i / steps);
      for (double gap = 4; gap <= 16; gap += 6) {
        double left = point.getX() - width / 2;
        double above = point.getY() - gap - LABEL_HEIGHT;
        candidates.add(new Candidate(box(left, above, width), cost + gap));
        candidates.add(new Candidate(box(left, point.getY() + gap, width), cost + gap));
      }
    }
    placer
        .place(candidates)
        .ifPresent(
            box ->
                canvas.write(
                    name,
                    new Anchor(box.getMinX(), box.getMaxY() - 3, Alignment.START),
                    lettering));
  }

  /** The point of a curve at a part of its width, from 0 to 1. */
  private static Point2D pointAt(List<Point2D> points, double part) {
    double first = points.get(0).getX();
    double x = first + part * (points.get(points.size() - 1).getX() - first);
    int right = 1;
    while (right + 1 < points.size() && points.get(right).getX() < x) {
      right++;
    }
    Point2D from = points.get(right - 1);
    Point2D to = points.get(right);
    double width = to.getX() - from.getX();
    double share = width > 0 ? (x - from.getX()) / width : 0;
    return new Point2D.Double(x, from.getY() + share * (to.getY() - from.getY()));
  }

  private static Rectangle2D box(double left, double top, double width) {
    return new Rectangle2D.Double(left, top, width, LABEL_HEIGHT);
  }
}
