package stenotherm.scenario;

import java.util.List;
import stenotherm.parcel.Position;
import stenotherm.text.Node;
import stenotherm.text.ScalarNode;

/** Reads where things stand. */
final class Positions {
  private Positions() {}

  /** Distances from the middle, and if wanted a height above the floor. */
  static Position onFloor(Node node) {
    List<ScalarNode> offsets = node.asSequence().scalars();
    if (offsets.size() != 2 && offsets.size() != 3) {
      throw node.fail(
          "must be the distances from the middle along length and width, and if wanted the height"
              + " above the floor, write for example [10 mm, 0 mm]");
    }
    double x = offsets.get(0).length();
    double y = offsets.get(1).length();
    double z = offsets.size() == 3 ? offsets.get(2).length() : 0;
    return node.locate(() -> new Position(x, y, z));
  }
}
