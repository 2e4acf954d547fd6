package stenotherm.parcel;

import stenotherm.base.Checks;
import stenotherm.base.Source;
import stenotherm.grid.Box;
import stenotherm.grid.Point;

/**
 * A size of box that people know by name.
 *
 * <p>A value, thus thread-safe.
 *
 * @param name name, unique among sizes
 * @param inside inner size of the carton, by which cartons are named
 * @param source where the size comes from
 */
public record BoxSize(String name, Dimensions inside, Source source) {
  private static final Source PRACTICE =
      Source.practice("Cartons are named by their inner length x width x height");

  /**
   * Checks the name.
   *
   * @throws stenotherm.base.InvalidInputException if it is blank
   */
  public BoxSize {
    Checks.given("name", name);
    Checks.given("inside", inside);
    Checks.given("source", source);
    Checks.name("name of a box size", name);
  }

  /**
   * A carton of any size.
   *
   * @param name name
   * @param inside its inner size, by which cartons are named
   * @return the size
   * @throws stenotherm.base.InvalidInputException if the name is blank
   */
  public static BoxSize carton(String name, Dimensions inside) {
    return new BoxSize(name, inside, PRACTICE);
  }

  /**
   * Returns the outer box of a carton of this size: the outermost layer of the walls is the carton,
   * all further layers lie inside it.
   *
   * @param walls walls whose outermost layers are the carton
   * @return the outer box, its lower corner at the origin [m]
   */
  public Box outer(Walls walls) {
    double[] size = {inside.length(), inside.width(), inside.height()};
    walls
        .layers()
        .forEach((face, layers) -> size[face.axis().ordinal()] += layers.get(0).thickness());
    return new Box(new Point(0, 0, 0), new Point(size[0], size[1], size[2]));
  }
}
