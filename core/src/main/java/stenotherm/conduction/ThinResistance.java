package stenotherm.conduction;

import java.util.List;
import java.util.Set;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;

/**
 * A resistance without thickness between blocks: a cup's wall, tape, a contact, a spacer. It has no
 * cells. Several on the same face add up, as layers in series do.
 *
 * <p>A value, thus thread-safe.
 *
 * @param inside names of the blocks on one side
 * @param outside names of the blocks on the other side; empty for every block, environment and
 *     domain face that is not {@code inside}
 * @param resistance resistance of unit area [m2 K/W], 0 or above
 */
public record ThinResistance(Set<String> inside, Set<String> outside, double resistance) {
  /**
   * Checks the resistance.
   *
   * @throws InvalidInputException if {@code inside} is empty, a name is on both sides, or the
   *     resistance is negative or not finite
   */
  public ThinResistance {
    inside = Set.copyOf(Checks.given("blocks inside a thin resistance", inside));
    outside = Set.copyOf(Checks.given("blocks outside a thin resistance", outside));
    if (inside.isEmpty()) {
      throw new InvalidInputException("thin resistance", "needs at least one block inside");
    }
    for (String name : inside) {
      if (outside.contains(name)) {
        throw new InvalidInputException("thin resistance", "'" + name + "' is on both sides");
      }
    }
    Checks.notNegative("thin resistance", resistance, "m2 K/W");
  }

  /**
   * A resistance between two blocks.
   *
   * @param one name of the one block
   * @param other name of the other block or environment
   * @param resistance resistance of unit area [m2 K/W]
   * @return the resistance
   */
  public static ThinResistance between(String one, String other, double resistance) {
    return new ThinResistance(Set.of(one), Set.of(other), resistance);
  }

  /**
   * A resistance all around a group of blocks, such as the wall of a cup around its contents.
   *
   * @param inside names of the blocks enclosed
   * @param resistance resistance of unit area [m2 K/W]
   * @return the resistance
   */
  public static ThinResistance around(Set<String> inside, double resistance) {
    return new ThinResistance(inside, Set.of(), resistance);
  }

  /**
   * Tells whether the resistance lies between two neighbours; the name of a domain's face stands
   * for what is beyond.
   */
  boolean separates(String one, String other) {
    return isPair(one, other) || isPair(other, one);
  }

  private boolean isPair(String in, String out) {
    return inside.contains(in)
        && (outside.isEmpty() ? !inside.contains(out) : outside.contains(out));
  }

  /** Sum of the resistances between two neighbours [m2 K/W]. */
  static double sum(List<ThinResistance> all, String one, String other) {
    double sum = 0;
    for (ThinResistance resistance : all) {
      if (resistance.separates(one, other)) {
        sum += resistance.resistance();
      }
    }
    return sum;
  }
}
