package stenotherm.conduction;

import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.grid.Point;
import stenotherm.grid.RectilinearGrid;

/**
 * The continuous temperature field at one instant, reconstructed from cell temperatures and the
 * conditions at the boundaries.
 *
 * <p>The temperature of each face of a cell follows from that of its centre and the heat flow
 * through the face. So the flux is continuous between materials, but for a source between them, and
 * equals that of the film at a surface. At an edge or a vertex each cell around it has a value that
 * its faces imply; cells that no thin resistance separates share their mean, weighted by
 * conductivity over volume. Between centre, faces, edges and vertices the field is trilinear. A
 * field that is linear within each layer of a layered body is reproduced exactly. At the steps of a
 * round block the values are those at its true surface, up to half a cell away.
 *
 * <p>At a re-entrant corner the true gradient is unbounded and the reconstruction converges only
 * slowly; see {@link DiscretisationEstimate}.
 *
 * <p>Immutable, thus thread-safe.
 */
public final class TemperatureField {
  /** Few enough to be read within some milliseconds. */
  private static final int CELLS_BETWEEN_LOOKS = 4096;

  private final HeatNetwork network;
  private final RectilinearGrid grid;
  private final double[] temperature;

  /** Surface coefficients [W/(m2 K)] and temperatures [K] or fluxes [W/m2] of the boundaries. */
  private final double[] coefficient;

  private final double[] boundary;

  /** Takes a copy of the cell temperatures and of the conditions they belong to. */
  TemperatureField(HeatOperator operator, double[] padded, Conditions conditions) {
    this.network = operator.network();
    this.grid = network.grid();
    int pad = operator.system.pad;
    this.temperature = Arrays.copyOfRange(padded, pad, pad + grid.cellCount());
    this.coefficient = conditions.coefficient.clone();
    this.boundary = conditions.boundary.clone();
  }

  /**
   * Temperature rise from a cell's centre to one of its faces [K], from the heat that flows in
   * through it.
   */
  private double rise(int cell, Face face) {
    return rise(cell, face, heatThrough(cell, face));
  }

  private double rise(int cell, Face face, double heat) {
    return heat == 0
        ? 0
        : heat * network.cells().halfResistance(face, cell) / grid.faceArea(face, cell);
  }

  private double heatThrough(int cell, Face face) {
    double coupling = network.cells().couplingAcross(cell, face);
    if (coupling > 0) {
      return coupling * (temperature[neighbour(grid, cell, face)] - temperature[cell]);
    }
    int p = network.patches().at(cell, face);
    return p < 0 ? 0 : heatFrom(p, network.patches().indexIn(cell, face, p));
  }

  /** Heat that flows in through a face of a boundary [W]. */
  private double heatFrom(int p, int index) {
    Patch patch = network.patches().list().get(p);
    return patch.port().kind() == BoundaryKind.FLUX
        ? patch.area()[index] * boundary[p]
        : patch.conductance(index, coefficient[p])
            * (boundary[p] - temperature[patch.cell()[index]]);
  }

  private static int neighbour(RectilinearGrid grid, int cell, Face face) {
    return face.isMax() ? cell + grid.stride(face.axis()) : cell - grid.stride(face.axis());
  }

  RectilinearGrid grid() {
    return grid;
  }

  boolean isSolid(int cell) {
    return network.cells().isSolid(cell);
  }

  /** Temperature of a cell [K]. */
  double ofCell(int cell) {
    return temperature[cell];
  }

  /** Which cells hold the centres of the cells of another grid of the same blocks. */
  int[] cellsAtCentresOf(RectilinearGrid other) {
    // refuses other blocks
    grid.of(other.layout());
    int[][] along = new int[Axis.values().length][];
    for (Axis axis : Axis.values()) {
      double[] lines = other.lines(axis);
      along[axis.ordinal()] = new int[lines.length - 1];
      for (int position = 0; position < lines.length - 1; position++) {
        double centre = (lines[position] + lines[position + 1]) / 2;
        along[axis.ordinal()][position] = grid.positionsAt(axis, centre)[0];
      }
    }
    int[] cells = new int[other.cellCount()];
    for (int cell = 0; cell < cells.length; cell++) {
      cells[cell] =
          grid.cell(
              along[0][other.position(Axis.X, cell)],
              along[1][other.position(Axis.Y, cell)],
              along[2][other.position(Axis.Z, cell)]);
    }
    return cells;
  }

