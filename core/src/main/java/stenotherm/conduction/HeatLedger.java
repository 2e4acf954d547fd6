package stenotherm.conduction;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Where the heat of a transient went. Each term is integrated from its own flux by the scheme's own
 * quadrature; what is stored comes from the temperatures alone; so the residual is a check, not a
 * definition.
 *
 * <p>Stable. A value, thus thread-safe.
 *
 * @param boundaries heat into the body through each boundary, by name [J]
 * @param sources heat given by each source, by name [J]
 * @param stored rise of the heat content, from the temperatures at the start and the end, and the
 *     enthalpies of what melts [J]
 * @param scale what the residual is judged by [J]: the sum of all heat moved, step by step in
 *     magnitude, plus what warms the whole body by 1 mK
 */
public record HeatLedger(
    Map<String, Double> boundaries, Map<String, Double> sources, double stored, double scale) {
  /** The part of the scale that the residual may reach. */
  public static final double TOLERANCE = 1e-6;

  /** Copies the maps, keeping their order. */
  public HeatLedger {
    boundaries = Collections.unmodifiableMap(new LinkedHashMap<>(boundaries));
    sources = Collections.unmodifiableMap(new LinkedHashMap<>(sources));
  }

  /**
   * Returns what does not add up.
   *
   * @return heat in through boundaries and from sources less heat stored [J]
   */
  public double residual() {
    double in = 0;
    for (double heat : boundaries.values()) {
      in += heat;
    }
    for (double heat : sources.values()) {
      in += heat;
    }
    return in - stored;
  }

  /**
   * Tells whether the ledger closes.
   *
   * @return true if the residual is at most {@link #TOLERANCE} times the scale
   */
  public boolean closes() {
    return Math.abs(residual()) <= TOLERANCE * scale;
  }
}
