package stenotherm.scenario;

import java.util.List;
import java.util.Optional;
import stenotherm.text.Faults;
import stenotherm.text.MappingNode;
import stenotherm.text.Node;
import stenotherm.text.ScalarNode;
import stenotherm.text.SequenceNode;

/**
 * A mapping of the file, read by its part of the vocabulary. A value that the file leaves out comes
 * from the key's preset and is listed among the assumptions.
 */
final class KeyedSection {
  private final MappingNode node;
  private final FilePart part;
  private final Assumptions assumptions;

  private KeyedSection(MappingNode node, FilePart part, Assumptions assumptions) {
    this.node = node;
    this.part = part;
    this.assumptions = assumptions;
  }

  /** Takes the keys that the part has; {@link #checkKeys} refuses others. */
  static KeyedSection of(Node node, FilePart part, Assumptions assumptions) {
    List<String> keys = part.keys().stream().map(Key::name).toList();
    MappingNode mapping = node.asMapping().only(keys).withKeys(part.rule());
    return new KeyedSection(mapping, part, assumptions);
  }

  /**
   * Looks for keys that a part and the parts in it do not have, and for lists without items: a key
   * without items is simply left out.
   */
  static void checkKeys(MappingNode node, FilePart part, Faults faults) {
    faults.attempt(() -> node.withKeys(part.rule()));
    for (Key key : part.keys()) {
      Node value = node.optional(key.name()).orElse(null);
      if (value != null) {
        faults.attempt(() -> filled(value));
      }
      for (FilePart inner : key.form().parts()) {
        List<Node> nodes = value instanceof SequenceNode list ? list.items() : List.of();
        if (value instanceof MappingNode mapping) {
          checkKeys(mapping, inner, faults);
        }
        for (Node each : nodes) {
          if (each instanceof MappingNode mapping) {
            Faults within = new Faults();
            checkKeys(mapping, inner, within);
            faults.attempt(() -> Names.within(mapping, () -> within.get(Optional.of(mapping))));
          }
        }
      }
    }
  }

  Assumptions assumptions() {
    return assumptions;
  }

  MappingNode node() {
    return node;
  }

  private static Node filled(Node value) {
    if (value instanceof SequenceNode list && list.items().isEmpty()) {
      throw value.fail("must not be an empty list, write an item or leave the key out");
    }
    return value;
  }

  Node require(String key) {
    return filled(node.require(key));
  }

  Optional<Node> optional(String key) {
    return node.optional(key).map(KeyedSection::filled);
  }

  boolean has(String key) {
    return node.optional(key).isPresent();
  }

  /** What the file gives, or what stands in for it everywhere. */
  Node value(String key) {
    Key.Preset preset = part.key(key).preset();
    return optional(key).orElseGet(() -> presetValue(key, preset));
  }

  /** What the file gives, or what stands in for it here. */
  Node value(String key, String preset, String basis) {
    return optional(key).orElseGet(() -> presetValue(key, new Key.Preset(preset, basis, "")));
  }

  private ScalarNode presetValue(String key, Key.Preset preset) {
    if (preset.text().isEmpty()) {
      throw new IllegalArgumentException("nothing stands in for '" + key + "'");
    }
    tell(key, preset.text(), preset.basis());
    return node.preset(key, preset.text());
  }

  /** Lists a preset that stands for a value the file leaves out. */
  void tell(String key, String value, String basis) {
    assumptions.preset(part.name(), key, value, basis);
  }
}
