package stenotherm.scenario;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stenotherm.text.Keys;

/**
 * A kind of mapping in a scenario file.
 *
 * @param name what it describes, for headings
 * @param meaning what it is, as a sentence
 * @param keys its keys in the order in which messages and the reference page list them
 * @param refused keys that are refused by name, with the reason as a clause
 */
record FilePart(String name, String meaning, List<Key> keys, Map<String, String> refused) {
  FilePart {
    keys = List.copyOf(keys);
    refused = new LinkedHashMap<>(refused);
  }

  /** The name as links have it. */
  String anchor() {
    return name.replace(' ', '-');
  }

  Key key(String name) {
    return keys.stream()
        .filter(key -> key.name().equals(name))
        .findFirst()
        .orElseThrow(
            () -> new IllegalArgumentException("'" + name + "' is no key of " + this.name));
  }

  /** The rule by which the reader refuses other keys. */
  Keys rule() {
    Keys rule = Keys.of(keys.stream().map(Key::name).toArray(String[]::new));
    for (Key key : keys) {
      rule = rule.example(key.name(), key.form().pastedExample());
    }
    for (Map.Entry<String, String> each : refused.entrySet()) {
      rule = rule.refuse(each.getKey(), each.getValue());
    }
    return rule.otherWords(EverydayWords.KEYS).within(deeper());
  }

  /** The keys of the parts in this one, each with the first key here under which it stands. */
  private Map<String, String> deeper() {
    Map<String, String> deeper = new LinkedHashMap<>();
    for (Key key : keys) {
      for (FilePart inner : key.form().parts()) {
        inner.keys().forEach(each -> deeper.putIfAbsent(each.name(), key.name()));
      }
    }
    return deeper;
  }
}
