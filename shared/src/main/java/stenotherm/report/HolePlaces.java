package stenotherm.report;

import java.util.ArrayList;
import java.util.List;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.grid.Box;
import stenotherm.grid.Point;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.Vent;
import stenotherm.words.Figures;

/**
 * Where the holes of a parcel can be made: the air is computed with holes that are open, those of a
 * side at half its height, and a scenario says no more than how many a face has. The holes of a
 * face stand in a row along one of its edges, the same on both sides of its middle, where they are
 * farthest from what is inside.
 */
final class HolePlaces {
  /** From the rim of a hole to what closes it, tape and all, or to a corner inside: assumed [m]. */
  private static final double LEAST = 0.008;

  /** Rims that are farther from all else are no better for it [m]. */
  private static final double AMPLE = 0.015;

  /** Places that differ by less are as good [m]. */
  private static final double SAME = 5e-4;

  /** What is nearer to a face than this lies behind its holes: assumed [m]. */
  private static final double NEAR = 0.02;

  /** Rows that are tried across half a face. */
  private static final int ROWS = 20;

  private final Parcel parcel;
  private final Box cavity;
  private final Figures figures;
  private final List<Box> things = new ArrayList<>();
  private final List<Row> rows = new ArrayList<>();

  /**
   * Holes in a row along an axis of their face.
   *
   * @param middles their middles, on the inner side of the face; none where no place is free [m]
   * @param clearance from the rim of any of them to the nearest thing or corner [m]
   */
  record Row(Vent vent, Axis along, List<Point> middles, double clearance) {}

  /**
   * Finds places for all holes of a parcel.
   *
   * @param parcel the parcel
   * @param figures writes distances in the reader's units
   */
  HolePlaces(Parcel parcel, Figures figures) {
    this.parcel = parcel;
    this.cavity = parcel.cavity();
    this.figures = figures;
    parcel.containers().forEach(each -> things.add(parcel.room(each)));
    parcel.warmers().forEach(each -> things.add(parcel.layout().block(each.name()).box()));
    parcel.packs().forEach(each -> things.add(parcel.layout().block(each.name()).box()));
    parcel.openings().vents().forEach(this::place);
  }

  /** Nothing at all behind a hole is best; then half the height, for which the air is computed. */
  private void place(Vent vent) {
    Row row = best(vent, Double.POSITIVE_INFINITY, true);
    if (row.clearance() < LEAST) {
      row = best(vent, NEAR, true);
    }
    if (row.clearance() < LEAST) {
      row = best(vent, NEAR, false);
    }
    boolean isFree = row.clearance() >= LEAST;
    rows.add(isFree ? row : new Row(vent, row.along(), List.of(), 0));
  }

  private Row best(Vent vent, double near, boolean asComputed) {
    Axis normal = vent.face().axis();
    Axis first = normal == Axis.X ? Axis.Y : Axis.X;
    Axis second = normal == Axis.Z ? Axis.Y : Axis.Z;
    Row best = new Row(vent, first, List.of(), 0);
    for (Axis along : List.of(first, second)) {
      Axis across = along == first ? second : first;
      boolean onlyMiddle = asComputed && across == Axis.Z;
      for (double share : ends(vent.count())) {
        for (int step = 0; step <= (onlyMiddle ? 0 : 2 * ROWS - 1); step++) {
          // from the middle outwards, in turn to either side
          int rowsAway = (step + 1) / 2;
          double part = (step % 2 == 0 ? 0.5 : -0.5) * rowsAway / ROWS;
          List<Point> middles = middles(vent, along, share, across, part * cavity.size(across));
          double clearance = Math.min(AMPLE, clearance(vent, middles, near));
          if (clearance > best.clearance() + SAME) {
            best = new Row(vent, along, middles, clearance);
          }
        }
      }
    }
    return best;
  }

  /** How far the outer holes of a row are from its ends [-]: evenly spread at best. */
  private static List<Double> ends(int count) {
    List<Double> ends = new ArrayList<>();
    ends.add(0.5 / count);
    for (int step = 1; step < ROWS && count > 1; step++) {
      ends.add(0.5 * step / ROWS);
    }
    return ends;
  }

