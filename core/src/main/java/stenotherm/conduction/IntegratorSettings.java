package stenotherm.conduction;

import stenotherm.base.Checks;
import stenotherm.base.Range;

/**
 * How a transient is stepped.
 *
 * <p>A value, thus thread-safe.
 *
 * @param scheme time scheme
 * @param stepTolerance largest estimated local error of a step in any cell [K], before the
 *     correction by this estimate; not used with a fixed step
 * @param largestStep largest step [s]; the step itself where {@code fixed}
 * @param fixed true for equal steps of {@code largestStep}, shortened to end on outputs and jumps
 * @param conductivities whether conductivities follow the temperature during the run
 */
public record IntegratorSettings(
    Scheme scheme,
    double stepTolerance,
    double largestStep,
    boolean fixed,
    Conductivities conductivities) {
  /**
   * How to treat conductivities that depend on temperature, those of a {@link
   * stenotherm.material.Behaviour} {@code Corrected} or {@code Voids}. The conductivity of a
   * melting block follows its liquid fraction in any case.
   */
  public enum Conductivities {
    /** They stay as the materials state them, or as the caller has replaced them. */
    FROZEN,
    /**
     * They follow the temperature of each cell, unless the caller has replaced them. Each stage of
     * a step takes them from the state that the earlier ones extrapolate to, so that a step stays
     * linear and of second order.
     */
    LIVE
  }

  /** Time schemes. */
  public enum Scheme {
    /**
     * Trapezoidal rule and second-order backward difference: second order, L-stable, one matrix for
     * both stages. Bank et al. (1985), IEEE Trans. Electron Devices 32:1992; error estimate of
     * Hosea and Shampine (1996), Appl. Numer. Math. 20:21. Both from memory; order and stability
     * are tested. If nothing melts and the step is not fixed, the estimate, filtered twice, is
     * subtracted from the result, which makes the step third order and still L-stable (own
     * derivation, tested). With {@link Conductivities#LIVE} it is second order.
     */
    TR_BDF2,
    /** Implicit Euler: first order, L-stable, obeys the maximum principle. Fixed steps only. */
    BACKWARD_EULER
  }

  /** The step tolerance that keeps the time error of a two-day journey below 0.02 K [K]. */
  public static final double DEFAULT_STEP_TOLERANCE = 0.005;

  private static final Range TOLERANCE = new Range(1e-9, 10);

  /**
   * Checks the settings.
   *
   * @throws stenotherm.base.InvalidInputException if a number is out of range, or backward Euler is
   *     not given a fixed step
   */
  public IntegratorSettings {
    Checks.given("scheme", scheme);
    Checks.given("conductivities", conductivities);
    Checks.within(
        "step tolerance",
        stepTolerance,
        TOLERANCE,
        "K",
        "0.005 K is usual; the error of a run is larger.");
    if (!(largestStep > 0)) {
      throw new stenotherm.base.InvalidInputException(
          "largest step", Checks.show(largestStep, "s") + " must be above 0");
    }
    if (scheme == Scheme.BACKWARD_EULER && !fixed) {
      throw new stenotherm.base.InvalidInputException(
          "scheme", "backward Euler has no error estimate here; give it a fixed step");
    }
    if (fixed) {
      Checks.positive("fixed step", largestStep, "s");
    }
  }

  /**
   * Steps that are controlled and corrected by their estimated local error.
   *
   * @param stepTolerance largest estimated local error of a step [K]
   * @return the settings
   */
  public static IntegratorSettings adaptive(double stepTolerance) {
    return new IntegratorSettings(
        Scheme.TR_BDF2, stepTolerance, Double.POSITIVE_INFINITY, false, Conductivities.FROZEN);
  }

  /**
   * The default: {@link #adaptive} steps at {@link #DEFAULT_STEP_TOLERANCE}.
   *
   * @return the settings
   */
  public static IntegratorSettings standard() {
    return adaptive(DEFAULT_STEP_TOLERANCE);
  }

  /**
   * Equal steps, for studies of the order of convergence; they are not corrected.
   *
   * @param scheme time scheme
   * @param step step [s]
   * @return the settings
   */
  public static IntegratorSettings fixed(Scheme scheme, double step) {
    return new IntegratorSettings(scheme, 1e-6, step, true, Conductivities.FROZEN);
  }

  /**
   * The same steps with conductivities that follow temperature.
   *
   * @return the changed settings
   */
  public IntegratorSettings live() {
    return new IntegratorSettings(scheme, stepTolerance, largestStep, fixed, Conductivities.LIVE);
  }
}