  /**
   * Returns the temperature at a point. On a surface it is the surface temperature; on a thin
   * resistance, the mean of its two sides.
   *
   * @param point the point
   * @return the temperature [K]
   * @throws InvalidInputException if the point lies outside the domain or inside an environment
   */
  public double at(Point point) {
    int[] cells = requireSolidCellsAt(network, point);
    double sum = 0;
    for (int cell : cells) {
      sum += inCell(cell, point);
    }
    return sum / cells.length;
  }

  /** The solid cells that hold a point, several if it lies on a grid line. */
  static int[] requireSolidCellsAt(HeatNetwork network, Point point) {
    RectilinearGrid grid = network.grid();
    int[] cells = new int[8];
    int count = 0;
    for (int k : grid.positionsAt(Axis.Z, point.z())) {
      for (int j : grid.positionsAt(Axis.Y, point.y())) {
        for (int i : grid.positionsAt(Axis.X, point.x())) {
          int cell = grid.cell(i, j, k);
          if (network.cells().isSolid(cell)) {
            cells[count++] = cell;
          }
        }
      }
    }
    if (count == 0) {
      throw new InvalidInputException(
          "point", point + " lies inside an environment; nothing solid is there");
    }
    return Arrays.copyOf(cells, count);
  }

  /** The trilinear field inside the octant of a cell that holds a point. */
  private double inCell(int cell, Point point) {
    int toX = octantSide(cell, Axis.X, point);
    int toY = octantSide(cell, Axis.Y, point);
    int toZ = octantSide(cell, Axis.Z, point);
    double u = octantFraction(cell, Axis.X, point);
    double v = octantFraction(cell, Axis.Y, point);
    double w = octantFraction(cell, Axis.Z, point);
    double sum = 0;
    for (int corner = 0; corner < 8; corner++) {
      boolean x = (corner & 1) != 0;
      boolean y = (corner & 2) != 0;
      boolean z = (corner & 4) != 0;
      double weight = (x ? u : 1 - u) * (y ? v : 1 - v) * (z ? w : 1 - w);
      if (weight != 0) {
        sum += weight * node(cell, x ? toX : 0, y ? toY : 0, z ? toZ : 0);
      }
    }
    return sum;
  }

  private int octantSide(int cell, Axis axis, Point point) {
    int position = grid.position(axis, cell);
    double centre = (grid.line(axis, position) + grid.line(axis, position + 1)) / 2;
    return point.along(axis) >= centre ? 1 : -1;
  }

  private double octantFraction(int cell, Axis axis, Point point) {
    int position = grid.position(axis, cell);
    double low = grid.line(axis, position);
    double high = grid.line(axis, position + 1);
    double fraction = Math.abs(point.along(axis) - (low + high) / 2) / ((high - low) / 2);
    return Math.min(1, fraction);
  }

  /** Collects the terms of a node's temperature, each with its weight. */
  interface Parts {
    /** Adds the temperature of a cell's centre. */
    void centre(int cell, double weight);

    /** Adds the rise from a cell's centre to one of its faces. */
    void rise(int cell, Face face, double weight);
  }

  /** The sum of the terms in this field. */
  private final class Sum implements Parts {
    private double value;

    @Override
    public void centre(int cell, double weight) {
      value += weight * temperature[cell];
    }

    @Override
    public void rise(int cell, Face face, double weight) {
      value += weight * TemperatureField.this.rise(cell, face);
    }
  }

  /**
   * Temperature at one of a cell's 27 nodes, seen from inside the cell: sides are -1, 0 or 1 along
   * each axis.
   */
  double node(int cell, int sideX, int sideY, int sideZ) {
    Sum sum = new Sum();
    takeApart(network, cell, new int[] {sideX, sideY, sideZ}, sum);
    return sum.value;
  }

  /** Gives the terms of the temperature at one of a cell's 27 nodes. */
  static void takeApart(HeatNetwork network, int cell, int[] side, Parts parts) {
    int outer = Math.abs(side[0]) + Math.abs(side[1]) + Math.abs(side[2]);
    if (outer < 2) {
      addCandidate(network.grid(), cell, side, 1, parts);
    } else {
      addClusterMean(network, cell, side, parts);
    }
  }

  /**
   * What a cell's own faces imply for a node: its centre plus the rises to the faces that meet
   * there.
   */
  private static void addCandidate(
      RectilinearGrid grid, int cell, int[] side, double weight, Parts parts) {
    parts.centre(cell, weight);
    for (Axis axis : Axis.values()) {
      int s = side[axis.ordinal()];
      if (s != 0) {
        parts.rise(cell, Face.of(axis, s > 0), weight * weightOfRise(grid, cell, side, axis));
      }
    }
  }

