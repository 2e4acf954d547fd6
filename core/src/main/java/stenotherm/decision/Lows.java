package stenotherm.decision;

/**
 * Overnight lows at both ends of a journey.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param origin the low where the parcel is sent from [K]
 * @param destination the low where it is sent to [K]
 */
public record Lows(double origin, double destination) {
  /**
   * The same low at both ends.
   *
   * @param kelvin the low [K]
   * @return the lows
   */
  public static Lows equal(double kelvin) {
    return new Lows(kelvin, kelvin);
  }

  /** A point on the straight way to other lows, 0 here, 1 there. */
  Lows towards(Lows other, double share) {
    return new Lows(
        origin + share * (other.origin - origin),
        destination + share * (other.destination - destination));
  }
}
