package stenotherm.picture;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;

/**
 * Temperatures on the cells of a plane, rectilinear grid, which need not be uniform.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class SectionField {
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
   *     temperature is not one that anything has
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

  int cellsAlongX() {
    return xEdges.length - 1;
  }

  int cellsAlongZ() {
    return zEdges.length - 1;
  }

  double xEdge(int index) {
    return xEdges[index];
  }

  double zEdge(int index) {
    return zEdges[index];
  }

  double xMiddle(int index) {
    return (xEdges[index] + xEdges[index + 1]) / 2;
  }

  double zMiddle(int index) {
    return (zEdges[index] + zEdges[index + 1]) / 2;
  }

  double temperature(int alongX, int alongZ) {
    return temperatures[alongX][alongZ];
  }

  /** Horizontal reach [m]. */
  Range x() {
    return new Range(xEdges[0], xEdges[xEdges.length - 1]);
  }

  /** Vertical reach [m]. */
  Range z() {
    return new Range(zEdges[0], zEdges[zEdges.length - 1]);
  }

  /** Lowest and highest temperature [K]. */
  Range temperatureRange() {
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
}
