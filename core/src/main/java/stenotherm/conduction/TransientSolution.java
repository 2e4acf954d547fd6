package stenotherm.conduction;

import java.util.Arrays;
import java.util.List;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Outcome;
import stenotherm.base.Suggestions;

/**
 * The history of a transient. If the run did not complete, it ends with the last stored time that
 * was reached.
 *
 * <p>Immutable, thus thread-safe.
 */
public final class TransientSolution {
  private final Outcome outcome;
  private final List<Probe> probes;
  private final double[] times;
  private final double[][] values;
  private final TemperatureField field;
  private final HeatLedger ledger;
  private final Work work;

  /**
   * What a run cost.
   *
   * @param steps accepted steps
   * @param rejected steps tried again with a shorter step
   * @param iterations conjugate gradient iterations
   */
  public record Work(long steps, long rejected, long iterations) {}

  TransientSolution(
      Outcome outcome,
      List<Probe> probes,
      double[] times,
      double[][] values,
      TemperatureField field,
      HeatLedger ledger,
      Work work) {
    this.outcome = outcome;
    this.probes = probes;
    this.times = times;
    this.values = values;
    this.field = field;
    this.ledger = ledger;
    this.work = work;
  }

  /**
   * Tells how the run ended.
   *
   * @return the outcome
   */
  public Outcome outcome() {
    return outcome;
  }

  /**
   * Returns the outputs that were asked for.
   *
   * @return the probes in the order in which they were given
   */
  public List<Probe> probes() {
    return probes;
  }

  /**
   * Returns the stored times.
   *
   * @return a copy, ascending [s]
   */
  public double[] times() {
    return times.clone();
  }

  /**
   * Returns the history of an output.
   *
   * @param name name of the probe
   * @return a copy, one value for each stored time [unit of the probe]
   * @throws InvalidInputException if there is no such probe
   */
  public double[] history(String name) {
    for (int index = 0; index < probes.size(); index++) {
      if (probes.get(index).name().equals(name)) {
        int column = index;
        return Arrays.stream(values).mapToDouble(row -> row[column]).toArray();
      }
    }
    throw Suggestions.unknown("probe", name, probes.stream().map(Probe::name).toList());
  }

  /**
   * Returns the last value of an output.
   *
   * @param name name of the probe
   * @return its value at the last stored time [unit of the probe]
   * @throws InvalidInputException if there is no such probe
   */
  public double last(String name) {
    double[] history = history(name);
    return history[history.length - 1];
  }

  /**
   * Returns the temperatures at the end of the run.
   *
   * @return the continuous field at the last state
   */
  public TemperatureField field() {
    return field;
  }

  /**
   * Returns the heat ledger.
   *
   * @return the ledger from the start to the last state
   */
  public HeatLedger ledger() {
    return ledger;
  }

  /**
   * Returns what the run cost.
   *
   * @return steps and iterations
   */
  public Work work() {
    return work;
  }
}
