package stenotherm.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import stenotherm.base.Range;
import stenotherm.base.Times;
import stenotherm.picture.Canvas.Alignment;
import stenotherm.picture.Canvas.Lettering;
import stenotherm.picture.Canvas.Pen;
import stenotherm.picture.LabelPlacer.Candidate;

/**
 * What all charts have in common: an area with straight scales, axes beside it, curves in the
 * colours and patterns of their order, points that matter, and names where they cover nothing.
 */
final class Plot {
  /** Space for texts and title of an axis on the left or on the right [pixel]. */
  static final double SIDE_SPACE = 64;

  /** Height of a line of texts at the axis below [pixel]. */
  private static final double ROW = 15;

  /** Space between rows and their names or values [pixel]. */
  static final double ROW_GAP = 14;

  private static final double TITLE_BELOW = 18;
  private static final double LABEL_HEIGHT = 14;

  /** Width of the line of the first curve where that is the main one [pixel]. */
  static final double WIDTH_OF_FIRST = 2.6;

  private static final double WIDTH = 1.8;
  private static final Lettering TITLE = Look.LABEL.inColor(Look.QUIET_INK);

  private final Canvas canvas;
  private final Area area;
  private final Range x;
  private final Range y;
  private final LabelPlacer placer;

  Plot(Canvas canvas, Area area, Range x, Range y) {
    this.canvas = canvas;
    this.area = area;
    this.x = x;
    this.y = y;
    this.placer = new LabelPlacer(area);
  }

  /**
   * A plot of rows with their names on the left and their values on the right.
   *
   * @param reach from where to where it reaches down [pixel], the upper end first
   * @param names width of the names [pixel]
   * @param values width of the values [pixel]
   * @param x the scale across; rows have none
   */
  static Plot ofRows(Canvas canvas, Range reach, double names, double values, Range x) {
    double left = Look.EDGE + names + ROW_GAP;
    double right = canvas.width() - Look.EDGE - values - ROW_GAP;
    return new Plot(canvas, new Area(left, reach.low(), right, reach.high()), x, new Range(0, 1));
  }

  /** Where an axis stands. */
  enum Edge {
    LEFT,
    RIGHT,
    BELOW
  }

  /** How the values of an axis show at the area. */
  enum Mark {
    /** A line through the area. */
    GRID,
    /** A short line outside. */
    SHORT,
    /** Nothing but a text. */
    NONE
  }

  /**
   * A value that an axis names.
   *
   * @param at the value on the scale of the plot
   * @param text its text
   */
  record Tick(double at, String text) {
    /** Values of another scale, by what they are on the scale of the plot. */
    static List<Tick> all(
        List<Double> values, DoubleUnaryOperator at, DoubleFunction<String> text) {
      return values.stream()
          .map(value -> new Tick(at.applyAsDouble(value), text.apply(value)))
          .toList();
    }

    static List<Tick> all(List<Double> values) {
      return all(values, value -> value, Look::plain);
    }
  }

  /** Height of the space below for an axis with some rows of texts and a title [pixel]. */
  static double spaceBelow(int rows) {
    return TITLE_BELOW + rows * ROW + Look.EDGE;
  }

  Area area() {
    return area;
  }

  Range x() {
    return x;
  }

  Range y() {
    return y;
  }

  LabelPlacer placer() {
    return placer;
  }

  double acrossOf(double value) {
    return area.left() + (value - x.low()) / (x.high() - x.low()) * area.width();
  }

  double downOf(double value) {
    return area.bottom() - (value - y.low()) / (y.high() - y.low()) * area.height();
  }

  Pixel pixel(double across, double up) {
    return new Pixel(acrossOf(across), downOf(up));
  }

  /**
   * Draws an axis of hours from sealing below the plot, and the local clock under it.
   *
   * @param clock gives the text for a time from sealing [s]; empty for hours alone
   * @param narrowest least room for an hour [pixel]; where the clock's texts would touch it is more
   */
  void hourAxis(Optional<DoubleFunction<String>> clock, double narrowest) {
    DoubleFunction<String> text =
        hour -> clock.map(each -> each.apply(Times.fromHours(hour))).orElse("");
    double width = area().width();
    double widest =
        Ticks.hours(x(), width / narrowest).stream()
            .mapToDouble(hour -> Letters.width(text.apply(hour), Look.TICK))
            .max()
            .orElse(0);
    List<Double> hours = Ticks.hours(x(), width / Math.max(narrowest, widest + 14));
    axis(Edge.BELOW, Tick.all(hours), Mark.SHORT);
    String title = "hours from sealing";
    if (clock.isPresent()) {
      axis(Edge.BELOW, Tick.all(hours, hour -> hour, text), Mark.NONE, 2);
      title(Edge.BELOW, title + ", clock where the parcel is", 2);
    } else {
      title(Edge.BELOW, title);
    }
  }

