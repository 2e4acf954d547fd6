package stenotherm.transit;

/**
 * What solves the heat equation of a transit.
 *
 * <p>Experimental. Thread-safe.
 */
public enum Solver {
  /**
   * A few modes, under coefficients that are constant within a stage. Where coefficients are to
   * follow the temperatures, every cell is stepped all the same; the result says so.
   */
  REDUCED,
  /**
   * Every cell, under coefficients that are taken from the state as a leg begins and a quarter of
   * an hour, an hour and four hours later.
   */
  FULL
}
