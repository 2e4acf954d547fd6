package stenotherm.grid;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;

/**
 * Corrections to the cells beside curved surfaces, each of which belongs to one block: the volume
 * that the block really has near the cell, the distance from the centre to the true surface, and
 * the area of true surface that a stepped face stands for. With them sums over the cells are right.
 *
 * <p>Of a flux q through a surface with the unit normal n, the steps normal to x carry q n_x. Per
 * unit of such a face it meets a thin resistance or a film of 1 / n_x times that of unit area: a
 * face then counts n_x times its area, and the faces along all axes together count n_x² + n_y² +
 * n_z² = 1 times the area of the surface.
 */
final class CurvedSurfaces {
  /** Lines along which the parts of a cut cell are measured. */
  private static final int LINES = 16;

  /** A block may lose this part of its box's volume unnoticed. */
  private static final double NEGLIGIBLE = 1e-6;

  /** A mesh is too coarse for a block with more than this part of it away from its cells. */
  private static final double MOST_HOMELESS = 0.1;

  /** Least distance of a centre from the surface, as a part of the distance between centres. */
  private static final double SHORTEST_REACH = 0.01;

  private final List<Block> blocks;
  private final @Nullable EllipticCylinder[] cylinders;
  private final double[][] lines;
  private final int[] blockOfCell;
  private final int[] count = new int[3];
  private final int[] stride = new int[3];

  /** Volume that a cell's block has here over the volume of the cell. */
  private final double[] filling;

  /** Bit of each axis whose cylinders cut a cell or give it a sliver of theirs. */
  private final byte[] cutAlong;

  /** By axis and lower cell: 1 + number of the stepped face to the next cell, or 0. */
  private final int[][] numberOf;

  private double[] normal = new double[64];
  private Axis[] axisOfStep = new Axis[64];
  private double[] lowerReach = new double[64];
  private double[] upperReach = new double[64];
  private int steppedFaces;

  private CurvedSurfaces(
      Layout layout, @Nullable EllipticCylinder[] cylinders, double[][] lines, int[] blockOfCell) {
    this.blocks = layout.blocks();
    this.cylinders = cylinders;
    this.lines = lines;
    this.blockOfCell = blockOfCell;
    for (int axis = 0; axis < 3; axis++) {
      count[axis] = lines[axis].length - 1;
      stride[axis] = axis == 0 ? 1 : stride[axis - 1] * count[axis - 1];
    }
    this.filling = new double[blockOfCell.length];
    Arrays.fill(filling, 1);
    this.cutAlong = new byte[blockOfCell.length];
    this.numberOf = new int[3][blockOfCell.length];
    measureVolumes();
    for (Axis axis : Axis.values()) {
      findSteps(axis);
    }
  }

  /** The surfaces of a layout's round blocks; null if it has none. */
  static @Nullable CurvedSurfaces of(Layout layout, double[][] lines, int[] blockOfCell) {
    @Nullable EllipticCylinder[] cylinders = new EllipticCylinder[layout.blocks().size()];
    boolean isRound = false;
    for (int block = 0; block < cylinders.length; block++) {
      cylinders[block] = RectilinearGrid.cylinderOf(layout.blocks().get(block));
      isRound |= cylinders[block] != null;
    }
    return isRound ? new CurvedSurfaces(layout, cylinders, lines, blockOfCell) : null;
  }

  private int position(Axis axis, int cell) {
    return cell / stride[axis.ordinal()] % count[axis.ordinal()];
  }

  private double low(Axis axis, int cell) {
    return lines[axis.ordinal()][position(axis, cell)];
  }

  private double high(Axis axis, int cell) {
    return lines[axis.ordinal()][position(axis, cell) + 1];
  }

  private double centre(Axis axis, int cell) {
    return (low(axis, cell) + high(axis, cell)) / 2;
  }

  private boolean isSolid(int block) {
    return blocks.get(block).isSolid();
  }

