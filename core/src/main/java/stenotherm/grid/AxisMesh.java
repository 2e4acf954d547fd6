package stenotherm.grid;

import java.util.Arrays;

/**
 * Places the grid lines of one axis: on every plane given, and between planes so that the cell
 * width follows the target h(x) = min(largest, h0 + s d(x)), with d the distance to the nearest
 * graded plane and s the logarithm of the growth ratio. In the stretched coordinate F(x) = integral
 * of dx / h(x) lines are equidistant.
 */
final class AxisMesh {
  private static final double ROUND_OFF = 1e-9;

  private final double[] planes;
  private final boolean[] graded;
  private final boolean[] edges;
  private final MeshControl control;
  private final double slope;

  AxisMesh(double[] planes, boolean[] graded, boolean[] edges, MeshControl control) {
    this.planes = planes;
    this.graded = graded;
    this.edges = edges;
    this.control = control;
    this.slope = Math.log(control.growth());
  }

  /** Sorts coordinates and drops those that differ from their predecessor by round-off only. */
  static double[] distinct(double[] coordinates) {
    double[] sorted = coordinates.clone();
    Arrays.sort(sorted);
    double extent = sorted[sorted.length - 1] - sorted[0];
    double[] kept = new double[sorted.length];
    int count = 0;
    for (double coordinate : sorted) {
      if (count == 0 || coordinate - kept[count - 1] > ROUND_OFF * extent) {
        kept[count++] = coordinate;
      }
    }
    // the last plane is exactly the end of the domain
    kept[count - 1] = sorted[sorted.length - 1];
    return Arrays.copyOf(kept, count);
  }

  /** Number of cells that the target asks for; at most as many as there are. */
  double leastCells() {
    double[] target = targetAtPlanes();
    double sum = 0;
    for (int interval = 0; interval + 1 < planes.length; interval++) {
      sum += Math.max(1, ramp(interval, target).length() - ROUND_OFF);
    }
    return sum;
  }

  /** Returns all grid lines in ascending order [m]. */
  double[] lines() {
    int intervals = planes.length - 1;
    double[] target = targetAtPlanes();
    int[] cells = cells(target);
    double[] lines = new double[Arrays.stream(cells).sum() + 1];
    int line = 0;
    for (int interval = 0; interval < intervals; interval++) {
      Ramp ramp = ramp(interval, target);
      for (int cell = 0; cell < cells[interval]; cell++) {
        lines[line++] = ramp.position(cell / (double) cells[interval]);
      }
    }
    lines[line] = planes[intervals];
    return lines;
  }

  /** Returns the number of cells between each plane and the next. */
  int[] cells() {
    return cells(targetAtPlanes());
  }

  private int[] cells(double[] target) {
    int[] cells = new int[planes.length - 1];
    for (int interval = 0; interval < cells.length; interval++) {
      double stretched = ramp(interval, target).length();
      cells[interval] = Math.max(1, (int) Math.ceil(stretched - ROUND_OFF));
    }
    limitGrowthAcrossPlanes(target, cells);
    return cells;
  }

  /**
   * Target width at each plane: first cell at graded ones, edge cell at edges, and never steeper
   * than the slope between planes.
   */
  private double[] targetAtPlanes() {
    // the width of the first cell is h0 (growth - 1) / s when the target is h0 at the plane itself
    double atPlane = slope / (control.growth() - 1);
    double[] target = new double[planes.length];
    for (int plane = 0; plane < planes.length; plane++) {
      target[plane] = graded[plane] ? control.firstCell() * atPlane : control.largestCell();
      if (edges[plane] && control.edgeCell() < control.firstCell()) {
        target[plane] = Math.min(target[plane], control.edgeCell() * atPlane);
      }
    }
    // an interval as thin as one cell: its neighbours start from that cell, not from their own
    // width
    double oneCell = slope / (2 * (Math.sqrt(control.growth()) - 1));
    for (int interval = 0; interval + 1 < planes.length; interval++) {
      double thin = oneCell * (planes[interval + 1] - planes[interval]);
      target[interval] = Math.min(target[interval], thin);
      target[interval + 1] = Math.min(target[interval + 1], thin);
    }
    for (int plane = 1; plane < planes.length; plane++) {
      double reach = target[plane - 1] + slope * (planes[plane] - planes[plane - 1]);
      target[plane] = Math.min(target[plane], reach);
    }
    for (int plane = planes.length - 2; plane >= 0; plane--) {
      double reach = target[plane + 1] + slope * (planes[plane + 1] - planes[plane]);
      target[plane] = Math.min(target[plane], reach);
    }
    return target;
  }

  /** Adds cells where the two beside a plane differ by more than the growth ratio. */
  private void limitGrowthAcrossPlanes(double[] target, int[] cells) {
    boolean changed = true;
    while (changed) {
      changed = false;
      for (int plane = 1; plane < cells.length; plane++) {
        double left = planes[plane] - ramp(plane - 1, target).position(1 - 1.0 / cells[plane - 1]);
        double right = ramp(plane, target).position(1.0 / cells[plane]) - planes[plane];
        double limit = control.growth() * (1 + ROUND_OFF);
        if (left > limit * right) {
          cells[plane - 1]++;
          changed = true;
        } else if (right > limit * left) {
          cells[plane]++;
          changed = true;
        }
      }
    }
  }

  private Ramp ramp(int interval, double[] target) {
    return new Ramp(planes[interval], planes[interval + 1], target[interval], target[interval + 1]);
  }

  /**
   * The target over one interval: up from the left plane, flat at the largest cell, down to the
   * right plane.
   */
  private final class Ramp {
    private final double left;
    private final double right;
    private final double atLeft;
    private final double atRight;
    private final double flat;
    private final double rampLeft;
    private final double rampRight;

    Ramp(double left, double right, double atLeft, double atRight) {
      this.left = left;
      this.right = right;
      this.atLeft = atLeft;
      this.atRight = atRight;
      double meeting = (atLeft + atRight + slope * (right - left)) / 2;
      this.flat = Math.min(control.largestCell(), meeting);
      this.rampLeft = Math.log(flat / atLeft) / slope;
      this.rampRight = Math.log(flat / atRight) / slope;
    }

    private double flatStart() {
      return left + (flat - atLeft) / slope;
    }

    private double flatEnd() {
      return right - (flat - atRight) / slope;
    }

    private double flatLength() {
      return Math.max(0, (flatEnd() - flatStart()) / flat);
    }

    /** Length in the stretched coordinate: the number of cells that the target asks for. */
    double length() {
      return rampLeft + flatLength() + rampRight;
    }

    /**
     * Coordinate at a fraction of the stretched length, 0 at the left plane, 1 at the right one.
     */
    double position(double fraction) {
      if (fraction <= 0) {
        return left;
      }
      if (fraction >= 1) {
        return right;
      }
      double fromLeft = fraction * length();
      double fromRight = (1 - fraction) * length();
      if (fromLeft < rampLeft) {
        return left + atLeft * Math.expm1(slope * fromLeft) / slope;
      }
      if (fromRight < rampRight) {
        return right - atRight * Math.expm1(slope * fromRight) / slope;
      }
      return flatStart() + (fromLeft - rampLeft) * flat;
    }
  }
}
