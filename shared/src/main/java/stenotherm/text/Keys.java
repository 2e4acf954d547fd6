package stenotherm.text;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;

/**
 * The keys that a mapping may have: those that the reader understands, and those that it knows but
 * refuses by name because the part they belong to does not exist yet.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class Keys {
  private final Set<String> known;
  private final Map<String, String> refused;
  private final Map<String, String> examples;

  private Keys(Set<String> known, Map<String, String> refused, Map<String, String> examples) {
    this.known = known;
    this.refused = refused;
    this.examples = examples;
  }

  /**
   * States the keys that the reader understands.
   *
   * @param known the keys, in the order in which messages list them
   * @return the rule
   * @throws InvalidInputException if a key is blank or named twice
   */
  public static Keys of(String... known) {
    Set<String> keys = new LinkedHashSet<>();
    for (String key : known) {
      if (!keys.add(Checks.name("key", key))) {
        throw new InvalidInputException("key", "'" + key + "' is named twice");
      }
    }
    return new Keys(keys, Map.of(), Map.of());
  }

  /**
   * Adds a key that is refused by name.
   *
   * @param key the key
   * @param reason what a user should know, as a clause, for example {@code "cold packs cannot be
   *     computed yet"}
   * @return a new rule
   * @throws InvalidInputException if the key is already named
   */
  public Keys refuse(String key, String reason) {
    if (known.contains(key) || refused.containsKey(key)) {
      throw new InvalidInputException("key", "'" + key + "' is named twice");
    }
    Map<String, String> more = new LinkedHashMap<>(refused);
    more.put(Checks.name("key", key), Checks.name("reason", reason));
    return new Keys(known, more, examples);
  }

  /**
   * Adds an example of a key's value, for the message that the key is missing.
   *
   * @param key a key that the reader understands
   * @param example its value as a file writes it
   * @return a new rule
   * @throws InvalidInputException if the reader does not understand the key
   */
  public Keys example(String key, String example) {
    if (!known.contains(key)) {
      throw new InvalidInputException("key", "'" + key + "' is not named yet");
    }
    Map<String, String> more = new LinkedHashMap<>(examples);
    more.put(key, Checks.name("example", example));
    return new Keys(known, refused, more);
  }

  String exampleOf(String key) {
    return examples.getOrDefault(key, "");
  }

  boolean contains(String key) {
    return known.contains(key);
  }

  /** Returns what is wrong with a key of a user's file, or nothing if the reader understands it. */
  String problemWith(String key) {
    if (known.contains(key)) {
      return "";
    }
    String reason = refused.get(key);
    if (reason != null) {
      return "cannot be used yet, " + reason;
    }
    return "unknown key" + Messages.allowed(key, known);
  }
}
