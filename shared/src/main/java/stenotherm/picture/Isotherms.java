package stenotherm.picture;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds lines of one temperature between the middles of cells (marching squares, straight in each
 * square).
 */
final class Isotherms {
  private Isotherms() {}

  /** Pieces of the line of one temperature, in metres. */
  static List<Line2D> find(SectionField field, double temperature) {
    List<Line2D> pieces = new ArrayList<>();
    for (int i = 0; i + 1 < field.cellsAlongX(); i++) {
      for (int j = 0; j + 1 < field.cellsAlongZ(); j++) {
        List<Point2D> crossings = crossings(field, i, j, temperature);
        for (int k = 0; k + 1 < crossings.size(); k += 2) {
          pieces.add(new Line2D.Double(crossings.get(k), crossings.get(k + 1)));
        }
      }
    }
    return pieces;
  }

  /**
   * Where the line crosses the sides of the square above and right of a cell's middle, in turn
   * around it.
   */
  private static List<Point2D> crossings(SectionField field, int i, int j, double temperature) {
    int[][] corners = {{i, j}, {i + 1, j}, {i + 1, j + 1}, {i, j + 1}};
    List<Point2D> crossings = new ArrayList<>();
    for (int k = 0; k < 4; k++) {
      int[] from = corners[k];
      int[] to = corners[(k + 1) % 4];
      double start = field.temperature(from[0], from[1]);
      double end = field.temperature(to[0], to[1]);
      // Half-open, so that a corner exactly at the temperature counts once.
      if ((start < temperature) != (end < temperature)) {
        double share = (temperature - start) / (end - start);
        double x = field.xMiddle(from[0]);
        double z = field.zMiddle(from[1]);
        crossings.add(
            new Point2D.Double(
                x + share * (field.xMiddle(to[0]) - x), z + share * (field.zMiddle(to[1]) - z)));
      }
    }
    return crossings;
  }
}
