package stenotherm.grid;

import java.util.Optional;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.material.Material;
import stenotherm.material.Melting;

/**
 * A named box of a layout: solid material, or an environment.
 *
 * <p>Values, thus thread-safe.
 */
public sealed interface Block {
  /**
   * Returns the name by which boundaries, sources and probes refer to the block.
   *
   * @return the name, unique in a layout
   */
  String name();

  /**
   * Returns the extent, including what later blocks override.
   *
   * @return the box
   */
  Box box();

  /**
   * Returns the part of the box that the block fills.
   *
   * @return the shape; an environment fills its box
   */
  default Shape shape() {
    return Shape.BOX;
  }

  /**
   * Tells whether the block conducts and stores heat.
   *
   * @return false for an environment
   */
  default boolean isSolid() {
    return asSolid().isPresent();
  }

  /**
   * Returns the block as a solid one.
   *
   * @return this block; nothing if it is an environment
   */
  default Optional<Solid> asSolid() {
    return Optional.empty();
  }

  /**
   * Returns how the block melts.
   *
   * @return the melting of its material; nothing if it does not melt, or is an environment
   */
  default Optional<Melting> phaseChange() {
    return Optional.empty();
  }

  /**
   * A block that conducts and stores heat.
   *
   * @param name name, unique in a layout
   * @param box extent
   * @param material its material
   * @param shape what part of the box it fills
   * @param fineEdges whether cells are small at its faces, see {@link MeshControl#edgeCell}
   */
  record Solid(String name, Box box, Material material, Shape shape, boolean fineEdges)
      implements Block {
    /**
     * A block that fills its box.
     *
     * @param name name, unique in a layout
     * @param box extent
     * @param material its material
     * @throws InvalidInputException if the name is blank
     */
    public Solid(String name, Box box, Material material) {
      this(name, box, material, Shape.BOX);
    }

    /**
     * A block whose edges get no cells of their own.
     *
     * @param name name, unique in a layout
     * @param box extent
     * @param material its material
     * @param shape what part of the box it fills
     * @throws InvalidInputException if the name is blank
     */
    public Solid(String name, Box box, Material material, Shape shape) {
      this(name, box, material, shape, false);
    }

    /**
     * Checks the name.
     *
     * @throws InvalidInputException if the name is blank
     */
    public Solid {
      Checks.given("name", name);
      Checks.given("box", box);
      Checks.given("material", material);
      Checks.given("shape", shape);
      Checks.name("block name", name);
    }

    /**
     * The same block with small cells at its faces: for one that gives off or takes up heat and
     * conducts better than what is around it, so that much of the heat passes at its edges.
     *
     * @return the changed block
     */
    public Solid withFineEdges() {
      return new Solid(name, box, material, shape, true);
    }

    @Override
    public Optional<Solid> asSolid() {
      return Optional.of(this);
    }

    @Override
    public Optional<Melting> phaseChange() {
      return material.behaviour().phaseChange();
    }
  }

  /**
   * A block that is not solid, such as a room or the air around a bar. Every face between it and a
   * solid cell is a boundary with the surface coefficient and the ambient temperature of this
   * environment.
   *
   * @param name name, unique in a layout
   * @param box extent
   */
  record Environment(String name, Box box) implements Block {
    /**
     * Checks the name.
     *
     * @throws InvalidInputException if the name is blank
     */
    public Environment {
      Checks.given("name", name);
      Checks.given("box", box);
      Checks.name("environment name", name);
    }
  }
}
