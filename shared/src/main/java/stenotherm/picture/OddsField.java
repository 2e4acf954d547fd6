package stenotherm.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
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
  /** Height of a word [pixel]. */
  private static final double HEIGHT = 14;

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
   * Places for a word of some width on nodes that mean it, as do all that it would cover; the
   * middle first.
   */
  List<LabelPlacer.Candidate> places(Plot plot, String meaning, double width) {
    Optional<Pixel> middle = middle(plot, meaning);
    List<LabelPlacer.Candidate> places = new ArrayList<>();
    int besides = (int) (width / 2 / plot.area().width() * last(across));
    int above = (int) (HEIGHT / 2 / plot.area().height() * last(up));
    for (int i = besides; i + besides < across.length; i++) {
      for (int j = above; j + above < up.length; j++) {
        if (isAllOf(meaning, i - besides, i + besides, j - above, j + above)) {
          Pixel place = pixel(plot, i, j);
          double cost = place.distance(middle.orElse(place)) / 4;
          places.add(Plot.labelAt(place.x() - width / 2, place.y() - HEIGHT / 2, width, cost));
        }
      }
    }
    return places;
  }

  private static int last(double[] nodes) {
    return nodes.length - 1;
  }

  private boolean isAllOf(String meaning, int left, int right, int below, int above) {
    for (int i = left; i <= right; i++) {
      for (int j = below; j <= above; j++) {
        if (!words[i][j].equals(meaning)) {
          return false;
        }
      }
    }
    return true;
  }

  /** The node of a meaning that is nearest to the middle of all of its nodes; empty for none. */
  Optional<Pixel> middle(Plot plot, String meaning) {
    List<Pixel> all = new ArrayList<>();
    for (int i = 0; i < across.length; i++) {
      for (int j = 0; j < up.length; j++) {
        if (words[i][j].equals(meaning)) {
          all.add(pixel(plot, i, j));
        }
      }
    }
    double x = all.stream().mapToDouble(Pixel::x).average().orElse(0);
    double y = all.stream().mapToDouble(Pixel::y).average().orElse(0);
    Pixel mean = new Pixel(x, y);
    return all.stream().min(Comparator.comparingDouble(mean::distance));
  }

  /** Part of all nodes that have a meaning [-]. */
  double share(String meaning) {
    long count =
        Arrays.stream(words).flatMap(Arrays::stream).filter(each -> each.equals(meaning)).count();
    return (double) count / (across.length * up.length);
  }
}
