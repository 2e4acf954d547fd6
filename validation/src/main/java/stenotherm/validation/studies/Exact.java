package stenotherm.validation.studies;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.special.BesselJ;
import org.apache.commons.math3.special.Erf;

/**
 * Closed forms and series (Carslaw and Jaeger, Conduction of Heat in Solids, 2nd edition).
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class Exact {
  private static final int TERMS = 60;

  private Exact() {}

  /** Root between two arguments of a function that rises through zero. */
  static double root(double from, double to, DoubleUnaryOperator function) {
    double low = from;
    double high = to;
    for (int turn = 0; turn < 100; turn++) {
      double middle = (low + high) / 2;
      if (function.applyAsDouble(middle) < 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /**
   * A body that cools beyond a film: slab of half thickness r insulated in the middle, infinite
   * cylinder, sphere. Bi = h r / k, Fo = a t / r2 (sections 3.11, 7.7, 9.4).
   */
  public enum CoolingShape {
    /** Between two parallel faces. */
    SLAB {
      @Override
      public double root(double biot, int n) {
        double sign = n % 2 == 0 ? 1 : -1;
        return Exact.root(
            n * Math.PI, (n + 0.5) * Math.PI, z -> sign * (z * Math.sin(z) - biot * Math.cos(z)));
      }

      @Override
      public double weight(double root) {
        return 4 * Math.sin(root) / (2 * root + Math.sin(2 * root));
      }

      @Override
      double shape(double argument) {
        return Math.cos(argument);
      }
    },
    /** Infinitely long. */
    CYLINDER {
      @Override
      public double root(double biot, int n) {
        // zeros of J1 are close to (n + 1/4) pi, those of J0 to (n + 3/4) pi
        double sign = n % 2 == 0 ? 1 : -1;
        return Exact.root(
            n == 0 ? 1e-12 : (n + 0.1) * Math.PI,
            (n + 0.8) * Math.PI,
            z -> sign * (z * BesselJ.value(1, z) - biot * BesselJ.value(0, z)));
      }

      @Override
      public double weight(double root) {
        double j0 = BesselJ.value(0, root);
        double j1 = BesselJ.value(1, root);
        return 2 * j1 / (root * (j0 * j0 + j1 * j1));
      }

      @Override
      double shape(double argument) {
        return BesselJ.value(0, argument);
      }
    },
    /** A ball. */
    SPHERE {
      @Override
      public double root(double biot, int n) {
        double sign = n % 2 == 0 ? 1 : -1;
        return Exact.root(
            Math.max(1e-12, n * Math.PI),
            (n + 1) * Math.PI,
            z -> sign * ((1 - biot) * Math.sin(z) - z * Math.cos(z)));
      }

      @Override
      public double weight(double root) {
        return 4 * (Math.sin(root) - root * Math.cos(root)) / (2 * root - Math.sin(2 * root));
      }

      @Override
      double shape(double argument) {
        return argument == 0 ? 1 : Math.sin(argument) / argument;
      }
    };

    /**
     * Returns a root of the series.
     *
     * @param biot Biot number, above 0
     * @param n number of the root, from 0
     * @return the root
     */
    public abstract double root(double biot, int n);

    /**
     * Returns what the term of a root counts in the middle at the start.
     *
     * @param root the root
     * @return the coefficient of the term
     */
    public abstract double weight(double root);

    abstract double shape(double argument);

    /**
     * Returns what is left of the first difference to the ambient.
     *
     * @param biot Biot number, above 0
     * @param fourier Fourier number, above 0
     * @param position r / r_outer, 0 to 1
     * @return (T - T_ambient) / (T_start - T_ambient)
     */
    public double cooling(double biot, double fourier, double position) {
      double sum = 0;
      for (int n = 0; n < TERMS; n++) {
        double root = root(biot, n);
        sum += weight(root) * Math.exp(-root * root * fourier) * shape(root * position);
      }
      return sum;
    }
  }

  /**
   * One melting front, solid at its melting temperature: sqrt(pi) x exp(x2) erf(x) = St (section
   * 11.2).
   */
  static double stefan(double number) {
    return root(1e-9, 3, x -> Math.sqrt(Math.PI) * x * Math.exp(x * x) * Erf.erf(x) - number);
  }

  /**
   * A phase between a surface and the front, or beyond the front.
   *
   * @param conductivity [W/(m K)]
   * @param diffusivity [m2/s]
   * @param difference how far the surface, or the start, is from the melting temperature [K]
   */
  record Phase(double conductivity, double diffusivity, double difference) {}

  /**
   * Neumann's front between two phases at 2 x sqrt(a t), a of the new phase (section 11.3).
   *
   * @param latent latent heat of unit volume [J/m3]
   */
  static double neumann(Phase fresh, Phase old, double latent) {
    double ratio = Math.sqrt(fresh.diffusivity() / old.diffusivity());
    double capacity = fresh.conductivity() / fresh.diffusivity();
    double number = capacity * fresh.difference() / latent;
    double part =
        old.conductivity() / fresh.conductivity() * ratio * (old.difference() / fresh.difference());
    return root(
        1e-9,
        3,
        x ->
            Math.sqrt(Math.PI) * x / number
                - Math.exp(-x * x) / Erf.erf(x)
                + part * Math.exp(-Math.pow(ratio * x, 2)) / Erf.erfc(ratio * x));
  }
}
