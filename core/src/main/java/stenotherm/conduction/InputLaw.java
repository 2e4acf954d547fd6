package stenotherm.conduction;

/**
 * Inputs that depend on outputs, such as the power of a warmer or the heat of an animal, which
 * depend on their temperatures.
 *
 * <p>A step is tried several times before it is settled, see {@link CoupledStep}. A law with a
 * memory, such as of how much has burnt, must start each trial from its state at the last {@link
 * #settled} and update this state only there.
 *
 * <p>Called on the thread of its engine alone.
 */
public interface InputLaw {
  /**
   * Finds the inputs at a time; if they jump at that time, those after the jump.
   *
   * @param time the time [s]
   * @param outputs the outputs then, in the engine's order [K, W or 1]; not to be changed
   * @param inputs where to put all inputs, in the engine's order [K, W/m2 or W]
   */
  void at(double time, double[] outputs, double[] inputs);

  /**
   * Finds the inputs at the end of an interval; if they jump at that time, those before the jump.
   *
   * @param time the time [s]
   * @param outputs the outputs then; not to be changed
   * @param inputs where to put all inputs
   */
  default void before(double time, double[] outputs, double[] inputs) {
    at(time, outputs, inputs);
  }

  /**
   * Tells that a step is settled.
   *
   * @param time its end [s]
   * @param outputs the outputs then; not to be changed
   */
  default void settled(double time, double[] outputs) {}
}
