package stenotherm.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.grid.Box;
import stenotherm.grid.Point;
import stenotherm.grid.Shape;
import stenotherm.picture.Canvas.Alignment;
import stenotherm.picture.Canvas.Lettering;
import stenotherm.picture.Canvas.Pen;
import stenotherm.picture.LabelPlacer.Candidate;
import stenotherm.words.Figures;
import stenotherm.words.Units;

/**
 * A packed parcel to scale, seen from the front and from above, as if its walls were glass: what is
 * where, in numbers that a list beside it explains, and how far things are from each other.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class PackingDrawing extends Picture {
  /** Space below for one chain of distances, and on the right [pixel]. */
  private static final double BELOW = 62;

  private static final double BESIDE = 122;
  private static final double CAPTION = 20;

  /** From one row of distances to the next [pixel]. */
  private static final double ROW = 13;

  /** From this width on the two views stand beside each other [pixel]. */
  private static final double TWO_COLUMNS = 640;

  /** No view is taller or wider than this [pixel]. */
  private static final double HIGHEST = 210;

  /** Ends closer together than half of a tape's sixteenth of an inch have no distance [m]. */
  private static final double TOUCHING = 8e-4;

  /** Radius of a hole that is seen as a circle, at least [pixel]. */
  private static final double SMALLEST_HOLE = 3;

  private static final Pen THIN = new Pen(Look.QUIET_INK, 0.8);
  private static final Lettering NUMBER = Look.LABEL.inBold().withHalo();

  private final List<Part> parts;
  private final List<Hole> holes;
  private final Units units;

  /** What a part is, which decides how it is drawn. */
  public enum Shown {
    /** A carton or another thin wall. */
    BOARD(new Color(222, 200, 165)),
    /** Foam. */
    FOAM(new Color(226, 236, 243)),
    /** What is between walls and contents. */
    FILL(new Color(250, 246, 234)),
    /** A cup, bag or vial. */
    VESSEL(Color.WHITE),
    /** What lies in a vessel. */
    BEDDING(new Color(205, 226, 205)),
    /** An animal. */
    ANIMAL(new Color(110, 110, 110)),
    /** A warmer. */
    WARMER(new Color(213, 94, 0, 0.45)),
    /** A pack. */
    PACK(new Color(0, 114, 178, 0.4));

    private final Color color;

    Shown(Color color) {
      this.color = color;
    }

    private boolean isMeasured() {
      return this == FILL || this == VESSEL || this == WARMER || this == PACK;
    }
  }

  /**
   * A part of the parcel.
   *
   * @param kind what it is
   * @param box the box that it touches from inside [m]
   * @param shape its shape
   * @param number what stands for it in the list; empty for none
   */
  public record Part(Shown kind, Box box, Shape shape, String number) {}

  /**
   * A hole through a wall.
   *
   * @param face the wall
   * @param middle a point on its axis [m]
   * @param diameter its diameter [m]
   */
  public record Hole(Face face, Point middle, double diameter) {}

  private PackingDrawing(Builder builder) {
    super(builder);
    parts = Checks.notEmpty("parts of a drawing", builder.parts);
    holes = List.copyOf(builder.holes);
    units = builder.units;
  }

  /**
   * Starts a drawing.
   *
   * @param title what is drawn
   * @return a builder
   */
  public static Builder titled(String title) {
    return new Builder(title);
  }

  /**
   * Returns the height at which the views fill a width best.
   *
   * @param width width of the picture [pixel]
   * @return height [pixel]
   */
  public int heightFor(int width) {
    double scale = scale(width);
    double below = below(width);
    double side = CAPTION + scale * outer().size(Axis.Z) + below;
    double above = CAPTION + scale * outer().size(Axis.Y) + below;
    double views = isWide(width) ? Math.max(side, above) : side + above;
    return (int) Math.ceil(headingHeight(width) + views);
  }

  @Override
  void draw(Canvas canvas, double top) {
    double lack = heightFor(canvas.width()) - canvas.height();
    requireHeight("this drawing", canvas, lack);
    double scale = scale(canvas.width());
    View side = new View(canvas, Axis.Z, scale, Look.EDGE, top + CAPTION);
    side.paint("from the front");
    double left = isWide(canvas.width()) ? canvas.width() / 2.0 : Look.EDGE;
    double view = CAPTION + scale * outer().size(Axis.Z) + below(canvas.width());
    double down = isWide(canvas.width()) ? 0 : view;
    new View(canvas, Axis.Y, scale, left, top + CAPTION + down).paint("from above, front below");
  }

  private static boolean isWide(double width) {
    return width >= TWO_COLUMNS;
  }

  /** The outer box: what is painted first. */
  private Box outer() {
    return parts.get(0).box();
  }

  /** Pixels per metre, the same in both views. */
  private double scale(double width) {
    double room = (isWide(width) ? width / 2 : width) - Look.EDGE - BESIDE;
    double tallest = Math.max(outer().size(Axis.Z), outer().size(Axis.Y));
    return Math.min(room / outer().size(Axis.X), HIGHEST / tallest);
  }

  /** Where something begins or ends along an axis, from the outer face on. */
  private List<Double> ends(Axis axis) {
    TreeSet<Double> all = new TreeSet<>();
    all.add(outer().min().along(axis));
    all.add(outer().max().along(axis));
    for (Part part : parts) {
      if (part.kind().isMeasured()) {
        all.add(part.box().min().along(axis));
        all.add(part.box().max().along(axis));
      }
    }
    List<Double> apart = new ArrayList<>();
    for (double end : all) {
      if (apart.isEmpty() || end - apart.get(apart.size() - 1) > TOUCHING) {
        apart.add(end);
      }
    }
    return apart;
  }

  private String distance(List<Double> ends, int part) {
    String text = new Figures(units).tape(ends.get(part + 1) - ends.get(part));
    return text.substring(0, text.lastIndexOf(' '));
  }

  /** Widths of the distances across, with what keeps them apart [pixel]. */
  private double[] widthsAcross() {
    List<Double> ends = ends(Axis.X);
    return IntStream.range(0, ends.size() - 1)
        .mapToDouble(part -> Letters.width(distance(ends, part), Look.TICK) + 5)
        .toArray();
  }

  /** In how many rows the distances across stand: one where that is long enough. */
  private int rowsAcross(double width) {
    double room = scale(width) * outer().size(Axis.X) + BESIDE - 4;
    return (int) Math.ceil(Arrays.stream(widthsAcross()).sum() / room);
  }

  /** Space below a view [pixel]. */
  private double below(double width) {
    return BELOW + ROW * (rowsAcross(width) - 1);
  }

  /** A view with x across. */
  private final class View {
    private final Canvas canvas;
    private final Axis up;
    private final double scale;
    private final Area frame;
    private final LabelPlacer placer;

    /**
     * A view.
     *
     * @param up the axis that runs up the page
     * @param scale pixels per metre
     * @param left where the outer box begins [pixel]
     * @param top where the outer box begins [pixel]
     */
    View(Canvas canvas, Axis up, double scale, double left, double top) {
      this.canvas = canvas;
      this.up = up;
      this.scale = scale;
      this.frame = Area.sized(left, top, scale * outer().size(Axis.X), scale * outer().size(up));
      this.placer = new LabelPlacer(frame);
    }

    void paint(String caption) {
      Pixel above = new Pixel(frame.left(), frame.top() - 6);
      canvas.write(caption, above, Alignment.START, Look.LABEL.inColor(Look.QUIET_INK));
      parts.forEach(this::paint);
      holes.forEach(this::paint);
      parts.stream().filter(part -> !part.number().isEmpty()).forEach(this::number);
      chainBelow();
      chainBeside();
    }

    private double across(double x) {
      return frame.left() + scale * (x - outer().min().x());
    }

    private double down(double height) {
      return frame.bottom() - scale * (height - outer().min().along(up));
    }

    private Area area(Box box) {
      return new Area(
          across(box.min().x()),
          down(box.max().along(up)),
          across(box.max().x()),
          down(box.min().along(up)));
    }

    private void paint(Part part) {
      Area area = area(part.box());
      boolean round = part.kind() == Shown.ANIMAL || looksRound(part.shape());
      Pen pen = new Pen(Look.INK, part.kind() == Shown.VESSEL ? 1.6 : 0.8);
      if (round) {
        canvas.fill(List.of(ellipse(area)), part.kind().color);
        canvas.ellipse(area, pen);
      } else {
        canvas.fill(area, part.kind().color);
        canvas.outline(area, pen);
      }
    }

    private boolean looksRound(Shape shape) {
      return (shape == Shape.CYLINDER_Z && up == Axis.Y)
          || (shape == Shape.CYLINDER_Y && up == Axis.Z);
    }

    private List<Pixel> ellipse(Area area) {
      List<Pixel> points = new ArrayList<>();
      for (int step = 0; step < 48; step++) {
        double angle = 2 * Math.PI * step / 48;
        points.add(
            new Pixel(
                area.middle().x() + area.width() / 2 * StrictMath.cos(angle),
                area.middle().y() + area.height() / 2 * StrictMath.sin(angle)));
      }
      return points;
    }

    /**
     * A white channel through a wall that is seen from its edge, a circle on one that is faced, in
     * quiet ink on the far one.
     */
    private void paint(Hole hole) {
      Area cavity = area(cavity());
      Pixel middle = new Pixel(across(hole.middle().x()), down(hole.middle().along(up)));
      Face face = hole.face();
      if (face.axis() == Axis.X) {
        double y = middle.y();
        channel(
            new Pixel(face.isMax() ? cavity.right() : frame.left(), y),
            new Pixel(face.isMax() ? frame.right() : cavity.left(), y));
      } else if (face.axis() == up) {
        double x = middle.x();
        channel(
            new Pixel(x, face.isMax() ? frame.top() : cavity.bottom()),
            new Pixel(x, face.isMax() ? cavity.top() : frame.bottom()));
      } else {
        double radius = Math.max(SMALLEST_HOLE, scale * hole.diameter() / 2);
        Area circle = Area.sized(middle.x() - radius, middle.y() - radius, 2 * radius, 2 * radius);
        boolean isNear = face == Face.Y_MIN || face == Face.Z_MAX;
        canvas.fill(List.of(ellipse(circle)), Color.WHITE);
        canvas.ellipse(circle, new Pen(isNear ? Look.INK : Look.QUIET_INK, isNear ? 1.4 : 0.8));
      }
    }

    private void channel(Pixel from, Pixel to) {
      canvas.line(List.of(from, to), new Pen(Look.INK, 4.4));
      canvas.line(List.of(from, to), new Pen(Color.WHITE, 2.4));
    }

    private Box cavity() {
      return parts.stream()
          .filter(part -> part.kind() == Shown.FILL)
          .map(Part::box)
          .findFirst()
          .orElseThrow();
    }

    /** Writes a part's number where no other number is, in its middle if possible. */
    private void number(Part part) {
      Area area = area(part.box());
      double width = Letters.width(part.number(), NUMBER);
      List<Candidate> candidates = new ArrayList<>();
      for (double x : new double[] {0.5, 0.2, 0.8, 0.06, 0.94}) {
        for (double y : new double[] {0.5, 0.2, 0.8}) {
          double left = area.left() + x * area.width() - width / 2;
          double top = area.top() + y * area.height() - 7;
          candidates.add(Plot.labelAt(left, top, width, candidates.size()));
        }
      }
      placer
          .place(candidates)
          .ifPresent(
              box ->
                  canvas.write(
                      part.number(),
                      new Pixel(box.left(), box.bottom() - 3),
                      Alignment.START,
                      NUMBER));
    }

    private void chainBelow() {
      double line = frame.bottom() + 9;
      List<Double> ends = ends(Axis.X);
      double[] at = ends.stream().mapToDouble(this::across).toArray();
      canvas.line(at[0], line, at[at.length - 1], line, THIN);
      for (double end : at) {
        canvas.line(end, line - 4, end, line + 4, THIN);
      }
      int rows = rowsAcross(canvas.width());
      // the lowest row first: its lines pass behind the texts above it
      for (int row = rows - 1; row >= 0; row--) {
        rowBelow(ends, middles(at), row, rows);
      }
      double low = line + 39 + ROW * (rows - 1);
      whole(outer().size(Axis.X), new Pixel(frame.middle().x(), low), Alignment.MIDDLE);
    }

    /** Every so manyth distance, from the one with the row's number on. */
    private void rowBelow(List<Double> ends, double[] middles, int row, int rows) {
      int[] parts = IntStream.range(0, middles.length).filter(n -> n % rows == row).toArray();
      double[] wanted = Arrays.stream(parts).mapToDouble(part -> middles[part]).toArray();
      double[] all = widthsAcross();
      double[] widths = Arrays.stream(parts).mapToDouble(part -> all[part]).toArray();
      double[] places = spread(wanted, widths, frame.left() - 4, frame.right() + BESIDE - 8);
      double line = frame.bottom() + 9;
      double down = line + ROW * row;
      Lettering letters = Look.TICK.inColor(Look.INK);
      for (int each = 0; each < parts.length; each++) {
        canvas.line(wanted[each], line, places[each], down + 10, THIN);
        canvas.write(
            distance(ends, parts[each]),
            new Pixel(places[each], down + 21),
            Alignment.MIDDLE,
            rows > 1 ? letters.withHalo() : letters);
      }
    }

    private void chainBeside() {
      double line = frame.right() + 9;
      List<Double> ends = ends(up);
      double[] at = ends.stream().mapToDouble(this::down).toArray();
      double[] heights = new double[at.length - 1];
      Arrays.fill(heights, 13);
      double[] downwards = Arrays.stream(middles(at)).map(each -> -each).toArray();
      double[] places = spread(downwards, heights, -frame.bottom() - 4, -frame.top() + 14);
      canvas.line(line, at[0], line, at[at.length - 1], THIN);
      for (double end : at) {
        canvas.line(line - 4, end, line + 4, end, THIN);
      }
      for (int part = 0; part < heights.length; part++) {
        canvas.line(line, -downwards[part], line + 10, -places[part], THIN);
        canvas.write(
            distance(ends, part),
            new Pixel(line + 13, -places[part] + 4),
            Alignment.START,
            Look.TICK.inColor(Look.INK));
      }
      double widest =
          IntStream.range(0, heights.length)
              .mapToDouble(part -> Letters.width(distance(ends, part), Look.TICK))
              .max()
              .orElse(0);
      Pixel beyond = new Pixel(line + 13 + widest + 10, frame.middle().y() + 4);
      whole(outer().size(up), beyond, Alignment.START);
    }

    private void whole(double length, Pixel place, Alignment alignment) {
      canvas.write(
          new Figures(units).tape(length), place, alignment, Look.TICK.inBold().inColor(Look.INK));
    }
  }

  private static double[] middles(double[] ends) {
    double[] middles = new double[ends.length - 1];
    for (int part = 0; part < middles.length; part++) {
      middles[part] = (ends[part] + ends[part + 1]) / 2;
    }
    return middles;
  }

  /**
   * Moves texts in a row apart until none covers another, each as near to its place as that allows.
   *
   * @param wanted where the middles of the texts should be, in rising order
   * @param widths their widths
   * @param low where the row begins
   * @param high where it ends; where it is too short, texts go beyond its beginning
   */
  static double[] spread(double[] wanted, double[] widths, double low, double high) {
    double[] places = wanted.clone();
    double end = low;
    for (int text = 0; text < places.length; text++) {
      places[text] = Math.max(places[text], end + widths[text] / 2);
      end = places[text] + widths[text] / 2;
    }
    double begin = high;
    for (int text = places.length - 1; text >= 0; text--) {
      places[text] = Math.min(places[text], begin - widths[text] / 2);
      begin = places[text] - widths[text] / 2;
    }
    return places;
  }

  /**
   * Builds a {@link PackingDrawing}.
   *
   * <p>Experimental. Not thread-safe.
   */
  public static final class Builder extends Titled<Builder> {
    private final List<Part> parts = new ArrayList<>();
    private final List<Hole> holes = new ArrayList<>();
    private Units units = Units.METRIC;

    private Builder(String title) {
      super(title);
    }

    /**
     * Adds a part, upon what is drawn already; the first is the outer box.
     *
     * @param part the part
     * @return this
     */
    public Builder part(Part part) {
      parts.add(part);
      return this;
    }

    /**
     * Adds a hole.
     *
     * @param hole the hole
     * @return this
     */
    public Builder hole(Hole hole) {
      holes.add(hole);
      return this;
    }

    /**
     * Sets the reader's units, which are metric otherwise.
     *
     * @param readers the units of distances
     * @return this
     */
    public Builder units(Units readers) {
      units = readers;
      return this;
    }

    @Override
    Builder self() {
      return this;
    }

    /**
     * Builds the drawing.
     *
     * @return the drawing
     * @throws InvalidInputException if there is no part or the title is blank
     */
    public PackingDrawing build() {
      return new PackingDrawing(this);
    }
  }
}
