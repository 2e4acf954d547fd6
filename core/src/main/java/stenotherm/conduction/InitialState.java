package stenotherm.conduction;

import java.util.HashMap;
import java.util.Map;
import stenotherm.base.Checks;
import stenotherm.base.Range;

/**
 * The state of a body at time zero: one temperature, others for some blocks, and the liquid
 * fraction of blocks at their melting temperature.
 *
 * <p>A value, thus thread-safe.
 *
 * @param temperature temperature of all blocks that are not named [K]
 * @param temperatures temperature of the blocks named [K]
 * @param liquidFractions liquid fraction of the blocks named [-], 0 to 1; they start in their
 *     melting range
 */
public record InitialState(
    double temperature, Map<String, Double> temperatures, Map<String, Double> liquidFractions) {
  private static final Range FRACTION = new Range(0, 1);

  /**
   * Checks the values and copies the maps.
   *
   * @throws stenotherm.base.InvalidInputException if a temperature is not absolute or a fraction is
   *     not within 0 and 1
   */
  public InitialState {
    Checks.temperature("initial temperature", temperature);
    Checks.given("initial temperatures", temperatures);
    Checks.given("initial liquid fractions", liquidFractions);
    temperatures.forEach(
        (block, value) -> Checks.temperature("initial temperature of " + block, value));
    liquidFractions.forEach(
        (block, value) ->
            Checks.within("initial liquid fraction of " + block, value, FRACTION, "", ""));
    temperatures = Map.copyOf(temperatures);
    liquidFractions = Map.copyOf(liquidFractions);
  }

  /**
   * One temperature everywhere.
   *
   * @param temperature the temperature [K]
   * @return the state
   * @throws stenotherm.base.InvalidInputException if it is not absolute
   */
  public static InitialState uniform(double temperature) {
    return new InitialState(temperature, Map.of(), Map.of());
  }

  /**
   * The same state with another temperature of one block.
   *
   * @param block name of the block
   * @param value its temperature [K]
   * @return the changed state
   * @throws stenotherm.base.InvalidInputException if it is not absolute
   */
  public InitialState with(String block, double value) {
    Map<String, Double> changed = new HashMap<>(temperatures);
    changed.put(block, value);
    return new InitialState(temperature, changed, liquidFractions);
  }

  /**
   * The same state with one block at its melting temperature, partly liquid.
   *
   * @param block name of the block
   * @param fraction its liquid fraction [-], 0 to 1
   * @return the changed state
   * @throws stenotherm.base.InvalidInputException if it is not within 0 and 1
   */
  public InitialState partlyMelted(String block, double fraction) {
    Map<String, Double> changed = new HashMap<>(liquidFractions);
    changed.put(block, fraction);
    return new InitialState(temperature, temperatures, changed);
  }
}
