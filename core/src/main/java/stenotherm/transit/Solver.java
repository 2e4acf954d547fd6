package stenotherm.transit;

/**
 * What solves the heat equation of a transit.
 *
 * <p>Experimental. Thread-safe.
 */
public enum Solver {
  /**
   * The one that is likely to take less time: a reduced model, unless it would need so many modes
   * that stepping every cell takes less. A parcel in the shade needs few; the sun on its faces, and
   * many legs that differ, make many. Both have the same coefficients; the result says which ran.
   */
  FASTER,
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
