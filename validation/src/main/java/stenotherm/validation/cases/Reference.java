package stenotherm.validation.cases;

import java.util.OptionalDouble;

/**
 * A value that an output must have.
 *
 * @param probe name of the output
 * @param time when [s]; empty in a steady case
 * @param expected the value and how close the output must come to it
 * @param source where the value comes from
 * @param why why the tolerance is what it is; empty if nobody says
 */
record Reference(String probe, OptionalDouble time, Expected expected, String source, String why) {
  /**
   * A value with its tolerance.
   *
   * @param value the value [unit]
   * @param tolerance largest error that passes [unit], 0 or above
   * @param unit the unit
   */
  record Expected(double value, double tolerance, ReferenceUnit unit) {}
}
