package stenotherm.validation.cases;

import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.TimeFunction;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.BoundaryKind;
import stenotherm.grid.Block;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.grid.RectilinearGrid;

/** What the blocks of a case look like, whatever the grid: answers from the coarsest grid. */
final class CaseGeometry {
  /** Blocks and nothing more: cells as large as the blocks let them be. */
  static final MeshControl COARSEST = new MeshControl(1e9, 1e9, 16);

  private final CaseFile.Body body;
  private final Layout layout;
  private final RectilinearGrid grid;

  CaseGeometry(CaseFile.Body body) {
    this.body = body;
    this.layout = body.layout();
    this.grid = RectilinearGrid.of(layout, COARSEST);
  }

  /**
   * Axes along which something varies: blocks end inside the domain, or an end is not adiabatic.
   */
  Set<Axis> varying() {
    Set<Axis> axes = EnumSet.noneOf(Axis.class);
    for (Axis axis : Axis.values()) {
      boolean spanned =
          layout.blocks().stream()
              .allMatch(
                  block ->
                      block.box().min().along(axis) == layout.domain().min().along(axis)
                          && block.box().max().along(axis) == layout.domain().max().along(axis));
      if (!spanned || !isAdiabatic(Face.of(axis, false)) || !isAdiabatic(Face.of(axis, true))) {
        axes.add(axis);
      }
    }
    return axes;
  }

  boolean isAdiabatic(Face face) {
    return Optional.ofNullable(body.boundaries().get(face))
        .map(Boundary::kind)
        .equals(Optional.of(BoundaryKind.ADIABATIC));
  }

  /** Checks that something solid is left of a block. */
  void requireSolid(String block) {
    int index = layout.indexOf(block);
    if (!layout.blocks().get(index).isSolid()) {
      throw new InvalidInputException(
          "block '" + block + "'",
          "is an environment and has no temperature of its own; its surface belongs to the blocks"
              + " around it");
    }
    if (grid.cellsOf(index).length == 0) {
      throw new InvalidInputException(
          "block '" + block + "'", "has nothing left; later blocks override all of it");
    }
  }

  /** Checks that a point lies in or on something solid. */
  void requireSolid(Point point) {
    for (int cell : cellsAt(point)) {
      if (isSolid(cell)) {
        return;
      }
    }
    throw new InvalidInputException(
        "point",
        "(" + point.x() + ", " + point.y() + ", " + point.z() + ") m lies inside an environment");
  }

  /**
   * Tells whether a point lies on an edge or a vertex: materials differ across it, or the body
   * ends, along two axes or three. The field may be singular there.
   */
  boolean isCorner(Point point) {
    int axes = 0;
    for (Axis axis : Axis.values()) {
      axes += changesAcross(point, axis) ? 1 : 0;
    }
    return axes > 1;
  }

  private boolean changesAcross(Point point, Axis axis) {
    int[] positions = grid.positionsAt(axis, point.along(axis));
    int[] cells = cellsAt(point);
    if (positions.length == 2) {
      for (int cell : cells) {
        if (grid.position(axis, cell) == positions[0] && differ(cell, cell + grid.stride(axis))) {
          return true;
        }
      }
      return false;
    }
    for (boolean max : new boolean[] {false, true}) {
      Face face = Face.of(axis, max);
      double extent = layout.domain().size(axis);
      boolean onFace = Math.abs(point.along(axis) - layout.domain().at(face)) <= 1e-9 * extent;
      if (onFace && !isAdiabatic(face)) {
        return true;
      }
    }
    return false;
  }

  private boolean differ(int cell, int other) {
    Block one = layout.blocks().get(grid.blockOf(cell));
    Block two = layout.blocks().get(grid.blockOf(other));
    return !conductivity(one).equals(conductivity(two));
  }

  private static Optional<Double> conductivity(Block block) {
    return block.asSolid().map(solid -> solid.material().conductivity());
  }

  private int[] cellsAt(Point point) {
    int[] xs = grid.positionsAt(Axis.X, point.x());
    int[] ys = grid.positionsAt(Axis.Y, point.y());
    int[] zs = grid.positionsAt(Axis.Z, point.z());
    int[] cells = new int[xs.length * ys.length * zs.length];
    int count = 0;
    for (int k : zs) {
      for (int j : ys) {
        for (int i : xs) {
          cells[count++] = grid.cell(i, j, k);
        }
      }
    }
    return cells;
  }

  private boolean isSolid(int cell) {
    return layout.blocks().get(grid.blockOf(cell)).isSolid();
  }

  /**
   * Finds a face with another prescribed temperature that touches one at an edge of the body: the
   * temperature jumps there, and the heat flow through either face is infinite.
   *
   * @param face a face with a prescribed temperature
   * @param time when [s]
   * @return the other face; empty if there is none
   */
  Optional<Face> jumpBeside(Face face, double time) {
    Optional<TimeFunction> here = prescribed(face);
    for (Map.Entry<Face, Boundary> entry : body.boundaries().entrySet()) {
      Face other = entry.getKey();
      Optional<TimeFunction> there = prescribed(other);
      if (here.isPresent()
          && there.isPresent()
          && other.axis() != face.axis()
          && here.get().at(time) != there.get().at(time)
          && meet(face, other)) {
        return Optional.of(other);
      }
    }
    return Optional.empty();
  }

  Optional<TimeFunction> prescribed(Face face) {
    return Optional.ofNullable(body.boundaries().get(face))
        .filter(boundary -> boundary.kind() == BoundaryKind.TEMPERATURE)
        .map(Boundary::value);
  }

  /** Whether something solid lies at the edge of two faces. */
  private boolean meet(Face face, Face other) {
    for (int cell = 0; cell < grid.cellCount(); cell++) {
      if (isSolid(cell) && isAt(cell, face) && isAt(cell, other)) {
        return true;
      }
    }
    return false;
  }

  private boolean isAt(int cell, Face face) {
    int end = face.isMax() ? grid.count(face.axis()) - 1 : 0;
    return grid.position(face.axis(), cell) == end;
  }

  /** Smallest distance between planes on which blocks begin or end, along some axes [m]. */
  double smallestGap(Set<Axis> axes) {
    double smallest = Double.POSITIVE_INFINITY;
    for (Axis axis : axes) {
      double[] planes =
          layout.blocks().stream()
              .flatMapToDouble(
                  block ->
                      java.util.stream.DoubleStream.of(
                          block.box().min().along(axis), block.box().max().along(axis)))
              .sorted()
              .toArray();
      double slack = 1e-9 * layout.domain().size(axis);
      for (int plane = 1; plane < planes.length; plane++) {
        double gap = planes[plane] - planes[plane - 1];
        if (gap > slack) {
          smallest = Math.min(smallest, gap);
        }
      }
    }
    return smallest;
  }

  /** Largest extent of the domain along some axes [m]. */
  double largestExtent(Set<Axis> axes) {
    return axes.stream().mapToDouble(layout.domain()::size).max().orElseThrow();
  }
}
