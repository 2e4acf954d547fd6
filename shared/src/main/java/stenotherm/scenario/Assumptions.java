package stenotherm.scenario;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import stenotherm.animal.Animal;
import stenotherm.animal.TemperatureBand;
import stenotherm.base.Lengths;
import stenotherm.base.Source;
import stenotherm.base.Temperatures;
import stenotherm.material.Material;
import stenotherm.warmer.WarmerClass;

/** Gathers what comes from presets, a sentence each, every sentence once. */
final class Assumptions {
  private static final MathContext DIGITS = new MathContext(4, RoundingMode.HALF_EVEN);

  private final Set<String> sentences = new LinkedHashSet<>();

  void add(String sentence) {
    sentences.add(sentence);
  }

  void add(String what, Source source) {
    add(what + ": " + source.text() + ".");
  }

  void material(Material material) {
    double low = material.conductivityRange().low();
    double high = material.conductivityRange().high();
    add(
        "Material "
            + material.name()
            + ", "
            + number(material.conductivity())
            + " W/(m K)"
            + (low < high ? " (" + number(low) + " to " + number(high) + ")" : "")
            + ", "
            + number(material.density())
            + " kg/m3, "
            + number(material.specificHeat())
            + " J/(kg K)",
        material.source());
  }

  void animal(Animal animal) {
    add(
        "Comfortable band of " + animal.name() + ", " + band(animal.tolerance().comfortable()),
        animal.tolerance().comfortable().source());
    add(
        "Alarm band of " + animal.name() + ", " + band(animal.tolerance().alarm()),
        animal.tolerance().alarm().source());
    add(
        "Critical limits of " + animal.name() + ", " + band(animal.tolerance().critical()),
        animal.tolerance().critical().source());
    add(
        "Resting shape of "
            + animal.name()
            + ", "
            + number(animal.restingShape().length())
            + " : "
            + number(animal.restingShape().width())
            + " : "
            + number(animal.restingShape().height())
            + " (assumed).");
    material(animal.tissue());
  }

  void warmer(WarmerClass warmer) {
    add(
        "Power of a "
            + warmer.name()
            + ", single ones "
            + number(warmer.strength().low())
            + " to "
            + number(warmer.strength().high())
            + " times it",
        warmer.source());
  }

  List<String> sentences() {
    return List.copyOf(sentences);
  }

  /** A length in millimetres. */
  static String millimetres(double metres) {
    return number(Lengths.toMillimetres(metres)) + " mm";
  }

  private static String band(TemperatureBand band) {
    return celsius(band.range().low()) + " °C to " + celsius(band.range().high()) + " °C";
  }

  private static String celsius(double kelvin) {
    return number(Temperatures.toCelsius(kelvin));
  }

  private static String number(double value) {
    BigDecimal rounded = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }
}
