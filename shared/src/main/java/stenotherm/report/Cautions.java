package stenotherm.report;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import stenotherm.base.Provenance;
import stenotherm.decision.Verdict;

/**
 * What must be said beside the numbers of a comparison.
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class Cautions {
  /** What a warmer's curve is worth. */
  public static final String ILLUSTRATIVE =
      "Warmer curves are illustrative: they do not come from measurements.";

  private Cautions() {}

  /** The cautions of all packings, each once; the one that defers to others comes last. */
  static List<String> of(List<Judged> rows) {
    Set<String> all = new LinkedHashSet<>();
    for (Judged row : rows) {
      for (String caution : row.assessment().verdict().cautions()) {
        // what happens in a leg may differ from packing to packing
        boolean inAll =
            rows.stream()
                .allMatch(each -> each.assessment().verdict().cautions().contains(caution));
        all.add(isOfPacking(caution) && !inAll ? row.label() + ": " + caution : caution);
      }
      if (isIllustrative(row)) {
        all.add(ILLUSTRATIVE);
      }
    }
    all.remove(Verdict.DEFER);
    all.add(Verdict.DEFER);
    return List.copyOf(all);
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
