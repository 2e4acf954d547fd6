package stenotherm.grid;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;

/**
 * A grid of cells, each of which belongs to one block of a layout. Every plane face of a block lies
 * on a grid line.
 *
 * <p>Index order: cell (i, j, k) has the index i + nx (j + ny k); i runs fastest.
 *
 * <p>Immutable, thus thread-safe.
 */
public final class RectilinearGrid {
  /** Planes between materials whose conductivities differ by more than this ratio are graded. */
  private static final double STRONG_CONTRAST = 1.5;

  /** Lines of grids of up to this many cells are placed to tell their size. */
  private static final double PLACED_CELLS = 1e8;

  private final Layout layout;
  private final double[][] lines;
  private final int nx;
  private final int ny;
  private final int nz;
  private final int[] blockOfCell;

  /** Factors of the cells' volumes by axis and position. */
  private final double[][] measure;

  private final @Nullable CurvedSurfaces curved;

  private RectilinearGrid(Layout layout, double[][] lines) {
    this.layout = layout;
    this.lines = lines;
    this.nx = lines[0].length - 1;
    this.ny = lines[1].length - 1;
    this.nz = lines[2].length - 1;
    this.blockOfCell = paint(layout, lines, false);
    this.measure = new double[3][];
    for (Axis axis : Axis.values()) {
      double[] along = lines[axis.ordinal()];
      double extent = along[along.length - 1] - along[0];
      double[] factor = new double[along.length - 1];
      for (int position = 0; position < factor.length; position++) {
        factor[position] =
            layout.coordinates().measure(axis, along[position], along[position + 1], extent);
      }
      measure[axis.ordinal()] = factor;
    }
    this.curved = CurvedSurfaces.of(layout, lines, blockOfCell);
  }

  /** The same cells with the blocks of another layout. */
  private RectilinearGrid(RectilinearGrid other, Layout layout) {
    this.layout = layout;
    this.lines = other.lines;
    this.nx = other.nx;
    this.ny = other.ny;
    this.nz = other.nz;
    this.blockOfCell = other.blockOfCell;
    this.measure = other.measure;
    this.curved = other.curved;
  }

  /**
   * The same cells with blocks of other materials.
   *
   * @param other a layout of the same blocks in the same places
   * @return a grid of the same lines
   * @throws InvalidInputException if the name, the place, the shape or the kind of a block differs
   */
  public RectilinearGrid of(Layout other) {
    boolean same =
        other.coordinates() == layout.coordinates()
            && other.blocks().size() == layout.blocks().size();
    for (int block = 0; same && block < layout.blocks().size(); block++) {
      same = isSamePlace(layout.blocks().get(block), other.blocks().get(block));
    }
    if (!same) {
      throw new InvalidInputException(
          "layout", "has other blocks than the grid, or has them elsewhere; make a new grid");
    }
    return new RectilinearGrid(this, other);
  }

  private static boolean isSamePlace(Block one, Block other) {
    return one.isSolid() == other.isSolid()
        && one.shape().equals(other.shape())
        && one.name().equals(other.name())
        && one.box().equals(other.box());
  }

  /**
   * Makes the grid of a layout.
   *
   * @param layout the blocks
   * @param control how fine
   * @return the grid
   * @throws InvalidInputException if it would be larger than its budget
   */
  public static RectilinearGrid of(Layout layout, MeshControl control) {
    return of(layout, control, Set.of());
  }

  /**
   * Makes the grid of a layout that is uniform along some axes: a wall in one dimension, a corner
   * in two.
   *
   * @param layout the blocks
   * @param control how fine
   * @param oneCell axes that get a single cell; exact where nothing varies along them
   * @return the grid
   * @throws InvalidInputException if a block ends inside the domain along such an axis, or the grid
   *     would be larger than its budget
   */
  public static RectilinearGrid of(Layout layout, MeshControl control, Set<Axis> oneCell) {
    return of(layout, control, oneCell, List.of());
  }

  /**
   * Makes the grid of a layout whose lines also follow the edges of patches on its faces.
   *
   * @param layout the blocks
   * @param control how fine
   * @param oneCell axes that get a single cell; exact where nothing varies along them
   * @param patches patches within the faces of the domain
   * @return the grid
   * @throws InvalidInputException if a block or a patch ends inside the domain along an axis of one
   *     cell, or the grid would be larger than its budget
   * @throws CancellationException if an interrupt stopped it
   */
  public static RectilinearGrid of(
      Layout layout, MeshControl control, Set<Axis> oneCell, List<FacePatch> patches) {
    double[][] lines = lines(layout, control, oneCell, patches);
    return new RectilinearGrid(layout, lines);
  }

