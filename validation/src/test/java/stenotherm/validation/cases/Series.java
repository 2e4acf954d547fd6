package stenotherm.validation.cases;

/**
 * The series of a slab that is insulated at x = 0 and has a film at x = L: Carslaw and Jaeger,
 * Conduction of Heat in Solids, 2nd edition, section 3.11.
 */
final class Series {
  private static final int TERMS = 200;

  private Series() {}

  /** Root of r tan r = Bi between n pi and (n + 1/2) pi, by bisection. */
  static double root(double biot, int n) {
    double low = n * Math.PI;
    double high = (n + 0.5) * Math.PI;
    for (int step = 0; step < 60; step++) {
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

  /** Coefficient of cos(r x / L) in the expansion of 1. */
  static double weight(double root) {
    return 4 * Math.sin(root) / (2 * root + Math.sin(2 * root));
  }

  /** (T - T_ambient) / (T_start - T_ambient) at x / L. */
  static double slab(double biot, double fourier, double position) {
    double sum = 0;
    for (int n = 0; n < TERMS; n++) {
      double root = root(biot, n);
      sum += weight(root) * Math.exp(-root * root * fourier) * Math.cos(root * position);
    }
    return sum;
  }

  /** The mean of {@link #slab} over the slab. */
  static double slabMean(double biot, double fourier) {
    double sum = 0;
    for (int n = 0; n < TERMS; n++) {
      double root = root(biot, n);
      sum += weight(root) * Math.exp(-root * root * fourier) * Math.sin(root) / root;
    }
    return sum;
  }
}
