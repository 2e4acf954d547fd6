package stenotherm.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stenotherm.base.Lengths;
import stenotherm.base.Range;
import stenotherm.picture.Canvas.Alignment;
import stenotherm.picture.Canvas.Lettering;
import stenotherm.picture.Canvas.Pen;
import stenotherm.picture.LabelPlacer.Candidate;
import stenotherm.words.Units;

/** Draws one {@link SectionPicture} into a part of a canvas. */
final class SectionPicturePainter {
  static final double BOTTOM_SPACE = Plot.spaceBelow(1);
  static final double BAR_WIDTH = 16;
  static final double BAR_SPACE = 108;
  private static final double LABEL_GAP = 16;
  private static final double LINE = 15;
  private static final double SMALLEST = 80;
  private static final Color RIM = Color.WHITE.withOpacity(0.75);

  private final Canvas canvas;
  private final SectionPicture picture;
  private final ColorScale colors;

  SectionPicturePainter(Canvas canvas, SectionPicture picture, ColorScale colors) {
    this.canvas = canvas;
    this.picture = picture;
    this.colors = colors;
  }

  /** A text for the column beside the section, and the point that it belongs to. */
  private record Note(String text, Pixel target, boolean spot) {}

  /** Draws one picture that fills its canvas below its heading. */
  static void paintAlone(Canvas canvas, SectionPicture picture, double top) {
    ColorScale colors = new ColorScale(colorRange(List.of(picture.field)));
    Area room = new Area(0, top, canvas.width() - BAR_SPACE - Look.EDGE, canvas.height());
    double column = notesWidth(picture, 0.3 * canvas.width());
    if (!fits(picture, room, column)) {
      throw Picture.tooSmall(
          "this section",
          "more width than 500 or more height than " + (int) (notesHeight(picture) + 150));
    }
    Area field =
        new SectionPicturePainter(canvas, picture, colors)
            .paint(room, scale(picture, room, column), column);
    double barLeft = field.right() + column + LABEL_GAP;
    paintBar(
        canvas,
        new Area(barLeft, top + 18, barLeft + BAR_WIDTH, room.bottom() - BOTTOM_SPACE),
        colors,
        picture.units);
  }