  /**
   * Returns the size that the grid of a layout has, without making it.
   *
   * @param layout the blocks
   * @param control how fine; its budget does not matter
   * @return the size; for grids of more than 100 million cells an estimate
   */
  public static GridSize size(Layout layout, MeshControl control) {
    return size(layout, control, Set.of());
  }

  /**
   * Returns the size that a grid has which is uniform along some axes, without making it.
   *
   * @param layout the blocks
   * @param control how fine; its budget does not matter
   * @param oneCell axes that get a single cell
   * @return the size; for grids of more than 100 million cells an estimate
   * @throws InvalidInputException if a block ends inside the domain along such an axis
   */
  public static GridSize size(Layout layout, MeshControl control, Set<Axis> oneCell) {
    double[][] planes = planes(layout, oneCell, List.of());
    AxisMesh[] meshes = meshes(layout, planes, control, oneCell);
    double[] least = leastCells(meshes, planes);
    if (least[0] * least[1] * least[2] > PLACED_CELLS) {
      return GridSize.of(layout, control, planes, least);
    }
    return GridSize.of(layout, control, planes, counts(lines(meshes, planes)));
  }

  /**
   * Returns how many cells lie between the planes on which blocks begin or end, without making a
   * grid.
   *
   * @param layout the blocks
   * @param control how fine; its budget does not matter
   * @param axis the axis across these planes
   * @return the numbers in the order of the planes
   */
  public static int[] cellsBetweenPlanes(Layout layout, MeshControl control, Axis axis) {
    double[][] planes = planes(layout, Set.of(), List.of());
    AxisMesh[] meshes = meshes(layout, planes, control, Set.of());
    return Objects.requireNonNull(meshes[axis.ordinal()]).cells();
  }

  /** Places the lines, if there are not too many. */
  private static double[][] lines(
      Layout layout, MeshControl control, Set<Axis> oneCell, List<FacePatch> patches) {
    double[][] planes = planes(layout, oneCell, patches);
    control.budget().require(GridSize.of(layout, control, planes, counts(planes)));
    AxisMesh[] meshes = meshes(layout, planes, control, oneCell);
    control.budget().require(GridSize.of(layout, control, planes, leastCells(meshes, planes)));
    double[][] lines = lines(meshes, planes);
    control.budget().require(GridSize.of(layout, control, planes, counts(lines)));
    return lines;
  }

  private static double[] counts(double[][] lines) {
    return Arrays.stream(lines).mapToDouble(along -> along.length - 1).toArray();
  }

  private static double[] leastCells(@Nullable AxisMesh[] meshes, double[][] planes) {
    double[] counts = counts(planes);
    for (int axis = 0; axis < counts.length; axis++) {
      AxisMesh mesh = meshes[axis];
      counts[axis] = mesh == null ? counts[axis] : mesh.leastCells();
    }
    return counts;
  }

  private static double[][] lines(@Nullable AxisMesh[] meshes, double[][] planes) {
    double[][] lines = planes.clone();
    for (int axis = 0; axis < lines.length; axis++) {
      AxisMesh mesh = meshes[axis];
      lines[axis] = mesh == null ? lines[axis] : mesh.lines();
    }
    return lines;
  }

  /** The meshes of the axes; none for an axis that has its planes as lines. */
  private static @Nullable AxisMesh[] meshes(
      Layout layout, double[][] planes, MeshControl control, Set<Axis> oneCell) {
    int[] blockOfPart = paint(layout, planes, true);
    @Nullable AxisMesh[] meshes = new AxisMesh[planes.length];
    for (Axis axis : Axis.values()) {
      if (!oneCell.contains(axis)) {
        meshes[axis.ordinal()] =
            new AxisMesh(
                planes[axis.ordinal()],
                strongPlanes(layout, planes, blockOfPart, axis),
                edgePlanes(layout, planes[axis.ordinal()], axis),
                controlAlong(axis, control, layout));
      }
    }
    return meshes;
  }

  /** Where blocks and patches begin and end along the axes. */
  private static double[][] planes(Layout layout, Set<Axis> oneCell, List<FacePatch> patches) {
    double[][] planes = new double[3][];
    for (Axis axis : Axis.values()) {
      planes[axis.ordinal()] = planes(layout, patches, axis);
      if (oneCell.contains(axis) && planes[axis.ordinal()].length > 2) {
        throw new InvalidInputException(
            "mesh", "one cell along " + axis + ", but blocks end inside the domain along it");
      }
    }
    return planes;
  }

