package stenotherm.conduction;

import java.util.Arrays;

/**
 * Conductances of a network that change by the same ratio when conductivities of blocks or surface
 * coefficients change: those between cells of two blocks, or from cells of a block to a boundary.
 *
 * <p>Resistances in series add up. If the first block has the share p in the resistance and the
 * second one the share q, factors f and g on their conductivities multiply the conductances by 1 /
 * (p/f + q/g + 1 - p - q).
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class ConductanceGroup {
  /** Position of a block that does not vary. */
  static final int FIXED = -1;

  private final Key key;
  private final Shares shares;

  /** Positions in vectors of the cells, ascending. */
  private final int[] cells;

  /** Entries of each cell's row of the symmetric matrix begin here; one more at the end. */
  private final int[] rowStart;

  /** Neighbours of the cells, as positions among the cells; the cell itself for a boundary. */
  private final int[] neighbour;

  /** Conductance to the neighbour [W/K], or area towards the boundary [m2]. */
  private final double[] entry;

  /**
   * What conductances of a group have in common.
   *
   * @param port position of the boundary; negative for conductances between cells
   * @param first position among the varying blocks of the block on one side, or {@link #FIXED}
   * @param second the same of the other side; {@link #FIXED} for a boundary
   * @param shareOfFirst rounded share, or the logarithm of the resistance before a boundary
   * @param shareOfSecond rounded share, or the logarithm of the thin resistance before a boundary
   */
  record Key(int port, int first, int second, int shareOfFirst, int shareOfSecond) {}

  /**
   * What a group's conductances depend on.
   *
   * @param first share of the first block in the resistance; before a boundary the resistance of
   *     the half cells [m2 K/W]
   * @param second share of the second block; before a boundary the thin resistance [m2 K/W]
   */
  record Shares(double first, double second) {}

  ConductanceGroup(
      Key key, Shares shares, int[] cells, int[] rowStart, int[] neighbour, double[] entry) {
    this.key = key;
    this.shares = shares;
    this.cells = cells;
    this.rowStart = rowStart;
    this.neighbour = neighbour;
    this.entry = entry;
  }

  /**
   * Returns the boundary that the conductances lead to.
   *
   * @return position among the boundary ports; negative if they are between cells
   */
  public int port() {
    return key.port();
  }

  /**
   * Returns the first block.
   *
   * @return its position among the varying blocks; negative if it does not vary
   */
  public int firstBlock() {
    return key.first();
  }

  /**
   * Returns the second block.
   *
   * @return its position among the varying blocks; negative if it does not vary
   */
  public int secondBlock() {
    return key.second();
  }

  /**
   * Returns what the first block contributes to the resistance.
   *
   * @return its share between cells [-]; towards a boundary the resistance of its half cells [m2
   *     K/W]
   */
  public double first() {
    return shares.first();
  }

  /**
   * Returns what the second block contributes to the resistance.
   *
   * @return its share between cells [-]; towards a boundary the thin resistance [m2 K/W]
   */
  public double second() {
    return shares.second();
  }

  /**
   * Picks the cells of this group out of a vector.
   *
   * @param vector a vector of the length of {@link ReducibleNetwork#vector} [K]
   * @return its entries [K], one for each of the group's cells, in the order that {@link #multiply}
   *     takes
   */
  public double[] gather(double[] vector) {
    double[] gathered = new double[cells.length];
    for (int i = 0; i < gathered.length; i++) {
      gathered[i] = vector[cells[i]];
    }
    return gathered;
  }

  /**
   * Computes a part of the product with gathered temperatures: between cells the heat that leaves
   * each cell within the group [W]; towards a boundary its area times its temperature [m2 K].
   *
   * @param gathered temperatures of the group's cells [K], in the order of {@link #gather}
   * @param from position of the first cell wanted
   * @param count how many
   * @param result where to put them [W or m2 K], from its start; its length is {@code count} or
   *     more
   */
  public void multiply(double[] gathered, int from, int count, double[] result) {
    boolean outer = key.port() >= 0;
    for (int i = from; i < from + count; i++) {
      double sum = 0;
      for (int e = rowStart[i]; e < rowStart[i + 1]; e++) {
        sum += entry[e] * (outer ? gathered[i] : gathered[i] - gathered[neighbour[e]]);
      }
      result[i - from] = sum;
    }
  }

  /**
   * Sums area times temperature over a group that leads to a boundary.
   *
   * @param gathered temperatures of the group's cells [K], in the order of {@link #gather}
   * @return the sum [m2 K]
   */
  public double areaTimes(double[] gathered) {
    double sum = 0;
    for (int i = 0; i < gathered.length; i++) {
      for (int e = rowStart[i]; e < rowStart[i + 1]; e++) {
        sum += entry[e] * gathered[i];
      }
    }
    return sum;
  }

  /**
   * Returns the area of a group that leads to a boundary.
   *
   * @return the area [m2]
   */
  public double area() {
    return Arrays.stream(entry).sum();
  }
}
