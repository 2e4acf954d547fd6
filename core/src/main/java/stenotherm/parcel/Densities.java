package stenotherm.parcel;

import stenotherm.material.Material;

/** Materials whose mass is spread over another volume. */
final class Densities {
  private Densities() {}

  static Material with(Material material, double density) {
    return new Material(
        material.name(),
        material.conductivity(),
        material.conductivityRange(),
        density,
        material.specificHeat(),
        material.source(),
        material.behaviour());
  }
}