  private List<Point> middles(Vent vent, Axis along, double share, Axis across, double offset) {
    List<Point> middles = new ArrayList<>();
    Point centre = parcel.outer().centre();
    for (int hole = 0; hole < vent.count(); hole++) {
      double part = vent.count() == 1 ? 0 : hole / (vent.count() - 1.0) - 0.5;
      double[] at = {centre.x(), centre.y(), centre.z()};
      at[along.ordinal()] += part * (1 - 2 * share) * cavity.size(along);
      at[across.ordinal()] += offset;
      at[vent.face().axis().ordinal()] = cavity.at(vent.face());
      middles.add(new Point(at[0], at[1], at[2]));
    }
    return middles;
  }

  /** From the rim of any of these holes to whatever is nearest to it; too little at once [m]. */
  private double clearance(Vent vent, List<Point> middles, double near) {
    double radius = vent.diameter() / 2;
    double least = Double.POSITIVE_INFINITY;
    for (int hole = 0; hole < middles.size() && least >= LEAST; hole++) {
      Point middle = middles.get(hole);
      for (Axis axis : Axis.values()) {
        if (axis != vent.face().axis()) {
          double low = middle.along(axis) - cavity.min().along(axis);
          least = Math.min(least, Math.min(low, cavity.size(axis) - low) - radius);
        }
      }
      for (Box thing : things) {
        if (-cavity.excess(thing, vent.face()) < near) {
          least = Math.min(least, apart(vent.face(), middle, thing) - radius);
        }
      }
      if (hole > 0) {
        least = Math.min(least, apart(middle, middles.get(hole - 1)) - vent.diameter());
      }
      for (Row other : rows) {
        double rims = radius + other.vent().diameter() / 2;
        for (Point taken : other.middles()) {
          // holes of other faces are no nearer than the corner between
          least = Math.min(least, apart(middle, taken) - rims);
        }
      }
    }
    return least;
  }

  private static double apart(Point one, Point other) {
    return Math.hypot(Math.hypot(one.x() - other.x(), one.y() - other.y()), one.z() - other.z());
  }

  /** How far a point of a face is from what lies behind the face, seen square to it [m]. */
  private static double apart(Face face, Point middle, Box thing) {
    double square = 0;
    for (Axis axis : Axis.values()) {
      if (axis != face.axis()) {
        double at = middle.along(axis);
        double beyond =
            Math.max(thing.min().along(axis) - at, Math.max(0, at - thing.max().along(axis)));
        square += beyond * beyond;
      }
    }
    return Math.sqrt(square);
  }

  /** The holes of the parcel, in its order. */
  List<Row> rows() {
    return List.copyOf(rows);
  }

  /** Where the holes of a row are to be made, for somebody with a ruler outside the box. */
  String words(Row row) {
    if (row.middles().isEmpty()) {
      return "spread beside what is inside, for no row along an edge has room for them";
    }
    Axis normal = row.vent().face().axis();
    Axis across = Axis.values()[3 - normal.ordinal() - row.along().ordinal()];
    Point first = row.middles().get(0);
    String line = line(across, first.along(across));
    Face low = Face.of(row.along(), false);
    String ends = figures.tape(first.along(row.along()) - parcel.outer().at(low));
    String one = edge(low);
    String other = edge(low.opposite());
    boolean asComputed = across != Axis.Z || isMiddle(across, first.along(across));
    return switch (row.vent().count()) {
          case 1 -> line + ", half-way between " + one + " and " + other;
          case 2 ->
              "both "
                  + line
                  + ", one "
                  + ends
                  + " from "
                  + one
                  + " and one "
                  + ends
                  + " from "
                  + other;
          default ->
              "in a row "
                  + line
                  + ", the outer ones "
                  + ends
                  + " from "
                  + one
                  + " and "
                  + other
                  + ", all equally apart";
        }
        + (asComputed ? "" : " (the air is computed for half the height)");
  }

  /** Where a row is across its face. */
  private String line(Axis across, double at) {
    Face low = Face.of(across, false);
    if (isMiddle(across, at)) {
      return across == Axis.Z
          ? "at half the height"
          : "half-way between " + edge(low) + " and " + edge(low.opposite());
    }
    Face nearer = at < parcel.outer().centre().along(across) ? low : low.opposite();
    return figures.tape(Math.abs(at - parcel.outer().at(nearer))) + " from " + edge(nearer);
  }

  private boolean isMiddle(Axis axis, double at) {
    return Math.abs(at - parcel.outer().centre().along(axis)) < SAME;
  }

  private static String edge(Face face) {
    return face.axis() == Axis.Z ? face.isMax() ? "top" : "bottom" : face.words();
  }
}
