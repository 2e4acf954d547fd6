package stenotherm.scenario;

import java.util.Optional;
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

  /**
   * Refuses keys that the part does not have and lists without items, before any value is read: a
   * key without items is simply left out.
   */
  static KeyedSection of(Node node, FilePart part, Assumptions assumptions) {
    MappingNode mapping = node.asMapping().withKeys(part.rule());
    for (String key : mapping.keys()) {
      Node value = mapping.require(key);
      if (value instanceof SequenceNode list && list.items().isEmpty()) {
        throw value.fail("must not be an empty list, write an item or leave the key out");
      }
    }
    return new KeyedSection(mapping, part, assumptions);
  }

  Assumptions assumptions() {
    return assumptions;
  }

  MappingNode node() {
    return node;
  }

  Node require(String key) {
    return node.require(key);
  }

  Optional<Node> optional(String key) {
    return node.optional(key);
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
