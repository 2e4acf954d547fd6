package stenotherm.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Temperatures;
import stenotherm.picture.Canvas.Alignment;
import stenotherm.picture.Canvas.Dash;
import stenotherm.picture.Canvas.Lettering;
import stenotherm.picture.Canvas.Pen;
import stenotherm.words.Units;

/**
 * Maps of odds over two temperatures, beside each other where there is room: the better, the
 * darker, with a line of its own pattern around each level, and words for what lies between.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class OddsChart extends Picture {
  /** From this width on maps stand beside each other [pixel]. */
  private static final double BESIDE = 560;

  private static final double RIGHT = 18;
  private static final double NAME = 20;
  private static final double BELOW = Plot.spaceBelow(1);
  private static final double LEAST_HEIGHT = 70;
  private static final double MOST_HEIGHT = 360;

  /** Space that stays free between a word and the line around a level [pixel]. */
  private static final double CLEARANCE = 2;

  /** A smaller part of the map stays without a word [-]. */
  private static final double WORTH_A_WORD = 0.01;

  private static final double KEY_ROW = 20;
  private static final double SWATCH = 26;

  /** A level's colour lies over those of the lower ones: lightness alone tells them apart. */
  private static final Color SHADE = Look.BLUE.withOpacity(0.24);

  private static final List<Dash> DASHES = List.of(Dash.SOLID, Dash.LONG, Dash.DOTTED);
  private static final Lettering PERCENT = Look.TICK.inColor(Look.INK).withHalo();
  private static final Lettering WORD = Look.LABEL.inBold().withHalo();

  private final List<OddsField> maps;
  private final List<Step> steps;
  private final String rest;
  private final String across;
  private final String up;
  private final Units units;
  private final Optional<Here> here;

  /** A level: from which odds on, and what it is called. */
  private record Step(double least, String words) {
    String percent() {
      return Look.plain(100 * least) + " %";
    }
  }

  /** A point of all maps that is the reader's [K]. */
  private record Here(double across, double up, String words) {}

  /** An entry of the key: its words, how many levels lie under it, and its line. */
  private record Entry(String words, int shades, Optional<Pen> line) {}

  private OddsChart(Builder builder) {
    super(builder);
    maps = Checks.notEmpty("maps", builder.maps);
    steps =
        Checks.notEmpty("levels", builder.steps).stream()
            .sorted(Comparator.comparingDouble(Step::least).reversed())
            .toList();
    rest = builder.rest;
    across = builder.across;
    up = builder.up;
    units = builder.units;
    here = builder.here;
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
    int columns = columns(width);
    double plot = Math.min(MOST_HEIGHT, 0.95 * plotWidth(width, columns));
    int rows = (maps.size() + columns - 1) / columns;
    return (int) Math.ceil(headingHeight(width) + rows * (NAME + plot + BELOW) + keyHeight(width));
  }

  private int columns(double width) {
    return width >= BESIDE ? maps.size() : 1;
  }

  private static double plotWidth(double width, int columns) {
    return width / columns - Plot.SIDE_SPACE - RIGHT;
  }

  @Override
  void draw(Canvas canvas, double top) {
    int columns = columns(canvas.width());
    int rows = (maps.size() + columns - 1) / columns;
    double room = canvas.height() - top - keyHeight(canvas.width());
    double height = room / rows - NAME - BELOW;
    Picture.requireHeight("this map", canvas, rows * (LEAST_HEIGHT - height));
    double width = plotWidth(canvas.width(), columns);
    for (int n = 0; n < maps.size(); n++) {
      double left = n % columns * canvas.width() / (double) columns + Plot.SIDE_SPACE;
      int row = n / columns;
      double down = top + row * (room / rows) + NAME;
      draw(canvas, maps.get(n), Area.sized(left, down, width, height));
    }
    key(canvas, canvas.height() - keyHeight(canvas.width()));
  }

  private void draw(Canvas canvas, OddsField map, Area area) {
    DoubleUnaryOperator degrees =
        kelvin ->
            units == Units.US ? Temperatures.toFahrenheit(kelvin) : Temperatures.toCelsius(kelvin);
    Plot plot = new Plot(canvas, area, scaled(map.across(), degrees), scaled(map.up(), degrees));
    canvas.write(
        Letters.fit(map.name(), area.width(), Look.LABEL.inBold()),
        new Pixel(area.left(), area.top() - 6),
        Alignment.START,
        Look.LABEL.inBold());
    plot.axis(
        Plot.Edge.LEFT, Plot.Tick.all(Ticks.decimal(plot.y(), area.height() / 34)), Plot.Mark.GRID);
    plot.axis(
        Plot.Edge.BELOW, Plot.Tick.all(Ticks.decimal(plot.x(), area.width() / 40)), Plot.Mark.GRID);
    String unit = units == Units.US ? " [°F]" : " [°C]";
    plot.title(Plot.Edge.LEFT, up + unit);
    plot.title(Plot.Edge.BELOW, across + unit);
    Contours contours = map.contours(plot);
    for (Step step : steps) {
      List<List<Pixel>> areas = contours.areas(step.least());
      if (!areas.isEmpty()) {
        canvas.fill(areas, SHADE);
      }
    }
    same(canvas, plot);
    for (int n = 0; n < steps.size(); n++) {
      List<List<Pixel>> lines = contours.lines(steps.get(n).least());
      if (!lines.isEmpty()) {
        lines.forEach(plot.placer()::avoid);
        canvas.lines(lines, line(n));
      }
    }
    plot.border();
    here.ifPresent(
        point -> {
          Pixel at =
              plot.pixel(degrees.applyAsDouble(point.across()), degrees.applyAsDouble(point.up()));
          plot.point(at, Look.INK, 4);
          plot.note(point.words(), at);
        });
    for (Step step : steps) {
      contours.lines(step.least()).stream()
          .max(Comparator.comparingInt(List::size))
          .ifPresent(longest -> onLine(plot, step.percent(), longest));
    }
    List<List<Pixel>> edges =
        steps.stream().flatMap(step -> contours.lines(step.least()).stream()).toList();
    for (String meaning : map.meanings()) {
      word(plot, map, meaning, edges);
    }
  }

  /**
   * Writes a word into the part that means it. Where that is too narrow, the key tells what a level
   * is; other words stand beside their part.
   */
  private void word(Plot plot, OddsField map, String meaning, List<List<Pixel>> edges) {
    List<LabelPlacer.Candidate> places =
        map.places(plot, meaning, Letters.width(meaning, WORD)).stream()
            .filter(place -> edges.stream().noneMatch(edge -> isOn(edge, place.box())))
            .toList();
    boolean inKey = steps.stream().anyMatch(step -> step.words().equals(meaning));
    if (!places.isEmpty()) {
      plot.label(meaning, places, WORD);
    } else if (!inKey && map.share(meaning) >= WORTH_A_WORD) {
      map.middle(plot, meaning).ifPresent(at -> plot.note(meaning, at));
    }
  }

  private static boolean isOn(List<Pixel> line, Area box) {
    Area wide = box.grown(CLEARANCE);
    for (int point = 1; point < line.size(); point++) {
      if (wide.touches(line.get(point - 1), line.get(point))) {
        return true;
      }
    }
    return false;
  }

  /** Writes upon a line, as beside it would be beside the next one, too. */
  private static void onLine(Plot plot, String text, List<Pixel> line) {
    double width = Letters.width(text, PERCENT);
    plot.label(
        text,
        LabelPlacer.inShortPieces(line).stream()
            .map(at -> Plot.labelAt(at.x() - width / 2, at.y() - 7, width, 0))
            .toList(),
        PERCENT);
  }

  private static Range scaled(Range kelvin, DoubleUnaryOperator degrees) {
    return new Range(degrees.applyAsDouble(kelvin.low()), degrees.applyAsDouble(kelvin.high()));
  }

  /** Where both temperatures are the same. */
  private static void same(Canvas canvas, Plot plot) {
    double low = Math.max(plot.x().low(), plot.y().low());
    double high = Math.min(plot.x().high(), plot.y().high());
    if (low < high) {
      List<Pixel> line = List.of(plot.pixel(low, low), plot.pixel(high, high));
      plot.placer().avoid(line);
      canvas.line(line, new Pen(Look.QUIET_INK, 0.8));
    }
  }

  private static Pen line(int number) {
    return new Pen(Look.INK, number == 0 ? 2.2 : 1.6, DASHES.get(number % DASHES.size()));
  }

  private List<Entry> entries() {
    List<Entry> all = new ArrayList<>();
    for (int n = 0; n < steps.size(); n++) {
      Step step = steps.get(n);
      all.add(
          new Entry(
              step.percent() + " or more: " + step.words(),
              steps.size() - n,
              Optional.of(line(n))));
    }
    all.add(new Entry("less: " + rest, 0, Optional.empty()));
    all.add(new Entry("the same at both ends", -1, Optional.of(new Pen(Look.QUIET_INK, 0.8))));
    return all;
  }

  private double keyHeight(double width) {
    return KEY_ROW * (row(width, entries().size()) + 1) + Look.EDGE;
  }

  /** The row of the key in which an entry stands, or the last one. */
  private int row(double width, int entry) {
    int row = 0;
    double x = Look.EDGE;
    List<Entry> all = entries();
    for (int n = 0; n < all.size() && n <= entry; n++) {
      if (x > Look.EDGE && x + wide(all.get(n)) > width - Look.EDGE) {
        row++;
        x = Look.EDGE;
      }
      x += wide(all.get(n));
    }
    return row;
  }

  private static double wide(Entry entry) {
    return SWATCH + 6 + Letters.width(entry.words(), Look.LABEL) + 16;
  }

  private void key(Canvas canvas, double top) {
    double x = Look.EDGE;
    int before = 0;
    List<Entry> all = entries();
    for (int n = 0; n < all.size(); n++) {
      Entry entry = all.get(n);
      int row = row(canvas.width(), n);
      x = row == before ? x : Look.EDGE;
      before = row;
      double y = top + KEY_ROW * row + 4;
      Area swatch = Area.sized(x, y, SWATCH, 13);
      for (int shade = 0; shade < entry.shades(); shade++) {
        canvas.fill(swatch, SHADE);
      }
      if (entry.shades() >= 0) {
        canvas.outline(swatch, entry.line().orElse(new Pen(Look.GRID, 1)));
      } else {
        canvas.line(x, y + 13, x + SWATCH, y, entry.line().orElseThrow());
      }
      canvas.write(entry.words(), new Pixel(x + SWATCH + 6, y + 11), Alignment.START, Look.LABEL);
      x += wide(entry);
    }
  }

  /**
   * Builds an {@link OddsChart}.
   *
   * <p>Experimental. Not thread-safe.
   */
  public static final class Builder extends Titled<Builder> {
    private final List<OddsField> maps = new ArrayList<>();
    private final List<Step> steps = new ArrayList<>();
    private String rest = "";
    private String across = "";
    private String up = "";
    private Units units = Units.METRIC;
    private Optional<Here> here = Optional.empty();

    private Builder(String title) {
      super(title);
    }

    /**
     * Adds a map.
     *
     * @param map the map; all have the same scales
     * @return this
     */
    public Builder map(OddsField map) {
      maps.add(map);
      return this;
    }

    /**
     * Adds a level.
     *
     * @param least the odds from which on it applies, above 0 and below 1 [-]
     * @param words what it is called
     * @return this
     * @throws InvalidInputException if the odds are not above 0 and below 1, or the words are blank
     */
    public Builder level(double least, String words) {
      if (!(least > 0 && least < 1)) {
        throw new InvalidInputException(
            "odds of a level", Checks.show(least, "") + " must be above 0 and below 1");
      }
      steps.add(new Step(least, Checks.name("name of a level", words)));
      return this;
    }

    /**
     * Says what is below all levels.
     *
     * @param words what it is called
     * @return this
     */
    public Builder rest(String words) {
      rest = words;
      return this;
    }

    /**
     * Names the axes, whose units are added.
     *
     * @param horizontal the temperature across
     * @param vertical the temperature upwards
     * @return this
     */
    public Builder axes(String horizontal, String vertical) {
      across = horizontal;
      up = vertical;
      return this;
    }

    /**
     * Marks a point of all maps.
     *
     * @param horizontal the temperature across [K]
     * @param vertical the temperature upwards [K]
     * @param words what is there
     * @return this
     * @throws InvalidInputException if the words are blank
     */
    public Builder here(double horizontal, double vertical, String words) {
      here = Optional.of(new Here(horizontal, vertical, Checks.name("name of a point", words)));
      return this;
    }

    /**
     * Sets the reader's units, which are metric otherwise.
     *
     * @param readers the units of the axes
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
     * Builds the chart.
     *
     * @return the chart
     * @throws stenotherm.base.InvalidInputException if there is no map or no level
     */
    public OddsChart build() {
      return new OddsChart(this);
    }
  }
}
