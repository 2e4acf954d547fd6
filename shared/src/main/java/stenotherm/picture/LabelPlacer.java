package stenotherm.picture;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
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

  private static final double COST_OF_LABEL = 1000;
  private static final double COST_OF_LINE = 40;

  private final Rectangle2D area;
  private final List<Rectangle2D> taken = new ArrayList<>();
  private final List<Line2D> lines = new ArrayList<>();

  LabelPlacer(Rectangle2D area) {
    this.area = area;
  }

  /**
   * A possible place of a label.
   *
   * @param box the place
   * @param cost how much another place is preferred, 0 for the best
   */
  record Candidate(Rectangle2D box, double cost) {}

  void avoid(Rectangle2D box) {
    taken.add(box);
  }

  void avoid(Line2D line) {
    lines.add(line);
  }

  /** Takes the cheapest candidate inside the area; none if every one would cover another label. */
  Optional<Rectangle2D> place(List<Candidate> candidates) {
    Rectangle2D best = null;
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

  private double costOf(Rectangle2D box, double limit) {
    Rectangle2D wide =
        new Rectangle2D.Double(
            box.getX() - CLEARANCE,
            box.getY() - CLEARANCE,
            box.getWidth() + 2 * CLEARANCE,
            box.getHeight() + 2 * CLEARANCE);
    for (Rectangle2D other : taken) {
      if (other.intersects(wide)) {
        return COST_OF_LABEL;
      }
    }
    double cost = 0;
    for (Line2D line : lines) {
      if (wide.intersectsLine(line)) {
        cost += COST_OF_LINE;
        if (cost > limit) {
          break;
        }
      }
    }
    return cost;
  }
}
