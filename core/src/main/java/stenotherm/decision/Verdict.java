package stenotherm.decision;

import java.util.List;
import stenotherm.study.Odds;

/**
 * The verdict on a packing.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param level the verdict in a few words
 * @param within odds that every animal stays within what it tolerates until the planned opening
 * @param side the side on which it fails more often, or comes closer to it
 * @param tightest when the middle case is tightest on that side, since sealing [s]
 * @param cautions what to know beside it
 */
public record Verdict(Level level, Odds within, Side side, double tightest, List<String> cautions) {
  /** What every verdict defers to. */
  public static final String DEFER =
      "A calculation on stated assumptions, not a permission: carrier rules, the IATA Live Animals Regulations,"
          + " local law and a veterinarian come first.";

  /** Copies the cautions. */
  public Verdict {
    cautions = List.copyOf(cautions);
  }
}