  /** The range of colours for some fields together, never empty. */
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
    for (Outline outline : picture.outlines) {
      widest = Math.max(widest, Letters.width(outline.name(), Look.LABEL));
    }
    for (Spot spot : picture.spots) {
      widest = Math.max(widest, Letters.width(spot.text(), Look.LABEL.inBold()));
    }
    return widest == 0 ? 0 : Math.min(widest, most) + 2 * LABEL_GAP;
  }

  /** Pixels per metre with which the section fits into a room beside its axes and notes. */
  static double scale(SectionPicture picture, Area room, double notesWidth) {
    Range x = picture.field.x();
    Range z = picture.field.z();
    return Math.min(
        (room.width() - Plot.SIDE_SPACE - notesWidth) / (x.high() - x.low()),
        (room.height() - BOTTOM_SPACE) / (z.high() - z.low()));
  }

  /** Whether a section and its notes can be read in a room. */
  static boolean fits(SectionPicture picture, Area room, double notesWidth) {
    return room.width() - Plot.SIDE_SPACE - notesWidth >= SMALLEST
        && room.height() - BOTTOM_SPACE >= Math.max(SMALLEST, notesHeight(picture));
  }

  /** Height of a section's column of notes [pixel]. */
  static double notesHeight(SectionPicture picture) {
    return LINE * (picture.outlines.size() + picture.spots.size());
  }

  /** Draws the section with axes and notes into a room and returns where its field is. */
  Area paint(Area room, double scale, double notesWidth) {
    Range x = picture.field.x();
    Range z = picture.field.z();
    Area area =
        Area.sized(
            room.left() + Plot.SIDE_SPACE,
            room.top(),
            scale * (x.high() - x.low()),
            scale * (z.high() - z.low()));
    Plot plot = new Plot(canvas, area, x, z);
    Contours contours = picture.field.contours(plot);
    paintField(contours, area);
    paintAxes(plot);
    List<Note> notes = notes(plot);
    for (Note note : notes) {
      Pixel target = note.target;
      plot.placer().avoid(Area.sized(target.x() - 6, target.y() - 6, 12, 12));
      plot.placer().avoid(target, new Pixel(area.right(), target.y()));
    }
    for (double temperature : picture.isotherms) {
      List<List<Pixel>> lines = contours.lines(temperature);
      if (!lines.isEmpty()) {
        canvas.lines(lines, new Pen(RIM, 1.2));
      }
    }
    paintOutlines(plot);
    picture.isotherms.forEach(
        temperature -> nameIsotherm(plot, temperature, contours.lines(temperature)));
    paintNotes(notes, area, notesWidth, room.bottom() - BOTTOM_SPACE);
    return area;
  }

  /**
   * Fills all that is at least as warm as a colour says, the coldest colour first: each one lies
   * upon the one before, so that no seam shows between them.
   */
  private void paintField(Contours contours, Area area) {
    canvas.fill(area, ColorScale.color(0));
    for (int level = 1; level < ColorScale.LEVELS; level++) {
      List<List<Pixel>> loops = contours.areas(colors.from(level));
      if (!loops.isEmpty()) {
        canvas.fill(loops, ColorScale.color(level));
      }
    }
  }

  private void paintAxes(Plot plot) {
    boolean inches = picture.units == Units.US;
    double unit = inches ? Lengths.INCH : Lengths.fromMillimetres(1);
    plot.axis(Plot.Edge.BELOW, ticks(plot.x(), unit, plot.area().width() / 48), Plot.Mark.SHORT);
    plot.axis(Plot.Edge.LEFT, ticks(plot.y(), unit, plot.area().height() / 34), Plot.Mark.SHORT);
    String unitName = inches ? " [in]" : " [mm]";
    plot.title(Plot.Edge.BELOW, picture.horizontalAxis + unitName);
    plot.title(Plot.Edge.LEFT, picture.verticalAxis + unitName);
    plot.border();
  }

  private static List<Plot.Tick> ticks(Range range, double unit, double most) {
    List<Double> ticks = Ticks.decimal(new Range(range.low() / unit, range.high() / unit), most);
    return Plot.Tick.all(ticks, tick -> tick * unit, Look::plain);
  }

  /** Writes an isotherm's temperature once, upon the line where it is clear of all else. */
  private void nameIsotherm(Plot plot, double temperature, List<List<Pixel>> lines) {
    TemperatureScale scale = TemperatureScale.of(picture.units);
    String text = Look.plain(Math.round(scale.of(temperature) * 10) / 10.0) + " " + scale.unit();
    Lettering lettering = Look.TICK.inColor(Look.INK).withHalo();
    double width = Letters.width(text, lettering);
    List<Candidate> candidates = new ArrayList<>();
    for (List<Pixel> line : lines) {
      for (Pixel point : LabelPlacer.inShortPieces(line)) {
        // The left side is free of leaders.
        double cost = 20 * (point.x() - plot.area().left()) / plot.area().width();
        candidates.add(Plot.labelAt(point.x() - width / 2, point.y() - 7, width, cost));
      }
    }
    plot.label(text, candidates, lettering);
  }

  private void paintOutlines(Plot plot) {
    for (Outline outline : picture.outlines) {
      Area box = plot.part(outline.x(), outline.z());
      for (Pen pen : List.of(new Pen(RIM, 3), new Pen(Look.INK, 1.3))) {
        if (outline.round()) {
          canvas.ellipse(box, pen);
        } else {
          canvas.outline(box, pen);
        }
      }
      Pixel[] corners = {
        new Pixel(box.left(), box.top()),
        new Pixel(box.right(), box.top()),
        new Pixel(box.right(), box.bottom()),
        new Pixel(box.left(), box.bottom())
      };
      for (int i = 0; i < corners.length; i++) {
        plot.placer().avoid(corners[i], corners[(i + 1) % corners.length]);
      }
    }
  }

  private void paintNotes(List<Note> notes, Area area, double columnWidth, double lowest) {
    double[] heights = spread(notes, area.top() + LINE / 2, lowest - LINE / 2);
    double left = area.right() + LABEL_GAP;
    double room = columnWidth - LABEL_GAP;
    for (int i = 0; i < notes.size(); i++) {
      Note note = notes.get(i);
      Pixel target = note.target;
      List<Pixel> leader =
          List.of(target, new Pixel(area.right() + 2, target.y()), new Pixel(left - 3, heights[i]));
      canvas.line(leader, new Pen(RIM, 3));
      canvas.line(leader, new Pen(Look.INK, 0.9));
      if (note.spot) {
        canvas.dot(target, 4.5, Color.WHITE, new Pen(Look.INK, 2));
      } else {
        canvas.dot(target, 2.2, Look.INK, new Pen(Look.INK, 1));
      }
      Lettering lettering = note.spot ? Look.LABEL.inBold() : Look.LABEL;
      canvas.write(
          Letters.fit(note.text, room, lettering),
          new Pixel(left, heights[i] + 4),
          Alignment.START,
          lettering);
    }
  }

  /**
   * Chooses for every outline the height on its right side that is farthest from the heights chosen
   * before, small things first, because a large thing can be pointed at in many places.
   */
  private List<Note> notes(Plot plot) {
    List<Note> notes = new ArrayList<>();
    for (Spot spot : picture.spots) {
      notes.add(new Note(spot.text(), plot.pixel(spot.x(), spot.z()), true));
    }
    List<Outline> smallFirst = new ArrayList<>(picture.outlines);
    smallFirst.sort(
        Comparator.comparingDouble(
            outline -> {
              Area box = plot.part(outline.x(), outline.z());
              return box.width() * box.height();
            }));
    for (Outline outline : smallFirst) {
      Area box = plot.part(outline.x(), outline.z());
      double best = box.middle().y();
      double widest = -1;
      for (double share : new double[] {0.5, 0.35, 0.65, 0.2, 0.8, 0.08, 0.92}) {
        double y = box.top() + share * box.height();
        double distance =
            notes.stream().mapToDouble(note -> Math.abs(note.target.y() - y)).min().orElse(LINE);
        if (Math.min(distance, LINE) > widest) {
          widest = Math.min(distance, LINE);
          best = y;
        }
      }
      notes.add(new Note(outline.name(), rightSide(outline, box, best), false));
    }
    notes.sort(Comparator.comparingDouble(note -> note.target.y()));
    return notes;
  }

  /** The point of an outline's right side at some height. */
  private static Pixel rightSide(Outline outline, Area box, double y) {
    if (!outline.round()) {
      return new Pixel(box.right(), y);
    }
    double share = (y - box.middle().y()) / (box.height() / 2);
    double half = box.width() / 2 * Math.sqrt(Math.max(0, 1 - share * share));
    return new Pixel(box.middle().x() + half, y);
  }

  /**
   * Heights of the notes' lines: at their targets where there is room, else pushed apart without
   * changing order.
   */
  private static double[] spread(List<Note> notes, double highest, double lowest) {
    double[] heights = new double[notes.size()];
    double next = highest;
    for (int i = 0; i < heights.length; i++) {
      heights[i] = Math.max(next, notes.get(i).target.y());
      next = heights[i] + LINE;
    }
    double last = lowest;
    for (int i = heights.length - 1; i >= 0; i--) {
      heights[i] = Math.min(heights[i], last);
      last = heights[i] - LINE;
    }
    return heights;
  }

  static void paintBar(Canvas canvas, Area bar, ColorScale colors, Units units) {
    Plot plot = new Plot(canvas, bar, new Range(0, 1), colors.range());
    for (int level = 0; level < ColorScale.LEVELS; level++) {
      Range warmer = new Range(colors.from(level), colors.range().high());
      canvas.fill(plot.part(plot.x(), warmer), ColorScale.color(level));
    }
    plot.border();
    TemperatureScale first = TemperatureScale.of(units);
    TemperatureScale other = first.other();
    Range range = new Range(first.of(colors.range().low()), first.of(colors.range().high()));
    List<Double> ticks = Ticks.decimal(range, bar.height() / 30);
    plot.axis(
        Plot.Edge.RIGHT,
        Plot.Tick.all(
            ticks,
            first::kelvin,
            tick -> {
              double decimals = tick == Math.rint(tick) ? 1 : 10;
              double converted = Math.round(other.of(first.kelvin(tick)) * decimals) / decimals;
              return Look.plain(tick) + " (" + Look.plain(converted) + ")";
            }),
        Plot.Mark.SHORT);
    canvas.write(
        first.unit() + " (" + other.unit() + ")",
        new Pixel(bar.left(), bar.top() - 7),
        Alignment.START,
        Look.LABEL.inColor(Look.QUIET_INK));
  }
}
