package stenotherm.text;

import org.jspecify.annotations.Nullable;

/**
 * The one exception for a document that cannot be accepted. Its message is {@code file:line:column:
 * key.path: what is wrong, what is allowed}, without the key path where the fault belongs to no
 * key.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class TextFormatException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  // The position's parts, because exceptions are serializable and the position is not.

  /** The file's name. */
  private final String file;

  /** The line, counted from 1. */
  private final int line;

  /** The column, counted from 1. */
  private final int column;

  /** The key path. */
  private final String path;

  /** What is wrong. */
  private final String problem;

  /**
   * Creates the exception.
   *
   * @param position where the fault is
   * @param path the key path at fault, for example {@code journey.legs[2].ambient}; empty if the
   *     fault belongs to no key
   * @param problem what is wrong and what is allowed, as a clause that follows the path
   */
  public TextFormatException(Position position, String path, String problem) {
    this(position, path, problem, null);
  }

  /**
   * Creates the exception for a fault that another check found.
   *
   * @param position where the fault is
   * @param path the key path at fault; empty if the fault belongs to no key
   * @param problem what is wrong and what is allowed, as a clause that follows the path
   * @param cause what the other check said, or null
   */
  public TextFormatException(
      Position position, String path, String problem, @Nullable Throwable cause) {
    super(position + ": " + (path.isEmpty() ? "" : path + ": ") + problem, cause);
    this.file = position.file();
    this.line = position.line();
    this.column = position.column();
    this.path = path;
    this.problem = problem;
  }

  /**
   * Returns where the fault is.
   *
   * @return the place in the file
   */
  public Position position() {
    return new Position(file, line, column);
  }

  /**
   * Returns which key the fault belongs to.
   *
   * @return the key path, empty if the fault belongs to no key
   */
  public String path() {
    return path;
  }

  /**
   * Returns what is wrong, without place and key.
   *
   * @return the problem as a clause
   */
  public String problem() {
    return problem;
  }
}
