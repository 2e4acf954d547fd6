package stenotherm.conduction;

import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.grid.RectilinearGrid;

/**
 * The geometry and the thin resistances behind the conductances between neighbouring cells.
 * Networks that differ only in their conductivities share them, since conductances that follow the
 * state are computed several times in a step.
 */
final class Couplings {
  /**
   * Area between each cell and its next neighbour along an axis [m2]; 0 if they are not coupled.
   */
  private final double[][] area;

  /** Distance from each cell's centre to its upper face along an axis [m]. */
  private final double[][] reachUp;

  /** Distance from the next neighbour's centre to the same face [m]. */
  private final double[][] reachDown;

  /** Thin resistance for unit area of that face [m2 K/W]. */
  private final double[][] resistance;

  Couplings(RectilinearGrid grid, boolean[] solid, double[][] thin) {
    int cells = solid.length;
    area = new double[3][cells];
    reachUp = new double[3][cells];
    reachDown = new double[3][cells];
    resistance = new double[3][cells];
    for (Axis axis : Axis.values()) {
      int a = axis.ordinal();
      int stride = grid.stride(axis);
      Face face = Face.of(axis, true);
      for (int cell = 0; cell < cells; cell++) {
        if (grid.position(axis, cell) + 1 < grid.count(axis)
            && solid[cell]
            && solid[cell + stride]) {
          area[a][cell] = grid.faceArea(face, cell);
          reachUp[a][cell] = grid.reach(face, cell);
          reachDown[a][cell] = grid.reach(face.opposite(), cell + stride);
          resistance[a][cell] = thin[a][cell] * (area[a][cell] / grid.surfaceArea(face, cell));
        }
      }
    }
  }

  /** Tells whether a cell and its next neighbour along an axis exist and are solid. */
  boolean isCoupled(Axis axis, int cell) {
    return area[axis.ordinal()][cell] > 0;
  }

  /** Conductance between a cell and its next neighbour with these conductivities [W/K]. */
  double conductance(Axis axis, int cell, double own, double next) {
    int a = axis.ordinal();
    return area[a][cell]
        / (reachUp[a][cell] / own + resistance[a][cell] + reachDown[a][cell] / next);
  }
}
