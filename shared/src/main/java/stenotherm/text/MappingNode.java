package stenotherm.text;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import stenotherm.base.Range;

/**
 * Keys with their values. A mapping whose keys matter is read through {@link #withKeys}, which
 * refuses every key that the reader does not understand before a value is looked at.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class MappingNode implements Node {
  /** How the problem of a key that the file does not give begins. */
  public static final String MISSING = "is missing and must be given";

  /** A value and where its key stands. */
  record Entry(TextPosition keyPosition, Node value) {}

  private final TextPosition position;
  private final String path;
  private final Map<String, Entry> entries;
  private final @Nullable Keys keys;

  MappingNode(TextPosition position, String path, Map<String, Entry> entries) {
    this(position, path, Collections.unmodifiableMap(new LinkedHashMap<>(entries)), null);
  }

  private MappingNode(
      TextPosition position, String path, Map<String, Entry> entries, @Nullable Keys keys) {
    this.position = position;
    this.path = path;
    this.entries = entries;
    this.keys = keys;
  }

  @Override
  public TextPosition position() {
    return position;
  }

  @Override
  public String path() {
    return path;
  }

  @Override
  public String kind() {
    return "lines of 'key: value'";
  }

  @Override
  public MappingNode asMapping() {
    return this;
  }

  @Override
  public SequenceNode asSequence() {
    throw fail(
        "must be a list: begin each item with '- ', or put it into brackets as in [{key: value}]; it is "
            + kind());
  }

  /**
   * Refuses every key that is not among those given.
   *
   * @param allowed the keys that the reader understands
   * @return this mapping, from which only those keys can be taken
   * @throws TextFormatException if the mapping has other keys; all of them are reported
   */
  public MappingNode withKeys(Keys allowed) {
    Faults faults = new Faults();
    for (String key : entries.keySet()) {
      String problem = allowed.problemWith(key);
      if (!problem.isEmpty()) {
        faults.add(failAt(key, problem));
      }
    }
    faults.throwIfAny();
    return new MappingNode(position, path, entries, allowed);
  }

  /**
   * Returns this mapping without its other keys, for a part of it that is read by rules of its own.
   *
   * @param some keys, given by the file or not
   * @return the keys among them that the file gives
   */
  public MappingNode only(Collection<String> some) {
    Map<String, Entry> left = new LinkedHashMap<>(entries);
    left.keySet().retainAll(some);
    return new MappingNode(position, path, left);
  }

  /**
   * Returns this mapping with another value of a key, given by the file or not.
   *
   * @param key the key
   * @param value its value; complaints about it name the place where it stands
   * @return the changed mapping, of which any key can be taken
   */
  public MappingNode with(String key, Node value) {
    Map<String, Entry> changed = new LinkedHashMap<>(entries);
    changed.put(key, new Entry(value.position(), value));
    return new MappingNode(position, path, changed);
  }

  /**
   * Returns the keys that the file gives.
   *
   * @return the keys in the file's order, unmodifiable
   */
  public Set<String> keys() {
    return entries.keySet();
  }

  /**
   * Returns the value of a key that must be given.
   *
   * @param key the key
   * @return its value
   * @throws TextFormatException if the file does not give it
   * @throws IllegalArgumentException if the key is not among those stated with {@link #withKeys}
   */
  public Node require(String key) {
    return optional(key)
        .orElseThrow(
            () -> new TextFormatException(position, pathOf(path, key), MISSING + example(key)));
  }

  private String example(String key) {
    String example = keys == null ? "" : keys.exampleOf(key);
    return example.isEmpty() ? "" : ", write for example " + key + ": " + example;
  }

  /**
   * Returns a value that stands in for one that the file does not give. Complaints about it name
   * the place of this mapping.
   *
   * @param key a key that the file does not give
   * @param text what the file could have given
   * @return the text as the key's value
   * @throws IllegalArgumentException if the file gives the key, or it is not among those stated
   *     with {@link #withKeys}
   */
  public ScalarNode preset(String key, String text) {
    if (optional(key).isPresent()) {
      throw new IllegalArgumentException("the file gives '" + key + "'");
    }
    return new ScalarNode(position, pathOf(path, key), text);
  }

  /**
   * Returns the value of a key that may be left out.
   *
   * @param key the key
   * @return its value, empty if the file does not give it
   * @throws IllegalArgumentException if the key is not among those stated with {@link #withKeys}
   */
  public Optional<Node> optional(String key) {
    if (keys != null && !keys.contains(key)) {
      throw new IllegalArgumentException(
          "'" + key + "' is not among the keys stated for this mapping");
    }
    return Optional.ofNullable(entries.get(key)).map(Entry::value);
  }

  /**
   * Returns where a key stands. The place of its value is {@link Node#position} of the value.
   *
   * @param key a key that the file gives
   * @return the place in the file
   * @throws IllegalArgumentException if the file does not give it
   */
  public TextPosition keyPosition(String key) {
    Entry entry = entries.get(key);
    if (entry == null) {
      throw new IllegalArgumentException("the mapping has no key '" + key + "'");
    }
    return entry.keyPosition();
  }

  /**
   * Makes the exception for a fault of a key, rather than of its value. The caller throws it.
   *
   * @param key a key that the file gives
   * @param problem what is wrong and what is allowed, as a clause that follows the key path
   * @return the exception
   * @throws IllegalArgumentException if the file does not give the key
   */
  public TextFormatException failAt(String key, String problem) {
    return new TextFormatException(keyPosition(key), pathOf(path, key), problem);
  }

  @Override
  public Range temperatureRange() {
    throw fail(Quantity.RANGE_FORM);
  }

  static String pathOf(String parent, String key) {
    return parent.isEmpty() ? key : parent + "." + key;
  }
}