  /** Widths along the angle are arcs at the domain's outer radius. */
  private static MeshControl controlAlong(Axis axis, MeshControl control, Layout layout) {
    if (axis != Axis.Y || layout.coordinates() != Coordinates.CYLINDRICAL) {
      return control;
    }
    double radius = layout.domain().max().x();
    return new MeshControl(
        control.largestCell() / radius,
        control.firstCell() / radius,
        control.growth(),
        control.budget(),
        control.edgeCell() / radius);
  }

  /** Where blocks and patches begin and end along an axis. */
  private static double[] planes(Layout layout, List<FacePatch> patches, Axis axis) {
    DoubleStream.Builder planes = DoubleStream.builder();
    for (Block block : layout.blocks()) {
      planes.add(block.box().min().along(axis));
      planes.add(block.box().max().along(axis));
    }
    for (FacePatch patch : patches) {
      if (axis != patch.face().axis()) {
        // otherwise round-off could move the end of the domain
        planes.add(Math.max(patch.region().min().along(axis), layout.domain().min().along(axis)));
        planes.add(Math.min(patch.region().max().along(axis), layout.domain().max().along(axis)));
      }
    }
    return AxisMesh.distinct(planes.build().toArray());
  }

  /**
   * Assigns the cells to blocks; later blocks override earlier ones. A round block takes the cells
   * whose centre it contains, or all of its box.
   */
  private static int[] paint(Layout layout, double[][] lines, boolean wholeBoxes) {
    int nx = lines[0].length - 1;
    int ny = lines[1].length - 1;
    int nz = lines[2].length - 1;
    int[] blockOfCell = new int[nx * ny * nz];
    for (int block = 1; block < layout.blocks().size(); block++) {
      Box box = layout.blocks().get(block).box();
      EllipticCylinder cylinder = wholeBoxes ? null : cylinderOf(layout.blocks().get(block));
      int iEnd = nearest(lines[0], box.max().x());
      int jEnd = nearest(lines[1], box.max().y());
      int kEnd = nearest(lines[2], box.max().z());
      int iStart = nearest(lines[0], box.min().x());
      for (int k = nearest(lines[2], box.min().z()); k < kEnd; k++) {
        Checks.notInterrupted("while making a grid");
        for (int j = nearest(lines[1], box.min().y()); j < jEnd; j++) {
          int row = nx * (j + ny * k);
          if (cylinder == null) {
            Arrays.fill(blockOfCell, row + iStart, row + iEnd, block);
            continue;
          }
          for (int i = iStart; i < iEnd; i++) {
            if (cylinder.holds(centre(lines[0], i), centre(lines[1], j), centre(lines[2], k))) {
              blockOfCell[row + i] = block;
            }
          }
        }
      }
    }
    return blockOfCell;
  }

  /** The cylinder that a block fills; null if it fills its box. */
  static @Nullable EllipticCylinder cylinderOf(Block block) {
    return block.shape().cylinderIn(block.box());
  }

  private static double centre(double[] lines, int position) {
    return (lines[position] + lines[position + 1]) / 2;
  }

  /** Index of the line nearest to a coordinate. */
  private static int nearest(double[] lines, double coordinate) {
    int found = Arrays.binarySearch(lines, coordinate);
    if (found >= 0) {
      return found;
    }
    int above = -found - 1;
    if (above == 0) {
      return 0;
    }
    if (above == lines.length) {
      return lines.length - 1;
    }
    return lines[above] - coordinate < coordinate - lines[above - 1] ? above : above - 1;
  }

  /**
   * Tells for each plane of an axis whether materials differ strongly across it anywhere, or the
   * body ends there.
   */
  private static boolean[] strongPlanes(
      Layout layout, double[][] planes, int[] blockOfPart, Axis axis) {
    int[] count = {planes[0].length - 1, planes[1].length - 1, planes[2].length - 1};
    int stride = axis == Axis.X ? 1 : axis == Axis.Y ? count[0] : count[0] * count[1];
    boolean[] strong = new boolean[count[axis.ordinal()] + 1];
    // radius 0 is no end of the body
    strong[0] = !(layout.coordinates().isRadial() && axis == Axis.X && planes[0][0] == 0);
    strong[strong.length - 1] = true;
    for (int part = 0; part < blockOfPart.length; part++) {
      int position = part / stride % count[axis.ordinal()];
      if (position > 0 && !strong[position]) {
        Block here = layout.blocks().get(blockOfPart[part]);
        Block before = layout.blocks().get(blockOfPart[part - stride]);
        strong[position] = contrast(here, before) > STRONG_CONTRAST;
      }
    }
    return strong;
  }

