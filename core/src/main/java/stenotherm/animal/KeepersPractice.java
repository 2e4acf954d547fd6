package stenotherm.animal;

import stenotherm.base.Source;

/**
 * What keepers do with whole groups of animals, without a published source, and the cautions that
 * many animals share.
 */
final class KeepersPractice {
  static final String COMPILATION = "Bennett et al. 2018, GlobTherm, Scientific Data 5:180022";

  static final Source REPTILES =
      Source.practice(
          "Lizards and snakes of temperate and tropical origin travel at 18 °C to 29 °C; below 10"
              + " °C or above 32 °C is a cause for alarm");

  /** Colder alarm than that of reptiles at large, for geckos and other animals of the tropics. */
  static final Source TROPICAL_REPTILES =
      Source.practice(
          "Geckos and other lizards of the tropics are not left below 15 °C or above 32 °C");

  static final Source COOL_FOREST_GECKOS =
      Source.practice(
          "Geckos of cool island forests are kept at 18 °C to 26 °C; below 16 °C and above 28 °C is"
              + " a cause for alarm, and more than 29 °C for long has killed them");

  static final Source MOUNTAIN_CHAMELEONS =
      Source.practice(
          "Chameleons of cool mountains are kept at 16 °C to 26 °C by day, cooler at night, and not"
              + " above 29 °C for long");

  static final Source PYTHONS =
      Source.practice(
          "Ball pythons are kept at 25 °C to 34 °C and travel at 20 °C to 29 °C, warmer than other"
              + " snakes");

  static final Source FROGS =
      Source.practice("Frogs travel at 15 °C to 24 °C; above 27 °C is a cause for alarm");

  static final Source POISON_FROGS =
      Source.practice(
          "Poison frogs travel at 18 °C to 24 °C; below 16 °C or above 27 °C is a cause for alarm");

  static final Source TROPICAL_FROGS =
      Source.practice(
          "Frogs of the warm tropics are kept at 20 °C to 27 °C; below 16 °C or above 29 °C is a"
              + " cause for alarm");

  static final Source COOL_FROGS =
      Source.practice(
          "Frogs and toads of temperate origin travel at 12 °C to 22 °C; below 6 °C or above 26 °C"
              + " is a cause for alarm");

  static final Source COOL_SALAMANDERS =
      Source.practice("Salamanders of cool woods travel at 8 °C to 18 °C");

  static final Source AQUATIC_SALAMANDERS =
      Source.practice(
          "Salamanders that live in water are kept at 10 °C to 20 °C; water above 23 °C harms them,"
              + " and below 5 °C is a cause for alarm");

  static final Source JUMPING_SPIDERS =
      Source.practice("Keepers hold jumping spiders at 21 °C to 27 °C");

  static final Source BURROWING_SPIDERS =
      Source.practice(
          "Tarantulas that burrow are kept at 20 °C to 28 °C; below 15 °C or above 32 °C, which a"
              + " burrow spares them, is a cause for alarm. Grammostola vachoni sought 25 °C to 29"
              + " °C (Schwerdt et al. 2020, Can. J. Zool.)");

  static final Source TROPICAL_SNAILS =
      Source.practice(
          "Land snails of the tropics are kept at 20 °C to 27 °C; below 16 °C or above 30 °C is a"
              + " cause for alarm");

  static final Source COOL_SNAILS =
      Source.practice(
          "Land snails of temperate origin travel at 8 °C to 20 °C; below 4 °C or above 26 °C is a"
              + " cause for alarm");

  static final Source LAND_HERMIT_CRABS =
      Source.practice(
          "Land hermit crabs are kept at 22 °C to 29 °C; below 18 °C or above 32 °C is a cause for"
              + " alarm");

  static final Source WOODLICE =
      Source.practice("Keepers hold woodlice of temperate origin at 15 °C to 24 °C");

  static final String RAMPED =
      "What it is taken to bear for a moment comes from tests that last minutes: nothing says that"
          + " it bears as much for hours.";

  static final String NO_LIMITS =
      "How cold and how hot it may be for a moment is not known, nor of a near relative: it must"
          + " not leave its temperatures for a moment.";

  static final String WARM_KEPT =
      "An animal kept warm, or fed just before, stands cold worse than these numbers say.";

  static final String DRIES_OUT =
      "It dries out quickly: heat without moisture harms it sooner than these temperatures say.";

  /** How far above the temperature that an animal prefers the alarm is raised [K]. */
  private static final String ABOVE_PREFERRED = "3 K above it, because a parcel leaves no way out";

  private KeepersPractice() {}

  /** The hot end of an alarm band that may not lie below what the animal prefers. */
  static Source abovePreferred(String work, String preferred, String cold) {
    return Source.derived(
        work, preferred + ": the hot end is " + ABOVE_PREFERRED + " (assumed). Cold end: " + cold);
  }
}
