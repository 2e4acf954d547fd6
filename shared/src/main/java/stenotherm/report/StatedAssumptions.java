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
            + " at the worse end count as tight (assumed).");
    all.add(
        "All uncertain quantities are taken at their worse ends together, which is cautious; what"
            + " the air inside does to animal and warmer, oxygen and humidity, is not part of the"
            + " calculation.");
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

  /** StatedAssumptions of legs that no assumption of the scenario has told yet. */
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
