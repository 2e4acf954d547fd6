package stenotherm.conduction;

import java.util.Set;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;

/**
 * The surface of solid blocks where it looks one way and other solid blocks touch it, such as the
 * inner surface of a wall. Heat may be released there, see {@link HeatNetworkBuilder#source(String,
 * InnerSurface)}.
 *
 * <p>A value, thus thread-safe.
 *
 * @param blocks names of the blocks whose surface it is; a thin resistance between them and their
 *     neighbours lies outside the surface
 * @param side the way it looks, away from those blocks
 * @param neighbours names of the blocks beyond it; empty for every solid block that is not one of
 *     {@code blocks}
 */
public record InnerSurface(Set<String> blocks, Face side, Set<String> neighbours) {
  /**
   * Copies the names.
   *
   * @throws InvalidInputException if {@code blocks} is empty or a name is on both sides
   */
  public InnerSurface {
    blocks = Set.copyOf(blocks);
    neighbours = Set.copyOf(neighbours);
    if (blocks.isEmpty()) {
      throw new InvalidInputException("inner surface", "needs at least one block that it is of");
    }
    for (String name : neighbours) {
      if (blocks.contains(name)) {
        throw new InvalidInputException("inner surface", "'" + name + "' is on both sides");
      }
    }
  }

  /**
   * The surface of one block towards another one.
   *
   * @param block name of the block whose surface it is
   * @param side the way it looks
   * @param neighbour name of the block beyond it
   * @return the surface
   * @throws InvalidInputException if both are the same
   */
  public static InnerSurface of(String block, Face side, String neighbour) {
    return new InnerSurface(Set.of(block), side, Set.of(neighbour));
  }

  /** Tells whether the surface lies between a block and one beyond it. */
  boolean separates(String block, String beyond) {
    return blocks.contains(block)
        && (neighbours.isEmpty() ? !blocks.contains(beyond) : neighbours.contains(beyond));
  }
}
