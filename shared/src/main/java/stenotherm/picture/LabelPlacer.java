package stenotherm.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds places for labels where they cover nothing. Labels are placed one after the other, the
 * important ones first; a placed label is in the way of the next.
 */
final class LabelPlacer {
  /** Space that stays free around a label [pixel]. */
  private static final double CLEARANCE = 2;

  private static final double LONGEST_PIECE = 4;

  private static final double COST_OF_LABEL = Double.POSITIVE_INFINITY;
  private static final double COST_OF_LINE = 40;

  private final Area area;
  private final List<Area> taken = new ArrayList<>();
  private final List<Stretch> lines = new ArrayList<>();

  LabelPlacer(Area area) {
    this.area = area;
  }

  /** A straight piece of a line. */
  private record Stretch(Pixel from, Pixel to) {}

  /**
   * A possible place of a label.
   *
   * @param box the place
   * @param cost 0 for the best place, more for worse ones
   */
  record Candidate(Area box, double cost) {}

  void avoid(Area box) {
    taken.add(box);
  }

  void avoid(Pixel from, Pixel to) {
    lines.add(new Stretch(from, to));
  }

  /**
   * Avoids a line: a place costs more, the longer the part of the line that a label would cover.
   */
  void avoid(List<Pixel> line) {
    List<Pixel> points = inShortPieces(line);
    for (int i = 1; i < points.size(); i++) {
      avoid(points.get(i - 1), points.get(i));
    }
  }

  /** The same line with points so close that the pieces under a label tell how much it covers. */
  static List<Pixel> inShortPieces(List<Pixel> line) {
    List<Pixel> points = new ArrayList<>();
    points.add(line.get(0));
    for (int i = 1; i < line.size(); i++) {
      Pixel from = line.get(i - 1);
      int pieces = Math.max(1, (int) (from.distance(line.get(i)) / LONGEST_PIECE));
      for (int j = 1; j <= pieces; j++) {
        points.add(from.towards(line.get(i), (double) j / pieces));
      }
    }
    return points;
  }

  /** Takes the cheapest candidate inside the area; none if every one would cover another label. */
  Optional<Area> place(List<Candidate> candidates) {
    Area best = null;
    double least = COST_OF_LABEL;
    for (Candidate candidate : candidates) {
      double cost = candidate.cost();
      if (cost < least && area.contains(candidate.box())) {
        cost += costOf(candidate.box(), least - cost);
        if (cost < least) {
          least = cost;
          best = candidate.box();
        }
      }
    }
    if (best != null) {
      taken.add(best);
    }
    return Optional.ofNullable(best);
  }

  private double costOf(Area box, double limit) {
    Area wide = box.grown(CLEARANCE);
    for (Area other : taken) {
      if (other.overlaps(wide)) {
        return COST_OF_LABEL;
      }
    }
    double cost = 0;
    for (Stretch line : lines) {
      if (wide.touches(line.from(), line.to())) {
        cost += COST_OF_LINE;
        if (cost > limit) {
          break;
        }
      }
    }
    return cost;
  }
}
