package stenotherm.transit;

/**
 * A leg or a part of one that has coefficients of its own.
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
