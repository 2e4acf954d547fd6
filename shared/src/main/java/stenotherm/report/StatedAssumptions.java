package stenotherm.report;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import stenotherm.air.BreathingLimits;
import stenotherm.air.FoamPanel;
import stenotherm.ambient.Stowage;
import stenotherm.decision.Level;
import stenotherm.journey.Leg;
import stenotherm.parcel.Openings;
import stenotherm.scenario.Scenario;
import stenotherm.study.UnmodelledEffect;
import stenotherm.transit.Factor;
import stenotherm.warmer.Bench;
import stenotherm.warmer.PowderKinetics;
import stenotherm.words.Figures;

/** What a comparison rests on, with the source of every number. */
final class StatedAssumptions {
  private static final String PRESET = "Preset, ";

  /** Begins the preset of day and hour, of which only the hour counts. */
  private static final String SEALED = PRESET + "journey: sealed, ";

  private StatedAssumptions() {}

  /** Every assumption as a sentence, each source of a leg once. */
  static List<String> sentences(Scenario scenario) {
    Set<String> all = new LinkedHashSet<>();
    for (String sentence : scenario.assumptions()) {
      all.add(sentence.startsWith(SEALED) ? undated(scenario) : sentence);
    }
    all.addAll(legs(scenario));
    all.add(
        String.format(
            Locale.ROOT,
            "Surface coefficients vary by a factor of %.1f to %.1f: %s.",
            Factor.FILM_FACTORS.low(),
            Factor.FILM_FACTORS.high(),
            Factor.FILM_SOURCE.text()));
    all.add(
        String.format(
            Locale.ROOT,
            "Verdicts go by the lower end of the odds: '%s' from %.0f %% on, '%s' from %.0f %%, '%s' from"
                + " %.0f %% (assumed).",
            Level.HOLDS.words(),
            100 * Level.HOLDS.least(),
            Level.LIKELY.words(),
            100 * Level.LIKELY.least(),
            Level.GAMBLE.words(),
            100 * Level.GAMBLE.least()));
    all.add(
        "An animal's temperature is the mean over its body. Averaged over an hour it is held against"
            + " the alarm band (assumed), at each moment against the critical limits.");
    all.add(
        "A stated range is read as the central 90 % of a normal distribution. Quantities are"
            + " independent, but the forecast of a place is one for all its legs, and the air of legs"
            + " shares half of the variance of its own error (assumed).");
    all.add(
        "A parcel among others lies anywhere in a cube of them: " + Stowage.SOURCE.text() + ".");
    all.add("Seams: " + Openings.GAP_SOURCE.text() + ".");
    all.add("Foam that breathes: " + FoamPanel.SOURCE.text() + ".");
    all.add("Iron powder: " + Factor.REACTION_SOURCE.text() + ".");
    all.add(
        String.format(
            Locale.ROOT,
            "Activation energy of iron powder: %.0f kJ/mol, %.0f to %.0f; %s.",
            PowderKinetics.ACTIVATION / 1000,
            PowderKinetics.ACTIVATIONS.low() / 1000,
            PowderKinetics.ACTIVATIONS.high() / 1000,
            PowderKinetics.ACTIVATION_SOURCE.text()));
    all.add(
        String.format(
            Locale.ROOT,
            "Rating bench: %s. It may conduct %.1f to %.1f times as much, and the watts of a rating go"
                + " with that, as far as the contents hold the iron; a strength that was measured"
                + " needs no bench.",
            Bench.SOURCE.text(),
            Bench.CONDUCTANCES.low(),
            Bench.CONDUCTANCES.high()));
    BreathingLimits limits = BreathingLimits.ECTOTHERMS;
    all.add(
        String.format(
            Locale.ROOT,
            "Air counts as harmful below %.0f %% oxygen or above %.0f %% carbon dioxide: %s; %s.",
            100 * limits.oxygenAlarm(),
            100 * limits.carbonDioxideAlarm(),
            limits.oxygenSource().text(),
            limits.carbonDioxideSource().text()));
    all.add("Damp bedding: " + Factor.EVAPORATION_SOURCE.text() + ".");
    all.add("Animals' heat: " + Factor.METABOLISM_SOURCE.text() + ".");
    all.add("Air in cups: " + Factor.CUP_AIR_SOURCE.text() + ".");
    List<UnmodelledEffect> effects =
        scenario.packings().stream()
            .flatMap(packing -> UnmodelledEffect.of(packing).stream())
            .distinct()
            .toList();
    for (UnmodelledEffect effect : effects) {
      all.add(
          "Not computed, counted as uncertain: "
              + effect.words()
              + ", "
              + new Figures(scenario.units()).degrees(effect.kelvin().low())
              + " to "
              + new Figures(scenario.units()).difference(effect.kelvin().high())
              + " warmer, "
              + effect.source().text()
              + ".");
    }
    return List.copyOf(all);
  }

  private static String undated(Scenario scenario) {
    return SEALED
        + Words.clock(scenario.journey(), 0)
        + " on a day without date, as neither recorded weather nor sun goes by it (assumed).";
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
