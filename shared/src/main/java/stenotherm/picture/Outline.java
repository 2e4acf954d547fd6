package stenotherm.picture;

import java.util.Optional;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.grid.Box;
import stenotherm.grid.Shape;

/**
 * The outline of a thing in a section, with its name.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 *
 * @param name the thing's name
 * @param x from where to where it reaches along the horizontal axis [m]
 * @param z from where to where it reaches along the vertical axis [m]
 * @param round whether it is the ellipse in that rectangle and not the rectangle
 */
public record Outline(String name, Range x, Range z, boolean round) {
  /**
   * Checks the outline.
   *
   * @throws InvalidInputException if the name is blank or an end not finite
   */
  public Outline {
    Checks.name("outline name", name);
    for (Range range : new Range[] {x, z}) {
      Checks.finite("outline '" + name + "'", range.low(), "m");
      Checks.finite("outline '" + name + "'", range.high(), "m");
    }
  }

  /**
   * The outline of a box.
   *
   * @param name the thing's name
   * @param x its reach along the horizontal axis [m]
   * @param z its reach along the vertical axis [m]
   * @throws InvalidInputException if the name is blank or an end not finite
   */
  public Outline(String name, Range x, Range z) {
    this(name, x, z, false);
  }

  /**
   * Cuts a thing by a plane. A cylinder across whose axis the plane lies is round; one that the
   * plane cuts along its axis is a rectangle, the narrower the farther the plane is from the axis.
   *
   * @param name the thing's name
   * @param box the box that the thing touches from inside
   * @param shape its shape
   * @param normal the axis that the plane is normal to
   * @param at where on that axis the plane lies [m]
   * @return the outline, with x before y before z as horizontal and vertical axis; empty if the
   *     plane misses the thing
   * @throws InvalidInputException if the name is blank
   */
  public static Optional<Outline> of(String name, Box box, Shape shape, Axis normal, double at) {
    double half = box.size(normal) / 2;
    double distance = Math.abs(at - box.centre().along(normal));
    if (distance > half) {
      return Optional.empty();
    }
    Axis horizontal = normal == Axis.X ? Axis.Y : Axis.X;
    Axis vertical = normal == Axis.Z ? Axis.Y : Axis.Z;
    Axis along = axisOf(shape).orElse(normal);
    double share = shape == Shape.BOX ? 1 : Math.sqrt(1 - distance * distance / (half * half));
    boolean round = shape != Shape.BOX && along == normal;
    return Optional.of(
        new Outline(
            name,
            reach(box, horizontal, round || along == horizontal ? 1 : share),
            reach(box, vertical, round || along == vertical ? 1 : share),
            round));
  }

  private static Optional<Axis> axisOf(Shape shape) {
    return switch (shape) {
      case BOX -> Optional.empty();
      case CYLINDER_X -> Optional.of(Axis.X);
      case CYLINDER_Y -> Optional.of(Axis.Y);
      case CYLINDER_Z -> Optional.of(Axis.Z);
    };
  }

  private static Range reach(Box box, Axis axis, double share) {
    double middle = box.centre().along(axis);
    double half = share * box.size(axis) / 2;
    return new Range(middle - half, middle + half);
  }
}
