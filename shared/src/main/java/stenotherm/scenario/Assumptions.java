package stenotherm.scenario;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import stenotherm.animal.Animal;
import stenotherm.animal.TemperatureBand;
import stenotherm.base.Source;
import stenotherm.base.Temperatures;
import stenotherm.grid.Block;
import stenotherm.material.Material;
import stenotherm.parcel.Container;
import stenotherm.parcel.Parcel;
import stenotherm.warmer.WarmerClass;

/** Gathers what a scenario rests on beyond its file, a sentence each, every sentence once. */
final class Assumptions {
  private static final MathContext DIGITS = new MathContext(4, RoundingMode.HALF_EVEN);

  private final Set<String> sentences = new LinkedHashSet<>();

  void add(String sentence) {
    sentences.add(sentence);
  }

  void add(String what, Source source) {
    add(what + ": " + source.text() + ".");
  }

  /** Tells of a value that stands in for one that the file leaves out. */
  void preset(String part, String key, String value, String basis) {
    add("Preset, " + part + ": " + key + ", " + value + " (" + basis + ").");
  }

  /** Tells what is known of everything in a packing. */
  void packing(Parcel parcel) {
    parcel.warmers().forEach(placed -> warmer(placed.warmer()));
    for (Container container : parcel.containers()) {
      container.occupant().ifPresent(occupant -> animal(occupant.animal()));
      material(container.vessel().wall().material());
    }
    for (Block block : parcel.layout().blocks()) {
      if (block instanceof Block.Solid solid) {
        material(solid.material());
      }
    }
  }

  private void material(Material material) {
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

  private void animal(Animal animal) {
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
  }

  private void warmer(WarmerClass warmer) {
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

  private static String band(TemperatureBand band) {
    double low = band.range().low();
    double high = band.range().high();
    return number(Temperatures.toCelsius(low))
        + " °C to "
        + number(Temperatures.toCelsius(high))
        + " °C ("
        + number(Temperatures.toFahrenheit(low))
        + " °F to "
        + number(Temperatures.toFahrenheit(high))
        + " °F)";
  }

  private static String number(double value) {
    BigDecimal rounded = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }
}
