package stenotherm.grid;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Lengths;
import stenotherm.base.Range;
import stenotherm.base.Suggestions;

/**
 * Blocks in a box. The first block fills the domain; each later block overrides what lies beneath
 * it.
 *
 * <p>A value, thus thread-safe.
 *
 * @param blocks the blocks, the first of which is the domain
 * @param coordinates what the three coordinates of all boxes and points measure
 */
public record Layout(List<Block> blocks, Coordinates coordinates) {
  /** How far a block may stick out by round-off, as a part of the domain's extent. */
  private static final double ROUND_OFF = 1e-9;

  private static final Range TURN = new Range(1e-6, 2 * Math.PI * (1 + ROUND_OFF));

  /**
   * Blocks whose coordinates are three lengths.
   *
   * @param blocks the blocks, the first of which is the domain
   * @throws InvalidInputException if there is no block, a name occurs twice or is that of a face, a
   *     block sticks out of the domain, or the first one does not fill its box
   */
  public Layout(List<Block> blocks) {
    this(blocks, Coordinates.CARTESIAN);
  }

  /**
   * Blocks around an axis: x is the radius [m], y the angle [rad], z the length along the axis [m].
   * A whole cylinder at the origin is {@code Box.ofSize(radius, 2 * Math.PI, length)}; in it
   * nothing may vary with the angle. Of a cylinder that does vary and is symmetric about a plane,
   * model half, from 0 to pi.
   *
   * @param blocks the blocks, the first of which is the domain
   * @return the layout
   * @throws InvalidInputException as of {@link #Layout(List, Coordinates)}
   */
  public static Layout cylindrical(List<Block> blocks) {
    return new Layout(blocks, Coordinates.CYLINDRICAL);
  }

  /**
   * Spheres and shells around one centre: x is the radius [m]; y and z have no meaning. A sphere is
   * {@code Box.ofSize(radius, 1, 1)}.
   *
   * @param blocks the blocks, the first of which is the domain
   * @return the layout
   * @throws InvalidInputException as of {@link #Layout(List, Coordinates)}
   */
  public static Layout spherical(List<Block> blocks) {
    return new Layout(blocks, Coordinates.SPHERICAL);
  }

  /**
   * Checks the blocks.
   *
   * @throws InvalidInputException if there is no block, a name occurs twice or is that of a face, a
   *     block sticks out of the domain, or the first one does not fill its box; in cylindrical and
   *     spherical coordinates also if a radius is negative, a shape is not BOX, the angle is more
   *     than a whole turn, or a block ends along an axis that must be uniform
   */
  public Layout {
    Checks.given("blocks", blocks);
    Checks.given("coordinates", coordinates);
    blocks = Checks.notEmpty("blocks", blocks);
    Set<String> names = new HashSet<>();
    Block domain = blocks.get(0);
    for (Block block : blocks) {
      if (!names.add(block.name())) {
        throw new InvalidInputException(
            "block name",
            "'" + block.name() + "' occurs twice; every block needs a name of its own");
      }
      for (Face face : Face.values()) {
        if (block.name().equals(face.label())) {
          throw new InvalidInputException(
              "block name", "'" + block.name() + "' is the name of a face of the domain");
        }
        double excess = domain.box().excess(block.box(), face);
        if (excess > ROUND_OFF * domain.box().size(face.axis())) {
          throw new InvalidInputException(
              "block '" + block.name() + "'",
              String.format(
                  Locale.ROOT,
                  "sticks out of '%s' at %s by %.2f mm",
                  domain.name(),
                  face.label(),
                  Lengths.toMillimetres(excess)));
        }
      }
    }
    if (domain.shape() != Shape.BOX) {
      throw new InvalidInputException(
          "block '" + domain.name() + "'",
          "is the first and must fill its box; put a box around the " + domain.shape());
    }
    if (coordinates.isRadial()) {
      checkRadial(blocks, coordinates);
    }
  }

  private static void checkRadial(List<Block> blocks, Coordinates coordinates) {
    Box domain = blocks.get(0).box();
    Checks.notNegative("inner radius", domain.min().x(), "m");
    boolean isWhole = coordinates == Coordinates.SPHERICAL;
    if (coordinates == Coordinates.CYLINDRICAL) {
      double angle = domain.size(Axis.Y);
      Checks.within("angle", angle, TURN, "rad", "A whole turn is 2 pi.");
      isWhole = angle > (1 - ROUND_OFF) * 2 * Math.PI;
    }
    for (Block block : blocks) {
      if (block.shape() != Shape.BOX) {
        throw new InvalidInputException(
            "block '" + block.name() + "'",
            "is a " + block.shape() + "; where x is a radius every block has the shape BOX");
      }
      if (isWhole && !spans(block.box(), domain, Axis.Y)) {
        throw new InvalidInputException(
            "block '" + block.name() + "'",
            "ends along y, but nothing may vary along a whole turn; "
                + "half a turn, 0 to pi, does for what is symmetric about a plane");
      }
      if (coordinates == Coordinates.SPHERICAL && !spans(block.box(), domain, Axis.Z)) {
        throw new InvalidInputException(
            "block '" + block.name() + "'", "ends along z, which measures nothing in a sphere");
      }
    }
  }

  private static boolean spans(Box box, Box domain, Axis axis) {
    double slack = ROUND_OFF * domain.size(axis);
    return box.min().along(axis) <= domain.min().along(axis) + slack
        && box.max().along(axis) >= domain.max().along(axis) - slack;
  }

  /**
   * Returns the box that the grid covers.
   *
   * @return the box of the first block
   */
  public Box domain() {
    return blocks.get(0).box();
  }

  /**
   * Finds a block by its name.
   *
   * @param name the block's name
   * @return its position in {@link #blocks()}
   * @throws InvalidInputException if there is none; the message offers the closest name or lists
   *     all
   */
  public int indexOf(String name) {
    for (int index = 0; index < blocks.size(); index++) {
      if (blocks.get(index).name().equals(name)) {
        return index;
      }
    }
    throw Suggestions.unknown("block", name, blocks.stream().map(Block::name).toList());
  }

  /**
   * Returns a block by its name.
   *
   * @param name the block's name
   * @return the block
   * @throws InvalidInputException as {@link #indexOf}
   */
  public Block block(String name) {
    return blocks.get(indexOf(name));
  }
}
