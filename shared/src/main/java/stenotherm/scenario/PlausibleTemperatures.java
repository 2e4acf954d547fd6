package stenotherm.scenario;

import java.util.List;
import stenotherm.base.Range;
import stenotherm.base.Temperatures;
import stenotherm.text.Node;
import stenotherm.text.ScalarNode;
import stenotherm.text.SequenceNode;

/**
 * Refuses temperatures that nothing has which they are written for, in the unit that was typed.
 * Most often that is a slip of the unit: 66 °C where 66 °F is meant.
 */
final class PlausibleTemperatures {
  /** Just above what air is computed for; the lowest on record is -89.2 °C, Vostok 1983 [K]. */
  private static final double COLDEST = Temperatures.fromCelsius(-73);

  /** How far the limit as it is shown may be off [K]. */
  private static final double ROUND_OFF = 0.01;

  /**
   * The highest temperature on record, of 1913 (WMO Archive of Weather and Climate Extremes, from
   * memory).
   */
  private static final Kind HIGH =
      new Kind("a daily high", new Range(COLDEST, Temperatures.fromCelsius(56.7)));

  /** The warmest night that is known, Quriyat 2018 (by the press, from memory). */
  private static final Kind LOW =
      new Kind("a daily low", new Range(COLDEST, Temperatures.fromCelsius(42.6)));

  /** A van without windows is up to 15 K warmer than a day of 45 °C. */
  private static final Kind AIR =
      new Kind("the air of a leg", new Range(COLDEST, Temperatures.fromCelsius(60)));

  /** As far as animals bear it, which are inside by then. */
  private static final Kind START =
      new Kind("a parcel with an animal", OccupantReader.TEMPERATURES);

  private PlausibleTemperatures() {}

  /**
   * What a temperature is written for.
   *
   * @param name in the words of a message
   * @param allowed what it may be [K]
   */
  private record Kind(String name, Range allowed) {}

  /** A low and a high outdoors [K]. */
  static Range outdoors(Node node) {
    Range range = node.temperatureRange();
    check(end(node, true), range.high(), HIGH);
    check(end(node, false), range.low(), LOW);
    return range;
  }

  /** A low and a high of the air of a leg [K]. */
  static Range ofAir(ScalarNode node) {
    Range range = node.temperatureRange();
    check(node, range.high(), AIR);
    check(node, range.low(), AIR);
    return range;
  }

  /** A temperature of the air of a leg [K]. */
  static double air(ScalarNode node) {
    return checked(node, AIR);
  }

  /** A daily low outdoors [K]. */
  static double low(ScalarNode node) {
    return checked(node, LOW);
  }

  /** A daily high outdoors [K]. */
  static double high(ScalarNode node) {
    return checked(node, HIGH);
  }

  /** What a parcel is packed at [K]. */
  static double start(ScalarNode node) {
    return checked(node, START);
  }

  private static double checked(ScalarNode node, Kind kind) {
    double temperature = node.temperature();
    check(node, temperature, kind);
    return temperature;
  }

  /** The text that has an end of a range, and its unit. */
  private static ScalarNode end(Node node, boolean high) {
    return node instanceof SequenceNode list
        ? list.items().get(high ? 1 : 0).asScalar()
        : node.asScalar();
  }

  private static void check(ScalarNode node, double temperature, Kind kind) {
    Range allowed = kind.allowed();
    boolean isHot = temperature > allowed.high() + ROUND_OFF;
    if (!isHot && temperature >= allowed.low() - ROUND_OFF) {
      return;
    }
    List<String> meant = node.otherTemperatureUnits(temperature, allowed);
    throw node.fail(
        node.temperatureAsTyped(temperature)
            + " is too "
            + (isHot ? "hot" : "cold")
            + " for "
            + kind.name()
            + ", which is at "
            + (isHot ? "most " : "least ")
            + node.temperatureAsTyped(isHot ? allowed.high() : allowed.low())
            + (meant.isEmpty() ? "" : ". Did you mean " + String.join(" or ", meant) + "?"));
  }
}
