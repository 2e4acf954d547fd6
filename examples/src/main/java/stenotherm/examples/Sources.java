package stenotherm.examples;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import stenotherm.animal.Animal;
import stenotherm.animal.Limit;
import stenotherm.animal.TemperatureBand;
import stenotherm.base.Range;
import stenotherm.decision.Level;
import stenotherm.grid.Block;
import stenotherm.journey.Leg;
import stenotherm.material.Material;
import stenotherm.parcel.Cup;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.scenario.Scenario;
import stenotherm.transit.Factor;
import stenotherm.warmer.WarmerClass;

/** What a comparison rests on, with the source of every number. */
final class Sources {
  private Sources() {}

  /** Every assumption as a sentence. */
  static List<String> sentences(Scenario scenario) {
    Set<String> all = new LinkedHashSet<>(scenario.assumptions());
    all.add(
        range("Surface coefficients vary by a factor of", Factor.FILM_FACTORS, "")
            + ": "
            + Factor.FILM_SOURCE.text()
            + ".");
    for (Leg leg : scenario.journey().legs()) {
      all.add(
          "Leg '"
              + leg.name()
              + "', "
              + Words.hours(leg.duration())
              + " h, outdoor or room temperature ± "
              + Words.difference(leg.ambientSpread())
              + ": "
              + leg.source().text()
              + ".");
    }
    for (Parcel packing : scenario.packings()) {
      packing.warmers().forEach(warmer -> all.add(warmer(warmer)));
      for (Cup cup : packing.cups()) {
        for (Limit limit : Limit.values()) {
          all.add(band(cup.occupant().animal(), limit));
        }
      }
    }
    for (Material material : materials(scenario)) {
      all.add(material(material));
    }
    all.add(
        "Margins below "
            + Words.difference(Level.TIGHT_BELOW)
            + " at the worse end count as tight (assumed).");
    all.add(
        "All uncertain quantities are taken at their worse ends together, which is cautious; a"
            + " parcel that lies otherwise than upright, sun, altitude and the air inside are not"
            + " part of the calculation.");
    return List.copyOf(all);
  }

  private static String warmer(PlacedWarmer placed) {
    WarmerClass warmer = placed.warmer();
    return "Warmer '"
        + warmer.name()
        + "', "
        + range("strength", warmer.strength(), "times its curve")
        + ": "
        + warmer.source().text()
        + ".";
  }

  private static String band(Animal animal, Limit limit) {
    TemperatureBand band = animal.tolerance().band(limit);
    String what =
        switch (limit) {
          case COMFORTABLE -> "comfortable band";
          case ALARM -> "alarm band";
          case CRITICAL -> "critical limits";
        };
    return "%s (%s), %s %s to %s: %s."
        .formatted(
            animal.name(),
            animal.species(),
            what,
            Words.temperature(band.range().low()),
            Words.temperature(band.range().high()),
            band.source().text());
  }

  private static String material(Material material) {
    return String.format(
        Locale.ROOT,
        "Material '%s': %.4g W/(m K) (%.4g to %.4g), %.4g kg/m3, %.5g J/(kg K): %s.",
        material.name(),
        material.conductivity(),
        material.conductivityRange().low(),
        material.conductivityRange().high(),
        material.density(),
        material.specificHeat(),
        material.source().text());
  }

  private static String range(String what, Range range, String after) {
    return String.format(Locale.ROOT, "%s %.4g to %.4g %s", what, range.low(), range.high(), after)
        .strip();
  }

  private static Set<Material> materials(Scenario scenario) {
    Set<Material> all = new LinkedHashSet<>();
    for (Parcel packing : scenario.packings()) {
      for (Block block : packing.layout().blocks()) {
        if (block instanceof Block.Solid solid) {
          all.add(solid.material());
        }
      }
      packing.cups().forEach(cup -> all.add(cup.wall().material()));
    }
    return all;
  }
}
