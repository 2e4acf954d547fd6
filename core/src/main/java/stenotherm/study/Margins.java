package stenotherm.study;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Both margins as functions of what is uncertain, fitted while runs go by; nothing is fitted if too
 * much is uncertain for that, or there are too few runs. Not thread-safe.
 */
final class Margins {
  private static final int COLD = 0;
  private static final int HOT = 1;

  private final @Nullable QuadraticResponse both;

  /**
   * Starts without runs.
   *
   * @param most how many runs will come at most
   */
  Margins(int quantities, int most) {
    boolean few = quantities <= QuadraticResponse.MOST_QUANTITIES;
    this.both = few ? new QuadraticResponse(quantities, 2, most) : null;
  }

  /** Adds a run at a point, whose coordinates lie between 0 and 1. */
  void add(double[] point, Fate fate) {
    if (both != null) {
      both.add(point, fate.cold().margin(), fate.hot().margin());
    }
  }

  void addAll(Margins other) {
    if (both != null && other.both != null) {
      both.addAll(other.both);
    }
  }

  Optional<QuadraticFit> fit(boolean ofCold) {
    return both == null || !both.canBeFitted()
        ? Optional.empty()
        : Optional.of(both.fit(ofCold ? COLD : HOT));
  }
}
