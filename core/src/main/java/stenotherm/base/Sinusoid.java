package stenotherm.base;

/**
 * A harmonic function of time: mean + amplitude sin(2 pi t / period + phase).
 *
 * <p>A value, thus thread-safe.
 *
 * @param mean mean value [unit of the quantity]
 * @param wave what is added to it
 */
public record Sinusoid(double mean, Wave wave) implements TimeFunction {
  /**
   * A wave around zero.
   *
   * @param amplitude amplitude [unit of the quantity]
   * @param period period [s], above 0
   * @param phase phase at time zero [rad]
   */
  public record Wave(double amplitude, double period, double phase) {
    /**
     * Checks the numbers.
     *
     * @throws InvalidInputException if a number is not finite or the period is not above 0
     */
    public Wave {
      Checks.finite("sinusoid amplitude", amplitude, "");
      Checks.positive("sinusoid period", period, "s");
      Checks.finite("sinusoid phase", phase, "rad");
    }
  }

  /**
   * Checks the mean.
   *
   * @throws InvalidInputException if it is not finite
   */
  public Sinusoid {
    Checks.finite("sinusoid mean", mean, "");
  }

  @Override
  public double mean(double from, double to) {
    Checks.interval(from, to);
    double frequency = 2 * Math.PI / wave.period();
    double first = Math.cos(frequency * from + wave.phase());
    double last = Math.cos(frequency * to + wave.phase());
    return mean + wave.amplitude() * (first - last) / (frequency * (to - from));
  }

  @Override
  public double at(double time) {
    return mean + wave.amplitude() * Math.sin(2 * Math.PI * time / wave.period() + wave.phase());
  }
}
