package stenotherm.conduction;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A steady state.
 *
 * <p>Stable. Immutable, thus thread-safe.
 */
public final class SteadySolution {
  private final TemperatureField field;
  private final Map<String, Double> heatFlows;
  private final Map<String, Double> powers;
  private final int iterations;

  SteadySolution(
      HeatOperator operator, double[] temperature, Conditions conditions, int iterations) {
    this.field = new TemperatureField(operator, temperature, conditions);
    this.iterations = iterations;
    HeatNetwork network = operator.network();
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
   * Returns what does not add up in the heat balance.
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