  /**
   * The weight of the rise to a face at a node: 1, but for the steps of a curved surface. Each of
   * these leads to the surface itself, where the block ends: they are averaged, and nothing is
   * added in their plane.
   */
  private static double weightOfRise(RectilinearGrid grid, int cell, int[] side, Axis axis) {
    if (!grid.hasSteps()) {
      return 1;
    }
    int steps = 0;
    boolean isStep = false;
    boolean isAlongCylinder = false;
    for (Axis other : Axis.values()) {
      int s = side[other.ordinal()];
      Optional<Axis> cylinder =
          s == 0 ? Optional.empty() : grid.axisOfStep(Face.of(other, s > 0), cell);
      if (cylinder.isPresent()) {
        steps++;
        isStep |= other == axis;
        isAlongCylinder |= cylinder.get() == axis;
      }
    }
    if (steps == 0 || (isAlongCylinder && !isStep)) {
      return 1;
    }
    return isStep ? 1.0 / steps : 0;
  }

  /**
   * Mean over the cells around an edge or a vertex that can be reached from a cell through faces
   * without a thin resistance. Cell n of the group lies across the axes whose bits are set in n.
   */
  private static void addClusterMean(HeatNetwork network, int cell, int[] side, Parts parts) {
    RectilinearGrid grid = network.grid();
    int[] member = new int[8];
    Arrays.fill(member, -1);
    member[0] = cell;
    int[] queue = new int[8];
    int queued = 1;
    for (int head = 0; head < queued; head++) {
      int group = queue[head];
      for (Axis axis : Axis.values()) {
        int s = side[axis.ordinal()];
        int bit = 1 << axis.ordinal();
        int next = group ^ bit;
        if (s == 0 || member[next] >= 0) {
          continue;
        }
        boolean crossed = (group & bit) != 0;
        Face face = Face.of(axis, (s > 0) != crossed);
        int from = member[group];
        if (network.cells().couplingAcross(from, face) > 0
            && !network.cells().resistedAcross(from, face)) {
          member[next] = neighbour(grid, from, face);
          queue[queued++] = next;
        }
      }
    }
    double[] weight = new double[8];
    double weights = 0;
    for (int group = 0; group < 8; group++) {
      if (member[group] >= 0) {
        weight[group] = network.cells().conductivity(member[group]) / grid.volume(member[group]);
        weights += weight[group];
      }
    }
    int[] seen = new int[3];
    for (int group = 0; group < 8; group++) {
      if (member[group] < 0) {
        continue;
      }
      for (int axis = 0; axis < 3; axis++) {
        seen[axis] = (group & (1 << axis)) != 0 ? -side[axis] : side[axis];
      }
      addCandidate(grid, member[group], seen, weight[group] / weights, parts);
    }
  }

  /**
   * Returns the volume mean over the cells that a block keeps.
   *
   * @param block name of the block
   * @return the mean [K]
   * @throws InvalidInputException if there is no such block, nothing is left of it, or it is an
   *     environment
   */
  public double mean(String block) {
    double sum = 0;
    double volume = 0;
    for (int cell : cellsOf(block)) {
      sum += grid.volume(cell) * temperature[cell];
      volume += grid.volume(cell);
    }
    return sum / volume;
  }

  /**
   * Returns the highest temperature in a closed block, surfaces and corners included.
   *
   * @param block name of the block
   * @return the pointwise maximum [K]
   * @throws InvalidInputException if there is no such block, nothing is left of it, or it is an
   *     environment
   * @throws CancellationException if the thread is interrupted and the block has many cells
   */
  public double maximum(String block) {
    return maximum(cellsOf(block));
  }

  /**
   * Looks for an interrupt now and then: the extreme of a block of a million cells takes seconds.
   *
   * @param done number of cells that have been read
   */
  private static void requireNotInterrupted(int done) {
    boolean isTime = (done + 1) % CELLS_BETWEEN_LOOKS == 0;
    if (isTime && Thread.currentThread().isInterrupted()) {
      throw new CancellationException("interrupted while reading a field");
    }
  }

  double maximum(int[] cells) {
    double largest = Double.NEGATIVE_INFINITY;
    for (int c = 0; c < cells.length; c++) {
      requireNotInterrupted(c);
      int cell = cells[c];
      for (int node = 0; node < 27; node++) {
        largest = Math.max(largest, node(cell, node % 3 - 1, node / 3 % 3 - 1, node / 9 - 1));
      }
    }
    return largest;
  }

