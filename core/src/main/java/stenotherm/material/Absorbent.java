package stenotherm.material;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Source;

/**
 * A pad of fibres that takes up water: a kitchen towel, moss, coir.
 *
 * <p>Dry matter, water and air share the volume; the pad neither swells nor sags. Their arrangement
 * is not known, so the conductivity lies between two bounds: the geometric mean of the three
 * weighted by volume, as for a random mixture, and the parallel arrangement, which none exceeds.
 * The value is the geometric mean of the two. Density and specific heat follow from the masses.
 *
 * <p>Limits: the water stays where it is. Evaporation, which takes 0.68 W for each gram per hour,
 * is not part of a material.
 *
 * <p>A value, thus thread-safe.
 *
 * @param dry the dry pad with the air in it
 * @param matter what its fibres are made of, without air; denser than the pad
 */
public record Absorbent(Material dry, Material matter) {
  private static final String LAW =
      "Mixing bounds for dry matter, water and air: geometric mean as lower, side by side as upper"
          + " bound, the value being the geometric mean of the two; density and specific heat by"
          + " mass";

  /**
   * Checks the densities.
   *
   * @throws InvalidInputException if the matter is not denser than the pad
   */
  public Absorbent {
    Checks.given("dry material", dry);
    Checks.given("matter", matter);
    Checks.within(
        "density of " + dry.name(),
        dry.density(),
        new Range(0, matter.density()),
        "kg/m3",
        "A pad holds air, so it is less dense than its fibres.");
  }

  /**
   * Returns the most water that the pad can hold, with all its air replaced.
   *
   * @return mass of water over mass of dry matter [-]
   */
  public double mostWater() {
    return (1 - matterFraction()) * Materials.WATER.density() / dry.density();
  }

  /**
   * Returns the pad with water in it.
   *
   * @param name name of the moist material
   * @param water mass of water over mass of dry matter [-], 0 to {@link #mostWater}
   * @return the moist material; its range of conductivity holds the bounds
   * @throws InvalidInputException if the pad cannot hold that much
   */
  public Material with(String name, double water) {
    Checks.within(
        "water in " + dry.name(),
        water,
        new Range(0, mostWater()),
        "g/g",
        "More would not fit between its fibres.");
    double waterFraction = water * dry.density() / Materials.WATER.density();
    double airFraction = 1 - matterFraction() - waterFraction;
    double solid = matter.conductivity();
    double liquid = Materials.WATER.conductivity();
    double gas = Materials.STILL_AIR.conductivity();
    double lower =
        Math.pow(solid, matterFraction())
            * Math.pow(liquid, waterFraction)
            * Math.pow(gas, airFraction);
    double upper = matterFraction() * solid + waterFraction * liquid + airFraction * gas;
    double heat = (dry.specificHeat() + water * Materials.WATER.specificHeat()) / (1 + water);
    return new Material(
        name,
        Math.sqrt(lower * upper),
        new Range(lower, upper),
        dry.density() * (1 + water),
        heat,
        Source.assumed(
            LAW
                + "; "
                + Checks.show(water, "g")
                + " of water per gram and "
                + Checks.show(dry.density(), "kg/m3")
                + " of dry matter"));
  }

  private double matterFraction() {
    return dry.density() / matter.density();
  }
}
