package stenotherm.examples;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import stenotherm.decision.Level;
import stenotherm.journey.Leg;
import stenotherm.scenario.Scenario;
import stenotherm.transit.Factor;

/** What a comparison rests on, with the source of every number. */
final class Sources {
  private Sources() {}

  /** Every assumption as a sentence. */
  static List<String> sentences(Scenario scenario) {
    Set<String> all = new LinkedHashSet<>(scenario.assumptions());
    all.add(
        String.format(
            Locale.ROOT,
            "Surface coefficients vary by a factor of %.4g to %.4g: %s.",
            Factor.FILM_FACTORS.low(),
            Factor.FILM_FACTORS.high(),
            Factor.FILM_SOURCE.text()));
    for (Leg leg : scenario.journey().legs()) {
      all.add(
          "Leg '"
              + leg.name()
              + "', "
              + Words.hours(leg.duration())
              + " h, outdoor or room temperature ± "
              + Words.difference(leg.surroundings().spread())
              + ": "
              + leg.source().text()
              + ".");
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
}
