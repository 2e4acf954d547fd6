package stenotherm.report;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import stenotherm.base.Provenance;
import stenotherm.base.Temperatures;
import stenotherm.decision.Verdict;
import stenotherm.words.Figures;
import stenotherm.words.Units;

/**
 * What must be said beside the numbers of a comparison.
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class Cautions {
  /** What a warmer's curve is worth. */
  public static final String ILLUSTRATIVE =
      "Warmer curves are illustrative: they do not come from measurements.";

  /** The figures by which a caution was found; they stand with it in the summary. */
  private static final Pattern FIGURES = Pattern.compile(" \\(\\d+\\.\\d K over [^()]*\\)");

  private static final Pattern CELSIUS = Pattern.compile("(-?\\d+(?:\\.\\d+)?) °C");
  private static final Pattern KELVIN = Pattern.compile("(\\d+(?:\\.\\d+)?) K\\b");

  private Cautions() {}

  /** The cautions of all packings, each once; the one that defers to others comes last. */
  static List<String> of(List<Judged> rows, Figures figures) {
    Set<String> all = new LinkedHashSet<>();
    for (Judged row : rows) {
      for (String caution : row.assessment().verdict().cautions()) {
        // what happens in a leg may differ from packing to packing
        boolean inAll =
            rows.stream()
                .allMatch(each -> each.assessment().verdict().cautions().contains(caution));
        String words = plain(caution, figures);
        all.add(isOfPacking(caution) && !inAll ? row.label() + ": " + words : words);
      }
      if (isIllustrative(row)) {
        all.add(ILLUSTRATIVE);
      }
    }
    all.remove(Verdict.DEFER);
    all.add(Verdict.DEFER);
    return List.copyOf(all);
  }

  /** A caution in the reader's units, without the figures that only a physicist reads. */
  static String plain(String caution, Figures figures) {
    String words = FIGURES.matcher(caution).replaceAll("");
    if (figures.units() == Units.METRIC) {
      return words.replaceAll("(?<=\\d) K\\b", " C°");
    }
    String inFahrenheit =
        CELSIUS
            .matcher(words)
            .replaceAll(
                found ->
                    figures.temperature(
                        Temperatures.fromCelsius(Double.parseDouble(found.group(1)))));
    return KELVIN
        .matcher(inFahrenheit)
        .replaceAll(found -> figures.difference(Double.parseDouble(found.group(1))));
  }

  /** Whether a caution names a leg or a pack, which other packings may not share. */
  private static boolean isOfPacking(String caution) {
    return caution.startsWith("In '") || caution.startsWith("'");
  }

  private static boolean isIllustrative(Judged row) {
    return row.parcel().warmers().stream()
        .anyMatch(warmer -> warmer.warmer().source().provenance() == Provenance.ILLUSTRATIVE);
  }
}
