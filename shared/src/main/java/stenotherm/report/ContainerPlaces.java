package stenotherm.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stenotherm.base.Axis;
import stenotherm.grid.Box;
import stenotherm.parcel.Container;
import stenotherm.parcel.Parcel;
import stenotherm.words.Figures;

/**
 * Where each of several containers stands, for somebody with a ruler: on or beside one that stands
 * already, else by its distances from two walls, the same two for all. Told from its own nearest
 * walls each, small roundings would leave them out of line.
 */
final class ContainerPlaces {
  /** Distances that differ by less count as one [m]. */
  private static final double SAME = 5e-4;

  /** Containers closer than this are placed by each other, not by walls [m]. */
  private static final double NEAR = 0.05;

  private final Parcel parcel;
  private final Box cavity;
  private final Figures figures;
  private final List<Container> order;

  ContainerPlaces(Parcel parcel, Figures figures) {
    this.parcel = parcel;
    this.cavity = parcel.cavity();
    this.figures = figures;
    this.order =
        parcel.containers().stream()
            .sorted(Comparator.comparingDouble(each -> parcel.room(each).min().z()))
            .toList();
  }

  /** Where a container stands, once those that come before it do. */
  String where(Container container) {
    List<Container> standing = order.subList(0, order.indexOf(container));
    Box room = parcel.room(container);
    for (Container below : standing) {
      if (isOn(room, parcel.room(below))) {
        return "on top of '" + below.name() + "', middle on middle";
      }
    }
    return height(room)
        + standing.stream()
            .filter(each -> gap(room, parcel.room(each)) < NEAR)
            .min(Comparator.comparingDouble(each -> gap(room, parcel.room(each))))
            .map(each -> beside(room, each) + middle(container))
            .orElseGet(
                () ->
                    fromWall(room, Axis.X)
                        + " from left, "
                        + fromWall(room, Axis.Y)
                        + " from front");
  }

  /** Where containers of one size and level stand that are in even rows; empty for others. */
  Optional<String> rows(List<Container> alike) {
    List<Double> columns = lines(alike, Axis.X);
    List<Double> lines = lines(alike, Axis.Y);
    if (columns.size() * lines.size() != alike.size() || !isEven(columns) || !isEven(lines)) {
      return Optional.empty();
    }
    Box room = parcel.room(alike.get(0));
    List<String> counts = new ArrayList<>();
    if (columns.size() > 1) {
      counts.add(row(columns, "left to right", room.size(Axis.X)));
    }
    if (lines.size() > 1) {
      counts.add(row(lines, "front to back", room.size(Axis.Y)));
    }
    return Optional.of(
        height(room)
            + String.join(", by ", counts)
            + "; the outer ones "
            + ends(columns, Axis.X, room, "left", "right")
            + ", "
            + ends(lines, Axis.Y, room, "front", "back"));
  }

  /** Where they begin along an axis, in rising order, each but once [m]. */
  private List<Double> lines(List<Container> alike, Axis axis) {
    List<Double> lines = new ArrayList<>();
    alike.stream()
        .map(each -> parcel.room(each).min().along(axis))
        .sorted()
        .filter(at -> lines.isEmpty() || at - lines.get(lines.size() - 1) > SAME)
        .forEachOrdered(lines::add);
    return lines;
  }

  private static boolean isEven(List<Double> lines) {
    return IntStream.range(2, lines.size())
        .mapToDouble(n -> lines.get(n) - 2 * lines.get(n - 1) + lines.get(n - 2))
        .allMatch(change -> Math.abs(change) < 2 * SAME);
  }

  private String row(List<Double> lines, String from, double size) {
    double apart = Math.max(0, lines.get(1) - lines.get(0) - size);
    return lines.size()
        + " from "
        + from
        + (apart < SAME ? ", touching" : ", " + figures.tape(apart) + " apart");
  }

  private String ends(List<Double> lines, Axis axis, Box room, String one, String other) {
    double toOne = lines.get(0) - cavity.min().along(axis);
    double toOther = cavity.max().along(axis) - lines.get(lines.size() - 1) - room.size(axis);
    return tape(toOne)
        + " from "
        + one
        + " and "
        + (Math.abs(toOne - toOther) < SAME ? "" : tape(toOther) + " from ")
        + other;
  }

  private String tape(double distance) {
    return figures.tape(distance < SAME ? 0 : distance);
  }

  private String height(Box room) {
    double up = room.min().z() - cavity.min().z();
    return up > SAME ? figures.tape(up) + " above the floor inside, " : "on the floor inside, ";
  }

  private String fromWall(Box room, Axis axis) {
    return tape(room.min().along(axis) - cavity.min().along(axis));
  }

  private static boolean isOn(Box upper, Box lower) {
    return Math.abs(upper.min().z() - lower.max().z()) < SAME
        && isInLine(upper, lower, Axis.X)
        && isInLine(upper, lower, Axis.Y);
  }

  private static boolean isInLine(Box one, Box other, Axis axis) {
    return Math.abs(one.centre().along(axis) - other.centre().along(axis)) < SAME;
  }

  /** The axis along which two stand side by side; empty if they do not. */
  private static Optional<Axis> row(Box one, Box other) {
    if (Math.abs(one.min().z() - other.min().z()) >= SAME) {
      return Optional.empty();
    }
    return isInLine(one, other, Axis.Y)
        ? Optional.of(Axis.X)
        : isInLine(one, other, Axis.X) ? Optional.of(Axis.Y) : Optional.empty();
  }

  /** The gap between two side by side [m]; infinite for others. */
  private static double gap(Box one, Box other) {
    return row(one, other).isPresent() ? -one.overlap(other) : Double.POSITIVE_INFINITY;
  }

  private String beside(Box room, Container other) {
    Box there = parcel.room(other);
    Axis axis = row(room, there).orElseThrow();
    boolean after = room.min().along(axis) > there.min().along(axis);
    String side =
        axis == Axis.X
            ? (after ? "to the right of" : "to the left of")
            : after ? "behind" : "in front of";
    double gap = gap(room, there);
    return (gap < SAME ? "" : figures.tape(gap) + " ")
        + side
        + " '"
        + other.name()
        + "'"
        + (gap < SAME ? ", touching it" : "")
        + ", middles in line";
  }

  /** Something to check the last one of a level by: whether they stand in the middle together. */
  private String middle(Container last) {
    double level = parcel.room(last).min().z();
    List<Container> beside =
        order.stream()
            .filter(each -> Math.abs(parcel.room(each).min().z() - level) < SAME)
            .toList();
    boolean isLast = beside.get(beside.size() - 1).equals(last);
    return isLast && isInMiddle(beside, Axis.X) && isInMiddle(beside, Axis.Y)
        ? "; together they stand in the middle"
        : "";
  }

  private boolean isInMiddle(List<Container> all, Axis axis) {
    double low = cavity.max().along(axis);
    double high = cavity.min().along(axis);
    for (Container each : all) {
      low = Math.min(low, parcel.room(each).min().along(axis));
      high = Math.max(high, parcel.room(each).max().along(axis));
    }
    return Math.abs((low + high) / 2 - cavity.centre().along(axis)) < SAME;
  }
}
