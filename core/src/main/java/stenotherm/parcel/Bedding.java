package stenotherm.parcel;

import stenotherm.base.Checks;
import stenotherm.material.Absorbent;
import stenotherm.material.Material;
import stenotherm.material.Materials;

/**
 * A layer that lies on the floor of a container: a damp towel, damp moss, substrate.
 *
 * <p>Its water conducts and stores heat here; what evaporates is found by a run.
 *
 * <p>A value, thus thread-safe.
 *
 * @param name what it is called within its container, for example "towel"
 * @param material the layer as it lies there, its water included
 * @param thickness thickness [m], above 0
 * @param waterPerDryMass mass of water for each mass of dry bedding [kg/kg], 0 if it is dry
 */
public record Bedding(String name, Material material, double thickness, double waterPerDryMass) {
  /** Water in {@link Materials#DAMP_PAPER_TOWEL} [kg/kg]. */
  private static final double TOWEL_WATER = 3;

  /**
   * Checks the numbers.
   *
   * @throws stenotherm.base.InvalidInputException if the name is blank, the material melts, the
   *     thickness not above 0 or the water negative
   */
  public Bedding {
    Checks.given("name", name);
    Checks.given("material", material);
    Checks.name("bedding name", name);
    WallLayer.requireSolid("bedding", material);
    Checks.extent("thickness of the " + name, thickness);
    Checks.notNegative("water per dry mass of the " + name, waterPerDryMass, "kg/kg");
  }

  /**
   * A paper towel with 3 g of water to each gram of dry paper.
   *
   * @param thickness thickness [m], above 0
   * @return the bedding, named "towel"
   * @throws stenotherm.base.InvalidInputException if the thickness is not above 0
   */
  public static Bedding dampTowel(double thickness) {
    return new Bedding("towel", Materials.DAMP_PAPER_TOWEL, thickness, TOWEL_WATER);
  }

  /**
   * Sphagnum moss with 5 g of water to each gram of dry moss.
   *
   * @param thickness thickness [m], above 0
   * @return the bedding, named "moss"
   * @throws stenotherm.base.InvalidInputException if the thickness is not above 0
   */
  public static Bedding dampMoss(double thickness) {
    return new Bedding("moss", Materials.DAMP_SPHAGNUM, thickness, 5);
  }

  /**
   * Coconut fibre with 3 g of water to each gram of dry fibre.
   *
   * @param thickness thickness [m], above 0
   * @return the bedding, named "coir"
   * @throws stenotherm.base.InvalidInputException if the thickness is not above 0
   */
  public static Bedding dampCoir(double thickness) {
    return new Bedding("coir", Materials.DAMP_COIR, thickness, 3);
  }

  /**
   * Any pad of fibres with the water it holds.
   *
   * @param name what it is called within its container
   * @param pad the dry pad
   * @param thickness thickness [m], above 0
   * @param waterPerDryMass mass of water for each mass of dry bedding [kg/kg]
   * @return the bedding
   * @throws stenotherm.base.InvalidInputException if the name is blank, the thickness is not above
   *     0, or the pad cannot hold that much water
   */
  public static Bedding moist(
      String name, Absorbent pad, double thickness, double waterPerDryMass) {
    return new Bedding(
        name, pad.with("moist " + pad.dry().name(), waterPerDryMass), thickness, waterPerDryMass);
  }

  /** Part of the mass that is water. */
  double waterPart() {
    return waterPerDryMass / (1 + waterPerDryMass);
  }
}
