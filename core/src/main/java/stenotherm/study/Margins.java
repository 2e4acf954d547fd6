package stenotherm.study;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Both margins as functions of what is uncertain, fitted while runs go by; nothing is fitted if too
 * much is uncertain for that, or there are too few runs. Not thread-safe.
 */
final class Margins {
  private final @Nullable QuadraticResponse cold;
  private final @Nullable QuadraticResponse hot;

  Margins(int quantities) {
    boolean few = quantities <= QuadraticResponse.MOST_QUANTITIES;
    this.cold = few ? new QuadraticResponse(quantities) : null;
    this.hot = few ? new QuadraticResponse(quantities) : null;
  }

  /** Adds a run at a point, whose coordinates lie between 0 and 1. */
  void add(double[] point, Fate fate) {
    if (cold != null && hot != null) {
      cold.add(point, fate.cold().margin());
      hot.add(point, fate.hot().margin());
    }
  }

  void addAll(Margins other) {
    if (cold != null && hot != null && other.cold != null && other.hot != null) {
      cold.addAll(other.cold);
      hot.addAll(other.hot);
    }
  }

  Optional<QuadraticFit> fit(boolean ofCold) {
    QuadraticResponse response = ofCold ? cold : hot;
    return response == null || !response.canBeFitted()
        ? Optional.empty()
        : Optional.of(response.fit());
  }
}
