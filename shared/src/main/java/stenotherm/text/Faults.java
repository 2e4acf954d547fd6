package stenotherm.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Collects the faults of a document, so that a person can mend all of them at once. Not
 * thread-safe.
 *
 * <p>Experimental.
 */
public final class Faults {
  private final List<TextFormatException> found = new ArrayList<>();

  /** Starts without a fault. */
  public Faults() {}

  /**
   * Runs an action and keeps its fault.
   *
   * @param <T> what the action reads
   * @param action reads a part of the document
   * @return what it read; empty if it found a fault
   */
  public <T> Optional<T> attempt(Supplier<T> action) {
    try {
      return Optional.of(action.get());
    } catch (TextFormatException fault) {
      found.add(fault);
      return Optional.empty();
    }
  }

  /**
   * Keeps a fault.
   *
   * @param fault the fault
   */
  public void add(TextFormatException fault) {
    found.add(fault);
  }

  /**
   * Tells whether there is no fault yet.
   *
   * @return true if all was well so far
   */
  public boolean isEmpty() {
    return found.isEmpty();
  }

  /**
   * Returns all faults in one.
   *
   * @return the faults; empty if there is none
   */
  public Optional<TextFormatException> all() {
    return found.isEmpty() ? Optional.empty() : Optional.of(TextFormatException.all(found));
  }

  /**
   * Throws the faults.
   *
   * @throws TextFormatException if there are any
   */
  public void throwIfAny() {
    if (!found.isEmpty()) {
      throw TextFormatException.all(found);
    }
  }

  /**
   * Returns what an attempt read, if none failed.
   *
   * @param <T> what was read
   * @param read what an attempt returned
   * @return what it read
   * @throws TextFormatException if any attempt found a fault
   */
  public <T> T get(Optional<T> read) {
    throwIfAny();
    return read.orElseThrow();
  }
}
