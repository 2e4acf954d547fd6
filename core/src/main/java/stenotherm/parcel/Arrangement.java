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
   * middle. Where no number of rows fits, the least sticks out of those that are returned.
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
    Axis along = length >= width ? Axis.X : Axis.Y;
    Axis across = along == Axis.X ? Axis.Y : Axis.X;
    List<List<Container>> best = List.of(all);
    double least = Double.POSITIVE_INFINITY;
    for (int many = 1; many <= all.size() && least > 0; many++) {
      List<List<Container>> rows = divided(all, many);
      double longest = rows.stream().mapToDouble(row -> extent(row, along, gap)).max().orElse(0);
      double deep = gap * (rows.size() - 1);
      for (List<Container> row : rows) {
        deep += deepest(row, across);
      }
      double out =
          Math.max(0, Math.max(longest - Math.max(length, width), deep - Math.min(length, width)));
      if (out < least) {
        least = out;
        best = rows;
      }
    }
    return placed(best, along, across, gap);
  }

  private static List<List<Container>> divided(List<Container> all, int rows) {
    int each = (all.size() + rows - 1) / rows;
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

  private static double deepest(List<Container> row, Axis across) {
    return row.stream().mapToDouble(each -> each.vessel().inner().along(across)).max().orElse(0);
  }

  private static List<Container> placed(
      List<List<Container>> rows, Axis along, Axis across, double gap) {
    double start = -gap * (rows.size() - 1) / 2;
    for (List<Container> row : rows) {
      start -= deepest(row, across) / 2;
    }
    List<Container> placed = new ArrayList<>();
    for (List<Container> row : rows) {
      double deep = deepest(row, across);
      double shift = start + deep / 2;
      for (Container each : sideBySide(along, gap, row)) {
        Position at = each.position();
        placed.add(
            each.at(
                new Position(
                    at.alongX() + (across == Axis.X ? shift : 0),
                    at.alongY() + (across == Axis.Y ? shift : 0),
                    at.aboveFloor())));
      }
      start += deep + gap;
    }
    return List.copyOf(placed);
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
