package stenotherm.conduction;

import java.util.Set;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;

/**
 * The surface between solid blocks that faces one way, such as the inner surface of a wall. Heat
 * may be released there, see {@link HeatNetworkBuilder#source(String, InnerSurface)}.
 *
 * <p>A value, thus thread-safe.
 *
 * @param blocks names of the blocks whose surface it is; a thin resistance between them and their
 *     neighbours lies outside the surface
 * @param side direction of its outward normal, away from those blocks
 * @param neighbours names of the blocks on the other side; empty for all solid blocks that are not
 *     in {@code blocks}
 */
public record InnerSurface(Set<String> blocks, Face side, Set<String> neighbours) {
  /**
   * Copies the names.
   *
   * @throws InvalidInputException if {@code blocks} is empty or a name is on both sides
   */
  public InnerSurface {
    blocks = Set.copyOf(Checks.given("blocks of an inner surface", blocks));
    Checks.given("side of an inner surface", side);
    neighbours = Set.copyOf(Checks.given("neighbours of an inner surface", neighbours));
    if (blocks.isEmpty()) {
      throw new InvalidInputException("inner surface", "needs at least one block");
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
   * @param side direction of its outward normal
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
