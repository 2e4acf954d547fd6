package stenotherm.parcel;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.material.Material;

/**
 * One layer of a wall.
 *
 * <p>A value, thus thread-safe.
 *
 * @param material what it is made of
 * @param thickness thickness [m], above 0
 */
public record WallLayer(Material material, double thickness) {
  /**
   * Checks the thickness.
   *
   * @throws stenotherm.base.InvalidInputException if it is not above 0, or the material melts
   */
  public WallLayer {
    Checks.given("material", material);
    Checks.extent("thickness of a layer of " + material.name(), thickness);
    requireSolid("layer of " + material.name(), material);
  }

  /** Refuses what melts: only packs may. */
  static void requireSolid(String field, Material material) {
    if (material.behaviour().fusion().isPresent()) {
      throw new InvalidInputException(
          field, "'" + material.name() + "' melts, which only a pack may");
    }
  }

  /** The layer at a position in its range of conductivity. */
  WallLayer at(double position) {
    return new WallLayer(material.at(position), thickness);
  }
}
