package stenotherm.text;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;

/**
 * A place in a file.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 *
 * @param file the file's name as the reader was told it
 * @param line the line, counted from 1
 * @param column the column, counted from 1 in Unicode characters
 */
public record TextPosition(String file, int line, int column) {
  /**
   * Checks the components.
   *
   * @param file the file's name
   * @param line the line
   * @param column the column
   * @throws InvalidInputException if the file's name is blank or a number is below 1
   */
  public TextPosition {
    Checks.name("file name", file);
    if (line < 1 || column < 1) {
      throw new InvalidInputException(
          "position", line + ":" + column + ": line and column are counted from 1");
    }
  }

  /**
   * Returns the place in the form that editors and terminals turn into a link.
   *
   * @return {@code file:line:column}
   */
  @Override
  public String toString() {
    return file + ":" + line + ":" + column;
  }
}
