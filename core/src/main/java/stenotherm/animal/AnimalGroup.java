package stenotherm.animal;

import stenotherm.base.Source;

/**
 * Groups of animals whose metabolism follows one law.
 *
 * <p>Thread-safe.
 */
public enum AnimalGroup {
  /** Lizards, snakes, tortoises. */
  REPTILE(0.01),
  /** Frogs and salamanders. */
  AMPHIBIAN(1),
  /** Spiders, insects, woodlice, snails and others without a backbone. */
  INVERTEBRATE(0.02);

  /** Where surfaces and wet parts come from. */
  public static final Source SKIN_SOURCE =
      Source.derived(
          "10.47 cm2 m^0.688, m in g (default shape of the NicheMapR package)",
          "wet parts assumed: frogs lose water like free water, geckos 0.2 to 1 mg/(g h) in dry"
              + " air, a hundredth of that");

  /**
   * Water that an amphibian may give off before it is worth a caution, part of its mass [-]: half
   * of the least loss at which those of {@link #DRYING_SOURCE} slowed down.
   */
  public static final double DRYING = 0.1;

  /** What the loss of water does to amphibians. */
  public static final Source DRYING_SOURCE =
      Source.read(
          "Greenberg and Palen 2021, Hydrothermal physiology and climate vulnerability in"
              + " amphibians, Proc. R. Soc. B 288 (authors and journal from memory)",
          "abstract: three species kept moving well until they had lost 20 to 30 % of their mass,"
              + " then declined abruptly");

  private final double wetPart;

  AnimalGroup(double wetPart) {
    this.wetPart = wetPart;
  }

  /**
   * Returns the surface from which an animal evaporates as if it were free water, by {@link
   * #SKIN_SOURCE}.
   *
   * @param mass mass [kg]
   * @return the surface [m2]
   */
  public double wetSurface(double mass) {
    return wetPart * 10.4713e-4 * Math.pow(1000 * mass, 0.688);
  }
}
