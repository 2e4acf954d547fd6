package stenotherm.warmer;

/**
 * What a warmer did on a bench.
 *
 * <p>A value, thus thread-safe.
 *
 * @param curve its temperature, from which rise, peak, mean and hours are read
 * @param peakPower highest power [W]
 * @param meanPower mean power from 40 °C until it falls below for good [W]; NaN if it never is so
 *     warm
 * @param state its state at the end
 */
public record BenchRun(BenchCurve curve, double peakPower, double meanPower, BenchState state) {
  /**
   * How far a warmer is.
   *
   * @param temperature temperature [K]
   * @param heat heat given so far [J]
   * @param conversion part of its iron that is oxidised [-], 0 if it is not iron powder
   */
  public record BenchState(double temperature, double heat, double conversion) {}
}
