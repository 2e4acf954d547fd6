package stenotherm.base;

/**
 * A harmonic function of time: mean + amplitude sin(2 pi t / period + phase).
 *
 * <p>Stable. A value, thus thread-safe.
 *
 * @param mean mean value [unit of the quantity]
 * @param amplitude amplitude [unit of the quantity]
 * @param period period [s], above 0
 * @param phase phase at time zero [rad]
 */
public record Sinusoid(double mean, double amplitude, double period, double phase)
    implements TimeFunction {
  /**
   * Checks the numbers.
   *
   * @throws InvalidInputException if a number is not finite or the period is not above 0
   */
  public Sinusoid {
    Checks.finite("sinusoid mean", mean, "");
    Checks.finite("sinusoid amplitude", amplitude, "");
    Checks.positive("sinusoid period", period, "s");
    Checks.finite("sinusoid phase", phase, "rad");
  }

  @Override
  public double at(double time) {
    return mean + amplitude * Math.sin(2 * Math.PI * time / period + phase);
  }
}
