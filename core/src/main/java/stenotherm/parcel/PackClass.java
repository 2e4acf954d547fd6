package stenotherm.parcel;

import stenotherm.base.Checks;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.material.Behaviour;
import stenotherm.material.Material;

/**
 * A pack that stores cold or heat: a gel, a melting salt, a bottle of water.
 *
 * <p>Its mass counts: the block has the pack's size and as much heat capacity and latent heat as
 * the mass holds.
 *
 * <p>A value, thus thread-safe.
 *
 * @param name name
 * @param contents what is in it; it melts if its behaviour is {@link Behaviour.Melts} or {@link
 *     Behaviour.MeltsAsOneBody}
 * @param size length, width and, as the height, the thickness of the flat pack
 * @param mass mass of the contents [kg], above 0
 * @param wrap resistance of unit area of pouch and wrapping [m2 K/W], 0 if bare
 * @param source where size and mass come from
 */
public record PackClass(
    String name, Material contents, Dimensions size, double mass, double wrap, Source source) {
  /** The caution that every output must carry where a pack melts or freezes. */
  public static final String SUPERCOOLING_CAUTION =
      "Assumes that a pack freezes at the temperature at which it melts; real ones may stay liquid"
          + " several degrees below it, which is not computed.";

  /** Bulk density of a pack over the density of its contents [-]: assumed. */
  private static final Range FILLING = new Range(0.5, 1.1);

  /**
   * Checks the numbers.
   *
   * @throws stenotherm.base.InvalidInputException if the name is blank, a number out of its range,
   *     or the mass does not fit the size
   */
  public PackClass {
    Checks.given("name", name);
    Checks.given("contents", contents);
    Checks.given("size", size);
    Checks.given("source", source);
    Checks.name("pack name", name);
    Checks.positive("mass of pack '" + name + "'", mass, "kg");
    Checks.notNegative("wrap of pack '" + name + "'", wrap, "m2 K/W");
    double full = size.volume() * contents.density();
    Checks.within(
        "mass of pack '" + name + "'",
        mass,
        new Range(FILLING.low() * full, FILLING.high() * full),
        "kg",
        "A pack of this size, filled with "
            + contents.name()
            + ", weighs "
            + Checks.show(full, "kg")
            + ".");
  }

  /**
   * Tells whether the contents melt.
   *
   * @return true if their behaviour is to melt
   */
  public boolean melts() {
    return contents.behaviour().fusion().isPresent();
  }

  /** The same pack, which melts as one body where it melts. */
  PackClass asOneBody() {
    return contents
        .behaviour()
        .phaseChange()
        .map(
            melting ->
                contents.liquid(
                    melting,
                    new Behaviour.MeltsAsOneBody(
                        melting, contents.specificHeat(), contents.conductivity())))
        .map(one -> new PackClass(name, one, size, mass, wrap, source))
        .orElse(this);
  }

  /** The contents, spread over the size of the pack. */
  Material spread() {
    return Densities.with(contents, mass / size.volume());
  }
}
