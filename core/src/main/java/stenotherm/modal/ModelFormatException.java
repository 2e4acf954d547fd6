package stenotherm.modal;

import java.io.IOException;

/**
 * What was read is not a stored model, or it is damaged.
 *
 * <p>Experimental. Not thread-safe, as any exception.
 */
public final class ModelFormatException extends IOException {
  private static final long serialVersionUID = 1L;

  /** Name of what was to be read. */
  private final String field;

  /** How many bytes had been read. */
  private final long position;

  /**
   * Creates the exception.
   *
   * @param field name of what was to be read
   * @param position how many bytes of the stored model had been read
   * @param problem what is wrong with it, as a clause
   */
  public ModelFormatException(String field, long position, String problem) {
    super("stored model, " + field + " at byte " + position + ": " + problem);
    this.field = field;
    this.position = position;
  }

  /**
   * Returns the name of what was to be read.
   *
   * @return the field's name
   */
  public String field() {
    return field;
  }

  /**
   * Returns where the reading ended.
   *
   * @return number of bytes read, from the beginning of the stored model
   */
  public long position() {
    return position;
  }
}