  /** The part of the plot between two pairs of values. */
  Area part(Range across, Range up) {
    return new Area(
        acrossOf(across.low()), downOf(up.high()), acrossOf(across.high()), downOf(up.low()));
  }

  void axis(Edge edge, List<Tick> ticks, Mark mark) {
    axis(edge, ticks, mark, 1);
  }

  /** Draws an axis; below, its texts may stand in the first, second, ... row. */
  void axis(Edge edge, List<Tick> ticks, Mark mark, int row) {
    boolean below = edge == Edge.BELOW;
    for (Tick tick : ticks) {
      double at = below ? acrossOf(tick.at) : downOf(tick.at);
      if (below) {
        write(tick.text, at, area.bottom() + 1 + ROW * row, Alignment.MIDDLE, Look.TICK);
      } else if (edge == Edge.LEFT) {
        write(tick.text, area.left() - 7, at + 4, Alignment.END, Look.TICK);
      } else {
        write(tick.text, area.right() + 7, at + 4, Alignment.START, Look.TICK);
      }
      if (mark == Mark.GRID) {
        Pen pen = new Pen(Look.GRID, 1);
        if (below) {
          canvas.line(at, area.top(), at, area.bottom(), pen);
        } else {
          canvas.line(area.left(), at, area.right(), at, pen);
        }
      } else if (mark == Mark.SHORT) {
        Pen pen = new Pen(Look.QUIET_INK, 1);
        switch (edge) {
          case BELOW -> canvas.line(at, area.bottom(), at, area.bottom() + 4, pen);
          case LEFT -> canvas.line(area.left() - 4, at, area.left(), at, pen);
          case RIGHT -> canvas.line(area.right(), at, area.right() + 4, at, pen);
        }
      }
    }
  }

  void title(Edge edge, String text) {
    title(edge, text, 1);
  }

  /** Names an axis with some rows of texts. */
  void title(Edge edge, String text, int rows) {
    Pixel middle = area.middle();
    Lettering upwards = TITLE.runningUpwards();
    switch (edge) {
      case BELOW ->
          write(
              text, middle.x(), area.bottom() + ROW * rows + TITLE_BELOW, Alignment.MIDDLE, TITLE);
      case LEFT ->
          write(text, area.left() - SIDE_SPACE + 20, middle.y(), Alignment.MIDDLE, upwards);
      case RIGHT ->
          write(text, area.right() + SIDE_SPACE - 12, middle.y(), Alignment.MIDDLE, upwards);
    }
  }

  void border() {
    canvas.outline(area, new Pen(Look.QUIET_INK, 1));
  }

  /** The colour of the first, second, ... curve. */
  static Color colorOf(int index) {
    return Look.CURVE_COLORS.get(index % Look.CURVE_COLORS.size());
  }

  /** Draws curves, the first one on top, and keeps names off them. */
  void curves(List<List<Pixel>> curves, double widthOfFirst) {
    curves.forEach(placer::avoid);
    for (int i = curves.size() - 1; i >= 0; i--) {
      canvas.line(curves.get(i), pen(i, i == 0 ? widthOfFirst : WIDTH));
    }
  }

  private static Pen pen(int index, double width) {
    // colours that come again come with another pattern
    int dash = index + index / Look.CURVE_COLORS.size();
    return new Pen(colorOf(index), width, Look.CURVE_DASHES.get(dash % Look.CURVE_DASHES.size()));
  }

  /** Draws a level piece of the line of the first, second, ... curve. */
  static void sample(Canvas canvas, Pixel from, double to, int index) {
    canvas.line(from.x(), from.y(), to, from.y(), pen(index, index == 0 ? WIDTH_OF_FIRST : WIDTH));
  }

  /** Draws a point as an open circle and keeps names off it. */
  void point(Pixel point) {
    point(point, Look.INK, 4.5);
  }

  /** The same in a colour and with a radius [pixel]. */
  void point(Pixel point, Color color, double radius) {
    double room = radius + 2.5;
    placer.avoid(Area.sized(point.x() - room, point.y() - room, 2 * room, 2 * room));
    canvas.dot(point, radius, Color.WHITE, new Pen(color, 2));
  }

