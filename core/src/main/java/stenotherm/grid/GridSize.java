package stenotherm.grid;

import java.util.Locale;
import stenotherm.base.Axis;
import stenotherm.base.Checks;

/**
 * The size of a grid, known before the grid is made.
 *
 * <p>A value, thus thread-safe.
 *
 * @param alongX number of cells along x [-]
 * @param alongY number of cells along y [-]
 * @param alongZ number of cells along z [-]
 * @param blame which dimension has the most cells and why, as a sentence
 */
public record GridSize(double alongX, double alongY, double alongZ, String blame) {
  /**
   * Checks that nothing is null.
   *
   * @throws stenotherm.base.InvalidInputException if something is
   */
  public GridSize {
    Checks.given("blame", blame);
  }

  /** Network, fields and solver [byte for each cell]; measured on 42 120 cells. */
  private static final double BYTES = 500;

  /** Network and the making of its reduced model [byte for each cell]; measured likewise. */
  private static final double BYTES_TO_REDUCE = 7000;

  /** Time in which one processor makes a reduced model [s for each cell]; measured likewise. */
  private static final double SECONDS_TO_REDUCE = 1.7e-4;

  /**
   * Returns the number of cells. It is not a whole number where the grid is so large that its lines
   * are not placed.
   *
   * @return the number [-], environments included
   */
  public double cells() {
    return alongX * alongY * alongZ;
  }

  /**
   * Returns the number of cells along an axis.
   *
   * @param axis the axis
   * @return the number [-]
   */
  public double along(Axis axis) {
    return switch (axis) {
      case X -> alongX;
      case Y -> alongY;
      case Z -> alongZ;
    };
  }

  /**
   * Estimates the memory that heat network, fields and solver take.
   *
   * @return the memory, good to a factor of about 1.5 [byte]
   */
  public double bytes() {
    return BYTES * cells();
  }

  /**
   * Estimates the memory that it takes to reduce the heat network to a few modes.
   *
   * @return the memory, good to a factor of about 1.5 [byte]
   */
  public double bytesToReduce() {
    return BYTES_TO_REDUCE * cells();
  }

  /**
   * Estimates how long one processor takes to reduce the heat network to a few modes. Stepping the
   * cells through a journey of a day takes about as long.
   *
   * @return the time, good to a factor of about 3 [s]
   */
  public double secondsToReduce() {
    return SECONDS_TO_REDUCE * cells();
  }

  /** Names the dimension with the most cells, and its thinnest layer if that is why. */
  static GridSize of(Layout layout, MeshControl control, double[][] planes, double[] counts) {
    Axis most = Axis.X;
    for (Axis axis : Axis.values()) {
      if (counts[axis.ordinal()] > counts[most.ordinal()]) {
        most = axis;
      }
    }
    double[] along = planes[most.ordinal()];
    int thinnest = 0;
    for (int layer = 0; layer + 1 < along.length; layer++) {
      if (along[layer + 1] - along[layer] < along[thinnest + 1] - along[thinnest]) {
        thinnest = layer;
      }
    }
    double extent = along[along.length - 1] - along[0];
    double count = counts[most.ordinal()];
    // Twice the cells of an even mesh: the rest of them lead up to something thin.
    boolean isThin = count > 2 * extent / control.largestCell() && along.length > 2;
    String name = most.name().toLowerCase(Locale.ROOT);
    String blame =
        isThin
            ? "a layer at "
                + name
                + " = "
                + shown(along[thinnest], most, layout)
                + " is only "
                + shown(along[thinnest + 1] - along[thinnest], most, layout)
                + " thick"
            : "all is " + shown(extent, most, layout) + " long";
    return new GridSize(
        counts[0],
        counts[1],
        counts[2],
        "Most lie along " + name + ", " + count(count) + ": " + blame + ".");
  }

  /** A number of cells in words, in full as long as people can read it. */
  static String count(double cells) {
    return cells < 1e12 ? String.format(Locale.ROOT, "%.0f", cells) : Checks.show(cells, "");
  }

  private static String shown(double extent, Axis axis, Layout layout) {
    return layout.coordinates() == Coordinates.CYLINDRICAL && axis == Axis.Y
        ? Checks.show(extent, "rad")
        : Checks.show(1000 * extent, "mm");
  }
}
