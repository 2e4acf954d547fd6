package stenotherm.transit;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The size of a reduced model and the error that it may cause.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param modes number of modes
 * @param errors estimated error of the reduction in each output [K; W for heat flows]: the largest
 *     over the runs that {@link ParcelModel#reduction} names; see {@link
 *     stenotherm.modal.ModalEngine#errorEstimates()}. The errors of the grid and of constant
 *     coefficients come on top
 */
public record Reduction(int modes, Map<TransitOutput, Double> errors) {
  /** Copies the map, its order kept. */
  public Reduction {
    errors = Collections.unmodifiableMap(new LinkedHashMap<>(errors));
  }
}
