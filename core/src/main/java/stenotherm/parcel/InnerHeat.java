package stenotherm.parcel;

/**
 * Heat that other physics than conduction releases or takes up inside a parcel. Each kind that a
 * network is asked for adds sources after those of the warmers, in the order of this list; they
 * stand at zero until something drives them. A source takes up heat where its power is negative, as
 * by evaporation.
 *
 * <p>Thread-safe.
 */
public enum InnerHeat {
  /**
   * Latent heat of packs that melt as one body, and what their solid holds less than their liquid:
   * spread over the pack by volume. One source for each such pack, named by {@link #ofPack}.
   */
  PACKS,

  /**
   * Each animal's own heat: spread over its tissue by volume. One source for each occupied
   * container, named by {@link #ofAnimal}.
   */
  ANIMALS,

  /**
   * Latent heat of the water in each container's bedding: spread by volume over all layers that
   * hold water. Water leaves a damp layer at its surface, but millimetres of it are nearly of one
   * temperature. One source for each container with such a layer, named by {@link #ofBedding}.
   */
  BEDDING,

  /**
   * Heat that air brings along as it comes and goes: spread over the filling by volume. One source,
   * named by {@link #ofVentilation}.
   */
  VENTILATION,

  /**
   * Latent heat of water that condenses on the walls or freezes there: spread over their innermost
   * layers by volume. One source, named by {@link #ofWalls}. A source for each face would add five
   * inputs to every reduced basis; that it is one moves an animal by -0.2 to +0.6 K at most, were
   * all of it on a side wall or on the floor (85 mW in a cold parcel with damp bedding and a
   * warmer).
   */
  WALLS;

  /**
   * Names the source of the latent heat of a pack.
   *
   * @param pack the pack
   * @return the name
   */
  public static String ofPack(PlacedPack pack) {
    return pack.name() + " latent heat";
  }

  /**
   * Names the source of an animal's own heat.
   *
   * @param container the container that it is in
   * @return the name, that of the animal's block
   */
  public static String ofAnimal(Container container) {
    return container.animalBlock();
  }

  /**
   * Names the source of the latent heat of a container's bedding.
   *
   * @param container the container
   * @return the name
   */
  public static String ofBedding(Container container) {
    return container.name() + " latent heat";
  }

  /**
   * Names the source of the heat that air brings along.
   *
   * @return the name
   */
  public static String ofVentilation() {
    return "ventilation";
  }

  /**
   * Names the source of the latent heat on the walls.
   *
   * @return the name
   */
  public static String ofWalls() {
    return "latent heat of the walls";
  }
}
