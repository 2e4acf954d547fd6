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
  static final double BAR_SPACE = 60;
  private static final double SMALLEST = 80;
  private static final Color RIM = Color.WHITE.withOpacity(0.75);
  private static final Lettering NUMBER = Look.LABEL.inBold().withHalo();

  private final Canvas canvas;
  private final SectionPicture picture;
  private final ColorScale colors;
  private final SectionKey key;

  SectionPicturePainter(Canvas canvas, SectionPicture picture, ColorScale colors, SectionKey key) {
    this.canvas = canvas;
    this.picture = picture;
    this.colors = colors;
    this.key = key;
  }

  /** Draws one picture that fills its canvas below its heading. */
  static void paintAlone(Canvas canvas, SectionPicture picture, double top) {
    ColorScale colors = new ColorScale(colorRange(List.of(picture.field)));
    SectionKey key = SectionKey.of(List.of(picture));
    double bottom = canvas.height() - key.height(canvas.width());
    Area room = new Area(0, top, canvas.width() - BAR_SPACE - Look.EDGE, bottom);
    if (!fits(room)) {
      throw Picture.tooSmall("this section", "more width or height");
    }
    Area field =
        new SectionPicturePainter(canvas, picture, colors, key).paint(room, scale(picture, room));
    double barLeft = field.right() + 2 * Look.EDGE;
    paintBar(
        canvas,
        new Area(barLeft, top + 18, barLeft + BAR_WIDTH, bottom - BOTTOM_SPACE),
        colors,
        picture.units);
    key.paint(canvas);
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

  /** Pixels per metre with which the section fits into a room beside its axes. */
  static double scale(SectionPicture picture, Area room) {
    Range x = picture.field.x();
    Range z = picture.field.z();
    return Math.min(
        (room.width() - Plot.SIDE_SPACE) / (x.high() - x.low()),
        (room.height() - BOTTOM_SPACE) / (z.high() - z.low()));
  }

  /** Whether a section can be seen in a room. */
  static boolean fits(Area room) {
    return room.width() - Plot.SIDE_SPACE >= SMALLEST && room.height() - BOTTOM_SPACE >= SMALLEST;
  }

  /** Draws the section with axes and numbers into a room and returns where its field is. */
  Area paint(Area room, double scale) {
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
    for (double temperature : picture.isotherms) {
      List<List<Pixel>> lines = contours.lines(temperature);
      if (!lines.isEmpty()) {
        canvas.lines(lines, new Pen(RIM, 1.2));
      }
    }
    paintOutlines(plot);
    paintSpots(plot);
    numberOutlines(plot);
    picture.isotherms.forEach(
        temperature -> nameIsotherm(plot, temperature, contours.lines(temperature)));
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

  private void paintSpots(Plot plot) {
    for (Spot spot : picture.spots) {
      Pixel point = plot.pixel(spot.x(), spot.z());
      plot.point(point);
      List<Pixel> around = new ArrayList<>();
      for (int step = 0; step < 16; step++) {
        double angle = step * Math.PI / 8;
        around.add(new Pixel(point.x() + 16 * Math.cos(angle), point.y() + 16 * Math.sin(angle)));
      }
      number(plot, spot.text(), around);
    }
  }

  /** Writes the number of each outline upon it, small things first: they have fewer places. */
  private void numberOutlines(Plot plot) {
    List<Outline> smallFirst = new ArrayList<>(picture.outlines);
    smallFirst.sort(
        Comparator.comparingDouble(
            outline -> {
              Area box = plot.part(outline.x(), outline.z());
              return box.width() * box.height();
            }));
    for (Outline outline : smallFirst) {
      Area box = plot.part(outline.x(), outline.z());
      List<Pixel> places = new ArrayList<>();
      for (double share : new double[] {0.5, 0.3, 0.7, 0.15, 0.85}) {
        double x = box.left() + share * box.width();
        double y = box.top() + share * box.height();
        places.add(new Pixel(halfWay(outline, box.middle().x(), box.right(), share), y));
        places.add(new Pixel(halfWay(outline, box.middle().x(), box.left(), share), y));
        places.add(new Pixel(x, halfWay(outline, box.middle().y(), box.top(), share)));
        places.add(new Pixel(x, halfWay(outline, box.middle().y(), box.bottom(), share)));
      }
      number(plot, outline.name(), places);
    }
  }

  /** Where an outline is, from its middle to its side, at a share of its other extent. */
  private static double halfWay(Outline outline, double middle, double side, double share) {
    double part = outline.round() ? 2 * Math.sqrt(share * (1 - share)) : 1;
    return middle + part * (side - middle);
  }

  /** Writes the number of a thing at the first of some places that is free. */
  private void number(Plot plot, String name, List<Pixel> places) {
    String text = key.number(name);
    double width = Letters.width(text, NUMBER);
    List<Candidate> candidates = new ArrayList<>();
    for (Pixel place : places) {
      // at the edge of the section it stands just inside
      double left =
          Plot.clamp(
              place.x() - width / 2, plot.area().left() + 2, plot.area().right() - width - 2);
      double top = Plot.clamp(place.y() - 7, plot.area().top() + 1, plot.area().bottom() - 15);
      candidates.add(Plot.labelAt(left, top, width, candidates.size()));
    }
    plot.label(text, candidates, NUMBER);
  }

  static void paintBar(Canvas canvas, Area bar, ColorScale colors, Units units) {
    Plot plot = new Plot(canvas, bar, new Range(0, 1), colors.range());
    for (int level = 0; level < ColorScale.LEVELS; level++) {
      Range warmer = new Range(colors.from(level), colors.range().high());
      canvas.fill(plot.part(plot.x(), warmer), ColorScale.color(level));
    }
    plot.border();
    TemperatureScale scale = TemperatureScale.of(units);
    Range range = new Range(scale.of(colors.range().low()), scale.of(colors.range().high()));
    List<Double> ticks = Ticks.decimal(range, bar.height() / 30);
    plot.axis(Plot.Edge.RIGHT, Plot.Tick.all(ticks, scale::kelvin, Look::plain), Plot.Mark.SHORT);
    canvas.write(
        scale.unit(),
        new Pixel(bar.left(), bar.top() - 7),
        Alignment.START,
        Look.LABEL.inColor(Look.QUIET_INK));
  }
}