  /**
   * Gives every cell the part of it that its own block has, and the slivers of its block in
   * neighbouring cells.
   */
  private void measureVolumes() {
    byte[] cut = new byte[blockOfCell.length];
    for (int block = 0; block < cylinders.length; block++) {
      EllipticCylinder cylinder = cylinders[block];
      if (cylinder != null) {
        markCut(blocks.get(block).box(), cylinder, cut);
      }
    }
    double[] homeless = new double[blocks.size()];
    double[] share = new double[blocks.size()];
    double[] received = new double[blockOfCell.length];
    for (int cell = 0; cell < cut.length; cell++) {
      int own = blockOfCell[cell];
      if (cut[cell] == 0) {
        continue;
      }
      Checks.notInterrupted("while making a grid");
      measureShares(cell, cut[cell], share);
      if (isSolid(own)) {
        filling[cell] = share[own];
        cutAlong[cell] |= cut[cell];
      }
      for (int block = 0; block < share.length; block++) {
        if (block != own && share[block] > 0 && isSolid(block)) {
          homeless[block] += moveSliver(cell, cut[cell], block, share[block], received);
        }
      }
    }
    for (int cell = 0; cell < received.length; cell++) {
      filling[cell] += received[cell] / boxVolume(cell);
    }
    spread(homeless);
  }

  private void markCut(Box box, EllipticCylinder cylinder, byte[] cut) {
    int[] start = new int[3];
    int[] end = new int[3];
    for (Axis axis : Axis.values()) {
      int a = axis.ordinal();
      while (middle(a, start[a]) < box.min().along(axis)) {
        start[a]++;
      }
      end[a] = start[a];
      while (end[a] < count[a] && middle(a, end[a]) < box.max().along(axis)) {
        end[a]++;
      }
    }
    byte bit = (byte) (1 << cylinder.axis().ordinal());
    for (int k = start[2]; k < end[2]; k++) {
      for (int j = start[1]; j < end[1]; j++) {
        for (int i = start[0]; i < end[0]; i++) {
          int cell = i + stride[1] * j + stride[2] * k;
          if (cylinder.cuts(
              low(cylinder.first(), cell),
              high(cylinder.first(), cell),
              low(cylinder.second(), cell),
              high(cylinder.second(), cell))) {
            cut[cell] |= bit;
          }
        }
      }
    }
  }

  private double middle(int axis, int position) {
    return (lines[axis][position] + lines[axis][position + 1]) / 2;
  }

  /**
   * Measures the part of a cell that each block has, along lines normal to the axis of a cylinder
   * that cuts it: exact along the lines, midpoints across them.
   */
  private void measureShares(int cell, byte cut, double[] share) {
    Arrays.fill(share, 0);
    Axis axis = Axis.values()[Integer.numberOfTrailingZeros(cut)];
    Axis along = axis == Axis.X ? Axis.Y : Axis.X;
    Axis across = axis == Axis.Z ? Axis.Y : Axis.Z;
    // only cylinders with different axes make a cell vary along the first one's axis
    int layers = Integer.bitCount(cut) == 1 ? 1 : LINES;
    double[] point = new double[3];
    int[] around = blocksAround(cell);
    double[] ends = new double[2 * around.length + 2];
    for (int layer = 0; layer < layers; layer++) {
      point[axis.ordinal()] = within(axis, cell, (layer + 0.5) / layers);
      for (int line = 0; line < LINES; line++) {
        point[across.ordinal()] = within(across, cell, (line + 0.5) / LINES);
        int found = endsAlong(along, cell, around, point, ends);
        for (int part = 0; part + 1 < found; part++) {
          double length = ends[part + 1] - ends[part];
          if (length > 0) {
            point[along.ordinal()] = (ends[part] + ends[part + 1]) / 2;
            double whole = (high(along, cell) - low(along, cell)) * LINES * layers;
            share[topBlock(around, point)] += length / whole;
          }
        }
      }
    }
  }

  private double within(Axis axis, int cell, double fraction) {
    return low(axis, cell) + fraction * (high(axis, cell) - low(axis, cell));
  }

  /** Where a line through a cell enters and leaves cylinders, with the cell's ends; sorted. */
  private int endsAlong(Axis along, int cell, int[] around, double[] point, double[] ends) {
    double low = low(along, cell);
    double high = high(along, cell);
    int found = 0;
    ends[found++] = low;
    ends[found++] = high;
    for (int block : around) {
      EllipticCylinder cylinder = cylinders[block];
      if (cylinder == null || cylinder.axis() == along) {
        continue;
      }
      Axis other = cylinder.first() == along ? cylinder.second() : cylinder.first();
      double half = cylinder.halfChord(along, point[other.ordinal()]);
      ends[found++] = Math.max(low, Math.min(high, cylinder.middle(along) - half));
      ends[found++] = Math.max(low, Math.min(high, cylinder.middle(along) + half));
    }
    Arrays.sort(ends, 0, found);
    return found;
  }

