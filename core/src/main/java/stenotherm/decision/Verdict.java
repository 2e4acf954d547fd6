package stenotherm.decision;

import java.util.List;

/**
 * A verdict: which side is tightest, how much is left and when, with its range. Never a permission.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param level the level at the worse end of the range
 * @param tightest the margin at the worse end, on the tighter side
 * @param nominal the nominal margin on that side [K]
 * @param best the margin on that side at the other end of the range [K]
 * @param cautions what must be said beside it
 */
public record Verdict(
    Level level, Margin tightest, double nominal, double best, List<String> cautions) {
  /** What comes before any calculation. */
  public static final String DEFER =
      "A calculation on stated assumptions, not a permission: carrier rules, the IATA Live Animals Regulations,"
          + " local law and a veterinarian come first.";

  /** Copies the cautions. */
  public Verdict {
    cautions = List.copyOf(cautions);
  }
}
