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
    double length = gap * (row.size() - 1);
    for (Container each : row) {
      length += each.vessel().inner().along(axis);
    }
    Position first = row.get(0).position();
    double start = -length / 2;
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