  /** The blocks whose boxes hold a cell, the last one first; no box ends within a cell. */
  private int[] blocksAround(int cell) {
    int[] around = new int[blocks.size()];
    int found = 0;
    for (int block = blocks.size() - 1; block >= 0; block--) {
      Box box = blocks.get(block).box();
      boolean isAround = true;
      for (Axis axis : Axis.values()) {
        double centre = centre(axis, cell);
        isAround &= centre > box.min().along(axis) && centre < box.max().along(axis);
      }
      if (isAround) {
        around[found++] = block;
      }
    }
    return Arrays.copyOf(around, found);
  }

  /** The block on top at a point, of those around its cell. */
  private int topBlock(int[] around, double[] point) {
    for (int block : around) {
      EllipticCylinder cylinder = cylinders[block];
      if (cylinder == null
          || cylinder.holds(
              point[cylinder.first().ordinal()], point[cylinder.second().ordinal()])) {
        return block;
      }
    }
    return 0;
  }

  /**
   * Gives a block's sliver in a cell of another block to the cells of that block beside it: those
   * that share a face, else those that share an edge. Returns the volume that found none [m3].
   */
  private double moveSliver(int cell, byte cut, int block, double share, double[] received) {
    double volume = share * boxVolume(cell);
    for (int most = 1; most <= 3; most++) {
      int[] beside = new int[26];
      int found = 0;
      for (int offset = 0; offset < 27; offset++) {
        int[] step = {offset % 3 - 1, offset / 3 % 3 - 1, offset / 9 - 1};
        int neighbour = stepped(cell, cut, step);
        int steps = Math.abs(step[0]) + Math.abs(step[1]) + Math.abs(step[2]);
        if (steps == most && neighbour >= 0 && blockOfCell[neighbour] == block) {
          beside[found++] = neighbour;
        }
      }
      for (int index = 0; index < found; index++) {
        received[beside[index]] += volume / found;
        cutAlong[beside[index]] |= cut;
      }
      if (found > 0) {
        return 0;
      }
    }
    return volume;
  }

  /** The cell some steps away; -1 beyond the grid or along the only cylinder's axis. */
  private int stepped(int cell, byte cut, int[] step) {
    int to = cell;
    for (Axis axis : Axis.values()) {
      int a = axis.ordinal();
      int position = position(axis, cell) + step[a];
      if (position < 0 || position >= count[a] || (step[a] != 0 && cut == 1 << a)) {
        return -1;
      }
      to += step[a] * stride[a];
    }
    return to;
  }

  /** Scales all cells of the blocks that have slivers with none of their cells beside them. */
  private void spread(double[] homeless) {
    double[] housed = new double[homeless.length];
    for (int cell = 0; cell < blockOfCell.length; cell++) {
      housed[blockOfCell[cell]] += filling[cell] * boxVolume(cell);
    }
    for (int block = 0; block < homeless.length; block++) {
      // shapes that coincide but for round-off leave only round-off
      double whole = blocks.get(block).box().volume();
      double lost = homeless[block] / (homeless[block] + housed[block]);
      if (homeless[block] > NEGLIGIBLE * whole && lost > MOST_HOMELESS) {
        throw new InvalidInputException(
            "mesh",
            String.format(
                Locale.ROOT,
                "too coarse for block '%s': %.0f %% of it lies where no cell has its centre in it;"
                    + " make the cells smaller, or a thin shell a thin resistance",
                blocks.get(block).name(),
                100 * lost));
      }
    }
    for (int cell = 0; cell < blockOfCell.length; cell++) {
      int block = blockOfCell[cell];
      if (homeless[block] > 0) {
        filling[cell] *= 1 + homeless[block] / housed[block];
      }
    }
  }

  private double boxVolume(int cell) {
    double volume = 1;
    for (Axis axis : Axis.values()) {
      volume *= high(axis, cell) - low(axis, cell);
    }
    return volume;
  }

