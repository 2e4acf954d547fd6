package stenotherm.scenario;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import stenotherm.ambient.AmbientRule;
import stenotherm.ambient.Situation;
import stenotherm.ambient.Stowage;
import stenotherm.animal.Animal;
import stenotherm.animal.TemperatureBand;
import stenotherm.base.Lengths;
import stenotherm.base.Masses;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.Temperatures;
import stenotherm.base.Times;
import stenotherm.grid.Block;
import stenotherm.journey.Place;
import stenotherm.material.AirLayer;
import stenotherm.material.Material;
import stenotherm.material.Materials;
import stenotherm.parcel.Container;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.Vessel;
import stenotherm.warmer.WarmerClass;
import stenotherm.warmer.WarmerFit;

/** Collects what a scenario assumes beyond its file: one sentence each, every sentence once. */
final class Assumptions {
  private static final MathContext DIGITS = new MathContext(4, RoundingMode.HALF_EVEN);

  private final Set<String> sentences = new LinkedHashSet<>();

  void add(String sentence) {
    sentences.add(sentence);
  }

  void add(String what, Source source) {
    add(what + ": " + source.text() + ".");
  }

  /** Lists a preset that stands for a value the file leaves out. */
  void preset(String part, String key, String value, String basis) {
    add("Preset, " + part + ": " + key + ", " + value + " (" + basis + ").");
  }

  /** Lists the properties and sources of everything in a packing. */
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

  /** Extents and wall of a vessel. */
  static String vessel(Vessel vessel) {
    return extents(vessel)
        + ", wall of "
        + vessel.wall().material().name()
        + " "
        + millimetres(vessel.wall().thickness())
        + " mm";
  }

  private static String extents(Vessel vessel) {
    if (vessel instanceof Vessel.RoundCup cup) {
      return "round, diameter "
          + millimetres(cup.diameter())
          + " mm, height "
          + millimetres(cup.height())
          + " mm";
    }
    if (vessel instanceof Vessel.Vial vial) {
      return "round, diameter "
          + millimetres(vial.diameter())
          + " mm, length "
          + millimetres(vial.length())
          + " mm";
    }
    Dimensions inner = vessel.inner();
    return millimetres(inner.length())
        + " x "
        + millimetres(inner.width())
        + " x "
        + millimetres(inner.height())
        + " mm";
  }

  private static String millimetres(double metres) {
    return number(Lengths.toMillimetres(metres));
  }

  private void air() {
    add(
        "Air in containers and in a box without fill counts as a solid with the resistance of an"
            + " air layer",
        AirLayer.SOURCE);
  }

  private void material(Material material) {
    if (material.name().equals(Materials.STILL_AIR.name())) {
      air();
      return;
    }
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

  /** Lists what a kind of surroundings stands for. */
  void situation(Situation situation) {
    add(
        "Surroundings "
            + situation.name()
            + ", "
            + air(situation.rule())
            + ", ± "
            + number(situation.spread())
            + " K, air of "
            + number(situation.altitude())
            + " m, a parcel "
            + (situation.stowage() == Stowage.ALONE ? "stands " : "lies ")
            + situation.stowage().words(),
        situation.source());
  }

  /** Lists what it means that a parcel lies among others. */
  void stowage(Stowage stowage) {
    if (stowage == Stowage.AMONG_OTHERS) {
      add("A parcel among others, whose surroundings follow the air late", Stowage.SOURCE);
    }
  }

  private static String air(AmbientRule rule) {
    if (rule instanceof AmbientRule.HeatedWhenCold heated) {
      return following(heated.unheated()) + ", heated to " + celsius(heated.lowest()) + " at least";
    }
    return rule instanceof AmbientRule.Following following
        ? following(following)
        : "held at " + celsius(((AmbientRule.Held) rule).temperature());
  }

  private static String following(AmbientRule.Following rule) {
    if (rule.offset() == 0 && rule.lag() == 0) {
      return "as outdoors";
    }
    return number(rule.offset()) + " K warmer than outdoors, lag " + hours(rule.lag());
  }

  /** Notes that the sun is left out for want of coordinates. */
  void shaded(Place place) {
    add(
        "The sun is left out at "
            + place.name()
            + ", because the file gives no latitude and longitude there; the sky, taken as clear,"
            + " is not.");
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
            + "; a single warmer may give "
            + number(warmer.strength().low())
            + " to "
            + number(warmer.strength().high())
            + " times as much"
            + (warmer.isRated()
                ? ", all of them "
                    + number(warmer.bench().low())
                    + " to "
                    + number(warmer.bench().high())
                    + " times, for want of the bench's resistances"
                : ""),
        warmer.source());
  }

  /** Tells what a fit of a warmer found, how closely, and what it could not tell. */
  void fitted(String data, WarmerFit fit) {
    Range film = fit.permeance().interval();
    Range iron = fit.iron().interval();
    Range crust = fit.crust().interval();
    add(
        String.format(
            Locale.ROOT,
            "Warmer of your own by its %s: permeance of the film %.2e mol/(s m2 Pa), %.2e to %.2e;"
                + " iron %.1f g, %.1f to %.1f; crust %.2f, %.2f to %.2f, each interval with 90 %%"
                + "; what is left over is %.1f of the deviation of the data (0.5 K of a curve). %s",
            data,
            fit.permeance().value(),
            film.low(),
            film.high(),
            Masses.toGrams(fit.iron().value()),
            Masses.toGrams(iron.low()),
            Masses.toGrams(iron.high()),
            fit.crust().value(),
            crust.low(),
            crust.high(),
            fit.misfit(),
            String.join(" ", fit.untold())));
  }

  List<String> sentences() {
    return List.copyOf(sentences);
  }

  static String band(TemperatureBand band) {
    double low = band.range().low();
    double high = band.range().high();
    return celsius(low)
        + " to "
        + celsius(high)
        + " ("
        + number(Temperatures.toFahrenheit(low))
        + " °F to "
        + number(Temperatures.toFahrenheit(high))
        + " °F)";
  }

  static String hours(double seconds) {
    return number(Times.toHours(seconds)) + " h";
  }

  private static String celsius(double kelvin) {
    return number(Temperatures.toCelsius(kelvin)) + " °C";
  }

  static String number(double value) {
    BigDecimal rounded = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }
}
