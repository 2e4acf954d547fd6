package stenotherm.picture;

import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RectangularShape;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stenotherm.base.Lengths;
import stenotherm.base.Range;
import stenotherm.picture.Canvas.Alignment;
import stenotherm.picture.Canvas.Anchor;
import stenotherm.picture.Canvas.Lettering;
import stenotherm.picture.Canvas.Pen;
import stenotherm.picture.LabelPlacer.Candidate;
import stenotherm.words.Units;

/** Draws one {@link SectionPicture} into a part of a canvas. */
final class SectionPicturePainter {
  static final double LEFT_SPACE = 62;
  static final double BOTTOM_SPACE = 44;
  static final double BAR_WIDTH = 16;
  static final double BAR_SPACE = 108;
  private static final double LABEL_GAP = 16;
  private static final double LINE = 15;
  private static final double SMALLEST = 80;
  private static final Color RIM = new Color(255, 255, 255, 190);

  private final Canvas canvas;
  private final SectionPicture picture;
  private final SectionField field;
  private final ColorScale colors;

  SectionPicturePainter(Canvas canvas, SectionPicture picture, ColorScale colors) {
    this.canvas = canvas;
    this.picture = picture;
    this.field = picture.field();
    this.colors = colors;
  }

  /** A text for the column beside the section, and the point that it belongs to. */
  private record Note(String text, Point2D target, boolean spot) {}

  /** Draws one picture that fills its canvas. */
  static void paintAlone(Canvas canvas, SectionPicture picture) {
    double top = Look.writeHeading(canvas, picture.title(), picture.subtitle()) + 4;
    ColorScale colors = new ColorScale(colorRange(List.of(picture.field())));
    Rectangle2D room =
        new Rectangle2D.Double(
            0, top, canvas.width() - BAR_SPACE - Look.EDGE, canvas.height() - top);
    double column = notesWidth(picture, 0.3 * canvas.width());
    if (!fits(picture, room, column)) {
      throw Picture.tooSmall(
          "this section",
          "more width than 500 or more height than " + (int) (notesHeight(picture) + 150));
    }
    Frame frame =
        new SectionPicturePainter(canvas, picture, colors)
            .paint(room, scale(picture, room, column), column);
    double barLeft = frame.right() + column + LABEL_GAP;
    double height = room.getHeight() - BOTTOM_SPACE;
    paintBar(
        canvas,
        new Rectangle2D.Double(barLeft, top + 18, BAR_WIDTH, height - 18),
        colors,
        picture.units());
  }

