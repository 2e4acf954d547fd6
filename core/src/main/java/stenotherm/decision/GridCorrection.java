package stenotherm.decision;

/**
 * What finer grids would change in the temperatures of animals, from the nominal runs on three
 * grids (Richardson's extrapolation). Where both changes go in the same direction, the two finer
 * grids are extrapolated with the order of the scheme, 2: the smallest correction that an order up
 * to that allows. All of it counts as error, since cells between faces are whole numbers and an
 * observed order is mostly noise. Else nothing is extrapolated, and the larger change bounds the
 * error. Held against the full grid by the command {@code odds-agreement}.
 */
final class GridCorrection {
  /** Order of finite volumes for smooth fields. */
  private static final double ORDER = 2;

  /** Factor on a change where nothing is extrapolated. */
  static final double SAFETY = 1.25;

  private final boolean ordered;
  private final double error;

  /** What is added to the finest run: animal, time [K]. */
  private final double[][] added;

  /**
   * Compares three grids.
   *
   * @param coarse temperatures on the coarse grid: animal, time [K]
   * @param medium the same on the medium grid
   * @param fine the same on the fine grid
   * @param widths widths of the medium and the fine grid
   */
  GridCorrection(double[][] coarse, double[][] medium, double[][] fine, double[] widths) {
    double[][] first = difference(coarse, medium);
    double[][] second = difference(medium, fine);
    this.ordered = product(first, second) > 0;
    this.added = new double[fine.length][fine[0].length];
    double shrink = Math.pow(widths[1] / widths[0], ORDER);
    for (int animal = 0; ordered && animal < added.length; animal++) {
      for (int time = 0; time < added[animal].length; time++) {
        added[animal][time] = -second[animal][time] * shrink / (1 - shrink);
      }
    }
    this.error = ordered ? largest(added) : SAFETY * Math.max(largest(first), largest(second));
  }

  boolean isOrdered() {
    return ordered;
  }

  /** The largest correction, or a bound where there is none [K]. */
  double error() {
    return error;
  }

  double[][] added() {
    return added;
  }

  /** Difference of two histories: animal, time [K]. */
  static double[][] difference(double[][] one, double[][] other) {
    double[][] difference = new double[one.length][one[0].length];
    for (int animal = 0; animal < one.length; animal++) {
      for (int time = 0; time < one[animal].length; time++) {
        difference[animal][time] = one[animal][time] - other[animal][time];
      }
    }
    return difference;
  }

  /** The largest magnitude in a history. */
  static double largest(double[][] values) {
    double largest = 0;
    for (double[] row : values) {
      for (double value : row) {
        largest = Math.max(largest, Math.abs(value));
      }
    }
    return largest;
  }

  private static double product(double[][] one, double[][] other) {
    double sum = 0;
    for (int animal = 0; animal < one.length; animal++) {
      for (int time = 0; time < one[animal].length; time++) {
        sum += one[animal][time] * other[animal][time];
      }
    }
    return sum;
  }
}
