package stenotherm.picture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Lines of one value, and the areas above it, in a field whose values are known at the nodes of a
 * plane, rectilinear grid: marching squares, straight in each square (W. E. Lorensen and H. E.
 * Cline, "Marching cubes", Computer Graphics 21, 1987, in two dimensions). Lines are joined, and
 * points that make no visible difference are left out.
 */
final class Contours {
  /** How far a line with fewer points may be from the full one [pixel]. */
  private static final double SLACK = 0.2;

  private final double[] x;
  private final double[] y;
  private final double[][] values;

  /**
   * Takes a grid.
   *
   * @param x where the nodes are across [pixel]
   * @param y where the nodes are along the other axis [pixel]
   * @param values the value at each node as {@code [across][along the other axis]}
   */
  Contours(double[] x, double[] y, double[][] values) {
    this.x = x;
    this.y = y;
    this.values = values;
  }

  /** The lines of one value; one that ends where it begins is closed. */
  List<List<Pixel>> lines(double level) {
    Map<Integer, List<Integer>> neighbours = new LinkedHashMap<>();
    for (int i = 0; i + 1 < x.length; i++) {
      for (int j = 0; j + 1 < y.length; j++) {
        List<Integer> crossed = crossed(i, j, level);
        for (int k = 0; k + 1 < crossed.size(); k += 2) {
          join(neighbours, crossed.get(k), crossed.get(k + 1));
          join(neighbours, crossed.get(k + 1), crossed.get(k));
        }
      }
    }
    List<List<Pixel>> lines = new ArrayList<>();
    List<Integer> ends =
        neighbours.entrySet().stream()
            .filter(side -> side.getValue().size() == 1)
            .map(Map.Entry::getKey)
            .toList();
    ends.forEach(end -> follow(end, neighbours, level, lines));
    List.copyOf(neighbours.keySet()).forEach(side -> follow(side, neighbours, level, lines));
    return lines;
  }

  /** The closed lines around all that has at least a value; an inner one bounds a hole. */
  List<List<Pixel>> areas(double level) {
    double[][] ringed = new double[x.length + 2][y.length + 2];
    for (int i = 0; i < ringed.length; i++) {
      for (int j = 0; j < ringed[i].length; j++) {
        boolean inside = i > 0 && i <= x.length && j > 0 && j <= y.length;
        ringed[i][j] = inside ? values[i - 1][j - 1] : Double.NEGATIVE_INFINITY;
      }
    }
    return new Contours(ringed(x), ringed(y), ringed).lines(level);
  }

  private static double[] ringed(double[] nodes) {
    double[] ringed = new double[nodes.length + 2];
    System.arraycopy(nodes, 0, ringed, 1, nodes.length);
    ringed[0] = nodes[0];
    ringed[nodes.length + 1] = nodes[nodes.length - 1];
    return ringed;
  }

  private static void join(Map<Integer, List<Integer>> neighbours, int from, int to) {
    neighbours.computeIfAbsent(from, side -> new ArrayList<>(2)).add(to);
  }

  /** The sides of a square that a line crosses, in turn around it. */
  private List<Integer> crossed(int i, int j, double level) {
    int[] sides = {side(i, j, 0), side(i + 1, j, 1), side(i, j + 1, 0), side(i, j, 1)};
    List<Integer> crossed = new ArrayList<>(4);
    for (int side : sides) {
      // Half-open, so that a node exactly at the level counts once.
      if ((start(side) < level) != (end(side) < level)) {
        crossed.add(side);
      }
    }
    return crossed;
  }

  /** A side that begins at a node and runs across (0) or along the other axis (1). */
  private int side(int i, int j, int direction) {
    return 2 * (i * y.length + j) + direction;
  }

  private int column(int side) {
    return side / 2 / y.length;
  }

  private int row(int side) {
    return side / 2 % y.length;
  }

  private double start(int side) {
    return values[column(side)][row(side)];
  }

  private double end(int side) {
    return values[column(side) + 1 - side % 2][row(side) + side % 2];
  }

  private Pixel crossing(int side, double level) {
    int i = column(side);
    int j = row(side);
    Pixel from = new Pixel(x[i], y[j]);
    Pixel to = new Pixel(x[i + 1 - side % 2], y[j + side % 2]);
    double share = (level - start(side)) / (end(side) - start(side));
    // the ends of a side of the ring are one point
    return Double.isFinite(share) ? from.towards(to, share) : from;
  }

  /** Follows a line from a side until it ends, and takes what was followed off the map. */
  private void follow(
      int first, Map<Integer, List<Integer>> neighbours, double level, List<List<Pixel>> lines) {
    List<Pixel> line = new ArrayList<>();
    int side = first;
    for (List<Integer> next = neighbours.remove(first);
        next != null;
        next = neighbours.remove(side)) {
      line.add(crossing(side, level));
      Optional<Integer> open = next.stream().filter(neighbours::containsKey).findFirst();
      if (open.isEmpty() && next.contains(first) && line.size() > 2) {
        line.add(line.get(0));
      }
      side = open.orElse(side);
    }
    if (line.size() > 1) {
      lines.add(simplified(line));
    }
  }

  /** Leaves out points that lie on the line without them (the method of Douglas and Peucker). */
  private static List<Pixel> simplified(List<Pixel> line) {
    boolean[] kept = new boolean[line.size()];
    kept[0] = true;
    kept[line.size() - 1] = true;
    keep(line, 0, line.size() - 1, kept);
    List<Pixel> few = new ArrayList<>();
    for (int i = 0; i < kept.length; i++) {
      if (kept[i]) {
        few.add(line.get(i));
      }
    }
    return few;
  }

  private static void keep(List<Pixel> line, int first, int last, boolean[] kept) {
    int farthest = first;
    double most = SLACK;
    for (int i = first + 1; i < last; i++) {
      double distance = distance(line.get(i), line.get(first), line.get(last));
      if (distance > most) {
        most = distance;
        farthest = i;
      }
    }
    if (farthest != first) {
      kept[farthest] = true;
      keep(line, first, farthest, kept);
      keep(line, farthest, last, kept);
    }
  }

  private static double distance(Pixel point, Pixel from, Pixel to) {
    double length = from.distance(to);
    if (length == 0) {
      return point.distance(from);
    }
    double across = (point.x() - from.x()) * (to.x() - from.x());
    double down = (point.y() - from.y()) * (to.y() - from.y());
    double share = Math.max(0, Math.min(1, (across + down) / (length * length)));
    return point.distance(from.towards(to, share));
  }
}
