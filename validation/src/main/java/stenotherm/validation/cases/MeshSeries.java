package stenotherm.validation.cases;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import stenotherm.base.Axis;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.RectilinearGrid;

/**
 * Meshes of one case, from coarse to fine: one grading, scaled everywhere by the same ratio, so
 * that three of them tell the order and the error.
 *
 * @param first the coarsest mesh
 * @param dimensions axes along which something varies, 1 to 3
 */
record MeshSeries(MeshControl first, int dimensions) {
  /** Cells of the first grid where the runner chooses it, for one, two and three dimensions. */
  private static final int[] FIRST_CELLS = {20, 400, 3_300};

  /**
   * Ratio of the cell widths of two grids. Cells between faces are whole numbers, and at a smaller
   * ratio their rounding hides the order.
   */
  private static final double RATIO = 2;

  /** The smallest growth that a mesh allows. */
  private static final double SMALLEST_GROWTH = 1.0001;

  /** Scales that are tried for the first mesh. */
  private static final int CANDIDATES = 12;

  /** Grids up to these numbers of cells are looked at for it, in one, two and three dimensions. */
  private static final int[] REGULAR_CELLS = {150, 20_000, 300_000};

  /** Finest first cell that the runner chooses before it is scaled, as a part of the extent. */
  private static final double FINEST = 1.0 / 2000;

  /**
   * How cells grow away from the faces of blocks, before scaling.
   *
   * @param cells largest cells along the largest extent
   * @param fineness the largest cell, in first cells
   * @param perGap first cells across half of the thinnest gap between faces
   * @param growth ratio of the widths of neighbouring cells
   */
  private record Grading(double cells, double fineness, double perGap, double growth) {}

  /** For smooth fields, whose error comes from all cells. */
  private static final Grading GENTLE = new Grading(12, 4, 1, 1.3);

  /** For edges and vertices at which the field is singular, whose error comes from there. */
  private static final Grading STRONG = new Grading(10, 40, 10, 1.6);

  /**
   * The series to try one after the other. The mesh that a file asks for is the third one of its
   * series: the two before it serve its error estimate.
   */
  static List<MeshSeries> of(CaseFile file) {
    CaseGeometry geometry = new CaseGeometry(file.body());
    Set<Axis> varying = geometry.varying();
    int dimensions = Math.max(1, varying.size());
    if (file.mesh().isPresent()) {
      return List.of(new MeshSeries(file.mesh().get().scaled(RATIO * RATIO), dimensions));
    }
    if (varying.isEmpty()) {
      // one temperature everywhere: any grid is exact
      MeshControl any = MeshControl.uniform(geometry.largestExtent(EnumSet.allOf(Axis.class)));
      return List.of(new MeshSeries(any, dimensions));
    }
    MeshSeries gentle = new MeshSeries(mesh(file, geometry, varying, GENTLE), dimensions);
    // in one dimension nothing is singular
    return dimensions == 1
        ? List.of(gentle)
        : List.of(gentle, new MeshSeries(mesh(file, geometry, varying, STRONG), dimensions));
  }

  private static MeshControl mesh(
      CaseFile file, CaseGeometry geometry, Set<Axis> varying, Grading grading) {
    double extent = geometry.largestExtent(varying);
    double largest = extent / grading.cells();
    double inGap = geometry.smallestGap(varying) / 2 / grading.perGap();
    double firstCell = Math.max(extent * FINEST, Math.min(largest / grading.fineness(), inGap));
    MeshControl mesh = new MeshControl(largest, firstCell, grading.growth());
    int wanted = FIRST_CELLS[varying.size() - 1];
    // growth to the power of a scale must stay within what a mesh allows
    double coarse = 4;
    double fine = 1.0 / 8;
    for (int halving = 0; halving < 8; halving++) {
      double middle = Math.sqrt(coarse * fine);
      if (cells(file, mesh.scaled(middle), varying) > wanted) {
        fine = middle;
      } else {
        coarse = middle;
      }
    }
    return mostRegular(file, mesh.scaled(coarse), varying);
  }

  private static double cells(CaseFile file, MeshControl mesh, Set<Axis> varying) {
    return RectilinearGrid.size(file.body().layout(), mesh, uniform(varying)).cells();
  }

  private static Set<Axis> uniform(Set<Axis> varying) {
    return EnumSet.complementOf(EnumSet.copyOf(varying));
  }

  /**
   * Scales a mesh a little so that the numbers of cells between faces of blocks grow as evenly as
   * whole numbers can: where they do not, the three grids tell a wrong order.
   */
  private static MeshControl mostRegular(CaseFile file, MeshControl mesh, Set<Axis> varying) {
    MeshControl best = mesh;
    double least = Double.POSITIVE_INFINITY;
    for (int candidate = 0; candidate < CANDIDATES; candidate++) {
      MeshControl first = mesh.scaled(Math.pow(RATIO, 0.5 * candidate / CANDIDATES));
      double irregularity = irregularity(file, first, varying);
      if (irregularity < least) {
        least = irregularity;
        best = first;
      }
    }
    return best;
  }

  /** Sum over pairs of grids of the squared deviations of the counts' growth from the ratio. */
  private static double irregularity(CaseFile file, MeshControl first, Set<Axis> varying) {
    double sum = 0;
    int most = REGULAR_CELLS[varying.size() - 1];
    if (cells(file, first, varying) > most) {
      return sum;
    }
    int[] coarse = counts(file, first, varying);
    double width = 1;
    while (true) {
      width /= RATIO;
      MeshControl mesh = first.scaled(width);
      int[] fine = counts(file, mesh, varying);
      for (int interval = 0; interval < fine.length; interval++) {
        double deviation = Math.log(fine[interval] / (RATIO * coarse[interval]));
        sum += deviation * deviation;
      }
      if (cells(file, mesh, varying) > most) {
        return sum;
      }
      coarse = fine;
    }
  }

  /** Numbers of cells between the planes on which blocks begin or end, axis after axis. */
  private static int[] counts(CaseFile file, MeshControl mesh, Set<Axis> varying) {
    Layout layout = file.body().layout();
    return varying.stream()
        .flatMapToInt(axis -> Arrays.stream(RectilinearGrid.cellsBetweenPlanes(layout, mesh, axis)))
        .toArray();
  }

  /**
   * A mesh of the series.
   *
   * @param width how wide its cells are, relative to the first mesh
   */
  MeshControl mesh(double width) {
    if (Math.pow(first.growth(), width) < SMALLEST_GROWTH) {
      // so fine that growth no longer matters
      return new MeshControl(
          first.largestCell() * width, first.firstCell() * width, SMALLEST_GROWTH);
    }
    return first.scaled(width);
  }

  /**
   * Number of cells of the grid that a case has on a mesh of the series.
   *
   * @param width how wide its cells are, relative to the first mesh
   */
  double cells(CaseFile file, double width) {
    Set<Axis> varying = new CaseGeometry(file.body()).varying();
    return varying.isEmpty() ? 1 : cells(file, mesh(width), varying);
  }

  /** Ratio of the cell widths of a grid and the next one. */
  double ratio() {
    return RATIO;
  }

  /** How many times more cells a grid has whose cells are narrower by a ratio. */
  double cellRatio(double widthRatio) {
    return Math.pow(widthRatio, dimensions);
  }
}
