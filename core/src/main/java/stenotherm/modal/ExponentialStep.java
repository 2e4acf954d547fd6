package stenotherm.modal;

/**
 * The exact step of dz/dt = -lambda z + f for f linear in time, and of the integral of z, for all
 * modes of a system and one step length. Immutable.
 *
 * <p>With phi_0(x) = exp x and phi_(k+1)(x) = (phi_k(x) - 1/k!) / x, at x = -lambda dt,
 *
 * <pre>
 * z(dt)        = phi_0 z + dt (phi_1 f(0) + phi_2 (f(dt) - f(0)))
 * integral z   = dt phi_1 z + dt^2 (phi_2 f(0) + phi_3 (f(dt) - f(0)))
 * </pre>
 *
 * <p>Source of the functions: Hochbruck and Ostermann (2010), Exponential integrators, Acta
 * Numerica 19:209, from memory; the recurrence and the integrals are derived.
 */
final class ExponentialStep {
  /** Below it the recurrence would lose digits; a series is used instead. */
  private static final double SERIES_BELOW = 1;

  private static final int TERMS = 20;

  final double[] decay;
  final double[] phi1;
  final double[] phi2;
  final double[] phi3;

  /** The step length [s]. */
  final double duration;

  ExponentialStep(double[] lambda, double duration) {
    this.duration = duration;
    decay = new double[lambda.length];
    phi1 = new double[lambda.length];
    phi2 = new double[lambda.length];
    phi3 = new double[lambda.length];
    for (int i = 0; i < lambda.length; i++) {
      double x = lambda[i] * duration;
      if (x < SERIES_BELOW) {
        phi3[i] = series(x);
        phi2[i] = 0.5 - x * phi3[i];
        phi1[i] = 1 - x * phi2[i];
        decay[i] = 1 - x * phi1[i];
      } else {
        decay[i] = Math.exp(-x);
        phi1[i] = (1 - decay[i]) / x;
        phi2[i] = (1 - phi1[i]) / x;
        phi3[i] = (0.5 - phi2[i]) / x;
      }
    }
  }

  /** phi_3(-x) = sum of (-x)^k / (k + 3)!, by nested multiplication. */
  private static double series(double x) {
    double sum = 1;
    for (int k = TERMS; k > 0; k--) {
      sum = 1 - x / (k + 3) * sum;
    }
    return sum / 6;
  }

  /**
   * Takes the step.
   *
   * @param force forces at the start
   * @param later forces at the end
   * @param z amplitudes, replaced by those at the end
   * @param integral where to put the integral of the amplitudes over the step
   */
  void take(double[] force, double[] later, double[] z, double[] integral) {
    double dt = duration;
    for (int j = 0; j < z.length; j++) {
      double before = z[j];
      double start = dt * force[j];
      double change = dt * (later[j] - force[j]);
      z[j] = decay[j] * before + (phi1[j] * start + phi2[j] * change);
      integral[j] = dt * (phi1[j] * before + (phi2[j] * start + phi3[j] * change));
    }
  }
}
