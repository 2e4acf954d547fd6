package stenotherm.transit;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How a transit was reduced to a few modes, and what that may have cost.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param modes number of modes
 * @param errors estimate of the error that the reduction leaves in each output over the whole run,
 *     by the output's name such as "cup coldest" [K; W for heat flows]; see {@link
 *     stenotherm.modal.ModalEngine#errorEstimates()}. The error of the grid and what freezing
 *     coefficients does come on top.
 */
public record Reduction(int modes, Map<TransitOutput, Double> errors) {
  /** Copies the map, its order kept. */
  public Reduction {
    errors = Collections.unmodifiableMap(new LinkedHashMap<>(errors));
  }
}
