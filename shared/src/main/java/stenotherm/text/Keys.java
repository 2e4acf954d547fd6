package stenotherm.text;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Locale;
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
  private final Map<String, String> otherWords;
  private final Map<String, String> within;

  private Keys(
      Set<String> known,
      Map<String, String> refused,
      Map<String, String> examples,
      Map<String, String> otherWords,
      Map<String, String> within) {
    this.known = known;
    this.refused = refused;
    this.examples = examples;
    this.otherWords = otherWords;
    this.within = within;
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
    return new Keys(keys, Map.of(), Map.of(), Map.of(), Map.of());
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
    return new Keys(known, more, examples, otherWords, within);
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
    return new Keys(known, refused, more, otherWords, within);
  }

  /**
   * Adds words that people have for keys; a message about one names the key that is meant.
   *
   * @param words keys by such words; those that the reader does not understand here are ignored
   * @return a new rule
   */
  public Keys otherWords(Map<String, String> words) {
    Map<String, String> meant = new LinkedHashMap<>(words);
    meant.values().retainAll(known);
    return new Keys(known, refused, examples, meant, within);
  }

  /**
   * Adds keys that the reader understands one level deeper; a message about one says where.
   *
   * @param deeper by such a key the key under which it stands; those that the reader understands
   *     here as well are ignored
   * @return a new rule
   */
  public Keys within(Map<String, String> deeper) {
    Map<String, String> elsewhere = new LinkedHashMap<>(deeper);
    elsewhere.keySet().removeAll(known);
    return new Keys(known, refused, examples, otherWords, elsewhere);
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
    String meant = otherWords.get(key.toLowerCase(Locale.ROOT));
    if (meant != null) {
      return "unknown key. Did you mean '" + meant + "'?";
    }
    String above = within.get(key);
    return above == null
        ? "unknown key" + Messages.allowed(key, known)
        : "unknown key here, it stands indented under '" + above + "'";
  }
}
