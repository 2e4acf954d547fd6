package stenotherm.conduction;

/**
 * What drives a network in time. It fills in the conditions at an instant or, at a jump, just
 * before it.
 */
interface Forcing {
  /** Conditions at a time; at a jump those after it. */
  void at(double time, Conditions into);

  /** Conditions in the limit from earlier times. */
  void before(double time, Conditions into);
}
