package stenotherm.animal;

/**
 * Groups of animals whose metabolism follows one law.
 *
 * <p>Thread-safe.
 */
public enum AnimalGroup {
  /** Lizards, snakes, tortoises. */
  REPTILE,
  /** Frogs and salamanders. */
  AMPHIBIAN,
  /** Spiders, insects, woodlice, snails and others without a backbone. */
  INVERTEBRATE
}
