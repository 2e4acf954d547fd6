package stenotherm.transit;

import stenotherm.base.Range;
import stenotherm.base.Source;

/**
 * The uncertain quantities of a transit.
 *
 * <p>Experimental. Thread-safe.
 */
public enum Factor {
  /** Conductivity of all wall layers, over the range that each material states. */
  WALL_CONDUCTIVITY("wall conductivity"),
  /** Conductivity of the fill, over the range that it states. */
  FILL_CONDUCTIVITY("fill conductivity"),
  /** All surface coefficients, times {@link #FILM_FACTORS}. */
  SURFACE_FILM("surface film"),
  /** Power of all warmers, times the strength that each states. */
  WARMER_STRENGTH("warmer strength"),
  /** Temperatures of the air and of things that touch the parcel, by the spread of each leg. */
  AMBIENT("ambient temperature"),
  /** Absorptance of the parcel's outside for the sun, over the range that each leg states. */
  SOLAR_ABSORPTANCE("solar absorptance");

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
   * Returns the words that reports use.
   *
   * @return for example "wall conductivity"
   */
  public String words() {
    return words;
  }
}
