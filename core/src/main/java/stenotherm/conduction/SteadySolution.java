package stenotherm.conduction;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import stenotherm.base.InvalidInputException;

/**
 * A steady state.
 *
 * <p>Immutable, thus thread-safe.
 */
public final class SteadySolution {
  private final HeatNetwork network;
  private final TemperatureField field;
  private final Map<String, Double> heatFlows;
  private final Map<String, Double> powers;
  private final int iterations;

  SteadySolution(
      HeatOperator operator, double[] temperature, Conditions conditions, int iterations) {
    this.field = new TemperatureField(operator, temperature, conditions);
    this.iterations = iterations;
    this.network = operator.network();
    double[] flows = new double[network.patches().list().size()];
    operator.heatFlows(temperature, conditions, flows);
    Map<String, Double> byBoundary = new LinkedHashMap<>();
    for (int p = 0; p < flows.length; p++) {
      byBoundary.put(network.patches().list().get(p).port().name(), flows[p]);
    }
    Map<String, Double> bySource = new LinkedHashMap<>();
    for (int s = 0; s < conditions.power.length; s++) {
      bySource.put(network.sources().list().get(s).port().name(), conditions.power[s]);
    }
    this.heatFlows = Collections.unmodifiableMap(byBoundary);
    this.powers = Collections.unmodifiableMap(bySource);
  }

  /**
   * Returns the temperatures.
   *
   * @return the continuous field
   */
  public TemperatureField field() {
    return field;
  }

  /**
   * Returns the heat flow into the body through each boundary.
   *
   * @return by face label or environment name [W]
   */
  public Map<String, Double> heatFlows() {
    return heatFlows;
  }

  /**
   * Reads an output.
   *
   * @param probe the output
   * @return its value [unit of the output]
   * @throws InvalidInputException if a block, boundary or point does not exist, or the output is a
   *     liquid fraction, which depends on how the steady state was reached
   */
  public double value(Probe probe) {
    return probe.accept(new Reading());
  }

  private final class Reading implements ProbeVisitor<Double> {
    @Override
    public Double mean(Probe.Mean probe) {
      return field.mean(probe.block());
    }

    @Override
    public Double maximum(Probe.Maximum probe) {
      return field.maximum(probe.block());
    }

    @Override
    public Double minimum(Probe.Minimum probe) {
      return field.minimum(probe.block());
    }

    @Override
    public Double at(Probe.At probe) {
      return field.at(probe.point());
    }

    @Override
    public Double surfaceMean(Probe.SurfaceMean probe) {
      return field.surfaceMean(probe.boundary());
    }

    @Override
    public Double liquidFraction(Probe.LiquidFraction probe) {
      throw new InvalidInputException(
          "probe '" + probe.name() + "'",
          "is a liquid fraction; a steady state does not determine it, only its history does");
    }

    @Override
    public Double heatFlow(Probe.HeatFlow probe) {
      if (network.patches().isAdiabatic(probe.boundary())) {
        return 0.0;
      }
      network.boundaryIndex(probe.boundary());
      return Objects.requireNonNull(heatFlows.get(probe.boundary()));
    }
  }

  /**
   * Returns the error of the heat balance.
   *
   * @return the sum of all heat flows and powers [W]; zero but for round-off
   */
  public double imbalance() {
    double sum = 0;
    for (double flow : heatFlows.values()) {
      sum += flow;
    }
    for (double power : powers.values()) {
      sum += power;
    }
    return sum;
  }

  /**
   * Returns the work of the linear solver.
   *
   * @return number of conjugate gradient iterations
   */
  public int iterations() {
    return iterations;
  }
}
