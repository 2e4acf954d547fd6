package stenotherm.animal;

/**
 * The three pairs of temperatures of a {@link Tolerance}, from the narrowest to the widest.
 *
 * <p>Thread-safe.
 */
public enum Limit {
  /** The band in which the animal is comfortable. */
  COMFORTABLE,
  /** The band outside which there is cause for alarm. */
  ALARM,
  /** The limits at which an animal fails within minutes in a ramped test. */
  CRITICAL
}
