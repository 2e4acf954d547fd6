package stenotherm.conduction;

/**
 * Answers something for each kind of {@link Probe}.
 *
 * @param <R> type of the answer
 */
public interface ProbeVisitor<R> {
  /**
   * Answers for a mean over a block.
   *
   * @param probe the output
   * @return the answer
   */
  R mean(Probe.Mean probe);

  /**
   * Answers for the highest temperature of a block.
   *
   * @param probe the output
   * @return the answer
   */
  R maximum(Probe.Maximum probe);

  /**
   * Answers for the lowest temperature of a block.
   *
   * @param probe the output
   * @return the answer
   */
  R minimum(Probe.Minimum probe);

  /**
   * Answers for the temperature at a point.
   *
   * @param probe the output
   * @return the answer
   */
  R at(Probe.At probe);

  /**
   * Answers for the mean temperature under a boundary.
   *
   * @param probe the output
   * @return the answer
   */
  R surfaceMean(Probe.SurfaceMean probe);

  /**
   * Answers for the liquid fraction of a block.
   *
   * @param probe the output
   * @return the answer
   */
  R liquidFraction(Probe.LiquidFraction probe);

  /**
   * Answers for the heat flow through a boundary.
   *
   * @param probe the output
   * @return the answer
   */
  R heatFlow(Probe.HeatFlow probe);
}
