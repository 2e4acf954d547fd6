package stenotherm.text;

import java.util.function.Supplier;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;

/**
 * A value of a document that knows its place.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public sealed interface Node permits MappingNode, SequenceNode, ScalarNode {
  /**
   * Returns where the value starts.
   *
   * @return the place in the file
   */
  TextPosition position();

  /**
   * Returns how the value is reached from the top of the document.
   *
   * @return the key path, for example {@code journey.legs[2].ambient}; empty for the document
   *     itself
   */
  String path();

  /**
   * Returns what the value is, in the words of messages.
   *
   * @return for example {@code "a list"}
   */
  String kind();

  /**
   * Returns this value as a mapping.
   *
   * @return this
   * @throws TextFormatException if it is not a mapping
   */
  default MappingNode asMapping() {
    throw fail("must be lines of 'key: value', not " + kind());
  }

  /**
   * Returns this value as a list.
   *
   * @return this
   * @throws TextFormatException if it is not a list
   */
  default SequenceNode asSequence() {
    throw fail("must be a list, not " + kind());
  }

  /**
   * Returns this value as a single text.
   *
   * @return this
   * @throws TextFormatException if it is not a single text
   */
  default ScalarNode asScalar() {
    throw fail("must be a single value, not " + kind());
  }

  /**
   * Reads two temperatures, written as {@code 28 to 45 °F}, {@code 28 °F to 45 °F}, {@code 28-45
   * °F} or {@code [28 °F, 45 °F]}.
   *
   * @return the range [K]
   * @throws TextFormatException if the value is not a range of temperatures with its unit, the
   *     lower end first
   */
  Range temperatureRange();

  /**
   * Makes the exception for a fault of this value. The caller throws it.
   *
   * @param problem what is wrong and what is allowed, as a clause that follows the key path
   * @return the exception
   */
  default TextFormatException fail(String problem) {
    return new TextFormatException(position(), path(), problem);
  }

  /**
   * Runs an action that builds something from this value and gives a fault that it finds this
   * value's place, and a number out of bounds the unit that this value has. Where the fault names
   * the key itself as its field, the name is not repeated.
   *
   * @param <T> what the action builds
   * @param action the action
   * @return what the action returned
   * @throws TextFormatException if the action threw an {@link InvalidInputException}, with that as
   *     its cause
   */
  default <T> T locate(Supplier<T> action) {
    String key = path().substring(path().lastIndexOf('.') + 1);
    return locate(key, action);
  }

  /**
   * Runs an action that builds something from this value and gives a fault that it finds this
   * value's place.
   *
   * @param <T> what the action builds
   * @param known a field that the message need not name, because its place or owner says it
   * @param action the action
   * @return what the action returned
   * @throws TextFormatException if the action threw an {@link InvalidInputException}, with that as
   *     its cause
   */
  default <T> T locate(String known, Supplier<T> action) {
    try {
      return action.get();
    } catch (InvalidInputException fault) {
      String field = fault.field();
      String problem =
          this instanceof ScalarNode scalar && !scalar.isBlank()
              ? Quantity.problem(scalar.text(), fault)
              : fault.problem();
      boolean repeats = field.equals(known);
      throw new TextFormatException(
          position(), path(), repeats ? problem : field + ": " + problem, fault);
    }
  }
}
