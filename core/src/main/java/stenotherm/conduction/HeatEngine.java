package stenotherm.conduction;

import java.util.List;
import stenotherm.base.Suggestions;

/**
 * A body that is stepped in time through its ports, for programs that couple other physics to it.
 * Between two calls the caller reads outputs, decides on inputs, and advances by an interval in
 * which inputs vary linearly.
 *
 * <p>Input order: the values of {@link HeatNetwork#boundaryPorts()} followed by those of {@link
 * HeatNetwork#sourcePorts()}; {@link PortIndex} finds them by name. Output order: that of the
 * probes the engine was made with; {@link #output} finds one by name.
 *
 * <p>Implemented by {@link FullEngine} and by the engine of a reduced model. Not thread-safe: one
 * engine belongs to one thread.
 */
public interface HeatEngine {
  /**
   * Returns the inputs.
   *
   * @return boundary ports, then source ports
   */
  List<Port> inputs();

  /**
   * Returns the outputs.
   *
   * @return the probes in their order
   */
  List<Probe> outputs();

  /**
   * Finds an output by its name, once, before the loop that reads it.
   *
   * @param name name of the probe
   * @return its index in the arrays of {@link #read}
   * @throws stenotherm.base.InvalidInputException if there is none; the message offers the closest
   *     name or lists all
   */
  default int output(String name) {
    List<String> names = outputs().stream().map(Probe::name).toList();
    int position = names.indexOf(name);
    if (position < 0) {
      throw Suggestions.unknown("output", name, names);
    }
    return position;
  }

  /**
   * Returns the time that the engine has reached.
   *
   * @return the time [s], zero at the start
   */
  double time();

  /**
   * Sets the surface coefficients from now on.
   *
   * @param coefficients one for each boundary port [W/(m2 K)], ignored for boundaries that are not
   *     films
   * @throws stenotherm.base.InvalidInputException if the number of values is wrong or one is
   *     negative or not finite
   */
  void useCoefficients(double[] coefficients);

  /**
   * Advances by an interval in which every input varies linearly. An interrupt of the thread ends
   * the interval early; {@link #time} then tells how far it came. Values that differ from those at
   * the end of the last interval are a jump.
   *
   * @param duration length of the interval [s], above 0
   * @param inputsAtStart inputs at its start, in the order of {@link #inputs} [K, W/m2 or W, see
   *     {@link Port#unit()}]
   * @param inputsAtEnd inputs at its end, in the same order [K, W/m2 or W]
   * @throws stenotherm.base.InvalidInputException if the number of values is wrong or one is not
   *     finite, or the duration is not above 0
   * @throws IllegalStateException if the engine failed before or fails now; its message says why
   */
  void advance(double duration, double[] inputsAtStart, double[] inputsAtEnd);

  /**
   * Reads the outputs now, under the inputs at the end of the last interval. Before the first
   * interval the surroundings have the temperature of the body and nothing heats it.
   *
   * @param values where to put them, in the order of {@link #outputs} [K or W, see {@link
   *     Probe#unit()}]
   * @throws stenotherm.base.InvalidInputException if the number of values is wrong
   */
  void read(double[] values);

  /**
   * Reads those outputs that are means of blocks, as laws that follow temperatures need them at
   * every step: far cheaper than all outputs.
   *
   * @param values where to put them, in the order of {@link #outputs} [K]; the places of other
   *     outputs stay as they are
   * @throws stenotherm.base.InvalidInputException if the number of values is wrong
   */
  void readMeans(double[] values);

  /**
   * Returns the temperatures now.
   *
   * @return the continuous field
   */
  TemperatureField field();

  /**
   * Returns the heat ledger since the start.
   *
   * @return the ledger
   */
  HeatLedger ledger();

  /**
   * Returns what the run has cost.
   *
   * @return steps and iterations
   */
  TransientSolution.Work work();
}
