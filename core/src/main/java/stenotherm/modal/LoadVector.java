package stenotherm.modal;

import java.util.Arrays;

/**
 * A right-hand side b of (G + s C) x = b: heat that each cell gets [W], with a list of the few
 * cells that get any. Immutable.
 */
final class LoadVector {
  private final double[] load;
  private final int[] at;

  /**
   * Lists the cells that get heat.
   *
   * @param load a vector; must not be changed afterwards
   */
  LoadVector(double[] load) {
    this.load = load;
    int[] found = new int[load.length];
    int count = 0;
    for (int i = 0; i < load.length; i++) {
      if (load[i] != 0) {
        found[count++] = i;
      }
    }
    at = Arrays.copyOf(found, count);
  }

  /** The vector; not to be changed. */
  double[] vector() {
    return load;
  }

  /** Sum of the magnitudes. */
  double magnitude() {
    double sum = 0;
    for (int i : at) {
      sum += Math.abs(load[i]);
    }
    return sum;
  }

  /** The product with a state. */
  double product(double[] x) {
    double sum = 0;
    for (int i : at) {
      sum += load[i] * x[i];
    }
    return sum;
  }
}
