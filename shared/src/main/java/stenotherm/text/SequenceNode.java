package stenotherm.text;

import java.util.List;
import stenotherm.base.Range;

/**
 * A list of a document, {@code [a, b]} or lines that start with a dash.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class SequenceNode implements Node {
  private final TextPosition position;
  private final String path;
  private final List<Node> items;

  /** What a complaint about this list ends with. */
  private final String hint;

  SequenceNode(TextPosition position, String path, List<Node> items, String hint) {
    this.position = position;
    this.path = path;
    this.items = List.copyOf(items);
    this.hint = hint;
  }

  @Override
  public TextFormatException fail(String problem) {
    return new TextFormatException(position, path, problem + hint);
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
    return "a list";
  }

  @Override
  public SequenceNode asSequence() {
    return this;
  }

  /**
   * Returns the items in the file's order.
   *
   * @return the items, unmodifiable, possibly none
   */
  public List<Node> items() {
    return items;
  }

  /**
   * Returns the items as single values.
   *
   * @return the items in the file's order
   * @throws TextFormatException if an item is not a single value
   */
  public List<ScalarNode> scalars() {
    return items.stream().map(Node::asScalar).toList();
  }

  /**
   * Returns the items as mappings.
   *
   * @return the items in the file's order
   * @throws TextFormatException if an item is not a mapping
   */
  public List<MappingNode> mappings() {
    return items.stream().map(Node::asMapping).toList();
  }

  /**
   * Checks the number of items.
   *
   * @param count how many there must be
   * @return this
   * @throws TextFormatException if there are more or fewer
   */
  public SequenceNode requireSize(int count) {
    if (items.size() != count) {
      throw fail("must have " + count + " items, not " + items.size());
    }
    return this;
  }

  @Override
  public Range temperatureRange() {
    requireSize(2);
    ScalarNode low = items.get(0).asScalar();
    ScalarNode high = items.get(1).asScalar();
    return Quantity.orderedRange(
        this,
        low.temperature(),
        high.temperature(),
        "[" + low.text() + ", " + high.text() + "]",
        "[" + high.text() + ", " + low.text() + "]");
  }
}