  /** The colours' range of some fields together; fields of one temperature still need some. */
  static Range colorRange(List<SectionField> fields) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (SectionField field : fields) {
      low = Math.min(low, field.temperatureRange().low());
      high = Math.max(high, field.temperatureRange().high());
    }
    double lack = Math.max(0, 1 - (high - low));
    return new Range(low - lack / 2, high + lack / 2);
  }

  /** Width of a section's column of notes [pixel], none without notes. */
  static double notesWidth(SectionPicture picture, double most) {
    double widest = 0;
    for (Outline outline : picture.outlines()) {
      widest = Math.max(widest, Letters.width(outline.name(), Look.LABEL));
    }
    for (Spot spot : picture.spots()) {
      widest = Math.max(widest, Letters.width(spot.text(), Look.LABEL.inBold()));
    }
    return widest == 0 ? 0 : Math.min(widest, most) + 2 * LABEL_GAP;
  }

  /** Pixels per metre with which the section fits into a room beside its axes and notes. */
  static double scale(SectionPicture picture, Rectangle2D room, double notesWidth) {
    Range x = picture.field().x();
    Range z = picture.field().z();
    return Math.min(
        (room.getWidth() - LEFT_SPACE - notesWidth) / (x.high() - x.low()),
        (room.getHeight() - BOTTOM_SPACE) / (z.high() - z.low()));
  }

  /** Whether a section and its notes can be read in a room. */
  static boolean fits(SectionPicture picture, Rectangle2D room, double notesWidth) {
    return room.getWidth() - LEFT_SPACE - notesWidth >= SMALLEST
        && room.getHeight() - BOTTOM_SPACE >= Math.max(SMALLEST, notesHeight(picture));
  }

  /** Height of a section's column of notes [pixel]. */
  static double notesHeight(SectionPicture picture) {
    return LINE * (picture.outlines().size() + picture.spots().size());
  }

  /** Draws the section with axes and notes into a room and returns where its field is. */
  Frame paint(Rectangle2D room, double scale, double notesWidth) {
    Range x = field.x();
    Range z = field.z();
    Rectangle2D area =
        new Rectangle2D.Double(
            room.getX() + LEFT_SPACE,
            room.getY(),
            scale * (x.high() - x.low()),
            scale * (z.high() - z.low()));
    Frame frame = new Frame(area, x, z);
    paintCells(frame);
    paintAxes(frame);
    LabelPlacer placer = new LabelPlacer(area);
    List<Note> notes = notes(frame);
    notes.forEach(note -> avoid(placer, note, frame));
    paintIsotherms(frame);
    paintOutlines(frame, placer);
    writeIsotherms(frame, placer);
    paintNotes(notes, frame, notesWidth, room.getMaxY() - BOTTOM_SPACE);
    return frame;
  }

  private void paintCells(Frame frame) {
    for (int j = 0; j < field.cellsAlongZ(); j++) {
      int from = 0;
      for (int i = 1; i <= field.cellsAlongX(); i++) {
        int level = colors.level(field.temperature(from, j));
        // Neighbours of one colour become one rectangle.
        if (i == field.cellsAlongX() || colors.level(field.temperature(i, j)) != level) {
          double left = frame.acrossOf(field.xEdge(from));
          double top = frame.downOf(field.zEdge(j + 1));
          canvas.fillCell(
              new Rectangle2D.Double(
                  left,
                  top,
                  frame.acrossOf(field.xEdge(i)) - left,
                  frame.downOf(field.zEdge(j)) - top),
              ColorScale.color(level));
          from = i;
        }
      }
    }
  }

  private void paintAxes(Frame frame) {
    Pen pen = new Pen(Look.QUIET_INK, 1);
    boolean inches = picture.units() == Units.US;
    double unit = inches ? Lengths.INCH : Lengths.fromMillimetres(1);
    Range x = new Range(frame.x().low() / unit, frame.x().high() / unit);
    for (double tick : Ticks.decimal(x, frame.area().getWidth() / 48)) {
      double across = frame.acrossOf(tick * unit);
      canvas.stroke(new Line2D.Double(across, frame.bottom(), across, frame.bottom() + 4), pen);
      write(Look.plain(tick), across, frame.bottom() + 16, Alignment.MIDDLE, Look.TICK);
    }
    Range z = new Range(frame.y().low() / unit, frame.y().high() / unit);
    for (double tick : Ticks.decimal(z, frame.area().getHeight() / 34)) {
      double down = frame.downOf(tick * unit);
      canvas.stroke(new Line2D.Double(frame.left() - 4, down, frame.left(), down), pen);
      write(Look.plain(tick), frame.left() - 7, down + 4, Alignment.END, Look.TICK);
    }
    String unitName = inches ? " [in]" : " [mm]";
    Lettering axis = Look.LABEL.inColor(Look.QUIET_INK);
    write(
        picture.horizontalAxis() + unitName,
        frame.area().getCenterX(),
        frame.bottom() + 34,
        Alignment.MIDDLE,
        axis);
    write(
        picture.verticalAxis() + unitName,
        frame.left() - LEFT_SPACE + 20,
        frame.area().getCenterY(),
        Alignment.MIDDLE,
        axis.runningUpwards());
    canvas.stroke(frame.area(), pen);
  }

  private void paintIsotherms(Frame frame) {
    for (double temperature : picture.isotherms()) {
      Path2D path = new Path2D.Double();
      for (Line2D piece : Isotherms.find(field, temperature)) {
        path.moveTo(frame.acrossOf(piece.getX1()), frame.downOf(piece.getY1()));
        path.lineTo(frame.acrossOf(piece.getX2()), frame.downOf(piece.getY2()));
      }
      canvas.stroke(path, new Pen(RIM, 1.2));
    }
  }

  /**
   * Writes each isotherm's temperature once, upon the line where it is clear of outlines and
   * leaders.
   */
  private void writeIsotherms(Frame frame, LabelPlacer placer) {
    Lettering lettering = Look.TICK.inColor(Look.INK).withHalo();
    for (double temperature : picture.isotherms()) {
      TemperatureScale scale = TemperatureScale.of(picture.units());
      String text = Look.plain(Math.round(scale.of(temperature) * 10) / 10.0) + " " + scale.unit();
      double width = Letters.width(text, lettering);
      List<Candidate> candidates = new ArrayList<>();
      for (Line2D piece : Isotherms.find(field, temperature)) {
        double across = frame.acrossOf(piece.getX1());
        double down = frame.downOf(piece.getY1());
        // The left side is free of leaders.
        double cost = 20 * (across - frame.left()) / frame.area().getWidth();
        candidates.add(
            new Candidate(new Rectangle2D.Double(across - width / 2, down - 7, width, 14), cost));
      }
      placer
          .place(candidates)
          .ifPresent(
              box -> write(text, box.getMinX(), box.getMaxY() - 3, Alignment.START, lettering));
    }
  }

  private static void avoid(LabelPlacer placer, Note note, Frame frame) {
    double x = note.target().getX();
    double y = note.target().getY();
    placer.avoid(new Rectangle2D.Double(x - 6, y - 6, 12, 12));
    placer.avoid(new Line2D.Double(x, y, frame.right(), y));
  }

  private void paintOutlines(Frame frame, LabelPlacer placer) {
    for (Outline outline : picture.outlines()) {
      Rectangle2D box = boxOf(outline, frame);
      RectangularShape shape =
          outline.round()
              ? new Ellipse2D.Double(box.getX(), box.getY(), box.getWidth(), box.getHeight())
              : box;
      canvas.stroke(shape, new Pen(RIM, 3));
      canvas.stroke(shape, new Pen(Look.INK, 1.3));
      double left = box.getMinX();
      double right = box.getMaxX();
      placer.avoid(new Line2D.Double(left, box.getMinY(), right, box.getMinY()));
      placer.avoid(new Line2D.Double(left, box.getMaxY(), right, box.getMaxY()));
      placer.avoid(new Line2D.Double(left, box.getMinY(), left, box.getMaxY()));
      placer.avoid(new Line2D.Double(right, box.getMinY(), right, box.getMaxY()));
    }
  }

  private static Rectangle2D boxOf(Outline outline, Frame frame) {
    double left = frame.acrossOf(outline.x().low());
    double top = frame.downOf(outline.z().high());
    return new Rectangle2D.Double(
        left,
        top,
        frame.acrossOf(outline.x().high()) - left,
        frame.downOf(outline.z().low()) - top);
  }

  private void paintNotes(List<Note> notes, Frame frame, double columnWidth, double lowest) {
    double[] heights = spread(notes, frame.top() + LINE / 2, lowest - LINE / 2);
    double left = frame.right() + LABEL_GAP;
    double room = columnWidth - LABEL_GAP;
    for (int i = 0; i < notes.size(); i++) {
      Note note = notes.get(i);
      Point2D target = note.target();
      Path2D leader = new Path2D.Double();
      leader.moveTo(target.getX(), target.getY());
      leader.lineTo(frame.right() + 2, target.getY());
      leader.lineTo(left - 3, heights[i]);
      canvas.stroke(leader, new Pen(RIM, 3));
      canvas.stroke(leader, new Pen(Look.INK, 0.9));
      double radius = note.spot() ? 4.5 : 2.2;
      Ellipse2D dot =
          new Ellipse2D.Double(
              target.getX() - radius, target.getY() - radius, 2 * radius, 2 * radius);
      canvas.fill(dot, note.spot() ? Color.WHITE : Look.INK);
      canvas.stroke(dot, new Pen(Look.INK, note.spot() ? 2 : 1));
      Lettering lettering = note.spot() ? Look.LABEL.inBold() : Look.LABEL;
      write(
          Letters.fit(note.text(), room, lettering),
          left,
          heights[i] + 4,
          Alignment.START,
          lettering);
    }
  }

  /**
   * Chooses for every outline the height on its right side that is farthest from the heights chosen
   * before, small things first, because a large thing can be pointed at in many places.
   */
  private List<Note> notes(Frame frame) {
    List<Note> notes = new ArrayList<>();
    for (Spot spot : picture.spots()) {
      Point2D target = new Point2D.Double(frame.acrossOf(spot.x()), frame.downOf(spot.z()));
      notes.add(new Note(spot.text(), target, true));
    }
    List<Outline> smallFirst = new ArrayList<>(picture.outlines());
    smallFirst.sort(Comparator.comparingDouble(outline -> area(boxOf(outline, frame))));
    for (Outline outline : smallFirst) {
      Rectangle2D box = boxOf(outline, frame);
      double best = box.getCenterY();
      double widest = -1;
      for (double share : new double[] {0.5, 0.35, 0.65, 0.2, 0.8, 0.08, 0.92}) {
        double y = box.getMinY() + share * box.getHeight();
        double distance =
            notes.stream()
                .mapToDouble(note -> Math.abs(note.target().getY() - y))
                .min()
                .orElse(LINE);
        if (Math.min(distance, LINE) > widest) {
          widest = Math.min(distance, LINE);
          best = y;
        }
      }
      notes.add(new Note(outline.name(), rightSide(outline, box, best), false));
    }
    notes.sort(Comparator.comparingDouble(note -> note.target().getY()));
    return notes;
  }

  /** The point of an outline's right side at some height. */
  private static Point2D rightSide(Outline outline, Rectangle2D box, double y) {
    if (!outline.round()) {
      return new Point2D.Double(box.getMaxX(), y);
    }
    double share = (y - box.getCenterY()) / (box.getHeight() / 2);
    double half = box.getWidth() / 2 * Math.sqrt(Math.max(0, 1 - share * share));
    return new Point2D.Double(box.getCenterX() + half, y);
  }

  private static double area(Rectangle2D box) {
    return box.getWidth() * box.getHeight();
  }

  /**
   * Heights of the notes' lines: at their targets where there is room, else pushed apart without
   * changing order.
   */
  private static double[] spread(List<Note> notes, double highest, double lowest) {
    double[] heights = new double[notes.size()];
    double next = highest;
    for (int i = 0; i < heights.length; i++) {
      heights[i] = Math.max(next, notes.get(i).target().getY());
      next = heights[i] + LINE;
    }
    double last = lowest;
    for (int i = heights.length - 1; i >= 0; i--) {
      heights[i] = Math.min(heights[i], last);
      last = heights[i] - LINE;
    }
    return heights;
  }

  static void paintBar(Canvas canvas, Rectangle2D bar, ColorScale colors, Units units) {
    double step = bar.getHeight() / ColorScale.LEVELS;
    for (int level = 0; level < ColorScale.LEVELS; level++) {
      double bottom = bar.getMaxY() - level * step;
      canvas.fillCell(
          new Rectangle2D.Double(bar.getX(), bottom - step, bar.getWidth(), step),
          ColorScale.color(level));
    }
    canvas.stroke(bar, new Pen(Look.QUIET_INK, 1));
    Frame scale = new Frame(bar, new Range(0, 1), colors.range());
    TemperatureScale first = TemperatureScale.of(units);
    TemperatureScale other = first.other();
    Range ticks = new Range(first.of(colors.range().low()), first.of(colors.range().high()));
    canvas.write(
        first.unit() + " (" + other.unit() + ")",
        new Anchor(bar.getX(), bar.getY() - 7, Alignment.START),
        Look.LABEL.inColor(Look.QUIET_INK));
    for (double tick : Ticks.decimal(ticks, bar.getHeight() / 30)) {
      double y = scale.downOf(first.kelvin(tick));
      canvas.stroke(
          new Line2D.Double(bar.getMaxX(), y, bar.getMaxX() + 4, y), new Pen(Look.QUIET_INK, 1));
      double converted = other.of(first.kelvin(tick));
      double decimals = tick == Math.rint(tick) ? 1 : 10;
      String text =
          Look.plain(tick) + " (" + Look.plain(Math.round(converted * decimals) / decimals) + ")";
      canvas.write(text, new Anchor(bar.getMaxX() + 7, y + 4, Alignment.START), Look.TICK);
    }
  }

  private void write(String text, double x, double y, Alignment alignment, Lettering lettering) {
    canvas.write(text, new Anchor(x, y, alignment), lettering);
  }
}
