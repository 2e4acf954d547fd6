package stenotherm.text;

import org.jspecify.annotations.Nullable;

/**
 * The one exception for a document that cannot be accepted. Its message is {@code file:line:column:
 * key.path (owner): what is wrong, what is allowed}, without the key path where the fault belongs
 * to no key, and with an owner only where somebody named one.
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

  /** What the value at fault belongs to; empty if nobody said. */
  private final String owner;

  /**
   * Creates the exception.
   *
   * @param position where the fault is
   * @param path the key path at fault, for example {@code journey.legs[2].ambient}; empty if the
   *     fault belongs to no key
   * @param problem what is wrong and what is allowed, as a clause that follows the path
   */
  public TextFormatException(TextPosition position, String path, String problem) {
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
      TextPosition position, String path, String problem, @Nullable Throwable cause) {
    this(position, path, "", problem, cause);
  }

  private TextFormatException(
      TextPosition position, String path, String owner, String problem, @Nullable Throwable cause) {
    super(position + ": " + prefix(path, owner) + problem, cause);
    this.file = position.file();
    this.line = position.line();
    this.column = position.column();
    this.path = path;
    this.owner = owner;
    this.problem = problem;
  }

  private static String prefix(String path, String owner) {
    if (path.isEmpty()) {
      return "";
    }
    return owner.isEmpty() ? path + ": " : path + " (" + owner + "): ";
  }

  /**
   * The same fault, with the name of what the value belongs to, so that a user need not count the
   * items of a list.
   *
   * @param name the name, for example of a packing; comes before names given earlier
   * @return the fault to throw instead of this one
   */
  public TextFormatException in(String name) {
    String both = owner.isEmpty() ? Messages.plain(name) : Messages.plain(name) + ", " + owner;
    return new TextFormatException(position(), path, both, problem, getCause());
  }

  /**
   * Returns where the fault is.
   *
   * @return the place in the file
   */
  public TextPosition position() {
    return new TextPosition(file, line, column);
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
