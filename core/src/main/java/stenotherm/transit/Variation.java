package stenotherm.transit;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import stenotherm.base.End;

/**
 * Which uncertain quantities a run takes at an end of their range; those not named stay nominal.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param ends end of each varied quantity
 */
public record Variation(Map<Factor, End> ends) {
  /** Nothing varied. */
  public static final Variation NOMINAL = new Variation(Map.of());

  /** Copies the map. */
  public Variation {
    Map<Factor, End> copy = new EnumMap<>(Factor.class);
    copy.putAll(ends);
    ends = Collections.unmodifiableMap(copy);
  }

  /**
   * The same variation with one more quantity at an end.
   *
   * @param factor the quantity
   * @param end which end
   * @return the changed variation
   */
  public Variation with(Factor factor, End end) {
    Map<Factor, End> changed = new EnumMap<>(Factor.class);
    changed.putAll(ends);
    changed.put(factor, end);
    return new Variation(changed);
  }

  /**
   * Returns the end of a quantity.
   *
   * @param factor the quantity
   * @return its end, nominal if it is not varied
   */
  public End of(Factor factor) {
    return ends.getOrDefault(factor, End.NOMINAL);
  }
}
