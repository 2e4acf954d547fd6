package stenotherm.base;

/**
 * The one exception for a value that the library cannot accept. It names the field, the value with
 * its unit, what is allowed, and a hint where one helps, in at most {@value MessageText#LONGEST}
 * printable characters.
 *
 * <p>Immutable, thus thread-safe.
 */
public final class InvalidInputException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** Name of the input at fault. */
  private final String field;

  /** What is wrong with it. */
  private final String problem;

  /**
   * Creates the exception.
   *
   * @param field the name of the input at fault, in the words of the public API, for example {@code
   *     "fill conductivity"}
   * @param problem what is wrong with it and what is allowed, as a clause that follows "field: "
   */
  public InvalidInputException(String field, String problem) {
    super(MessageText.of(field + ": " + problem));
    this.field = field;
    this.problem = problem;
  }

  /**
   * Returns the name of the input at fault.
   *
   * @return the field's name
   */
  public String field() {
    return field;
  }

  /**
   * Returns what is wrong, without the field's name.
   *
   * @return the problem as a clause
   */
  public String problem() {
    return problem;
  }
}
