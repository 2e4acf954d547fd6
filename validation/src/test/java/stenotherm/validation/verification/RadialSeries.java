package stenotherm.validation.verification;

import org.apache.commons.math3.special.BesselJ;

/**
 * Exact solutions for bodies at one temperature after a step of the ambient beyond a film: (T -
 * T_ambient) / (T_start - T_ambient). Carslaw and Jaeger, Conduction of Heat in Solids, 2nd
 * edition, sections 7.7 (cylinder) and 9.4 (sphere). The Biot number is h r / k, the Fourier number
 * a t / r², with r the outer radius.
 */
final class RadialSeries {
  private static final int TERMS = 60;

  private RadialSeries() {}

  /** An infinite cylinder at a position r / r_outer. */
  static double cylinder(double biot, double fourier, double position) {
    double sum = 0;
    for (int n = 0; n < TERMS; n++) {
      double root = cylinderRoot(biot, n);
      double j0 = BesselJ.value(0, root);
      double j1 = BesselJ.value(1, root);
      double weight = 2 * j1 / (root * (j0 * j0 + j1 * j1));
      sum += weight * Math.exp(-root * root * fourier) * BesselJ.value(0, root * position);
    }
    return sum;
  }

  /** The coefficient of the first term at the axis. */
  static double cylinderCoefficient(double biot) {
    double root = cylinderRoot(biot, 0);
    double j0 = BesselJ.value(0, root);
    double j1 = BesselJ.value(1, root);
    return 2 * j1 / (root * (j0 * j0 + j1 * j1));
  }

  /**
   * Root of z J1(z) = Bi J0(z); one lies in each interval of about pi, and J0 changes sign once.
   */
  static double cylinderRoot(double biot, int n) {
    // J0 falls from 1 to its first zero at 2.405; its zeros are close to (n + 3/4) pi, those of J1
    // close to (n + 1/4) pi: the root lies between a zero of J1 and the next one of J0
    double low = n == 0 ? 1e-12 : (n + 0.1) * Math.PI;
    double high = (n + 0.8) * Math.PI;
    double sign = n % 2 == 0 ? 1 : -1;
    return bisect(low, high, z -> sign * (z * BesselJ.value(1, z) - biot * BesselJ.value(0, z)));
  }

  /** A sphere at a position r / r_outer. */
  static double sphere(double biot, double fourier, double position) {
    double sum = 0;
    for (int n = 0; n < TERMS; n++) {
      double root = sphereRoot(biot, n);
      double argument = root * position;
      double shape = position == 0 ? 1 : Math.sin(argument) / argument;
      sum += sphereCoefficient(root) * Math.exp(-root * root * fourier) * shape;
    }
    return sum;
  }

  static double sphereCoefficient(double root) {
    return 4 * (Math.sin(root) - root * Math.cos(root)) / (2 * root - Math.sin(2 * root));
  }

  /** Root of 1 - z cot z = Bi between n pi and (n + 1) pi. */
  static double sphereRoot(double biot, int n) {
    double sign = n % 2 == 0 ? 1 : -1;
    return bisect(
        Math.max(1e-12, n * Math.PI),
        (n + 1) * Math.PI,
        z -> sign * ((1 - biot) * Math.sin(z) - z * Math.cos(z)));
  }

  private static double bisect(
      double from, double to, java.util.function.DoubleUnaryOperator risingThroughZero) {
    double low = from;
    double high = to;
    for (int step = 0; step < 100; step++) {
      double middle = (low + high) / 2;
      if (risingThroughZero.applyAsDouble(middle) < 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }
}
