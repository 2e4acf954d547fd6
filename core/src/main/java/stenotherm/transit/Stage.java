package stenotherm.transit;

/**
 * A part of a leg that is computed under coefficients of its own.
 *
 * @param leg position of the leg
 * @param from its beginning, since sealing [s]
 * @param to its end [s]
 */
record Stage(int leg, double from, double to) {
  double duration() {
    return to - from;
  }
}
