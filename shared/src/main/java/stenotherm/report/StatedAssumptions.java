package stenotherm.report;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import stenotherm.decision.Level;
import stenotherm.journey.Leg;
import stenotherm.scenario.Scenario;
import stenotherm.transit.Factor;
import stenotherm.words.Figures;

/** What a comparison rests on, with the source of every number. */
final class StatedAssumptions {
  private static final String PRESET = "Preset, ";

  private StatedAssumptions() {}

  /** Every assumption as a sentence, each source of a leg once. */
  static List<String> sentences(Scenario scenario) {
    Set<String> all = new LinkedHashSet<>(scenario.assumptions());
    all.addAll(legs(scenario));
    all.add(
        String.format(
            Locale.ROOT,
            "Surface coefficients vary by a factor of %.1f to %.1f: %s.",
            Factor.FILM_FACTORS.low(),
            Factor.FILM_FACTORS.high(),
            Factor.FILM_SOURCE.text()));
    all.add(
        "Margins below "
            + new Figures(scenario.units()).difference(Level.TIGHT_BELOW)
            + " in the worst case count as tight (assumed).");
    all.add(
        "The worst case takes all uncertain quantities at their worse ends at once, which is"
            + " cautious.");
    all.add(
        "Oxygen and humidity inside the parcel, and what they do to animal and warmer, are not"
            + " computed.");
    return List.copyOf(all);
  }

  /** What the file leaves out and presets fill in. */
  static List<String> presets(List<String> sentences) {
    return sentences.stream()
        .filter(sentence -> sentence.startsWith(PRESET))
        .map(sentence -> sentence.substring(PRESET.length()))
        .toList();
  }

  /** All others. */
  static List<String> others(List<String> sentences) {
    return sentences.stream().filter(sentence -> !sentence.startsWith(PRESET)).toList();
  }

  /** Sources of the air in legs, as far as no assumption of the scenario names them yet. */
  private static List<String> legs(Scenario scenario) {
    Map<String, String> namesBySource = new LinkedHashMap<>();
    for (Leg leg : scenario.journey().legs()) {
      String source = leg.source().text();
      if (scenario.assumptions().stream().noneMatch(sentence -> sentence.contains(source))) {
        namesBySource.merge(source, "'" + leg.name() + "'", (names, name) -> names + ", " + name);
      }
    }
    return namesBySource.entrySet().stream()
        .map(entry -> "Air in " + entry.getValue() + ": " + entry.getKey() + ".")
        .toList();
  }
}
