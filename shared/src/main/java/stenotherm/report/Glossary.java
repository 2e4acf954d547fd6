package stenotherm.report;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import stenotherm.air.BreathingLimits;
import stenotherm.decision.Level;

/** The few words that a report uses in a sense of its own. */
final class Glossary {
  /** Meanings by words, in the order in which a reader meets them. */
  static final Map<String, String> WORDS = words();

  private Glossary() {}

  private static Map<String, String> words() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put(
        "its temperatures",
        "those in which a healthy animal is expected to take no harm over hours; outside of them lie"
            + " 'too cold' and 'too hot'. The temperature of its body counts, averaged over an hour."
            + " The assumptions call this the alarm band.");
    words.put(
        "comfortable",
        "what its label asks of those who handle it. Between that and the ends of its temperatures it"
            + " bears hours; only what lies outside these counts as harm. What it prefers when it can"
            + " choose is a single temperature, which a parcel need not have.");
    words.put(
        "for a moment",
        "Laboratories cool or warm animals quickly until they fail within minutes. The temperature of"
            + " the body must not reach that even for a moment; for hours an animal bears much less."
            + " The assumptions call these temperatures its critical limits.");
    words.put(
        "short of air",
        String.format(
            Locale.ROOT,
            "the air that it breathes has less than %.0f %% oxygen or more than %.0f %% carbon"
                + " dioxide, as at sea level; fresh air has 21 %% and 0.04 %%. For"
                + " such animals no published limits were found: these are assumed.",
            100 * BreathingLimits.ECTOTHERMS.oxygenAlarm(),
            100 * BreathingLimits.ECTOTHERMS.carbonDioxideAlarm()));
    words.put(
        "of 100 go well",
        "Many journeys are computed that differ in everything uncertain: weather, foam, fill, the"
            + " strength of the warmer and more. So many of 100 keep every animal within its"
            + " temperatures, with enough air and nothing in its reach that burns it, until the planned opening.");
    words.put(
        Level.HOLDS.words() + ", " + Level.LIKELY.words() + ", " + Level.GAMBLE.words(),
        String.format(
            Locale.ROOT,
            "at least %.0f, %.0f and %.0f of 100 journeys go well, some doubt taken off.",
            100 * Level.HOLDS.least(),
            100 * Level.LIKELY.least(),
            100 * Level.GAMBLE.least()));
    words.put(
        "typical journey", "the middle of all: half of the journeys are colder, half are warmer.");
    words.put(
        "on a journey that is too cold for it",
        "told of those journeys alone: for half of them it lasts longer, or gets worse. The hours are"
            + " those of the whole way together; 'at worst' is how far the temperature, averaged over"
            + " an hour, then lies outside.");
    words.put(
        "worst case",
        "the coldest and the hottest of all journeys computed, among them one with everything against"
            + " the animal at once.");
    words.put(
        "warmer's hottest part",
        "the hottest place in or on it. A rating is measured under a light cover; packed in fill and"
            + " foam the same warmer loses less heat, so that it may get much hotter than its label"
            + " says.");
    words.put(
        Tables.LATE_BY,
        "opened so much later than planned, its verdict is still '"
            + Level.LIKELY.words()
            + "' or better; 'not even on time' where it is worse without any delay.");
    return Collections.unmodifiableMap(words);
  }
}
