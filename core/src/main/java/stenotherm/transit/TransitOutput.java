package stenotherm.transit;

import stenotherm.base.Checks;

/**
 * What is read of a parcel on its way.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param quantity which quantity
 * @param of name of the cup, warmer, pack, boundary or face that it belongs to
 */
public record TransitOutput(OutputQuantity quantity, String of) {
  /** The quantities. */
  public enum OutputQuantity {
    /**
     * Mean temperature of an animal, a warmer or a pack [K]. Of an animal it stands for the core of
     * the body, which is what the limits of {@link stenotherm.animal.Tolerance} mean.
     */
    MEAN("mean"),
    /** Temperature of the coldest part of an animal, a corner of its block [K]. */
    COLDEST("coldest"),
    /** Temperature of the hottest part of an animal or a warmer [K]. */
    HOTTEST("hottest"),
    /** Temperature in the middle of lid, floor or a side of a cup, just inside [K]. */
    PLACE("place"),
    /** Melted part of a pack, 0 to 1. */
    LIQUID_FRACTION("liquid fraction"),
    /** Mean temperature of a face or a part of one [K]. */
    SURFACE("surface"),
    /** Heat flow into the parcel through a face or a part of one [W]. */
    HEAT_FLOW("heat"),
    /** Temperature in the middle of a face of the cavity [K]. */
    INSIDE("inside");

    private final String words;

    OutputQuantity(String words) {
      this.words = words;
    }
  }

  /**
   * Checks the parts.
   *
   * @throws stenotherm.base.InvalidInputException if one is null
   */
  public TransitOutput {
    Checks.given("quantity of an output", quantity);
    Checks.given("name of an output", of);
  }

  /**
   * Returns the output in words, unique in a parcel.
   *
   * @return for example "cup coldest"
   */
  public String words() {
    return of + " " + quantity.words;
  }
}
