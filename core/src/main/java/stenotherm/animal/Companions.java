package stenotherm.animal;

/**
 * Which others of its kind may share an animal's container. Common practice, no source.
 *
 * <p>Thread-safe.
 */
public enum Companions {
  /** Nothing is known against others. */
  ANY,
  /** Others of its own size: a larger one eats a smaller one. */
  OF_ONE_SIZE,
  /** None: it eats its own kind, whatever their size. */
  NONE
}
