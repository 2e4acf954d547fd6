package stenotherm.parcel;

import java.util.ArrayList;
import java.util.List;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;

/**
 * Sets containers side by side or on top of each other.
 *
 * <p>Stateless, thus thread-safe.
 */
public final class Arrangement {
  private Arrangement() {}

  /**
   * Sets containers in a row whose middle is where the first one stands.
   *
   * @param axis x or y
   * @param gap room between neighbours [m], 0 or above
   * @param containers the containers in their order, at least one
   * @return the containers in their new places
   * @throws InvalidInputException if the axis is z, the gap negative or there is no container
   */
  public static List<Container> sideBySide(Axis axis, double gap, List<Container> containers) {
    if (axis == Axis.Z) {
      throw new InvalidInputException("axis of a row", "z goes upwards; stack instead");
    }
    List<Container> row = checked(gap, containers);
    Position first = row.get(0).position();
    double start = -extent(row, axis, gap) / 2;
    List<Container> placed = new ArrayList<>();
    for (Container each : row) {
      double extent = each.vessel().inner().along(axis);
      double shift = start + extent / 2;
      placed.add(
          each.at(
              new Position(
                  first.alongX() + (axis == Axis.X ? shift : 0),
                  first.alongY() + (axis == Axis.Y ? shift : 0),
                  first.aboveFloor())));
      start += extent + gap;
    }
    return List.copyOf(placed);
  }

  /**
   * Sets containers in as few rows as a floor has room for, along its longer side and around its
   * middle; those that are all of one size in as few layers, too. Where nothing fits, the least
   * sticks out of the rows that are returned.
   *
   * @param length length of the floor [m]
   * @param width width of the floor [m]
   * @param gap room between neighbours and between rows [m], 0 or above
   * @param containers the containers in their order, at least one
   * @return the containers in their new places
   * @throws InvalidInputException if the gap is negative or there is no container
   */
  public static List<Container> inRows(
      double length, double width, double gap, List<Container> containers) {
    List<Container> all = checked(gap, containers);
    Dimensions size = all.get(0).vessel().inner();
    boolean isOneSize = all.stream().allMatch(each -> each.vessel().inner().equals(size));
    int most = isOneSize ? all.size() : 1;
    for (int layers = 1; layers <= most; layers++) {
      Rows rows = Rows.of(length, width, gap, all.subList(0, perPart(all, layers)));
      if (rows.out() == 0) {
        return layered(rows.placed(), all);
      }
    }
    return Rows.of(length, width, gap, all).placed();
  }

  /** How many come into each of some parts, but for the last. */
  private static int perPart(List<Container> all, int parts) {
    return (all.size() + parts - 1) / parts;
  }

  /**
   * On top of those of a first layer, middle on middle, as many layers of the others as it takes.
   */
  private static List<Container> layered(List<Container> first, List<Container> all) {
    List<Container> placed = new ArrayList<>();
    for (int index = 0; index < all.size(); index++) {
      Container below = first.get(index % first.size());
      int layer = index / first.size();
      double up = layer * below.vessel().inner().height();
      Position at = below.position();
      placed.add(all.get(index).at(new Position(at.alongX(), at.alongY(), at.aboveFloor() + up)));
    }
    return List.copyOf(placed);
  }

  /**
   * Rows on a floor.
   *
   * @param out how far the most sticks out [m]; 0 if all fits
   */
  private record Rows(List<List<Container>> rows, Axis along, double gap, double out) {
    /** The fewest that fit, or those of which the least sticks out. */
    static Rows of(double length, double width, double gap, List<Container> all) {
      Axis along = length >= width ? Axis.X : Axis.Y;
      Rows best = new Rows(List.of(all), along, gap, Double.POSITIVE_INFINITY);
      for (int many = 1; many <= all.size() && best.out > 0; many++) {
        List<List<Container>> rows = divided(all, many);
        Rows tried = new Rows(rows, along, gap, 0);
        double out =
            Math.max(
                tried.longest() - Math.max(length, width), tried.depth() - Math.min(length, width));
        if (out < best.out) {
          best = new Rows(rows, along, gap, Math.max(0, out));
        }
      }
      return best;
    }

    private Axis across() {
      return along == Axis.X ? Axis.Y : Axis.X;
    }

    private double longest() {
      return rows.stream().mapToDouble(row -> extent(row, along, gap)).max().orElse(0);
    }

    private double depth() {
      return gap * (rows.size() - 1) + rows.stream().mapToDouble(this::deepest).sum();
    }

    private double deepest(List<Container> row) {
      return row.stream()
          .mapToDouble(each -> each.vessel().inner().along(across()))
          .max()
          .orElse(0);
    }

    List<Container> placed() {
      double start = -depth() / 2;
      List<Container> placed = new ArrayList<>();
      for (List<Container> row : rows) {
        double shift = start + deepest(row) / 2;
        for (Container each : sideBySide(along, gap, row)) {
          Position at = each.position();
          placed.add(
              each.at(
                  new Position(
                      at.alongX() + (across() == Axis.X ? shift : 0),
                      at.alongY() + (across() == Axis.Y ? shift : 0),
                      at.aboveFloor())));
        }
        start += deepest(row) + gap;
      }
      return placed;
    }
  }

  private static List<List<Container>> divided(List<Container> all, int rows) {
    int each = perPart(all, rows);
    List<List<Container>> divided = new ArrayList<>();
    for (int from = 0; from < all.size(); from += each) {
      divided.add(all.subList(from, Math.min(all.size(), from + each)));
    }
    return divided;
  }

  private static double extent(List<Container> row, Axis along, double gap) {
    return gap * (row.size() - 1)
        + row.stream().mapToDouble(each -> each.vessel().inner().along(along)).sum();
  }

  /**
   * Sets containers on top of each other, the first one where it stands.
   *
   * @param gap room between neighbours, filled like the rest of the cavity [m], 0 or above
   * @param containers the containers from below, at least one
   * @return the containers in their new places
   * @throws InvalidInputException if the gap is negative or there is no container
   */
  public static List<Container> stacked(double gap, List<Container> containers) {
    List<Container> stack = checked(gap, containers);
    Position first = stack.get(0).position();
    double bottom = first.aboveFloor();
    List<Container> placed = new ArrayList<>();
    for (Container each : stack) {
      placed.add(each.at(new Position(first.alongX(), first.alongY(), bottom)));
      bottom += each.vessel().inner().height() + gap;
    }
    return List.copyOf(placed);
  }

  private static List<Container> checked(double gap, List<Container> containers) {
    Checks.notNegative("gap between containers", gap, "m");
    return Checks.notEmpty("containers to arrange", containers);
  }
}
