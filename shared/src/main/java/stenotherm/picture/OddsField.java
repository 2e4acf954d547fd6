package stenotherm.picture;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;

/**
 * Odds over two temperatures, known at the nodes of a grid, and what each node's odds mean.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class OddsField {
  private final String name;
  private final double[] across;
  private final double[] up;
  private final double[][] odds;
  private final String[][] words;

  /**
   * Copies the grid and its odds.
   *
   * @param name what the odds are of
   * @param across temperatures on the horizontal axis, ascending, two or more [K]
   * @param up temperatures on the vertical axis, ascending, two or more [K]
   * @param odds the odds at each node as {@code [across][up]} [-]
   * @param words what they mean, which is written once into each part of the map that means it
   * @throws InvalidInputException if there are too few nodes, or the tables do not fit them
   */
  public OddsField(String name, double[] across, double[] up, double[][] odds, String[][] words) {
    this.name = Checks.name("name of the odds", name);
    this.across = across.clone();
    this.up = up.clone();
    boolean fits =
        across.length > 1
            && up.length > 1
            && odds.length == across.length
            && words.length == across.length;
    for (int i = 0; fits && i < across.length; i++) {
      fits = odds[i].length == up.length && words[i].length == up.length;
    }
    if (!fits) {
      throw new InvalidInputException(
          "odds of a map", "must be a row for each temperature across and a value for each up");
    }
    this.odds = new double[across.length][];
    this.words = new String[across.length][];
    for (int i = 0; i < across.length; i++) {
      this.odds[i] = odds[i].clone();
      this.words[i] = words[i].clone();
    }
  }

  String name() {
    return name;
  }

  Range across() {
    return new Range(across[0], across[across.length - 1]);
  }

  Range up() {
    return new Range(up[0], up[up.length - 1]);
  }

  /** Lines and areas of the odds, on a plot whose scales are linear in the temperatures. */
  Contours contours(Plot plot) {
    double[] x = new double[across.length];
    double[] y = new double[up.length];
    for (int i = 0; i < x.length; i++) {
      x[i] = pixel(plot, i, 0).x();
    }
    for (int j = 0; j < y.length; j++) {
      y[j] = pixel(plot, 0, j).y();
    }
    return new Contours(x, y, odds);
  }

  private Pixel pixel(Plot plot, int i, int j) {
    Area area = plot.area();
    return new Pixel(
        area.left() + share(across, i) * area.width(),
        area.bottom() - share(up, j) * area.height());
  }

  private static double share(double[] nodes, int number) {
    return (nodes[number] - nodes[0]) / (nodes[nodes.length - 1] - nodes[0]);
  }

  /** Everything that is meant somewhere. */
  Set<String> meanings() {
    Set<String> all = new LinkedHashSet<>();
    for (String[] column : words) {
      all.addAll(List.of(column));
    }
    return all;
  }

  /**
   * Places for a word of some width on nodes that mean it, those around it too; the middle first.
   */
  List<LabelPlacer.Candidate> places(Plot plot, String meaning, double width) {
    List<Pixel> all = new ArrayList<>();
    List<Pixel> inside = new ArrayList<>();
    double step = plot.area().width() / (across.length - 1);
    int reach = (int) Math.ceil(width / 2 / step);
    for (int i = 0; i < across.length; i++) {
      for (int j = 0; j < up.length; j++) {
        if (words[i][j].equals(meaning)) {
          all.add(pixel(plot, i, j));
          boolean fits = i - reach >= 0 && i + reach < across.length;
          for (int k = i - reach; fits && k <= i + reach; k++) {
            fits = words[k][j].equals(meaning);
          }
          if (fits) {
            inside.add(pixel(plot, i, j));
          }
        }
      }
    }
    double x = all.stream().mapToDouble(Pixel::x).average().orElse(0);
    double y = all.stream().mapToDouble(Pixel::y).average().orElse(0);
    Pixel middle = new Pixel(x, y);
    return inside.stream()
        .map(
            place ->
                Plot.labelAt(
                    place.x() - width / 2, place.y() - 7, width, place.distance(middle) / 4))
        .toList();
  }
}
