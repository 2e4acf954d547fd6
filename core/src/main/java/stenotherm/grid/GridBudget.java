package stenotherm.grid;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;

/**
 * How large a grid may be. A larger one is refused before anything of its size is allocated.
 *
 * <p>A value, thus thread-safe.
 *
 * @param cells largest number of cells, 1 to 2 000 000 000
 * @param bytes most memory for what is computed on the grid [byte], above 0
 */
public record GridBudget(long cells, long bytes) {
  private static final long STANDARD_CELLS = 2_000_000;

  /** The largest number of cells that may be allowed: what arrays can count. */
  public static final long MOST_CELLS = 2_000_000_000;

  /**
   * Checks the numbers.
   *
   * @throws InvalidInputException if one is out of its range
   */
  public GridBudget {
    if (cells < 1 || cells > MOST_CELLS) {
      throw new InvalidInputException(
          "largest number of cells", cells + " must lie between 1 and " + MOST_CELLS);
    }
    Checks.positive("most memory of a grid", (double) bytes, "byte");
  }

  /**
   * The default: 2 million cells, and half of the memory that this Java machine may take.
   *
   * @return the budget
   */
  public static GridBudget standard() {
    return new GridBudget(STANDARD_CELLS, Runtime.getRuntime().maxMemory() / 2);
  }

  /**
   * The same budget with another number of cells.
   *
   * @param number largest number of cells
   * @return the changed budget
   */
  public GridBudget withCells(long number) {
    return new GridBudget(number, bytes);
  }

  /**
   * Refuses a grid that takes more than this, if its heat network is solved cell by cell.
   *
   * @param size size of the grid
   * @throws InvalidInputException if it is too large; the message gives cells, memory and time, and
   *     the dimension to blame
   */
  public void require(GridSize size) {
    require(size, size.bytes());
  }

  /**
   * Refuses a grid that takes more than this, if its heat network is reduced to a few modes.
   *
   * @param size size of the grid
   * @throws InvalidInputException if it is too large; the message gives cells, memory and time, and
   *     the dimension to blame
   */
  public void requireReducible(GridSize size) {
    require(size, size.bytesToReduce());
  }

  private void require(GridSize size, double taken) {
    if (size.cells() > cells || taken > bytes) {
      throw new InvalidInputException(
          "grid",
          GridSize.count(size.cells())
              + " cells"
              + " would take about "
              + memory(taken)
              + " and "
              + minutes(size.secondsToReduce())
              + "; allowed are "
              + cells
              + " cells"
              + " and "
              + memory((double) bytes)
              + ". "
              + size.blame());
    }
  }

  private static String memory(double bytes) {
    return bytes < 1e9
        ? Checks.show(Math.ceil(bytes / 1e6), "MB")
        : Checks.show(Math.rint(bytes / 1e8) / 10, "GB");
  }

  private static String minutes(double seconds) {
    return seconds < 3600
        ? Checks.show(Math.ceil(seconds / 60), "min")
        : Checks.show(Math.rint(seconds / 360) / 10, "h");
  }
}
