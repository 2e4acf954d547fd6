package stenotherm.picture;

import java.util.Arrays;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;

/**
 * Temperatures on the cells of a plane, rectilinear grid, which need not be uniform.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class SectionField {
  /** Part of a section that may be as warm as an isotherm, to the error. */
  private static final double MOST_UNCLEAR = 0.2;

  private final double[] xEdges;
  private final double[] zEdges;
  private final double[][] temperatures;

  /**
   * Copies the grid and its temperatures.
   *
   * @param xEdges where the cells' edges are along the horizontal axis, in ascending order [m]
   * @param zEdges where the cells' edges are along the vertical axis, in ascending order, upwards
   *     [m]
   * @param temperatures the temperature of each cell as {@code [along x][along z]} [K]
   * @throws InvalidInputException if the edges do not ascend, the tables do not fit the edges or a
   *     temperature is not a possible one
   */
  public SectionField(double[] xEdges, double[] zEdges, double[][] temperatures) {
    this.xEdges = ascending("edges along x", xEdges);
    this.zEdges = ascending("edges along z", zEdges);
    requireLength(temperatures.length, xEdges.length - 1);
    this.temperatures = new double[temperatures.length][];
    for (int i = 0; i < temperatures.length; i++) {
      requireLength(temperatures[i].length, zEdges.length - 1);
      this.temperatures[i] = temperatures[i].clone();
      for (double temperature : this.temperatures[i]) {
        Checks.temperature("cell temperature", temperature);
      }
    }
  }

  private static double[] ascending(String field, double[] edges) {
    double[] copy = edges.clone();
    if (copy.length < 2) {
      throw new InvalidInputException(field, "must be at least two");
    }
    for (int i = 0; i < copy.length; i++) {
      Checks.finite(field, copy[i], "m");
      if (i > 0 && copy[i] <= copy[i - 1]) {
        throw new InvalidInputException(
            field, Checks.show(copy[i], "m") + " does not lie above the edge before it");
      }
    }
    return copy;
  }

  private static void requireLength(int found, int needed) {
    if (found != needed) {
      throw new InvalidInputException(
          "cell temperatures", found + " cells where the edges bound " + needed);
    }
  }

  /** The field as lines and areas of a plot; up to the edges it is that of the outermost cells. */
  Contours contours(Plot plot) {
    double[] across = nodes(xEdges);
    double[] up = nodes(zEdges);
    double[][] values = new double[across.length][up.length];
    for (int i = 0; i < across.length; i++) {
      for (int j = 0; j < up.length; j++) {
        values[i][j] = temperatures[cell(i, temperatures.length)][cell(j, temperatures[0].length)];
      }
    }
    return new Contours(
        Arrays.stream(across).map(plot::acrossOf).toArray(),
        Arrays.stream(up).map(plot::downOf).toArray(),
        values);
  }

  /** The cell whose temperature a node has. */
  private static int cell(int node, int cells) {
    return Math.max(0, Math.min(cells - 1, node - 1));
  }

  /** The first edge, the middles of the cells, and the last edge. */
  private static double[] nodes(double[] edges) {
    double[] nodes = new double[edges.length + 1];
    nodes[0] = edges[0];
    for (int i = 1; i < edges.length; i++) {
      nodes[i] = (edges[i - 1] + edges[i]) / 2;
    }
    nodes[edges.length] = edges[edges.length - 1];
    return nodes;
  }

  /** Horizontal reach [m]. */
  Range x() {
    return new Range(xEdges[0], xEdges[xEdges.length - 1]);
  }

  /** Vertical reach [m]. */
  Range z() {
    return new Range(zEdges[0], zEdges[zEdges.length - 1]);
  }

  /**
   * Returns the lowest and the highest temperature.
   *
   * @return that range [K]
   */
  public Range temperatureRange() {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double[] column : temperatures) {
      for (double temperature : column) {
        low = Math.min(low, temperature);
        high = Math.max(high, temperature);
      }
    }
    return new Range(low, high);
  }

  /**
   * Tells whether an isotherm has a place: not if much of the section has its temperature to within
   * the error, because noise alone would put the line anywhere there.
   *
   * @param temperature temperature of the isotherm [K]
   * @param error error of the temperatures [K]
   * @return true if its line tells something
   */
  public boolean placesIsotherm(double temperature, double error) {
    double unclear = 0;
    for (int i = 0; i < temperatures.length; i++) {
      for (int j = 0; j < temperatures[i].length; j++) {
        if (Math.abs(temperatures[i][j] - temperature) <= error) {
          unclear += (xEdges[i + 1] - xEdges[i]) * (zEdges[j + 1] - zEdges[j]);
        }
      }
    }
    return unclear <= MOST_UNCLEAR * (x().high() - x().low()) * (z().high() - z().low());
  }
}