  /** Tells for each plane of an axis whether a block with fine edges begins or ends there. */
  private static boolean[] edgePlanes(Layout layout, double[] planes, Axis axis) {
    boolean[] edges = new boolean[planes.length];
    for (Block block : layout.blocks()) {
      if (block.asSolid().filter(Block.Solid::fineEdges).isPresent()) {
        edges[nearest(planes, block.box().min().along(axis))] = true;
        edges[nearest(planes, block.box().max().along(axis))] = true;
      }
    }
    return edges;
  }

  private static double contrast(Block one, Block other) {
    if (one.isSolid() != other.isSolid()) {
      return Double.POSITIVE_INFINITY;
    }
    if (!one.isSolid()) {
      return 1;
    }
    double ratio =
        one.asSolid().orElseThrow().material().conductivity()
            / other.asSolid().orElseThrow().material().conductivity();
    return Math.max(ratio, 1 / ratio);
  }

  /**
   * Returns the layout.
   *
   * @return the layout
   */
  public Layout layout() {
    return layout;
  }

  /**
   * Returns the number of cells along an axis.
   *
   * @param axis the axis
   * @return the number, at least 1
   */
  public int count(Axis axis) {
    return lines[axis.ordinal()].length - 1;
  }

  /**
   * Returns the number of all cells, environments included.
   *
   * @return nx ny nz
   */
  public int cellCount() {
    return nx * ny * nz;
  }

  /**
   * Returns a grid line.
   *
   * @param axis the axis
   * @param line 0 to count(axis)
   * @return its coordinate [m]
   * @throws IndexOutOfBoundsException if there is no such line
   */
  public double line(Axis axis, int line) {
    return lines[axis.ordinal()][line];
  }

  /**
   * Returns all grid lines of an axis.
   *
   * @param axis the axis
   * @return a copy of the coordinates in ascending order [m]
   */
  public double[] lines(Axis axis) {
    return lines[axis.ordinal()].clone();
  }

  /**
   * Returns the width of the cells at a position along an axis.
   *
   * @param axis the axis
   * @param position 0 to count(axis) - 1
   * @return the width [m]
   * @throws IndexOutOfBoundsException if there is no such position
   */
  public double width(Axis axis, int position) {
    return lines[axis.ordinal()][position + 1] - lines[axis.ordinal()][position];
  }

  /**
   * Returns the index of a cell in every cell array.
   *
   * @param i position along x
   * @param j position along y
   * @param k position along z
   * @return i + nx (j + ny k)
   */
  public int cell(int i, int j, int k) {
    return i + nx * (j + ny * k);
  }

  /**
   * Returns the distance in the index between neighbours along an axis.
   *
   * @param axis the axis
   * @return 1, nx or nx ny
   */
  public int stride(Axis axis) {
    return switch (axis) {
      case X -> 1;
      case Y -> nx;
      case Z -> nx * ny;
    };
  }

  /**
   * Returns the position of a cell along an axis.
   *
   * @param axis the axis
   * @param cell index of the cell
   * @return i, j or k
   */
  public int position(Axis axis, int cell) {
    return switch (axis) {
      case X -> cell % nx;
      case Y -> cell / nx % ny;
      case Z -> cell / (nx * ny);
    };
  }

  /** Volume of the whole cell [m3]. */
  private double cellVolume(int cell) {
    return measure[0][position(Axis.X, cell)]
        * measure[1][position(Axis.Y, cell)]
        * measure[2][position(Axis.Z, cell)];
  }

  /**
   * Returns the volume of a cell. Beside the curved surface of a round block it is the volume that
   * the block really has there, so that the sum over a block is the volume of its true shape.
   *
   * @param cell index of the cell
   * @return the volume [m3]
   */
  public double volume(int cell) {
    return curved == null ? cellVolume(cell) : cellVolume(cell) * curved.filling(cell);
  }

  /**
   * Returns the area of a cell's face.
   *
   * @param face which face
   * @param cell index of the cell
   * @return the area [m2]; 0 at radius 0
   */
  public double faceArea(Face face, int cell) {
    Axis axis = face.axis();
    if (axis == Axis.X && layout.coordinates().isRadial()) {
      double radius = lines[0][position(Axis.X, cell) + (face.isMax() ? 1 : 0)];
      return layout.coordinates().areaAt(radius)
          * measure[1][position(Axis.Y, cell)]
          * measure[2][position(Axis.Z, cell)];
    }
    return cellVolume(cell) / length(axis, cell);
  }

