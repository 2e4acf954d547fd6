package stenotherm.scenario;

import java.util.function.Supplier;
import stenotherm.text.MappingNode;
import stenotherm.text.ScalarNode;
import stenotherm.text.TextFormatException;

/** Tells in a complaint what the items of a list are called, so that nobody has to count them. */
final class Names {
  private Names() {}

  /** Runs an action that reads an item; faults inside it carry its name if it has one. */
  static <T> T within(MappingNode item, Supplier<T> action) {
    try {
      return action.get();
    } catch (TextFormatException faults) {
      String name = nameOf(item);
      throw TextFormatException.all(
          faults.faults().stream()
              .map(
                  fault ->
                      fault.path().startsWith(item.path()) && !name.isEmpty()
                          ? fault.in(name)
                          : fault)
              .toList());
    }
  }

  private static String nameOf(MappingNode item) {
    return item.optional("name")
        .filter(ScalarNode.class::isInstance)
        .map(node -> (ScalarNode) node)
        .filter(node -> !node.isBlank())
        .map(ScalarNode::text)
        .orElse("");
  }
}
