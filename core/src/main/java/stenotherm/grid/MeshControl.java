package stenotherm.grid;

import stenotherm.base.Checks;
import stenotherm.base.Range;

/**
 * How fine a grid is: cells start at {@code firstCell} on both sides of every plane where materials
 * differ strongly or the body ends, and grow away from it up to {@code largestCell}. At the faces
 * of blocks with fine edges they start at {@code edgeCell}.
 *
 * <p>A value, thus thread-safe.
 *
 * @param largestCell largest cell width [m], above 0
 * @param firstCell largest width of a cell at a graded plane [m], above 0 and not above {@code
 *     largestCell}
 * @param growth largest ratio of the widths of neighbouring cells [-], 1.0001 to 16
 * @param budget how large the grid may be
 * @param edgeCell largest width of a cell at the faces of a block with fine edges, see {@link
 *     Block.Solid#fineEdges} [m], above 0 and not above {@code firstCell}
 */
public record MeshControl(
    double largestCell, double firstCell, double growth, GridBudget budget, double edgeCell) {
  /** The default of the largest ratio of neighbouring cells. */
  public static final double DEFAULT_GROWTH = 1.4;

  private static final Range GROWTH = new Range(1.0001, 16);

  /**
   * Checks the numbers.
   *
   * @throws stenotherm.base.InvalidInputException if one is out of its range
   */
  public MeshControl {
    Checks.given("budget", budget);
    Checks.positive("largest cell", largestCell, "m");
    Checks.positive("first cell", firstCell, "m");
    Checks.within("growth of cells", growth, GROWTH, "", "1.4 is usual.");
    if (firstCell > largestCell) {
      throw new stenotherm.base.InvalidInputException(
          "first cell",
          Checks.show(firstCell, "m")
              + " must not be above the largest cell, "
              + Checks.show(largestCell, "m"));
    }
    Checks.positive("edge cell", edgeCell, "m");
    if (edgeCell > firstCell) {
      throw new stenotherm.base.InvalidInputException(
          "edge cell",
          Checks.show(edgeCell, "m")
              + " must not be above the first cell, "
              + Checks.show(firstCell, "m"));
    }
  }

  /**
   * A mesh within the standard budget.
   *
   * @param largestCell largest cell width [m], above 0
   * @param firstCell largest width of a cell at a graded plane [m]
   * @param growth largest ratio of the widths of neighbouring cells [-], 1.0001 to 16
   */
  public MeshControl(double largestCell, double firstCell, double growth) {
    this(largestCell, firstCell, growth, GridBudget.standard(), firstCell);
  }

  /**
   * The same mesh with another limit to its size.
   *
   * @param other how large the grid may be
   * @return the changed control
   */
  public MeshControl within(GridBudget other) {
    return new MeshControl(largestCell, firstCell, growth, other, edgeCell);
  }

  /**
   * The same mesh with other cells at the faces of blocks with fine edges.
   *
   * @param width largest width of a cell there [m], above 0 and not above {@code firstCell}
   * @return the changed control
   */
  public MeshControl withEdgeCell(double width) {
    return new MeshControl(largestCell, firstCell, growth, budget, width);
  }

  /**
   * A mesh of about equal cells.
   *
   * @param cell largest cell width [m]
   * @return the control, with the first cell as large as the largest
   */
  public static MeshControl uniform(double cell) {
    return new MeshControl(cell, cell, DEFAULT_GROWTH);
  }

  /**
   * A mesh graded at the default growth.
   *
   * @param largestCell largest cell width [m]
   * @param firstCell largest width of a cell at a graded plane [m]
   * @return the control
   */
  public static MeshControl graded(double largestCell, double firstCell) {
    return new MeshControl(largestCell, firstCell, DEFAULT_GROWTH);
  }

  /**
   * The same grading with larger or smaller cells, for convergence studies. All target widths are
   * scaled by the factor; the growth ratio is raised to its power, up to the most that a mesh
   * allows, beyond which cells are as wide as their targets anyway.
   *
   * @param factor ratio of the new cell widths to the old ones [-], above 0
   * @return the scaled control
   * @throws stenotherm.base.InvalidInputException if the factor is not above 0
   */
  public MeshControl scaled(double factor) {
    Checks.positive("mesh scale", factor, "");
    return new MeshControl(
        largestCell * factor,
        firstCell * factor,
        Math.min(GROWTH.high(), Math.pow(growth, factor)),
        budget,
        edgeCell * factor);
  }
}
