package stenotherm.validation.verification;

import java.util.ArrayList;
import java.util.List;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.Point;
import stenotherm.material.Material;

/** Layered slabs of one square metre along x. */
final class Slab {
  private Slab() {}

  /** A layer by material and thickness [m]. */
  record Layer(String name, Material material, double thickness) {}

  /** Layers in the order of x, from x = 0. */
  static Layout layout(List<Layer> layers) {
    double total = layers.stream().mapToDouble(Layer::thickness).sum();
    List<Block> blocks = new ArrayList<>();
    double start = 0;
    for (Layer layer : layers) {
      // the first block is the domain
      Box box =
          blocks.isEmpty()
              ? Box.ofSize(total, 1, 1)
              : new Box(new Point(start, 0, 0), new Point(total, 1, 1));
      blocks.add(new Block.Solid(layer.name(), box, layer.material()));
      start += layer.thickness();
    }
    return new Layout(blocks);
  }

  static Point at(double x) {
    return new Point(x, 0.5, 0.5);
  }
}