  /**
   * Returns the lowest temperature in a closed block, surfaces and corners included.
   *
   * @param block name of the block
   * @return the pointwise minimum [K]
   * @throws InvalidInputException if there is no such block, nothing is left of it, or it is an
   *     environment
   * @throws CancellationException if the thread is interrupted and the block has many cells
   */
  public double minimum(String block) {
    return minimum(cellsOf(block));
  }

  double minimum(int[] cells) {
    double smallest = Double.POSITIVE_INFINITY;
    for (int c = 0; c < cells.length; c++) {
      requireNotInterrupted(c);
      int cell = cells[c];
      for (int node = 0; node < 27; node++) {
        smallest = Math.min(smallest, node(cell, node % 3 - 1, node / 3 % 3 - 1, node / 9 - 1));
      }
    }
    return smallest;
  }

  private int[] cellsOf(String block) {
    return requireSolidCells(network, block);
  }

  static int[] requireSolidCells(HeatNetwork network, String block) {
    int index = network.grid().layout().indexOf(block);
    int[] cells = network.grid().cellsOf(index);
    if (cells.length == 0 || !network.cells().isSolid(cells[0])) {
      throw new InvalidInputException(
          "block '" + block + "'",
          cells.length == 0
              ? "has no cells left; later blocks override all of it"
              : "is an environment and has no temperature of its own");
    }
    return cells;
  }

  /**
   * Returns the area mean of the surface temperature under a boundary.
   *
   * @param boundary face label, name of an environment or of a patch
   * @return the mean [K]
   * @throws InvalidInputException if there is no such boundary
   */
  public double surfaceMean(String boundary) {
    int p = network.boundaryIndex(boundary);
    Patch patch = network.patches().list().get(p);
    double sum = 0;
    for (int f = 0; f < patch.cell().length; f++) {
      int cell = patch.cell()[f];
      sum += patch.area()[f] * (temperature[cell] + rise(cell, patch.face()[f], heatFrom(p, f)));
    }
    return sum / patch.port().area();
  }

  /**
   * Returns the temperatures of the cells that a plane cuts.
   *
   * @param normal axis that the plane is normal to
   * @param coordinate where it cuts the axis [m]; on a grid line the cells above it are shown
   * @return the section
   * @throws InvalidInputException if the plane lies outside the domain
   */
  public PlaneSection section(Axis normal, double coordinate) {
    int[] positions = grid.positionsAt(normal, coordinate);
    int position = positions[positions.length - 1];
    Axis across = normal == Axis.X ? Axis.Y : Axis.X;
    Axis up = normal == Axis.Z ? Axis.Y : Axis.Z;
    int columns = grid.count(across);
    int rows = grid.count(up);
    double[] values = new double[columns * rows];
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        int cell =
            position * grid.stride(normal) + row * grid.stride(up) + column * grid.stride(across);
        values[column + columns * row] =
            network.cells().isSolid(cell) ? temperature[cell] : Double.NaN;
      }
    }
    return new PlaneSection(across, up, grid.lines(across), grid.lines(up), values);
  }

  /** A plane cut through the cells. Immutable, thus thread-safe. */
  public static final class PlaneSection {
    private final Axis across;
    private final Axis up;
    private final double[] acrossLines;
    private final double[] upLines;
    private final double[] values;

    private PlaneSection(
        Axis across, Axis up, double[] acrossLines, double[] upLines, double[] values) {
      this.across = across;
      this.up = up;
      this.acrossLines = acrossLines;
      this.upLines = upLines;
      this.values = values;
    }

    /**
     * Returns the axis drawn across.
     *
     * @return X, or Y for a plane normal to X
     */
    public Axis across() {
      return across;
    }

    /**
     * Returns the axis drawn upwards.
     *
     * @return Z, or Y for a plane normal to Z
     */
    public Axis up() {
      return up;
    }

    /**
     * Returns the grid lines across.
     *
     * @return a copy, ascending [m]
     */
    public double[] acrossLines() {
      return acrossLines.clone();
    }

    /**
     * Returns the grid lines upwards.
     *
     * @return a copy, ascending [m]
     */
    public double[] upLines() {
      return upLines.clone();
    }

    /**
     * Returns the cell temperatures.
     *
     * @return a copy [K], a value for each cell, at index column + columns * row; NaN in
     *     environments
     */
    public double[] values() {
      return values.clone();
    }
  }
}