  /** Length of a cell through its centre [m]. */
  private double length(Axis axis, int cell) {
    double width = width(axis, position(axis, cell));
    boolean isArc = axis == Axis.Y && layout.coordinates() == Coordinates.CYLINDRICAL;
    return isArc ? width * centre(lines[0], position(Axis.X, cell)) : width;
  }

  /**
   * Returns the area of a cell's face for a film or a thin resistance on it. For the steps that
   * approximate a curved surface it is the area of the surface that they stand for, so that the sum
   * over the steps is the area of the true surface.
   *
   * @param face which face
   * @param cell index of the cell
   * @return the area [m2]
   */
  public double surfaceArea(Face face, int cell) {
    return faceArea(face, cell) * surfaceShare(face, cell);
  }

  /**
   * Returns the area of the surface that a cell's face stands for, see {@link #surfaceArea}, over
   * that of the face.
   *
   * @param face which face
   * @param cell index of the cell
   * @return the ratio [-]; 1 but for the steps of a curved surface
   */
  public double surfaceShare(Face face, int cell) {
    return curved == null ? 1 : curved.surfaceShare(face.axis(), face.isMax(), cell);
  }

  /**
   * Tells whether any face is a step of a round block's surface.
   *
   * @return false if all blocks are boxes
   */
  public boolean hasSteps() {
    return curved != null;
  }

  /**
   * Finds the axis of the cylinder whose surface is stepped at a cell's face.
   *
   * @param face which face
   * @param cell index of the cell
   * @return the axis; empty if the face is none of the steps of a round block
   */
  public Optional<Axis> axisOfStep(Face face, int cell) {
    return curved == null
        ? Optional.empty()
        : Optional.ofNullable(curved.axisOfStep(face.axis(), face.isMax(), cell));
  }

  /**
   * Returns the length of the path that heat takes between a cell's centre and one of its faces, as
   * that of a slab of the face's area. It is half the width of the cell in Cartesian coordinates,
   * the distance to the true surface where the face is a step of a curved one, and comes from the
   * integral of 1 / area along a radius.
   *
   * @param face which face
   * @param cell index of the cell
   * @return the length [m], above 0; 0 at radius 0
   */
  public double reach(Face face, int cell) {
    Axis axis = face.axis();
    if (axis == Axis.X && layout.coordinates().isRadial()) {
      int i = position(Axis.X, cell);
      return layout.coordinates().reach(lines[0][i], lines[0][i + 1], face.isMax());
    }
    double half = length(axis, cell) / 2;
    return curved == null ? half : curved.reach(axis, face.isMax(), cell, half);
  }

  /**
   * Returns the block that a cell belongs to.
   *
   * @param cell index of the cell
   * @return position of the block in {@link Layout#blocks()}
   */
  public int blockOf(int cell) {
    return blockOfCell[cell];
  }

  /**
   * Returns the cells that a block keeps after later blocks have overridden it.
   *
   * @param block position of the block in {@link Layout#blocks()}
   * @return indices in ascending order; empty if nothing is left
   */
  public int[] cellsOf(int block) {
    int[] cells = new int[blockOfCell.length];
    int count = 0;
    for (int cell = 0; cell < blockOfCell.length; cell++) {
      if (blockOfCell[cell] == block) {
        cells[count++] = cell;
      }
    }
    return Arrays.copyOf(cells, count);
  }

  /**
   * Finds the cells along an axis that hold a coordinate: one in general, two if it lies on a line
   * between them.
   *
   * @param axis the axis
   * @param coordinate the coordinate [m]
   * @return the positions in ascending order
   * @throws InvalidInputException if the coordinate lies outside the grid
   */
  public int[] positionsAt(Axis axis, double coordinate) {
    double[] all = lines[axis.ordinal()];
    double slack = 1e-9 * (all[all.length - 1] - all[0]);
    if (!(coordinate >= all[0] - slack && coordinate <= all[all.length - 1] + slack)) {
      throw new InvalidInputException(
          "point",
          axis
              + " = "
              + Checks.show(coordinate, "m")
              + " lies outside the domain, "
              + Checks.show(all[0], "m")
              + " to "
              + Checks.show(all[all.length - 1], "m"));
    }
    int line = nearest(all, coordinate);
    if (Math.abs(all[line] - coordinate) <= slack) {
      if (line == 0) {
        return new int[] {0};
      }
      return line == all.length - 1 ? new int[] {line - 1} : new int[] {line - 1, line};
    }
    return new int[] {all[line] > coordinate ? line - 1 : line};
  }
}