  /** Finds the faces normal to an axis that stand for a piece of curved surface. */
  private void findSteps(Axis axis) {
    int to = stride[axis.ordinal()];
    for (int cell = 0; cell < blockOfCell.length; cell++) {
      if (position(axis, cell) + 1 == count[axis.ordinal()]
          || blockOfCell[cell] == blockOfCell[cell + to]) {
        continue;
      }
      // the surface is that of the later block; the other cell's centre lies outside it
      boolean lowerIsLater = blockOfCell[cell] > blockOfCell[cell + to];
      int inner = lowerIsLater ? cell : cell + to;
      EllipticCylinder cylinder = cylinders[blockOfCell[inner]];
      if (cylinder == null || cylinder.axis() == axis) {
        continue;
      }
      Axis other = cylinder.first() == axis ? cylinder.second() : cylinder.first();
      double half = cylinder.halfChord(axis, centre(other, cell));
      double surface = cylinder.middle(axis) + (lowerIsLater ? half : -half);
      double lower = centre(axis, cell);
      double upper = centre(axis, cell + to);
      // a centre on the surface itself would meet a held temperature without any resistance, and
      // conductances far above all others cost the linear solver its accuracy elsewhere
      double least = SHORTEST_REACH * (upper - lower);
      double crossing = Math.max(lower + least, Math.min(upper - least, surface));
      add(axis, cell, crossing);
      normal[steppedFaces - 1] = cylinder.meanNormal(axis, low(other, cell), high(other, cell));
      axisOfStep[steppedFaces - 1] = cylinder.axis();
    }
  }

  /** Adds a step with the paths that end where the line between the centres meets the surface. */
  private void add(Axis axis, int cell, double crossing) {
    if (steppedFaces == normal.length) {
      normal = Arrays.copyOf(normal, 2 * steppedFaces);
      axisOfStep = Arrays.copyOf(axisOfStep, 2 * steppedFaces);
      lowerReach = Arrays.copyOf(lowerReach, 2 * steppedFaces);
      upperReach = Arrays.copyOf(upperReach, 2 * steppedFaces);
    }
    lowerReach[steppedFaces] = crossing - centre(axis, cell);
    upperReach[steppedFaces] = centre(axis, cell + stride[axis.ordinal()]) - crossing;
    numberOf[axis.ordinal()][cell] = ++steppedFaces;
  }

  /** Volume that a cell's block has here over the volume of the cell. */
  double filling(int cell) {
    return filling[cell];
  }

  /** The part of a cell's cross section that its block fills, the same all along an axis. */
  private double fillingAlong(Axis axis, int cell) {
    return isCutAlong(axis, cell) ? filling[cell] : 1;
  }

  /** Tells whether a cell is cut by cylinders along this one axis only. */
  private boolean isCutAlong(Axis axis, int cell) {
    return cutAlong[cell] == 1 << axis.ordinal();
  }

  /** Length of the path from a cell's centre towards a face [m], as if the whole face conducted. */
  double reach(Axis axis, boolean isMax, int cell, double halfWidth) {
    int number = stepBeyond(axis, isMax, cell);
    if (number > 0) {
      return isMax ? lowerReach[number - 1] : upperReach[number - 1];
    }
    return halfWidth / fillingAlong(axis, cell);
  }

  private int stepBeyond(Axis axis, boolean isMax, int cell) {
    if (isMax) {
      return numberOf[axis.ordinal()][cell];
    }
    return position(axis, cell) == 0 ? 0 : numberOf[axis.ordinal()][cell - stride[axis.ordinal()]];
  }

  /** The axis of the cylinder that a cell's face is a step of; null if it is none. */
  @Nullable Axis axisOfStep(Axis axis, boolean isMax, int cell) {
    int number = stepBeyond(axis, isMax, cell);
    return number == 0 ? null : axisOfStep[number - 1];
  }

  /** Area of true surface that a cell's face stands for, over the area of the face. */
  double surfaceShare(Axis axis, boolean isMax, int cell) {
    int number = stepBeyond(axis, isMax, cell);
    if (number > 0) {
      return normal[number - 1];
    }
    int position = position(axis, cell);
    if (position == (isMax ? count[axis.ordinal()] - 1 : 0)) {
      return fillingAlong(axis, cell);
    }
    int next = isMax ? cell + stride[axis.ordinal()] : cell - stride[axis.ordinal()];
    // the surface is that of the later block, or of the earlier one if the later is not round
    boolean nextIsLater = blockOfCell[next] > blockOfCell[cell];
    int inner = nextIsLater ? next : cell;
    int outer = nextIsLater ? cell : next;
    return isCutAlong(axis, inner) ? filling[inner] : fillingAlong(axis, outer);
  }
}
