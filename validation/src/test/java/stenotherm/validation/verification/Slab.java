package stenotherm.validation.verification;

import java.util.ArrayList;
import java.util.List;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.Point;
import stenotherm.material.Material;

/** Layered slabs of one square metre along x, and exact solutions for a homogeneous one. */
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

  /**
   * A slab, insulated at x = 0 and with a film at x = L, after a step of the ambient: (T -
   * T_ambient) / (T_start - T_ambient) at x / L. Carslaw and Jaeger, Conduction of Heat in Solids,
   * 2nd edition, section 3.11.
   */
  static double cooling(double biot, double fourier, double position) {
    double sum = 0;
    for (int n = 0; n < 200; n++) {
      double root = root(biot, n);
      double decay = Math.exp(-root * root * fourier);
      double weight = 4 * Math.sin(root) / (2 * root + Math.sin(2 * root));
      sum += weight * decay * Math.cos(root * position);
    }
    return sum;
  }

  /** Root of r tan r = Bi between n pi and (n + 1/2) pi, by bisection. */
  private static double root(double biot, int n) {
    double low = n * Math.PI;
    double high = (n + 0.5) * Math.PI;
    for (int step = 0; step < 200; step++) {
      double middle = (low + high) / 2;
      // tan r - Bi / r, multiplied by r cos r (-1)^n > 0: no poles
      double sign = (n % 2 == 0 ? 1 : -1) * (middle * Math.sin(middle) - biot * Math.cos(middle));
      if (sign < 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }
}
