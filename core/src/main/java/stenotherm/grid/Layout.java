package stenotherm.grid;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Lengths;

/**
 * Blocks in a box. The first block fills the domain; each later block overrides what lies beneath
 * it.
 *
 * <p>Stable. A value, thus thread-safe.
 *
 * @param blocks the blocks, the first of which is the domain
 */
public record Layout(List<Block> blocks) {
  /** How far a block may stick out by round-off, as a part of the domain's extent. */
  private static final double ROUND_OFF = 1e-9;

  /**
   * Checks the blocks.
   *
   * @throws InvalidInputException if there is no block, a name occurs twice or is that of a face,
   *     or a block sticks out of the domain
   */
  public Layout {
    blocks = stenotherm.base.Checks.notEmpty("blocks", blocks);
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
   * @throws InvalidInputException if there is none; the message lists the names there are
   */
  public int indexOf(String name) {
    for (int index = 0; index < blocks.size(); index++) {
      if (blocks.get(index).name().equals(name)) {
        return index;
      }
    }
    throw new InvalidInputException(
        "block",
        "there is no block '"
            + name
            + "'; there are "
            + blocks.stream().map(Block::name).collect(Collectors.joining(", ")));
  }
}
