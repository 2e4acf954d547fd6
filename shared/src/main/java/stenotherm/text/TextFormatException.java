package stenotherm.text;

import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import stenotherm.base.MessageText;

/**
 * The one exception for a document that cannot be accepted. Its message is {@code file:line:column:
 * key.path (owner): what is wrong, what is allowed}, without the key path where the fault belongs
 * to no key, and with an owner only where somebody named one, in at most 300 printable characters.
 * Several faults of one document may come in one exception, a line each.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class TextFormatException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** Longest file name or key path that a message shows. */
  private static final int LONGEST_NAME = 80;

  private static final int MOST_SHOWN = 20;

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

  /** All faults, if there are several. */
  private final TextFormatException[] others;

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
    super(
        MessageText.of(
            end(position.file())
                + ":"
                + position.line()
                + ":"
                + position.column()
                + ": "
                + prefix(end(path), owner)
                + problem),
        cause);
    this.others = new TextFormatException[0];
    this.file = position.file();
    this.line = position.line();
    this.column = position.column();
    this.path = path;
    this.owner = owner;
    this.problem = problem;
  }

  private TextFormatException(TextFormatException first, TextFormatException[] faults) {
    super(
        Arrays.stream(faults)
                .limit(MOST_SHOWN)
                .map(Throwable::getMessage)
                .collect(Collectors.joining("\n"))
            + (faults.length > MOST_SHOWN
                ? "\nand " + (faults.length - MOST_SHOWN) + " more faults"
                : ""),
        first);
    this.file = first.file;
    this.line = first.line;
    this.column = first.column;
    this.path = first.path;
    this.owner = first.owner;
    this.problem = first.problem;
    this.others = faults;
  }

  /**
   * Several faults of a document in one exception. Its message has a line for each of the first
   * twenty, in the order of their places; place, path and problem are those of the first.
   *
   * @param faults the faults, at least one; of several faults of one value the first counts
   * @return the exception; the fault itself if there is only one
   */
  public static TextFormatException all(List<TextFormatException> faults) {
    Map<String, TextFormatException> each = new LinkedHashMap<>();
    faults.stream()
        .flatMap(fault -> fault.faults().stream())
        .sorted(
            Comparator.<TextFormatException>comparingInt(fault -> fault.line)
                .thenComparingInt(fault -> fault.column))
        .forEach(fault -> each.putIfAbsent(fault.position() + fault.path, fault));
    TextFormatException[] sorted = each.values().toArray(new TextFormatException[0]);
    return sorted.length == 1 ? sorted[0] : new TextFormatException(sorted[0], sorted);
  }

  /**
   * Returns the faults, each with a message of one line.
   *
   * @return the faults in the order of their places; this one if it is the only one
   */
  public List<TextFormatException> faults() {
    return others.length == 0 ? List.of(this) : List.of(others);
  }

  /** The end of a name or path, which says more than its start. */
  private static String end(String name) {
    return name.length() > LONGEST_NAME
        ? "…" + name.substring(name.length() - LONGEST_NAME + 1)
        : name;
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
