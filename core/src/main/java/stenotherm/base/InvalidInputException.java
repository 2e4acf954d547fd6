package stenotherm.base;

import java.io.Serializable;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

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

  /** The number at fault; null if the fault is not that a number is out of bounds. */
  private final @Nullable Bounds bounds;

  /**
   * Creates the exception.
   *
   * @param field the name of the input at fault, in the words of the public API, for example {@code
   *     "fill conductivity"}
   * @param problem what is wrong with it and what is allowed, as a clause that follows "field: "
   */
  public InvalidInputException(String field, String problem) {
    this(field, problem, null);
  }

  /** A number out of bounds, which readers of files say again in the unit that was typed. */
  InvalidInputException(String field, String problem, @Nullable Bounds bounds) {
    super(MessageText.of(field + ": " + problem));
    this.field = field;
    this.problem = problem;
    this.bounds = bounds;
  }

  /**
   * A number that is out of bounds.
   *
   * @param value the number [unit]
   * @param least smallest number allowed [unit]
   * @param most largest number allowed [unit]; infinite if there is none
   * @param above whether it must be above the smallest, not equal to it
   * @param unit the unit, in SI
   * @param hint what to check, as a sentence; may be empty
   */
  public record Bounds(
      double value, double least, double most, boolean above, String unit, String hint)
      implements Serializable {}

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

  /**
   * Returns the number at fault, so that whoever knows the unit that was typed can say it there.
   *
   * @return number and bounds; empty if the fault is another
   */
  public Optional<Bounds> bounds() {
    return Optional.ofNullable(bounds);
  }
}
