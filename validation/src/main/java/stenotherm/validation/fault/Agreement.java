package stenotherm.validation.fault;

import java.util.Locale;

/** Compares what is computed with what is known. */
final class Agreement {
  private Agreement() {}

  /** Requires a number to be the known one within a part of it. */
  static void same(String what, double expected, double computed, double relative) {
    near(what, expected, computed, relative * Math.abs(expected));
  }

  /** Requires a number to be the known one within a tolerance in its own unit. */
  static void near(String what, double expected, double computed, double tolerance) {
    if (!(Math.abs(computed - expected) <= tolerance)) {
      throw new IllegalStateException(
          String.format(Locale.ROOT, "%s is %.9g instead of %.9g", what, computed, expected));
    }
  }
}
