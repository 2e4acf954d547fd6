package stenotherm.scenario;

import java.util.Optional;
import stenotherm.text.MappingNode;
import stenotherm.text.Node;
import stenotherm.text.ScalarNode;

/**
 * A mapping of the file, read by its part of the vocabulary. A value that the file leaves out comes
 * from the key's preset and is told among the assumptions.
 */
final class Section {
  private final MappingNode node;
  private final Part part;
  private final Assumptions assumptions;

  private Section(MappingNode node, Part part, Assumptions assumptions) {
    this.node = node;
    this.part = part;
    this.assumptions = assumptions;
  }

  static Section of(Node node, Part part, Assumptions assumptions) {
    return new Section(node.asMapping().withKeys(part.rule()), part, assumptions);
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

  /** What the file gives, or what stands in for it. */
  Node value(String key) {
    Key.Preset preset = part.key(key).preset();
    return optional(key).orElseGet(() -> presetValue(key, preset));
  }

  private ScalarNode presetValue(String key, Key.Preset preset) {
    if (preset.text().isEmpty()) {
      throw new IllegalArgumentException("nothing stands in for '" + key + "'");
    }
    tell(key, preset.text(), preset.basis());
    return node.preset(key, preset.text());
  }

  /** Tells of a value that stands in for one that the file leaves out. */
  void tell(String key, String value, String basis) {
    assumptions.preset(part.name(), key, value, basis);
  }
}
