package stenotherm.validation.cases;

/**
 * Where a case ends, accurate enough or not.
 *
 * @param cells most cells of a grid
 * @param bytes most memory of a grid [byte]
 * @param seconds longest time of a case on all its grids [s]
 */
record Limits(long cells, long bytes, double seconds) {
  /** The limits that hold unless a test sets others. */
  static final Limits STANDARD = new Limits(2_000_000, 2L << 30, 120);
}
