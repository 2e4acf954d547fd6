package stenotherm.picture;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;

/**
 * Shares by calendar month, a curve for each kind. It begins after the longest stretch of months
 * without any: a winter stands from December on.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class MonthChart extends Picture {
  private static final int MONTHS = 12;
  private static final int HEIGHT = 300;
  private static final int TENTHS = 10;

  private final List<Kind> kinds;
  private final List<Level> levels;

  private record Kind(String name, Map<Month, Double> shares) {}

  private record Level(String name, double share) {}

  private MonthChart(Builder builder) {
    super(builder);
    kinds = Checks.notEmpty("kinds of shares", builder.kinds);
    levels = List.copyOf(builder.levels);
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
   * Returns the height at which the chart fills a width best.
   *
   * @param width width of the picture [pixel]
   * @return height [pixel]
   */
  public int heightFor(int width) {
    return (int) Math.ceil(headingHeight(width) + key().height(width)) + HEIGHT;
  }

  private CurveKey key() {
    return CurveKey.ofMany(kinds.stream().map(Kind::name).toList());
  }

  @Override
  void draw(Canvas canvas, double headingEnd) {
    requireHeight("a chart of months", canvas, 0);
    key().paint(canvas, headingEnd);
    Area area =
        new Area(
            Plot.SIDE_SPACE,
            headingEnd + key().height(canvas.width()) + 2,
            canvas.width() - 2 * Look.EDGE,
            canvas.height() - Plot.spaceBelow(1));
    List<Month> shown = shown();
    Plot plot = new Plot(canvas, area, new Range(-0.5, shown.size() - 0.5), new Range(0, 100));
    List<Double> percents = new ArrayList<>();
    for (int percent = 0; percent <= 100; percent += 2 * TENTHS) {
      percents.add((double) percent);
    }
    plot.axis(Plot.Edge.LEFT, Plot.Tick.all(percents), Plot.Mark.GRID);
    List<Plot.Tick> months = new ArrayList<>();
    // narrow pictures have room for a letter each
    TextStyle style = canvas.width() < 500 && shown.size() > 6 ? TextStyle.NARROW : TextStyle.SHORT;
    for (Month month : shown) {
      String name = month.getDisplayName(style, Locale.ENGLISH);
      months.add(new Plot.Tick(shown.indexOf(month), name));
    }
    plot.axis(Plot.Edge.BELOW, months, Plot.Mark.SHORT);
    plot.title(Plot.Edge.LEFT, "of 100 departures go well");
    plot.title(Plot.Edge.BELOW, "month of departure");
    plot.border();
    for (Level level : levels) {
      double down = plot.downOf(100 * level.share());
      canvas.line(area.left(), down, area.right(), down, new Canvas.Pen(Look.INK, 1));
    }
    List<List<Pixel>> curves = new ArrayList<>();
    for (Kind kind : kinds) {
      List<Pixel> curve = new ArrayList<>();
      for (Month month : shown) {
        Double share = kind.shares().get(month);
        if (share != null) {
          curve.add(plot.pixel(shown.indexOf(month), 100 * share));
        }
      }
      curves.add(curve);
    }
    plot.curves(curves, Plot.WIDTH_OF_FIRST);
    for (int index = curves.size() - 1; index >= 0; index--) {
      for (Pixel point : curves.get(index)) {
        canvas.dot(point, 3, Color.WHITE, new Canvas.Pen(Plot.colorOf(index), 1.8));
      }
    }
    levels.forEach(level -> plot.nameLevel(level.name(), 100 * level.share(), true));
    for (int index = 0; index < curves.size() && key().isEmpty(); index++) {
      plot.name(kinds.get(index).name(), curves.get(index), index);
    }
  }

  private List<Month> shown() {
    Set<Month> told = EnumSet.noneOf(Month.class);
    kinds.forEach(kind -> told.addAll(kind.shares().keySet()));
    return span(told);
  }

  /**
   * Puts months in the order in which a chart shows them, such as December before January.
   *
   * @param told some months
   * @return the same, from the first one after the longest stretch without any
   */
  public static List<Month> inOrder(Set<Month> told) {
    return span(told).stream().filter(told::contains).toList();
  }

  /** The months from the first one after the longest stretch without any to the last. */
  private static List<Month> span(Set<Month> told) {
    Month first = Month.JANUARY;
    int longest = 0;
    for (Month month : told) {
      int without = 0;
      while (without < MONTHS - 1 && !told.contains(month.minus(without + 1L))) {
        without++;
      }
      if (without > longest) {
        longest = without;
        first = month;
      }
    }
    List<Month> shown = new ArrayList<>();
    for (int after = 0; after < MONTHS - longest; after++) {
      shown.add(first.plus(after));
    }
    return shown;
  }

  /**
   * Builds a {@link MonthChart}.
   *
   * <p>Experimental. Not thread-safe.
   */
  public static final class Builder extends Titled<Builder> {
    private final List<Kind> kinds = new ArrayList<>();
    private final List<Level> levels = new ArrayList<>();

    private Builder(String title) {
      super(title);
    }

    /**
     * Adds a curve; the first one lies on top.
     *
     * @param name its name, for example {@code "with warmer"}
     * @param shares the share of each month [-], 0 to 1; months may be missing, not all
     * @return this
     * @throws InvalidInputException if the name is blank, there is no month or a share is out of
     *     range
     */
    public Builder kind(String name, Map<Month, Double> shares) {
      Checks.name("name of a kind", name);
      if (shares.isEmpty()) {
        throw new InvalidInputException("months of '" + name + "'", "there is none");
      }
      shares.forEach(
          (month, share) ->
              Checks.within("share of " + month, share, new Range(0, 1), "", "1 is all."));
      kinds.add(new Kind(name, new TreeMap<>(shares)));
      return this;
    }

    /**
     * Adds a line across.
     *
     * @param name its name
     * @param share where [-], 0 to 1
     * @return this
     * @throws InvalidInputException if the name is blank or the share is not within 0 and 1
     */
    public Builder level(String name, double share) {
      levels.add(
          new Level(
              Checks.name("name of a level", name),
              Checks.within("level", share, new Range(0, 1), "", "1 is all.")));
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
     * @throws InvalidInputException if there is no curve, or the title is blank
     */
    public MonthChart build() {
      return new MonthChart(this);
    }
  }
}
