package stenotherm.transit;

/**
 * What solves the heat equation of a transit.
 *
 * <p>Experimental. Thread-safe.
 */
public enum Solver {
  /**
   * A reduced model where the parcel allows it: a few modes under coefficients that are frozen for
   * each leg. Where something melts, or coefficients are to follow the temperatures, the full
   * solver takes its place; the result says so.
   */
  REDUCED,
  /**
   * Every cell, under the same frozen coefficients as the reduced model: what the reduction leaves
   * can be seen from the difference.
   */
  FULL
}