  /** Writes the name of the first, second, ... curve beside it. */
  void name(String name, List<Pixel> curve, int index) {
    name(name, curve, Look.LABEL.inBold().inColor(colorOf(index).forLetters()).withHalo());
  }

  /** Writes a name beside a line, where it covers nothing; nowhere if there is no such place. */
  void name(String name, List<Pixel> line, Lettering lettering) {
    double width = Letters.width(name, lettering);
    List<Candidate> candidates = new ArrayList<>();
    List<Pixel> points = LabelPlacer.inShortPieces(line);
    int steps = 60;
    for (int i = 0; i <= steps; i++) {
      Pixel point = points.get((int) Math.round((points.size() - 1) * (double) i / steps));
      // Names near the end are found first, but a free place counts more.
      double cost = 6 * Math.abs(0.8 - (double) i / steps);
      // the far ones are for points on top of each other
      for (double gap = 4; gap <= 34; gap += 6) {
        double left = point.x() - width / 2;
        candidates.add(labelAt(left, point.y() - gap - LABEL_HEIGHT, width, cost + gap));
        candidates.add(labelAt(left, point.y() + gap, width, cost + gap));
      }
    }
    label(name, candidates, lettering);
  }

  /**
   * Writes a name above or below a horizontal line that no curve follows, as far left as it can.
   */
  void nameLevel(String name, double value, boolean above) {
    Lettering lettering = Look.TICK.inColor(Look.INK).withHalo();
    double width = Letters.width(name, lettering);
    double room = area.width() - width - 12;
    double down = downOf(value);
    List<Candidate> candidates = new ArrayList<>();
    for (int i = 0; i <= 40; i++) {
      double left = area.left() + 6 + room * i / 40;
      // The other side of the line still names it.
      candidates.add(labelAt(left, down - 3 - LABEL_HEIGHT, width, above ? i : i + 60));
      candidates.add(labelAt(left, down + 3, width, above ? i + 60 : i));
    }
    label(name, candidates, lettering);
  }

  /** Writes a text beside a point, joined to it by a line, where it covers nothing. */
  void note(String words, Pixel point) {
    Lettering lettering = Look.LABEL.inBold().withHalo();
    String text = Letters.fit(words, area.width() - 10, lettering);
    double width = Letters.width(text, lettering);
    List<Candidate> candidates = new ArrayList<>();
    for (double distance = 14; distance <= 110; distance += 8) {
      for (double side : new double[] {-0.5, 0, -1, -0.25, -0.75}) {
        double left = clamp(point.x() + side * width, area.left() + 4, area.right() - width - 4);
        double cost = distance + Math.abs(side + 0.5) * 4;
        candidates.add(labelAt(left, point.y() + distance, width, cost));
        candidates.add(labelAt(left, point.y() - distance - LABEL_HEIGHT, width, cost + 1));
      }
    }
    placer
        .place(candidates)
        .ifPresent(
            box -> {
              double near = box.middle().y() > point.y() ? box.top() : box.bottom();
              double foot = clamp(point.x(), box.left() + 6, box.right() - 6);
              canvas.line(point.x(), point.y(), foot, near, new Pen(Look.INK, 1));
              write(text, box, lettering);
            });
  }

  static Candidate labelAt(double left, double top, double width, double cost) {
    return new Candidate(Area.sized(left, top, width, LABEL_HEIGHT), cost);
  }

  /** Writes a text at the best of some places; nowhere if all are taken. */
  void label(String text, List<Candidate> candidates, Lettering lettering) {
    placer.place(candidates).ifPresent(box -> write(text, box, lettering));
  }

  private void write(String text, Area box, Lettering lettering) {
    write(text, box.left(), box.bottom() - 3, Alignment.START, lettering);
  }

  /**
   * A line with no more points than can be seen: first, highest, lowest and last of each column of
   * pixels.
   */
  static List<Pixel> reduced(List<Pixel> all) {
    List<Pixel> kept = new ArrayList<>();
    for (int from = 0; from < all.size(); ) {
      int to = from + 1;
      int lowest = from;
      int highest = from;
      while (to < all.size() && (int) all.get(to).x() == (int) all.get(from).x()) {
        lowest = all.get(to).y() < all.get(lowest).y() ? to : lowest;
        highest = all.get(to).y() > all.get(highest).y() ? to : highest;
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

  static double clamp(double value, double low, double high) {
    return Math.max(low, Math.min(high, value));
  }

  private void write(String text, double x, double y, Alignment alignment, Lettering lettering) {
    canvas.write(text, new Pixel(x, y), alignment, lettering);
  }
}
