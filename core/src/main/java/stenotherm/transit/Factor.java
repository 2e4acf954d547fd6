package stenotherm.transit;

import stenotherm.ambient.Stowage;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;

/**
 * The uncertain quantities of a transit.
 *
 * <p>Experimental. Thread-safe.
 */
public enum Factor {
  /** Conductivity of all wall layers, over the range that each material states. */
  WALL_CONDUCTIVITY("insulation of the walls"),
  /** Conductivity of the fill, over the range that it states. */
  FILL_CONDUCTIVITY("insulation of the fill"),
  /** All surface coefficients, times {@link #FILM_FACTORS}. */
  SURFACE_FILM("heat exchange with the air outside"),
  /** Power of all warmers, times the strength that each states. */
  WARMER_STRENGTH("warmer strength"),
  /** Temperatures of the air and of things that touch the parcel, by the spread of each leg. */
  AMBIENT("temperature outside"),
  /** Absorptance of the parcel's outside for the sun, over the range that each leg states. */
  SOLAR_ABSORPTANCE("how much sun the box takes up"),
  /**
   * Heat that air carries through seams, as a share of what walls conduct: {@link #LEAKAGES}.
   * Nominal is none, and so is everything below.
   */
  LEAKAGE("leaking seams"),
  /**
   * How deep a parcel lies where it lies among others: from the outside of the pile to its middle,
   * see {@link stenotherm.ambient.Stowage#depth}. There is nothing beyond the ends.
   */
  STOWAGE("depth among other parcels");

  /** What leaking seams add to the conductivity of all wall layers [-]; 0 is nominal. */
  public static final Range LEAKAGES = new Range(0, 0.22);

  /** Where that range comes from. */
  public static final Source LEAKAGE_SOURCE =
      Source.assumed(
          "0.15 to 1.25 L/min of air through seams make an animal beside a 2 W warmer 0.4 K to 2.5 K"
              + " colder, of some 14 K: up to 0.22 of what walls conduct");

  /** Range of the factor on surface coefficients. */
  public static final Range FILM_FACTORS = new Range(0.7, 1.4);

  /** Where that range comes from. */
  public static final Source FILM_SOURCE =
      Source.assumed(
          "surface coefficients of a parcel among others lie within 0.7 to 1.4 of the rule's");

  private final String words;

  Factor(String words) {
    this.words = words;
  }

  /**
   * Tells whether a packing on a journey depends on this quantity.
   *
   * @param parcel the packing
   * @param journey the journey
   * @return false if it changes nothing
   */
  public boolean matters(Parcel parcel, Journey journey) {
    return switch (this) {
      case WARMER_STRENGTH -> !parcel.warmers().isEmpty();
      case SOLAR_ABSORPTANCE ->
          journey.legs().stream().anyMatch(leg -> leg.surroundings().hasSun());
      case STOWAGE ->
          journey.legs().stream()
              .anyMatch(leg -> leg.surroundings().stowage() == Stowage.AMONG_OTHERS);
      case WALL_CONDUCTIVITY, FILL_CONDUCTIVITY, SURFACE_FILM, AMBIENT, LEAKAGE -> true;
    };
  }

  /**
   * Returns the words that reports use.
   *
   * @return for example "insulation of the walls"
   */
  public String words() {
    return words;
  }
}
